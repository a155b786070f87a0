package org.wattwright.battery;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.LinearTable;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.WorkshopUnits;

/**
 * Largest charge current of a cell against temperature, straight between points, held at the ends.
 *
 * <p>Charging lithium cells with a graphite anode below freezing plates lithium: the first point
 * should be 0 A at the lowest temperature at which the data sheet allows charging.
 *
 * <p>Immutable and thread-safe.
 */
public final class CurrentByTemperature implements Serializable {
  private static final long serialVersionUID = 1L;
  private static final String FIELD = "CurrentByTemperature";

  private final List<Point> points;
  private final transient LinearTable table;

  /**
   * A point of the table.
   *
   * @param temperature absolute cell temperature
   * @param current largest charge current there, as a positive number, ≥ 0 A
   */
  public record Point(Quantity<Temperature> temperature, Quantity<ElectricCurrent> current)
      implements Serializable {
    /**
     * Checks the current.
     *
     * @param temperature absolute cell temperature
     * @param current ≥ 0 A
     * @throws org.wattwright.units.InvalidInputException if the current is negative
     */
    public Point {
      temperature = Measure.from(temperature, Kind.TEMPERATURE);
      current = Measure.from(current, Kind.CURRENT);
      Require.quantity(FIELD + ".current", current, WorkshopUnits.AMPERE).nonNegative();
    }
  }

  private CurrentByTemperature(List<Point> points) {
    this.points = points;
    this.table = tableOf(points);
  }

  /**
   * From points with strictly increasing temperature.
   *
   * @param points at least one
   * @return the table
   * @throws org.wattwright.units.InvalidInputException if there is none, or temperatures do not
   *     increase
   */
  public static CurrentByTemperature of(List<Point> points) {
    return new CurrentByTemperature(List.copyOf(points));
  }

  /**
   * Starts a table with its coldest point.
   *
   * @param temperature absolute cell temperature
   * @param current ≥ 0 A
   * @return a table of one point, to be extended by {@link #and}
   */
  public static CurrentByTemperature from(
      Quantity<Temperature> temperature, Quantity<ElectricCurrent> current) {
    return of(List.of(new Point(temperature, current)));
  }

  /**
   * A table with one more point at a higher temperature.
   *
   * @param temperature above that of the last point
   * @param current ≥ 0 A
   * @return a new table
   * @throws org.wattwright.units.InvalidInputException if the temperature does not increase
   */
  public CurrentByTemperature and(
      Quantity<Temperature> temperature, Quantity<ElectricCurrent> current) {
    List<Point> more = new ArrayList<>(points);
    more.add(new Point(temperature, current));
    return of(more);
  }

  private static LinearTable tableOf(List<Point> points) {
    double[] temperaturesK =
        points.stream().mapToDouble(p -> Kind.TEMPERATURE.siValueOf(p.temperature())).toArray();
    double[] currentsA =
        points.stream().mapToDouble(p -> Kind.CURRENT.siValueOf(p.current())).toArray();
    return LinearTable.of(FIELD, temperaturesK, currentsA);
  }

  private Object readResolve() {
    return of(points);
  }

  /**
   * Largest charge current at a temperature.
   *
   * @param temperature absolute cell temperature
   * @return ≥ 0 A
   */
  public Quantity<ElectricCurrent> at(Quantity<Temperature> temperature) {
    return Kind.CURRENT.ofSi(table.at(Kind.TEMPERATURE.siValueOf(temperature)));
  }

  LinearTable table() {
    return table;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof CurrentByTemperature that && points.equals(that.points);
  }

  @Override
  public int hashCode() {
    return points.hashCode();
  }

  /**
   * The points.
   *
   * @return for example {@code 0 A at 0 °C, 52 A at 15 °C}
   */
  @Override
  public String toString() {
    List<String> texts = points.stream().map(p -> p.current() + " at " + p.temperature()).toList();
    return String.join(", ", texts);
  }
}
