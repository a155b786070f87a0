package org.wattwright.battery;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Time;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.WorkshopUnits;

/**
 * A current that a cell stands for a limited time.
 *
 * <p>Immutable and thread-safe.
 *
 * @param current magnitude, &gt; 0 A
 * @param duration longest duration, &gt; 0 s
 */
public record PulseCurrent(Quantity<ElectricCurrent> current, Quantity<Time> duration)
    implements Serializable {
  /**
   * Checks the range.
   *
   * @param current magnitude, &gt; 0 A
   * @param duration longest duration, &gt; 0 s
   * @throws org.wattwright.units.InvalidInputException if a value is not positive
   */
  public PulseCurrent {
    Require.quantity("PulseCurrent.current", current, WorkshopUnits.AMPERE).positive();
    Require.quantity("PulseCurrent.duration", duration, WorkshopUnits.SECOND).positive();
    current = Measure.from(current, Kind.CURRENT);
    duration = Measure.from(duration, Kind.TIME);
  }

  /**
   * Current and duration.
   *
   * @return for example {@code 315 A for 30 s}
   */
  @Override
  public String toString() {
    return current + " for " + duration;
  }
}
