package org.wattwright.battery;

import java.util.EnumMap;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCharge;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Estimate;
import org.wattwright.check.Given;
import org.wattwright.check.Source;
import org.wattwright.internal.MissingFields;
import org.wattwright.internal.Require;
import org.wattwright.units.EntropicCoefficient;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.SpecificHeatCapacity;
import org.wattwright.units.StateOfCharge;
import org.wattwright.units.WorkshopUnits;

/** Collects the data of a {@link Cell}; checks each field when set and all together at the end. */
public final class CellBuilder {
  /** Band of an estimate that already stands at one end. */
  private static final Estimate.Band AT_END = new Estimate.Band(1, 1);

  final String name;
  final Chemistry chemistry;
  @Nullable Quantity<ElectricCharge> capacity;
  @Nullable OpenCircuitCurve openCircuit;
  @Nullable ResistanceTable dischargeResistance;
  @Nullable ResistanceTable chargeResistance;
  @Nullable Quantity<ElectricResistance> ohmicResistance;
  @Nullable RcPair rcPair;
  @Nullable Quantity<ElectricPotential> minimumVoltage;
  @Nullable Quantity<ElectricPotential> maximumVoltage;
  @Nullable Quantity<ElectricCurrent> continuousDischarge;
  @Nullable Quantity<ElectricCurrent> continuousCharge;
  @Nullable PulseCurrent pulseDischarge;
  @Nullable PulseCurrent pulseCharge;
  @Nullable CurrentByTemperature chargeByTemperature;
  @Nullable TemperatureRange dischargeTemperatures;
  @Nullable TemperatureRange chargeTemperatures;
  @Nullable Quantity<Mass> mass;
  @Nullable Dimensions dimensions;
  @Nullable Quantity<SpecificHeatCapacity> specificHeat;
  @Nullable Quantity<EntropicCoefficient> entropicCoefficient;
  Ageing ageing = Ageing.NEW;
  final EnumMap<CellProperty, Basis> bases = new EnumMap<>(CellProperty.class);
  final EnumMap<CellProperty, Estimate.Band> bands = new EnumMap<>(CellProperty.class);
  final EnumMap<CellProperty, Source> sources = new EnumMap<>(CellProperty.class);

  CellBuilder(String name, Chemistry chemistry) {
    this.name = Require.text("Cell.name", name);
    this.chemistry = Objects.requireNonNull(chemistry, "chemistry");
  }

  CellBuilder(Cell cell) {
    name = cell.name();
    chemistry = cell.chemistry();
    capacity = cell.capacity();
    openCircuit = cell.openCircuit();
    dischargeResistance = cell.resistance(Direction.DISCHARGE);
    chargeResistance = cell.statedChargeResistance();
    ohmicResistance = cell.ohmicResistance().orElse(null);
    rcPair = cell.rcPair().orElse(null);
    minimumVoltage = cell.minimumVoltage();
    maximumVoltage = cell.maximumVoltage();
    continuousDischarge = cell.continuousCurrent(Direction.DISCHARGE);
    continuousCharge = cell.continuousCurrent(Direction.CHARGE);
    pulseDischarge = cell.pulseCurrent(Direction.DISCHARGE).orElse(null);
    pulseCharge = cell.pulseCurrent(Direction.CHARGE).orElse(null);
    chargeByTemperature = cell.chargeCurrentByTemperature().orElse(null);
    dischargeTemperatures = cell.temperatures(Direction.DISCHARGE);
    chargeTemperatures = cell.temperatures(Direction.CHARGE);
    mass = cell.mass();
    dimensions = cell.dimensions().orElse(null);
    specificHeat = cell.specificHeat().orElse(null);
    entropicCoefficient = cell.entropicCoefficient().orElse(null);
    ageing = cell.ageing();
    bases.putAll(cell.bases());
    bands.putAll(cell.bands());
    sources.putAll(cell.sources());
  }

  static <T> T required(@Nullable T value) {
    return MissingFields.present(value);
  }

