package org.wattwright.charging;

import java.io.Serializable;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.LinearTable;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;

/**
 * Efficiency of a charger or converter over its load: output power over input power.
 *
 * <p>The load is the output power as a share of the rated one. Straight lines between points; below
 * the first and above the last the end value is held. Input power must rise with output power,
 * which a table of measured points does.
 *
 * <pre>{@code
 * EfficiencyByLoad.constant(0.93);
 * EfficiencyByLoad.from(0.1, 0.85).and(0.5, 0.94).and(1, 0.93);
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class EfficiencyByLoad implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final String FIELD = "EfficiencyByLoad";

  private final List<Point> points;
  private final LinearTable table;

  /**
   * One point of the table.
   *
   * @param load share of the rated output power, 0 to 1
   * @param efficiency &gt; 0 and ≤ 1
   */
  public record Point(double load, double efficiency) implements Serializable {
    /**
     * Checks the ranges.
     *
     * @param load 0 to 1
     * @param efficiency &gt; 0 and ≤ 1
     * @throws InvalidInputException if a value is outside its range
     */
    public Point {
      Require.fraction(FIELD + ".load", load);
      if (!(efficiency > 0 && efficiency <= 1)) {
        throw InvalidInputException.of(
            FIELD + ".efficiency", "> 0 and ≤ 1", Double.toString(efficiency));
      }
    }
  }

  private EfficiencyByLoad(List<Point> points) {
    this.points = points;
    this.table =
        LinearTable.of(
            FIELD,
            points.stream().mapToDouble(Point::load).toArray(),
            points.stream().mapToDouble(Point::efficiency).toArray());
    rejectFallingInput();
  }

  /** On a straight line η = c + m·x the input x/η rises as long as c is positive. */
  private void rejectFallingInput() {
    for (int i = 1; i < points.size(); i++) {
      if (!(offset(i) > 0)) {
        throw InvalidInputException.of(
            FIELD + "[" + i + "].efficiency",
            "so low that input power rises with output power",
            Double.toString(points.get(i).efficiency()));
      }
    }
  }

  /**
   * The same efficiency at every load.
   *
   * @param efficiency &gt; 0 and ≤ 1
   * @return the table
   * @throws InvalidInputException if outside its range
   */
  public static EfficiencyByLoad constant(double efficiency) {
    return from(1, efficiency);
  }

  /**
   * Starts a table with its smallest load.
   *
   * @param load share of the rated output power, 0 to 1
   * @param efficiency &gt; 0 and ≤ 1
   * @return a table of one point, to be extended by {@link #and}
   * @throws InvalidInputException if a value is outside its range
   */
  public static EfficiencyByLoad from(double load, double efficiency) {
    return new EfficiencyByLoad(List.of(new Point(load, efficiency)));
  }

  /**
   * A table with one more point at a higher load.
   *
   * @param load above that of the last point, ≤ 1
   * @param efficiency &gt; 0 and ≤ 1
   * @return a new table
   * @throws InvalidInputException if a value is outside its range, the load does not rise, or the
   *     input power would fall as the output power rises
   */
  public EfficiencyByLoad and(double load, double efficiency) {
    Point[] more = Arrays.copyOf(points.toArray(new Point[0]), points.size() + 1);
    more[points.size()] = new Point(load, efficiency);
    return new EfficiencyByLoad(List.of(more));
  }

  /**
   * Efficiency at a load.
   *
   * @param load share of the rated output power, ≥ 0
   * @return &gt; 0 and ≤ 1
   */
  public double at(double load) {
    return table.at(load);
  }

  /**
   * Output share that an input brings: the solution of x = η(x)·a, where a is the input power as a
   * share of the rated output power. Piece by piece x = a·c/(1 − a·m) on the line η = c + m·x.
   */
  double outputShare(double inputShare) {
    int last = points.size() - 1;
    for (int i = 1; i <= last; i++) {
      Point to = points.get(i);
      if (inputShare < to.load() / to.efficiency()) {
        return i == 1 && inputShare <= inputOf(points.get(0))
            ? inputShare * points.get(0).efficiency()
            : inputShare * offset(i) / (1 - inputShare * slope(i));
      }
    }
    return inputShare * points.get(last).efficiency();
  }

  private static double inputOf(Point point) {
    return point.load() / point.efficiency();
  }

  private double slope(int i) {
    Point from = points.get(i - 1);
    Point to = points.get(i);
    return (to.efficiency() - from.efficiency()) / (to.load() - from.load());
  }

  private double offset(int i) {
    return points.get(i).efficiency() - slope(i) * points.get(i).load();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof EfficiencyByLoad that && points.equals(that.points);
  }

  @Override
  public int hashCode() {
    return points.hashCode();
  }

  /**
   * The points.
   *
   * @return for example {@code efficiency 85 % at 10 % load, 94 % at 50 % load}
   */
  @Override
  public String toString() {
    if (points.size() == 1) {
      return "efficiency " + percent(points.get(0).efficiency());
    }
    List<String> texts =
        points.stream().map(p -> percent(p.efficiency()) + " at " + percent(p.load())).toList();
    return "efficiency " + String.join(", ", texts) + " load";
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, "%.4g", 100 * share).replaceAll("\\.?0+$", "") + " %";
  }
}
