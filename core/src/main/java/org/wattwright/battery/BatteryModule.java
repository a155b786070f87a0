package org.wattwright.battery;

import java.io.Serializable;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCharge;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Given;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.Measures;
import org.wattwright.units.Price;
import org.wattwright.units.StateOfCharge;
import org.wattwright.units.WorkshopUnits;

/**
 * A battery module: cells in parallel groups, the groups in series, with interconnects and a case.
 *
 * <pre>{@code
 * BatteryModule module = BatteryModule.of(cell).series(6).parallel(2).mass(kilograms(12.4)).build();
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class BatteryModule implements Serializable {
  private static final long serialVersionUID = 1L;

  /** In series, and in parallel; their product stays far below the largest whole number. */
  static final int MOST_CELLS = 1000;

  private final String name;
  private final Cell cell;
  private final int series;
  private final int parallel;
  private final Quantity<ElectricResistance> interconnectResistance;
  private final @Nullable Quantity<Mass> mass;
  private final @Nullable Dimensions dimensions;
  private final @Nullable Price price;

  private BatteryModule(Builder builder) {
    name = builder.name;
    cell = builder.cell;
    series = builder.series;
    parallel = builder.parallel;
    interconnectResistance = builder.interconnectResistance;
    mass = builder.mass;
    dimensions = builder.dimensions;
    price = builder.price;
  }

  /**
   * Starts a module made of one cell type; one cell alone unless told.
   *
   * @param cell the cell
   * @return a builder
   */
  public static Builder of(Cell cell) {
    return new Builder(cell);
  }

  /**
   * Starts a module known as a whole, such as a salvaged one with its measured capacity.
   *
   * @param name as reports print it
   * @param chemistry the chemistry
   * @param cellsInSeries number of cells, or parallel groups, in series, 1 to 1000
   * @return a builder that takes voltages and resistances of the whole module
   */
  public static WholeModuleBuilder whole(String name, Chemistry chemistry, int cellsInSeries) {
    return new WholeModuleBuilder(name, chemistry, cellsInSeries);
  }

  /** Collects the data of a module. */
  public static final class Builder {
    private final Cell cell;
    private String name;
    private int series = 1;
    private int parallel = 1;
    private Quantity<ElectricResistance> interconnectResistance = Kind.RESISTANCE.ofSi(0);
    private @Nullable Quantity<Mass> mass;
    private @Nullable Dimensions dimensions;
    private @Nullable Price price;

    Builder(Cell cell) {
      this.cell = Objects.requireNonNull(cell, "cell");
      this.name = cell.name();
    }

    private Builder(BatteryModule module, Cell cell) {
      this.cell = cell;
      name = module.name;
      series = module.series;
      parallel = module.parallel;
      interconnectResistance = module.interconnectResistance;
      mass = module.mass;
      dimensions = module.dimensions;
      price = module.price;
    }

    /**
     * Name as reports print it; the cell's name unless told.
     *
     * @param value not blank
     * @return this builder
     */
    public Builder name(String value) {
      name = Require.text("BatteryModule.name", value);
      return this;
    }

    /**
     * Parallel groups in series.
     *
     * @param count 1 to 1000
     * @return this builder
     * @throws org.wattwright.units.InvalidInputException if outside its range
     */
    public Builder series(int count) {
      series = Require.count("BatteryModule.series", count, 1, MOST_CELLS);
      return this;
    }

    /**
     * Cells in each parallel group.
     *
     * @param count 1 to 1000
     * @return this builder
     * @throws org.wattwright.units.InvalidInputException if outside its range
     */
    public Builder parallel(int count) {
      parallel = Require.count("BatteryModule.parallel", count, 1, MOST_CELLS);
      return this;
    }

    /**
     * Resistance of all interconnects from terminal to terminal together; 0 unless told.
     *
     * @param value ≥ 0 Ω
     * @return this builder
     * @throws org.wattwright.units.InvalidInputException if negative
     */
    public Builder interconnectResistance(Quantity<ElectricResistance> value) {
      Require.quantity("BatteryModule.interconnectResistance", value, WorkshopUnits.MILLIOHM)
          .nonNegative();
      interconnectResistance = Measure.from(value, Kind.RESISTANCE);
      return this;
    }

    /**
     * Mass of the whole module; the mass of its cells unless told.
     *
     * @param value &gt; 0 kg
     * @return this builder
     * @throws org.wattwright.units.InvalidInputException if not positive
     */
    public Builder mass(Quantity<Mass> value) {
      Require.quantity("BatteryModule.mass", value, WorkshopUnits.KILOGRAM).positive();
      mass = Measure.from(value, Kind.MASS);
      return this;
    }

    /**
     * Mass of case, interconnects and sensing on top of the cells.
     *
     * @param value ≥ 0 kg
     * @return this builder
     * @throws org.wattwright.units.InvalidInputException if negative
     */
    public Builder overheadMass(Quantity<Mass> value) {
      double overheadKg =
          Require.quantity("BatteryModule.overheadMass", value, WorkshopUnits.KILOGRAM)
              .nonNegative();
      mass = Kind.MASS.ofSi(cellMassKg(cell, series * parallel) + overheadKg);
      return this;
    }

    /**
     * Outer size.
     *
     * @param value the dimensions
     * @return this builder
     */
    public Builder dimensions(Dimensions value) {
      dimensions = Objects.requireNonNull(value, "dimensions");
      return this;
    }

    /**
     * Price.
     *
     * @param value the price of one module
     * @return this builder
     */
    public Builder price(Price value) {
      price = Objects.requireNonNull(value, "price");
      return this;
    }

    /**
     * What is being built.
     *
     * @return for example {@code module flat, to be built}
     */
    @Override
    public String toString() {
      return "module " + name + ", to be built";
    }

    /**
     * The module.
     *
     * @return an immutable module
     * @throws org.wattwright.units.InvalidInputException if the mass is less than that of the cells
     */
    public BatteryModule build() {
      double cellsKg = cellMassKg(cell, series * parallel);
      // A plate rounded to 0.1 % below the sum of the cells is no contradiction.
      if (mass != null && !(Kind.MASS.siValueOf(mass) >= 0.999 * cellsKg)) {
        throw org.wattwright.units.InvalidInputException.of(
            "BatteryModule.mass",
            String.format(
                Locale.ROOT,
                "≥ the mass of its %d cells, %s",
                series * parallel,
                Measures.format(Kind.MASS.ofSi(cellsKg), Kind.MASS)),
            mass.toString());
      }
      return new BatteryModule(this);
    }
  }

  private static double cellMassKg(Cell cell, int count) {
    return Kind.MASS.siValueOf(cell.mass()) * count;
  }

  private BatteryModule withCell(Cell other) {
    return new BatteryModule(new Builder(this, other));
  }

  /**
   * This module at a further age.
   *
   * @param further what comes on top of the age it has
   * @return a new module
   */
  public BatteryModule aged(Ageing further) {
    return withCell(cell.aged(further));
  }

  /**
   * This module with its capacity as measured, for a salvaged one.
   *
   * @param capacity of the whole module
   * @param how how it was measured, as reports print it
   * @return a new module whose capacity rests on a measurement
   * @throws org.wattwright.units.InvalidInputException if the capacity is not positive
   */
  public BatteryModule withMeasuredCapacity(Quantity<ElectricCharge> capacity, String how) {
    double perCellC =
        Require.quantity("BatteryModule.capacity", capacity, WorkshopUnits.AMPERE_HOUR).positive()
            / parallel;
    return withCell(
        cell.toBuilder().capacity(Given.measured(Kind.CHARGE.ofSi(perCellC), how)).build());
  }

  /**
   * This module with every estimated resistance at one end of its band.
   *
   * @param end low for the highest fault current, high for the lowest
   * @return a new module
   */
  public BatteryModule atBandEnd(BandEnd end) {
    return withCell(cell.atBandEnd(end));
  }

  /**
   * Name as reports print it.
   *
   * @return the name
   */
  public String name() {
    return name;
  }

  /**
   * The cell it is made of.
   *
   * @return the cell
   */
  public Cell cell() {
    return cell;
  }

  /**
   * Parallel groups in series.
   *
   * @return ≥ 1
   */
  public int series() {
    return series;
  }

  /**
   * Cells in each parallel group.
   *
   * @return ≥ 1
   */
  public int parallel() {
    return parallel;
  }

  /**
   * Resistance of all interconnects together.
   *
   * @return ≥ 0, in the unit as given
   */
  public Quantity<ElectricResistance> interconnectResistance() {
    return interconnectResistance;
  }

  /**
   * Capacity.
   *
   * @return in A·h
   */
  public Quantity<ElectricCharge> capacity() {
    return Kind.CHARGE.ofSi(capacityC());
  }

  /**
   * Open-circuit voltage.
   *
   * @param state state of charge and temperature
   * @return in V
   */
  public Quantity<ElectricPotential> openCircuitVoltage(PackState state) {
    return Kind.VOLTAGE.ofSi(openCircuitV(state.soc(), state.temperatureK()));
  }

  /**
   * Resistance for seconds, interconnects included.
   *
   * @param state state of charge and temperature
   * @param direction discharge or charge
   * @return in Ω
   */
  public Quantity<ElectricResistance> resistance(PackState state, Direction direction) {
    return Kind.RESISTANCE.ofSi(
        resistanceOhm(state.soc(), state.temperatureK(), new Load(direction, 0)));
  }

  /**
   * Energy at rest voltage from empty to full: capacity times the mean open-circuit voltage.
   *
   * @param temperature absolute cell temperature
   * @return in kW·h
   */
  public Quantity<Energy> nominalEnergy(Quantity<Temperature> temperature) {
    return Kind.ENERGY.ofSi(energyDownToJ(StateOfCharge.EMPTY, temperature));
  }

  /** Energy at rest voltage from full down to a state of charge. */
  double energyDownToJ(StateOfCharge to, Quantity<Temperature> temperature) {
    double meanV =
        Kind.VOLTAGE.siValueOf(cell.openCircuit().meanBetween(to, StateOfCharge.FULL, temperature));
    return capacityC() * (1 - to.fraction()) * meanV * series;
  }

  /**
   * Mass.
   *
   * @return in kg
   */
  public Quantity<Mass> mass() {
    return mass != null ? mass : Kind.MASS.ofSi(cellMassKg(cell, series * parallel));
  }

  /**
   * Outer size.
   *
   * @return empty if not known
   */
  public Optional<Dimensions> dimensions() {
    return Optional.ofNullable(dimensions);
  }

  /**
   * Volume of the outer box.
   *
   * @return empty if the size is not known
   */
  public Optional<Quantity<Volume>> volume() {
    return dimensions().map(Dimensions::volume);
  }

  /**
   * Price.
   *
   * @return empty if not known
   */
  public Optional<Price> price() {
    return Optional.ofNullable(price);
  }

  /**
   * What a property rests on.
   *
   * @param property the property
   * @return the basis of the cell's property
   */
  public Basis basis(CellProperty property) {
    return cell.basis(property);
  }

  double capacityC() {
    return Kind.CHARGE.siValueOf(cell.capacity()) * parallel;
  }

  double openCircuitV(double soc, double temperatureK) {
    return series * cell.openCircuit().table().at(soc, temperatureK);
  }

  /** Resistance for seconds plus what the RC pair adds within the load's duration. */
  double resistanceOhm(double soc, double temperatureK, Load load) {
    return cell.resistanceOhm(soc, temperatureK, load) * series / parallel + interconnectOhm();
  }

  /**
   * Voltage and heat during and after a current pulse, state of charge held.
   *
   * @param state state of charge and temperature
   * @param current positive on discharge, negative on charge; limits are not applied
   * @param duration of the pulse, &gt; 0 s
   * @return the response
   * @throws org.wattwright.units.InvalidInputException if the duration is not positive
   */
  public PulseResponse pulseResponse(
      PackState state, Quantity<ElectricCurrent> current, Quantity<Time> duration) {
    return Pack.of(this, 1, 1).pulseResponse(state, current, duration);
  }

  double interconnectOhm() {
    return Kind.RESISTANCE.siValueOf(interconnectResistance);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return this == other
        || (other instanceof BatteryModule that
            && name.equals(that.name)
            && cell.equals(that.cell)
            && series == that.series
            && parallel == that.parallel
            && interconnectResistance.equals(that.interconnectResistance)
            && Objects.equals(mass, that.mass)
            && Objects.equals(dimensions, that.dimensions)
            && Objects.equals(price, that.price));
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, series, parallel);
  }

  /**
   * Name, arrangement, capacity and mass.
   *
   * @return for example {@code flat module (6s2p, 210 A·h, 24.8 kg)}
   */
  @Override
  public String toString() {
    return name
        + " ("
        + series
        + "s"
        + parallel
        + "p, "
        + Measures.format(capacity(), Kind.CHARGE)
        + ", "
        + Measures.format(mass(), Kind.MASS)
        + ")";
  }
}
