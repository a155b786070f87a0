package org.wattwright.examples.job;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
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
  private static final String LOAD_CASE = "load case";
  private static final String AXLE = "axle";
  private static final String LEAST = "least";
  private static final String MOST = "most";

  private RuleFile() {}

  private enum Limit {
    KERB_MASS,
    AXLE_SHARE,
    AXLE_SHARE_SHIFT,
    AXLE_LOAD_RISE;

    /** The columns that are not left empty, beside those of every row. */
    Set<String> columns() {
      return switch (this) {
        case KERB_MASS -> Set.of(LEAST);
        case AXLE_SHARE -> Set.of(LOAD_CASE, AXLE, LEAST);
        case AXLE_SHARE_SHIFT -> Set.of();
        case AXLE_LOAD_RISE -> Set.of(AXLE);
      };
    }

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
    rejectOthers(row, limit);
    VehicleRule rule = row.origin().locate(() -> rule(row, limit));
    return new Row(new Clause(row.field("rule set").text(), row.field("source").text()), rule);
  }

  private static VehicleRule rule(CsvRow row, Limit limit) {
    double most = row.field(MOST).share();
    return switch (limit) {
      case KERB_MASS -> new KerbMassRule(most, row.field(LEAST).share());
      case AXLE_SHARE ->
          new AxleShareRule(row.field(LOAD_CASE).text(), axle(row), row.field(LEAST).share(), most);
      case AXLE_SHARE_SHIFT -> new AxleShareShiftRule(most);
      case AXLE_LOAD_RISE -> new AxleLoadRiseRule(axle(row), most);
    };
  }

  private static Axle axle(CsvRow row) {
    return row.field(AXLE).choice(Axle.class);
  }

  /** A cell that the limit does not heed would be a rule that the reader believes in. */
  private static void rejectOthers(CsvRow row, Limit limit) {
    for (String column : List.of(LOAD_CASE, AXLE, LEAST)) {
      if (!limit.columns().contains(column) && row.optional(column).isPresent()) {
        throw row.field(column).error("must be empty for " + limit);
      }
    }
  }
}
