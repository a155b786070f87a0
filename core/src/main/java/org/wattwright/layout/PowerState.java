package org.wattwright.layout;

import javax.measure.Quantity;
import javax.measure.quantity.Time;
import org.wattwright.battery.Direction;
import org.wattwright.battery.Pack;
import org.wattwright.battery.PackState;
import org.wattwright.battery.PowerLimit;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/** A state, a direction and how long: where the power of a pack is asked for. */
record PowerState(Direction direction, Quantity<Time> duration, PackState state) {
  PowerLimit largestOf(Pack pack) {
    return direction == Direction.DISCHARGE
        ? pack.maximumDischargePower(state, duration)
        : pack.maximumChargePower(state, duration);
  }

  double largestW(Pack pack) {
    return Kind.POWER.siValueOf(largestOf(pack).power());
  }

  @Override
  public String toString() {
    return direction + " power for " + Measures.format(duration, Kind.TIME) + " at " + state;
  }
}
