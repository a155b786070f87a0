package org.wattwright.battery;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Power;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/**
 * The largest power of a pack in a state, and what limits it.
 *
 * <p>Power and current are magnitudes; the direction says which way. Immutable and thread-safe.
 *
 * @param direction discharge or charge
 * @param power at the terminals, ≥ 0
 * @param current at the terminals, ≥ 0
 * @param voltage at the terminals at that current
 * @param governing what limits it
 */
public record PowerLimit(
    Direction direction,
    Quantity<Power> power,
    Quantity<ElectricCurrent> current,
    Quantity<ElectricPotential> voltage,
    Limit governing)
    implements Serializable {
  /**
   * Rejects null.
   *
   * @param direction discharge or charge
   * @param power at the terminals, ≥ 0
   * @param current at the terminals, ≥ 0
   * @param voltage at the terminals at that current
   * @param governing what limits it
   */
  public PowerLimit {
    Objects.requireNonNull(direction, "direction");
    Objects.requireNonNull(power, "power");
    Objects.requireNonNull(current, "current");
    Objects.requireNonNull(voltage, "voltage");
    Objects.requireNonNull(governing, "governing");
  }

  /**
   * Power, current, voltage and limit.
   *
   * @return for example {@code 61.2 kW discharge at 640 A and 95.6 V, limited by cell current}
   */
  @Override
  public String toString() {
    return Measures.format(power, Kind.POWER)
        + " "
        + direction
        + " at "
        + Measures.format(current, Kind.CURRENT)
        + " and "
        + Measures.format(voltage, Kind.VOLTAGE)
        + ", limited by "
        + governing;
  }
}
