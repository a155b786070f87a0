package org.wattwright.battery;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.wattwright.internal.BilinearTable;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.NamedUnit;
import org.wattwright.units.StateOfCharge;

/**
 * Rows of values over state of charge, one column per temperature; the store behind the public
 * tables. Checks what all of them need and keeps the rows as given for printing.
 */
final class StateTable<Q extends Quantity<Q>> implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String field;
  private final List<Quantity<Temperature>> temperatures;
  private final List<Row<Q>> rows;
  private final Kind<Q> kind;
  private final transient BilinearTable table;

  /** One state of charge with its values, one per temperature. */
  record Row<Q extends Quantity<Q>>(StateOfCharge stateOfCharge, List<Quantity<Q>> values)
      implements Serializable {}

  StateTable(
      String field, Kind<Q> kind, List<Quantity<Temperature>> temperatures, List<Row<Q>> rows) {
    this.field = field;
    this.kind = kind;
    this.temperatures = temperatures;
    this.rows = List.copyOf(rows);
    this.table = tableOf();
  }

  private Object readResolve() {
    return new StateTable<>(field, kind, temperatures, rows);
  }

  static <Q extends Quantity<Q>> Row<Q> row(
      String field, StateOfCharge stateOfCharge, List<Quantity<Q>> values, NamedUnit<Q> unit) {
    List<Quantity<Q>> ours = new ArrayList<>();
    for (Quantity<Q> value : values) {
      Measure<Q> measure = Measure.from(value, unit.kind());
      if (!(unit.valueOf(measure) > 0)) {
        throw InvalidInputException.of(
            field + "[" + stateOfCharge + "]", "> 0 " + unit.symbol(), measure.toString());
      }
      ours.add(measure);
    }
    return new Row<>(stateOfCharge, List.copyOf(ours));
  }

  static List<Quantity<Temperature>> temperatures(List<Quantity<Temperature>> given) {
    List<Quantity<Temperature>> ours = new ArrayList<>();
    given.forEach(temperature -> ours.add(Measure.from(temperature, Kind.TEMPERATURE)));
    return List.copyOf(ours);
  }

  private BilinearTable tableOf() {
    double[] socs = rows.stream().mapToDouble(row -> row.stateOfCharge().fraction()).toArray();
    double[] temperaturesK =
        temperatures.stream().mapToDouble(Kind.TEMPERATURE::siValueOf).toArray();
    double[][] values = new double[rows.size()][];
    for (int i = 0; i < values.length; i++) {
      values[i] = rows.get(i).values().stream().mapToDouble(kind::siValueOf).toArray();
    }
    return BilinearTable.of(field, socs, temperaturesK, values);
  }

  BilinearTable table() {
    return table;
  }

  List<Row<Q>> rows() {
    return rows;
  }

  List<Quantity<Temperature>> temperatures() {
    return temperatures;
  }

  Quantity<Q> at(PackState state) {
    return kind.ofSi(table.at(state.soc(), state.temperatureK()));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof StateTable<?> that
        && temperatures.equals(that.temperatures)
        && rows.equals(that.rows);
  }

  @Override
  public int hashCode() {
    return 31 * temperatures.hashCode() + rows.hashCode();
  }
}
