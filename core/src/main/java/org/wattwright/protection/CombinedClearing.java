package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.AMPERE;

import org.jspecify.annotations.Nullable;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/** Decides whether a fuse clears a fault that capacitors feed too, and what passes until then. */
final class CombinedClearing {
  private final FuseData data;
  private final double voltageV;
  private final ClearingSolver alone;
  private final CapacitorInfeed infeed;

  CombinedClearing(FuseData data, double voltageV, CapacitorInfeed infeed) {
    this.data = data;
    this.voltageV = voltageV;
    this.alone = new ClearingSolver(data, voltageV);
    this.infeed = infeed;
  }

  Clearing solve(FaultCurrent battery) {
    Clearing clearing = alone.solve(battery);
    if (infeed.peakA() == 0 || !(clearing instanceof Clearing.Cleared cleared)) {
      return clearing;
    }
    double sumA = battery.prospectiveA() + infeed.peakA();
    @Nullable Double capacityA = data.breakingCapacityA();
    if (capacityA != null && sumA > capacityA) {
      return new Clearing.NotCleared(
          text(sumA) + " with capacitors are above its breaking capacity of " + text(capacityA));
    }
    return with(battery, cleared);
  }

  private Clearing with(FaultCurrent battery, Clearing.Cleared cleared) {
    double letThroughA2S =
        infeed.throughA2S(data, voltageV, Kind.JOULE_INTEGRAL.siValueOf(cleared.letThrough()));
    return new Clearing.Cleared(
        Kind.TIME.ofSi(battery.timeToReachS(letThroughA2S)),
        Kind.JOULE_INTEGRAL.ofSi(letThroughA2S),
        Kind.CURRENT.ofSi(Kind.CURRENT.siValueOf(cleared.peak()) + infeed.peakA()));
  }

  private static String text(double currentA) {
    return Measures.format(AMPERE.of(currentA), Kind.CURRENT);
  }
}
