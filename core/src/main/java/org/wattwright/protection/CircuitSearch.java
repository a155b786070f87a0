package org.wattwright.protection;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Check;
import org.wattwright.units.Kind;

/**
 * The choices of each circuit: triples of cable, fuse and contactor that deal with every current.
 *
 * <p>Within one fuse, what costs no less, allows no more resistance nearer to the source and has no
 * less itself is left out. Where a circuit stands alone only the cheapest is kept.
 */
final class CircuitSearch implements CircuitChoices {
  private final DesignSpec spec;
  private final List<CircuitCase> cases;
  private final int[] parents;
  private final Map<Long, Boolean> selective = new HashMap<>();
  private final IdentityHashMap<CircuitCase, Order> orders = new IdentityHashMap<>();

  CircuitSearch(DesignSpec spec, List<CircuitCase> cases, int[] parents) {
    this.spec = spec;
    this.cases = cases;
    this.parents = parents.clone();
  }

  Optional<PartsOption[]> best() {
    return new TreeSearch(parents, this).best();
  }

  @Override
  public List<PartsOption> options(int circuit, int fuseInCharge) {
    CircuitCase of = cases.get(circuit);
    Kept kept = isAlone(circuit) ? new Cheapest() : new Undominated();
    for (int cable : byCost(of).cables) {
      for (int fuse : fuseIndices(of)) {
        @Nullable FuseCase inCharge = fuseCase(circuit, fuse, fuseInCharge);
        if (isPairHopeless(of, new Parts(cable, fuse, PartsOption.NONE, inCharge), kept)) {
          continue;
        }
        for (int contactor : byCost(of).switches) {
          add(kept, of, new Parts(cable, fuse, contactor, inCharge));
        }
      }
    }
    return kept.options();
  }

  /** Indices of one choice; the fuse that deals with it may be that of a circuit nearer. */
  private record Parts(int cable, int fuse, int contactor, @Nullable FuseCase inCharge) {}

  /** The choices so far that may be part of a cheapest tree. */
  private interface Kept {
    /** Whether a choice is not needed, whatever resistance it allows. */
    boolean isSettled(PartsOption bound);

    void add(PartsOption option);

    List<PartsOption> options();
  }

  /** Of a circuit alone only the cheapest counts. */
  private static final class Cheapest implements Kept {
    private @Nullable PartsOption cheapest;

    @Override
    public boolean isSettled(PartsOption bound) {
      return cheapest != null && PartsOption.CHEAPEST_FIRST.compare(cheapest, bound) <= 0;
    }

    @Override
    public void add(PartsOption option) {
      cheapest = option;
    }

    @Override
    public List<PartsOption> options() {
      return cheapest == null ? List.of() : List.of(cheapest);
    }
  }

  /** In a tree those count that no other one of the same fuse beats in every respect. */
  private static final class Undominated implements Kept {
    private final Map<Integer, List<PartsOption>> byFuse = new TreeMap<>();

    private List<PartsOption> like(PartsOption option) {
      return byFuse.computeIfAbsent(option.fuse(), fuse -> new ArrayList<>());
    }

    @Override
    public boolean isSettled(PartsOption bound) {
      return like(bound).stream().anyMatch(each -> each.dominates(bound));
    }

    @Override
    public void add(PartsOption option) {
      List<PartsOption> like = like(option);
      if (like.stream().noneMatch(each -> each.dominates(option))) {
        like.removeIf(option::dominates);
        like.add(option);
      }
    }

    @Override
    public List<PartsOption> options() {
      return byFuse.values().stream().flatMap(List::stream).toList();
    }
  }

  private void add(Kept kept, CircuitCase of, Parts parts) {
    PartsOption bound = bound(of, parts, cost(of, parts));
    if (!kept.isSettled(bound)) {
      double allowedOhm = allowedOhm(of, parts);
      if (allowedOhm >= 0) {
        kept.add(bound.allowing(allowedOhm));
      }
    }
  }

  private static PartsOption bound(CircuitCase of, Parts parts, PartCost cost) {
    return new PartsOption(
        parts.cable(),
        parts.fuse(),
        parts.contactor(),
        parts.contactor(),
        cost,
        of.cables().get(parts.cable()).loopOhm(),
        Double.POSITIVE_INFINITY);
  }

