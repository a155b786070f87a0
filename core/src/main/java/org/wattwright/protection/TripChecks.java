package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.SECOND;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.profile.Profile;
import org.wattwright.profile.Spell;
import org.wattwright.units.Kind;

/**
 * Whether trips below the highest operating current stay out of normal operation: each must wait
 * for longer than its current lasts in the profile.
 */
final class TripChecks {
  private static final Source PRACTICE =
      Source.commonPractice("a delayed trip outlasts the peaks of normal operation");

  private TripChecks() {}

  static List<Check> of(Circuit circuit) {
    List<Check> checks = new ArrayList<>();
    for (OvercurrentTrip trip : circuit.trips()) {
      if (trip.currentA() < circuit.operatingA()) {
        checks.add(inOperation(circuit, trip));
      }
    }
    return checks;
  }

  private static Check inOperation(Circuit circuit, OvercurrentTrip trip) {
    CheckBuilder check =
        Check.named(
                "protection.trip-in-operation",
                circuit.name() + " at or above the trip of " + trip.current() + " in operation")
            .source(PRACTICE);
    Optional<Profile<ElectricCurrent>> profile = circuit.profile();
    if (profile.isEmpty() || circuit.operatingA() > peakA(profile.get())) {
      return check
          .note("how long its highest operating current lasts is not told by a profile")
          .recommends(false);
    }
    double lastsS = longestS(profile.get(), trip.current());
    if (Double.isInfinite(lastsS)) {
      return check.note("for ever").holds(false);
    }
    return check
        .note("the earliest delay must be longer, not only the latest, " + trip.delay())
        .atMost(Figure.ofSi(lastsS, SECOND), Figure.of(trip.delay(), SECOND));
  }

  private static double lengthS(Spell spell) {
    return spell.endless() ? Double.POSITIVE_INFINITY : Kind.TIME.siValueOf(spell.length());
  }

  private static double peakA(Profile<ElectricCurrent> profile) {
    return Math.abs(Kind.CURRENT.siValueOf(profile.peak()));
  }

  /** Longest spell of either direction. */
  private static double longestS(
      Profile<ElectricCurrent> profile, Quantity<ElectricCurrent> current) {
    double longestS = 0;
    for (Profile<ElectricCurrent> way : List.of(profile, profile.scaled(-1))) {
      double spellS =
          way.repeating().longestAtOrAbove(current).map(TripChecks::lengthS).orElse(0.0);
      longestS = Math.max(longestS, spellS);
    }
    return longestS;
  }
}
