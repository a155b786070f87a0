package org.wattwright.protection;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
    boolean alone = isAlone(circuit);
    List<PartsOption> kept = new ArrayList<>();
    for (int fuse : fuseIndices(of, fuseInCharge)) {
      List<PartsOption> sameFuse = alone ? kept : new ArrayList<>();
      @Nullable FuseCase fuseCase = fuseCase(circuit, fuse, fuseInCharge);
      for (int cable : byCost(circuit).cables()) {
        for (int contactor : byCost(circuit).switches()) {
          add(sameFuse, circuit, new Parts(cable, fuse, contactor, fuseCase), alone);
        }
      }
      if (!alone) {
        kept.addAll(sameFuse);
      }
    }
    return kept;
  }

  /** Indices of one choice; the fuse that deals with it may be that of a circuit nearer. */
  private record Parts(int cable, int fuse, int contactor, @Nullable FuseCase inCharge) {}

  private void add(List<PartsOption> kept, int circuit, Parts parts, boolean alone) {
    PartCost cost = cost(circuit, parts);
    double loopOhm = cases.get(circuit).cables().get(parts.cable()).loopOhm();
    PartsOption bound =
        new PartsOption(
            parts.cable(),
            parts.fuse(),
            parts.contactor(),
            parts.contactor(),
            cost,
            alone ? 0 : loopOhm,
            Double.POSITIVE_INFINITY);
    for (PartsOption each : kept) {
      boolean settled =
          alone
              ? PartsOption.CHEAPEST_FIRST.compare(each, bound) <= 0
              : each.dominates(bound);
      if (settled) {
        return;
      }
    }
    double allowedOhm = allowedOhm(circuit, parts);
    if (!(allowedOhm >= 0)) {
      return;
    }
    PartsOption option =
        new PartsOption(
            bound.cable(),
            bound.fuse(),
            bound.contactor(),
            bound.resistor(),
            cost,
            loopOhm,
            allowedOhm);
    kept.removeIf(each -> alone || option.dominates(each));
    if (kept.stream().noneMatch(each -> each.dominates(option))) {
      kept.add(option);
    }
  }

  /** The same parts with what they allow; null if they do not serve. */
  @Nullable PartsOption judged(int circuit, PartsOption option, int fuseInCharge) {
    Parts parts =
        new Parts(
            option.cable(),
            option.fuse(),
            option.contactor(),
            fuseCase(circuit, option.fuse(), fuseInCharge));
    double allowedOhm = allowedOhm(circuit, parts);
    return allowedOhm >= 0 ? option.allowing(allowedOhm) : null;
  }

  /** Every combination of parts that pass by themselves, whether they serve together or not. */
  List<PartsOption> everyOption(int circuit, int fuseInCharge) {
    CircuitCase of = cases.get(circuit);
    List<PartsOption> all = new ArrayList<>();
    for (int fuse : fuseIndices(of, fuseInCharge)) {
      for (int cable : byCost(of).cables()) {
        for (int contactor : byCost(of).switches()) {
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
  private double allowedOhm(int circuit, Parts parts) {
    CircuitCase of = cases.get(circuit);
    CableCase cable = of.cables().get(parts.cable());
    @Nullable SwitchCase contactor = switchCase(of, parts.contactor());
    @Nullable FuseCase fuse = parts.inCharge();
    if (fuse != null && contactor != null && !isLetThroughBorne(of, fuse, contactor)) {
      return Double.NaN;
    }
    if (!Verdict.of(of.madeWithoutPrecharge(cable, contactor))
            .isAllowed(spec.isProvisionalAllowed())
        || Verdict.of(of.fedBackwards(cable)) == Verdict.FAILS) {
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

  private PartCost cost(int circuit, Parts parts) {
    CircuitCase of = cases.get(circuit);
    CableCase cable = of.cables().get(parts.cable());
    PartCost cost = spec.cost(cable.asPart());
    boolean provisional = !cable.passes();
    if (parts.fuse() >= 0) {
      FuseCase fuse = of.fuses().get(parts.fuse());
      cost = cost.plus(spec.cost(fuse.asPart()));
      provisional |= fuse.verdict() != Verdict.PASSES;
    }
    SwitchCase contactor = switchCase(of, parts.contactor());
    if (contactor != null) {
      for (CircuitPart part : contactor.asParts()) {
        cost = cost.plus(spec.cost(part));
      }
      provisional |= contactor.verdict() != Verdict.PASSES;
      provisional |=
          parts.inCharge() != null
              && spec.isProvisionalAllowed()
              && Verdict.of(of.letThrough(parts.inCharge(), contactor)) != Verdict.PASSES;
    }
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

  private int[] fuseIndices(CircuitCase of, int fuseInCharge) {
    return of.circuit().isFused() ? byCost(of).fuses() : new int[] {PartsOption.NONE};
  }

  /** Indices of the candidates that may be chosen, cheapest first. */
  private record Order(int[] cables, int[] fuses, int[] switches) {}

  private final Map<CircuitCase, Order> orders = new IdentityHashMap<>();

  private Order byCost(int circuit) {
    return byCost(cases.get(circuit));
  }

  private Order byCost(CircuitCase of) {
    return orders.computeIfAbsent(
        of,
        each ->
            new Order(
                order(
                    each.cables().size(),
                    i -> isAllowed(each.cables().get(i)),
                    i -> spec.cost(each.cables().get(i).asPart())),
                order(
                    each.fuses().size(),
                    i -> isAllowed(each.fuses().get(i)),
                    i -> spec.cost(each.fuses().get(i).asPart())),
                each.circuit().isSwitched()
                    ? order(
                        each.switches().size(),
                        i ->
                            each.switches()
                                .get(i)
                                .verdict()
                                .isAllowed(spec.isProvisionalAllowed()),
                        i -> each.switches().get(i).cost(spec))
                    : new int[] {PartsOption.NONE}));
  }

  private boolean isAllowed(CableCase cable) {
    return cable.passes() || (spec.isProvisionalAllowed() && cable.isProvisional());
  }

  private boolean isAllowed(FuseCase fuse) {
    return fuse.verdict().isAllowed(spec.isProvisionalAllowed()) && fuse.line() != null;
  }

  private interface ByIndex<T> {
    T at(int index);
  }

  private static int[] order(int count, ByIndex<Boolean> allowed, ByIndex<PartCost> cost) {
    List<Integer> indices = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      if (allowed.at(i)) {
        indices.add(i);
      }
    }
    indices.sort(Comparator.comparing(cost::at).thenComparing(Comparator.naturalOrder()));
    return indices.stream().mapToInt(Integer::intValue).toArray();
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

  /** The verdicts on two fuses in series, over the faults that the nearer to the load must clear. */
  List<Check> selectivity(int circuit, int fuseNearerToSource, int ownFuse) {
    CircuitCase of = cases.get(circuit);
    FuseCase own = fuseCase(circuit, ownFuse, PartsOption.NONE);
    FuseCase nearer = fuseCase(circuit, PartsOption.NONE, fuseNearerToSource);
    List<Check> checks = new ArrayList<>();
    if (own == null || nearer == null || own.line() == null) {
      return checks;
    }
    for (CircuitSupply supply : of.supplies()) {
      FaultCurrent highest = supply.faults().highest().orElseThrow();
      double fromA =
          own.line().clearing().atMost(of.numbers().clearingS()).startOfTail(highest.prospectiveA());
      FaultCurrent lowest =
          fromA < highest.prospectiveA() ? highest.limitedTo(fromA) : highest;
      checks.add(
          of.in(
              supply,
              Selectivity.of(nearer.fuse())
                  .over(own.fuse())
                  .check(
                      FaultRange.of(highest, lowest),
                      Kind.VOLTAGE.ofSi(of.numbers().highestV()))));
    }
    return checks;
  }
}
