package org.wattwright.layout;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** One pass over one pack: offers every allocation of interest to a list of the best. */
final class AllocationPass implements AllocationScan.Visitor {
  private final AllocationSpec spec;
  private final int optionIndex;
  private final BayTables tables;
  private final StringRoute route;
  private final Aim aim;
  private final long mostMass;
  private double widest = Double.NaN;
  private int mostUsed;
  private long low = -Micrograms.UNBOUNDED;
  private long high = Micrograms.UNBOUNDED;

  /**
   * What a pass is after.
   *
   * @param measure what deviation is measured by; null if all are equally good
   * @param best collects
   * @param threshold deviation allowed whatever the list holds; negative if the list decides
   * @param mostUsed bays that may be used
   * @param linked whether all bays of a string must be linked
   */
  record Aim(
      @Nullable LoadRule measure, BestLeaves best, double threshold, int mostUsed, boolean linked) {
    /** Deviation with which an allocation may still get in. */
    double allowed() {
      return threshold < 0 ? best.worstDeviation() : threshold;
    }

    /** Whether deviation alone is asked for, and the list holds none. */
    boolean isDone() {
      return threshold < 0 && linked && best.isExact();
    }
  }

  AllocationPass(AllocationSpec spec, int optionIndex, BayTables tables, Aim aim) {
    this.spec = spec;
    this.optionIndex = optionIndex;
    this.tables = tables;
    this.route = spec.route(tables.option());
    this.aim = aim;
    this.mostMass = tables.mostMass();
    narrow();
  }

  /** Rules to be kept: all but the one that is measured. */
  List<LoadRule> rules() {
    List<LoadRule> kept = new ArrayList<>(spec.rules());
    kept.remove(aim.measure());
    return kept;
  }

  private void narrow() {
    mostUsed = Math.min(aim.mostUsed(), aim.best().mostUsed());
    double allowed = aim.allowed();
    LoadRule measure = aim.measure();
    if (measure == null || allowed == widest || allowed == Double.POSITIVE_INFINITY) {
      return;
    }
    widest = allowed;
    low = measure.lowFor(allowed, mostMass);
    high = measure.highFor(allowed, mostMass);
  }

  @Override
  public long low() {
    return low;
  }

  @Override
  public long high() {
    return high;
  }

  @Override
  public boolean isDone() {
    return aim.isDone();
  }

  @Override
  public int mostUsed() {
    return mostUsed;
  }

  @Override
  public void accept(int[] counts, long value) {
    double deviation =
        aim.measure() == null ? 0 : aim.measure().missedBy(value, tables.massOf(counts));
    int enclosures = Integer.bitCount(StringRoute.usedSet(counts));
    if (aim.best().isBehind(deviation, enclosures)) {
      return;
    }
    long linkNm = route.length(tables.modules(counts));
    if (linkNm >= LinkMap.NONE && aim.linked()) {
      return;
    }
    double heightM =
        spec.hasHeights() ? (double) tables.heightOf(counts) / tables.massOf(counts) : 0;
    aim.best().offer(new Leaf(optionIndex, counts, deviation, new Leaf.Ranks(linkNm, heightM)));
    narrow();
  }
}
