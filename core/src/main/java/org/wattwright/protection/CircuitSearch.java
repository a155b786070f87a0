package org.wattwright.protection;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Check;

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
  private final CircuitSelectivity selectivity;
  private final IdentityHashMap<CircuitCase, PartOrder> orders = new IdentityHashMap<>();

  CircuitSearch(DesignSpec spec, List<CircuitCase> cases, int[] parents) {
    this.spec = spec;
    this.cases = cases;
    this.parents = parents.clone();
    this.selectivity = new CircuitSelectivity(spec.isProvisionalAllowed());
  }

  Optional<PartsOption[]> best() {
    return new TreeSearch(parents, this).best();
  }

  @Override
  public List<PartsOption> options(int circuit, int fuseInCharge) {
    CircuitCase of = cases.get(circuit);
    KeptOptions kept =
        isAlone(circuit) ? new KeptOptions.Cheapest() : new KeptOptions.Undominated();
    for (int cable : byCost(of).cables()) {
      for (int fuse : byCost(of).fuses()) {
        @Nullable FuseCase inCharge = fuseCase(circuit, fuse, fuseInCharge);
        if (isPairHopeless(of, new Parts(cable, fuse, PartsOption.NONE, inCharge), kept)) {
          continue;
        }
        for (int contactor : byCost(of).switches()) {
          add(kept, of, new Parts(cable, fuse, contactor, inCharge));
        }
      }
    }
    return kept.options();
  }

  /** Indices of one choice; the fuse that deals with it may be that of a circuit nearer. */
  private record Parts(int cable, int fuse, int contactor, @Nullable FuseCase inCharge) {}

  private void add(KeptOptions kept, CircuitCase of, Parts parts) {
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
  private boolean isPairHopeless(CircuitCase of, Parts pair, KeptOptions kept) {
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
    for (int fuse : byCost(of).fuses()) {
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
    PartCost cost = byCost(of).cost(parts.cable(), parts.fuse(), parts.contactor());
    SwitchCase contactor = switchCase(of, parts.contactor());
    if (contactor == null) {
      return cost;
    }
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

  private PartOrder byCost(CircuitCase of) {
    return orders.computeIfAbsent(of, each -> new PartOrder(spec, each));
  }

  @Override
  public boolean isSelective(int circuit, int fuseNearerToSource, int ownFuse) {
    @Nullable FuseCase own = fuseCase(circuit, ownFuse, PartsOption.NONE);
    @Nullable FuseCase nearer = fuseCase(circuit, PartsOption.NONE, fuseNearerToSource);
    return own == null
        || nearer == null
        || selectivity.isSelective(circuit, cases.get(circuit), nearer, own);
  }

  /** The verdicts on its own fuse and the one nearer to the source. */
  List<Check> selectivity(int circuit, int fuseNearerToSource, int ownFuse) {
    @Nullable FuseCase own = fuseCase(circuit, ownFuse, PartsOption.NONE);
    @Nullable FuseCase nearer = fuseCase(circuit, PartsOption.NONE, fuseNearerToSource);
    return own == null || nearer == null
        ? List.of()
        : selectivity.checks(cases.get(circuit), nearer, own);
  }
}
