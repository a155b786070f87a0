package org.wattwright.examples.job;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Time;
import org.wattwright.check.Basis;
import org.wattwright.protection.BreakRating;
import org.wattwright.protection.CarryCurve;
import org.wattwright.protection.Contactor;
import org.wattwright.protection.ContactorBuilder;
import org.wattwright.protection.ContactorCoil;
import org.wattwright.units.Kind;

/** Reads {@code contactors.csv} and {@code contactor-loads.csv}; what is left out stays unknown. */
final class ContactorFiles {
  private static final int MOST_BREAKS = 1_000_000;

  private ContactorFiles() {}

  private enum Way {
    FORWARD,
    REVERSE,
    EITHER;

    @Override
    public String toString() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }
  }

  private record LoadPoint(
      Origin origin, String contactor, Quantity<ElectricCurrent> current, Quantity<Time> time) {}

  private record NamedContactor(Origin origin, Contactor contactor) {}

  static List<Contactor> read(Path folder) {
    Path file = folder.resolve("contactors.csv");
    Set<String> names = new HashSet<>(CsvTable.read(file).map(ContactorFiles::nameOnly));
    List<LoadPoint> points =
        CsvTable.read(folder.resolve("contactor-loads.csv"))
            .map(
                row ->
                    new LoadPoint(
                        row.origin(),
                        row.field("contactor").text(),
                        row.field("current").positive(Kind.CURRENT),
                        row.field("time").positive(Kind.TIME)));
    Map<String, List<LoadPoint>> loads =
        CatalogueFiles.byPart(
            points,
            LoadPoint::contactor,
            LoadPoint::origin,
            new CatalogueFiles.PartNames("contactor", names));
    List<NamedContactor> all =
        CsvTable.read(file).map(row -> new NamedContactor(row.origin(), contactor(row, loads)));
    Named.unique(all, c -> c.contactor().name(), NamedContactor::origin);
    return all.stream().map(NamedContactor::contactor).toList();
  }

  /** Only the name; the second reading looks at the other columns. */
  private static String nameOnly(CsvRow row) {
    contactor(row, Map.of());
    return row.field("name").text();
  }

  private static Contactor contactor(CsvRow row, Map<String, List<LoadPoint>> loads) {
    String name = row.field("name").text();
    Quantity<ElectricPotential> voltage = row.field("voltage").positive(Kind.VOLTAGE);
    ContactorBuilder contactor = row.origin().locate(() -> Contactor.of(name, voltage));
    row.optional("carry").ifPresent(f -> contactor.carry(f.positive(Kind.CURRENT)));
    row.optional("make").ifPresent(f -> contactor.makeLimit(f.positive(Kind.CURRENT)));
    addBreak(row, contactor, voltage);
    addWithstand(row, contactor);
    addCoil(row, contactor);
    row.optional("mass").ifPresent(f -> contactor.mass(f.positive(Kind.MASS)));
    row.optional("price").ifPresent(f -> contactor.price(f.price()));
    contactor.basis(row.field("basis").choice(Basis.class)).source(CatalogueFiles.source(row));
    List<LoadPoint> points = loads.getOrDefault(name, List.of());
    if (!points.isEmpty()) {
      contactor.carryCurve(points.get(0).origin().locate(() -> curve(points)));
    }
    return row.origin().locate(contactor::build);
  }

  private static void addBreak(
      CsvRow row, ContactorBuilder contactor, Quantity<ElectricPotential> voltage) {
    row.optional("break")
        .ifPresent(
            f -> {
              Quantity<ElectricCurrent> current = f.positive(Kind.CURRENT);
              BreakRating rating =
                  switch (row.field("direction").choice(Way.class)) {
                    case FORWARD -> BreakRating.forward(current, voltage);
                    case REVERSE -> BreakRating.reverse(current, voltage);
                    case EITHER -> BreakRating.eitherWay(current, voltage);
                  };
              int times = row.field("break times").count(1, MOST_BREAKS);
              contactor.breaks(rating.times(times));
            });
    row.optional("break times");
    if (row.optional("direction").filter(f -> f.choice(Way.class) != Way.EITHER).isPresent()) {
      contactor.polarised();
    }
  }

  private static void addWithstand(CsvRow row, ContactorBuilder contactor) {
    row.optional("withstand").ifPresent(f -> contactor.withstand(f.positive(Kind.JOULE_INTEGRAL)));
    row.optional("peak withstand")
        .ifPresent(f -> contactor.peakWithstand(f.positive(Kind.CURRENT)));
    row.optional("contact resistance")
        .ifPresent(f -> contactor.contactResistance(f.positive(Kind.RESISTANCE)));
    row.optional("opening time").ifPresent(f -> contactor.openingTime(f.positive(Kind.TIME)));
  }

  private static void addCoil(CsvRow row, ContactorBuilder contactor) {
    row.optional("pull-in")
        .ifPresent(
            f ->
                contactor.coil(
                    ContactorCoil.electronic(
                        f.positive(Kind.VOLTAGE),
                        row.field("pull-in up to").quantity(Kind.TEMPERATURE))));
    row.optional("pull-in up to");
  }

  private static CarryCurve curve(List<LoadPoint> points) {
    return CarryCurve.through(
        points.stream()
            .map(p -> CarryCurve.point(p.current(), p.time()))
            .toArray(CarryCurve.Point[]::new));
  }
}
