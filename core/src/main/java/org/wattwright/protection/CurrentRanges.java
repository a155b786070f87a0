package org.wattwright.protection;

import java.util.Arrays;

/**
 * A set of currents: closed ranges in A, disjoint and rising. Immutable.
 *
 * <p>Ends are closed on both sides: a current at which two devices change places belongs to both.
 */
final class CurrentRanges {
  static final CurrentRanges NONE = new CurrentRanges(new double[0]);
  static final CurrentRanges ALL = of(0, Double.POSITIVE_INFINITY);

  /** Rounding of a crossing of two curves, relative; far below the reading of any curve. */
  private static final double ROUNDING = 1e-12;

  /** Lower and upper ends by turns. */
  private final double[] endsA;

  private CurrentRanges(double[] endsA) {
    this.endsA = endsA;
  }

  /** One range; none if it is empty. */
  static CurrentRanges of(double fromA, double toA) {
    return fromA <= toA ? new CurrentRanges(new double[] {fromA, toA}) : NONE;
  }

  /** From lower and upper ends by turns, rising; neighbours that touch become one. */
  static CurrentRanges ofEnds(double[] endsA, int count) {
    double[] kept = new double[count];
    int size = 0;
    for (int i = 0; i < count; i += 2) {
      if (size > 0 && endsA[i] <= kept[size - 1] * (1 + ROUNDING)) {
        kept[size - 1] = Math.max(kept[size - 1], endsA[i + 1]);
      } else {
        kept[size++] = endsA[i];
        kept[size++] = endsA[i + 1];
      }
    }
    return new CurrentRanges(Arrays.copyOf(kept, size));
  }

  int count() {
    return endsA.length / 2;
  }

  double fromA(int i) {
    return endsA[2 * i];
  }

  double toA(int i) {
    return endsA[2 * i + 1];
  }

  boolean contains(double currentA) {
    for (int i = 0; i < endsA.length; i += 2) {
      if (currentA >= endsA[i] && currentA <= endsA[i + 1]) {
        return true;
      }
    }
    return false;
  }

  CurrentRanges and(CurrentRanges other) {
    double[] ends = new double[endsA.length + other.endsA.length];
    int size = 0;
    int i = 0;
    int j = 0;
    while (i < endsA.length && j < other.endsA.length) {
      double fromA = Math.max(endsA[i], other.endsA[j]);
      double toA = Math.min(endsA[i + 1], other.endsA[j + 1]);
      if (fromA <= toA) {
        ends[size++] = fromA;
        ends[size++] = toA;
      }
      if (endsA[i + 1] < other.endsA[j + 1]) {
        i += 2;
      } else {
        j += 2;
      }
    }
    return ofEnds(ends, size);
  }

  CurrentRanges or(CurrentRanges other) {
    double[] ends = new double[endsA.length + other.endsA.length];
    int size = 0;
    int i = 0;
    int j = 0;
    while (i < endsA.length || j < other.endsA.length) {
      boolean own = j >= other.endsA.length || (i < endsA.length && endsA[i] <= other.endsA[j]);
      double[] next = own ? endsA : other.endsA;
      int at = own ? i : j;
      ends[size++] = next[at];
      ends[size++] = next[at + 1];
      i += own ? 2 : 0;
      j += own ? 0 : 2;
    }
    return ofEnds(ends, size);
  }

  /** What of a range is missing here. */
  CurrentRanges missingFrom(double fromA, double toA) {
    double[] ends = new double[endsA.length + 2];
    int size = 0;
    double atA = fromA;
    for (int i = 0; i < endsA.length && atA < toA; i += 2) {
      if (endsA[i] > atA * (1 + ROUNDING)) {
        ends[size++] = atA;
        ends[size++] = Math.min(endsA[i], toA);
      }
      atA = Math.max(atA, endsA[i + 1]);
    }
    if (atA < toA * (1 - ROUNDING)) {
      ends[size++] = atA;
      ends[size++] = toA;
    }
    return new CurrentRanges(Arrays.copyOf(ends, size));
  }

  /** Whether nothing of a range is missing. */
  boolean covers(double fromA, double toA) {
    return missingFrom(fromA, toA).count() == 0;
  }

  /** Lowest current from which all up to the given one is in the set; infinite if none. */
  double startOfTail(double toA) {
    for (int i = endsA.length - 2; i >= 0; i -= 2) {
      if (endsA[i] <= toA) {
        return endsA[i + 1] >= toA * (1 - ROUNDING) ? endsA[i] : Double.POSITIVE_INFINITY;
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  @Override
  public String toString() {
    return Arrays.toString(endsA);
  }
}
