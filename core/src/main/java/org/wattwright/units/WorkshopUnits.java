package org.wattwright.units;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
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

/**
 * Every unit that the library names, as constants: {@code MILLIVOLT.of(3200)} makes a quantity,
 * {@code MILLIVOLT.valueOf(voltage)} reads one.
 *
 * <p>Conversion factors are the exact definitions of the SI Brochure and of NIST SP 811, Appendix
 * B; the British thermal unit and the kilocalorie are the International Table and the
 * thermochemical one. The table is fixed: nothing is registered at run time.
 */
public final class WorkshopUnits {
  private static final List<Named> DEFINED = new ArrayList<>();

  /** Microvolt. */
  public static final NamedUnit<ElectricPotential> MICROVOLT =
      unit(Kind.VOLTAGE, "µV", 1, 1e6, "V");

  /** Millivolt. */
  public static final NamedUnit<ElectricPotential> MILLIVOLT =
      unit(Kind.VOLTAGE, "mV", 1, 1000, "V");

  /** Volt. */
  public static final NamedUnit<ElectricPotential> VOLT =
      unit(Kind.VOLTAGE, "V", 1, 1, "V", "volt", "volts");

  /** Kilovolt. */
  public static final NamedUnit<ElectricPotential> KILOVOLT =
      unit(Kind.VOLTAGE, "kV", 1000, 1, "V");

  /** Microampere. */
  public static final NamedUnit<ElectricCurrent> MICROAMPERE =
      unit(Kind.CURRENT, "µA", 1, 1e6, "A");

  /** Milliampere. */
  public static final NamedUnit<ElectricCurrent> MILLIAMPERE =
      unit(Kind.CURRENT, "mA", 1, 1000, "A");

  /** Ampere. */
  public static final NamedUnit<ElectricCurrent> AMPERE =
      unit(Kind.CURRENT, "A", 1, 1, "A", "amp", "amps");

  /** Kiloampere. */
  public static final NamedUnit<ElectricCurrent> KILOAMPERE =
      unit(Kind.CURRENT, "kA", 1000, 1, "A");

  /** Coulomb. */
  public static final NamedUnit<ElectricCharge> COULOMB = unit(Kind.CHARGE, "C", 1, 1, "", "A·s");

  /** Milliampere hour, 3.6 C. */
  public static final NamedUnit<ElectricCharge> MILLIAMPERE_HOUR =
      unit(Kind.CHARGE, "mA·h", 18, 5, "A·h");

  /** Ampere hour, 3600 C. */
  public static final NamedUnit<ElectricCharge> AMPERE_HOUR =
      unit(Kind.CHARGE, "A·h", 3600, 1, "A·h");

  /** Joule. */
  public static final NamedUnit<Energy> JOULE = unit(Kind.ENERGY, "J", 1, 1, "J", "W·s");

  /** Kilojoule. */
  public static final NamedUnit<Energy> KILOJOULE = unit(Kind.ENERGY, "kJ", 1000, 1, "J");

  /** Megajoule. */
  public static final NamedUnit<Energy> MEGAJOULE = unit(Kind.ENERGY, "MJ", 1e6, 1, "J");

  /** Watt hour, 3600 J. */
  public static final NamedUnit<Energy> WATT_HOUR = unit(Kind.ENERGY, "W·h", 3600, 1, "W·h");

  /** Kilowatt hour, 3.6 MJ. */
  public static final NamedUnit<Energy> KILOWATT_HOUR =
      unit(Kind.ENERGY, "kW·h", 3600000.0, 1, "W·h");

  /** Thermochemical kilocalorie, 4184 J. */
  public static final NamedUnit<Energy> THERMOCHEMICAL_KILOCALORIE =
      unit(Kind.ENERGY, "kcal", 4184, 1, "");

  /** British thermal unit (international table), 1055.05585262 J. */
  public static final NamedUnit<Energy> BRITISH_THERMAL_UNIT =
      unit(Kind.ENERGY, "Btu", 105505585262.0, 1e8, "", "BTU");

  /** Milliwatt. */
  public static final NamedUnit<Power> MILLIWATT = unit(Kind.POWER, "mW", 1, 1000, "W");

  /** Watt. */
  public static final NamedUnit<Power> WATT = unit(Kind.POWER, "W", 1, 1, "W");

