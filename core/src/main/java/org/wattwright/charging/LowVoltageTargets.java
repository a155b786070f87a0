package org.wattwright.charging;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Time;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.WorkshopUnits;

/**
 * What is asked of the low-voltage system.
 *
 * <p>Immutable and thread-safe.
 *
 * @param holdUp how long the battery alone carries the essential loads, &gt; 0 min
 * @param parked how long the vehicle may stand until the usable charge is gone, &gt; 0 d
 * @param supply the voltages its devices stand
 */
public record LowVoltageTargets(
    Quantity<Time> holdUp, Quantity<Time> parked, LowVoltageSupply supply) implements Serializable {
  /**
   * Checks the ranges.
   *
   * @param holdUp &gt; 0 min
   * @param parked &gt; 0 d
   * @param supply the voltages its devices stand
   * @throws org.wattwright.units.InvalidInputException if a time is not positive
   */
  public LowVoltageTargets {
    Require.quantity("LowVoltageTargets.holdUp", holdUp, WorkshopUnits.MINUTE).positive();
    Require.quantity("LowVoltageTargets.parked", parked, WorkshopUnits.DAY).positive();
    holdUp = Measure.from(holdUp, Kind.TIME);
    parked = Measure.from(parked, Kind.TIME);
    Objects.requireNonNull(supply, "supply");
  }

  /**
   * All three.
   *
   * @return for example {@code 30 min without converter, 21 d parked, supply C (9 V … 16 V)}
   */
  @Override
  public String toString() {
    return holdUp + " without converter, " + parked + " parked, supply " + supply;
  }
}
