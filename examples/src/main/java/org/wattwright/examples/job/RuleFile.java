package org.wattwright.examples.job;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.wattwright.check.Source;
import org.wattwright.vehicle.Axle;
import org.wattwright.vehicle.AxleLoadRiseRule;
import org.wattwright.vehicle.AxleShareRule;
import org.wattwright.vehicle.AxleShareShiftRule;
import org.wattwright.vehicle.KerbMassRule;
import org.wattwright.vehicle.RuleSet;
import org.wattwright.vehicle.VehicleRule;

/**
 * Reads {@code rules.csv}: the limits of an authority on conversions, as data, each clause with its
 * own source. May be missing.
 */
final class RuleFile {
  private RuleFile() {}

  private enum Limit {
    KERB_MASS,
    AXLE_SHARE,
    AXLE_SHARE_SHIFT,
    AXLE_LOAD_RISE;

    @Override
    public String toString() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }

  private record Clause(String ruleSet, String source) {}

  private record Row(Clause clause, VehicleRule rule) {}

  static List<RuleSet> read(Path folder) {
    Path file = folder.resolve("rules.csv");
    if (!Files.exists(file)) {
      return List.of();
    }
    Map<Clause, List<Row>> byClause = new LinkedHashMap<>();
    for (Row row : CsvTable.read(file).map(RuleFile::row)) {
      byClause.computeIfAbsent(row.clause(), clause -> new ArrayList<>()).add(row);
    }
    return byClause.entrySet().stream()
        .map(
            set ->
                new RuleSet(
                    set.getKey().ruleSet(),
                    Source.standard(set.getKey().ruleSet(), set.getKey().source()),
                    set.getValue().stream().map(Row::rule).toList()))
        .toList();
  }

  private static Row row(CsvRow row) {
    Limit limit = row.field("limit").choice(Limit.class);
    Optional<String> loadCase = row.optional("load case").map(Field::text);
    Optional<Axle> axle = row.optional("axle").map(f -> f.choice(Axle.class));
    double least = row.optional("least").map(Field::share).orElse(0.0);
    double most = row.field("most").share();
    VehicleRule rule =
        row.origin()
            .locate(
                () ->
                    switch (limit) {
                      case KERB_MASS -> new KerbMassRule(most, least);
                      case AXLE_SHARE ->
                          new AxleShareRule(
                              loadCase.orElse("kerb"), axle.orElse(Axle.FRONT), least, most);
                      case AXLE_SHARE_SHIFT -> new AxleShareShiftRule(most);
                      case AXLE_LOAD_RISE -> new AxleLoadRiseRule(axle.orElse(Axle.FRONT), most);
                    });
    return new Row(new Clause(row.field("rule set").text(), row.field("source").text()), rule);
  }
}
