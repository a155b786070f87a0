package org.wattwright.protection;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Check;
import org.wattwright.check.Source;
import org.wattwright.units.Kind;

/** One run of a {@link CircuitDesigner}: builds the cases, searches, and says what came out. */
final class DesignRun {
  private final DesignSpec spec;
  private final CapacitorMap capacitors;
  private final List<Check> open = new ArrayList<>();
  private final List<CircuitCase> cases = new ArrayList<>();
  private final List<PartStage> stages = new ArrayList<>();
  private final List<Integer> parents = new ArrayList<>();
  private final Map<String, Integer> places = new HashMap<>();

  DesignRun(DesignSpec spec) {
    this.spec = spec;
    this.capacitors = new CapacitorMap(spec, this::supplyOf);
  }

  CircuitDesign run() {
    DesignTree found = tree();
    Optional<PartsOption[]> best = isHopeless() ? Optional.empty() : found.search().best();
    CircuitDesign.Remains remains = new CircuitDesign.Remains(open, combinations());
    return best.map(chosen -> CircuitDesign.found(found, chosen, remains))
        .orElseGet(() -> CircuitDesign.none(found, remains));
  }

  /** Every circuit that can be designed, with its candidates. */
  DesignTree tree() {
    spec.circuits().forEach(this::take);
    requireOneCurrency();
    int[] tree = parents.stream().mapToInt(Integer::intValue).toArray();
    CircuitSearch search = new CircuitSearch(spec, cases, tree);
    return new DesignTree(spec, cases, stages, tree, search);
  }

  private boolean isHopeless() {
    return cases.stream()
        .anyMatch(
            of ->
                Verdict.of(CircuitAssembly.whateverTheParts(of.circuit(), of.numbers().highestV()))
                    == Verdict.FAILS);
  }

  private void take(Circuit circuit) {
    List<String> missing = new ArrayList<>(circuit.missing());
    Circuit upstream = circuit.upstreamOrNull();
    if (upstream != null && !places.containsKey(upstream.name())) {
      missing.add("design of " + upstream.name() + ", which feeds " + circuit.name());
    }
    List<CircuitSupply> supplies = supplies(circuit);
    for (CircuitSupply supply : supplies) {
      if (supply.faults().highest().isEmpty()) {
        missing.addAll(supply.faults().missing());
      }
    }
    if (!missing.isEmpty()) {
      open.add(
          Check.named("protection.circuit-data", "data of " + circuit.name())
              .source(Source.requirement("a design needs them"))
              .safety()
              .notChecked(missing.toArray(String[]::new)));
      return;
    }
    capacitors.open(circuit).ifPresent(open::add);
    places.put(circuit.name(), cases.size());
    parents.add(isRoot(circuit, supplies) ? -1 : placeOf(upstream));
    addCase(circuit, supplies);
  }

  private static boolean isRoot(Circuit circuit, List<CircuitSupply> supplies) {
    return supplies.isEmpty() || circuit.supply().isPresent();
  }

  private int placeOf(@Nullable Circuit upstream) {
    return upstream == null ? -1 : places.getOrDefault(upstream.name(), -1);
  }

  /**
   * What feeds a fault: its own supply or that of the circuits nearer; none if the source limits
   * itself and nothing else is to open.
   */
  private List<CircuitSupply> supplies(Circuit circuit) {
    if (circuit.currentLimit().isPresent() && !circuit.isFused()) {
      return List.of();
    }
    List<CircuitSupply> supplies = new ArrayList<>();
    supplies.add(capacitors.fed(circuit, supplyOf(circuit)));
    supplies.addAll(circuit.segments());
    return supplies;
  }

  private CircuitSupply supplyOf(Circuit circuit) {
    @Nullable Circuit at = circuit;
    while (at != null) {
      if (at.supply().isPresent()) {
        return at.supply().get();
      }
      at = at.upstreamOrNull();
    }
    return spec.supply();
  }

  private void addCase(Circuit circuit, List<CircuitSupply> supplies) {
    double highestV = supplyOf(circuit).highestV();
    PartStage stage = new PartStage(spec, circuit, supplies, highestV);
    stages.add(stage);
    cases.add(
        CircuitCase.of(
            circuit,
            numbers(circuit, supplies, highestV),
            supplies,
            stage.cables(),
            stage.fuses(),
            stage.switches()));
  }

  private CircuitCase.CircuitNumbers numbers(
      Circuit circuit, List<CircuitSupply> supplies, double highestV) {
    double highestA = supplies.isEmpty() ? circuit.limitA() : 0;
    double riseS = 0;
    for (CircuitSupply supply : supplies) {
      Double supplyA = supply.highestA();
      highestA = Math.max(highestA, supplyA == null ? 0 : supplyA);
      double constantS =
          supply.faults().longestTimeConstant().map(Kind.TIME::siValueOf).orElse(0.0);
      // The rise delays I²t by up to 1.5 time constants.
      riseS = Math.max(riseS, 1.5 * constantS);
    }
    return new CircuitCase.CircuitNumbers(
        circuit.operatingA(),
        Math.max(highestA, circuit.operatingA()),
        highestV,
        circuit.guard().clearingS(),
        riseS,
        capacitors.behind(circuit));
  }

  private void requireOneCurrency() {
    List<CircuitPart> parts = new ArrayList<>();
    for (CircuitCase of : cases) {
      of.cables().forEach(cable -> parts.add(cable.asPart()));
      of.fuses().forEach(fuse -> parts.add(fuse.asPart()));
      of.switches().forEach(contactor -> parts.addAll(contactor.asParts()));
    }
    CircuitObjective.requireOneCurrency(parts);
  }

  /** Every way to pick one part of each kind for each circuit. */
  private BigInteger combinations() {
    BigInteger product = BigInteger.ONE;
    for (CircuitCase of : cases) {
      Circuit circuit = of.circuit();
      long own = of.cables().size();
      own *= circuit.isFused() ? spec.fuses().size() : 1;
      own *= circuit.isSwitched() ? spec.contactors().size() : 1;
      own *= circuit.isPrecharged() ? spec.resistors().size() : 1;
      product = product.multiply(BigInteger.valueOf(own));
    }
    return product;
  }
}
