package org.wattwright.protection;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wattwright.protection.CoverRules.Condition;

/**
 * At which currents of a circuit a cable, a fuse and a contactor are dealt with: each pair is
 * worked out once, since the three meet only two by two. Not thread-safe.
 */
final class CoverKernel {
  private final @Nullable OvercurrentTrip trip;
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
    this.trip = circuit.tripOrNull();
    this.isSourceLimited = isSourceLimited;
  }

  CoverRules rules(CableWithstand cable, @Nullable FuseLine fuse, @Nullable SwitchLine contactor) {
    double forEverA =
        contactor == null
            ? cable.ampacityA()
            : Math.min(cable.ampacityA(), contactor.continuousA());
    return new CoverRules(
        CurrentRanges.of(0, forEverA), byFuse(cable, fuse, contactor), byTrip(cable, contactor));
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
      if (trip != null) {
        conditions.add(
            new Condition(
                CoverShortfall.CONTACTOR_OPENS_FIRST,
                CurrentRanges.of(0, contactor.breakA()).or(quicker(fuse, trip.delayS() - riseS))));
      }
    }
    return conditions;
  }

  private List<Condition> byTrip(CableWithstand cable, @Nullable SwitchLine contactor) {
    if (trip == null || (contactor == null && !isSourceLimited)) {
      return List.of(new Condition(CoverShortfall.NO_TRIP, CurrentRanges.NONE));
    }
    double openS = tripS(contactor);
    List<Condition> conditions = new ArrayList<>(4);
    conditions.add(
        new Condition(
            CoverShortfall.BELOW_TRIP,
            CurrentRanges.of(trip.currentA(), Double.POSITIVE_INFINITY)));
    if (contactor != null) {
      conditions.add(
          new Condition(
              CoverShortfall.ABOVE_CONTACTOR_BREAK, CurrentRanges.of(0, contactor.breakA())));
    }
    conditions.add(
        new Condition(
            CoverShortfall.TRIP_SLOWER_THAN_CABLE,
            known.computeIfAbsent(new Pair(cable, contactor), pair -> cable.bears(openS))));
    if (contactor != null) {
      conditions.add(
          new Condition(
              CoverShortfall.TRIP_SLOWER_THAN_CONTACTOR,
              known.computeIfAbsent(new Pair(contactor, null), pair -> contactor.bears(openS))));
    }
    return conditions;
  }

  private double tripS(@Nullable SwitchLine contactor) {
    double delayS = trip == null ? Double.POSITIVE_INFINITY : trip.delayS();
    return contactor == null ? delayS : delayS + contactor.openingS();
  }

  private CurrentRanges quicker(FuseLine fuse, double timeS) {
    if (!(timeS > 0)) {
      return CurrentRanges.NONE;
    }
    return known.computeIfAbsent(new Pair(fuse, timeS), pair -> fuse.clearing().atMost(timeS));
  }

  /** Currents that are dealt with, and within a time. */
  CurrentRanges clearedWithin(
      double timeS, CoverRules rules, @Nullable FuseLine fuse, @Nullable SwitchLine contactor) {
    CurrentRanges cleared = CurrentRanges.NONE;
    if (fuse != null) {
      cleared = quicker(fuse, timeS - riseS).and(CoverRules.all(rules.fuse()));
    }
    return tripS(contactor) <= timeS ? cleared.or(CoverRules.all(rules.trip())) : cleared;
  }

  /** Longest time in which a current is cleared; infinite if nothing deals with it. */
  double clearingS(
      double currentA, CoverRules rules, @Nullable FuseLine fuse, @Nullable SwitchLine contactor) {
    double leastS = Double.POSITIVE_INFINITY;
    if (fuse != null && CoverRules.all(rules.fuse()).contains(currentA)) {
      leastS = fuse.clearing().at(currentA);
    }
    return CoverRules.all(rules.trip()).contains(currentA)
        ? Math.min(leastS, tripS(contactor))
        : leastS;
  }
}
