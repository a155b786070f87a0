package org.wattwright.layout;

/**
 * Strings laid one after another along a route: how many cross from the bays passed so far to the
 * rest. Each takes its modules of each type in the order of the bays, so that none is opened before
 * it is needed and none is closed later than it must be.
 *
 * <p>With aₜ modules of type t so far and sₜ in each string: crossing = max ⌈aₜ/sₜ⌉ − min ⌊aₜ/sₜ⌋;
 * no other way to deal out the modules has fewer at any cut.
 */
final class StringCut {
  private final int[] perString;

  StringCut(int[] perString) {
    this.perString = perString;
  }

  /** Strings with modules on both sides, or whose types are not all complete. */
  int crossing(int[] soFar) {
    return begun(soFar) - complete(soFar);
  }

  private int begun(int[] soFar) {
    int most = 0;
    for (int type = 0; type < perString.length; type++) {
      most = Math.max(most, (soFar[type] + perString[type] - 1) / perString[type]);
    }
    return most;
  }

  private int complete(int[] soFar) {
    int least = Integer.MAX_VALUE;
    for (int type = 0; type < perString.length; type++) {
      least = Math.min(least, soFar[type] / perString[type]);
    }
    return least;
  }

  /** Whether a string passes through the next bay without a module in it. */
  boolean passesBy(int[] soFar, int[] next) {
    int[] after = new int[soFar.length];
    for (int type = 0; type < after.length; type++) {
      after[type] = soFar[type] + next[type];
    }
    int last = begun(soFar);
    for (int string = complete(after); string < last; string++) {
      if (!takes(string, soFar, after)) {
        return true;
      }
    }
    return false;
  }

  private boolean takes(int string, int[] soFar, int[] after) {
    for (int type = 0; type < perString.length; type++) {
      int from = Math.max(soFar[type], string * perString[type]);
      int to = Math.min(after[type], (string + 1) * perString[type]);
      if (from < to) {
        return true;
      }
    }
    return false;
  }
}
