package org.wattwright.examples.job;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import org.wattwright.check.Basis;
import org.wattwright.units.Kind;
import org.wattwright.voltage.DeviceRole;

/** Reads {@code modules.csv} and {@code devices.csv}. */
final class PartFiles {
  private static final int MOST_CELLS = 1000;

  /** A device below it would be a stove; 0.91 in a column of per cent is meant as 91 %. */
  private static final double LOWEST_EFFICIENCY = 0.1;

  private PartFiles() {}

  static List<ModuleInput> modules(Path folder, Map<String, CellInput> cells) {
    List<ModuleInput> modules =
        CsvTable.read(folder.resolve("modules.csv")).map(row -> module(row, cells));
    Named.unique(modules, ModuleInput::name, ModuleInput::origin);
    return modules;
  }

  private static ModuleInput module(CsvRow row, Map<String, CellInput> cells) {
    return new ModuleInput(
        row.origin(),
        row.field("name").text(),
        Named.find(cells, row.field("cell").text(), row.origin()),
        row.field("series").count(1, MOST_CELLS),
        row.field("parallel").count(1, MOST_CELLS),
        row.field("interconnect resistance").nonNegative(Kind.RESISTANCE),
        row.field("mass").positive(Kind.MASS),
        new ModuleInput.Size(
            row.field("length").positive(Kind.LENGTH),
            row.field("width").positive(Kind.LENGTH),
            row.field("height").positive(Kind.LENGTH)),
        row.field("price").price(),
        row.field("state").choice(ModuleState.class),
        row.field("basis").choice(Basis.class),
        row.optional("source").map(Field::text).orElse(""));
  }

  static List<DeviceInput> devices(Path folder) {
    List<DeviceInput> devices = CsvTable.read(folder.resolve("devices.csv")).map(PartFiles::device);
    Named.unique(devices, DeviceInput::name, DeviceInput::origin);
    return devices;
  }

  private static DeviceInput device(CsvRow row) {
    return new DeviceInput(
        row.origin(),
        row.field("name").text(),
        row.field("role").choice(DeviceRole.class),
        window(row),
        new DeviceInput.Rating(
            row.optional("peak power").map(f -> f.positive(Kind.POWER)),
            row.field("continuous power").positive(Kind.POWER)),
        row.optional("current").map(f -> f.positive(Kind.CURRENT)),
        row.optional("capacitance").map(f -> f.nonNegative(Kind.CAPACITANCE)),
        row.optional("highest back-EMF").map(f -> f.positive(Kind.VOLTAGE)),
        row.optional("efficiency").map(PartFiles::efficiency),
        row.field("mass").positive(Kind.MASS),
        row.field("basis").choice(Basis.class),
        row.optional("source").map(Field::text).orElse(""),
        row.optional("input current").map(f -> f.positive(Kind.CURRENT)));
  }

  private static double efficiency(Field field) {
    double efficiency = field.share();
    if (!(efficiency >= LOWEST_EFFICIENCY)) {
      throw field.error("must be from 10 % to 100 %, but was " + field.asGiven());
    }
    return efficiency;
  }

  private static DeviceInput.Window window(CsvRow row) {
    Quantity<ElectricPotential> minimum = row.field("operating minimum").nonNegative(Kind.VOLTAGE);
    Quantity<ElectricPotential> maximum =
        atLeast(row.field("operating maximum"), "operating minimum", minimum);
    Optional<Quantity<ElectricPotential>> fullMinimum =
        row.optional("full-performance minimum").map(f -> atLeast(f, "operating minimum", minimum));
    Quantity<ElectricPotential> fullBase = fullMinimum.orElse(minimum);
    Optional<Quantity<ElectricPotential>> fullMaximum =
        row.optional("full-performance maximum").map(f -> between(f, fullBase, maximum));
    return new DeviceInput.Window(
        atLeast(row.field("absolute maximum"), "operating maximum", maximum),
        minimum,
        maximum,
        fullMinimum,
        fullMaximum);
  }

  private static Quantity<ElectricPotential> atLeast(
      Field field, String bound, Quantity<ElectricPotential> least) {
    Quantity<ElectricPotential> value = field.positive(Kind.VOLTAGE);
    if (Kind.VOLTAGE.compare(value, least) < 0) {
      throw field.error("must be ≥ " + bound + " " + least + ", but was " + value);
    }
    return value;
  }

  private static Quantity<ElectricPotential> between(
      Field field, Quantity<ElectricPotential> least, Quantity<ElectricPotential> most) {
    Quantity<ElectricPotential> value = atLeast(field, "full-performance minimum", least);
    if (Kind.VOLTAGE.compare(value, most) > 0) {
      throw field.error("must be ≤ operating maximum " + most + ", but was " + value);
    }
    return value;
  }
}
