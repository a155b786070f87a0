package org.wattwright.conductor;

/** A horizontal round cable in still air: Churchill–Chu convection and radiation. */
final class CylinderLoss extends SurfaceLoss {
  private final double rootOfDiameter;

  CylinderLoss(Surroundings surroundings, double emissivity, double diameterM) {
    super(surroundings, emissivity, Math.PI * diameterM);
    this.rootOfDiameter = Math.sqrt(diameterM);
  }

  /** x^(1/6); twice as fast as a power. */
  static double sixthRoot(double x) {
    return Math.cbrt(Math.sqrt(x));
  }

  @Override
  double powerOfRise(double riseK) {
    return rootOfDiameter * sixthRoot(Math.abs(riseK));
  }

  /** π·D·h·ΔT = π·λ·Nu·ΔT: the diameter cancels but for the Rayleigh number. */
  @Override
  double convectionWPerM(double riseK, double power) {
    return Math.PI * AirProperties.cylinderConductance(airK() + riseK / 2, power) * riseK;
  }

  @Override
  double convectionSlopeWPerMK(double riseK, double power) {
    return Math.PI * AirProperties.cylinderSlope(airK() + riseK / 2, power, riseK);
  }
}
