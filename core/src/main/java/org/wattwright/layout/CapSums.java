package org.wattwright.layout;

import java.util.Arrays;

/** Most units that so many bays can take, of the bays from one on, and of those before it. */
final class CapSums {
  private final int[][] from;
  private final int[] before;

  /** Bays are split before {@code first}. */
  CapSums(int[] caps, int first) {
    from = new int[caps.length + 1][];
    for (int bay = 0; bay <= caps.length; bay++) {
      from[bay] = sums(Arrays.copyOfRange(caps, bay, caps.length), caps.length);
    }
    before = sums(Arrays.copyOfRange(caps, 0, first), caps.length);
  }

  private static int[] sums(int[] caps, int most) {
    int[] sorted = caps.clone();
    Arrays.sort(sorted);
    int[] sums = new int[most + 1];
    for (int used = 1; used <= most; used++) {
      int next = sorted.length - used;
      sums[used] = sums[used - 1] + (next >= 0 ? sorted[next] : 0);
    }
    return sums;
  }

  /** Of the bays from one on; negative if fewer than none may be used. */
  int from(int bay, int used) {
    return used < 0 ? -1 : from[bay][Math.min(used, before.length - 1)];
  }

  /** Of the bays before the split; negative if fewer than none may be used. */
  int before(int used) {
    return used < 0 ? -1 : before[Math.min(used, before.length - 1)];
  }
}
