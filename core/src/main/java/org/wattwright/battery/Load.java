package org.wattwright.battery;

import javax.measure.Quantity;
import javax.measure.quantity.Time;
import org.wattwright.internal.Require;
import org.wattwright.units.WorkshopUnits;

/** A direction and how long current flows that way; infinite for continuous. */
record Load(Direction direction, double durationS) {
  static Load of(Direction direction, Quantity<Time> duration) {
    return new Load(
        direction, Require.quantity("duration", duration, WorkshopUnits.SECOND).nonNegative());
  }

  static Load continuous(Direction direction) {
    return new Load(direction, Double.POSITIVE_INFINITY);
  }
}
