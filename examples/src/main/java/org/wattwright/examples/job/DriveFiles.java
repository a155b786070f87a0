package org.wattwright.examples.job;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.wattwright.battery.Ageing;
import org.wattwright.check.Given;
import org.wattwright.units.Kind;

/** Reads {@code drive.csv}, {@code motor.csv} and {@code current-limits.csv}. */
final class DriveFiles {
  /** All of them, or none. */
  static final List<String> FILES = List.of("drive.csv", "motor.csv", "current-limits.csv");

  private static final int MOST_POLE_PAIRS = 100;

  private final KeyValues values;

  private DriveFiles(KeyValues values) {
    this.values = values;
  }

  static DriveInput read(Path folder) {
    KeyValues values = KeyValues.read(folder.resolve("drive.csv"));
    DriveFiles files = new DriveFiles(values);
    DriveInput input =
        new DriveInput(
            values.statement("drive unit").origin(),
            files.motor(curve(folder)),
            files.line(),
            files.road(),
            files.use(),
            files.wanted(),
            CsvTable.read(folder.resolve("current-limits.csv"))
                .map(row -> row.field("current limit").positive(Kind.CURRENT)),
            values.statements());
    values.rejectUnknown();
    return input;
  }

  private static List<DriveInput.TorquePoint> curve(Path folder) {
    return CsvTable.read(folder.resolve("motor.csv"))
        .map(
            row ->
                new DriveInput.TorquePoint(
                    row.field("speed").nonNegative(Kind.ROTATIONAL_SPEED),
                    row.field("peak torque").nonNegative(Kind.TORQUE),
                    row.field("continuous torque").nonNegative(Kind.TORQUE)));
  }

  private DriveInput.Motor motor(List<DriveInput.TorquePoint> curve) {
    return new DriveInput.Motor(
        values.field("drive unit").text(),
        curve,
        values.field("highest motor speed").positive(Kind.ROTATIONAL_SPEED),
        values.field("motor and inverter efficiency").share(),
        magnet());
  }

  /** The magnets are stated whole or not at all. */
  private Optional<DriveInput.Magnet> magnet() {
    return given("flux linkage", f -> f.positive(Kind.MAGNETIC_FLUX))
        .map(
            flux ->
                new DriveInput.Magnet(
                    flux,
                    values.field("pole pairs").count(1, MOST_POLE_PAIRS),
                    values.field("overspeed").positive(Kind.ROTATIONAL_SPEED)));
  }

  private DriveInput.Line line() {
    return new DriveInput.Line(
        values.field("drive ratio").plainNumber(),
        values.field("drive efficiency").share(),
        values.optional("gear torque limit").map(f -> f.positive(Kind.TORQUE)),
        given("half-shaft torque limit", f -> f.positive(Kind.TORQUE)),
        required("rolling circumference", f -> f.positive(Kind.LENGTH)));
  }

  private DriveInput.Road road() {
    return new DriveInput.Road(
        required("rolling resistance coefficient", Field::share),
        values.field("drag area").positive(Kind.AREA),
        values.field("adhesion").plainNumber());
  }

  private DriveInput.Use use() {
    return new DriveInput.Use(
        values.field("auxiliaries").nonNegative(Kind.POWER),
        values.field("regeneration share of braking").share(),
        values.optional("highest regeneration force").map(f -> f.positive(Kind.FORCE)),
        values.field("pack temperature").quantity(Kind.TEMPERATURE),
        values.field("winter heater power").nonNegative(Kind.POWER),
        values.field("reserve state of charge").stateOfCharge(),
        aged());
  }

  private Given<Ageing> aged() {
    double capacity = values.field("remaining capacity when aged").share();
    double resistance = values.field("resistance factor when aged").plainNumber();
    Statement stated = values.statement("resistance factor when aged");
    return stated.given(stated.origin().locate(() -> Ageing.of(capacity, resistance)));
  }

  private DriveInput.Wanted wanted() {
    return new DriveInput.Wanted(
        hold(),
        given("start grade laden", Field::share),
        given("wanted top speed", f -> f.positive(Kind.SPEED)),
        given("wanted time to 50 km/h", f -> f.positive(Kind.TIME)),
        range("when new"),
        range("laden"),
        range("aged"),
        range("in winter"));
  }

  private Optional<DriveInput.Hold> hold() {
    return values
        .optional("hold speed")
        .map(
            speed ->
                new DriveInput.Hold(
                    speed.positive(Kind.SPEED), required("hold grade", Field::share)));
  }

  private Optional<Given<Quantity<Length>>> range(String state) {
    return given("wanted range " + state, f -> f.positive(Kind.LENGTH));
  }

  private <T> Given<T> required(String key, Function<Field, T> reader) {
    return values.statement(key).given(reader.apply(values.field(key)));
  }

  private <T> Optional<Given<T>> given(String key, Function<Field, T> reader) {
    return values.optional(key).map(f -> values.statement(key).given(reader.apply(f)));
  }
}
