package org.wattwright.thermal;

import static org.wattwright.units.WorkshopUnits.CELSIUS;

import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.wattwright.internal.Require;

/** What a vehicle can stand in: keeps a slip of the unit, such as 300 for 300 K, from passing. */
final class Surroundings {
  private static final double COLDEST_C = -60;
  private static final double HOTTEST_C = 100;

  private Surroundings() {}

  static double temperatureK(String field, Quantity<Temperature> temperature) {
    return Require.quantity(field, temperature, CELSIUS).between(COLDEST_C, HOTTEST_C);
  }
}
