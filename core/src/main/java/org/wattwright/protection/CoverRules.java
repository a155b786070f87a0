package org.wattwright.protection;

import java.util.ArrayList;
import java.util.List;

/**
 * At which currents a fuse, or one of the trips, deals with a circuit: each condition with the
 * currents at which it holds. Immutable.
 *
 * @param borne currents that cable and contactor bear for ever
 * @param fuse conditions that must all hold for the fuse
 * @param trips each with conditions that must all hold for it; at least one
 */
record CoverRules(CurrentRanges borne, List<Condition> fuse, List<Trip> trips) {
  /** A condition, and what is said where it does not hold. */
  record Condition(CoverShortfall otherwise, CurrentRanges holds) {}

  /** A trip: after how long its contactor is open, or its source stopped, and its conditions. */
  record Trip(double opensS, List<Condition> conditions) {
    Trip {
      conditions = List.copyOf(conditions);
    }

    CurrentRanges all() {
      return CoverRules.all(conditions);
    }
  }

  CoverRules {
    fuse = List.copyOf(fuse);
    trips = List.copyOf(trips);
  }

  static CurrentRanges all(List<Condition> conditions) {
    CurrentRanges all = CurrentRanges.ALL;
    for (Condition condition : conditions) {
      all = all.and(condition.holds());
    }
    return all;
  }

  /** Currents that one of the trips deals with within a time. */
  CurrentRanges tripped(double withinS) {
    CurrentRanges any = CurrentRanges.NONE;
    for (Trip trip : trips) {
      if (trip.opensS() <= withinS) {
        any = any.or(trip.all());
      }
    }
    return any;
  }

  CurrentRanges tripped() {
    return tripped(Double.POSITIVE_INFINITY);
  }

  /** Currents that something deals with. */
  CurrentRanges covered() {
    return borne.or(all(fuse)).or(tripped());
  }

  /**
   * The first condition of the fuse that does not hold at a current, and that of the trip that
   * comes farthest.
   */
  List<CoverShortfall> shortfallsAt(double currentA) {
    List<CoverShortfall> shortfalls = new ArrayList<>();
    addIfAny(shortfalls, fuse, firstFailing(fuse, currentA));
    Trip farthest = trips.get(0);
    for (Trip trip : trips) {
      int failing = firstFailing(trip.conditions(), currentA);
      farthest = failing > firstFailing(farthest.conditions(), currentA) ? trip : farthest;
    }
    addIfAny(shortfalls, farthest.conditions(), firstFailing(farthest.conditions(), currentA));
    return shortfalls;
  }

  private static int firstFailing(List<Condition> conditions, double currentA) {
    int i = 0;
    while (i < conditions.size() && conditions.get(i).holds().contains(currentA)) {
      i++;
    }
    return i;
  }

  private static void addIfAny(
      List<CoverShortfall> shortfalls, List<Condition> conditions, int failing) {
    if (failing < conditions.size()) {
      shortfalls.add(conditions.get(failing).otherwise());
    }
  }
}