  /** Kilowatt. */
  public static final NamedUnit<Power> KILOWATT = unit(Kind.POWER, "kW", 1000, 1, "W");

  /** Megawatt. */
  public static final NamedUnit<Power> MEGAWATT = unit(Kind.POWER, "MW", 1e6, 1, "W");

  /** Imperial (mechanical) horsepower, 550 ft·lbf/s = 745.6998715822702 W. */
  public static final NamedUnit<Power> IMPERIAL_HORSEPOWER =
      unit(Kind.POWER, "hp", 745.6998715822702, 1, "", "bhp");

  /** Metric horsepower, 75 kgf·m/s = 735.49875 W. */
  public static final NamedUnit<Power> METRIC_HORSEPOWER =
      unit(Kind.POWER, "PS", 73549875.0, 100000, "", "cv", "ch");

  /** Electric horsepower, 746 W; on the plates of motors made in the United States. */
  public static final NamedUnit<Power> ELECTRIC_HORSEPOWER =
      unit(Kind.POWER, "hp (electric)", 746, 1, "");

  /** British thermal unit per hour. */
  public static final NamedUnit<Power> BTU_PER_HOUR =
      unit(Kind.POWER, "Btu/h", 105505585262.0, 3.6e11, "", "BTU/h");

  /** Microohm. */
  public static final NamedUnit<ElectricResistance> MICROOHM =
      unit(Kind.RESISTANCE, "µΩ", 1, 1e6, "Ω");

  /** Milliohm. */
  public static final NamedUnit<ElectricResistance> MILLIOHM =
      unit(Kind.RESISTANCE, "mΩ", 1, 1000, "Ω");

  /** Ohm. */
  public static final NamedUnit<ElectricResistance> OHM = unit(Kind.RESISTANCE, "Ω", 1, 1, "Ω");

  /** Kiloohm. */
  public static final NamedUnit<ElectricResistance> KILOOHM =
      unit(Kind.RESISTANCE, "kΩ", 1000, 1, "Ω");

  /** Megaohm. */
  public static final NamedUnit<ElectricResistance> MEGAOHM =
      unit(Kind.RESISTANCE, "MΩ", 1e6, 1, "Ω");

  /** Gigaohm. */
  public static final NamedUnit<ElectricResistance> GIGAOHM =
      unit(Kind.RESISTANCE, "GΩ", 1e9, 1, "Ω");

  /** Siemens. */
  public static final NamedUnit<ElectricConductance> SIEMENS =
      unit(Kind.CONDUCTANCE, "S", 1, 1, "");

  /** Picofarad. */
  public static final NamedUnit<ElectricCapacitance> PICOFARAD =
      unit(Kind.CAPACITANCE, "pF", 1, 1e12, "F");

  /** Nanofarad. */
  public static final NamedUnit<ElectricCapacitance> NANOFARAD =
      unit(Kind.CAPACITANCE, "nF", 1, 1e9, "F");

  /** Microfarad. */
  public static final NamedUnit<ElectricCapacitance> MICROFARAD =
      unit(Kind.CAPACITANCE, "µF", 1, 1e6, "F");

  /** Millifarad. */
  public static final NamedUnit<ElectricCapacitance> MILLIFARAD =
      unit(Kind.CAPACITANCE, "mF", 1, 1000, "F");

  /** Farad. */
  public static final NamedUnit<ElectricCapacitance> FARAD = unit(Kind.CAPACITANCE, "F", 1, 1, "F");

  /** Nanohenry. */
  public static final NamedUnit<ElectricInductance> NANOHENRY =
      unit(Kind.INDUCTANCE, "nH", 1, 1e9, "H");

  /** Microhenry. */
  public static final NamedUnit<ElectricInductance> MICROHENRY =
      unit(Kind.INDUCTANCE, "µH", 1, 1e6, "H");

  /** Millihenry. */
  public static final NamedUnit<ElectricInductance> MILLIHENRY =
      unit(Kind.INDUCTANCE, "mH", 1, 1000, "H");

  /** Henry. */
  public static final NamedUnit<ElectricInductance> HENRY = unit(Kind.INDUCTANCE, "H", 1, 1, "H");

  /** Millimetre. */
  public static final NamedUnit<Length> MILLIMETRE = unit(Kind.LENGTH, "mm", 1, 1000, "");

  /** Centimetre. */
  public static final NamedUnit<Length> CENTIMETRE = unit(Kind.LENGTH, "cm", 1, 100, "");

