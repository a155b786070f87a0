package org.wattwright.protection;

import java.util.Arrays;
import java.util.Comparator;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * What the candidates of one circuit cost, by index, and the indices of those that may be chosen,
 * cheapest first; −1 alone where the circuit has no such part.
 */
final class PartOrder {
  private static final int[] NONE = {PartsOption.NONE};

  private final DesignSpec spec;
  private final PartCost[] cableCosts;
  private final PartCost[] fuseCosts;
  private final PartCost[] switchCosts;
  private final int[] cables;
  private final int[] fuses;
  private final int[] switches;

  PartOrder(DesignSpec spec, CircuitCase of) {
    this.spec = spec;
    cableCosts = new PartCost[of.cables().size()];
    Arrays.setAll(cableCosts, i -> cost(of.cables().get(i)));
    fuseCosts = new PartCost[of.fuses().size()];
    Arrays.setAll(fuseCosts, i -> cost(of.fuses().get(i)));
    switchCosts = new PartCost[of.switches().size()];
    Arrays.setAll(switchCosts, i -> cost(of.switches().get(i)));
    cables = order(cableCosts, i -> isAllowed(of.cables().get(i)));
    fuses = of.circuit().isFused() ? order(fuseCosts, i -> isAllowed(of.fuses().get(i))) : NONE;
    switches =
        of.circuit().isSwitched()
            ? order(switchCosts, i -> isAllowed(of.switches().get(i).verdict()))
            : NONE;
  }

  int[] cables() {
    return cables;
  }

  int[] fuses() {
    return fuses;
  }

  int[] switches() {
    return switches;
  }

  /** Cost of the parts of a choice; those it does not have cost nothing. */
  PartCost cost(int cable, int fuse, int contactor) {
    PartCost cost = cableCosts[cable];
    if (fuse >= 0) {
      cost = cost.plus(fuseCosts[fuse]);
    }
    return contactor < 0 ? cost : cost.plus(switchCosts[contactor]);
  }

  private PartCost cost(CableCase cable) {
    return marked(spec.cost(cable.asPart()), cable.passes());
  }

  private PartCost cost(FuseCase fuse) {
    return marked(spec.cost(fuse.asPart()), fuse.verdict() == Verdict.PASSES);
  }

  private PartCost cost(SwitchCase contactor) {
    return marked(contactor.cost(spec), contactor.verdict() == Verdict.PASSES);
  }

  private static PartCost marked(PartCost cost, boolean complete) {
    return complete ? cost : cost.plus(PartCost.ONE_PROVISIONAL);
  }

  private boolean isAllowed(CableCase cable) {
    return cable.passes() || (spec.isProvisionalAllowed() && cable.isProvisional());
  }

  private boolean isAllowed(FuseCase fuse) {
    return isAllowed(fuse.verdict()) && fuse.line() != null;
  }

  private boolean isAllowed(Verdict verdict) {
    return verdict.isAllowed(spec.isProvisionalAllowed());
  }

  private static int[] order(PartCost[] costs, IntPredicate allowed) {
    return IntStream.range(0, costs.length)
        .filter(allowed)
        .boxed()
        .sorted(
            Comparator.comparing((Integer i) -> costs[i]).thenComparing(Comparator.naturalOrder()))
        .mapToInt(Integer::intValue)
        .toArray();
  }
}
