package org.wattwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Figure;

/** Why no allocation was found: for each requirement the least change that would admit one. */
final class AllocationRelaxations {
  /** Above what rounding of loads to 10⁻⁹ kg does to a share; below what can be weighed. */
  private static final double SHARE_ROUNDING = 1e-10;

  private final AllocationSpec spec;
  private final List<Ranked> found = new ArrayList<>();

  private record Ranked(double relative, BayRelaxation relaxation) {}

  private AllocationRelaxations(AllocationSpec spec) {
    this.spec = spec;
  }

  /** Smallest change relative to its limit first. */
  static List<BayRelaxation> of(AllocationSpec spec) {
    AllocationRelaxations relaxations = new AllocationRelaxations(spec);
    relaxations.addRoom();
    for (LoadRule rule : spec.rules()) {
      relaxations.add(rule, BayTables.NONE_LIFTED);
    }
    for (int bay = 0; bay < spec.bays().size(); bay++) {
      @Nullable LoadRule rule = spec.bayRule(bay);
      if (rule != null) {
        relaxations.add(rule, bay);
      }
    }
    relaxations.addLinks();
    return relaxations.found.stream()
        .sorted(
            Comparator.comparingDouble(Ranked::relative)
                .thenComparing(ranked -> ranked.relaxation().toString()))
        .map(Ranked::relaxation)
        .toList();
  }

  /** The pack that lacks least room, if all lack some. */
  private void addRoom() {
    int least = Integer.MAX_VALUE;
    @Nullable BayTables nearest = null;
    for (PackOption option : spec.options()) {
      BayTables tables = BayTables.of(spec, option, BayTables.NONE_LIFTED);
      int lacking = tables.modulesWithoutRoom();
      if (lacking < least) {
        least = lacking;
        nearest = tables;
      }
    }
    if (nearest == null || least <= 0) {
      return;
    }
    int needed = nearest.option().moduleCount();
    LoadRule.Identity identity =
        new LoadRule.Identity(
            "layout.room", "room of all bays by count and mass limit, for " + nearest.option());
    found.add(
        new Ranked(
            (double) least / needed,
            new BayRelaxation(identity, Figure.count(needed - least), Figure.count(needed), null)));
  }

  private void add(LoadRule rule, int liftedBay) {
    @Nullable Leaf leaf = new AllocationRun(spec).nearestBeyond(rule, liftedBay);
    if (leaf == null) {
      return;
    }
    double limit = rule.limit().value();
    double needed = needed(rule.limit(), leaf.deviation());
    found.add(
        new Ranked(
            leaf.deviation() / Math.abs(limit),
            new BayRelaxation(
                new LoadRule.Identity(rule.code(), rule.what()),
                AllocationSheet.limitFigure(rule, limit),
                AllocationSheet.limitFigure(rule, needed),
                new Allocation(spec, leaf))));
  }

  /**
   * So that a run with exactly this limit finds the allocation: whole steps, or rounded outwards.
   */
  private static double needed(LoadRule.Limit limit, double missed) {
    int sign = limit.atMost() ? 1 : -1;
    if (limit.share()) {
      return Math.min(1, Math.max(0, limit.value() + sign * (missed + SHARE_ROUNDING)));
    }
    long present =
        limit.atMost() ? Micrograms.floor(limit.value()) : Micrograms.ceiling(limit.value());
    return Micrograms.toKg(present + sign * Micrograms.of(missed));
  }

  private void addLinks() {
    @Nullable Leaf leaf = spec.links().isStated() ? new AllocationRun(spec).unlinked() : null;
    if (leaf != null) {
      LoadRule.Identity identity =
          new LoadRule.Identity("layout.links", "links between the bays of a string");
      found.add(
          new Ranked(
              Double.POSITIVE_INFINITY,
              new BayRelaxation(identity, null, null, new Allocation(spec, leaf))));
    }
  }
}
