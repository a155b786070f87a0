package org.wattwright.units;

import java.io.InvalidObjectException;
import java.io.NotSerializableException;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Acceleration;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.ElectricCapacitance;
import javax.measure.quantity.ElectricCharge;
import javax.measure.quantity.ElectricConductance;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricInductance;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Force;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Length;
import javax.measure.quantity.MagneticFlux;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;

/**
 * What a quantity is a quantity of: voltage, torque, temperature difference …
 *
 * <p>The kind tells apart what the dimension alone does not: torque from energy, and an absolute
 * temperature from a difference. Each kind has a coherent SI unit, in which solvers compute, and a
 * customary unit, in which results are shown.
 *
 * <p>The constants here are singletons: compare them with {@code ==}. Products and quotients of the
 * JSR 385 arithmetic have kinds without a name. Immutable and thread-safe.
 *
 * @param <Q> the JSR 385 quantity type
 */
public final class Kind<Q extends Quantity<Q>> implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Acceleration, m/s². */
  public static final Kind<Acceleration> ACCELERATION =
      new Kind<>("acceleration", Acceleration.class, "m/s²", "m/s²");

  /** Plane angle, rad; shown in °. */
  public static final Kind<Angle> ANGLE = new Kind<>("angle", Angle.class, "rad", "°");

  /** Area, m²; shown in mm². */
  public static final Kind<Area> AREA = new Kind<>("area", Area.class, "m²", "mm²");

  /** Electric capacitance, F; shown in µF. */
  public static final Kind<ElectricCapacitance> CAPACITANCE =
      new Kind<>("capacitance", ElectricCapacitance.class, "F", "µF");

  /** Electric charge, also battery capacity, C; shown in A·h. */
  public static final Kind<ElectricCharge> CHARGE =
      new Kind<>("charge", ElectricCharge.class, "C", "A·h");

  /** Electric conductance, S. */
  public static final Kind<ElectricConductance> CONDUCTANCE =
      new Kind<>("conductance", ElectricConductance.class, "S", "S");

  /** Electric current, A. */
  public static final Kind<ElectricCurrent> CURRENT =
      new Kind<>("current", ElectricCurrent.class, "A", "A");

  /** Current per conductor area, A/m²; shown in A/mm². */
  public static final Kind<CurrentDensity> CURRENT_DENSITY =
      new Kind<>("current density", CurrentDensity.class, "A/m²", "A/mm²");

  /** Mass per volume, kg/m³. */
  public static final Kind<Density> DENSITY =
      new Kind<>("density", Density.class, "kg/m³", "kg/m³");

  /** A plain number, 1. */
  public static final Kind<Dimensionless> DIMENSIONLESS =
      new Kind<>("dimensionless", Dimensionless.class, "1", "1");

  /** Distance per energy, m/J; shown in km/(kW·h). */
  public static final Kind<DistancePerEnergy> DISTANCE_PER_ENERGY =
      new Kind<>("distance per energy", DistancePerEnergy.class, "m/J", "km/(kW·h)");

  /** Dynamic viscosity, Pa·s; shown in mPa·s. */
  public static final Kind<DynamicViscosity> DYNAMIC_VISCOSITY =
      new Kind<>("dynamic viscosity", DynamicViscosity.class, "Pa·s", "mPa·s");

  /** Energy, J; shown in kW·h. */
  public static final Kind<Energy> ENERGY = new Kind<>("energy", Energy.class, "J", "kW·h");

  /** Energy per volume, J/m³; shown in W·h/L. */
  public static final Kind<EnergyDensity> ENERGY_DENSITY =
      new Kind<>("energy density", EnergyDensity.class, "J/m³", "W·h/L");

  /** Energy per distance, J/m; shown in W·h/km. */
  public static final Kind<EnergyPerDistance> ENERGY_PER_DISTANCE =
      new Kind<>("energy per distance", EnergyPerDistance.class, "J/m", "W·h/km");

  /** Entropic coefficient dU/dT, V/K; shown in mV/K. */
  public static final Kind<EntropicCoefficient> ENTROPIC_COEFFICIENT =
      new Kind<>("entropic coefficient", EntropicCoefficient.class, "V/K", "mV/K");

  /** Force, N. */
  public static final Kind<Force> FORCE = new Kind<>("force", Force.class, "N", "N");

  /** Force per speed, N·s/m; shown in N/(km/h). */
  public static final Kind<ForcePerSpeed> FORCE_PER_SPEED =
      new Kind<>("force per speed", ForcePerSpeed.class, "N·s/m", "N/(km/h)");

  /** Force per speed squared, N·s²/m²; shown in N/(km/h)². */
  public static final Kind<ForcePerSpeedSquared> FORCE_PER_SPEED_SQUARED =
      new Kind<>("force per speed squared", ForcePerSpeedSquared.class, "N·s²/m²", "N/(km/h)²");

  /** Frequency, Hz. */
  public static final Kind<Frequency> FREQUENCY =
      new Kind<>("frequency", Frequency.class, "Hz", "Hz");

  /** Heat capacity of a body, J/K; shown in kJ/K. */
  public static final Kind<HeatCapacity> HEAT_CAPACITY =
      new Kind<>("heat capacity", HeatCapacity.class, "J/K", "kJ/K");

  /** Heat transfer coefficient, W/(m²·K). */
  public static final Kind<HeatTransferCoefficient> HEAT_TRANSFER_COEFFICIENT =
      new Kind<>(
          "heat transfer coefficient", HeatTransferCoefficient.class, "W/(m²·K)", "W/(m²·K)");

  /** Inductance, H; shown in µH. */
  public static final Kind<ElectricInductance> INDUCTANCE =
      new Kind<>("inductance", ElectricInductance.class, "H", "µH");

  /** Inductance per length, H/m; shown in µH/m. */
  public static final Kind<InductancePerLength> INDUCTANCE_PER_LENGTH =
      new Kind<>("inductance per length", InductancePerLength.class, "H/m", "µH/m");

  /** Joule integral I²t, A²·s. */
  public static final Kind<JouleIntegral> JOULE_INTEGRAL =
      new Kind<>("joule integral", JouleIntegral.class, "A²·s", "A²·s");

  /** Length, m. */
  public static final Kind<Length> LENGTH = new Kind<>("length", Length.class, "m", "m");

  /** Magnetic flux, flux linkage of a motor, Wb. */
  public static final Kind<MagneticFlux> MAGNETIC_FLUX =
      new Kind<>("magnetic flux", MagneticFlux.class, "Wb", "Wb");

  /** Mass, kg. */
  public static final Kind<Mass> MASS = new Kind<>("mass", Mass.class, "kg", "kg");

  /** Mass flow, kg/s. */
  public static final Kind<MassFlow> MASS_FLOW =
      new Kind<>("mass flow", MassFlow.class, "kg/s", "kg/s");

  /** Mass per length, kg/m. */
  public static final Kind<MassPerLength> MASS_PER_LENGTH =
      new Kind<>("mass per length", MassPerLength.class, "kg/m", "kg/m");

  /** Energy per amount of substance, J/mol; shown in kJ/mol. */
  public static final Kind<MolarEnergy> MOLAR_ENERGY =
      new Kind<>("molar energy", MolarEnergy.class, "J/mol", "kJ/mol");

  /** Moment of inertia, kg·m². */
  public static final Kind<MomentOfInertia> MOMENT_OF_INERTIA =
      new Kind<>("moment of inertia", MomentOfInertia.class, "kg·m²", "kg·m²");

  /** Power, W; shown in kW. */
  public static final Kind<Power> POWER = new Kind<>("power", Power.class, "W", "kW");

  /** Pressure and mechanical stress, Pa; shown in kPa. */
  public static final Kind<Pressure> PRESSURE = new Kind<>("pressure", Pressure.class, "Pa", "kPa");

  /** Electric resistance, Ω. */
  public static final Kind<ElectricResistance> RESISTANCE =
      new Kind<>("resistance", ElectricResistance.class, "Ω", "Ω");

  /** Resistance per length, Ω/m; shown in Ω/km. */
  public static final Kind<ResistancePerLength> RESISTANCE_PER_LENGTH =
      new Kind<>("resistance per length", ResistancePerLength.class, "Ω/m", "Ω/km");

  /** Isolation resistance per working voltage, Ω/V. */
  public static final Kind<ResistancePerVoltage> RESISTANCE_PER_VOLTAGE =
      new Kind<>("resistance per voltage", ResistancePerVoltage.class, "Ω/V", "Ω/V");

  /** Roll stiffness, N·m/rad; shown in N·m/°. */
  public static final Kind<RollStiffness> ROLL_STIFFNESS =
      new Kind<>("roll stiffness", RollStiffness.class, "N·m/rad", "N·m/°");

  /** Rotational speed, rad/s; shown in 1/min. */
  public static final Kind<RotationalSpeed> ROTATIONAL_SPEED =
      new Kind<>("rotational speed", RotationalSpeed.class, "rad/s", "1/min");

  /** Energy per mass, J/kg; shown in W·h/kg. */
  public static final Kind<SpecificEnergy> SPECIFIC_ENERGY =
      new Kind<>("specific energy", SpecificEnergy.class, "J/kg", "W·h/kg");

  /** Specific heat capacity, J/(kg·K). */
  public static final Kind<SpecificHeatCapacity> SPECIFIC_HEAT_CAPACITY =
      new Kind<>("specific heat capacity", SpecificHeatCapacity.class, "J/(kg·K)", "J/(kg·K)");

  /** Speed, m/s; shown in km/h. */
  public static final Kind<Speed> SPEED = new Kind<>("speed", Speed.class, "m/s", "km/h");

  /** Spring rate, N/m; shown in N/mm. */
  public static final Kind<SpringRate> SPRING_RATE =
      new Kind<>("spring rate", SpringRate.class, "N/m", "N/mm");

  /** Absolute temperature, K; shown in °C. */
  public static final Kind<Temperature> TEMPERATURE =
      new Kind<>("temperature", Temperature.class, "K", "°C");

  /** Relative change per kelvin, 1/K. */
  public static final Kind<TemperatureCoefficient> TEMPERATURE_COEFFICIENT =
      new Kind<>("temperature coefficient", TemperatureCoefficient.class, "1/K", "1/K");

  /** Difference of two temperatures, K. */
  public static final Kind<TemperatureDifference> TEMPERATURE_DIFFERENCE =
      new Kind<>("temperature difference", TemperatureDifference.class, "K", "K");

  /** Thermal conductance, W/K. */
  public static final Kind<ThermalConductance> THERMAL_CONDUCTANCE =
      new Kind<>("thermal conductance", ThermalConductance.class, "W/K", "W/K");

  /** Thermal conductivity, W/(m·K). */
  public static final Kind<ThermalConductivity> THERMAL_CONDUCTIVITY =
      new Kind<>("thermal conductivity", ThermalConductivity.class, "W/(m·K)", "W/(m·K)");

  /** Thermal resistance, K/W. */
  public static final Kind<ThermalResistance> THERMAL_RESISTANCE =
      new Kind<>("thermal resistance", ThermalResistance.class, "K/W", "K/W");

  /** Time, s. */
  public static final Kind<Time> TIME = new Kind<>("time", Time.class, "s", "s");

  /** Torque, N·m. */
  public static final Kind<Torque> TORQUE = new Kind<>("torque", Torque.class, "N·m", "N·m");

  /** Voltage, V. */
  public static final Kind<ElectricPotential> VOLTAGE =
      new Kind<>("voltage", ElectricPotential.class, "V", "V");

  /** Volume, m³; shown in L. */
  public static final Kind<Volume> VOLUME = new Kind<>("volume", Volume.class, "m³", "L");

  /** Volume flow, m³/s; shown in L/min. */
  public static final Kind<VolumeFlow> VOLUME_FLOW =
      new Kind<>("volume flow", VolumeFlow.class, "m³/s", "L/min");

  private static final List<Kind<?>> VALUES =
      List.of(
          ACCELERATION,
          ANGLE,
          AREA,
          CAPACITANCE,
          CHARGE,
          CONDUCTANCE,
          CURRENT,
          CURRENT_DENSITY,
          DENSITY,
          DIMENSIONLESS,
          DISTANCE_PER_ENERGY,
          DYNAMIC_VISCOSITY,
          ENERGY,
          ENERGY_DENSITY,
          ENERGY_PER_DISTANCE,
          ENTROPIC_COEFFICIENT,
          FORCE,
          FORCE_PER_SPEED,
          FORCE_PER_SPEED_SQUARED,
          FREQUENCY,
          HEAT_CAPACITY,
          HEAT_TRANSFER_COEFFICIENT,
          INDUCTANCE,
          INDUCTANCE_PER_LENGTH,
          JOULE_INTEGRAL,
          LENGTH,
          MAGNETIC_FLUX,
          MASS,
          MASS_FLOW,
          MASS_PER_LENGTH,
          MOLAR_ENERGY,
          MOMENT_OF_INERTIA,
          POWER,
          PRESSURE,
          RESISTANCE,
          RESISTANCE_PER_LENGTH,
          RESISTANCE_PER_VOLTAGE,
          ROLL_STIFFNESS,
          ROTATIONAL_SPEED,
          SPECIFIC_ENERGY,
          SPECIFIC_HEAT_CAPACITY,
          SPEED,
          SPRING_RATE,
          TEMPERATURE,
          TEMPERATURE_COEFFICIENT,
          TEMPERATURE_DIFFERENCE,
          THERMAL_CONDUCTANCE,
          THERMAL_CONDUCTIVITY,
          THERMAL_RESISTANCE,
          TIME,
          TORQUE,
          VOLTAGE,
          VOLUME,
          VOLUME_FLOW);

  /** Name in lower case, as messages print it. */
  private final String name;

  /** JSR 385 type; null only for a product or quotient that has no name. */
  private final transient @Nullable Class<Q> type;

  /** SI unit of a product or quotient that has no name; null for every named kind. */
  private final transient @Nullable Unit<Q> unnamedUnit;

  /** Symbol of the coherent SI unit. */
  private final transient String siSymbol;

  /** Symbol of the customary unit. */
  private final transient String customarySymbol;

  private Kind(String name, Class<Q> type, String siSymbol, String customarySymbol) {
    this(name, type, null, siSymbol, customarySymbol);
  }

  private Kind(
      String name,
      @Nullable Class<Q> type,
      @Nullable Unit<Q> unnamedUnit,
      String siSymbol,
      String customarySymbol) {
    this.name = name;
    this.type = type;
    this.unnamedUnit = unnamedUnit;
    this.siSymbol = siSymbol;
    this.customarySymbol = customarySymbol;
  }

  /** A kind without a name, for products and quotients of the JSR 385 arithmetic. */
  static <Q extends Quantity<Q>> Kind<Q> unnamed(Unit<Q> siUnit) {
    String symbol = siUnit.toString();
    return new Kind<>(symbol, null, siUnit, symbol, symbol);
  }

  /**
   * All named kinds, in alphabetical order.
   *
   * @return an immutable list
   */
  public static List<Kind<?>> values() {
    return VALUES;
  }

  static @Nullable Kind<?> ofType(Class<?> type) {
    for (Kind<?> kind : VALUES) {
      if (kind.type == type) {
        return kind;
      }
    }
    return null;
  }

  /**
   * The name of this kind, in lower case.
   *
   * @return for example {@code temperature difference}
   */
  public String name() {
    return name;
  }

  boolean isNamed() {
    return type != null;
  }

  @Nullable Unit<Q> unnamedUnit() {
    return unnamedUnit;
  }

  String siSymbol() {
    return siSymbol;
  }

  String customarySymbol() {
    return customarySymbol;
  }

  /**
   * The coherent SI unit of this kind.
   *
   * @return the unit in which {@link #siValueOf} reads
   */
  public NamedUnit<Q> siUnit() {
    return UnitTable.siUnit(this);
  }

  /**
   * The unit in which results of this kind are shown.
   *
   * @return the customary unit
   */
  public NamedUnit<Q> customaryUnit() {
    return UnitTable.customaryUnit(this);
  }

  /**
   * Every unit of this kind that the library names.
   *
   * @return an immutable list; units that differ by a prefix stand smallest first
   */
  public List<NamedUnit<Q>> units() {
    return UnitTable.unitsOf(this);
  }

  /**
   * Reads any quantity of this kind as a plain number in the coherent SI unit.
   *
   * <p>This is the door through which solvers read their inputs, once each. Our own quantities are
   * read without conversion; any other JSR 385 implementation is converted.
   *
   * @param quantity any implementation
   * @return the value in the coherent SI unit, finite
   * @throws InvalidInputException if the quantity is of another kind (a temperature difference for
   *     a temperature), or not finite
   */
  public double siValueOf(Quantity<Q> quantity) {
    // The exact class test keeps the common case to one comparison and one load.
    if (quantity instanceof Measure<?> measure && measure.kind() == this) {
      return measure.siValue();
    }
    return Measure.from(quantity, this).siValue();
  }

  /**
   * Orders two quantities of this kind by size.
   *
   * @param first any implementation
   * @param second any implementation
   * @return negative, zero or positive as {@code first} is smaller, equal or larger
   * @throws InvalidInputException if one is of another kind
   */
  public int compare(Quantity<Q> first, Quantity<Q> second) {
    return Double.compare(siValueOf(first), siValueOf(second));
  }

  /**
   * Wraps a plain number in the coherent SI unit; the result shows itself in the customary unit.
   *
   * @param siValue value in the coherent SI unit, finite
   * @return a quantity of this kind
   * @throws InvalidInputException if the value is NaN or infinite
   */
  public Quantity<Q> ofSi(double siValue) {
    return Measure.ofSi(siValue, this);
  }

  /**
   * Reads a text such as {@code 35 mm²}.
   *
   * @param text number, optional space, unit of this kind
   * @return the quantity, in the unit as written
   * @throws InvalidInputException if the text is not a number with a unit of this kind; the message
   *     names the text and the position
   */
  public Quantity<Q> parse(String text) {
    return MeasureParser.parse(Objects.requireNonNull(text, "text"), this);
  }

  /**
   * Finds a unit by the ways to type it, for example from a column heading.
   *
   * @param spelling symbol or another usual spelling, such as {@code Ah} or {@code mm2}
   * @return the unit
   * @throws InvalidInputException if no unit of this kind is spelled so
   */
  public NamedUnit<Q> unit(String spelling) {
    return MeasureParser.parseUnit(Objects.requireNonNull(spelling, "spelling"), this);
  }

  /** The same constant, or both products or quotients of one dimension. */
  boolean isSameAs(Kind<?> that) {
    return this == that
        || (unnamedUnit != null
            && that.unnamedUnit != null
            && unnamedUnit.getDimension().equals(that.unnamedUnit.getDimension()));
  }

  /** Agrees with {@link #isSameAs}. */
  int hash() {
    return unnamedUnit == null ? name.hashCode() : unnamedUnit.getDimension().hashCode();
  }

  private Object writeReplace() throws NotSerializableException {
    if (!isNamed()) {
      throw new NotSerializableException("product or quotient without a name: " + name);
    }
    return this;
  }

  /** The constants survive serialisation by name. */
  private Object readResolve() throws InvalidObjectException {
    for (Kind<?> kind : VALUES) {
      if (kind.name.equals(name)) {
        return kind;
      }
    }
    throw new InvalidObjectException("no such kind: " + name);
  }

  /**
   * The name of this kind.
   *
   * @return as {@link #name()}
   */
  @Override
  public String toString() {
    return name;
  }
}
