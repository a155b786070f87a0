package org.wattwright.layout;

import java.util.Arrays;

/**
 * Values that differ by rounding alone, made equal: 16 modules of 12 cells hold what 12 modules of
 * 16 cells hold, though the last digits of the two products differ.
 */
final class Levels {
  /** As in a check; far below anything that can be measured. */
  static final double ROUNDING = 1e-12;

  private Levels() {}

  /** The same values, neighbours within rounding set to the least of their group; NaN stays. */
  static double[] of(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    double[] levels = sorted.clone();
    for (int i = 1; i < sorted.length; i++) {
      if (sorted[i] - sorted[i - 1] <= ROUNDING * Math.abs(sorted[i])) {
        levels[i] = levels[i - 1];
      }
    }
    double[] result = new double[values.length];
    for (int i = 0; i < result.length; i++) {
      result[i] = levels[Arrays.binarySearch(sorted, values[i])];
    }
    return result;
  }
}