  /**
   * Whether no contactor can make cable and fuse serve: even one that bears and breaks everything
   * at once does not, or the two alone cost more than what is kept.
   */
  private boolean isPairHopeless(CircuitCase of, Parts pair, Kept kept) {
    if (kept.isSettled(bound(of, pair, cost(of, pair)))) {
      return true;
    }
    if (!of.circuit().isSwitched()) {
      return false;
    }
    CableCase cable = of.cables().get(pair.cable());
    CoverRules rules = of.idealRules(cable, pair.inCharge());
    return !of.isCovered(rules) || !(ofIdeal(of, pair, rules) - cable.loopOhm() >= 0);
  }

  private static double ofIdeal(CircuitCase of, Parts pair, CoverRules rules) {
    return of.allowedOhm(of.idealNeededA(rules, pair.inCharge()));
  }

  /** The same parts with what they allow; null if they do not serve. */
  @Nullable PartsOption judged(int circuit, PartsOption option, int fuseInCharge) {
    Parts parts =
        new Parts(
            option.cable(),
            option.fuse(),
            option.contactor(),
            fuseCase(circuit, option.fuse(), fuseInCharge));
    double allowedOhm = allowedOhm(cases.get(circuit), parts);
    return allowedOhm >= 0 ? option.allowing(allowedOhm) : null;
  }

  /** Every combination of parts that pass by themselves, whether they serve together or not. */
  List<PartsOption> everyOption(int circuit, int fuseInCharge) {
    CircuitCase of = cases.get(circuit);
    List<PartsOption> all = new ArrayList<>();
    for (int fuse : fuseIndices(of)) {
      for (int cable : byCost(of).cables) {
        for (int contactor : byCost(of).switches) {
          all.add(unjudged(circuit, cable, fuse, contactor));
        }
      }
    }
    return all;
  }

  /** Choices that differ from one in a single part, those that fail by themselves included. */
  List<PartsOption> swaps(int circuit, PartsOption from) {
    CircuitCase of = cases.get(circuit);
    List<PartsOption> swaps = new ArrayList<>();
    for (int cable = 0; cable < of.cables().size(); cable++) {
      swaps.add(unjudged(circuit, cable, from.fuse(), from.contactor()));
    }
    for (int fuse = 0; from.fuse() >= 0 && fuse < of.fuses().size(); fuse++) {
      swaps.add(unjudged(circuit, from.cable(), fuse, from.contactor()));
    }
    for (int k = 0; from.contactor() >= 0 && k < of.switches().size(); k++) {
      swaps.add(unjudged(circuit, from.cable(), from.fuse(), k));
    }
    return swaps;
  }

  private PartsOption unjudged(int circuit, int cable, int fuse, int contactor) {
    CircuitCase of = cases.get(circuit);
    PartCost cost = spec.cost(of.cables().get(cable).asPart());
    if (fuse >= 0) {
      cost = cost.plus(spec.cost(of.fuses().get(fuse).asPart()));
    }
    if (contactor >= 0) {
      cost = cost.plus(of.switches().get(contactor).cost(spec));
    }
    return new PartsOption(
        cable, fuse, contactor, contactor, cost, of.cables().get(cable).loopOhm(), 0);
  }

  private boolean isAlone(int circuit) {
    return parents[circuit] < 0 && Arrays.stream(parents).noneMatch(parent -> parent == circuit);
  }

  /** Resistance allowed nearer to the source; NaN or negative if the parts do not serve. */
  private double allowedOhm(CircuitCase of, Parts parts) {
    CableCase cable = of.cables().get(parts.cable());
    @Nullable SwitchCase contactor = switchCase(of, parts.contactor());
    @Nullable FuseCase fuse = parts.inCharge();
    if (fuse != null && contactor != null && !isLetThroughBorne(of, fuse, contactor)) {
      return Double.NaN;
    }
    if (!Verdict.of(of.madeWithoutPrecharge(cable, contactor))
            .isAllowed(spec.isProvisionalAllowed())
        || !Verdict.of(of.fedBackwards(cable, fuse, contactor))
            .isAllowed(spec.isProvisionalAllowed())) {
      return Double.NaN;
    }
    CoverRules rules = of.rules(cable, fuse, contactor);
    if (!of.isCovered(rules)) {
      return Double.NaN;
    }
    if (of.supplies().isEmpty()) {
      return Double.POSITIVE_INFINITY;
    }
    return of.allowedOhm(of.neededA(rules, fuse, contactor)) - cable.loopOhm();
  }

  private boolean isLetThroughBorne(CircuitCase of, FuseCase fuse, SwitchCase contactor) {
    return Verdict.of(of.letThrough(fuse, contactor)).isAllowed(spec.isProvisionalAllowed());
  }

