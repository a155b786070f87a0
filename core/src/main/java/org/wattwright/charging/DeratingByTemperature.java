package org.wattwright.charging;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Figure;
import org.wattwright.internal.LinearTable;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * Share of its rated power that a charger or converter gives at a temperature.
 *
 * <p>Straight lines between points; beyond the ends the end value is held. The temperature is the
 * one the data sheet counts by: of the ambient air, or of the coolant.
 *
 * <pre>{@code
 * DeratingByTemperature.from(celsius(50), 1).and(celsius(65), 0.5).and(celsius(75), 0);
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class DeratingByTemperature implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final String FIELD = "DeratingByTemperature";

  private final List<Point> points;
  private final LinearTable table;

  /**
   * One point of the table.
   *
   * @param temperature absolute
   * @param share of the rated power, 0 to 1
   */
  public record Point(Quantity<Temperature> temperature, double share) implements Serializable {
    /**
     * Checks the share.
     *
     * @param temperature absolute
     * @param share 0 to 1
     * @throws org.wattwright.units.InvalidInputException if the share is outside its range
     */
    public Point {
      temperature = Measure.from(temperature, Kind.TEMPERATURE);
      Require.fraction(FIELD + ".share", share);
    }
  }

  private DeratingByTemperature(List<Point> points) {
    this.points = List.copyOf(points);
    this.table =
        LinearTable.of(
            FIELD,
            points.stream().mapToDouble(p -> Kind.TEMPERATURE.siValueOf(p.temperature())).toArray(),
            points.stream().mapToDouble(Point::share).toArray());
  }

  /**
   * Starts a table with its coldest point.
   *
   * @param temperature absolute
   * @param share of the rated power, 0 to 1
   * @return a table of one point, to be extended by {@link #and}
   * @throws org.wattwright.units.InvalidInputException if the share is outside its range
   */
  public static DeratingByTemperature from(Quantity<Temperature> temperature, double share) {
    return new DeratingByTemperature(List.of(new Point(temperature, share)));
  }

  /**
   * A table with one more point at a higher temperature.
   *
   * @param temperature above that of the last point
   * @param share of the rated power, 0 to 1
   * @return a new table
   * @throws org.wattwright.units.InvalidInputException if the share is outside its range or the
   *     temperature does not rise
   */
  public DeratingByTemperature and(Quantity<Temperature> temperature, double share) {
    List<Point> more = new ArrayList<>(points);
    more.add(new Point(temperature, share));
    return new DeratingByTemperature(more);
  }

  /**
   * Share of the rated power at a temperature.
   *
   * @param temperature absolute
   * @return 0 to 1
   */
  public double at(Quantity<Temperature> temperature) {
    return table.at(Kind.TEMPERATURE.siValueOf(temperature));
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof DeratingByTemperature that && points.equals(that.points);
  }

  @Override
  public int hashCode() {
    return points.hashCode();
  }

  /**
   * The points.
   *
   * @return for example {@code 100 % at 50 °C, 0 % at 75 °C}
   */
  @Override
  public String toString() {
    List<String> texts =
        points.stream().map(p -> Figure.share(p.share()) + " at " + p.temperature()).toList();
    return String.join(", ", texts);
  }
}
