package org.wattwright.voltage;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Power;
import org.wattwright.battery.PackState;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.Measures;

/**
 * Power available to a device in one state of the pack.
 *
 * <p>Immutable and thread-safe.
 *
 * @param state state of charge and temperature
 * @param power at the pack's terminals, ≥ 0
 * @param voltage at that power
 * @param limitedBy what limits it, in words
 */
public record PowerPoint(
    PackState state, Quantity<Power> power, Quantity<ElectricPotential> voltage, String limitedBy)
    implements Serializable {
  /**
   * Takes any quantity implementation.
   *
   * @param state state of charge and temperature
   * @param power at the pack's terminals, ≥ 0
   * @param voltage at that power
   * @param limitedBy what limits it, in words
   */
  public PowerPoint {
    Objects.requireNonNull(state, "state");
    power = Measure.from(power, Kind.POWER);
    voltage = Measure.from(voltage, Kind.VOLTAGE);
    limitedBy = Require.text("PowerPoint.limitedBy", limitedBy);
  }

  /**
   * State, power and limit.
   *
   * @return for example {@code 20 % at 0 °C: 51.6 kW at 81.9 V, limited by cell current}
   */
  @Override
  public String toString() {
    return state
        + ": "
        + Measures.format(power, Kind.POWER)
        + " at "
        + Measures.format(voltage, Kind.VOLTAGE)
        + ", limited by "
        + limitedBy;
  }
}
