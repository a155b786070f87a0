package org.wattwright.conductor;

/**
 * Heat that the surface of a conductor loses to its surroundings, in W per metre.
 *
 * <p>Rises strictly with the surface temperature; negative below equilibrium.
 */
abstract class SurfaceLoss {
  /** Stefan–Boltzmann constant in W/(m²·K⁴); CODATA 2018. */
  static final double STEFAN_BOLTZMANN = 5.670374419e-8;

  private final double airK;
  private final double radiationFactor;
  private final double surroundingsK4;

  /** Surroundings at a mean radiant temperature, seen by a perimeter of some emissivity. */
  SurfaceLoss(Surroundings surroundings, double emissivity, double perimeterM) {
    this.airK = surroundings.airK();
    this.radiationFactor = emissivity * STEFAN_BOLTZMANN * perimeterM;
    this.surroundingsK4 = surroundings.radiantK4();
  }

  /** Air temperature, and fourth power of the mean radiant temperature. */
  record Surroundings(double airK, double radiantK4) {
    static Surroundings at(double airK) {
      return new Surroundings(airK, fourthPower(airK));
    }
  }

  static double fourthPower(double temperatureK) {
    double square = temperatureK * temperatureK;
    return square * square;
  }

  final double airK() {
    return airK;
  }

  /** Power of the rise that both the loss and its slope need, worked out once for the two. */
  abstract double powerOfRise(double riseK);

  /** Convection only, for a rise of either sign; {@code power} = {@link #powerOfRise}. */
  abstract double convectionWPerM(double riseK, double power);

  /** Derivative of the convection by the surface temperature, the air's properties included. */
  abstract double convectionSlopeWPerMK(double riseK, double power);

  final double convectionWPerM(double surfaceK) {
    double riseK = surfaceK - airK;
    return convectionWPerM(riseK, powerOfRise(riseK));
  }

  final double radiationWPerM(double surfaceK) {
    return radiationFactor * (fourthPower(surfaceK) - surroundingsK4);
  }

  final double lossWPerM(double surfaceK) {
    double riseK = surfaceK - airK;
    return lossWPerM(riseK, powerOfRise(riseK));
  }

  final double lossWPerM(double riseK, double power) {
    return convectionWPerM(riseK, power) + radiationWPerM(airK + riseK);
  }

  /** How much more is lost for a surface one kelvin warmer. */
  final double slopeWPerMK(double riseK, double power) {
    double surfaceK = airK + riseK;
    return convectionSlopeWPerMK(riseK, power)
        + 4 * radiationFactor * surfaceK * surfaceK * surfaceK;
  }
}
