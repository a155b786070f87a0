package org.wattwright.protection;

import java.util.ArrayList;
import java.util.List;

/**
 * At which currents a fuse, or a trip, deals with a circuit: each condition with the currents at
 * which it holds. Immutable.
 *
 * @param borne currents that cable and contactor bear for ever
 * @param fuse conditions that must all hold for the fuse
 * @param trip conditions that must all hold for the trip
 */
record CoverRules(CurrentRanges borne, List<Condition> fuse, List<Condition> trip) {
  /** A condition, and what is said where it does not hold. */
  record Condition(CoverShortfall otherwise, CurrentRanges holds) {}

  CoverRules {
    fuse = List.copyOf(fuse);
    trip = List.copyOf(trip);
  }

  static CurrentRanges all(List<Condition> conditions) {
    CurrentRanges all = CurrentRanges.ALL;
    for (Condition condition : conditions) {
      all = all.and(condition.holds());
    }
    return all;
  }

  /** Currents that something deals with. */
  CurrentRanges covered() {
    return borne.or(all(fuse)).or(all(trip));
  }

  /** The first condition of each that does not hold at a current. */
  List<CoverShortfall> shortfallsAt(double currentA) {
    List<CoverShortfall> shortfalls = new ArrayList<>();
    for (List<Condition> conditions : List.of(fuse, trip)) {
      for (Condition condition : conditions) {
        if (!condition.holds().contains(currentA)) {
          shortfalls.add(condition.otherwise());
          break;
        }
      }
    }
    return shortfalls;
  }
}
