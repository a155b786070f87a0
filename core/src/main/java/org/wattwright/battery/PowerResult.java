package org.wattwright.battery;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Power;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/**
 * Answer to "which current at this power": the operating point, or that the power is too high.
 *
 * <p>Immutable and thread-safe.
 */
public sealed interface PowerResult extends Serializable {
  /**
   * The power is available.
   *
   * @param current positive on discharge, negative on charge
   * @param voltage at the terminals
   * @param heat lost in the pack as I²·R
   */
  record OperatingPoint(
      Quantity<ElectricCurrent> current, Quantity<ElectricPotential> voltage, Quantity<Power> heat)
      implements PowerResult {
    /**
     * Share of the battery's internal power that does its work: U/OCV on discharge, OCV/U on
     * charge.
     *
     * @return 0 to 1; 1 at no current
     */
    public double efficiency() {
      double powerW = Kind.CURRENT.siValueOf(current) * Kind.VOLTAGE.siValueOf(voltage);
      double heatW = Kind.POWER.siValueOf(heat);
      if (powerW == 0) {
        return 1;
      }
      return powerW > 0 ? powerW / (powerW + heatW) : (-powerW - heatW) / -powerW;
    }

    /**
     * Current and voltage.
     *
     * @return for example {@code 149.2 A at 335.1 V}
     */
    @Override
    public String toString() {
      return Measures.format(current, Kind.CURRENT)
          + " at "
          + Measures.format(voltage, Kind.VOLTAGE);
    }
  }

  /**
   * The power asked for is above the maximum.
   *
   * @param asked power asked for, as a magnitude
   * @param maximum the largest power in that state, and what limits it
   */
  record AboveMaximum(Quantity<Power> asked, PowerLimit maximum) implements PowerResult {
    /**
     * What was asked and what is possible.
     *
     * @return for example {@code 310 kW asked, at most 306.3 kW discharge at …}
     */
    @Override
    public String toString() {
      return Measures.format(asked, Kind.POWER) + " asked, at most " + maximum;
    }
  }

  /**
   * Whether the power is available.
   *
   * @return true for an operating point
   */
  default boolean isAvailable() {
    return this instanceof OperatingPoint;
  }

  /**
   * The operating point.
   *
   * @return the point
   * @throws IllegalStateException if the power is above the maximum; the message says by how much
   */
  default OperatingPoint orElseThrow() {
    if (this instanceof OperatingPoint point) {
      return point;
    }
    throw new IllegalStateException(toString());
  }
}