  /** International inch, 25.4 mm. */
  public static final NamedUnit<Length> INCH =
      unit(Kind.LENGTH, "in", 254, 10000, "", "inch", "\"");

  /** International foot, 0.3048 m. */
  public static final NamedUnit<Length> FOOT = unit(Kind.LENGTH, "ft", 3048, 10000, "");

  /** Metre. */
  public static final NamedUnit<Length> METRE = unit(Kind.LENGTH, "m", 1, 1, "");

  /** Kilometre. */
  public static final NamedUnit<Length> KILOMETRE = unit(Kind.LENGTH, "km", 1000, 1, "");

  /** International mile, 1609.344 m. */
  public static final NamedUnit<Length> MILE =
      unit(Kind.LENGTH, "mi", 1609344.0, 1000, "", "mile", "miles");

  /** Square millimetre. */
  public static final NamedUnit<Area> SQUARE_MILLIMETRE = unit(Kind.AREA, "mm²", 1, 1e6, "");

  /** Square centimetre. */
  public static final NamedUnit<Area> SQUARE_CENTIMETRE = unit(Kind.AREA, "cm²", 1, 10000, "");

  /** Circular mil, π/4 · (0.001 in)². */
  public static final NamedUnit<Area> CIRCULAR_MIL =
      unit(Kind.AREA, "cmil", Math.PI * 16129, 1e14, "");

  /** Thousand circular mils, in which American cables above 4/0 are sized. */
  public static final NamedUnit<Area> KILOCIRCULAR_MIL =
      unit(Kind.AREA, "kcmil", Math.PI * 16129, 1e11, "", "MCM");

  /** Square inch, 645.16 mm². */
  public static final NamedUnit<Area> SQUARE_INCH = unit(Kind.AREA, "in²", 64516, 1e8, "");

  /** Square metre. */
  public static final NamedUnit<Area> SQUARE_METRE = unit(Kind.AREA, "m²", 1, 1, "");

  /** Cubic centimetre. */
  public static final NamedUnit<Volume> CUBIC_CENTIMETRE = unit(Kind.VOLUME, "cm³", 1, 1e6, "");

  /** Litre. */
  public static final NamedUnit<Volume> LITRE = unit(Kind.VOLUME, "L", 1, 1000, "", "l", "dm³");

  /** United States liquid gallon, 3.785411784 L. */
  public static final NamedUnit<Volume> US_GALLON =
      unit(Kind.VOLUME, "gal (US)", 3785411784.0, 1e12, "");

  /** Imperial gallon, 4.54609 L. */
  public static final NamedUnit<Volume> IMPERIAL_GALLON =
      unit(Kind.VOLUME, "gal (UK)", 454609, 1e8, "");

  /** Cubic metre. */
  public static final NamedUnit<Volume> CUBIC_METRE = unit(Kind.VOLUME, "m³", 1, 1, "");

  /** Gram. */
  public static final NamedUnit<Mass> GRAM = unit(Kind.MASS, "g", 1, 1000, "");

  /** Pound (avoirdupois), 0.45359237 kg. */
  public static final NamedUnit<Mass> POUND = unit(Kind.MASS, "lb", 45359237.0, 1e8, "", "lbs");

  /** Kilogram. */
  public static final NamedUnit<Mass> KILOGRAM = unit(Kind.MASS, "kg", 1, 1, "");

  /** Long hundredweight, 112 lb. */
  public static final NamedUnit<Mass> LONG_HUNDREDWEIGHT =
      unit(Kind.MASS, "cwt (UK)", 5080234544.0, 1e8, "");

  /** Long ton, 2240 lb. */
  public static final NamedUnit<Mass> LONG_TON =
      unit(Kind.MASS, "ton (UK)", 10160469088.0, 1e7, "");

  /** Tonne, 1000 kg. */
  public static final NamedUnit<Mass> TONNE = unit(Kind.MASS, "t", 1000, 1, "");

  /** Microsecond. */
  public static final NamedUnit<Time> MICROSECOND = unit(Kind.TIME, "µs", 1, 1e6, "s");

  /** Millisecond. */
  public static final NamedUnit<Time> MILLISECOND = unit(Kind.TIME, "ms", 1, 1000, "s");

  /** Second. */
  public static final NamedUnit<Time> SECOND = unit(Kind.TIME, "s", 1, 1, "s", "sec");

