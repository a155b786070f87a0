package org.wattwright.layout;

import java.util.Arrays;

/**
 * Looks at every allocation of a pack of several types whose value lies in a window and that keeps
 * all rules. Meets in the middle as {@link AllocationScan} does, by the mix that the last bays must
 * hold in place of a count.
 */
final class MixScan {
  private final MixTables tables;
  private final AllocationScan.Question question;
  private final LoadRule[] rules;
  private long[][][] ruleTables = {};
  private final AllocationScan.Visitor visitor;
  private final Effort effort;
  private final MixHalf stored;
  private final int[] entries;
  private final long[] leastAfter;
  private final long[] mostAfter;

  MixScan(
      MixTables tables,
      AllocationScan.Question question,
      AllocationScan.Visitor visitor,
      Effort effort) {
    this.tables = tables;
    this.question = question;
    this.rules = question.rules().toArray(LoadRule[]::new);
    this.visitor = visitor;
    this.effort = effort;
    this.stored = new MixHalf(tables, question.value());
    int bays = tables.bays();
    this.entries = new int[bays];
    this.leastAfter = new long[bays + 1];
    this.mostAfter = new long[bays + 1];
    for (int bay = bays - 1; bay >= 0; bay--) {
      long[] value = question.value()[bay];
      leastAfter[bay] = leastAfter[bay + 1] + Arrays.stream(value).min().orElse(0);
      mostAfter[bay] = mostAfter[bay + 1] + Arrays.stream(value).max().orElse(0);
    }
  }

  /**
   * Runs.
   *
   * @return whether every allocation was covered
   */
  boolean run() {
    return fill(0, 0, 0, 0);
  }

  private boolean fill(int bay, int mix, int used, long sum) {
    if (visitor.isDone()
        || used > visitor.mostUsed()
        || sum + mostAfter[bay] < visitor.low()
        || sum + leastAfter[bay] > visitor.high()) {
      return true;
    }
    if (bay == stored.first()) {
      return complete(tables.space().full() - mix, sum);
    }
    for (int entry : tables.allowed(bay)) {
      int added = tables.mix(bay, entry);
      entries[bay] = entry;
      if (tables.space().fit(mix, added)
          && !fill(
              bay + 1,
              mix + added,
              entry > 0 ? used + 1 : used,
              sum + question.value()[bay][entry])) {
        return false;
      }
    }
    return true;
  }

  private boolean complete(int missing, long sum) {
    if (!effort.spend(stored.size(missing))) {
      return false;
    }
    int end = stored.end(missing);
    for (int place = stored.from(missing, visitor.low() - sum); place < end; place++) {
      long total = sum + stored.value(place);
      if (visitor.isDone() || total > visitor.high()) {
        break;
      }
      if (total >= visitor.low()) {
        meet(place, total);
      }
    }
    return true;
  }

  private void meet(int place, long total) {
    stored.decode(place, entries);
    if (Integer.bitCount(StringRoute.usedSet(entries)) > visitor.mostUsed()) {
      return;
    }
    if (ruleTables.length < rules.length) {
      ruleTables = question.ruleTables();
    }
    for (int i = 0; i < rules.length; i++) {
      if (!rules[i].isKept(BayTables.sum(ruleTables[i], entries))) {
        return;
      }
    }
    visitor.accept(entries, total);
  }
}
