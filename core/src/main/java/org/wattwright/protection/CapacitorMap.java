package org.wattwright.protection;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Check;
import org.wattwright.check.Source;

/**
 * Which capacitors of a design feed a fault on which circuit, and from which side.
 *
 * <p>From the source's side, through fuse and contactor: those of circuits beside it, through their
 * cables, and those of a circuit that feeds it, which stand at its very beginning. From the far
 * side, backwards through its cable: its own, or those of circuits behind it. What a circuit states
 * counts all behind it, so that of those in one branch the nearest to the source stands for all.
 */
final class CapacitorMap {
  private final List<LoadCapacitors> all = new ArrayList<>();
  private final Function<Circuit, CircuitSupply> supplyOf;

  CapacitorMap(DesignSpec spec, Function<Circuit, CircuitSupply> supplyOf) {
    this.supplyOf = supplyOf;
    for (Circuit circuit : spec.circuits()) {
      if (LoadCapacitors.feedsBack(circuit) && circuit.missing().isEmpty()) {
        double highestV = supplyOf.apply(circuit).highestV();
        all.add(LoadCapacitors.of(circuit, highestV, spec.cables(), spec.mostRuns()));
      }
    }
  }

  /** Those that feed a fault on a circuit from its far end. */
  List<LoadCapacitors> behind(Circuit circuit) {
    List<LoadCapacitors> behind = new ArrayList<>();
    for (LoadCapacitors each : all) {
      boolean isBehind =
          LoadCapacitors.isAtOrBehind(each.circuit(), circuit)
              && hasSameSupply(each.circuit(), circuit);
      if (isBehind && !isCountedNearer(each.circuit(), circuit)) {
        behind.add(each);
      }
    }
    return behind;
  }

  /** Whether a circuit nearer to the source, no nearer than another, states them with its own. */
  private boolean isCountedNearer(Circuit circuit, @Nullable Circuit noNearer) {
    Circuit at = circuit;
    while (at != noNearer && at.upstreamOrNull() != null) {
      at = at.upstreamOrNull();
      if (LoadCapacitors.feedsBack(at) && hasSameSupply(at, circuit)) {
        return true;
      }
    }
    return false;
  }

  /** The supply of a circuit with the capacitors that feed it from the source's side. */
  CircuitSupply fed(Circuit circuit, CircuitSupply supply) {
    List<CapacitorDischarge> infeed = new ArrayList<>(supply.faults().capacitors());
    for (LoadCapacitors each : all) {
      if (isCountedNearer(each.circuit(), null)) {
        continue;
      }
      if (isBeside(each.circuit(), circuit)) {
        infeed.add(each.discharge());
      } else if (isBefore(each.circuit(), circuit) && each.isOwnWayKnown()) {
        infeed.add(each.dischargeAtItsEnd());
      }
    }
    return supply.withCapacitors(infeed);
  }

  private boolean isBeside(Circuit other, Circuit circuit) {
    return !LoadCapacitors.isAtOrBehind(other, circuit)
        && !LoadCapacitors.isAtOrBehind(circuit, other)
        && hasSameSupply(other, circuit);
  }

  private boolean isBefore(Circuit other, Circuit circuit) {
    return other != circuit
        && LoadCapacitors.isAtOrBehind(circuit, other)
        && hasSameSupply(other, circuit);
  }

  private boolean hasSameSupply(Circuit one, Circuit other) {
    return supplyOf.apply(one).equals(supplyOf.apply(other));
  }

  /** What is open because nothing limits the capacitors that stand at one end of a circuit. */
  Optional<Check> open(Circuit circuit) {
    for (LoadCapacitors each : all) {
      boolean isAtAnEnd = each.circuit() == circuit || isBefore(each.circuit(), circuit);
      if (isAtAnEnd && !each.isOwnWayKnown()) {
        return Optional.of(open(circuit, each.circuit()));
      }
    }
    return Optional.empty();
  }

  private static Check open(Circuit circuit, Circuit nearer) {
    String end = nearer == circuit ? " ends" : " begins";
    return Check.named("protection.capacitor-infeed", "capacitors that feed " + circuit.name())
        .source(Source.requirement("a fault is judged with all that feeds it"))
        .safety()
        .note("those of " + nearer.name() + " stand where " + circuit.name() + end)
        .notChecked("Circuit.capacitorResistance of " + nearer.name());
  }
}
