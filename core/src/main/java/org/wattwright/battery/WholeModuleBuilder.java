package org.wattwright.battery;

import javax.measure.Quantity;
import javax.measure.quantity.ElectricCharge;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Given;
import org.wattwright.internal.MissingFields;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.Price;
import org.wattwright.units.WorkshopUnits;

/**
 * Collects a module from values of the whole module: data sheet, plate or measurement.
 *
 * <p>Voltages and resistance are divided by the number of cells in series; the parallel groups
 * count as one cell each.
 */
public final class WholeModuleBuilder {
  private final String name;
  private final int cellsInSeries;
  private final CellBuilder cell;
  private @Nullable Quantity<ElectricResistance> resistance;
  private @Nullable Quantity<Mass> mass;
  private @Nullable Dimensions dimensions;
  private @Nullable Price price;

  WholeModuleBuilder(String name, Chemistry chemistry, int cellsInSeries) {
    this.name = Require.text("BatteryModule.name", name);
    this.cellsInSeries =
        Require.count("BatteryModule.cellsInSeries", cellsInSeries, 1, BatteryModule.MOST_CELLS);
    this.cell = Cell.of(name, chemistry);
  }

  /**
   * Capacity from data sheet or plate. Required, unless measured.
   *
   * @param value &gt; 0 A·h
   * @return this builder
   */
  public WholeModuleBuilder capacity(Quantity<ElectricCharge> value) {
    cell.capacity(value);
    return this;
  }

  /**
   * Capacity as measured, for a salvaged module.
   *
   * @param value &gt; 0 A·h
   * @param how how it was measured
   * @return this builder
   */
  public WholeModuleBuilder measuredCapacity(Quantity<ElectricCharge> value, String how) {
    cell.capacity(Given.measured(value, how));
    return this;
  }

  /**
   * Open-circuit curve of one cell. Required.
   *
   * @param given curve with its basis, such as {@link CellEstimates#openCircuit}
   * @return this builder
   */
  public WholeModuleBuilder cellOpenCircuit(Given<OpenCircuitCurve> given) {
    cell.openCircuit(given);
    return this;
  }

  /**
   * Resistance for seconds of the whole module. Required.
   *
   * @param value &gt; 0 Ω, interconnects included
   * @param basis what it rests on
   * @return this builder
   * @throws org.wattwright.units.InvalidInputException if not positive
   */
  public WholeModuleBuilder resistance(Quantity<ElectricResistance> value, Basis basis) {
    double ohm =
        Require.quantity("BatteryModule.resistance", value, WorkshopUnits.MILLIOHM).positive();
    resistance = Measure.from(value, Kind.RESISTANCE);
    cell.resistance(ResistanceTable.constant(Kind.RESISTANCE.ofSi(ohm / cellsInSeries)))
        .basis(CellProperty.RESISTANCE, basis);
    return this;
  }

  /**
   * Resistance for milliseconds of the whole module.
   *
   * @param value &gt; 0 Ω
   * @param basis what it rests on
   * @return this builder
   * @throws org.wattwright.units.InvalidInputException if not positive
   */
  public WholeModuleBuilder ohmicResistance(Quantity<ElectricResistance> value, Basis basis) {
    double ohm =
        Require.quantity("BatteryModule.ohmicResistance", value, WorkshopUnits.MILLIOHM).positive();
    cell.ohmicResistance(Kind.RESISTANCE.ofSi(ohm / cellsInSeries))
        .basis(CellProperty.OHMIC_RESISTANCE, basis);
    return this;
  }

  /**
   * Lowest voltage of the whole module under load. Required.
   *
   * @param value &gt; 0 V
   * @return this builder
   */
  public WholeModuleBuilder minimumVoltage(Quantity<ElectricPotential> value) {
    cell.minimumVoltage(perCell("BatteryModule.minimumVoltage", value));
    return this;
  }

  /**
   * Highest voltage of the whole module under charge. Required.
   *
   * @param value &gt; 0 V
   * @return this builder
   */
  public WholeModuleBuilder maximumVoltage(Quantity<ElectricPotential> value) {
    cell.maximumVoltage(perCell("BatteryModule.maximumVoltage", value));
    return this;
  }

