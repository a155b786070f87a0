package org.wattwright.layout;

import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.PriorityQueue;
import java.util.stream.IntStream;

/** Candidates that were found, as two numbers each: where in the space, and the cost of each. */
final class Found {
  private static final int FIRST_ROOM = 64;

  /** Wide enough for every candidate that rounding could make equal to the last one wanted. */
  private static final double REACH = 1e-9;

  private long[] indexes = new long[FIRST_ROOM];
  private double[] costs = new double[FIRST_ROOM];
  private int size;

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

  private record Ranked(long index, double cost) {}

  /** The best, best first. A cost that is not known comes last. */
  long[] best(int count, ContentOrder ties) {
    if (count <= 0 || size == 0) {
      return new long[0];
    }
    double worst = count < size ? costOfRank(count) : Double.NaN;
    double reach = worst + REACH * Math.abs(worst);
    int[] near = IntStream.range(0, size).filter(i -> !(costs[i] > reach)).toArray();
    double[] levels = Levels.of(Arrays.stream(near).mapToDouble(i -> costs[i]).toArray());
    Comparator<Ranked> order =
        Comparator.comparingDouble(Ranked::cost)
            .thenComparing((one, other) -> ties.compare(one.index(), other.index()));
    return IntStream.range(0, near.length)
        .mapToObj(i -> new Ranked(indexes[near[i]], levels[i]))
        .sorted(order)
        .limit(count)
        .mapToLong(Ranked::index)
        .toArray();
  }

  /** The cost of the candidate of that rank, counted from 1. */
  private double costOfRank(int rank) {
    PriorityQueue<Double> kept = new PriorityQueue<>(Collections.reverseOrder());
    for (int i = 0; i < size; i++) {
      if (kept.size() < rank) {
        kept.add(costs[i]);
      } else if (Double.compare(costs[i], kept.element()) < 0) {
        kept.remove();
        kept.add(costs[i]);
      }
    }
    return kept.element();
  }
}