  /**
   * Capacity at the age of the cell. Required.
   *
   * @param value &gt; 0 A·h
   * @return this builder
   * @throws InvalidInputException if not positive
   */
  public CellBuilder capacity(Quantity<ElectricCharge> value) {
    Require.quantity("Cell.capacity", value, WorkshopUnits.AMPERE_HOUR).positive();
    capacity = Measure.from(value, Kind.CHARGE);
    return this;
  }

  /**
   * Open-circuit curve. Required.
   *
   * @param value the curve, inside the voltage limits
   * @return this builder
   */
  public CellBuilder openCircuit(OpenCircuitCurve value) {
    openCircuit = Objects.requireNonNull(value, "openCircuit");
    return this;
  }

  /**
   * Resistance for seconds, both ways unless a charge resistance is given too. Required.
   *
   * @param value the table
   * @return this builder
   */
  public CellBuilder resistance(ResistanceTable value) {
    dischargeResistance = Objects.requireNonNull(value, "resistance");
    bands.remove(CellProperty.RESISTANCE);
    sources.remove(CellProperty.RESISTANCE);
    return this;
  }

  /**
   * Open-circuit curve with what it rests on.
   *
   * @param given such as {@link CellEstimates#openCircuit}
   * @return this builder
   */
  public CellBuilder openCircuit(Given<OpenCircuitCurve> given) {
    sources.put(CellProperty.VOLTAGE, given.source());
    return openCircuit(given.value()).weaken(CellProperty.VOLTAGE, given.basis());
  }

  /**
   * Resistance for seconds with what it rests on.
   *
   * @param given such as {@link CellEstimates#resistanceOverTemperature}
   * @return this builder
   */
  public CellBuilder resistance(Given<ResistanceTable> given) {
    resistance(given.value()).basis(CellProperty.RESISTANCE, given.basis());
    sources.put(CellProperty.RESISTANCE, given.source());
    return this;
  }

  /**
   * Capacity with what it rests on.
   *
   * @param given such as a measured capacity
   * @return this builder
   */
  public CellBuilder capacity(Given<Quantity<ElectricCharge>> given) {
    sources.put(CellProperty.CAPACITY, given.source());
    return capacity(given.value()).basis(CellProperty.CAPACITY, given.basis());
  }

  /**
   * Resistance for seconds from a named estimate; its basis becomes estimated.
   *
   * @param estimate such as {@link CellEstimates#resistance}
   * @return this builder
   */
  public CellBuilder resistance(Estimate<ElectricResistance> estimate) {
    dischargeResistance = ResistanceTable.constant(estimate.typical());
    return estimated(CellProperty.RESISTANCE, estimate);
  }

  /**
   * Resistance for seconds from a named estimate over temperature, with the band of its level.
   *
   * @param given table and basis
   * @param band around it
   * @return this builder
   */
  public CellBuilder resistance(Given<ResistanceTable> given, Estimate.Band band) {
    resistance(given);
    bands.put(CellProperty.RESISTANCE, Objects.requireNonNull(band, "band"));
    return this;
  }

  /**
   * Resistance for seconds while charging, where it differs.
   *
   * @param value the table
   * @return this builder
   */
  public CellBuilder chargeResistance(ResistanceTable value) {
    chargeResistance = Objects.requireNonNull(value, "chargeResistance");
    return this;
  }

  /**
   * Resistance for milliseconds, for fault currents.
   *
   * @param value &gt; 0 Ω
   * @return this builder
   * @throws InvalidInputException if not positive
   */
  public CellBuilder ohmicResistance(Quantity<ElectricResistance> value) {
    Require.quantity("Cell.ohmicResistance", value, WorkshopUnits.MILLIOHM).positive();
    ohmicResistance = Measure.from(value, Kind.RESISTANCE);
    bands.remove(CellProperty.OHMIC_RESISTANCE);
    sources.remove(CellProperty.OHMIC_RESISTANCE);
    return this;
  }

  /**
   * Resistance for milliseconds from a named estimate; its basis becomes estimated.
   *
   * @param estimate such as {@link CellEstimates#ohmicResistance}
   * @return this builder
   */
  public CellBuilder ohmicResistance(Estimate<ElectricResistance> estimate) {
    ohmicResistance = estimate.typical();
    return estimated(CellProperty.OHMIC_RESISTANCE, estimate);
  }

