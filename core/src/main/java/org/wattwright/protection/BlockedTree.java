package org.wattwright.protection;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Finds the circuit with which a tree can no longer be served, although each circuit has parts of
 * its own, and counts what rules out each of them behind the circuits nearer to the source.
 */
final class BlockedTree {
  private static final double PICO_OHM = 1e12;

  private final DesignTree tree;
  private final int[] parents;

  BlockedTree(DesignTree tree) {
    this.tree = tree;
    this.parents = tree.parents();
  }

  BlockedCircuit blocked() {
    int last = firstTooMany();
    BlockedTally tally = new BlockedTally(tree.cases().get(last).circuit(), "combinations");
    int fused = nearestFused(last);
    for (int fuse : fuses(fused)) {
      Optional<PartsOption[]> nearer =
          new TreeSearch(Arrays.copyOf(parents, last), new LeastResistance(last, fused, fuse))
              .best();
      nearer.ifPresent(chosen -> tallyBehind(chosen, fuse, tally));
    }
    return tally.blocked();
  }

  /** The first circuit with which the tree up to it can no longer be served. */
  private int firstTooMany() {
    int last = 0;
    while (last < parents.length - 1 && isServed(last + 1)) {
      last++;
    }
    return last;
  }

  private boolean isServed(int count) {
    return new TreeSearch(Arrays.copyOf(parents, count), tree.search()).best().isPresent();
  }

  private int nearestFused(int circuit) {
    int up = parents[circuit];
    while (up >= 0 && !tree.cases().get(up).circuit().isFused()) {
      up = parents[up];
    }
    return up;
  }

  private List<Integer> fuses(int fused) {
    List<Integer> fuses = new ArrayList<>();
    for (int i = 0; fused >= 0 && i < tree.cases().get(fused).fuses().size(); i++) {
      fuses.add(i);
    }
    return fuses.isEmpty() ? List.of(PartsOption.NONE) : fuses;
  }

  /** The circuits nearer as chosen, with each choice for the last one. */
  private void tallyBehind(PartsOption[] nearer, int fuse, BlockedTally tally) {
    int last = nearer.length;
    List<PartsOption> own = tree.search().options(last, fuse);
    List<PartsOption> all = own.isEmpty() ? tree.search().everyOption(last, fuse) : own;
    PartsOption[] chosen = Arrays.copyOf(nearer, last + 1);
    for (PartsOption option : all) {
      chosen[last] = option;
      tally.add(tree.assembly(chosen, last).checks());
    }
  }

  private boolean isNearer(int circuit, int last) {
    int up = parents[last];
    while (up >= 0 && up != circuit) {
      up = parents[up];
    }
    return up == circuit;
  }

  /**
   * The choices with one fuse nearer to the source, where the least resistance there is cheapest.
   */
  private final class LeastResistance implements CircuitChoices {
    private final int last;
    private final int fused;
    private final int fuse;

    LeastResistance(int last, int fused, int fuse) {
      this.last = last;
      this.fused = fused;
      this.fuse = fuse;
    }

    @Override
    public List<PartsOption> options(int circuit, int fuseInCharge) {
      List<PartsOption> all = new ArrayList<>();
      for (PartsOption option : tree.search().options(circuit, fuseInCharge)) {
        if (circuit != fused || option.fuse() == fuse) {
          all.add(option.costing(cost(circuit, option)));
        }
      }
      return all;
    }

    private PartCost cost(int circuit, PartsOption option) {
      return isNearer(circuit, last)
          ? new PartCost(0, 0, Math.round(option.loopOhm() * PICO_OHM), 0, 0)
          : PartCost.NOTHING;
    }

    @Override
    public boolean isSelective(int circuit, int fuseNearerToSource, int ownFuse) {
      return tree.search().isSelective(circuit, fuseNearerToSource, ownFuse);
    }
  }
}
