package org.wattwright.conductor;

import java.util.function.DoubleUnaryOperator;

/** A round surface whose heat transfer coefficient an example states, by the rise over the air. */
final class GivenCoefficientLoss extends SurfaceLoss {
  private final double perimeterM;
  private final DoubleUnaryOperator coefficientWPerM2K;

  GivenCoefficientLoss(
      Surroundings surroundings,
      double emissivity,
      double diameterM,
      DoubleUnaryOperator coefficientWPerM2K) {
    super(surroundings, emissivity, Math.PI * diameterM);
    this.perimeterM = Math.PI * diameterM;
    this.coefficientWPerM2K = coefficientWPerM2K;
  }

  @Override
  double convectionWPerM(double surfaceK) {
    double riseK = surfaceK - airK();
    return coefficientWPerM2K.applyAsDouble(Math.abs(riseK)) * perimeterM * riseK;
  }
}
