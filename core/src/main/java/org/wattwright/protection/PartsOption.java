package org.wattwright.protection;

import java.util.Comparator;

/**
 * Parts that serve one circuit, as indices into the catalogues in their own order; −1 for none.
 *
 * @param cost of all parts
 * @param loopOhm most that cable and joints have, warm
 * @param allowedOhm most that all circuits nearer to the source may have, so that the lowest fault
 *     is still cleared in time
 */
record PartsOption(
    int cable,
    int fuse,
    int contactor,
    int resistor,
    PartCost cost,
    double loopOhm,
    double allowedOhm) {
  static final int NONE = -1;

  /** Cheapest first; ties by place in the catalogues' own order, so that they are settled. */
  static final Comparator<PartsOption> CHEAPEST_FIRST =
      Comparator.comparing(PartsOption::cost)
          .thenComparingInt(PartsOption::cable)
          .thenComparingInt(PartsOption::fuse)
          .thenComparingInt(PartsOption::contactor)
          .thenComparingInt(PartsOption::resistor);

  /** Whether nothing speaks for the other one of the same fuse. */
  boolean dominates(PartsOption other) {
    return cost.compareTo(other.cost) <= 0
        && allowedOhm >= other.allowedOhm
        && loopOhm <= other.loopOhm;
  }

  PartsOption allowing(double ohm) {
    return new PartsOption(cable, fuse, contactor, resistor, cost, loopOhm, ohm);
  }

  PartsOption costing(PartCost other) {
    return new PartsOption(cable, fuse, contactor, resistor, other, loopOhm, allowedOhm);
  }

  boolean hasSameParts(PartsOption other) {
    return cable == other.cable
        && fuse == other.fuse
        && contactor == other.contactor
        && resistor == other.resistor;
  }
}
