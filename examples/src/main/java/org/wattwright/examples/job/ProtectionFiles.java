package org.wattwright.examples.job;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.wattwright.battery.TemperatureRange;
import org.wattwright.check.Basis;
import org.wattwright.check.Given;
import org.wattwright.protection.IsolationLeaks;
import org.wattwright.units.Kind;

/**
 * Reads {@code protection.csv}, {@code supplies.csv} and {@code isolation.csv}, and with them the
 * other files about circuits.
 */
final class ProtectionFiles {
  /** All of them, or none. */
  static final List<String> FILES =
      List.of(
          "circuits.csv",
          "duty.csv",
          "supplies.csv",
          "protection.csv",
          "isolation.csv",
          "cables.csv",
          "fuses.csv",
          "fuse-curves.csv",
          "contactors.csv",
          "contactor-loads.csv",
          "precharge-resistors.csv");

  private static final int MOST_TAPS = 1000;
  private static final int MOST_REPEATS = 1000;

  private final KeyValues values;

  private ProtectionFiles(KeyValues values) {
    this.values = values;
  }

  static CircuitsInput read(Path folder) {
    KeyValues values = KeyValues.read(folder.resolve("protection.csv"));
    ProtectionFiles files = new ProtectionFiles(values);
    CircuitsInput input =
        new CircuitsInput(
            CircuitFiles.read(folder),
            supplies(folder),
            CatalogueFiles.read(folder),
            files.faults(),
            files.bus(),
            files.shock(),
            isolation(folder),
            values.statements());
    values.rejectUnknown();
    return input;
  }

  private CircuitsInput.Faults faults() {
    var coldest = values.field("coldest cells").quantity(Kind.TEMPERATURE);
    var hottest = values.field("hottest cells").quantity(Kind.TEMPERATURE);
    return new CircuitsInput.Faults(
        given("oldest pack", f -> Kind.DIMENSIONLESS.siValueOf(f.positive(Kind.DIMENSIONLESS))),
        values
            .statement("hottest cells")
            .origin()
            .locate(() -> TemperatureRange.between(coldest, hottest)),
        given("inductance of pack and box", f -> f.positive(Kind.INDUCTANCE)),
        given("capacitor loop resistance", f -> f.positive(Kind.RESISTANCE)),
        values
            .optional("arc voltage")
            .map(f -> given("arc voltage", g -> g.nonNegative(Kind.VOLTAGE))),
        values
            .optional("bolted lug")
            .map(f -> given("bolted lug", g -> g.positive(Kind.RESISTANCE))));
  }

  private CircuitsInput.Bus bus() {
    return new CircuitsInput.Bus(
        values.field("pre-charge within").positive(Kind.TIME),
        values.field("pre-charge time-out").positive(Kind.TIME),
        values
            .optional("pre-charge repeats")
            .map(
                f ->
                    new CircuitsInput.Repeats(
                        f.count(1, MOST_REPEATS),
                        values.field("pre-charge period").positive(Kind.TIME))),
        values.optional("bleed resistance").map(f -> f.positive(Kind.RESISTANCE)),
        values.field("capacitor tolerance").share());
  }

  private CircuitsInput.Shock shock() {
    Optional<CircuitsInput.SenseTaps> taps =
        values
            .optional("sense taps of one unit")
            .map(
                f -> {
                  int count = f.count(2, MOST_TAPS);
                  return new CircuitsInput.SenseTaps(
                      count, values.field("fused sense taps").count(0, count));
                });
    return new CircuitsInput.Shock(
        values.field("AC and DC").choice(Sides.class) == Sides.JOINED,
        values.optional("bond between bays").map(f -> f.positive(Kind.RESISTANCE)),
        values.optional("bond conductor").map(f -> f.positive(Kind.AREA)),
        taps,
        new CircuitsInput.Inlet(
            values.optional("inlet isolation").map(f -> f.positive(Kind.RESISTANCE)),
            values.optional("inlet protective earth").map(f -> f.nonNegative(Kind.RESISTANCE)),
            values.optional("residual-current device attested by").map(Field::text),
            values.optional("supply breaker attested by").map(Field::text)));
  }

  private enum Sides {
    JOINED,
    SEPARATE;

    @Override
    public String toString() {
      return this == JOINED ? "joined" : "separate";
    }
  }

  private <T> Given<T> given(String key, Function<Field, T> reader) {
    return values.statement(key).given(reader.apply(values.field(key)));
  }

  private static List<CircuitsInput.SupplyInput> supplies(Path folder) {
    List<CircuitsInput.SupplyInput> supplies =
        CsvTable.read(folder.resolve("supplies.csv")).map(ProtectionFiles::supply);
    Named.unique(supplies, CircuitsInput.SupplyInput::name, CircuitsInput.SupplyInput::origin);
    return supplies;
  }

  private static CircuitsInput.SupplyInput supply(CsvRow row) {
    row.optional("basis");
    row.optional("source");
    return new CircuitsInput.SupplyInput(
        row.origin(),
        row.field("name").text(),
        row.field("highest voltage").positive(Kind.VOLTAGE),
        row.field("highest fault voltage").positive(Kind.VOLTAGE),
        row.field("least resistance").positive(Kind.RESISTANCE),
        row.field("highest inductance").positive(Kind.INDUCTANCE),
        row.field("lowest fault voltage").positive(Kind.VOLTAGE),
        row.field("most resistance").positive(Kind.RESISTANCE));
  }

  private static List<CircuitsInput.IsolationInput> isolation(Path folder) {
    List<CircuitsInput.IsolationInput> all =
        CsvTable.read(folder.resolve("isolation.csv")).map(ProtectionFiles::device);
    Named.unique(all, CircuitsInput.IsolationInput::name, CircuitsInput.IsolationInput::origin);
    return all;
  }

  private static CircuitsInput.IsolationInput device(CsvRow row) {
    return new CircuitsInput.IsolationInput(
        row.origin(),
        row.field("name").text(),
        new IsolationLeaks(
            row.field("plus to chassis").positive(Kind.RESISTANCE),
            row.field("minus to chassis").positive(Kind.RESISTANCE)),
        row.field("Y capacitance").nonNegative(Kind.CAPACITANCE),
        row.optional("bond to chassis").map(f -> f.nonNegative(Kind.RESISTANCE)),
        row.field("basis").choice(Basis.class),
        row.optional("source").map(Field::text).orElse(""));
  }
}
