package org.wattwright.examples.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.wattwright.units.Kind;
import org.wattwright.units.StateOfCharge;

/**
 * Values over state of charge and temperature, complete: one for every pair.
 *
 * <p>Immutable and thread-safe.
 *
 * @param <Q> the quantity type of the values
 * @param temperatures of the columns, rising
 * @param rows rising in state of charge
 */
public record StateGrid<Q extends Quantity<Q>>(
    List<Quantity<Temperature>> temperatures, List<Row<Q>> rows) {
  private static final Comparator<Quantity<Temperature>> BY_TEMPERATURE = Kind.TEMPERATURE::compare;

  /**
   * Copies the lists.
   *
   * @param temperatures of the columns, rising
   * @param rows rising in state of charge
   */
  public StateGrid {
    temperatures = List.copyOf(temperatures);
    rows = List.copyOf(rows);
  }

  /**
   * The values at one state of charge.
   *
   * @param <Q> the quantity type of the values
   * @param stateOfCharge of all values
   * @param values one for each temperature, in their order
   */
  public record Row<Q extends Quantity<Q>>(StateOfCharge stateOfCharge, List<Quantity<Q>> values) {
    /**
     * Copies the list.
     *
     * @param stateOfCharge of all values
     * @param values one for each temperature
     */
    public Row {
      values = List.copyOf(values);
    }
  }

  /** One line of the file. */
  record Point<Q extends Quantity<Q>>(
      Origin origin,
      String cell,
      StateOfCharge stateOfCharge,
      Quantity<Temperature> temperature,
      Quantity<Q> value) {
    String state() {
      return "cell " + Quoted.of(cell) + " at " + stateOfCharge + " and " + temperature;
    }
  }

  /** Sorts points of one cell into a grid; each pair must be there once. */
  static <Q extends Quantity<Q>> StateGrid<Q> of(List<Point<Q>> points) {
    Map<StateOfCharge, Map<Quantity<Temperature>, Point<Q>>> bySoc = new TreeMap<>();
    Map<Quantity<Temperature>, Point<Q>> byTemperature = new TreeMap<>(BY_TEMPERATURE);
    for (Point<Q> point : points) {
      byTemperature.put(point.temperature(), point);
      Point<Q> first =
          bySoc
              .computeIfAbsent(point.stateOfCharge(), soc -> new TreeMap<>(BY_TEMPERATURE))
              .putIfAbsent(point.temperature(), point);
      if (first != null) {
        throw point
            .origin()
            .error(point.state() + " stands twice, first in line " + first.origin().line());
      }
    }
    List<Quantity<Temperature>> temperatures = List.copyOf(byTemperature.keySet());
    List<Row<Q>> rows = new ArrayList<>();
    bySoc.forEach((soc, row) -> rows.add(row(soc, row, temperatures)));
    return new StateGrid<>(temperatures, rows);
  }

  private static <Q extends Quantity<Q>> Row<Q> row(
      StateOfCharge soc,
      Map<Quantity<Temperature>, Point<Q>> row,
      List<Quantity<Temperature>> temperatures) {
    List<Quantity<Q>> values = new ArrayList<>();
    for (Quantity<Temperature> temperature : temperatures) {
      Point<Q> point = row.get(temperature);
      if (point == null) {
        Point<Q> other = row.values().iterator().next();
        throw JobFileException.of(
            "%s: cell %s lacks a value at %s and %s"
                .formatted(other.origin().file(), Quoted.of(other.cell()), soc, temperature));
      }
      values.add(point.value());
    }
    return new Row<>(soc, values);
  }
}
