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

  /** π·D·h·ΔT = π·λ·Nu·ΔT: the diameter cancels but for the Rayleigh number. */
  @Override
  double convectionWPerM(double surfaceK) {
    double riseK = surfaceK - airK();
    double root = rootOfDiameter * sixthRoot(Math.abs(riseK));
    double filmK = (surfaceK + airK()) / 2;
    return Math.PI * AirProperties.cylinderConductance(filmK, root) * riseK;
  }
}
