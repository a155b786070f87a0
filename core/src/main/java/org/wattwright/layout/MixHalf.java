package org.wattwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** All ways to put mixes into the last bays of a list, by the mix of them all and then by value. */
final class MixHalf {
  /** Ways to be stored at most. */
  private static final double MOST_STORED = 1 << 20;

  private final MixTables tables;
  private final int first;
  private final int[] start;
  private final long[] values;
  private final int[] codes;

  /** A mix, what it adds, and the places of its entries among those allowed, as one number. */
  private record Way(int mix, long value, int code) {}

  MixHalf(MixTables tables, long[][] value) {
    this.tables = tables;
    this.first = firstStored(tables);
    List<Way> ways = ways(value);
    ways.sort(Comparator.comparingInt(Way::mix).thenComparingLong(Way::value));
    start = new int[tables.space().size() + 1];
    values = ways.stream().mapToLong(Way::value).toArray();
    codes = ways.stream().mapToInt(Way::code).toArray();
    ways.forEach(way -> start[way.mix() + 1]++);
    for (int mix = 0; mix < tables.space().size(); mix++) {
      start[mix + 1] += start[mix];
    }
  }

  /** Half of the bays are stored, or fewer if they have too many ways. */
  private static int firstStored(MixTables tables) {
    int first = tables.bays();
    double ways = 1;
    while (first > (tables.bays() + 1) / 2
        && ways * tables.allowed(first - 1).length < MOST_STORED) {
      first--;
      ways *= tables.allowed(first).length;
    }
    return first;
  }

  private List<Way> ways(long[][] value) {
    List<Way> ways = new ArrayList<>(List.of(new Way(0, 0, 0)));
    for (int bay = first; bay < tables.bays(); bay++) {
      int[] allowed = tables.allowed(bay);
      List<Way> longer = new ArrayList<>();
      for (Way way : ways) {
        for (int place = 0; place < allowed.length; place++) {
          int mix = tables.mix(bay, allowed[place]);
          if (tables.space().fit(way.mix(), mix)) {
            long sum = way.value() + value[bay][allowed[place]];
            longer.add(new Way(way.mix() + mix, sum, way.code() * allowed.length + place));
          }
        }
      }
      ways = longer;
    }
    return ways;
  }

  /** The first bay that is stored. */
  int first() {
    return first;
  }

  /** Number of ways that hold a mix. */
  int size(int mix) {
    return start[mix + 1] - start[mix];
  }

  /** Place of the first way that holds a mix with a value of at least {@code low}. */
  int from(int mix, long low) {
    int from = start[mix];
    int to = start[mix + 1];
    while (from < to) {
      int middle = (from + to) >>> 1;
      if (values[middle] < low) {
        from = middle + 1;
      } else {
        to = middle;
      }
    }
    return from;
  }

  /** Place after the last way that holds a mix. */
  int end(int mix) {
    return start[mix + 1];
  }

  long value(int place) {
    return values[place];
  }

  /** Writes the entries of the way at a place. */
  void decode(int place, int[] entries) {
    int code = codes[place];
    for (int bay = tables.bays() - 1; bay >= first; bay--) {
      int[] allowed = tables.allowed(bay);
      entries[bay] = allowed[code % allowed.length];
      code /= allowed.length;
    }
  }
}
