package org.wattwright.protection;

import java.util.List;
import org.wattwright.conductor.Cable;

/** What a {@link CircuitDesigner} is asked: circuits, catalogues in their own order, and wishes. */
record DesignSpec(
    CircuitSupply supply, List<Circuit> circuits, Catalogues catalogues, Wishes wishes) {
  DesignSpec {
    circuits = List.copyOf(circuits);
  }

  /** Parts to choose from. */
  record Catalogues(
      List<Cable> cables,
      List<Fuse> fuses,
      List<Contactor> contactors,
      List<PrechargeResistor> resistors) {
    Catalogues {
      cables = List.copyOf(cables);
      fuses = List.copyOf(fuses);
      contactors = List.copyOf(contactors);
      resistors = List.copyOf(resistors);
    }
  }

  /** How to choose. */
  record Wishes(
      int mostRuns,
      CircuitObjective objective,
      boolean isProvisionalAllowed,
      boolean isGeometryEstimated) {}

  static DesignSpec of(CircuitSupply supply) {
    return new DesignSpec(
        supply,
        List.of(),
        new Catalogues(List.of(), List.of(), List.of(), List.of()),
        new Wishes(1, CircuitObjective.massThenPrice(), false, false));
  }

  PartCost cost(CircuitPart part) {
    return wishes.objective().cost(part);
  }

  /** With estimated diameters where the catalogue has none, if that is asked for. */
  List<Cable> cables() {
    return wishes.isGeometryEstimated()
        ? catalogues.cables().stream().map(DesignSpec::withGeometry).toList()
        : catalogues.cables();
  }

  private static Cable withGeometry(Cable cable) {
    boolean isKnown = cable.conductorDiameter().isPresent() && cable.outerDiameter().isPresent();
    return isKnown ? cable : cable.withGenericGeometry();
  }

  List<Fuse> fuses() {
    return catalogues.fuses();
  }

  List<Contactor> contactors() {
    return catalogues.contactors();
  }

  List<PrechargeResistor> resistors() {
    return catalogues.resistors();
  }

  int mostRuns() {
    return wishes.mostRuns();
  }

  boolean isProvisionalAllowed() {
    return wishes.isProvisionalAllowed();
  }

  DesignSpec withCircuits(List<Circuit> value) {
    return new DesignSpec(supply, value, catalogues, wishes);
  }

  DesignSpec with(Catalogues value) {
    return new DesignSpec(supply, circuits, value, wishes);
  }

  DesignSpec with(Wishes value) {
    return new DesignSpec(supply, circuits, catalogues, value);
  }

  DesignSpec withCables(List<Cable> value) {
    return with(new Catalogues(value, fuses(), contactors(), resistors()));
  }

  DesignSpec withFuses(List<Fuse> value) {
    return with(new Catalogues(catalogues.cables(), value, contactors(), resistors()));
  }

  DesignSpec withContactors(List<Contactor> value) {
    return with(new Catalogues(catalogues.cables(), fuses(), value, resistors()));
  }

  DesignSpec withResistors(List<PrechargeResistor> value) {
    return with(new Catalogues(catalogues.cables(), fuses(), contactors(), value));
  }

  DesignSpec withRuns(int value) {
    return with(
        new Wishes(
            value, wishes.objective(), isProvisionalAllowed(), wishes.isGeometryEstimated()));
  }

  DesignSpec withObjective(CircuitObjective value) {
    return with(
        new Wishes(mostRuns(), value, isProvisionalAllowed(), wishes.isGeometryEstimated()));
  }

  DesignSpec withProvisional() {
    return with(new Wishes(mostRuns(), wishes.objective(), true, wishes.isGeometryEstimated()));
  }

  DesignSpec withGenericGeometry() {
    return with(new Wishes(mostRuns(), wishes.objective(), isProvisionalAllowed(), true));
  }
}
