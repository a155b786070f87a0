package org.wattwright.protection;

import java.util.List;
import org.wattwright.conductor.Cable;

/** What a {@link CircuitDesigner} is asked: circuits, catalogues in their own order, and wishes. */
record DesignSpec(
    CircuitSupply supply,
    List<Circuit> circuits,
    List<Cable> cables,
    List<Fuse> fuses,
    List<Contactor> contactors,
    List<PrechargeResistor> resistors,
    int mostRuns,
    CircuitObjective objective,
    boolean isProvisionalAllowed) {
  DesignSpec {
    circuits = List.copyOf(circuits);
    cables = List.copyOf(cables);
    fuses = List.copyOf(fuses);
    contactors = List.copyOf(contactors);
    resistors = List.copyOf(resistors);
  }

  PartCost cost(CircuitPart part) {
    return objective.cost(part);
  }

  DesignSpec withCircuits(List<Circuit> value) {
    return new DesignSpec(
        supply,
        value,
        cables,
        fuses,
        contactors,
        resistors,
        mostRuns,
        objective,
        isProvisionalAllowed);
  }

  DesignSpec withCables(List<Cable> value) {
    return new DesignSpec(
        supply,
        circuits,
        value,
        fuses,
        contactors,
        resistors,
        mostRuns,
        objective,
        isProvisionalAllowed);
  }

  DesignSpec withFuses(List<Fuse> value) {
    return new DesignSpec(
        supply,
        circuits,
        cables,
        value,
        contactors,
        resistors,
        mostRuns,
        objective,
        isProvisionalAllowed);
  }

  DesignSpec withContactors(List<Contactor> value) {
    return new DesignSpec(
        supply,
        circuits,
        cables,
        fuses,
        value,
        resistors,
        mostRuns,
        objective,
        isProvisionalAllowed);
  }

  DesignSpec withResistors(List<PrechargeResistor> value) {
    return new DesignSpec(
        supply,
        circuits,
        cables,
        fuses,
        contactors,
        value,
        mostRuns,
        objective,
        isProvisionalAllowed);
  }

  DesignSpec withRuns(int value) {
    return new DesignSpec(
        supply,
        circuits,
        cables,
        fuses,
        contactors,
        resistors,
        value,
        objective,
        isProvisionalAllowed);
  }

  DesignSpec withObjective(CircuitObjective value) {
    return new DesignSpec(
        supply,
        circuits,
        cables,
        fuses,
        contactors,
        resistors,
        mostRuns,
        value,
        isProvisionalAllowed);
  }

  DesignSpec withProvisional() {
    return new DesignSpec(
        supply, circuits, cables, fuses, contactors, resistors, mostRuns, objective, true);
  }
}
