package org.wattwright.layout;

import java.util.Arrays;

/**
 * All ways to fill the last bays of a list, by number of units and then by value, so that those
 * with a value in a window are found at once.
 *
 * <p>Each number of units has as many bins of equal width as it has ways; a bin holds one way on
 * average.
 */
final class StoredHalf {
  /** More units than there are. */
  private static final int NEVER = Integer.MAX_VALUE / 2;

  private final long[][] table;
  private final int[] caps;

  /** Ways in the order of their bins. */
  private long[] values = {};

  private int[] codes = {};

  /** Where each bin begins; bins of one number of units after those of the one before. */
  private int[] binStart = {};

  private final int[] firstBin;
  private final long[] least;
  private final long[] most;
  private final double[] binsPerValue;
  private int size;

  private final Demand demand;

  /** Units of the whole list, bays that may be used at most, and what the other bays can take. */
  record Demand(int units, int mostUsed, CapSums caps) {}

  /** Values of the counts of each stored bay; only ways that the other bays can complete. */
  StoredHalf(long[][] table, Demand demand) {
    this.table = table;
    this.demand = demand;
    this.caps = Arrays.stream(table).mapToInt(row -> row.length - 1).toArray();
    int room = Math.min(demand.units(), Arrays.stream(caps).sum());
    this.firstBin = new int[room + 2];
    this.least = new long[room + 1];
    this.most = new long[room + 1];
    this.binsPerValue = new double[room + 1];
    sortIntoBins(new Unsorted(room));
  }

  /** The ways in the order in which they are counted up. */
  private final class Unsorted {
    private final int room;
    private final int[] after = new int[caps.length + 1];

    /** Units that these bays must take at least when so many of them are in use. */
    private final int[] fewest = new int[caps.length + 1];

    private final long[] sums = new long[caps.length + 1];
    private final int[] coded = new int[caps.length + 1];
    private final int[] perUnits;
    private long[] value = new long[1024];
    private int[] code = new int[1024];
    private int[] units = new int[1024];

    Unsorted(int room) {
      this.room = room;
      this.perUnits = new int[room + 1];
      for (int bay = caps.length - 1; bay >= 0; bay--) {
        after[bay] = after[bay + 1] + caps[bay];
      }
      for (int used = 0; used < fewest.length; used++) {
        fewest[used] =
            used > demand.mostUsed()
                ? NEVER
                : demand.units() - demand.caps().before(demand.mostUsed() - used);
      }
      if (caps.length == 0) {
        keep(0, 0, 0);
      } else {
        fill(0, 0, 0);
      }
    }

    private void fill(int bay, int filled, int used) {
      int from = Math.max(0, fewest[used] - filled - after[bay + 1]);
      int to = Math.min(caps[bay], room - filled);
      for (int count = from; count <= to; count++) {
        sums[bay + 1] = sums[bay] + table[bay][count];
        coded[bay + 1] = coded[bay] * (caps[bay] + 1) + count;
        int usedNow = count > 0 ? used + 1 : used;
        int filledNow = filled + count;
        if (filledNow + after[bay + 1] < fewest[usedNow]) {
          continue;
        }
        if (bay + 1 == caps.length) {
          keep(filledNow, sums[bay + 1], coded[bay + 1]);
        } else {
          fill(bay + 1, filledNow, usedNow);
        }
      }
    }

    private void keep(int filled, long sum, int coded) {
      if (size == value.length) {
        value = Arrays.copyOf(value, 2 * size);
        code = Arrays.copyOf(code, 2 * size);
        units = Arrays.copyOf(units, 2 * size);
      }
      value[size] = sum;
      code[size] = coded;
      units[size] = filled;
      least[filled] = perUnits[filled] == 0 ? sum : Math.min(least[filled], sum);
      most[filled] = perUnits[filled] == 0 ? sum : Math.max(most[filled], sum);
      perUnits[filled]++;
      size++;
    }
  }

  private void sortIntoBins(Unsorted ways) {
    for (int units = 0; units < ways.perUnits.length; units++) {
      int bins = ways.perUnits[units];
      firstBin[units + 1] = firstBin[units] + bins;
      binsPerValue[units] = bins / ((double) most[units] - least[units] + 1);
    }
    binStart = new int[size + 1];
    int[] bin = new int[size];
    for (int i = 0; i < size; i++) {
      bin[i] = bin(ways.units[i], ways.value[i]);
      binStart[bin[i] + 1]++;
    }
    for (int i = 0; i < size; i++) {
      binStart[i + 1] += binStart[i];
    }
    int[] next = Arrays.copyOf(binStart, size);
    values = new long[size];
    codes = new int[size];
    for (int i = 0; i < size; i++) {
      int place = next[bin[i]]++;
      values[place] = ways.value[i];
      codes[place] = ways.code[i];
    }
  }

  /** Bins never fall as values rise, whatever the rounding. */
  private int bin(int units, long value) {
    int bin = (int) ((value - least[units]) * binsPerValue[units]);
    return firstBin[units] + Math.min(bin, firstBin[units + 1] - firstBin[units] - 1);
  }

  /** Number of ways with so many units. */
  int size(int units) {
    return units < least.length ? firstBin[units + 1] - firstBin[units] : 0;
  }

  /** First place to look for ways with so many units and a value of at least {@code low}. */
  int from(int units, long low) {
    if (size(units) == 0 || low > most[units]) {
      return Integer.MAX_VALUE;
    }
    return binStart[low <= least[units] ? firstBin[units] : bin(units, low)];
  }

  /** Place after the last to look for ways with so many units and a value of at most high. */
  int to(int units, long high) {
    if (size(units) == 0 || high < least[units]) {
      return 0;
    }
    return binStart[high >= most[units] ? firstBin[units + 1] : bin(units, high) + 1];
  }

  long value(int place) {
    return values[place];
  }

  /** Writes the counts of the way at a place behind {@code first} of an array. */
  void decode(int place, int[] counts, int first) {
    int code = codes[place];
    for (int bay = caps.length - 1; bay >= 0; bay--) {
      int radix = caps[bay] + 1;
      counts[first + bay] = code % radix;
      code /= radix;
    }
  }
}