  /**
   * Slow polarisation on top of the resistance for seconds.
   *
   * @param value the pair
   * @return this builder
   */
  public CellBuilder rcPair(RcPair value) {
    rcPair = Objects.requireNonNull(value, "rcPair");
    return this;
  }

  /**
   * Lowest voltage under load. Required.
   *
   * @param value &gt; 0 V, below the maximum
   * @return this builder
   * @throws InvalidInputException if not positive
   */
  public CellBuilder minimumVoltage(Quantity<ElectricPotential> value) {
    Require.quantity("Cell.minimumVoltage", value, WorkshopUnits.VOLT).positive();
    minimumVoltage = Measure.from(value, Kind.VOLTAGE);
    return this;
  }

  /**
   * Highest voltage under charge. Required.
   *
   * @param value &gt; 0 V, above the minimum
   * @return this builder
   * @throws InvalidInputException if not positive
   */
  public CellBuilder maximumVoltage(Quantity<ElectricPotential> value) {
    Require.quantity("Cell.maximumVoltage", value, WorkshopUnits.VOLT).positive();
    maximumVoltage = Measure.from(value, Kind.VOLTAGE);
    return this;
  }

  /**
   * Lowest voltage under load, from a named estimate or a measurement.
   *
   * @param given voltage and basis
   * @return this builder
   */
  public CellBuilder minimumVoltage(Given<Quantity<ElectricPotential>> given) {
    return minimumVoltage(given.value()).weaken(CellProperty.VOLTAGE, given.basis());
  }

  /**
   * Highest voltage under charge, from a named estimate or a measurement.
   *
   * @param given voltage and basis
   * @return this builder
   */
  public CellBuilder maximumVoltage(Given<Quantity<ElectricPotential>> given) {
    return maximumVoltage(given.value()).weaken(CellProperty.VOLTAGE, given.basis());
  }

  /**
   * Discharge current for any length of time. Required.
   *
   * @param value magnitude, &gt; 0 A
   * @return this builder
   * @throws InvalidInputException if not positive
   */
  public CellBuilder continuousDischargeCurrent(Quantity<ElectricCurrent> value) {
    Require.quantity("Cell.continuousDischargeCurrent", value, WorkshopUnits.AMPERE).positive();
    continuousDischarge = Measure.from(value, Kind.CURRENT);
    return this;
  }

  /**
   * Charge current for any length of time. Required.
   *
   * @param value magnitude, &gt; 0 A
   * @return this builder
   * @throws InvalidInputException if not positive
   */
  public CellBuilder continuousChargeCurrent(Quantity<ElectricCurrent> value) {
    Require.quantity("Cell.continuousChargeCurrent", value, WorkshopUnits.AMPERE).positive();
    continuousCharge = Measure.from(value, Kind.CURRENT);
    return this;
  }

  /**
   * Discharge current for a limited time.
   *
   * @param current magnitude, at least the continuous one
   * @param duration longest duration
   * @return this builder
   * @throws InvalidInputException if a value is not positive
   */
  public CellBuilder pulseDischargeCurrent(
      Quantity<ElectricCurrent> current, Quantity<Time> duration) {
    pulseDischarge = new PulseCurrent(current, duration);
    return this;
  }

  /**
   * Charge current for a limited time, such as regeneration.
   *
   * @param current magnitude, at least the continuous one
   * @param duration longest duration
   * @return this builder
   * @throws InvalidInputException if a value is not positive
   */
  public CellBuilder pulseChargeCurrent(
      Quantity<ElectricCurrent> current, Quantity<Time> duration) {
    pulseCharge = new PulseCurrent(current, duration);
    return this;
  }

  /**
   * Largest charge current by temperature.
   *
   * @param value the table
   * @return this builder
   */
  public CellBuilder chargeCurrentByTemperature(CurrentByTemperature value) {
    chargeByTemperature = Objects.requireNonNull(value, "chargeCurrentByTemperature");
    return this;
  }

  /**
   * Temperatures at which the cell may be discharged. Required.
   *
   * @param value the range
   * @return this builder
   */
  public CellBuilder dischargeTemperatures(TemperatureRange value) {
    dischargeTemperatures = Objects.requireNonNull(value, "dischargeTemperatures");
    return this;
  }

