package org.wattwright.examples.job;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCharge;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Temperature;
import org.wattwright.battery.Chemistry;
import org.wattwright.battery.Direction;
import org.wattwright.check.Basis;
import org.wattwright.units.Kind;

/**
 * Reads {@code cells.csv} and the tables of open-circuit voltage, resistance and charge current.
 */
final class CellFiles {
  private static final int LONGEST_SERVICE_YEARS = 100;

  private final List<StateGrid.Point<ElectricPotential>> openCircuit;
  private final List<Directed> resistances;
  private final List<ChargeLimit> chargeLimits;

  private record Directed(Direction way, StateGrid.Point<ElectricResistance> point) {}

  private record ChargeLimit(Origin origin, String cell, CellInput.Limit limit) {}

  private CellFiles(Path folder) {
    openCircuit =
        CsvTable.read(folder.resolve("ocv.csv"))
            .map(row -> point(row, row.field("voltage").positive(Kind.VOLTAGE)));
    resistances = CsvTable.read(folder.resolve("resistance.csv")).map(CellFiles::directed);
    chargeLimits = CsvTable.read(folder.resolve("charge-current.csv")).map(CellFiles::chargeLimit);
  }

  static Map<String, CellInput> read(Path folder) {
    CellFiles files = new CellFiles(folder);
    List<CellInput> cells = CsvTable.read(folder.resolve("cells.csv")).map(files::cell);
    Map<String, CellInput> byName = Named.unique(cells, CellInput::name, CellInput::origin);
    files.openCircuit.forEach(p -> Named.find(byName, p.cell(), p.origin()));
    files.resistances.forEach(d -> Named.find(byName, d.point().cell(), d.point().origin()));
    files.chargeLimits.forEach(l -> Named.find(byName, l.cell(), l.origin()));
    return byName;
  }

  private static <Q extends Quantity<Q>> StateGrid.Point<Q> point(CsvRow row, Quantity<Q> value) {
    return new StateGrid.Point<>(
        row.origin(),
        row.field("cell").text(),
        row.field("state of charge").stateOfCharge(),
        row.field("temperature").quantity(Kind.TEMPERATURE),
        value);
  }

  private static Directed directed(CsvRow row) {
    return new Directed(
        row.field("direction").choice(Direction.class),
        point(row, row.field("resistance").positive(Kind.RESISTANCE)));
  }

  private static ChargeLimit chargeLimit(CsvRow row) {
    return new ChargeLimit(
        row.origin(),
        row.field("cell").text(),
        new CellInput.Limit(
            row.field("temperature").quantity(Kind.TEMPERATURE),
            row.field("current").nonNegative(Kind.CURRENT)));
  }

  private CellInput cell(CsvRow row) {
    String name = row.field("name").text();
    Basis basis = row.field("basis").choice(Basis.class);
    return new CellInput(
        row.origin(),
        name,
        row.field("chemistry").choice(Chemistry.class),
        capacity(row, basis),
        voltages(row, name),
        resistances(row, name, basis),
        currents(row, "discharge", List.of()),
        currents(row, "charge", limitsOf(name)),
        row.field("mass").positive(Kind.MASS),
        row.optional("specific heat").map(f -> f.positive(Kind.SPECIFIC_HEAT_CAPACITY)),
        basis,
        row.optional("source").map(Field::text).orElse(""));
  }

  private static CellInput.Capacity capacity(CsvRow row, Basis basis) {
    Field presentField = row.field("capacity");
    Quantity<ElectricCharge> present = presentField.positive(Kind.CHARGE);
    Optional<Quantity<ElectricCharge>> rated =
        row.optional("rated capacity").map(f -> f.positive(Kind.CHARGE));
    if (rated.isPresent() && Kind.CHARGE.compare(present, rated.get()) > 0) {
      throw presentField.error("must be ≤ rated capacity " + rated.get() + ", but was " + present);
    }
    Optional<Field> years = row.optional("years in service");
    double yearsInService = years.map(Field::plainNumber).orElse(0.0);
    if (yearsInService > LONGEST_SERVICE_YEARS) {
      throw years.orElseThrow().error("must be ≤ " + LONGEST_SERVICE_YEARS);
    }
    return new CellInput.Capacity(
        present, rated, yearsInService, basisOr(row, "capacity basis", basis));
  }

