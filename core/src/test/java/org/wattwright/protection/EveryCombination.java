package org.wattwright.protection;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** Tries every combination of parts and judges each by all its checks: slow and plain. */
final class EveryCombination {
  private final DesignTree tree;
  private @Nullable PartCost least;

  EveryCombination(DesignTree tree) {
    this.tree = tree;
  }

  @Nullable PartCost least() {
    choose(new PartsOption[tree.cases().size()], 0, PartCost.NOTHING);
    return least;
  }

  private void choose(PartsOption[] chosen, int at, PartCost cost) {
    if (least != null && cost.compareTo(least) >= 0) {
      return;
    }
    if (at == chosen.length) {
      least = cost;
      return;
    }
    CircuitCase of = tree.cases().get(at);
    for (int cable = 0; cable < of.cables().size(); cable++) {
      for (int fuse : indices(of.circuit().isFused(), of.fuses())) {
        for (int contactor : indices(of.circuit().isSwitched(), of.switches())) {
          PartCost parts = tree.spec().cost(of.cables().get(cable).asPart());
          parts = fuse < 0 ? parts : parts.plus(tree.spec().cost(of.fuses().get(fuse).asPart()));
          parts =
              contactor < 0 ? parts : parts.plus(of.switches().get(contactor).cost(tree.spec()));
          chosen[at] =
              new PartsOption(
                  cable, fuse, contactor, -1, parts, of.cables().get(cable).loopOhm(), 0);
          if (Verdict.of(tree.assembly(chosen, at).checks()) == Verdict.PASSES) {
            choose(chosen, at + 1, cost.plus(parts));
          }
        }
      }
    }
  }

  private static int[] indices(boolean wanted, List<?> from) {
    int[] all = new int[wanted ? from.size() : 1];
    for (int i = 0; i < all.length; i++) {
      all[i] = wanted ? i : -1;
    }
    return all;
  }

  static PartCost cost(CircuitDesign design) {
    PartCost sum = PartCost.NOTHING;
    for (CircuitPart part : design.parts()) {
      sum = sum.plus(CircuitObjective.massThenPrice().cost(part));
    }
    return sum;
  }
}
