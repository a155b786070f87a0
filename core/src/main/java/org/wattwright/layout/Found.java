package org.wattwright.layout;

import java.util.Arrays;
import java.util.Comparator;
import java.util.PriorityQueue;

/** Candidates that were found, as two numbers each: where in the space, and the cost of each. */
final class Found {
  private static final int FIRST_ROOM = 64;

  private long[] indexes = new long[FIRST_ROOM];
  private double[] costs = new double[FIRST_ROOM];
  private int size;

  private record Ranked(long index, double cost) {}

  void add(long index, double cost) {
    if (size == indexes.length) {
      indexes = Arrays.copyOf(indexes, 2 * size);
      costs = Arrays.copyOf(costs, 2 * size);
    }
    indexes[size] = index;
    costs[size] = cost;
    size++;
  }

  int size() {
    return size;
  }

  long[] indexes() {
    return Arrays.copyOf(indexes, size);
  }

  /** The best, best first. A cost that is not known comes last. */
  long[] best(int count, ContentOrder ties) {
    Comparator<Ranked> order =
        Comparator.comparingDouble(Ranked::cost)
            .thenComparing((one, other) -> ties.compare(one.index(), other.index()));
    PriorityQueue<Ranked> kept = new PriorityQueue<>(order.reversed());
    for (int i = 0; i < size && count > 0; i++) {
      Ranked next = new Ranked(indexes[i], costs[i]);
      if (kept.size() < count) {
        kept.add(next);
      } else if (order.compare(next, kept.element()) < 0) {
        kept.remove();
        kept.add(next);
      }
    }
    return kept.stream().sorted(order).mapToLong(Ranked::index).toArray();
  }
}
