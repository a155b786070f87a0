package org.wattwright.layout;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wattwright.layout.AllocationPass.Aim;

/** One run: least deviation first, then the order within its band. Not thread-safe. */
final class AllocationRun {
  private final AllocationSpec spec;
  private final Effort effort;
  private final int wanted;

  AllocationRun(AllocationSpec spec) {
    this.spec = spec;
    this.effort = new Effort(spec.draft());
    this.wanted = spec.draft().alternatives + 1;
  }

  /**
   * What a run has found.
   *
   * @param leaves best first
   * @param covered allocations covered by the last pass
   * @param stopped whether it ended early
   * @param gap by how much the deviation of the best might still be beaten
   */
  record Outcome(List<Leaf> leaves, long covered, boolean stopped, double gap) {}

  Outcome run() {
    BestLeaves nearest = new BestLeaves(LeafOrder.BY_DEVIATION, wanted);
    pass(new Aim(spec.target(), nearest, -1, true), BayTables.NONE_LIFTED);
    if (effort.isStopped() || nearest.isEmpty() || spec.target() == null || spec.band() == 0) {
      double gap = effort.isStopped() && !nearest.isEmpty() ? nearest.first().deviation() : 0;
      return outcome(nearest, gap);
    }
    double threshold = nearest.first().deviation() + spec.band();
    BestLeaves best = new BestLeaves(new LeafOrder(threshold), wanted);
    double widest = Math.max(threshold, nearest.worstDeviation());
    pass(new Aim(spec.target(), best, widest, true), BayTables.NONE_LIFTED);
    if (effort.isStopped()) {
      nearest.leaves().forEach(best::offer);
    }
    return outcome(best, 0);
  }

  private Outcome outcome(BestLeaves best, double gap) {
    spec.draft().progress.accept(effort.covered());
    return new Outcome(best.leaves(), effort.covered(), effort.isStopped(), gap);
  }

  /** The allocation that misses a rule by least and keeps all others. */
  @Nullable Leaf nearestBeyond(LoadRule rule, int liftedBay) {
    BestLeaves best = new BestLeaves(LeafOrder.BY_DEVIATION, 1);
    pass(new Aim(rule, best, -1, true), liftedBay);
    return best.isEmpty() || effort.isStopped() ? null : best.first();
  }

  /** The best allocation whose bays need not be linked. */
  @Nullable Leaf unlinked() {
    BestLeaves best = new BestLeaves(LeafOrder.BY_DEVIATION, 1);
    pass(new Aim(spec.target(), best, -1, false), BayTables.NONE_LIFTED);
    return best.isEmpty() || effort.isStopped() ? null : best.first();
  }

  private void pass(Aim aim, int liftedBay) {
    effort.nextPass();
    for (int i = 0; i < spec.options().size(); i++) {
      BayTables tables = new BayTables(spec, spec.options().get(i), liftedBay);
      AllocationPass pass = new AllocationPass(spec, i, tables, aim);
      long[][] value = values(tables, aim.measure(), liftedBay);
      List<LoadRule> rules = new ArrayList<>(pass.rules());
      AllocationScan.Question question =
          new AllocationScan.Question(value, rules, tables.of(rules));
      if (tables.capacity() >= tables.units()
          && !new AllocationScan(tables, question, pass, effort).run()) {
        return;
      }
    }
  }

  private static long[][] values(BayTables tables, @Nullable LoadRule measure, int liftedBay) {
    if (measure == null) {
      long[][] none = new long[tables.bays()][];
      for (int bay = 0; bay < none.length; bay++) {
        none[bay] = new long[tables.cap(bay) + 1];
      }
      return none;
    }
    return liftedBay == BayTables.NONE_LIFTED ? tables.of(measure) : tables.of(measure, liftedBay);
  }
}
