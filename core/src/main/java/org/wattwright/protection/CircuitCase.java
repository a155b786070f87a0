package org.wattwright.protection;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Check;
import org.wattwright.units.Kind;

/**
 * One circuit of a design with the candidates of each kind that pass by themselves, and what pairs
 * and triples of them do. Not thread-safe: pairs are worked out when first asked for.
 *
 * @param supplies what feeds a fault: the whole, then each segment; empty if the source limits
 *     itself
 * @param cables in the order of the catalogue's own
 * @param fuses as cables
 * @param switches as cables
 */
record CircuitCase(
    Circuit circuit,
    CircuitNumbers numbers,
    List<CircuitSupply> supplies,
    List<CableCase> cables,
    List<FuseCase> fuses,
    List<SwitchCase> switches,
    CoverKernel kernel,
    Map<Pair, List<Check>> letThroughs) {

  /** A fuse and a contactor in series. */
  record Pair(FuseCase fuse, SwitchCase contactor) {}

  /**
   * Currents in A, voltage in V and times in s of the circuit.
   *
   * @param behind capacitors that feed a fault from the far end
   */
  record CircuitNumbers(
      double operatingA,
      double highestA,
      double highestV,
      double clearingS,
      double riseS,
      List<LoadCapacitors> behind) {}

  static CircuitCase of(
      Circuit circuit,
      CircuitNumbers numbers,
      List<CircuitSupply> supplies,
      List<CableCase> cables,
      List<FuseCase> fuses,
      List<SwitchCase> switches) {
    return new CircuitCase(
        circuit,
        numbers,
        List.copyOf(supplies),
        List.copyOf(cables),
        List.copyOf(fuses),
        List.copyOf(switches),
        new CoverKernel(circuit, supplies.isEmpty(), numbers.riseS()),
        new HashMap<>());
  }

  CoverRules rules(CableCase cable, @Nullable FuseCase fuse, @Nullable SwitchCase contactor) {
    return kernel.rules(cable.withstand(), lineOf(fuse), lineOf(contactor));
  }

  /** The rules with a contactor that bears and breaks everything at once: no other covers more. */
  CoverRules idealRules(CableCase cable, @Nullable FuseCase fuse) {
    return kernel.rules(cable.withstand(), lineOf(fuse), SwitchLine.IDEAL);
  }

  double idealNeededA(CoverRules rules, @Nullable FuseCase fuse) {
    return kernel
        .clearedWithin(numbers.clearingS(), rules, lineOf(fuse))
        .startOfTail(numbers.highestA());
  }

  static @Nullable FuseLine lineOf(@Nullable FuseCase fuse) {
    return fuse == null ? null : fuse.line();
  }

  static @Nullable SwitchLine lineOf(@Nullable SwitchCase contactor) {
    return contactor == null ? null : contactor.line();
  }

  boolean isCovered(CoverRules rules) {
    return rules.covered().covers(numbers.operatingA(), numbers.highestA());
  }

  /** Lowest current from which every fault is cleared in time; infinite if none. */
  double neededA(CoverRules rules, @Nullable FuseCase fuse, @Nullable SwitchCase contactor) {
    return kernel
        .clearedWithin(numbers.clearingS(), rules, lineOf(fuse))
        .startOfTail(numbers.highestA());
  }

  /** Most resistance that all circuits up to and including this one may have. */
  double allowedOhm(double neededA) {
    double leastOhm = Double.POSITIVE_INFINITY;
    for (CircuitSupply supply : supplies) {
      leastOhm = Math.min(leastOhm, supply.lowestV() / neededA - supply.lowestOhm());
    }
    return leastOhm;
  }

  /** From the highest fault down to where a fuse no longer clears in time. */
  FaultRange clearedBy(FuseCase fuse, CircuitSupply supply) {
    FaultCurrent highest = supply.faults().highest().orElseThrow();
    FuseLine line = fuse.line();
    double fromA =
        line == null
            ? Double.POSITIVE_INFINITY
            : line.clearing().atMost(numbers.clearingS()).startOfTail(highest.prospectiveA());
    FaultCurrent lowest = fromA < highest.prospectiveA() ? highest.limitedTo(fromA) : highest;
    return FaultRange.of(highest, lowest);
  }

  /** What the fuse lets through at the highest faults against what the contactor bears. */
  List<Check> letThrough(FuseCase fuse, SwitchCase contactor) {
    return letThroughs.computeIfAbsent(
        new Pair(fuse, contactor),
        pair -> {
          List<Check> checks = new ArrayList<>();
          for (CircuitSupply supply : supplies) {
            supply
                .faults()
                .highest()
                .ifPresent(fault -> addLetThrough(checks, pair, supply, fault));
          }
          return checks;
        });
  }

  private void addLetThrough(
      List<Check> checks, Pair pair, CircuitSupply supply, FaultCurrent fault) {
    if (pair.fuse().clearing(fault) instanceof Clearing.Cleared cleared) {
      ContactorChecks asked = pair.contactor().contactor().checks();
      checks.add(in(supply, asked.withstand(cleared.letThrough())));
      checks.add(in(supply, asked.withstandPeak(cleared.peak())));
    }
  }

  /**
   * The inrush into empty capacitors when a contactor closes without pre-charge, through what cable
   * and battery have at the least.
   */
  List<Check> madeWithoutPrecharge(CableCase cable, @Nullable SwitchCase contactor) {
    double capacitanceF = circuit.loadCapacitance().map(Kind.CAPACITANCE::siValueOf).orElse(0.0);
    if (contactor == null || circuit.isPrecharged() || !(capacitanceF > 0)) {
      return List.of();
    }
    List<Check> checks = new ArrayList<>();
    for (CircuitSupply supply : supplies) {
      double leastOhm =
          cable.leastLoopOhm()
              + Kind.RESISTANCE.siValueOf(supply.faults().highest().orElseThrow().resistance());
      checks.add(
          in(
              supply,
              contactor
                  .contactor()
                  .checks()
                  .make(Kind.CURRENT.ofSi(numbers.highestV() / leastOhm))));
    }
    return checks;
  }

  /**
   * Cable, contactor and its own fuse when capacitors at the far end empty backwards; the cable
   * when capacitors at the beginning of a branch without a fuse do.
   */
  List<Check> fedBackwards(
      CableCase cable, @Nullable FuseCase fuse, @Nullable SwitchCase contactor) {
    List<Check> checks = new ArrayList<>();
    if (!numbers.behind().isEmpty()) {
      Fuse own = fuse == null || !circuit.isFused() ? null : fuse.fuse();
      checks.addAll(new BackwardChecks(circuit, numbers.behind(), cable).of(cable, own, contactor));
    }
    if (!circuit.isFused() && fuse != null && fuse.line() != null) {
      for (CircuitSupply supply : supplies) {
        UnfusedInfeed.of(this, supply, fuse.line())
            .ifPresent(infeed -> checks.add(in(supply, infeed.check(cable.withstand()))));
      }
    }
    return checks;
  }

  /** The check, marked by the segment unless it is that of the whole supply. */
  Check in(CircuitSupply supply, Check check) {
    return supply.equals(supplies.get(0)) ? check : check.in(supply.name());
  }

  FaultCurrent lowestFault(CircuitSupply supply, double ohm) {
    FaultCurrent atTerminals = supply.faults().lowest();
    FaultCurrent.Loop loop =
        new FaultCurrent.Loop(supply.lowestV(), supply.lowestOhm() + ohm, supply.lowestHenry());
    return new FaultCurrent(loop, atTerminals.basis(), atTerminals.estimates());
  }
}