  private CellInput.Voltages voltages(CsvRow row, String name) {
    Quantity<ElectricPotential> minimum = row.field("minimum voltage").positive(Kind.VOLTAGE);
    Field maximumField = row.field("maximum voltage");
    Quantity<ElectricPotential> maximum = maximumField.positive(Kind.VOLTAGE);
    if (Kind.VOLTAGE.compare(maximum, minimum) <= 0) {
      throw maximumField.error(
          "must be above the minimum voltage " + minimum + ", but was " + maximum);
    }
    List<StateGrid.Point<ElectricPotential>> points =
        openCircuit.stream().filter(p -> p.cell().equals(name)).toList();
    if (points.isEmpty()) {
      String others =
          openCircuit.stream()
              .map(StateGrid.Point::cell)
              .distinct()
              .collect(Collectors.joining(", "));
      throw row.origin()
          .error("ocv.csv has no row for cell " + Quoted.of(name) + ", only for " + others);
    }
    return new CellInput.Voltages(minimum, maximum, StateGrid.of(points));
  }

  private CellInput.Resistances resistances(CsvRow row, String name, Basis basis) {
    return new CellInput.Resistances(
        grid(directed -> directed.way() == Direction.DISCHARGE, name),
        grid(directed -> directed.way() == Direction.CHARGE, name),
        row.optional("ohmic resistance").map(f -> f.positive(Kind.RESISTANCE)),
        basisOr(row, "resistance basis", basis));
  }

  private Optional<StateGrid<ElectricResistance>> grid(Predicate<Directed> way, String name) {
    List<StateGrid.Point<ElectricResistance>> points =
        resistances.stream()
            .filter(way)
            .map(Directed::point)
            .filter(p -> p.cell().equals(name))
            .toList();
    return points.isEmpty() ? Optional.empty() : Optional.of(StateGrid.of(points));
  }

  private static CellInput.Currents currents(
      CsvRow row, String way, List<CellInput.Limit> byTemperature) {
    Quantity<Temperature> coldest =
        row.field("coldest " + way + " temperature").quantity(Kind.TEMPERATURE);
    Field hottestField = row.field("hottest " + way + " temperature");
    Quantity<Temperature> hottest = hottestField.quantity(Kind.TEMPERATURE);
    if (Kind.TEMPERATURE.compare(hottest, coldest) <= 0) {
      throw hottestField.error("must be above the coldest " + coldest + ", but was " + hottest);
    }
    return new CellInput.Currents(
        row.field("continuous " + way + " current").positive(Kind.CURRENT),
        pulse(row, way),
        byTemperature,
        coldest,
        hottest);
  }

  private static Optional<CellInput.Pulse> pulse(CsvRow row, String way) {
    Optional<Field> current = row.optional("pulse " + way + " current");
    Optional<Field> duration = row.optional("pulse " + way + " duration");
    if (current.isPresent() != duration.isPresent()) {
      throw row.origin()
          .error("pulse " + way + " current and duration belong together: one of them is missing");
    }
    return current.map(
        c ->
            new CellInput.Pulse(
                c.positive(Kind.CURRENT), duration.orElseThrow().positive(Kind.TIME)));
  }

  private List<CellInput.Limit> limitsOf(String name) {
    return chargeLimits.stream()
        .filter(l -> l.cell().equals(name))
        .map(ChargeLimit::limit)
        .sorted((a, b) -> Kind.TEMPERATURE.compare(a.temperature(), b.temperature()))
        .toList();
  }

  private static Basis basisOr(CsvRow row, String column, Basis otherwise) {
    return row.optional(column).map(f -> f.choice(Basis.class)).orElse(otherwise);
  }
}
