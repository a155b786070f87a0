package org.wattwright.layout;

import java.util.Comparator;
import java.util.List;
import org.wattwright.layout.AllocationPass.Aim;

/** One pack about to be scanned in a pass. */
final class PackScan {
  /**
   * By what nothing of a pack can beat; then the pack with most allocations, which is likeliest to
   * hold one that narrows the search for others.
   */
  static final Comparator<PackScan> NEAREST_FIRST =
      Comparator.comparingDouble(PackScan::bound)
          .thenComparing(Comparator.comparingLong((PackScan scan) -> scan.size).reversed());

  private final int option;
  private final BayTables tables;
  private final long[][] value;
  private final double bound;
  private final long size;

  /** Index of the pack by content, its tables, and those of what the pass measures. */
  PackScan(int option, BayTables tables, long[][] value, Aim aim) {
    this.option = option;
    this.tables = tables;
    this.value = value;
    this.bound =
        aim.measure() == null ? 0 : tables.leastMissed(value, aim.measure(), aim.mostUsed());
    this.size = tables.size();
  }

  int option() {
    return option;
  }

  /** Deviation below which the pack has nothing. */
  double bound() {
    return bound;
  }

  /**
   * Offers every allocation of interest to the list of the best.
   *
   * @return whether every allocation was covered
   */
  boolean run(AllocationSpec spec, Aim aim, Effort effort) {
    AllocationPass pass = new AllocationPass(spec, option, tables, aim);
    List<LoadRule> rules = pass.rules();
    AllocationScan.Question question =
        new AllocationScan.Question(value, rules, () -> tables.of(rules));
    return tables.scan(question, pass, effort);
  }
}
