package org.wattwright.layout;

import java.util.Arrays;

/** Least and most that the last bays can add to each rule, by number of units in them. */
final class RestBounds {
  private final int first;
  private final int mostUnits;
  private long[][] least = {};
  private long[][] most = {};

  RestBounds(int first, int mostUnits) {
    this.first = first;
    this.mostUnits = Math.max(0, mostUnits);
  }

  /** Whether some way to fill the last bays may keep every rule; if not, none does. */
  boolean mayKeep(LoadRule[] rules, long[][][] tables, int[] counts, int unitsLeft) {
    if (least.length < rules.length) {
      work(tables);
    }
    for (int i = 0; i < rules.length; i++) {
      long sum = 0;
      for (int bay = 0; bay < first; bay++) {
        sum += tables[i][bay][counts[bay]];
      }
      if (sum + most[i][unitsLeft] < rules[i].low()
          || sum + least[i][unitsLeft] > rules[i].high()) {
        return false;
      }
    }
    return true;
  }

  private void work(long[][][] tables) {
    least = new long[tables.length][];
    most = new long[tables.length][];
    for (int i = 0; i < tables.length; i++) {
      least[i] = extreme(tables[i], 1);
      most[i] = extreme(tables[i], -1);
    }
  }

  /** Sign 1 for the least, −1 for the most; far off where no way has so many units. */
  private long[] extreme(long[][] table, int sign) {
    long[] best = new long[mostUnits + 1];
    Arrays.fill(best, Micrograms.UNBOUNDED);
    best[0] = 0;
    for (int bay = first; bay < table.length; bay++) {
      best = withOneMore(best, table[bay], sign);
    }
    for (int i = 0; i < best.length; i++) {
      best[i] = sign * best[i];
    }
    return best;
  }

  private static long[] withOneMore(long[] best, long[] row, int sign) {
    long[] more = new long[best.length];
    Arrays.fill(more, Micrograms.UNBOUNDED);
    for (int units = 0; units < best.length; units++) {
      for (int count = Math.min(units, row.length - 1); count >= 0; count--) {
        if (best[units - count] < Micrograms.UNBOUNDED) {
          more[units] = Math.min(more[units], best[units - count] + sign * row[count]);
        }
      }
    }
    return more;
  }
}
