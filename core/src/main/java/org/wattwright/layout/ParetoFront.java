package org.wattwright.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** The points that no other point dominates: at least as good in all, better in one. */
final class ParetoFront {
  private ParetoFront() {}

  /** Order of two candidates by what they are. */
  interface Ties {
    int compare(long one, long other);
  }

  /** A candidate and its costs, less is better, none of them NaN. */
  static final class Point {
    private final long index;
    private final double[] costs;

    Point(long index, double[] costs) {
      this.index = index;
      this.costs = costs;
    }

    long index() {
      return index;
    }

    boolean isKnown() {
      return Arrays.stream(costs).noneMatch(Double::isNaN);
    }

    private boolean dominates(Point other) {
      boolean better = false;
      for (int i = 0; i < costs.length; i++) {
        if (costs[i] > other.costs[i]) {
          return false;
        }
        better |= costs[i] < other.costs[i];
      }
      return better;
    }
  }

  /**
   * In lexicographic order a point can only be dominated by one before it, and then also by one on
   * the front so far.
   */
  static List<Point> of(List<Point> points, Ties ties) {
    List<Point> sorted = new ArrayList<>(points);
    Comparator<Point> byCosts = (one, other) -> Arrays.compare(one.costs, other.costs);
    sorted.sort(byCosts.thenComparing((one, other) -> ties.compare(one.index(), other.index())));
    List<Point> front = new ArrayList<>();
    for (Point point : sorted) {
      if (front.stream().noneMatch(member -> member.dominates(point))) {
        front.add(point);
      }
    }
    return front;
  }
}
