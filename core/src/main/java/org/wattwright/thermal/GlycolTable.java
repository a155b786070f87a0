package org.wattwright.thermal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wattwright.check.Source;
import org.wattwright.internal.LinearTable;
import org.wattwright.internal.ResourceTable;

/** Ethylene glycol in water: the published rows, one full column at 50 % and the rest at 20 °C. */
final class GlycolTable {
  static final double CELSIUS_ZERO_K = 273.15;
  static final String VISCOSITY = "viscosity [mPa*s]";
  static final String CONDUCTIVITY = "conductivity [W/(m*K)]";

  static final Source SOURCE =
      Source.literature(
          "ASHRAE Handbook Fundamentals, Physical Properties of Secondary Coolants",
          "aqueous ethylene glycol, percent by volume");

  private static final String SHARE = "glycol [%]";
  private static final String TEMPERATURE = "temperature [degC]";
  private static final String DENSITY = "density [kg/m3]";
  private static final String SPECIFIC_HEAT = "specific heat [J/(kg*K)]";
  private static final double FULL_PERCENT = 50;
  private static final double COMMON_C = 20;
  private static final double PER_PERCENT = 1e6;

  private static final ResourceTable ROWS = ResourceTable.read(GlycolTable.class, "coolant.csv");
  private static final ResourceTable FREEZING =
      ResourceTable.read(GlycolTable.class, "freezing.csv");
  private static final LinearTable FREEZING_POINTS =
      LinearTable.of(
          "freezing.csv", FREEZING.numbers(SHARE), FREEZING.numbers("freezing point [degC]"));

  private GlycolTable() {}

  /** Whether the table has a whole column at this share. */
  static boolean isFull(double share) {
    return percent(share) == FULL_PERCENT;
  }

  /** In per cent, rid of the rounding of 0.306·100. */
  private static double percent(double share) {
    return Math.rint(share * 100 * PER_PERCENT) / PER_PERCENT;
  }

  static LinearTable densityKgPerM3(double share) {
    return shifted(DENSITY, share);
  }

  static LinearTable specificHeatJPerKgK(double share) {
    return shifted(SPECIFIC_HEAT, share);
  }

  /** The column at 50 %, times what the share makes of it at 20 °C. */
  private static LinearTable shifted(String column, double share) {
    LinearTable full = along(column, TEMPERATURE, SHARE, FULL_PERCENT);
    if (isFull(share)) {
      return full;
    }
    LinearTable byShare = along(column, SHARE, TEMPERATURE, COMMON_C);
    return full.scaled(byShare.at(percent(share)) / full.at(COMMON_C));
  }

  /** A property at 50 %; empty at another share, outside the column, or where it has no cell. */
  static Optional<Double> at(String column, double share, double celsius) {
    if (!isFull(share)) {
      return Optional.empty();
    }
    LinearTable table = along(column, TEMPERATURE, SHARE, FULL_PERCENT);
    boolean covered = celsius >= table.firstX() && celsius <= table.lastX();
    return covered ? Optional.of(table.at(celsius)) : Optional.empty();
  }

  static Optional<Double> freezingPointC(double share) {
    double percent = percent(share);
    boolean covered = percent >= FREEZING_POINTS.firstX() && percent <= FREEZING_POINTS.lastX();
    return covered ? Optional.of(FREEZING_POINTS.at(percent)) : Optional.empty();
  }

  /** A column along one axis, over the rows in which the other axis has a value. */
  private static LinearTable along(String column, String axis, String fixed, double value) {
    List<ResourceTable.Row> rows = new ArrayList<>();
    for (ResourceTable.Row row : ROWS.rows()) {
      if (row.number(fixed) == value && !row.isEmpty(column)) {
        rows.add(row);
      }
    }
    return LinearTable.of(
        "coolant.csv",
        rows.stream().mapToDouble(row -> row.number(axis)).toArray(),
        rows.stream().mapToDouble(row -> row.number(column)).toArray());
  }
}
