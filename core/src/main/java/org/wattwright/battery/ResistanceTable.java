package org.wattwright.battery;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.BilinearTable;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;
import org.wattwright.units.MolarEnergy;
import org.wattwright.units.StateOfCharge;
import org.wattwright.units.WorkshopUnits;

/**
 * Resistance of a cell over state of charge and temperature; a single value is a table of one.
 *
 * <p>Bilinear between points; beyond the edges the edge value is held. Measured tables need not
 * fall with temperature everywhere, so no such rule is imposed.
 *
 * <pre>{@code
 * ResistanceTable table = ResistanceTable.at(celsius(-10), celsius(25))
 *     .row(percentCharge(10), milliohms(2.4), milliohms(0.9))
 *     .row(percentCharge(80), milliohms(1.8), milliohms(0.7))
 *     .build();
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class ResistanceTable implements Serializable {
  private static final long serialVersionUID = 1L;
  private static final String FIELD = "ResistanceTable.resistance";

  private final StateTable<ElectricResistance> table;

  private ResistanceTable(StateTable<ElectricResistance> table) {
    this.table = table;
  }

  /**
   * One resistance for every state.
   *
   * @param resistance &gt; 0 Ω
   * @return the table
   * @throws InvalidInputException if the resistance is not &gt; 0 Ω
   */
  public static ResistanceTable constant(Quantity<ElectricResistance> resistance) {
    return at(Measures.celsius(25)).row(StateOfCharge.EMPTY, resistance).build();
  }

  /**
   * Resistance over temperature by the Arrhenius law, one point for every kelvin from −40 °C to 60
   * °C, straight between (off by less than 0.2 % up to 50 kJ/mol), held beyond.
   *
   * <p>R(T) = R₂₅·e^((Ea/Rg)·(1/T − 1/298.15 K)), see {@link ArrheniusLaw}.
   *
   * @param at25Celsius &gt; 0 Ω
   * @param activationEnergy 0 to 200 kJ/mol
   * @return the table, the same at every state of charge
   * @throws InvalidInputException if a value is outside its range
   */
  public static ResistanceTable arrhenius(
      Quantity<ElectricResistance> at25Celsius, Quantity<MolarEnergy> activationEnergy) {
    return ArrheniusLaw.of(activationEnergy)
        .table(new ArrheniusLaw.Point(at25Celsius, Measures.celsius(25)));
  }

  /**
   * Resistance least at half charge and rising with the square towards both ends: R(s) = R_half +
   * (R_end − R_half)·((s − 0.5)/0.5)², one point every 5 %, straight between.
   *
   * @param halfCharged at 50 %, &gt; 0 Ω
   * @param emptyOrFull at 0 % and 100 %, ≥ that at 50 %
   * @return the table, the same at every temperature
   * @throws InvalidInputException if a value is outside its range
   */
  public static ResistanceTable quadratic(
      Quantity<ElectricResistance> halfCharged, Quantity<ElectricResistance> emptyOrFull) {
    double halfOhm = Require.quantity(FIELD, halfCharged, WorkshopUnits.MILLIOHM).positive();
    double riseOhm = Kind.RESISTANCE.siValueOf(emptyOrFull) - halfOhm;
    if (!(riseOhm >= 0)) {
      throw InvalidInputException.of(
          FIELD + ".emptyOrFull", "≥ halfCharged " + halfCharged, emptyOrFull.toString());
    }
    Builder builder = at(Measures.celsius(25));
    for (int percent = 0; percent <= 100; percent += 5) {
      double away = (percent - 50) / 50.0;
      builder.row(
          Measures.percentCharge(percent), Kind.RESISTANCE.ofSi(halfOhm + riseOhm * away * away));
    }
    return builder.build();
  }

  /**
   * Starts a table with one column per temperature.
   *
   * @param temperatures strictly increasing, at least one
   * @return a builder
   */
  @SafeVarargs
  @SuppressWarnings("varargs") // read only
  public static Builder at(Quantity<Temperature>... temperatures) {
    return new Builder(StateTable.temperatures(List.of(temperatures)));
  }

  /** Collects the rows of a table. */
  public static final class Builder {
    private final List<Quantity<Temperature>> temperatures;
    private final List<StateTable.Row<ElectricResistance>> rows = new ArrayList<>();

    Builder(List<Quantity<Temperature>> temperatures) {
      this.temperatures = temperatures;
    }

    /**
     * Adds a row; states of charge strictly increase.
     *
     * @param stateOfCharge greater than that of the row before
     * @param resistances one per temperature, &gt; 0 Ω
     * @return this builder
     * @throws InvalidInputException if a resistance is not &gt; 0 Ω
     */
    @SafeVarargs
    @SuppressWarnings("varargs") // read only
    public final Builder row(
        StateOfCharge stateOfCharge, Quantity<ElectricResistance>... resistances) {
      rows.add(StateTable.row(FIELD, stateOfCharge, List.of(resistances), WorkshopUnits.MILLIOHM));
      return this;
    }

    /**
     * What is being built.
     *
     * @return for example {@code resistance table of 3 rows, to be built}
     */
    @Override
    public String toString() {
      return "resistance table of " + rows.size() + " rows, to be built";
    }

    /**
     * The table.
     *
     * @return an immutable table
     * @throws InvalidInputException if there is no row, states of charge do not increase, or a row
     *     has not one value per temperature
     */
    public ResistanceTable build() {
      return new ResistanceTable(new StateTable<>(FIELD, Kind.RESISTANCE, temperatures, rows));
    }
  }

  /**
   * Resistance in a state.
   *
   * @param state state of charge and temperature
   * @return in Ω
   */
  public Quantity<ElectricResistance> at(PackState state) {
    return table.at(state);
  }

  /** A resistance at a temperature. */
  record At(Quantity<Temperature> temperature, Quantity<ElectricResistance> resistance) {}

  /** A table over temperature alone. */
  static ResistanceTable overTemperature(StateOfCharge stateOfCharge, List<At> points) {
    Builder builder = new Builder(points.stream().map(At::temperature).toList());
    builder.rows.add(
        new StateTable.Row<>(stateOfCharge, points.stream().map(At::resistance).toList()));
    return builder.build();
  }

  /** The same table with every resistance multiplied by a factor &gt; 0. */
  ResistanceTable scaled(double factor) {
    Builder builder = new Builder(table.temperatures());
    for (StateTable.Row<ElectricResistance> row : table.rows()) {
      List<Quantity<ElectricResistance>> values =
          row.values().stream()
              .map(r -> Kind.RESISTANCE.ofSi(Kind.RESISTANCE.siValueOf(r) * factor))
              .toList();
      builder.rows.add(new StateTable.Row<>(row.stateOfCharge(), values));
    }
    return builder.build();
  }

  BilinearTable table() {
    return table.table();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof ResistanceTable that && table.equals(that.table);
  }

  @Override
  public int hashCode() {
    return table.hashCode();
  }

  /**
   * The value, or the size of the table and its temperatures.
   *
   * @return for example {@code 0.7 mΩ} or {@code resistance table, 6 points, -10 °C … 25 °C}
   */
  @Override
  public String toString() {
    if (table().size() == 1) {
      return table.rows().get(0).values().get(0).toString();
    }
    List<Quantity<Temperature>> temperatures = table.temperatures();
    return String.format(
        Locale.ROOT,
        "resistance table, %d points, %s … %s",
        table().size(),
        temperatures.get(0),
        temperatures.get(temperatures.size() - 1));
  }
}