  /** Minute. */
  public static final NamedUnit<Time> MINUTE = unit(Kind.TIME, "min", 60, 1, "");

  /** Hour. */
  public static final NamedUnit<Time> HOUR =
      unit(Kind.TIME, "h", 3600, 1, "", "hr", "hour", "hours");

  /** Day of 24 h. */
  public static final NamedUnit<Time> DAY = unit(Kind.TIME, "d", 86400, 1, "", "day", "days");

  /** Kelvin, absolute temperature. */
  public static final NamedUnit<Temperature> KELVIN = unit(Kind.TEMPERATURE, "K", 1, 1, "");

  /** Degree Celsius, absolute temperature. */
  public static final NamedUnit<Temperature> CELSIUS =
      shifted(Kind.TEMPERATURE, "°C", 1, 1, 273.15, "deg·C", "C");

  /** Degree Fahrenheit, absolute temperature. */
  public static final NamedUnit<Temperature> FAHRENHEIT =
      shifted(Kind.TEMPERATURE, "°F", 5, 9, 459.67, "deg·F", "F");

  /** Kelvin of difference: a rise, never an absolute temperature; as a difference, 1 °C = 1 K. */
  public static final NamedUnit<TemperatureDifference> KELVIN_OF_DIFFERENCE =
      unit(Kind.TEMPERATURE_DIFFERENCE, "K", 1, 1, "", "°C", "deg·C");

  /** Degree Fahrenheit of difference, 5/9 K. */
  public static final NamedUnit<TemperatureDifference> FAHRENHEIT_OF_DIFFERENCE =
      unit(Kind.TEMPERATURE_DIFFERENCE, "°F", 5, 9, "", "deg·F");

  /** Newton. */
  public static final NamedUnit<Force> NEWTON = unit(Kind.FORCE, "N", 1, 1, "N");

  /** Kilonewton. */
  public static final NamedUnit<Force> KILONEWTON = unit(Kind.FORCE, "kN", 1000, 1, "N");

  /** Kilogram-force, 9.80665 N. */
  public static final NamedUnit<Force> KILOGRAM_FORCE =
      unit(Kind.FORCE, "kgf", 980665, 100000, "", "kp");

  /** Pound-force, 4.4482216152605 N. */
  public static final NamedUnit<Force> POUND_FORCE =
      unit(Kind.FORCE, "lbf", 8896443230521.0, 2e12, "");

  /** Newton metre. */
  public static final NamedUnit<Torque> NEWTON_METRE = unit(Kind.TORQUE, "N·m", 1, 1, "N·m");

  /** Kilonewton metre. */
  public static final NamedUnit<Torque> KILONEWTON_METRE =
      unit(Kind.TORQUE, "kN·m", 1000, 1, "N·m");

  /** Pound-force foot, 1.3558179483314 N·m. */
  public static final NamedUnit<Torque> POUND_FORCE_FOOT =
      unit(Kind.TORQUE, "lbf·ft", 3389544870828501.0, 2.5e15, "", "lb·ft", "ft·lbf", "ft·lb");

  /** Metre per second. */
  public static final NamedUnit<Speed> METRE_PER_SECOND = unit(Kind.SPEED, "m/s", 1, 1, "");

  /** Kilometre per hour. */
  public static final NamedUnit<Speed> KILOMETRE_PER_HOUR =
      unit(Kind.SPEED, "km/h", 5, 18, "", "kph", "kmh");

  /** Mile per hour, 0.44704 m/s. */
  public static final NamedUnit<Speed> MILE_PER_HOUR =
      unit(Kind.SPEED, "mi/h", 44704, 100000, "", "mph");

  /** Radian per second. */
  public static final NamedUnit<RotationalSpeed> RADIAN_PER_SECOND =
      unit(Kind.ROTATIONAL_SPEED, "rad/s", 1, 1, "");

  /** Revolution per minute, π/30 rad/s. */
  public static final NamedUnit<RotationalSpeed> REVOLUTION_PER_MINUTE =
      unit(
          Kind.ROTATIONAL_SPEED,
          "1/min",
          Math.PI,
          30,
          "",
          "rpm",
          "r/min",
          "rev/min",
          "min⁻¹",
          "/min");

