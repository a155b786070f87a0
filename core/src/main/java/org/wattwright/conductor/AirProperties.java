package org.wattwright.conductor;

import org.wattwright.internal.LinearTable;
import org.wattwright.internal.ResourceTable;

/**
 * Air at 1 atm by film temperature, −50 °C to 300 °C, held at the ends.
 *
 * <p>Conductivity, viscosity and Prandtl number are linear between the rows of the published table;
 * the groups that the convection formulas need are worked out on a 1 K grid and are linear between,
 * which moves a heat loss by less than 1 in 10⁵.
 */
final class AirProperties {
  private static final double GRAVITY_M_PER_S2 = 9.81;
  private static final double FIRST_C = -50;
  private static final double LAST_C = 300;
  private static final double STEP_K = 1;
  private static final double CELSIUS_ZERO_K = 273.15;
  private static final double FIRST_K = FIRST_C + CELSIUS_ZERO_K;

  private static final ResourceTable TABLE = ResourceTable.read(AirProperties.class, "air.csv");
  private static final LinearTable CONDUCTIVITY = column("thermal conductivity [W/(m*K)]");
  private static final LinearTable VISCOSITY = column("kinematic viscosity [m2/s]");
  private static final LinearTable PRANDTL = column("Prandtl number");

  private static final double[] CONDUCTIVITY_GRID = grid(AirProperties::conductivityWPerMK);
  private static final double[] CYLINDER_GRID = grid(AirProperties::cylinderGroup);
  private static final double[] VERTICAL_GRID = grid(AirProperties::verticalGroup);
  private static final double[] BUOYANCY_GRID = grid(AirProperties::buoyancyFourthRoot);

  private AirProperties() {}

  private static LinearTable column(String name) {
    return LinearTable.of("air.csv", TABLE.numbers("temperature [degC]"), TABLE.numbers(name));
  }

  private interface Property {
    double at(double temperatureK);
  }

  private static double[] grid(Property property) {
    double[] values = new double[(int) ((LAST_C - FIRST_C) / STEP_K) + 1];
    for (int i = 0; i < values.length; i++) {
      values[i] = property.at(FIRST_K + i * STEP_K);
    }
    return values;
  }

  static double conductivityWPerMK(double filmK) {
    return CONDUCTIVITY.at(filmK - CELSIUS_ZERO_K);
  }

  static double kinematicViscosityM2PerS(double filmK) {
    return VISCOSITY.at(filmK - CELSIUS_ZERO_K);
  }

  static double prandtl(double filmK) {
    return PRANDTL.at(filmK - CELSIUS_ZERO_K);
  }

  /** Ra/(ΔT·D³) = g·β·Pr/ν², β = 1/T_f. */
  static double buoyancy(double filmK) {
    double viscosity = kinematicViscosityM2PerS(filmK);
    return GRAVITY_M_PER_S2 / filmK * prandtl(filmK) / (viscosity * viscosity);
  }

  /** 0.387·(Ra/(ΔT·D³))^(1/6)/[1 + (0.559/Pr)^(9/16)]^(8/27); Churchill and Chu 1975. */
  private static double cylinderGroup(double filmK) {
    return 0.387
        * Math.pow(buoyancy(filmK), 1.0 / 6)
        / Math.pow(1 + Math.pow(0.559 / prandtl(filmK), 9.0 / 16), 8.0 / 27);
  }

  /** 0.670·(Ra/(ΔT·L³))^(1/4)/[1 + (0.492/Pr)^(9/16)]^(4/9); Churchill and Chu 1975, laminar. */
  private static double verticalGroup(double filmK) {
    return 0.670
        * buoyancyFourthRoot(filmK)
        / Math.pow(1 + Math.pow(0.492 / prandtl(filmK), 9.0 / 16), 4.0 / 9);
  }

  private static double buoyancyFourthRoot(double filmK) {
    return Math.sqrt(Math.sqrt(buoyancy(filmK)));
  }

  /** λ·Nu of a horizontal cylinder; {@code power} = √D·ΔT^(1/6). */
  static double cylinderConductance(double filmK, double power) {
    double at = position(filmK);
    int cell = (int) at;
    double share = at - cell;
    double root = 0.60 + between(CYLINDER_GRID, cell, share) * power;
    return between(CONDUCTIVITY_GRID, cell, share) * root * root;
  }

  /** Derivative of λ·Nu·ΔT by ΔT, where the film warms by half of it. */
  static double cylinderSlope(double filmK, double power, double riseK) {
    double at = position(filmK);
    int cell = (int) at;
    double conductivity = between(CONDUCTIVITY_GRID, cell, at - cell);
    double part = between(CYLINDER_GRID, cell, at - cell) * power;
    double root = 0.60 + part;
    double byFilm = halfSlope(CONDUCTIVITY_GRID, cell) * root;
    byFilm += 2 * conductivity * halfSlope(CYLINDER_GRID, cell) * power;
    return root * (conductivity * (root + part / 3) + byFilm * riseK);
  }

  /** λ·Nu of a vertical face; {@code power} = (ΔT·L³)^(1/4). */
  static double verticalConductance(double filmK, double power) {
    double at = position(filmK);
    int cell = (int) at;
    double share = at - cell;
    return between(CONDUCTIVITY_GRID, cell, share)
        * (0.68 + between(VERTICAL_GRID, cell, share) * power);
  }

  /** Derivative of λ·Nu·ΔT by ΔT, where the film warms by half of it. */
  static double verticalSlope(double filmK, double power, double riseK) {
    double at = position(filmK);
    int cell = (int) at;
    double conductivity = between(CONDUCTIVITY_GRID, cell, at - cell);
    double part = between(VERTICAL_GRID, cell, at - cell) * power;
    double byFilm = halfSlope(CONDUCTIVITY_GRID, cell) * (0.68 + part);
    byFilm += conductivity * halfSlope(VERTICAL_GRID, cell) * power;
    return conductivity * (0.68 + part * 5 / 4) + byFilm * riseK;
  }

  /** λ·Ra^(1/4) of a horizontal face; {@code power} = (ΔT·L³)^(1/4). */
  static double horizontalConductance(double filmK, double power) {
    double at = position(filmK);
    int cell = (int) at;
    double share = at - cell;
    return between(CONDUCTIVITY_GRID, cell, share) * between(BUOYANCY_GRID, cell, share) * power;
  }

  /** Derivative of λ·Ra^(1/4)·ΔT by ΔT, where the film warms by half of it. */
  static double horizontalSlope(double filmK, double power, double riseK) {
    double at = position(filmK);
    int cell = (int) at;
    double conductivity = between(CONDUCTIVITY_GRID, cell, at - cell);
    double buoyancy = between(BUOYANCY_GRID, cell, at - cell);
    double byFilm = halfSlope(CONDUCTIVITY_GRID, cell) * buoyancy;
    byFilm += conductivity * halfSlope(BUOYANCY_GRID, cell);
    return power * (conductivity * buoyancy * 5 / 4 + byFilm * riseK);
  }

  /** Position on the grid, held just inside its last cell. */
  private static double position(double filmK) {
    double at = (filmK - FIRST_K) / STEP_K;
    double last = CONDUCTIVITY_GRID.length - 1.0;
    return at > 0 ? Math.min(at, last - 1e-9) : 0;
  }

  private static double between(double[] grid, int cell, double share) {
    return grid[cell] + share * (grid[cell + 1] - grid[cell]);
  }

  /** Change of a property with the surface temperature, of which the film takes half. */
  private static double halfSlope(double[] grid, int cell) {
    return (grid[cell + 1] - grid[cell]) / (2 * STEP_K);
  }
}