  /**
   * Temperatures at which the cell may be charged. Required.
   *
   * @param value the range
   * @return this builder
   */
  public CellBuilder chargeTemperatures(TemperatureRange value) {
    chargeTemperatures = Objects.requireNonNull(value, "chargeTemperatures");
    return this;
  }

  /**
   * Temperatures at which discharge is allowed, from a named estimate.
   *
   * @param given range and basis
   * @return this builder
   */
  public CellBuilder dischargeTemperatures(Given<TemperatureRange> given) {
    sources.put(CellProperty.TEMPERATURE, given.source());
    return dischargeTemperatures(given.value()).weaken(CellProperty.TEMPERATURE, given.basis());
  }

  /**
   * Temperatures at which charge is allowed, from a named estimate.
   *
   * @param given range and basis
   * @return this builder
   */
  public CellBuilder chargeTemperatures(Given<TemperatureRange> given) {
    sources.put(CellProperty.TEMPERATURE, given.source());
    return chargeTemperatures(given.value()).weaken(CellProperty.TEMPERATURE, given.basis());
  }

  /**
   * Mass. Required.
   *
   * @param value &gt; 0 kg
   * @return this builder
   * @throws InvalidInputException if not positive
   */
  public CellBuilder mass(Quantity<Mass> value) {
    Require.quantity("Cell.mass", value, WorkshopUnits.KILOGRAM).positive();
    mass = Measure.from(value, Kind.MASS);
    return this;
  }

  /**
   * Outer size.
   *
   * @param value the dimensions
   * @return this builder
   */
  public CellBuilder dimensions(Dimensions value) {
    dimensions = Objects.requireNonNull(value, "dimensions");
    return this;
  }

  /**
   * Specific heat.
   *
   * @param value &gt; 0 J/(kg·K)
   * @return this builder
   * @throws InvalidInputException if not positive
   */
  public CellBuilder specificHeat(Quantity<SpecificHeatCapacity> value) {
    Require.quantity("Cell.specificHeat", value, WorkshopUnits.JOULE_PER_KILOGRAM_KELVIN)
        .positive();
    specificHeat = Measure.from(value, Kind.SPECIFIC_HEAT_CAPACITY);
    return this;
  }

  /**
   * Specific heat from a named estimate; its basis becomes estimated.
   *
   * @param estimate such as {@link CellEstimates#specificHeat}
   * @return this builder
   */
  public CellBuilder specificHeat(Estimate<SpecificHeatCapacity> estimate) {
    specificHeat = estimate.typical();
    return estimated(CellProperty.HEAT, estimate);
  }

  /**
   * Entropic coefficient dU/dT; may be negative.
   *
   * @param value finite
   * @return this builder
   */
  public CellBuilder entropicCoefficient(Quantity<EntropicCoefficient> value) {
    entropicCoefficient = Measure.from(value, Kind.ENTROPIC_COEFFICIENT);
    return this;
  }

  /**
   * What one property rests on; data sheet unless told.
   *
   * @param property the property
   * @param basis its basis
   * @return this builder
   */
  public CellBuilder basis(CellProperty property, Basis basis) {
    bases.put(Objects.requireNonNull(property, "property"), Objects.requireNonNull(basis, "basis"));
    return this;
  }

  /** Capacity and resistances scaled by a further age. */
  CellBuilder age(Ageing further) {
    capacity =
        Kind.CHARGE.ofSi(Kind.CHARGE.siValueOf(required(capacity)) * further.capacityFactor());
    scaleResistance(further.resistanceFactor());
    scaleOhmicResistance(further.resistanceFactor());
    ageing = ageing.and(further);
    return this;
  }

  CellBuilder atBandEnd(BandEnd end) {
    Estimate.Band resistance = bands.get(CellProperty.RESISTANCE);
    if (resistance != null) {
      scaleResistance(factor(resistance, end));
      bands.put(CellProperty.RESISTANCE, AT_END);
    }
    Estimate.Band ohmic = bands.get(CellProperty.OHMIC_RESISTANCE);
    if (ohmic != null) {
      scaleOhmicResistance(factor(ohmic, end));
      bands.put(CellProperty.OHMIC_RESISTANCE, AT_END);
    }
    return this;
  }