  /** Metre per second squared. */
  public static final NamedUnit<Acceleration> METRE_PER_SECOND_SQUARED =
      unit(Kind.ACCELERATION, "m/s²", 1, 1, "");

  /** Standard gravity, 9.80665 m/s². */
  public static final NamedUnit<Acceleration> STANDARD_GRAVITY =
      unit(Kind.ACCELERATION, "gn", 980665, 100000, "", "g₀", "g0");

  /** Pascal. */
  public static final NamedUnit<Pressure> PASCAL = unit(Kind.PRESSURE, "Pa", 1, 1, "");

  /** Hectopascal, the millibar. */
  public static final NamedUnit<Pressure> HECTOPASCAL =
      unit(Kind.PRESSURE, "hPa", 100, 1, "", "mbar");

  /** Kilopascal. */
  public static final NamedUnit<Pressure> KILOPASCAL = unit(Kind.PRESSURE, "kPa", 1000, 1, "");

  /** Bar, 100 kPa. */
  public static final NamedUnit<Pressure> BAR = unit(Kind.PRESSURE, "bar", 100000, 1, "");

  /** Pound-force per square inch, 6894.757 Pa. */
  public static final NamedUnit<Pressure> POUND_PER_SQUARE_INCH =
      unit(Kind.PRESSURE, "psi", 8896443230521.0, 1290320000.0, "", "lbf/in²");

  /** Megapascal, N/mm². */
  public static final NamedUnit<Pressure> MEGAPASCAL =
      unit(Kind.PRESSURE, "MPa", 1e6, 1, "", "N/mm²");

  /** Gigapascal. */
  public static final NamedUnit<Pressure> GIGAPASCAL = unit(Kind.PRESSURE, "GPa", 1e9, 1, "");

  /** Hertz. */
  public static final NamedUnit<Frequency> HERTZ = unit(Kind.FREQUENCY, "Hz", 1, 1, "Hz");

  /** Kilohertz. */
  public static final NamedUnit<Frequency> KILOHERTZ = unit(Kind.FREQUENCY, "kHz", 1000, 1, "Hz");

  /** Degree, π/180 rad. */
  public static final NamedUnit<Angle> DEGREE = unit(Kind.ANGLE, "°", Math.PI, 180, "", "deg");

  /** Radian. */
  public static final NamedUnit<Angle> RADIAN = unit(Kind.ANGLE, "rad", 1, 1, "");

  /** Litre per minute. */
  public static final NamedUnit<VolumeFlow> LITRE_PER_MINUTE =
      unit(Kind.VOLUME_FLOW, "L/min", 1, 60000, "", "l/min");

  /** Cubic metre per hour. */
  public static final NamedUnit<VolumeFlow> CUBIC_METRE_PER_HOUR =
      unit(Kind.VOLUME_FLOW, "m³/h", 1, 3600, "");

  /** Cubic metre per second. */
  public static final NamedUnit<VolumeFlow> CUBIC_METRE_PER_SECOND =
      unit(Kind.VOLUME_FLOW, "m³/s", 1, 1, "");

  /** Kilogram per second. */
  public static final NamedUnit<MassFlow> KILOGRAM_PER_SECOND =
      unit(Kind.MASS_FLOW, "kg/s", 1, 1, "");

  /** Watt per metre and kelvin. */
  public static final NamedUnit<ThermalConductivity> WATT_PER_METRE_KELVIN =
      unit(Kind.THERMAL_CONDUCTIVITY, "W/(m·K)", 1, 1, "", "W/m·K");

  /** Watt per kelvin. */
  public static final NamedUnit<ThermalConductance> WATT_PER_KELVIN =
      unit(Kind.THERMAL_CONDUCTANCE, "W/K", 1, 1, "");

  /** Kelvin per watt. */
  public static final NamedUnit<ThermalResistance> KELVIN_PER_WATT =
      unit(Kind.THERMAL_RESISTANCE, "K/W", 1, 1, "");

  /** Watt per square metre and kelvin. */
  public static final NamedUnit<HeatTransferCoefficient> WATT_PER_SQUARE_METRE_KELVIN =
      unit(Kind.HEAT_TRANSFER_COEFFICIENT, "W/(m²·K)", 1, 1, "", "W/m²·K");

  /** Joule per kilogram and kelvin. */
  public static final NamedUnit<SpecificHeatCapacity> JOULE_PER_KILOGRAM_KELVIN =
      unit(Kind.SPECIFIC_HEAT_CAPACITY, "J/(kg·K)", 1, 1, "", "J/kg·K");

