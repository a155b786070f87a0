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
  double powerOfRise(double riseK) {
    return coefficientWPerM2K.applyAsDouble(Math.abs(riseK));
  }

  @Override
  double convectionWPerM(double riseK, double power) {
    return power * perimeterM * riseK;
  }

  /** By differences: the coefficient is any function. */
  @Override
  double convectionSlopeWPerMK(double riseK, double power) {
    double stepK = 1e-3;
    double above = convectionWPerM(riseK + stepK, powerOfRise(riseK + stepK));
    double below = convectionWPerM(riseK - stepK, powerOfRise(riseK - stepK));
    return (above - below) / (2 * stepK);
  }
}
