package org.wattwright.examples.job;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.wattwright.check.Basis;
import org.wattwright.check.Given;
import org.wattwright.check.Source;
import org.wattwright.installation.AccelerationRules;
import org.wattwright.installation.Bolt;
import org.wattwright.installation.Fixing;
import org.wattwright.installation.FixingGroup;
import org.wattwright.installation.Footprint;
import org.wattwright.installation.MetricThread;
import org.wattwright.installation.MountingFace;
import org.wattwright.installation.Panel;
import org.wattwright.installation.PropertyClass;
import org.wattwright.installation.SpreaderPlate;
import org.wattwright.units.Kind;

/** Reads {@code mountings.csv} and {@code mounting-holes.csv}. */
final class MountingFiles {
  static final List<String> FILES = List.of("mountings.csv", "mounting-holes.csv");

  private MountingFiles() {}

  private enum Face {
    FLOOR,
    CEILING,
    WALL_AHEAD,
    WALL_BEHIND,
    WALL_LEFT,
    WALL_RIGHT;

    @Override
    public String toString() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }

  /** A hole and the pattern it belongs to. */
  private record Hole(Origin origin, String pattern, Fixing fixing) {}

  static List<MountingInput> read(Path folder) {
    List<Hole> holes = CsvTable.read(folder.resolve("mounting-holes.csv")).map(MountingFiles::hole);
    Map<String, List<Fixing>> byPattern = new LinkedHashMap<>();
    for (Hole hole : holes) {
      byPattern.computeIfAbsent(hole.pattern(), name -> new ArrayList<>()).add(hole.fixing());
    }
    List<MountingInput> mountings =
        CsvTable.read(folder.resolve("mountings.csv")).map(row -> mounting(row, byPattern));
    Map<String, MountingInput> named =
        Named.unique(mountings, MountingInput::pattern, MountingInput::origin);
    holes.forEach(hole -> Named.find("mounting", named, hole.pattern(), hole.origin()));
    return mountings;
  }

  private static Hole hole(CsvRow row) {
    Fixing fixing =
        row.origin()
            .locate(
                () ->
                    Fixing.at(
                            row.field("hole").text(),
                            row.field("u").quantity(Kind.LENGTH),
                            row.field("v").quantity(Kind.LENGTH),
                            bolt(row))
                        .in(panel(row)));
    return new Hole(row.origin(), row.field("pattern").text(), fixing);
  }

  private static Bolt bolt(CsvRow row) {
    return Bolt.of(
        MetricThread.parse(row.field("bolt").text()).toString(),
        PropertyClass.parse(row.field("class").text()));
  }

  private static Panel panel(CsvRow row) {
    Basis basis = row.field("basis").choice(Basis.class);
    Source source = Source.requirement(row.field("source").text());
    Panel panel =
        Panel.of(
                new Given<>(row.field("thickness").positive(Kind.LENGTH), basis, source),
                new Given<>(row.field("tensile strength").positive(Kind.PRESSURE), basis, source),
                row.field("diameter").positive(Kind.LENGTH),
                row.field("washer").positive(Kind.LENGTH))
            .withEdgeDistance(row.field("edge distance").positive(Kind.LENGTH));
    return row.optional("spreader")
        .map(
            across ->
                panel.withSpreader(
                    new SpreaderPlate(
                        across.positive(Kind.LENGTH),
                        row.field("spreader thickness").positive(Kind.LENGTH),
                        row.field("spreader yield").positive(Kind.PRESSURE))))
        .orElse(panel);
  }

  private static MountingInput mounting(CsvRow row, Map<String, List<Fixing>> byPattern) {
    String pattern = row.field("pattern").text();
    List<Fixing> fixings = byPattern.getOrDefault(pattern, List.of());
    if (fixings.isEmpty()) {
      throw row.origin().error("no hole of pattern " + Quoted.of(pattern));
    }
    FixingGroup group =
        row.origin()
            .locate(
                () ->
                    FixingGroup.of(
                        Footprint.of(
                            row.field("length").positive(Kind.LENGTH),
                            row.field("width").positive(Kind.LENGTH)),
                        fixings));
    return new MountingInput(
        row.origin(),
        row.field("bay").text(),
        pattern,
        MountingFace.valueOf(row.field("face").choice(Face.class).name()),
        group,
        new MountingInput.Centre(
            row.field("centre u").quantity(Kind.LENGTH),
            row.field("centre v").quantity(Kind.LENGTH),
            row.field("centre height").nonNegative(Kind.LENGTH)),
        row.origin().locate(() -> AccelerationRules.published(row.field("rule").text())),
        row.field("source").text());
  }
}
