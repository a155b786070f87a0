package org.wattwright.examples.job;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.wattwright.check.Basis;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/** Reads {@code masses.csv} and {@code seats.csv}. */
final class MassFiles {
  private static final int MOST_PERSONS = 100;
  private static final Quantity<Mass> NO_MASS = Measures.kilograms(0);
  private static final Quantity<Length> NO_LENGTH = Measures.metres(0);

  private MassFiles() {}

  static List<PartMassInput> parts(Path folder, List<DeviceInput> devices) {
    Map<String, DeviceInput> byName = Named.unique(devices, DeviceInput::name, DeviceInput::origin);
    Path file = folder.resolve("masses.csv");
    List<PartMassInput> parts = CsvTable.read(file).map(row -> part(row, byName));
    Named.unique(parts, PartMassInput::name, PartMassInput::origin);
    devices.forEach(device -> requireAdded(file, parts, device));
    return parts;
  }

  /** A device that sits nowhere would be missing from every axle load. */
  private static void requireAdded(Path file, List<PartMassInput> parts, DeviceInput device) {
    if (parts.stream()
        .noneMatch(
            part ->
                part.change() == PartMassInput.Change.ADDED && part.name().equals(device.name()))) {
      throw JobFileException.of(
          TextFile.nameOf(file)
              + " has no added part "
              + Quoted.of(device.name())
              + ", which is a device of devices.csv: say where it sits");
    }
  }

  private static PartMassInput part(CsvRow row, Map<String, DeviceInput> devices) {
    String name = row.field("name").text();
    PartMassInput.Change change = row.field("change").choice(PartMassInput.Change.class);
    return new PartMassInput(
        row.origin(),
        name,
        change,
        mass(row, name, change, devices),
        place(row, ""),
        new PartMassInput.Tolerance(
            row.optional("mass tolerance").map(f -> f.nonNegative(Kind.MASS)).orElse(NO_MASS),
            row.optional("position tolerance")
                .map(f -> f.nonNegative(Kind.LENGTH))
                .orElse(NO_LENGTH)),
        row.field("carried by").choice(PartMassInput.CarriedBy.class),
        row.field("basis").choice(Basis.class),
        row.optional("source").map(Field::text).orElse(""));
  }

  /** A device has its mass in its own file, and there only. */
  private static Quantity<Mass> mass(
      CsvRow row, String name, PartMassInput.Change change, Map<String, DeviceInput> devices) {
    Optional<Field> stated = row.optional("mass");
    if (change == PartMassInput.Change.REMOVED) {
      return row.field("mass").positive(Kind.MASS);
    }
    DeviceInput device = devices.get(name);
    if (device == null) {
      return stated
          .orElseThrow(
              () ->
                  row.origin()
                      .error(
                          "has no mass, and no device of devices.csv is named " + Quoted.of(name)))
          .positive(Kind.MASS);
    }
    stated.ifPresent(
        field -> {
          throw field.error("must be empty: the mass of a device stands in devices.csv");
        });
    return device.mass();
  }

  static List<SeatInput> seats(Path folder) {
    Path file = folder.resolve("seats.csv");
    List<SeatInput> seats = CsvTable.read(file).map(MassFiles::seat);
    Named.unique(seats, SeatInput::name, SeatInput::origin);
    requireOne(file, seats, SeatInput.Use.DRIVER, 1);
    requireOne(file, seats, SeatInput.Use.GOODS, 0);
    return seats;
  }

  private static SeatInput seat(CsvRow row) {
    SeatInput.Use use = row.field("use").choice(SeatInput.Use.class);
    int persons =
        switch (use) {
          case DRIVER -> row.field("persons").count(1, 1);
          case PASSENGERS -> row.field("persons").count(1, MOST_PERSONS);
          case GOODS -> row.optional("persons").map(f -> f.count(0, 0)).orElse(0);
        };
    row.optional("source");
    return new SeatInput(row.origin(), row.field("name").text(), use, persons, place(row, ""));
  }

  private static void requireOne(Path file, List<SeatInput> seats, SeatInput.Use use, int least) {
    List<SeatInput> found = seats.stream().filter(seat -> seat.use() == use).toList();
    if (found.size() < least) {
      throw JobFileException.of(TextFile.nameOf(file) + " has no row for the " + use);
    }
    if (found.size() > 1) {
      throw found
          .get(1)
          .origin()
          .error("second row for " + use + ", first in line " + found.get(0).origin().line());
    }
  }

  /** A place that stands in three columns. */
  static PlaceInput place(CsvRow row, String prefix) {
    return new PlaceInput(
        row.field(prefix + "behind front axle").quantity(Kind.LENGTH),
        row.optional(prefix + "left of centre").map(f -> f.quantity(Kind.LENGTH)),
        row.optional(prefix + "above ground").map(f -> f.nonNegative(Kind.LENGTH)));
  }
}
