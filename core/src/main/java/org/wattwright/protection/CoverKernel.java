package org.wattwright.protection;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wattwright.protection.CoverRules.Condition;
import org.wattwright.protection.CoverRules.Trip;

/**
 * At which currents of a circuit a cable, a fuse and a contactor are dealt with: each pair is
 * worked out once, since the three meet only two by two. Not thread-safe.
 */
final class CoverKernel {
  private final List<OvercurrentTrip> trips;
  private final boolean isSourceLimited;
  private final double riseS;
  private final Map<Pair, CurrentRanges> known = new HashMap<>();

  private record Pair(Object first, @Nullable Object second) {
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Pair that
          && first == that.first
          && (second == that.second || (second instanceof Double && second.equals(that.second)));
    }

    @Override
    public int hashCode() {
      int own = second instanceof Double ? second.hashCode() : System.identityHashCode(second);
      return 31 * System.identityHashCode(first) + own;
    }
  }

  /**
   * The kernel of one circuit.
   *
   * @param isSourceLimited whether a trip stops the source itself
   * @param riseS by how much the rise of the current may delay what a virtual time says
   */
  CoverKernel(Circuit circuit, boolean isSourceLimited, double riseS) {
    this.riseS = riseS;
    this.trips = circuit.trips();
    this.isSourceLimited = isSourceLimited;
  }

  CoverRules rules(CableWithstand cable, @Nullable FuseLine fuse, @Nullable SwitchLine contactor) {
    double forEverA =
        contactor == null
            ? cable.ampacityA()
            : Math.min(cable.ampacityA(), contactor.continuousA());
    return new CoverRules(
        CurrentRanges.of(0, forEverA), byFuse(cable, fuse, contactor), byTrips(cable, contactor));
  }

  private List<Condition> byFuse(
      CableWithstand cable, @Nullable FuseLine fuse, @Nullable SwitchLine contactor) {
    if (fuse == null) {
      return List.of(new Condition(CoverShortfall.NO_FUSE, CurrentRanges.NONE));
    }
    TimeCurve clearing = fuse.clearing();
    TimeCurve heat = fuse.heat();
    List<Condition> conditions = new ArrayList<>(5);
    conditions.add(
        new Condition(
            CoverShortfall.BELOW_MINIMUM_BREAKING,
            CurrentRanges.of(fuse.minimumBreakingA(), Double.POSITIVE_INFINITY)));
    conditions.add(
        new Condition(
            CoverShortfall.ABOVE_BREAKING_CAPACITY, CurrentRanges.of(0, fuse.breakingA())));
    conditions.add(
        new Condition(
            CoverShortfall.OUTSIDE_FUSE_CURVE,
            CurrentRanges.of(clearing.lowestA(), clearing.highestA())));
    conditions.add(
        new Condition(
            CoverShortfall.FUSE_SLOWER_THAN_CABLE,
            known.computeIfAbsent(new Pair(cable, fuse), pair -> cable.bears(heat))));
    if (contactor != null) {
      conditions.add(
          new Condition(
              CoverShortfall.FUSE_SLOWER_THAN_CONTACTOR,
              known.computeIfAbsent(new Pair(fuse, contactor), p -> contactor.bears(heat))));
      if (!trips.isEmpty()) {
        // Trips are in order of their delay: the quickest counts at every current.
        double quickestS = trips.get(0).delayS();
        conditions.add(
            new Condition(
                CoverShortfall.CONTACTOR_OPENS_FIRST,
                CurrentRanges.of(0, contactor.breakA()).or(quicker(fuse, quickestS - riseS))));
      }
    }
    return conditions;
  }

  private List<Trip> byTrips(CableWithstand cable, @Nullable SwitchLine contactor) {
    if (trips.isEmpty() || (contactor == null && !isSourceLimited)) {
      Condition none = new Condition(CoverShortfall.NO_TRIP, CurrentRanges.NONE);
      return List.of(new Trip(Double.POSITIVE_INFINITY, List.of(none)));
    }
    List<Trip> all = new ArrayList<>(trips.size());
    for (OvercurrentTrip trip : trips) {
      double opensS = contactor == null ? trip.delayS() : trip.delayS() + contactor.openingS();
      all.add(new Trip(opensS, byTrip(trip.currentA(), opensS, cable, contactor)));
    }
    return all;
  }

  private List<Condition> byTrip(
      double fromA, double opensS, CableWithstand cable, @Nullable SwitchLine contactor) {
    List<Condition> conditions = new ArrayList<>(4);
    conditions.add(
        new Condition(
            CoverShortfall.BELOW_TRIP, CurrentRanges.of(fromA, Double.POSITIVE_INFINITY)));
    if (contactor != null) {
      conditions.add(
          new Condition(
              CoverShortfall.ABOVE_CONTACTOR_BREAK, CurrentRanges.of(0, contactor.breakA())));
    }
    conditions.add(
        new Condition(
            CoverShortfall.TRIP_SLOWER_THAN_CABLE,
            known.computeIfAbsent(new Pair(cable, opensS), pair -> cable.bears(opensS))));
    if (contactor != null) {
      conditions.add(
          new Condition(
              CoverShortfall.TRIP_SLOWER_THAN_CONTACTOR,
              known.computeIfAbsent(new Pair(contactor, opensS), pair -> contactor.bears(opensS))));
    }
    return conditions;
  }

  private CurrentRanges quicker(FuseLine fuse, double timeS) {
    if (!(timeS > 0)) {
      return CurrentRanges.NONE;
    }
    return known.computeIfAbsent(new Pair(fuse, timeS), pair -> fuse.clearing().atMost(timeS));
  }

  /** Currents that are dealt with, and within a time. */
  CurrentRanges clearedWithin(double timeS, CoverRules rules, @Nullable FuseLine fuse) {
    CurrentRanges tripped = rules.tripped(timeS);
    return fuse == null
        ? tripped
        : tripped.or(quicker(fuse, timeS - riseS).and(CoverRules.all(rules.fuse())));
  }

  /** Longest time in which a current is cleared; infinite if nothing deals with it. */
  double clearingS(double currentA, CoverRules rules, @Nullable FuseLine fuse) {
    double leastS = Double.POSITIVE_INFINITY;
    if (fuse != null && CoverRules.all(rules.fuse()).contains(currentA)) {
      // Of a current without rise: the rise adds at most this.
      leastS = fuse.clearing().at(currentA) + riseS;
    }
    for (Trip trip : rules.trips()) {
      leastS = trip.all().contains(currentA) ? Math.min(leastS, trip.opensS()) : leastS;
    }
    return leastS;
  }
}