  private static double factor(Estimate.Band band, BandEnd end) {
    return end == BandEnd.LOW ? band.lowFactor() : band.highFactor();
  }

  private void scaleResistance(double factor) {
    dischargeResistance = required(dischargeResistance).scaled(factor);
    chargeResistance = chargeResistance == null ? null : chargeResistance.scaled(factor);
    if (rcPair != null) {
      double resistanceOhm = Kind.RESISTANCE.siValueOf(rcPair.resistance()) * factor;
      rcPair = RcPair.of(Kind.RESISTANCE.ofSi(resistanceOhm), rcPair.timeConstant());
    }
  }

  private void scaleOhmicResistance(double factor) {
    if (ohmicResistance != null) {
      ohmicResistance = Kind.RESISTANCE.ofSi(Kind.RESISTANCE.siValueOf(ohmicResistance) * factor);
    }
  }

  /** For a property that several values share: the weakest decides. */
  private CellBuilder weaken(CellProperty property, Basis basis) {
    bases.merge(property, basis, Basis::and);
    return this;
  }

  private CellBuilder estimated(CellProperty property, Estimate<?> estimate) {
    bases.put(property, Basis.ESTIMATED);
    bands.put(property, estimate.band());
    sources.put(property, estimate.source());
    return this;
  }

  /**
   * What is being built.
   *
   * @return for example {@code cell flat 105, to be built}
   */
  @Override
  public String toString() {
    return "cell " + name + ", to be built";
  }

  /**
   * The cell.
   *
   * @return an immutable cell
   * @throws InvalidInputException if required fields are missing (one error lists them all), the
   *     voltage limits are in the wrong order, the open-circuit curve leaves them, or a pulse
   *     current lies below the continuous one
   */
  public Cell build() {
    new MissingFields("Cell")
        .field("capacity", capacity)
        .field("openCircuit", openCircuit)
        .field("resistance", dischargeResistance)
        .field("minimumVoltage", minimumVoltage)
        .field("maximumVoltage", maximumVoltage)
        .field("continuousDischargeCurrent", continuousDischarge)
        .field("continuousChargeCurrent", continuousCharge)
        .field("dischargeTemperatures", dischargeTemperatures)
        .field("chargeTemperatures", chargeTemperatures)
        .field("mass", mass)
        .rejectIfAny();
    rejectWrongVoltages(required(minimumVoltage), required(maximumVoltage));
    bracketEstimate(CellProperty.RESISTANCE, CellEstimates.RESISTANCE_BAND);
    bracketEstimate(CellProperty.OHMIC_RESISTANCE, CellEstimates.OHMIC_BAND);
    return new Cell(this);
  }

  /** A resistance said to be estimated, but without a band, gets the usual one. */
  private void bracketEstimate(CellProperty property, Estimate.Band usual) {
    if (bases.get(property) == Basis.ESTIMATED) {
      bands.putIfAbsent(property, usual);
    }
  }

  private void rejectWrongVoltages(
      Quantity<ElectricPotential> minimum, Quantity<ElectricPotential> maximum) {
    if (!(Kind.VOLTAGE.compare(maximum, minimum) > 0)) {
      throw InvalidInputException.of(
          "Cell.maximumVoltage", "> minimumVoltage " + minimum, maximum.toString());
    }
    OpenCircuitCurve curve = required(openCircuit);
    Quantity<ElectricPotential> empty = curve.lowest(StateOfCharge.EMPTY);
    Quantity<ElectricPotential> full = curve.highest(StateOfCharge.FULL);
    if (Kind.VOLTAGE.compare(empty, minimum) < 0) {
      throw InvalidInputException.of(
          "Cell.openCircuit when empty", "≥ minimumVoltage " + minimum, empty.toString());
    }
    if (Kind.VOLTAGE.compare(full, maximum) > 0) {
      throw InvalidInputException.of(
          "Cell.openCircuit when full", "≤ maximumVoltage " + maximum, full.toString());
    }
  }
}
