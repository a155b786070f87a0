package org.wattwright.examples.job;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import org.wattwright.charging.LowVoltageBattery;
import org.wattwright.charging.LowVoltageBudget;
import org.wattwright.charging.LowVoltageLoad;
import org.wattwright.charging.LowVoltageSupply;
import org.wattwright.charging.LowVoltageTargets;
import org.wattwright.check.Basis;
import org.wattwright.check.Given;
import org.wattwright.check.Source;
import org.wattwright.units.Kind;

/**
 * Reads {@code low-voltage.csv} and {@code low-voltage-loads.csv}: what the low-voltage side draws,
 * what feeds it and what is asked of it. Both or neither.
 */
final class LowVoltageFiles {
  private static final List<String> FILES = List.of("low-voltage.csv", "low-voltage-loads.csv");

  private LowVoltageFiles() {}

  private enum Essential {
    YES,
    NO;

    @Override
    public String toString() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  private record Row(Origin origin, String name, LowVoltageLoad load, Statement stated) {}

  static Optional<LowVoltageInput> read(Path folder) {
    List<String> missing =
        FILES.stream().filter(file -> !Files.exists(folder.resolve(file))).toList();
    if (missing.size() == FILES.size()) {
      return Optional.empty();
    }
    if (!missing.isEmpty()) {
      throw JobFileException.of(
          "job folder "
              + folder
              + " has files about the low voltage but lacks "
              + missing.stream().collect(Collectors.joining(", ")));
    }
    return Optional.of(both(folder));
  }

  private static LowVoltageInput both(Path folder) {
    List<Row> rows =
        CsvTable.read(folder.resolve("low-voltage-loads.csv")).map(LowVoltageFiles::row);
    Named.unique(rows, Row::name, Row::origin);
    KeyValues values = KeyValues.read(folder.resolve("low-voltage.csv"));
    Quantity<ElectricPotential> voltage =
        values.field("voltage held by the converter").positive(Kind.VOLTAGE);
    LowVoltageBudget budget =
        LowVoltageBudget.of(rows.stream().map(Row::load).toList(), battery(values), voltage)
            .recharge(values.field("recharge within").positive(Kind.TIME));
    LowVoltageTargets targets =
        new LowVoltageTargets(
            values.field("time without converter").positive(Kind.TIME),
            values.field("time parked").positive(Kind.TIME),
            LowVoltageSupply.C);
    values.rejectUnknown();
    List<Statement> statements =
        new ArrayList<>(
            Stream.concat(values.statements().stream(), rows.stream().map(Row::stated)).toList());
    return new LowVoltageInput(budget, voltage, targets, statements);
  }

  private static LowVoltageBattery battery(KeyValues values) {
    LowVoltageBattery battery =
        LowVoltageBattery.of(values.field("battery capacity").positive(Kind.CHARGE));
    Field usable = values.field("usable share");
    return values.statement("usable share").origin().locate(() -> battery.usable(usable.share()));
  }

  private static Row row(CsvRow row) {
    String name = row.field("name").text();
    Basis basis = row.field("basis").choice(Basis.class);
    String source = row.field("source").text();
    Quantity<ElectricCurrent> current = row.field("current").nonNegative(Kind.CURRENT);
    LowVoltageLoad load =
        LowVoltageLoad.of(name, new Given<>(current, basis, Source.requirement(source)))
            .duty(row.field("duty").share());
    Optional<Field> peak = row.optional("peak");
    load = peak.isPresent() ? load.peak(peak.get().positive(Kind.CURRENT)) : load;
    Optional<Field> asleep = row.optional("key-off current");
    load = asleep.isPresent() ? load.asleep(asleep.get().nonNegative(Kind.CURRENT)) : load;
    load =
        row.field("essential").choice(Essential.class) == Essential.YES ? load.essential() : load;
    return new Row(
        row.origin(),
        name,
        load,
        new Statement("low voltage", name, current.toString(), basis, source, row.origin()));
  }
}
