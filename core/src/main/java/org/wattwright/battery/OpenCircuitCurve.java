package org.wattwright.battery;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.BilinearTable;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;
import org.wattwright.units.StateOfCharge;
import org.wattwright.units.WorkshopUnits;

/**
 * Open-circuit voltage of a cell against state of charge, at one or several temperatures.
 *
 * <p>Straight between points, which is monotone and never overshoots; between temperatures
 * bilinear. Below the first and above the last point or temperature the end value is held.
 *
 * <pre>{@code
 * OpenCircuitCurve curve = OpenCircuitCurve.at(celsius(25))
 *     .row(percentCharge(0), volts(2.5))
 *     .row(percentCharge(50), volts(3.28))
 *     .row(percentCharge(100), volts(3.45))
 *     .build();
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class OpenCircuitCurve implements Serializable {
  private static final long serialVersionUID = 1L;
  private static final String FIELD = "OpenCircuitCurve.voltage";

  private final StateTable<ElectricPotential> table;

  private OpenCircuitCurve(StateTable<ElectricPotential> table) {
    this.table = table;
  }

  /**
   * Starts a curve with one column per temperature.
   *
   * @param temperatures strictly increasing, at least one
   * @return a builder
   */
  @SafeVarargs
  @SuppressWarnings("varargs") // read only
  public static Builder at(Quantity<Temperature>... temperatures) {
    return new Builder(StateTable.temperatures(List.of(temperatures)));
  }

  /** Collects the rows of a curve. */
  public static final class Builder {
    private final List<Quantity<Temperature>> temperatures;
    private final List<StateTable.Row<ElectricPotential>> rows = new ArrayList<>();

    Builder(List<Quantity<Temperature>> temperatures) {
      this.temperatures = temperatures;
    }

    /**
     * Adds a row; states of charge strictly increase, voltages never fall.
     *
     * @param stateOfCharge greater than that of the row before
     * @param voltages one per temperature, &gt; 0 V
     * @return this builder
     * @throws InvalidInputException if a voltage is not &gt; 0 V
     */
    @SafeVarargs
    @SuppressWarnings("varargs") // read only
    public final Builder row(StateOfCharge stateOfCharge, Quantity<ElectricPotential>... voltages) {
      rows.add(StateTable.row(FIELD, stateOfCharge, List.of(voltages), WorkshopUnits.VOLT));
      return this;
    }

    /**
     * What is being built.
     *
     * @return for example {@code open-circuit curve of 3 rows, to be built}
     */
    @Override
    public String toString() {
      return "open-circuit curve of " + rows.size() + " rows, to be built";
    }

    /**
     * The curve.
     *
     * @return an immutable curve
     * @throws InvalidInputException if there are fewer than two rows, states of charge do not
     *     increase, a voltage falls, or a row has not one value per temperature
     */
    public OpenCircuitCurve build() {
      if (rows.size() < 2) {
        throw InvalidInputException.of(
            "OpenCircuitCurve", "at least 2 rows", rows.size() + " rows");
      }
      OpenCircuitCurve curve =
          new OpenCircuitCurve(new StateTable<>(FIELD, Kind.VOLTAGE, temperatures, rows));
      for (int i = 1; i < rows.size(); i++) {
        rejectFall(rows.get(i - 1), rows.get(i));
      }
      return curve;
    }

    private static void rejectFall(
        StateTable.Row<ElectricPotential> lower, StateTable.Row<ElectricPotential> upper) {
      for (int column = 0; column < lower.values().size(); column++) {
        Quantity<ElectricPotential> below = lower.values().get(column);
        Quantity<ElectricPotential> above = upper.values().get(column);
        if (Kind.VOLTAGE.compare(above, below) < 0) {
          throw InvalidInputException.of(
              FIELD + "[" + upper.stateOfCharge() + "]",
              "≥ " + below + " (never falling with state of charge)",
              above.toString());
        }
      }
    }
  }

  /**
   * Open-circuit voltage in a state.
   *
   * @param state state of charge and temperature
   * @return in V
   */
  public Quantity<ElectricPotential> at(PackState state) {
    return table.at(state);
  }

  /**
   * State of charge at which a rested cell has a voltage, at one temperature.
   *
   * <p>On a flat curve this is the lowest such state of charge; a rest voltage tells little there.
   *
   * @param voltage the rest voltage; held at empty or full if outside the curve
   * @param temperature absolute cell temperature
   * @return the state of charge
   */
  public StateOfCharge stateOfChargeAt(
      Quantity<ElectricPotential> voltage, Quantity<Temperature> temperature) {
    return StateOfCharge.of(
        table()
            .atColumn(Kind.TEMPERATURE.siValueOf(temperature))
            .inverseAt(Kind.VOLTAGE.siValueOf(voltage)));
  }

  /**
   * Mean open-circuit voltage between two states of charge: the integral over charge, not the mean
   * of the entries.
   *
   * @param from one end
   * @param to the other end, different from the first
   * @param temperature absolute cell temperature
   * @return in V
   * @throws InvalidInputException if both ends are the same
   */
  public Quantity<ElectricPotential> meanBetween(
      StateOfCharge from, StateOfCharge to, Quantity<Temperature> temperature) {
    double span = to.fraction() - from.fraction();
    if (span == 0) {
      throw InvalidInputException.of("to", "different from " + from, to.toString());
    }
    double integralV =
        table()
            .atColumn(Kind.TEMPERATURE.siValueOf(temperature))
            .integral(from.fraction(), to.fraction());
    return Measures.volts(integralV / span);
  }

  /** Lowest voltage over all temperatures at a state of charge. */
  Quantity<ElectricPotential> lowest(StateOfCharge stateOfCharge) {
    return voltages(stateOfCharge).min(Kind.VOLTAGE::compare).orElseThrow();
  }

  /** Highest voltage over all temperatures at a state of charge. */
  Quantity<ElectricPotential> highest(StateOfCharge stateOfCharge) {
    return voltages(stateOfCharge).max(Kind.VOLTAGE::compare).orElseThrow();
  }

  private Stream<Quantity<ElectricPotential>> voltages(StateOfCharge stateOfCharge) {
    return table.temperatures().stream().map(t -> at(PackState.of(stateOfCharge, t)));
  }

  BilinearTable table() {
    return table.table();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof OpenCircuitCurve that && table.equals(that.table);
  }

  @Override
  public int hashCode() {
    return table.hashCode();
  }

  /**
   * Number of points and the ends.
   *
   * @return for example {@code open-circuit curve, 11 points, 2.5 V … 3.45 V}
   */
  @Override
  public String toString() {
    List<StateTable.Row<ElectricPotential>> rows = table.rows();
    return String.format(
        Locale.ROOT,
        "open-circuit curve, %d points, %s … %s",
        table().size(),
        rows.get(0).values().get(0),
        rows.get(rows.size() - 1).values().get(0));
  }
}
