package org.wattwright.protection;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Check;

/** The circuits of a run with their candidates, and what any choice for them amounts to. */
final class DesignTree {
  private final DesignSpec spec;
  private final List<CircuitCase> cases;
  private final List<PartStage> stages;
  private final int[] parents;
  private final CircuitSearch search;

  DesignTree(
      DesignSpec spec,
      List<CircuitCase> cases,
      List<PartStage> stages,
      int[] parents,
      CircuitSearch search) {
    this.spec = spec;
    this.cases = List.copyOf(cases);
    this.stages = List.copyOf(stages);
    this.parents = parents.clone();
    this.search = search;
  }

  DesignSpec spec() {
    return spec;
  }

  List<CircuitCase> cases() {
    return cases;
  }

  List<PartStage> stages() {
    return stages;
  }

  int[] parents() {
    return parents.clone();
  }

  CircuitSearch search() {
    return search;
  }

  /** Index of the fuse that protects a circuit from nearer to the source; NONE without one. */
  int fuseNearer(PartsOption[] chosen, int circuit) {
    for (int up = parents[circuit]; up >= 0; up = parents[up]) {
      if (chosen[up].fuse() >= 0) {
        return chosen[up].fuse();
      }
    }
    return PartsOption.NONE;
  }

  double nearerOhm(PartsOption[] chosen, int circuit) {
    double sumOhm = 0;
    for (int up = parents[circuit]; up >= 0; up = parents[up]) {
      sumOhm += chosen[up].loopOhm();
    }
    return sumOhm;
  }

  CircuitAssembly assembly(PartsOption[] chosen, int circuit) {
    CircuitCase of = cases.get(circuit);
    PartsOption option = chosen[circuit];
    int nearer = fuseNearer(chosen, circuit);
    List<Check> selectivity = new ArrayList<>(new StringSelectivity(this, chosen).of(circuit));
    if (option.fuse() >= 0 && nearer >= 0) {
      selectivity.addAll(search.selectivity(circuit, nearer, option.fuse()));
    }
    return new CircuitAssembly(
        of,
        stages.get(circuit),
        of.cables().get(option.cable()),
        search.fuseCase(circuit, option.fuse(), nearer),
        option.contactor() < 0 ? null : of.switches().get(option.contactor()),
        nearerOhm(chosen, circuit),
        selectivity);
  }

  /** The cheapest other parts of one circuit that serve with those of the others as chosen. */
  Optional<PartsOption[]> runnerUp(PartsOption[] chosen, int circuit) {
    PartsOption @Nullable [] best = null;
    for (PartsOption option : search.everyOption(circuit, fuseNearer(chosen, circuit))) {
      boolean isCheaper =
          best == null || PartsOption.CHEAPEST_FIRST.compare(option, best[circuit]) < 0;
      if (isCheaper && !option.hasSameParts(chosen[circuit])) {
        PartsOption[] other = chosen.clone();
        PartsOption judged = search.judged(circuit, option, fuseNearer(chosen, circuit));
        if (judged != null) {
          other[circuit] = judged;
          best = isServedBehind(other, circuit) ? other : best;
        }
      }
    }
    return Optional.ofNullable(best);
  }

  private boolean isServedBehind(PartsOption[] chosen, int from) {
    for (int circuit = 0; circuit < parents.length; circuit++) {
      if (isBehind(circuit, from) && !isServed(chosen, circuit)) {
        return false;
      }
    }
    return true;
  }

  private boolean isBehind(int circuit, int from) {
    int up = circuit;
    while (up >= 0 && up != from) {
      up = parents[up];
    }
    return up == from;
  }

  private boolean isServed(PartsOption[] chosen, int circuit) {
    int nearer = fuseNearer(chosen, circuit);
    PartsOption option = chosen[circuit];
    if (option.fuse() >= 0 && nearer >= 0 && !search.isSelective(circuit, nearer, option.fuse())) {
      return false;
    }
    PartsOption judged = option.fuse() >= 0 ? option : search.judged(circuit, option, nearer);
    return judged != null && nearerOhm(chosen, circuit) <= judged.allowedOhm();
  }

  /**
   * The check that rules out the nearest cheaper choice, of those that differ in one part; the most
   * used one if there is none.
   */
  Check governing(PartsOption[] chosen, int circuit) {
    PartsOption own = chosen[circuit];
    List<PartsOption> swaps = new ArrayList<>(search.swaps(circuit, own));
    swaps.removeIf(swap -> swap.cost().compareTo(own.cost()) >= 0);
    swaps.sort(PartsOption.CHEAPEST_FIRST.reversed());
    for (PartsOption swap : swaps) {
      PartsOption[] other = chosen.clone();
      other[circuit] = swap;
      Optional<Check> failing =
          mostUsed(
              assembly(other, circuit).checks().stream()
                  .filter(check -> Verdict.of(List.of(check)) == Verdict.FAILS)
                  .toList());
      if (failing.isPresent()) {
        return failing.get();
      }
    }
    List<Check> checks = assembly(chosen, circuit).checks();
    return mostUsed(checks).orElse(checks.get(0));
  }

  static Optional<Check> mostUsed(List<Check> checks) {
    Check most = null;
    for (Check check : checks) {
      if (most == null || check.use().orElse(0.0) > most.use().orElse(0.0)) {
        most = check;
      }
    }
    return Optional.ofNullable(most);
  }
}
