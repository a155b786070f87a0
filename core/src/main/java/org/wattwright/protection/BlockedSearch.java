package org.wattwright.protection;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Check;

/** Finds the circuit that stands in the way of a design, and why. */
final class BlockedSearch {
  private final DesignTree tree;
  private final boolean provisionalToo;

  BlockedSearch(DesignTree tree) {
    this.tree = tree;
    this.provisionalToo = tree.spec().isProvisionalAllowed();
  }

  BlockedCircuit blocked() {
    for (int i = 0; i < tree.cases().size(); i++) {
      BlockedCircuit alone = blockedAlone(i);
      if (alone != null) {
        return alone;
      }
    }
    return new BlockedTree(tree).blocked();
  }

  /** Why a circuit has no parts whatever the others are; null if it has some. */
  private @Nullable BlockedCircuit blockedAlone(int index) {
    CircuitCase of = tree.cases().get(index);
    Circuit circuit = of.circuit();
    List<Check> always = CircuitAssembly.whateverTheParts(circuit, of.numbers().highestV());
    if (Verdict.of(always) == Verdict.FAILS) {
      return BlockedTally.of(circuit, "choices", List.of(always));
    }
    BlockedCircuit byPart = blockedByPart(of);
    return byPart != null ? byPart : byCombination(index);
  }

  /** The kind of part of which none serves by itself; null if each has some. */
  private @Nullable BlockedCircuit blockedByPart(CircuitCase of) {
    Circuit circuit = of.circuit();
    List<List<Check>> cables = of.cables().stream().map(c -> c.line().checks()).toList();
    if (of.cables().stream().noneMatch(this::serves)) {
      return BlockedTally.of(circuit, CircuitPart.Type.CABLE.plural(), cables);
    }
    if (circuit.isFused() && of.fuses().stream().noneMatch(this::serves)) {
      List<List<Check>> fuses = of.fuses().stream().map(BlockedSearch::withCurve).toList();
      return BlockedTally.of(circuit, CircuitPart.Type.FUSE.plural(), fuses);
    }
    if (circuit.isSwitched()
        && of.switches().stream().noneMatch(k -> k.verdict().isAllowed(provisionalToo))) {
      List<List<Check>> switches = of.switches().stream().map(SwitchCase::checks).toList();
      return BlockedTally.of(circuit, CircuitPart.Type.CONTACTOR.plural(), switches);
    }
    return null;
  }

  private boolean serves(CableCase cable) {
    return cable.passes() || (provisionalToo && cable.isProvisional());
  }

  private boolean serves(FuseCase fuse) {
    return fuse.verdict().isAllowed(provisionalToo) && fuse.line() != null;
  }

  private static List<Check> withCurve(FuseCase fuse) {
    List<Check> checks = new ArrayList<>(fuse.checks());
    if (fuse.line() == null) {
      checks.add(
          Check.named("fuse.curve", "clearing of " + fuse.fuse().name())
              .source(fuse.fuse().source())
              .safety()
              .notChecked("fuse.preArcingCurve"));
    }
    return checks;
  }

  private @Nullable BlockedCircuit byCombination(int index) {
    BlockedTally tally = new BlockedTally(tree.cases().get(index).circuit(), "combinations");
    for (int nearer : fusesNearer(index)) {
      for (PartsOption option : tree.search().everyOption(index, nearer)) {
        if (tree.search().judged(index, option, nearer) != null) {
          return null;
        }
        tally.add(alone(index, option, nearer).checks());
      }
    }
    return tally.blocked();
  }

  private CircuitAssembly alone(int index, PartsOption option, int nearer) {
    CircuitCase of = tree.cases().get(index);
    return new CircuitAssembly(
        of,
        tree.stages().get(index),
        of.cables().get(option.cable()),
        tree.search().fuseCase(index, option.fuse(), nearer),
        option.contactor() < 0 ? null : of.switches().get(option.contactor()),
        0,
        List.of());
  }

  /** Fuses that may be in charge of a circuit without one of its own. */
  private List<Integer> fusesNearer(int index) {
    List<Integer> fuses = new ArrayList<>();
    if (!tree.cases().get(index).circuit().isFused()) {
      for (int up = tree.parents()[index]; up >= 0 && fuses.isEmpty(); up = tree.parents()[up]) {
        for (int i = 0; i < tree.cases().get(up).fuses().size(); i++) {
          FuseCase fuse = tree.cases().get(up).fuses().get(i);
          if (serves(fuse)) {
            fuses.add(i);
          }
        }
      }
    }
    return fuses.isEmpty() ? List.of(PartsOption.NONE) : fuses;
  }
}
