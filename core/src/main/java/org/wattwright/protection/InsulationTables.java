package org.wattwright.protection;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import org.wattwright.internal.LinearTable;
import org.wattwright.internal.ResourceTable;

/** Tables of IEC 60664-1:2020 as far as they were seen: F.1, F.2, F.5 and A.2. */
final class InsulationTables {
  private static final ResourceTable IMPULSE = read("impulse.csv");
  private static final ResourceTable CLEARANCE = read("clearance.csv");
  private static final ResourceTable CREEPAGE = read("creepage.csv");
  private static final LinearTable ALTITUDE =
      LinearTable.of(
          "altitude.csv",
          read("altitude.csv").numbers("altitude [m]"),
          read("altitude.csv").numbers("factor"));

  private InsulationTables() {}

  private static ResourceTable read(String resource) {
    return ResourceTable.read(InsulationTables.class, resource);
  }

  private static List<ResourceTable.Row> rows(
      ResourceTable table, Predicate<ResourceTable.Row> wanted) {
    return table.rows().stream().filter(wanted).toList();
  }

  static OptionalDouble impulseKv(double lineToNeutralV, OvervoltageCategory category) {
    double stepV =
        IMPULSE.rows().stream()
            .mapToDouble(row -> row.number("up to [V]"))
            .filter(volt -> volt >= lineToNeutralV)
            .min()
            .orElse(Double.NaN);
    return IMPULSE.rows().stream()
        .filter(row -> row.text("category").equals(category.name()))
        .filter(row -> row.number("up to [V]") == stepV)
        .mapToDouble(row -> row.number("impulse [kV]"))
        .findFirst();
  }

  /** Next preferred impulse voltage upward, or the one after it for reinforced insulation. */
  static OptionalDouble stepKv(double impulseKv, boolean reinforced) {
    return CLEARANCE.rows().stream()
        .mapToDouble(row -> row.number("impulse [kV]"))
        .filter(kv -> kv >= impulseKv)
        .distinct()
        .sorted()
        .skip(reinforced ? 1 : 0)
        .findFirst();
  }

  /** The entry of the step, or of the next one that is carried, which is never shorter. */
  static OptionalDouble clearanceMm(double stepKv, PollutionDegree degree, ElectricField field) {
    return CLEARANCE.rows().stream()
        .filter(row -> row.text("pollution degree").equals(degree.name()))
        .filter(row -> row.text("field").equals(field.name()))
        .filter(row -> row.number("impulse [kV]") >= stepKv)
        .mapToDouble(row -> row.number("clearance [mm]"))
        .min();
  }

  static double altitudeFactor(double altitudeM) {
    return ALTITUDE.at(altitudeM);
  }

  static OptionalDouble creepageMm(double workingV, PollutionDegree degree, MaterialGroup group) {
    List<ResourceTable.Row> rows =
        rows(
            CREEPAGE,
            row ->
                row.text("pollution degree").equals(degree.name())
                    && row.text("material group").equals(group.tableName()));
    LinearTable table =
        LinearTable.of(
            "creepage.csv",
            rows.stream().mapToDouble(row -> row.number("voltage [V]")).toArray(),
            rows.stream().mapToDouble(row -> row.number("creepage [mm]")).toArray());
    double lastV =
        degree == PollutionDegree.THREE ? group.lastInDirtV(table.lastX()) : table.lastX();
    return workingV <= lastV ? OptionalDouble.of(table.at(workingV)) : OptionalDouble.empty();
  }
}
