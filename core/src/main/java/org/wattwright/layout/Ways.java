package org.wattwright.layout;

/** Number of ways to share units out over bays, by number of units. */
final class Ways {
  private Ways() {}

  /** The ways when one more bay takes from none to {@code cap}; held at the largest long. */
  static long[] withOneMore(long[] ways, int cap) {
    long[] more = new long[ways.length];
    long count = 0;
    for (int sum = 0; sum < ways.length; sum++) {
      count = plus(count, ways[sum]);
      if (sum > cap && count < Long.MAX_VALUE) {
        count -= ways[sum - cap - 1];
      }
      more[sum] = count;
    }
    return more;
  }

  static long plus(long first, long second) {
    long sum = first + second;
    return sum < 0 ? Long.MAX_VALUE : sum;
  }
}
