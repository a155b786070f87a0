package org.wattwright.protection;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Check;
import org.wattwright.check.Outcome;

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
    return blockedTogether();
  }

  /** Why a circuit has no parts whatever the others are; null if it has some. */
  private @Nullable BlockedCircuit blockedAlone(int index) {
    CircuitCase of = tree.cases().get(index);
    Circuit circuit = of.circuit();
    List<Check> disconnect = CircuitAssembly.disconnect(circuit, of.numbers().highestV());
    if (Verdict.of(disconnect) == Verdict.FAILS) {
      return blocked(circuit, List.of(disconnect));
    }
    BlockedCircuit byCable =
        byPart(circuit, true, of.cables().stream().map(c -> c.line().checks()).toList());
    if (byCable != null) {
      return byCable;
    }
    BlockedCircuit byFuse =
        byPart(
            circuit, circuit.isFused(), of.fuses().stream().map(BlockedSearch::withCurve).toList());
    if (byFuse != null) {
      return byFuse;
    }
    BlockedCircuit bySwitch =
        byPart(
            circuit, circuit.isSwitched(), of.switches().stream().map(SwitchCase::checks).toList());
    return bySwitch != null ? bySwitch : byCombination(index);
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

  private @Nullable BlockedCircuit byPart(
      Circuit circuit, boolean isNeeded, List<List<Check>> candidates) {
    boolean found = candidates.stream().anyMatch(c -> Verdict.of(c).isAllowed(provisionalToo));
    return !isNeeded || found ? null : blocked(circuit, candidates);
  }

  private @Nullable BlockedCircuit byCombination(int index) {
    List<List<Check>> candidates = new ArrayList<>();
    for (int nearer : fusesNearer(index)) {
      for (PartsOption option : tree.search().everyOption(index, nearer)) {
        if (tree.search().judged(index, option, nearer) != null) {
          return null;
        }
        candidates.add(alone(index, option, nearer).checks());
      }
    }
    return blocked(tree.cases().get(index).circuit(), candidates);
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
          if (fuse.verdict().isAllowed(provisionalToo) && fuse.line() != null) {
            fuses.add(i);
          }
        }
      }
    }
    return fuses.isEmpty() ? List.of(PartsOption.NONE) : fuses;
  }

  /** Every circuit has parts of its own, but not with those nearer to the source. */
  private BlockedCircuit blockedTogether() {
    int[] parents = tree.parents();
    for (int i = 0; i < parents.length; i++) {
      if (parents[i] >= 0) {
        CircuitChoices unselective = new WithoutSelectivity(tree.search());
        boolean bySelectivity = new TreeSearch(parents, unselective).best().isPresent();
        String code = bySelectivity ? "fuse.selectivity" : "protection.lowest-fault";
        return new BlockedCircuit(tree.cases().get(firstBehind()).circuit(), code, Map.of(), null);
      }
    }
    throw new IllegalStateException("circuits without a tree are blocked alone or not at all");
  }

  /** The first circuit with which the tree up to it can no longer be served. */
  private int firstBehind() {
    int[] parents = tree.parents();
    for (int count = 1; count <= parents.length; count++) {
      int[] first = Arrays.copyOf(parents, count);
      if (new TreeSearch(first, tree.search()).best().isEmpty()) {
        return count - 1;
      }
    }
    return parents.length - 1;
  }

  private record WithoutSelectivity(CircuitChoices choices) implements CircuitChoices {
    @Override
    public List<PartsOption> options(int circuit, int fuseInCharge) {
      return choices.options(circuit, fuseInCharge);
    }

    @Override
    public boolean isSelective(int circuit, int fuseNearerToSource, int ownFuse) {
      return true;
    }
  }

  private BlockedCircuit blocked(Circuit circuit, List<List<Check>> candidates) {
    Map<String, Integer> ruledOut = new TreeMap<>();
    Check nearest = null;
    for (List<Check> checks : candidates) {
      List<Check> objections = objections(checks);
      objections.forEach(check -> ruledOut.merge(check.code(), 1, Integer::sum));
      if (objections.size() == 1 && isNearer(objections.get(0), nearest)) {
        nearest = objections.get(0);
      }
    }
    String code = nearest != null ? nearest.code() : mostOften(ruledOut);
    return new BlockedCircuit(circuit, code, ruledOut, nearest);
  }

  private static boolean isNearer(Check check, @Nullable Check than) {
    return than == null || excess(check) < excess(than);
  }

  private static double excess(Check check) {
    return check.use().orElse(Double.POSITIVE_INFINITY);
  }

  private static List<Check> objections(List<Check> checks) {
    List<Check> failing = checks.stream().filter(c -> c.outcome() == Outcome.FAIL).toList();
    return failing.isEmpty()
        ? checks.stream().filter(c -> c.outcome() == Outcome.NOT_CHECKED).toList()
        : failing;
  }

  private static String mostOften(Map<String, Integer> ruledOut) {
    String most = "";
    for (Map.Entry<String, Integer> each : ruledOut.entrySet()) {
      most =
          most.isEmpty() || each.getValue() > ruledOut.getOrDefault(most, 0) ? each.getKey() : most;
    }
    return most.isEmpty() ? "catalogue without a part of this kind" : most;
  }
}
