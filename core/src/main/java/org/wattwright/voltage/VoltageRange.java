package org.wattwright.voltage;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.WorkshopUnits;

/**
 * Range of voltages, both ends allowed.
 *
 * <p>Immutable and thread-safe.
 *
 * @param lowest lower end, ≥ 0 V
 * @param highest upper end, above the lower
 */
public record VoltageRange(Quantity<ElectricPotential> lowest, Quantity<ElectricPotential> highest)
    implements Serializable {
  /**
   * Checks the order.
   *
   * @param lowest lower end, ≥ 0 V
   * @param highest upper end, above the lower
   * @throws InvalidInputException if the lower end is negative or not below the upper
   */
  public VoltageRange {
    Require.quantity("VoltageRange.lowest", lowest, WorkshopUnits.VOLT).nonNegative();
    lowest = Measure.from(lowest, Kind.VOLTAGE);
    highest = Measure.from(highest, Kind.VOLTAGE);
    if (!(Kind.VOLTAGE.compare(lowest, highest) < 0)) {
      throw InvalidInputException.withMessage(
          "VoltageRange.lowest",
          "< highest",
          lowest.toString(),
          "VoltageRange.lowest must be < highest: lowest " + lowest + ", highest " + highest);
    }
  }

  /**
   * A range.
   *
   * @param lowest lower end, ≥ 0 V
   * @param highest upper end, above the lower
   * @return the range
   */
  public static VoltageRange between(
      Quantity<ElectricPotential> lowest, Quantity<ElectricPotential> highest) {
    return new VoltageRange(lowest, highest);
  }

  /**
   * Whether a voltage lies in the range.
   *
   * @param voltage the voltage
   * @return true at both ends too
   */
  public boolean contains(Quantity<ElectricPotential> voltage) {
    return Kind.VOLTAGE.compare(voltage, lowest) >= 0
        && Kind.VOLTAGE.compare(voltage, highest) <= 0;
  }

  boolean contains(VoltageRange inner) {
    return contains(inner.lowest) && contains(inner.highest);
  }

  double lowestV() {
    return Kind.VOLTAGE.siValueOf(lowest);
  }

  double highestV() {
    return Kind.VOLTAGE.siValueOf(highest);
  }

  /**
   * Both ends.
   *
   * @return for example {@code 72 V … 118.8 V}
   */
  @Override
  public String toString() {
    return lowest + " … " + highest;
  }
}