  /** Joule per kelvin. */
  public static final NamedUnit<HeatCapacity> JOULE_PER_KELVIN =
      unit(Kind.HEAT_CAPACITY, "J/K", 1, 1, "J/K");

  /** Kilojoule per kelvin. */
  public static final NamedUnit<HeatCapacity> KILOJOULE_PER_KELVIN =
      unit(Kind.HEAT_CAPACITY, "kJ/K", 1000, 1, "J/K");

  /** Ohm per kilometre, which is milliohm per metre. */
  public static final NamedUnit<ResistancePerLength> OHM_PER_KILOMETRE =
      unit(Kind.RESISTANCE_PER_LENGTH, "Ω/km", 1, 1000, "", "mΩ/m");

  /** Ohm per thousand feet. */
  public static final NamedUnit<ResistancePerLength> OHM_PER_KILOFOOT =
      unit(Kind.RESISTANCE_PER_LENGTH, "Ω/kft", 5, 1524, "");

  /** Ohm per metre. */
  public static final NamedUnit<ResistancePerLength> OHM_PER_METRE =
      unit(Kind.RESISTANCE_PER_LENGTH, "Ω/m", 1, 1, "");

  /** Microhenry per metre. */
  public static final NamedUnit<InductancePerLength> MICROHENRY_PER_METRE =
      unit(Kind.INDUCTANCE_PER_LENGTH, "µH/m", 1, 1e6, "");

  /** Henry per metre. */
  public static final NamedUnit<InductancePerLength> HENRY_PER_METRE =
      unit(Kind.INDUCTANCE_PER_LENGTH, "H/m", 1, 1, "");

  /** Joule per metre. */
  public static final NamedUnit<EnergyPerDistance> JOULE_PER_METRE =
      unit(Kind.ENERGY_PER_DISTANCE, "J/m", 1, 1, "");

  /** Watt hour per kilometre, 3.6 J/m. */
  public static final NamedUnit<EnergyPerDistance> WATT_HOUR_PER_KILOMETRE =
      unit(Kind.ENERGY_PER_DISTANCE, "W·h/km", 18, 5, "");

  /** Watt hour per mile. */
  public static final NamedUnit<EnergyPerDistance> WATT_HOUR_PER_MILE =
      unit(Kind.ENERGY_PER_DISTANCE, "W·h/mi", 3600000.0, 1609344.0, "");

  /** Kilowatt hour per hundred kilometres, 36 J/m. */
  public static final NamedUnit<EnergyPerDistance> KILOWATT_HOUR_PER_100_KILOMETRES =
      unit(Kind.ENERGY_PER_DISTANCE, "kW·h/100 km", 36, 1, "");

  /** Metre per joule. */
  public static final NamedUnit<DistancePerEnergy> METRE_PER_JOULE =
      unit(Kind.DISTANCE_PER_ENERGY, "m/J", 1, 1, "");

  /** Kilometre per kilowatt hour, 1/3600 m/J. */
  public static final NamedUnit<DistancePerEnergy> KILOMETRE_PER_KILOWATT_HOUR =
      unit(Kind.DISTANCE_PER_ENERGY, "km/(kW·h)", 1, 3600, "", "km/kW·h");

  /** Mile per kilowatt hour. */
  public static final NamedUnit<DistancePerEnergy> MILE_PER_KILOWATT_HOUR =
      unit(Kind.DISTANCE_PER_ENERGY, "mi/(kW·h)", 1609344.0, 3.6e9, "", "mi/kW·h");

  /** Ampere squared second. */
  public static final NamedUnit<JouleIntegral> AMPERE_SQUARED_SECOND =
      unit(Kind.JOULE_INTEGRAL, "A²·s", 1, 1, "");

  /**
   * Kiloampere squared second, 10⁶ A²·s. Shown only where it was given: beside A²·s it is easily
   * taken for 10³.
   */
  public static final NamedUnit<JouleIntegral> KILOAMPERE_SQUARED_SECOND =
      unit(Kind.JOULE_INTEGRAL, "kA²·s", 1e6, 1, "");

  /** Joule per kilogram. */
  public static final NamedUnit<SpecificEnergy> JOULE_PER_KILOGRAM =
      unit(Kind.SPECIFIC_ENERGY, "J/kg", 1, 1, "");

