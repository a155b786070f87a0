package org.wattwright.layout;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wattwright.layout.AllocationPass.Aim;

/** One run: least deviation first, then the order within its band. Not thread-safe. */
final class AllocationRun {
  /** No bound on the bays in use. */
  private static final int ALL = Integer.MAX_VALUE;

  private final AllocationSpec spec;
  private final Effort effort;

  /** Each pack with the limits of all bays. */
  private final List<BayTables> limited;

  private final int wanted;
  private String stoppedAt = "";

  /** What no allocation that is not covered yet can beat. */
  private double leastOpen = Double.POSITIVE_INFINITY;

  AllocationRun(AllocationSpec spec) {
    this.spec = spec;
    this.effort = new Effort(spec.draft());
    this.limited =
        spec.options().stream()
            .map(option -> BayTables.of(spec, option, BayTables.NONE_LIFTED))
            .toList();
    this.wanted = spec.draft().alternatives + 1;
  }

  /**
   * What a run has found.
   *
   * @param leaves best first
   * @param covered allocations covered by the last pass
   * @param stopped whether it ended early
   * @param at the pack that the last pass looked at last
   * @param gap by how much the deviation of the best might still be beaten
   */
  record Outcome(List<Leaf> leaves, long covered, boolean stopped, String at, double gap) {}

  Outcome run() {
    BestLeaves nearest = new BestLeaves(LeafOrder.BY_DEVIATION, wanted);
    boolean all = pass(aim(nearest, -1, ALL), BayTables.NONE_LIFTED);
    boolean settled = all && (spec.target() == null || spec.band() == 0);
    if (effort.isStopped() || nearest.isEmpty() || settled) {
      return outcome(nearest, gap(nearest));
    }
    return outcome(bestWithinBand(nearest), 0);
  }

  private double gap(BestLeaves nearest) {
    return effort.isStopped() && !nearest.isEmpty()
        ? Math.max(0, nearest.first().deviation() - leastOpen)
        : 0;
  }

  /**
   * Few bays first: as soon as the list is full of allocations within the band, those that use more
   * bays come after all of them.
   */
  private BestLeaves bestWithinBand(BestLeaves nearest) {
    double threshold = nearest.first().deviation() + spec.band();
    BestLeaves best = new BestLeaves(new LeafOrder(threshold), wanted);
    int bays = spec.bays().size();
    for (int used = 1; used <= bays && !effort.isStopped() && !best.isFull(); used++) {
      BestLeaves few = new BestLeaves(new LeafOrder(threshold), wanted);
      pass(aim(few, threshold, used), BayTables.NONE_LIFTED);
      few.leaves().stream().filter(leaf -> leaf.deviation() <= threshold).forEach(best::offer);
    }
    nearest.leaves().forEach(best::offer);
    return best;
  }

  private Aim aim(BestLeaves best, double threshold, int mostUsed) {
    return new Aim(spec.target(), best, threshold, mostUsed, true);
  }

  private Outcome outcome(BestLeaves best, double gap) {
    spec.draft().progress.accept(effort.covered());
    return new Outcome(best.leaves(), effort.covered(), effort.isStopped(), stoppedAt, gap);
  }

  /** The allocation that misses a rule by least and keeps all others. */
  @Nullable Leaf nearestBeyond(LoadRule rule, int liftedBay) {
    BestLeaves best = new BestLeaves(LeafOrder.BY_DEVIATION, 1);
    pass(new Aim(rule, best, -1, ALL, true), liftedBay);
    return best.isEmpty() || effort.isStopped() ? null : best.first();
  }

  /** The best allocation whose bays need not be linked. */
  @Nullable Leaf unlinked() {
    BestLeaves best = new BestLeaves(LeafOrder.BY_DEVIATION, 1);
    pass(new Aim(spec.target(), best, -1, ALL, false), BayTables.NONE_LIFTED);
    return best.isEmpty() || effort.isStopped() ? null : best.first();
  }

  /**
   * Over all packs that may hold anything better than the list, until nothing can be nearer.
   *
   * @return whether ties of deviation are broken too
   */
  private boolean pass(Aim aim, int liftedBay) {
    effort.nextPass();
    for (PackScan scan : nearestFirst(aim, liftedBay)) {
      stoppedAt = spec.options().get(scan.option()).toString();
      leastOpen = scan.bound();
      if (scan.bound() > aim.allowed()) {
        return true;
      }
      if (!scan.run(spec, aim, effort) || aim.isDone()) {
        return false;
      }
    }
    return true;
  }

  private List<PackScan> nearestFirst(Aim aim, int liftedBay) {
    List<PackScan> scans = new ArrayList<>();
    for (int option = 0; option < limited.size(); option++) {
      BayTables tables =
          liftedBay == BayTables.NONE_LIFTED
              ? limited.get(option)
              : BayTables.of(spec, spec.options().get(option), liftedBay);
      if (tables.modulesWithoutRoom() == 0) {
        scans.add(new PackScan(option, tables, values(tables, aim.measure(), liftedBay), aim));
      }
    }
    scans.sort(PackScan.NEAREST_FIRST);
    return scans;
  }

  private static long[][] values(BayTables tables, @Nullable LoadRule measure, int liftedBay) {
    if (measure == null) {
      long[][] none = new long[tables.bays()][];
      for (int bay = 0; bay < none.length; bay++) {
        none[bay] = new long[tables.entries(bay)];
      }
      return none;
    }
    return liftedBay == BayTables.NONE_LIFTED ? tables.of(measure) : tables.of(measure, liftedBay);
  }
}
