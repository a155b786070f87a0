package org.wattwright.examples.job;

import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.percentPerKelvin;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Time;
import org.wattwright.check.Basis;
import org.wattwright.protection.AmbientDerating;
import org.wattwright.protection.Fuse;
import org.wattwright.protection.FuseBuilder;
import org.wattwright.protection.TimeCurrentCurve;
import org.wattwright.units.Kind;

/** Reads {@code fuses.csv} and {@code fuse-curves.csv}; what is left out stays unknown. */
final class FuseFiles {
  private FuseFiles() {}

  private enum Range {
    FULL,
    PARTIAL;

    @Override
    public String toString() {
      return this == FULL ? "full" : "partial";
    }
  }

  /** How a fuse carries less in warm air. */
  private enum Derating {
    SEMICONDUCTOR("semiconductor"),
    GENERAL("general");

    private final String label;

    Derating(String label) {
      this.label = label;
    }

    AmbientDerating law() {
      return this == SEMICONDUCTOR
          ? AmbientDerating.squareRoot(celsius(130), celsius(30))
          : AmbientDerating.linear(percentPerKelvin(0.5), celsius(40));
    }

    @Override
    public String toString() {
      return label;
    }
  }

  private record CurvePoint(
      Origin origin, String fuse, Quantity<ElectricCurrent> current, Quantity<Time> time) {}

  private record NamedFuse(Origin origin, Fuse fuse) {}

  static List<Fuse> read(Path folder) {
    Path file = folder.resolve("fuses.csv");
    Set<String> names = new HashSet<>(CsvTable.read(file).map(FuseFiles::nameOnly));
    List<CurvePoint> points =
        CsvTable.read(folder.resolve("fuse-curves.csv"))
            .map(
                row ->
                    new CurvePoint(
                        row.origin(),
                        row.field("fuse").text(),
                        row.field("current").positive(Kind.CURRENT),
                        row.field("pre-arcing time").positive(Kind.TIME)));
    Map<String, List<CurvePoint>> curves =
        CatalogueFiles.byPart(
            points,
            CurvePoint::fuse,
            CurvePoint::origin,
            new CatalogueFiles.PartNames("fuse", names));
    List<NamedFuse> fuses =
        CsvTable.read(file).map(row -> new NamedFuse(row.origin(), fuse(row, curves)));
    Named.unique(fuses, f -> f.fuse().name(), NamedFuse::origin);
    return fuses.stream().map(NamedFuse::fuse).toList();
  }

  /** Only the name; the second reading looks at the other columns. */
  private static String nameOnly(CsvRow row) {
    fuse(row, Map.of());
    return row.field("name").text();
  }

  private static Fuse fuse(CsvRow row, Map<String, List<CurvePoint>> curves) {
    String name = row.field("name").text();
    FuseBuilder fuse =
        row.origin().locate(() -> Fuse.of(name, row.field("rated current").positive(Kind.CURRENT)));
    addRatings(row, fuse);
    addEnergies(row, fuse);
    row.optional("derating").ifPresent(f -> fuse.ambientDerating(f.choice(Derating.class).law()));
    row.optional("cyclic factor").ifPresent(f -> fuse.cyclicFactor(f.share()));
    row.optional("mass").ifPresent(f -> fuse.mass(f.positive(Kind.MASS)));
    row.optional("price").ifPresent(f -> fuse.price(f.price()));
    fuse.basis(row.field("basis").choice(Basis.class), CatalogueFiles.source(row));
    List<CurvePoint> points = curves.getOrDefault(name, List.of());
    if (!points.isEmpty()) {
      fuse.preArcingCurve(curve(points));
    }
    return row.origin().locate(fuse::build);
  }

  private static void addRatings(CsvRow row, FuseBuilder fuse) {
    row.optional("voltage").ifPresent(f -> fuse.directVoltage(f.positive(Kind.VOLTAGE)));
    row.optional("voltage on alternating current")
        .ifPresent(f -> fuse.alternatingVoltage(f.positive(Kind.VOLTAGE)));
    row.optional("time constant").ifPresent(f -> fuse.testTimeConstant(f.positive(Kind.TIME)));
    row.optional("breaking capacity")
        .ifPresent(f -> fuse.breakingCapacity(f.positive(Kind.CURRENT)));
    row.optional("range")
        .ifPresent(
            f -> {
              if (f.choice(Range.class) == Range.FULL) {
                fuse.fullRange();
              } else {
                row.optional("minimum breaking current")
                    .ifPresentOrElse(
                        m -> fuse.partialRange(m.positive(Kind.CURRENT)), fuse::partialRange);
              }
            });
  }

  private static void addEnergies(CsvRow row, FuseBuilder fuse) {
    row.optional("minimum breaking current");
    row.optional("pre-arcing I²t")
        .ifPresent(f -> fuse.preArcingJouleIntegral(f.positive(Kind.JOULE_INTEGRAL)));
    row.optional("total I²t")
        .ifPresent(
            f ->
                fuse.totalJouleIntegral(
                    f.positive(Kind.JOULE_INTEGRAL),
                    row.field("total I²t up to").positive(Kind.VOLTAGE)));
    row.optional("total I²t up to");
    row.optional("peak let-through").ifPresent(f -> fuse.peakLetThrough(f.positive(Kind.CURRENT)));
  }

  private static TimeCurrentCurve curve(List<CurvePoint> points) {
    TimeCurrentCurve.Builder curve = TimeCurrentCurve.ofPoints();
    for (CurvePoint point : points) {
      point.origin().locate(() -> curve.point(point.current(), point.time()));
    }
    return points.get(0).origin().locate(curve::build);
  }
}
