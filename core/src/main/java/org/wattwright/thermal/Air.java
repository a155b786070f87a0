package org.wattwright.thermal;

import org.wattwright.check.Source;

/** Dry air at sea level as an ideal gas; within 0.1 % of the real gas from −20 °C to 30 °C. */
final class Air {
  static final double PRESSURE_PA = 101_325;
  static final double GAS_CONSTANT_J_PER_KG_K = 287.055;
  static final double SPECIFIC_HEAT_J_PER_KG_K = 1006;

  static final Source SOURCE =
      Source.literature("ideal gas law", "dry air, 101 325 Pa, 287.055 J/(kg·K), 1006 J/(kg·K)");

  private Air() {}

  static double densityKgPerM3(double temperatureK) {
    return PRESSURE_PA / (GAS_CONSTANT_J_PER_KG_K * temperatureK);
  }

  /** ρ·V̇·c of a flow measured at a temperature. */
  static double capacityRateWPerK(double flowM3PerS, double temperatureK) {
    return flowM3PerS * densityKgPerM3(temperatureK) * SPECIFIC_HEAT_J_PER_KG_K;
  }
}