  /** Watt hour per kilogram. */
  public static final NamedUnit<SpecificEnergy> WATT_HOUR_PER_KILOGRAM =
      unit(Kind.SPECIFIC_ENERGY, "W·h/kg", 3600, 1, "");

  /** Joule per cubic metre. */
  public static final NamedUnit<EnergyDensity> JOULE_PER_CUBIC_METRE =
      unit(Kind.ENERGY_DENSITY, "J/m³", 1, 1, "");

  /** Watt hour per litre. */
  public static final NamedUnit<EnergyDensity> WATT_HOUR_PER_LITRE =
      unit(Kind.ENERGY_DENSITY, "W·h/L", 3600000.0, 1, "");

  /** Ampere per square metre. */
  public static final NamedUnit<CurrentDensity> AMPERE_PER_SQUARE_METRE =
      unit(Kind.CURRENT_DENSITY, "A/m²", 1, 1, "");

  /** Ampere per square millimetre. */
  public static final NamedUnit<CurrentDensity> AMPERE_PER_SQUARE_MILLIMETRE =
      unit(Kind.CURRENT_DENSITY, "A/mm²", 1e6, 1, "");

  /** Kilogram per cubic metre. */
  public static final NamedUnit<Density> KILOGRAM_PER_CUBIC_METRE =
      unit(Kind.DENSITY, "kg/m³", 1, 1, "");

  /** Gram per cubic centimetre. */
  public static final NamedUnit<Density> GRAM_PER_CUBIC_CENTIMETRE =
      unit(Kind.DENSITY, "g/cm³", 1000, 1, "");

  /** Gram per metre, which is kilogram per kilometre. */
  public static final NamedUnit<MassPerLength> GRAM_PER_METRE =
      unit(Kind.MASS_PER_LENGTH, "g/m", 1, 1000, "", "kg/km");

  /** Kilogram per metre. */
  public static final NamedUnit<MassPerLength> KILOGRAM_PER_METRE =
      unit(Kind.MASS_PER_LENGTH, "kg/m", 1, 1, "");

  /** Kilogram square metre. */
  public static final NamedUnit<MomentOfInertia> KILOGRAM_SQUARE_METRE =
      unit(Kind.MOMENT_OF_INERTIA, "kg·m²", 1, 1, "");

  /** Newton per metre. */
  public static final NamedUnit<SpringRate> NEWTON_PER_METRE =
      unit(Kind.SPRING_RATE, "N/m", 1, 1, "");

  /** Pound-force per inch. */
  public static final NamedUnit<SpringRate> POUND_FORCE_PER_INCH =
      unit(Kind.SPRING_RATE, "lbf/in", 8896443230521.0, 50800000000.0, "", "lb/in");

  /** Newton per millimetre. */
  public static final NamedUnit<SpringRate> NEWTON_PER_MILLIMETRE =
      unit(Kind.SPRING_RATE, "N/mm", 1000, 1, "", "kN/m");

  /** Newton metre per radian. */
  public static final NamedUnit<RollStiffness> NEWTON_METRE_PER_RADIAN =
      unit(Kind.ROLL_STIFFNESS, "N·m/rad", 1, 1, "");

  /** Newton metre per degree. */
  public static final NamedUnit<RollStiffness> NEWTON_METRE_PER_DEGREE =
      unit(Kind.ROLL_STIFFNESS, "N·m/°", 180, Math.PI, "", "N·m/deg");

  /** Millivolt per kelvin. */
  public static final NamedUnit<EntropicCoefficient> MILLIVOLT_PER_KELVIN =
      unit(Kind.ENTROPIC_COEFFICIENT, "mV/K", 1, 1000, "");

  /** Volt per kelvin. */
  public static final NamedUnit<EntropicCoefficient> VOLT_PER_KELVIN =
      unit(Kind.ENTROPIC_COEFFICIENT, "V/K", 1, 1, "");

  /** Joule per mole. */
  public static final NamedUnit<MolarEnergy> JOULE_PER_MOLE =
      unit(Kind.MOLAR_ENERGY, "J/mol", 1, 1, "");

  /** Kilojoule per mole. */
  public static final NamedUnit<MolarEnergy> KILOJOULE_PER_MOLE =
      unit(Kind.MOLAR_ENERGY, "kJ/mol", 1000, 1, "");

