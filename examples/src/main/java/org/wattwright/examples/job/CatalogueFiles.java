package org.wattwright.examples.job;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.wattwright.check.Basis;
import org.wattwright.check.Source;
import org.wattwright.conductor.Cable;
import org.wattwright.conductor.CableBuilder;
import org.wattwright.conductor.ConductorSize;
import org.wattwright.conductor.InsulationMaterial;
import org.wattwright.conductor.StrandClass;
import org.wattwright.protection.PrechargeResistor;
import org.wattwright.units.Kind;

/** Reads {@code cables.csv} and {@code precharge-resistors.csv}, and with them the other parts. */
final class CatalogueFiles {
  private static final List<String> FILES =
      List.of(
          "cables.csv",
          "fuses.csv",
          "fuse-curves.csv",
          "contactors.csv",
          "contactor-loads.csv",
          "precharge-resistors.csv");

  private CatalogueFiles() {}

  /** What a cable is insulated with. */
  private enum Insulation {
    CROSS_LINKED("cross-linked"),
    PVC("PVC"),
    RUBBER("ethylene rubber"),
    SILICONE("silicone");

    private final String label;

    Insulation(String label) {
      this.label = label;
    }

    InsulationMaterial material() {
      return switch (this) {
        case CROSS_LINKED -> InsulationMaterial.XLPE;
        case PVC -> InsulationMaterial.PVC;
        case RUBBER -> InsulationMaterial.EPR;
        case SILICONE -> InsulationMaterial.SILICONE;
      };
    }

    @Override
    public String toString() {
      return label;
    }
  }

  static CatalogueInput read(Path folder) {
    return new CatalogueInput(
        CsvTable.read(folder.resolve("cables.csv")).map(CatalogueFiles::cable),
        FuseFiles.read(folder),
        ContactorFiles.read(folder),
        resistors(folder),
        FILES.stream().map(file -> CsvTable.read(folder.resolve(file)).stated()).toList());
  }

  private static Cable cable(CsvRow row) {
    String name = row.field("name").text();
    var area = row.field("area").positive(Kind.AREA);
    StrandClass strands = row.field("strands").choice(StrandClass.class);
    Insulation insulation = row.field("insulation").choice(Insulation.class);
    rejectEstimates(row);
    return row.origin()
        .locate(
            () ->
                dimensions(
                        row,
                        Cable.of(name, ConductorSize.metric(area, strands), insulation.material()))
                    .build());
  }

  /** A guessed row would pass for a data sheet. */
  private static void rejectEstimates(CsvRow row) {
    Field basis = row.field("basis");
    if (basis.choice(Basis.class) == Basis.ESTIMATED) {
      throw basis.error("must be measured or data sheet; leave out what is not known");
    }
    row.optional("source");
  }

  private static CableBuilder dimensions(CsvRow row, CableBuilder cable) {
    row.optional("conductor diameter")
        .ifPresent(f -> cable.conductorDiameter(f.positive(Kind.LENGTH)));
    row.optional("outer diameter").ifPresent(f -> cable.outerDiameter(f.positive(Kind.LENGTH)));
    row.optional("temperature limit")
        .ifPresent(f -> cable.temperatureLimit(f.quantity(Kind.TEMPERATURE)));
    row.optional("voltage").ifPresent(f -> cable.voltageRating(f.positive(Kind.VOLTAGE)));
    row.optional("bend radius").ifPresent(f -> cable.minimumBendRadius(f.positive(Kind.LENGTH)));
    row.optional("mass per metre")
        .ifPresent(f -> cable.massPerLength(f.positive(Kind.MASS_PER_LENGTH)));
    row.optional("price per metre").ifPresent(f -> cable.pricePerMetre(f.price()));
    return cable;
  }

  private record NamedResistor(Origin origin, PrechargeResistor resistor) {}

  private static List<PrechargeResistor> resistors(Path folder) {
    List<NamedResistor> all =
        CsvTable.read(folder.resolve("precharge-resistors.csv"))
            .map(row -> new NamedResistor(row.origin(), row.origin().locate(() -> resistor(row))));
    Named.unique(all, r -> r.resistor().name(), NamedResistor::origin);
    return all.stream().map(NamedResistor::resistor).toList();
  }

  private static PrechargeResistor resistor(CsvRow row) {
    PrechargeResistor resistor =
        PrechargeResistor.of(
            row.field("name").text(), row.field("resistance").positive(Kind.RESISTANCE));
    List<UnaryOperator<PrechargeResistor>> steps =
        List.of(
            r -> row.optional("tolerance").map(f -> r.tolerance(f.share())).orElse(r),
            r ->
                row.optional("continuous power")
                    .map(f -> r.continuousPower(f.positive(Kind.POWER)))
                    .orElse(r),
            r ->
                row.optional("pulse energy")
                    .map(f -> r.pulseEnergy(f.positive(Kind.ENERGY)))
                    .orElse(r),
            r -> row.optional("voltage").map(f -> r.voltage(f.positive(Kind.VOLTAGE))).orElse(r),
            r -> row.optional("mass").map(f -> r.mass(f.positive(Kind.MASS))).orElse(r),
            r -> row.optional("price").map(f -> r.price(f.price())).orElse(r));
    for (UnaryOperator<PrechargeResistor> step : steps) {
      resistor = step.apply(resistor);
    }
    rejectEstimates(row);
    return resistor;
  }

  static Source source(CsvRow row) {
    String text = row.optional("source").map(Field::text).orElse(row.origin().toString());
    return switch (row.field("basis").choice(Basis.class)) {
      case MEASURED -> Source.measurement(text);
      case DATA_SHEET -> Source.dataSheet(text);
      case ESTIMATED -> Source.commonPractice(text);
    };
  }

  /** Rows of a second file, by the part of the first that they belong to; all must belong. */
  static <T> Map<String, List<T>> byPart(
      List<T> rows,
      java.util.function.Function<T, String> partOf,
      java.util.function.Function<T, Origin> originOf,
      PartNames parts) {
    Map<String, List<T>> byPart = new HashMap<>();
    for (T row : rows) {
      String part = partOf.apply(row);
      if (!parts.names().contains(part)) {
        throw originOf.apply(row).error("no " + parts.what() + " is named " + Quoted.of(part));
      }
      byPart.computeIfAbsent(part, name -> new java.util.ArrayList<>()).add(row);
    }
    return byPart;
  }

  /** Names that a second file may refer to. */
  record PartNames(String what, java.util.Set<String> names) {
    PartNames {
      what = what.toLowerCase(Locale.ROOT);
      names = java.util.Set.copyOf(names);
    }
  }
}
