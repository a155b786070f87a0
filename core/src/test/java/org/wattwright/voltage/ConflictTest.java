package org.wattwright.voltage;

import static org.wattwright.units.Measures.volts;

import java.util.List;
import org.wattwright.testing.ValueTypeContract;

class ConflictTest extends ValueTypeContract<WindowMatch.Conflict> {
  private static ConflictSides sides(String upper, double endV, int most, String lower) {
    return new ConflictSides(upper, volts(endV), most, lower);
  }

  @Override
  protected WindowMatch.Conflict sample() {
    return WindowMatch.Conflict.between(
        sides("charger", 118.8, 32, "inverter"), 36, volts(12.6), "apart");
  }

  @Override
  protected List<WindowMatch.Conflict> different() {
    ConflictSides same = sides("charger", 118.8, 32, "inverter");
    return List.of(
        WindowMatch.Conflict.between(
            sides("heater", 118.8, 32, "inverter"), 36, volts(12.6), "apart"),
        WindowMatch.Conflict.between(
            sides("charger", 118.9, 32, "inverter"), 36, volts(12.6), "apart"),
        WindowMatch.Conflict.between(
            sides("charger", 118.8, 31, "inverter"), 36, volts(12.6), "apart"),
        WindowMatch.Conflict.between(
            sides("charger", 118.8, 32, "heater"), 36, volts(12.6), "apart"),
        WindowMatch.Conflict.between(same, 37, volts(12.6), "apart"),
        WindowMatch.Conflict.between(same, 36, volts(12.7), "apart"),
        WindowMatch.Conflict.between(same, 36, volts(12.6), "far apart"),
        WindowMatch.Conflict.withoutAnyNumber(same, "apart"));
  }
}
