package org.wattwright.examples.job;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Time;
import org.wattwright.charging.CableCoding;
import org.wattwright.charging.ChargingPoint;
import org.wattwright.charging.ControlPilot;
import org.wattwright.charging.Supply;
import org.wattwright.check.Basis;
import org.wattwright.check.Given;
import org.wattwright.check.Source;
import org.wattwright.units.Kind;

/** Reads {@code charging-points.csv}: where the vehicle is charged. May be missing. */
final class ChargingFile {
  private static final int SINGLE = 1;
  private static final int THREE = 3;

  private ChargingFile() {}

  static List<ChargingPointInput> read(Path folder) {
    Path file = folder.resolve("charging-points.csv");
    if (!Files.exists(file)) {
      return List.of();
    }
    List<ChargingPointInput> points = CsvTable.read(file).map(ChargingFile::point);
    Named.unique(points, ChargingPointInput::name, ChargingPointInput::origin);
    return points;
  }

  private static ChargingPointInput point(CsvRow row) {
    ChargingPoint point = ChargingPoint.of(supply(row));
    Optional<ControlPilot> pilot = row.optional("pilot current").map(ChargingFile::pilot);
    Optional<CableCoding> cable =
        row.optional("cable resistor")
            .map(f -> CableCoding.ofResistor(f.positive(Kind.RESISTANCE)));
    point = pilot.isPresent() ? point.pilot(pilot.get()) : point;
    point = cable.isPresent() ? point.cable(cable.get()) : point;
    String name = row.field("name").text();
    Basis basis = row.field("basis").choice(Basis.class);
    String source = row.field("source").text();
    Optional<Given<Quantity<Time>>> allowed =
        row.optional("time allowed")
            .map(f -> new Given<>(f.positive(Kind.TIME), basis, Source.requirement(source)));
    return new ChargingPointInput(
        row.origin(),
        name,
        point,
        allowed,
        new Statement("charging", name, point.toString(), basis, source, row.origin()));
  }

  private static Supply supply(CsvRow row) {
    Quantity<ElectricPotential> voltage = row.field("voltage").positive(Kind.VOLTAGE);
    Quantity<ElectricCurrent> rating = row.field("circuit rating").positive(Kind.CURRENT);
    Field phases = row.field("phases");
    return switch (phases.count(SINGLE, THREE)) {
      case SINGLE -> Supply.singlePhase(voltage, rating);
      case THREE -> Supply.threePhase(voltage, rating);
      default -> throw phases.error("must be 1 or 3, but was " + phases.asGiven());
    };
  }

  private static ControlPilot pilot(Field field) {
    Quantity<ElectricCurrent> current = field.positive(Kind.CURRENT);
    return ControlPilot.offering(current)
        .orElseThrow(
            () -> field.error("must be a current that a pilot can offer, but was " + current));
  }
}
