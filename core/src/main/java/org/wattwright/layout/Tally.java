package org.wattwright.layout;

import java.util.Arrays;

/**
 * Counts what each rule ruled out. A rule has two slots: its own number for a broken limit, and
 * that plus the number of rules for missing data.
 */
final class Tally {
  private final long[] counts;
  private final long[] aloneCounts;
  private final double[] shortfalls;
  private final long[] nearest;

  Tally(int rules) {
    counts = new long[2 * rules];
    aloneCounts = new long[2 * rules];
    shortfalls = new double[rules];
    nearest = new long[rules];
    Arrays.fill(shortfalls, Double.POSITIVE_INFINITY);
    Arrays.fill(nearest, -1);
  }

  void count(int slot) {
    counts[slot]++;
  }

  void countAlone(int slot) {
    aloneCounts[slot]++;
  }

  /** A candidate, how far it misses the limit, and how much of that may be rounding. */
  record Miss(long index, double shortfall, double rounding) {}

  /** Keeps the candidate that misses the limit by least. */
  void offer(int rule, Miss miss, ContentOrder ties) {
    double shortfall = miss.shortfall();
    long index = miss.index();
    boolean nearer = shortfall < shortfalls[rule] - miss.rounding();
    boolean asNear = shortfall <= shortfalls[rule] + miss.rounding() && nearest[rule] >= 0;
    if (nearer || (asNear && ties.compare(index, nearest[rule]) < 0)) {
      shortfalls[rule] = shortfall;
      nearest[rule] = index;
    }
  }

  long countOf(int slot) {
    return counts[slot];
  }

  long aloneCountOf(int slot) {
    return aloneCounts[slot];
  }

  double shortfallOf(int rule) {
    return shortfalls[rule];
  }

  /** −1 if there is none. */
  long nearestOf(int rule) {
    return nearest[rule];
  }
}
