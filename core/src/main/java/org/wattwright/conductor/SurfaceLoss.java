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

  /** Convection only, for a rise of either sign. */
  abstract double convectionWPerM(double surfaceK);

  final double radiationWPerM(double surfaceK) {
    return radiationFactor * (fourthPower(surfaceK) - surroundingsK4);
  }

  final double lossWPerM(double surfaceK) {
    return convectionWPerM(surfaceK) + radiationWPerM(surfaceK);
  }
}
