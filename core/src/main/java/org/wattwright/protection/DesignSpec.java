package org.wattwright.protection;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wattwright.conductor.Cable;

/** What a {@link CircuitDesigner} is asked: circuits, catalogues in their own order, and wishes. */
record DesignSpec(
    @Nullable CircuitSupply supply,
    List<Circuit> circuits,
    List<Cable> cables,
    List<Fuse> fuses,
    List<Contactor> contactors,
    int mostRuns,
    CircuitObjective objective,
    boolean isProvisionalAllowed) {
  DesignSpec {
    circuits = List.copyOf(circuits);
    cables = List.copyOf(cables);
    fuses = List.copyOf(fuses);
    contactors = List.copyOf(contactors);
  }

  PartCost cost(CircuitPart part) {
    return objective.cost(part);
  }
}