  /** One per kelvin. */
  public static final NamedUnit<TemperatureCoefficient> PER_KELVIN =
      unit(Kind.TEMPERATURE_COEFFICIENT, "1/K", 1, 1, "");

  /** Per cent per kelvin. */
  public static final NamedUnit<TemperatureCoefficient> PERCENT_PER_KELVIN =
      unit(Kind.TEMPERATURE_COEFFICIENT, "%/K", 1, 100, "");

  /** Millipascal second. */
  public static final NamedUnit<DynamicViscosity> MILLIPASCAL_SECOND =
      unit(Kind.DYNAMIC_VISCOSITY, "mPa·s", 1, 1000, "");

  /** Pascal second. */
  public static final NamedUnit<DynamicViscosity> PASCAL_SECOND =
      unit(Kind.DYNAMIC_VISCOSITY, "Pa·s", 1, 1, "");

  /** Ohm per volt. */
  public static final NamedUnit<ResistancePerVoltage> OHM_PER_VOLT =
      unit(Kind.RESISTANCE_PER_VOLTAGE, "Ω/V", 1, 1, "");

  /** Newton second per metre. */
  public static final NamedUnit<ForcePerSpeed> NEWTON_SECOND_PER_METRE =
      unit(Kind.FORCE_PER_SPEED, "N·s/m", 1, 1, "", "N/(m/s)");

  /** Newton per kilometre per hour. */
  public static final NamedUnit<ForcePerSpeed> NEWTON_PER_KILOMETRE_PER_HOUR =
      unit(Kind.FORCE_PER_SPEED, "N/(km/h)", 18, 5, "");

  /** Newton second squared per square metre. */
  public static final NamedUnit<ForcePerSpeedSquared> NEWTON_SECOND_SQUARED_PER_SQUARE_METRE =
      unit(Kind.FORCE_PER_SPEED_SQUARED, "N·s²/m²", 1, 1, "", "N/(m/s)²");

  /** Newton per kilometre per hour squared. */
  public static final NamedUnit<ForcePerSpeedSquared> NEWTON_PER_KILOMETRE_PER_HOUR_SQUARED =
      unit(Kind.FORCE_PER_SPEED_SQUARED, "N/(km/h)²", 324, 25, "");

  /** Milliweber. */
  public static final NamedUnit<MagneticFlux> MILLIWEBER =
      unit(Kind.MAGNETIC_FLUX, "mWb", 1, 1000, "", "mV·s");

  /** Weber. */
  public static final NamedUnit<MagneticFlux> WEBER =
      unit(Kind.MAGNETIC_FLUX, "Wb", 1, 1, "", "V·s");

  /** Per cent. */
  public static final NamedUnit<Dimensionless> PERCENT = unit(Kind.DIMENSIONLESS, "%", 1, 100, "");

  /** One, a plain number. */
  public static final NamedUnit<Dimensionless> ONE = unit(Kind.DIMENSIONLESS, "1", 1, 1, "", "");

  private WorkshopUnits() {}

  /** A unit and the other spellings that the parser accepts for it. */
  record Named(NamedUnit<?> unit, List<String> otherSpellings) {
    /** The symbol and the other spellings. */
    List<String> allSpellings() {
      List<String> all = new ArrayList<>(otherSpellings);
      all.add(unit.symbol());
      return List.copyOf(all);
    }
  }

  /** Every unit above, in the order of the source. */
  static List<Named> defined() {
    return List.copyOf(DEFINED);
  }

  private static <Q extends Quantity<Q>> NamedUnit<Q> unit(
      Kind<Q> kind,
      String symbol,
      double numerator,
      double denominator,
      String family,
      String... alsoWritten) {
    return add(new NamedUnit<>(kind, symbol, numerator, denominator, family), alsoWritten);
  }

  private static <Q extends Quantity<Q>> NamedUnit<Q> shifted(
      Kind<Q> kind,
      String symbol,
      double numerator,
      double denominator,
      double zeroShift,
      String... alsoWritten) {
    return add(
        new NamedUnit<>(kind, symbol, numerator, denominator, zeroShift, "", null), alsoWritten);
  }

  private static <Q extends Quantity<Q>> NamedUnit<Q> add(
      NamedUnit<Q> unit, String... alsoWritten) {
    DEFINED.add(new Named(unit, List.of(alsoWritten)));
    return unit;
  }
}
