package org.wattwright.profile;

import java.io.Serializable;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.wattwright.units.InvalidInputException;

/**
 * A history in plain numbers: segments that follow each other, straight within, with a jump between
 * two of them where the first does not end at the value at which the second starts.
 *
 * <p>Immutable; the constructor takes the arrays over without a copy.
 */
final class Trace implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Where segments meet: 0 first, strictly increasing, one more than there are segments. */
  private final double[] timesS;

  /** Value just after the start of each segment. */
  private final double[] from;

  /** Value just before the end of each segment. */
  private final double[] to;

  Trace(double[] timesS, double[] from, double[] to) {
    for (int i = 1; i < timesS.length; i++) {
      if (!(timesS[i] > timesS[i - 1])) {
        throw InvalidInputException.of(
            "Profile.times[" + i + "]", "> " + timesS[i - 1] + " s", timesS[i] + " s");
      }
    }
    this.timesS = timesS;
    this.from = from;
    this.to = to;
  }

  /** Straight between points. */
  static Trace ofPoints(double[] timesS, double[] values) {
    int last = values.length - 1;
    return new Trace(
        timesS, Arrays.copyOfRange(values, 0, last), Arrays.copyOfRange(values, 1, last + 1));
  }

  /** Constant over each duration. */
  static Trace ofSteps(double[] durationsS, double[] values) {
    return new Trace(endTimes(durationsS), values, values);
  }

  /** Times at which segments of these durations meet, from 0 on. */
  static double[] endTimes(double[] durationsS) {
    double[] timesS = new double[durationsS.length + 1];
    for (int i = 0; i < durationsS.length; i++) {
      timesS[i + 1] = timesS[i] + durationsS[i];
    }
    return timesS;
  }

  int size() {
    return from.length;
  }

  double durationS() {
    return timesS[from.length];
  }

  double startS(int segment) {
    return timesS[segment];
  }

  double endS(int segment) {
    return timesS[segment + 1];
  }

  double lengthS(int segment) {
    return timesS[segment + 1] - timesS[segment];
  }

  double from(int segment) {
    return from[segment];
  }

  double to(int segment) {
    return to[segment];
  }

  boolean isConstant(int segment) {
    return from[segment] == to[segment];
  }

  /** The segment that holds a time; of two that meet there, the later one. */
  int segmentAt(double timeS) {
    int found = Arrays.binarySearch(timesS, timeS);
    int index = found >= 0 ? found : -found - 2;
    return Math.max(0, Math.min(index, from.length - 1));
  }

  /** The straight line of a segment, at a time within it. */
  double valueAt(int segment, double timeS) {
    double share = (timeS - timesS[segment]) / lengthS(segment);
    return from[segment] + share * (to[segment] - from[segment]);
  }

  /** Value at a time, just after a jump; just before the end at the end. */
  double at(double timeS) {
    return timeS >= durationS() ? to[to.length - 1] : valueAt(segmentAt(timeS), timeS);
  }

  double lowest() {
    double lowest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < from.length; i++) {
      lowest = Math.min(lowest, Math.min(from[i], to[i]));
    }
    return lowest;
  }

  double highest() {
    double highest = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < from.length; i++) {
      highest = Math.max(highest, Math.max(from[i], to[i]));
    }
    return highest;
  }

  /** All values at the ends of segments, in increasing order. */
  double[] sortedLevels() {
    double[] levels = Arrays.copyOf(from, 2 * from.length);
    System.arraycopy(to, 0, levels, from.length, to.length);
    Arrays.sort(levels);
    return levels;
  }

  Trace scaled(double factor) {
    double[] newFrom = new double[from.length];
    double[] newTo = new double[to.length];
    for (int i = 0; i < from.length; i++) {
      newFrom[i] = from[i] * factor;
      newTo[i] = to[i] * factor;
    }
    return new Trace(timesS, newFrom, newTo);
  }

  /** This one, then the other. */
  Trace then(Trace next) {
    double[] joinedS = Arrays.copyOf(timesS, size() + next.size() + 1);
    for (int i = 1; i <= next.size(); i++) {
      joinedS[size() + i] = durationS() + next.timesS[i];
    }
    return new Trace(joinedS, joined(from, next.from), joined(to, next.to));
  }

  private static double[] joined(double[] first, double[] second) {
    double[] all = Arrays.copyOf(first, first.length + second.length);
    System.arraycopy(second, 0, all, first.length, second.length);
    return all;
  }

  /** This one several times over. */
  Trace repeated(int count) {
    double[] allTimesS = new double[size() * count + 1];
    double[] allFrom = new double[size() * count];
    double[] allTo = new double[size() * count];
    for (int i = 0; i < allFrom.length; i++) {
      allFrom[i] = from[i % size()];
      allTo[i] = to[i % size()];
      int repetition = i / size();
      // Counted from the start of each repetition, so that rounding does not pile up.
      allTimesS[i + 1] = repetition * durationS() + timesS[i % size() + 1];
    }
    return new Trace(allTimesS, allFrom, allTo);
  }

  /** The part between two times, 0 ≤ start &lt; end ≤ duration, counted from its start. */
  Trace part(double startS, double endS) {
    int first = segmentAt(startS);
    int last = segmentAt(endS);
    if (last > first && timesS[last] >= endS) {
      last--;
    }
    double[] partS = new double[last - first + 2];
    for (int i = first; i < last; i++) {
      partS[i - first + 1] = timesS[i + 1] - startS;
    }
    partS[last - first + 1] = endS - startS;
    double[] partFrom = Arrays.copyOfRange(from, first, last + 1);
    double[] partTo = Arrays.copyOfRange(to, first, last + 1);
    partFrom[0] = valueAt(first, startS);
    partTo[last - first] = valueAt(last, endS);
    return new Trace(partS, partFrom, partTo);
  }

  /** Values of both added; the other one is as long as this one, but for rounding. */
  Trace plus(Trace other) {
    double[] unionS = union(other);
    int segments = unionS.length - 1;
    double[] sumFrom = new double[segments];
    double[] sumTo = new double[segments];
    for (int i = 0; i < segments; i++) {
      double middleS = unionS[i] + (unionS[i + 1] - unionS[i]) / 2;
      int own = segmentAt(middleS);
      int others = other.segmentAt(middleS);
      sumFrom[i] = valueAt(own, unionS[i]) + other.valueAt(others, unionS[i]);
      sumTo[i] = valueAt(own, unionS[i + 1]) + other.valueAt(others, unionS[i + 1]);
    }
    return new Trace(unionS, sumFrom, sumTo);
  }

  private double[] union(Trace other) {
    double[] inner = Arrays.copyOfRange(other.timesS, 1, other.timesS.length - 1);
    double durationS = durationS();
    double[] othersInside = Arrays.stream(inner).filter(timeS -> timeS < durationS).toArray();
    return Arrays.stream(joined(timesS, othersInside)).sorted().distinct().toArray();
  }

  double[] times() {
    return timesS.clone();
  }

  double[] starts() {
    return from.clone();
  }

  double[] ends() {
    return to.clone();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Trace that
        && Arrays.equals(timesS, that.timesS)
        && Arrays.equals(from, that.from)
        && Arrays.equals(to, that.to);
  }

  @Override
  public int hashCode() {
    return (31 * Arrays.hashCode(timesS) + Arrays.hashCode(from)) * 31 + Arrays.hashCode(to);
  }
}