  private PartCost cost(CircuitCase of, Parts parts) {
    Order order = byCost(of);
    PartCost cost = order.cableCosts[parts.cable()];
    if (parts.fuse() >= 0) {
      cost = cost.plus(order.fuseCosts[parts.fuse()]);
    }
    SwitchCase contactor = switchCase(of, parts.contactor());
    if (contactor == null) {
      return cost;
    }
    cost = cost.plus(order.switchCosts[parts.contactor()]);
    boolean provisional =
        parts.inCharge() != null
            && spec.isProvisionalAllowed()
            && Verdict.of(of.letThrough(parts.inCharge(), contactor)) != Verdict.PASSES;
    return provisional ? cost.plus(PartCost.ONE_PROVISIONAL) : cost;
  }

  private static @Nullable SwitchCase switchCase(CircuitCase of, int contactor) {
    return contactor < 0 ? null : of.switches().get(contactor);
  }

  /** The fuse that clears a fault on the circuit: its own, or that of a circuit nearer. */
  @Nullable FuseCase fuseCase(int circuit, int own, int fuseInCharge) {
    if (own >= 0) {
      return cases.get(circuit).fuses().get(own);
    }
    if (fuseInCharge == PartsOption.NONE) {
      return null;
    }
    int up = parents[circuit];
    while (up >= 0 && cases.get(up).fuses().isEmpty()) {
      up = parents[up];
    }
    return up < 0 ? null : cases.get(up).fuses().get(fuseInCharge);
  }

  private int[] fuseIndices(CircuitCase of) {
    return of.circuit().isFused() ? byCost(of).fuses : new int[] {PartsOption.NONE};
  }

  /** Costs by index, and the indices of the candidates that may be chosen, cheapest first. */
  private static final class Order {
    private final PartCost[] cableCosts;
    private final PartCost[] fuseCosts;
    private final PartCost[] switchCosts;
    private int[] cables = {};
    private int[] fuses = {};
    private int[] switches = {PartsOption.NONE};

    Order(PartCost[] cableCosts, PartCost[] fuseCosts, PartCost[] switchCosts) {
      this.cableCosts = cableCosts;
      this.fuseCosts = fuseCosts;
      this.switchCosts = switchCosts;
    }
  }

  private Order byCost(CircuitCase of) {
    return orders.computeIfAbsent(of, this::order);
  }

  private Order order(CircuitCase of) {
    PartCost[] cables = new PartCost[of.cables().size()];
    Arrays.setAll(cables, i -> cost(of.cables().get(i)));
    PartCost[] fuses = new PartCost[of.fuses().size()];
    Arrays.setAll(fuses, i -> cost(of.fuses().get(i)));
    PartCost[] switches = new PartCost[of.switches().size()];
    Arrays.setAll(switches, i -> cost(of.switches().get(i)));
    Order order = new Order(cables, fuses, switches);
    order.cables = order(cables, i -> isAllowed(of.cables().get(i)));
    order.fuses = order(fuses, i -> isAllowed(of.fuses().get(i)));
    if (of.circuit().isSwitched()) {
      order.switches =
          order(
              switches, i -> of.switches().get(i).verdict().isAllowed(spec.isProvisionalAllowed()));
    }
    return order;
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
    return fuse.verdict().isAllowed(spec.isProvisionalAllowed()) && fuse.line() != null;
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

  @Override
  public boolean isSelective(int circuit, int fuseNearerToSource, int ownFuse) {
    long key = ((long) circuit << 40) | ((long) fuseNearerToSource << 20) | ownFuse;
    return selective.computeIfAbsent(
        key,
        k ->
            Verdict.of(selectivity(circuit, fuseNearerToSource, ownFuse))
                .isAllowed(spec.isProvisionalAllowed()));
  }

  /**
   * The verdicts on two fuses in series, over the faults that the nearer to the load must clear.
   */
  List<Check> selectivity(int circuit, int fuseNearerToSource, int ownFuse) {
    CircuitCase of = cases.get(circuit);
    FuseCase own = fuseCase(circuit, ownFuse, PartsOption.NONE);
    FuseCase nearer = fuseCase(circuit, PartsOption.NONE, fuseNearerToSource);
    List<Check> checks = new ArrayList<>();
    if (own == null || nearer == null || own.line() == null) {
      return checks;
    }
    for (CircuitSupply supply : of.supplies()) {
      checks.add(
          of.in(
              supply,
              Selectivity.of(nearer.fuse())
                  .over(own.fuse())
                  .check(of.clearedBy(own, supply), Kind.VOLTAGE.ofSi(of.numbers().highestV()))));
    }
    return checks;
  }
}
