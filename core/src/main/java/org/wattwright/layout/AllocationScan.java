package org.wattwright.layout;

import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;

/**
 * Looks at every allocation of one pack whose value lies in a window and that keeps all rules.
 *
 * <p>Meets in the middle: the ways to fill the last bays are stored by number of units and value;
 * each way to fill the first bays then looks up those that complete it. The window may shrink on
 * the way. Exact: whole numbers, and nothing is left out but what lies outside the window or breaks
 * a rule. Cost: about the square root of the number of allocations, where the window is narrow.
 */
final class AllocationScan {
  /** Ways to be stored at most; 2²² of them take 50 MB. */
  private static final double MOST_STORED = 1 << 22;

  /** From so many ways in the window on, the rules are looked at for all of them at once. */
  private static final int WORTH_BOUNDING = 16;

  private final UnitTables tables;
  private final long[][] value;
  private final LoadRule[] rules;
  private final Supplier<List<long[][]>> ruleSource;

  /** Made when first needed: many a scan never comes to a rule. */
  private long[][][] ruleTables = {};

  private final int first;
  private final CapSums capSums;
  private final StoredHalf stored;
  private final RestBounds bounds;
  private final int[] counts;
  private final int[] capAfter;
  private final long[] leastAfter;
  private final long[] mostAfter;
  private final Visitor visitor;
  private final Effort effort;

  /** What is done with the allocations. */
  interface Visitor {
    /** Smallest value of interest. */
    long low();

    /** Largest value of interest. */
    long high();

    /** Most bays that may be used. */
    int mostUsed();

    /** Whether no other allocation is of interest any more. */
    boolean isDone();

    /** An allocation that keeps all rules; the array is overwritten afterwards. */
    void accept(int[] counts, long value);
  }

  /** The values to be windowed, and the rules to be kept, each with its table. */
  static final class Question {
    private final long[][] value;
    private final List<LoadRule> rules;
    private final Supplier<List<long[][]>> ruleTables;

    Question(long[][] value, List<LoadRule> rules, Supplier<List<long[][]>> ruleTables) {
      this.value = value;
      this.rules = rules;
      this.ruleTables = ruleTables;
    }

    long[][] value() {
      return value;
    }

    List<LoadRule> rules() {
      return rules;
    }

    /** Made anew at each call. */
    long[][][] ruleTables() {
      return ruleTables.get().toArray(long[][][]::new);
    }
  }

  AllocationScan(UnitTables tables, Question question, Visitor visitor, Effort effort) {
    this.tables = tables;
    this.value = question.value;
    this.rules = question.rules.toArray(LoadRule[]::new);
    this.ruleSource = question.ruleTables;
    this.visitor = visitor;
    this.effort = effort;
    int bays = tables.bays();
    this.counts = new int[bays];
    this.capAfter = new int[bays + 1];
    this.leastAfter = new long[bays + 1];
    this.mostAfter = new long[bays + 1];
    for (int bay = bays - 1; bay >= 0; bay--) {
      capAfter[bay] = capAfter[bay + 1] + tables.cap(bay);
      leastAfter[bay] = leastAfter[bay + 1] + Arrays.stream(value[bay]).min().orElse(0);
      mostAfter[bay] = mostAfter[bay + 1] + Arrays.stream(value[bay]).max().orElse(0);
    }
    this.first = firstStored(tables);
    int[] caps = new int[bays];
    Arrays.setAll(caps, tables::cap);
    this.capSums = new CapSums(caps, first);
    this.stored =
        new StoredHalf(
            Arrays.copyOfRange(value, first, bays),
            new StoredHalf.Demand(tables.units(), visitor.mostUsed(), capSums));
    this.bounds = new RestBounds(first, Math.min(tables.units(), capAfter[first]));
  }

  /** Half of the bays are stored, or fewer if they have too many ways. */
  private static int firstStored(UnitTables tables) {
    int first = tables.bays();
    double ways = 1;
    while (first > (tables.bays() + 1) / 2 && ways * (tables.cap(first - 1) + 1) < MOST_STORED) {
      first--;
      ways *= tables.cap(first) + 1;
    }
    return first;
  }

  /**
   * Runs.
   *
   * @return whether every allocation was covered
   */
  boolean run() {
    if (tables.units() > capAfter[0]) {
      return true;
    }
    return fill(0, tables.units(), 0, 0);
  }

  private boolean fill(int bay, int left, int used, long sum) {
    if (visitor.isDone()
        || left > capSums.from(bay, visitor.mostUsed() - used)
        || sum + mostAfter[bay] < visitor.low()
        || sum + leastAfter[bay] > visitor.high()) {
      return true;
    }
    if (bay == first) {
      return complete(left, sum);
    }
    int to = Math.min(tables.cap(bay), left);
    for (int count = Math.max(0, left - capAfter[bay + 1]); count <= to; count++) {
      counts[bay] = count;
      int usedNow = count > 0 ? used + 1 : used;
      if (!fill(bay + 1, left - count, usedNow, sum + value[bay][count])) {
        return false;
      }
    }
    return true;
  }

  private boolean complete(int left, long sum) {
    if (!effort.spend(stored.size(left))) {
      return false;
    }
    int from = stored.from(left, visitor.low() - sum);
    int to = stored.to(left, visitor.high() - sum);
    if (from < to
        && (to - from <= WORTH_BOUNDING || bounds.mayKeep(rules, ruleTables(), counts, left))) {
      for (int place = from; place < to && !visitor.isDone(); place++) {
        meet(place, sum + stored.value(place));
      }
    }
    return true;
  }

  private long[][][] ruleTables() {
    if (ruleTables.length < rules.length) {
      ruleTables = ruleSource.get().toArray(long[][][]::new);
    }
    return ruleTables;
  }

  private void meet(int place, long total) {
    if (total < visitor.low() || total > visitor.high()) {
      return;
    }
    stored.decode(place, counts, first);
    if (Integer.bitCount(StringRoute.usedSet(counts)) > visitor.mostUsed()) {
      return;
    }
    long[][][] ofRules = ruleTables();
    for (int i = 0; i < rules.length; i++) {
      if (!rules[i].isKept(BayTables.sum(ofRules[i], counts))) {
        return;
      }
    }
    visitor.accept(counts, total);
  }
}
