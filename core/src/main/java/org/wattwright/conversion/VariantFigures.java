package org.wattwright.conversion;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.measure.Quantity;
import org.wattwright.check.Outcome;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;
import org.wattwright.vehicle.LoadState;

/** The figures of two variants, in the order of the comparison. */
final class VariantFigures {
  private final Conversion first;
  private final Conversion second;
  private final List<ComparedFigure> figures = new ArrayList<>();

  private VariantFigures(Conversion first, Conversion second) {
    this.first = first;
    this.second = second;
  }

  static List<ComparedFigure> of(Conversion first, Conversion second) {
    VariantFigures all = new VariantFigures(first, second);
    all.addPack();
    all.addVoltages();
    all.addLoads();
    all.add("mass of the circuits", Kind.MASS, VariantFigures::circuitMass);
    for (Outcome outcome :
        List.of(Outcome.FAIL, Outcome.NOT_CHECKED, Outcome.CAUTION, Outcome.PASS)) {
      all.addCount("checks " + outcome, of -> count(of, outcome));
    }
    return all.figures;
  }

  private <Q extends Quantity<Q>> void add(
      String name, Kind<Q> kind, Function<Conversion, Optional<Quantity<Q>>> figure) {
    ComparedFigure.Sides<Quantity<Q>> sides =
        new ComparedFigure.Sides<>(figure.apply(first), figure.apply(second));
    if (sides.before().isPresent() || sides.after().isPresent()) {
      figures.add(ComparedFigure.of(name, kind, sides));
    }
  }

  private void addCount(String name, Function<Conversion, Integer> count) {
    figures.add(ComparedFigure.count(name, count.apply(first), count.apply(second)));
  }

  private static int count(Conversion of, Outcome outcome) {
    return (int) of.review().stream().filter(check -> check.outcome() == outcome).count();
  }

  private void addPack() {
    addCount("modules", of -> of.pack().moduleCount());
    addCount("strings in parallel", of -> of.pack().strings().size());
    add("mass of the modules", Kind.MASS, of -> Optional.of(of.pack().mass()));
    add("volume of the modules", Kind.VOLUME, of -> of.pack().volume());
    add("capacity", Kind.CHARGE, of -> Optional.of(of.pack().capacity()));
    add(
        "energy at rest voltage, full to empty, 25 °C",
        Kind.ENERGY,
        of -> Optional.of(of.pack().nominalEnergy(Measures.celsius(25))));
  }

  private void addVoltages() {
    add(
        "voltage, full under charge or regeneration",
        Kind.VOLTAGE,
        of -> Optional.of(of.windows().envelope().fullUnderCharge()));
    add("voltage, nominal", Kind.VOLTAGE, of -> Optional.of(of.windows().envelope().nominal()));
    add(
        "voltage, empty, cold, loaded",
        Kind.VOLTAGE,
        of -> Optional.of(of.windows().envelope().emptyUnderLoad()));
  }

  /** A load case that only one has is left out: its load would be no difference of the variants. */
  private void addLoads() {
    for (LoadState state : states(first)) {
      String name = state.loadCase().name();
      if (state(second, name).isEmpty()) {
        continue;
      }
      LoadState other = state(second, name).get();
      add("total, " + name, Kind.MASS, of -> state(of, name).map(LoadState::total));
      add("front axle, " + name, Kind.MASS, of -> state(of, name).map(s -> s.axles().front()));
      add("rear axle, " + name, Kind.MASS, of -> state(of, name).map(s -> s.axles().rear()));
      figures.add(
          ComparedFigure.share("front share, " + name, state.frontShare(), other.frontShare()));
    }
  }

  private static List<LoadState> states(Conversion of) {
    return of.masses().map(VehicleReview::states).orElse(List.of());
  }

  private static Optional<LoadState> state(Conversion of, String name) {
    return states(of).stream().filter(s -> s.loadCase().name().equals(name)).findFirst();
  }

  private static Optional<Quantity<javax.measure.quantity.Mass>> circuitMass(Conversion of) {
    return of.circuits().flatMap(circuits -> circuits.design().mass());
  }
}
