package org.wattwright.profile;

import java.util.Arrays;
import javax.measure.Quantity;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.NamedUnit;

/** Profiles from and to arrays of plain numbers. */
final class ProfileArrays {
  private ProfileArrays() {}

  /** A copy in SI; rejects what is not finite, and temperatures below absolute zero. */
  static <Q extends Quantity<Q>> double[] si(String field, double[] values, NamedUnit<Q> unit) {
    double[] si = new double[values.length];
    for (int i = 0; i < si.length; i++) {
      if (!Double.isFinite(values[i])) {
        String value = values[i] + " " + unit.symbol();
        throw InvalidInputException.of(field + "[" + i + "]", "finite", value);
      }
      si[i] = unit.kind().siValueOf(unit.of(values[i]));
    }
    return si;
  }

  /** The numbers in a unit; the array itself where that is the SI unit. */
  static <Q extends Quantity<Q>> double[] in(NamedUnit<Q> unit, double[] si) {
    Kind<Q> kind = unit.kind();
    if (unit.equals(kind.siUnit())) {
      return si;
    }
    return Arrays.stream(si).map(value -> unit.valueOf(kind.ofSi(value))).toArray();
  }

  static <Q extends Quantity<Q>> Profile<Q> ofPoints(
      Kind<Q> kind, double[] timesS, double[] values) {
    requireAsMany("Profile.values", timesS.length, values.length);
    if (timesS.length < 2) {
      throw InvalidInputException.of("Profile.samples", "two or more", "" + timesS.length);
    }
    if (timesS[0] != 0) {
      throw InvalidInputException.of("Profile.times[0]", "0 s", Kind.TIME.ofSi(timesS[0]) + "")
          .withHint("count time from the first sample");
    }
    return new Profile<>(kind, Trace.ofPoints(timesS, values), false);
  }

  static <Q extends Quantity<Q>> Profile<Q> ofSteps(
      Kind<Q> kind, double[] durationsS, double[] values) {
    requireAsMany("Profile.values", durationsS.length, values.length);
    if (durationsS.length == 0) {
      throw InvalidInputException.of("Profile.durations", "one or more", "none");
    }
    for (int i = 0; i < durationsS.length; i++) {
      if (!(durationsS[i] > 0)) {
        throw InvalidInputException.of(
            "Profile.durations[" + i + "]", "> 0 s", Kind.TIME.ofSi(durationsS[i]).toString());
      }
    }
    return new Profile<>(kind, Trace.ofSteps(durationsS, values), false);
  }

  private static void requireAsMany(String field, int times, int values) {
    if (times != values) {
      throw InvalidInputException.of(field, "as many as times (" + times + ")", "" + values);
    }
  }
}