  private Quantity<ElectricPotential> perCell(String field, Quantity<ElectricPotential> value) {
    return Kind.VOLTAGE.ofSi(
        Require.quantity(field, value, WorkshopUnits.VOLT).positive() / cellsInSeries);
  }

  /**
   * Discharge current for any length of time. Required.
   *
   * @param value &gt; 0 A
   * @return this builder
   */
  public WholeModuleBuilder continuousDischargeCurrent(Quantity<ElectricCurrent> value) {
    cell.continuousDischargeCurrent(value);
    return this;
  }

  /**
   * Discharge current for a limited time.
   *
   * @param current at least the continuous one
   * @param duration longest duration
   * @return this builder
   */
  public WholeModuleBuilder pulseDischargeCurrent(
      Quantity<ElectricCurrent> current, Quantity<Time> duration) {
    cell.pulseDischargeCurrent(current, duration);
    return this;
  }

  /**
   * Charge current for any length of time. Required.
   *
   * @param value &gt; 0 A
   * @return this builder
   */
  public WholeModuleBuilder continuousChargeCurrent(Quantity<ElectricCurrent> value) {
    cell.continuousChargeCurrent(value);
    return this;
  }

  /**
   * Temperatures at which it may be discharged. Required.
   *
   * @param value the range
   * @return this builder
   */
  public WholeModuleBuilder dischargeTemperatures(TemperatureRange value) {
    cell.dischargeTemperatures(value);
    return this;
  }

  /**
   * Temperatures at which it may be charged. Required.
   *
   * @param value the range
   * @return this builder
   */
  public WholeModuleBuilder chargeTemperatures(TemperatureRange value) {
    cell.chargeTemperatures(value);
    return this;
  }

  /**
   * Temperatures at which discharge is allowed, from a named estimate.
   *
   * @param given range and basis
   * @return this builder
   */
  public WholeModuleBuilder dischargeTemperatures(Given<TemperatureRange> given) {
    cell.dischargeTemperatures(given);
    return this;
  }

  /**
   * Temperatures at which charge is allowed, from a named estimate.
   *
   * @param given range and basis
   * @return this builder
   */
  public WholeModuleBuilder chargeTemperatures(Given<TemperatureRange> given) {
    cell.chargeTemperatures(given);
    return this;
  }

  /**
   * Mass of the whole module. Required.
   *
   * @param value &gt; 0 kg
   * @return this builder
   * @throws org.wattwright.units.InvalidInputException if not positive
   */
  public WholeModuleBuilder mass(Quantity<Mass> value) {
    double kg = Require.quantity("BatteryModule.mass", value, WorkshopUnits.KILOGRAM).positive();
    mass = Measure.from(value, Kind.MASS);
    cell.mass(Kind.MASS.ofSi(kg / cellsInSeries));
    return this;
  }

  /**
   * Outer size.
   *
   * @param value the dimensions
   * @return this builder
   */
  public WholeModuleBuilder dimensions(Dimensions value) {
    dimensions = value;
    return this;
  }

  /**
   * Price.
   *
   * @param value of one module
   * @return this builder
   */
  public WholeModuleBuilder price(Price value) {
    price = value;
    return this;
  }

  /**
   * What is being built.
   *
   * @return for example {@code module flat 105, to be built}
   */
  @Override
  public String toString() {
    return "module " + name + ", to be built";
  }

  /**
   * The module.
   *
   * @return an immutable module
   * @throws org.wattwright.units.InvalidInputException if required fields are missing or contradict
   *     each other
   */
  public BatteryModule build() {
    new MissingFields("BatteryModule")
        .field("resistance", resistance)
        .field("mass", mass)
        .rejectIfAny();
    BatteryModule.Builder module =
        BatteryModule.of(cell.build())
            .name(name)
            .series(cellsInSeries)
            .mass(MissingFields.present(mass));
    if (dimensions != null) {
      module.dimensions(dimensions);
    }
    if (price != null) {
      module.price(price);
    }
    return module.build();
  }
}
