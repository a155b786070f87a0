package org.wattwright.battery;

import java.io.Serializable;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
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
import org.wattwright.check.Source;
import org.wattwright.units.EntropicCoefficient;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;
import org.wattwright.units.SpecificHeatCapacity;

/**
 * A battery cell: open-circuit curve, resistance, limits, mass.
 *
 * <p>Two resistances are told apart. The resistance <em>for seconds</em> (data sheets call it DC
 * internal resistance) decides voltage under load and power; the <em>ohmic</em> resistance, for
 * milliseconds, decides the fault current. An optional RC pair adds slow polarisation.
 *
 * <pre>{@code
 * Cell cell = Cell.of("flat 105", Chemistry.LFP)
 *     .capacity(ampereHours(105))
 *     .openCircuit(curve)
 *     .resistance(ResistanceTable.constant(milliohms(0.7)))
 *     .minimumVoltage(volts(2.5)).maximumVoltage(volts(3.65))
 *     .continuousDischargeCurrent(amperes(105)).continuousChargeCurrent(amperes(52))
 *     .dischargeTemperatures(TemperatureRange.between(celsius(-20), celsius(55)))
 *     .chargeTemperatures(TemperatureRange.between(celsius(0), celsius(45)))
 *     .mass(kilograms(1.98))
 *     .build();
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class Cell implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String name;
  private final Chemistry chemistry;
  private final Quantity<ElectricCharge> capacity;
  private final OpenCircuitCurve openCircuit;
  private final ResistanceTable dischargeResistance;
  private final @Nullable ResistanceTable chargeResistance;
  private final @Nullable Quantity<ElectricResistance> ohmicResistance;
  private final @Nullable RcPair rcPair;
  private final Quantity<ElectricPotential> minimumVoltage;
  private final Quantity<ElectricPotential> maximumVoltage;
  private final CurrentLimits currentLimits;
  private final TemperatureRange dischargeTemperatures;
  private final TemperatureRange chargeTemperatures;
  private final Quantity<Mass> mass;
  private final @Nullable Dimensions dimensions;
  private final @Nullable Quantity<SpecificHeatCapacity> specificHeat;
  private final @Nullable Quantity<EntropicCoefficient> entropicCoefficient;
  private final Ageing ageing;
  private final EnumMap<CellProperty, Basis> bases;
  private final EnumMap<CellProperty, Estimate.Band> bands;
  private final EnumMap<CellProperty, Source> sources;

  Cell(CellBuilder builder) {
    name = builder.name;
    chemistry = builder.chemistry;
    capacity = CellBuilder.required(builder.capacity);
    openCircuit = CellBuilder.required(builder.openCircuit);
    dischargeResistance = CellBuilder.required(builder.dischargeResistance);
    chargeResistance = builder.chargeResistance;
    ohmicResistance = builder.ohmicResistance;
    rcPair = builder.rcPair;
    minimumVoltage = CellBuilder.required(builder.minimumVoltage);
    maximumVoltage = CellBuilder.required(builder.maximumVoltage);
    currentLimits = CurrentLimits.of(builder);
    dischargeTemperatures = CellBuilder.required(builder.dischargeTemperatures);
    chargeTemperatures = CellBuilder.required(builder.chargeTemperatures);
    mass = CellBuilder.required(builder.mass);
    dimensions = builder.dimensions;
    specificHeat = builder.specificHeat;
    entropicCoefficient = builder.entropicCoefficient;
    ageing = builder.ageing;
    bases = new EnumMap<>(builder.bases);
    bands = new EnumMap<>(builder.bands);
    sources = new EnumMap<>(builder.sources);
  }

  /**
   * Starts a cell.
   *
   * @param name as reports print it
   * @param chemistry the chemistry
   * @return a builder
   * @throws org.wattwright.units.InvalidInputException if the name is blank
   */
  public static CellBuilder of(String name, Chemistry chemistry) {
    return new CellBuilder(name, chemistry);
  }

  /**
   * A builder that starts from this cell, for variants.
   *
   * @return a builder with every field set as here
   */
  public CellBuilder toBuilder() {
    return new CellBuilder(this);
  }

  /**
   * This cell at another age: capacity and resistances scaled from those it has now.
   *
   * @param further the age that comes on top
   * @return a new cell
   */
  public Cell aged(Ageing further) {
    return toBuilder().age(further).build();
  }

  /**
   * This cell with every estimated resistance at one end of its band, to bracket a safety check.
   *
   * @param end low for the highest fault current, high for the lowest
   * @return a new cell; this one if no resistance is estimated
   */
  public Cell atBandEnd(BandEnd end) {
    return bands.isEmpty() ? this : toBuilder().atBandEnd(end).build();
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
   * The chemistry.
   *
   * @return the chemistry
   */
  public Chemistry chemistry() {
    return chemistry;
  }

  /**
   * Capacity at the age of this cell.
   *
   * @return in the unit as given
   */
  public Quantity<ElectricCharge> capacity() {
    return capacity;
  }

  /**
   * Open-circuit curve.
   *
   * @return the curve
   */
  public OpenCircuitCurve openCircuit() {
    return openCircuit;
  }

  /**
   * Resistance for seconds.
   *
   * @param direction discharge or charge
   * @return the table, at the age of this cell
   */
  public ResistanceTable resistance(Direction direction) {
    return direction == Direction.CHARGE && chargeResistance != null
        ? chargeResistance
        : dischargeResistance;
  }

  /**
   * Resistance for milliseconds.
   *
   * @return empty if not known
   */
  public Optional<Quantity<ElectricResistance>> ohmicResistance() {
    return Optional.ofNullable(ohmicResistance);
  }

  /**
   * Slow polarisation.
   *
   * @return empty if not known
   */
  public Optional<RcPair> rcPair() {
    return Optional.ofNullable(rcPair);
  }

  /**
   * Lowest voltage under load.
   *
   * @return in the unit as given
   */
  public Quantity<ElectricPotential> minimumVoltage() {
    return minimumVoltage;
  }

  /**
   * Highest voltage under charge.
   *
   * @return in the unit as given
   */
  public Quantity<ElectricPotential> maximumVoltage() {
    return maximumVoltage;
  }

  /**
   * Current for any length of time.
   *
   * @param direction discharge or charge
   * @return magnitude, in the unit as given
   */
  public Quantity<ElectricCurrent> continuousCurrent(Direction direction) {
    return currentLimits.continuous(direction);
  }

  /**
   * Current for a limited time.
   *
   * @param direction discharge or charge
   * @return empty if none is stated
   */
  public Optional<PulseCurrent> pulseCurrent(Direction direction) {
    return Optional.ofNullable(currentLimits.pulse(direction));
  }

  /**
   * Largest charge current by temperature.
   *
   * @return empty if none is stated
   */
  public Optional<CurrentByTemperature> chargeCurrentByTemperature() {
    return Optional.ofNullable(currentLimits.chargeByTemperature());
  }

  /**
   * Temperatures at which current may flow.
   *
   * @param direction discharge or charge
   * @return the range
   */
  public TemperatureRange temperatures(Direction direction) {
    return direction == Direction.DISCHARGE ? dischargeTemperatures : chargeTemperatures;
  }

  /**
   * Mass.
   *
   * @return in the unit as given
   */
  public Quantity<Mass> mass() {
    return mass;
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
   * Specific heat.
   *
   * @return empty if not known
   */
  public Optional<Quantity<SpecificHeatCapacity>> specificHeat() {
    return Optional.ofNullable(specificHeat);
  }

  /**
   * Entropic coefficient dU/dT.
   *
   * @return empty if not known
   */
  public Optional<Quantity<EntropicCoefficient>> entropicCoefficient() {
    return Optional.ofNullable(entropicCoefficient);
  }

  /**
   * The age that capacity and resistances stand for.
   *
   * @return {@link Ageing#NEW} unless aged
   */
  public Ageing ageing() {
    return ageing;
  }

  /**
   * What a property rests on.
   *
   * @param property the property
   * @return data sheet unless told otherwise
   */
  public Basis basis(CellProperty property) {
    return bases.getOrDefault(Objects.requireNonNull(property, "property"), Basis.DATA_SHEET);
  }

  /** The table for charge if one was stated, not that for discharge in its place. */
  @Nullable ResistanceTable statedChargeResistance() {
    return chargeResistance;
  }

  /**
   * Where a property comes from.
   *
   * @param property the property
   * @return the data sheet of the cell unless told otherwise
   */
  public Source source(CellProperty property) {
    return sources.getOrDefault(
        Objects.requireNonNull(property, "property"), Source.dataSheet(name));
  }

  Map<CellProperty, Source> sources() {
    return sources;
  }

  Map<CellProperty, Basis> bases() {
    return bases;
  }

  Map<CellProperty, Estimate.Band> bands() {
    return bands;
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
    return BatteryModule.of(this).build().pulseResponse(state, current, duration);
  }

  /** Resistance for seconds plus what the RC pair adds within the load's duration. */
  double resistanceOhm(double soc, double temperatureK, Load load) {
    double seriesOhm = resistance(load.direction()).table().at(soc, temperatureK);
    return rcPair == null ? seriesOhm : seriesOhm + rcPair.ohmAfter(load.durationS());
  }

  CurrentLimits currentLimits() {
    return currentLimits;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return this == other || (other instanceof Cell that && fields().equals(that.fields()));
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, capacity);
  }

  /** Every field as one value, so that equality cannot forget one. */
  private Map<String, Object> fields() {
    Map<String, Object> fields = new HashMap<>();
    fields.put("name", name);
    fields.put("chemistry", chemistry);
    fields.put("capacity", capacity);
    fields.put("openCircuit", openCircuit);
    fields.put("dischargeResistance", dischargeResistance);
    fields.put("chargeResistance", resistance(Direction.CHARGE));
    fields.put("ohmicResistance", ohmicResistance());
    fields.put("rcPair", rcPair());
    fields.put("minimumVoltage", minimumVoltage);
    fields.put("maximumVoltage", maximumVoltage);
    fields.put("currentLimits", currentLimits);
    fields.put("dischargeTemperatures", dischargeTemperatures);
    fields.put("chargeTemperatures", chargeTemperatures);
    fields.put("mass", mass);
    fields.put("dimensions", dimensions());
    fields.put("specificHeat", specificHeat());
    fields.put("entropicCoefficient", entropicCoefficient());
    fields.put("ageing", ageing);
    fields.put("bases", bases);
    fields.put("bands", bands);
    fields.put("sources", sources);
    return fields;
  }

  /**
   * Name, chemistry, capacity and voltage limits.
   *
   * @return for example {@code flat 105 (LFP, 105 A·h, 2.5 V … 3.65 V)}
   */
  @Override
  public String toString() {
    String capacityText = Measures.format(capacity, Kind.CHARGE);
    return String.format(
        Locale.ROOT,
        "%s (%s, %s, %s … %s)",
        name,
        chemistry,
        capacityText,
        minimumVoltage,
        maximumVoltage);
  }
}
