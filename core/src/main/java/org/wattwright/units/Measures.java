package org.wattwright.units;

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
 * Quantities from plain numbers, for static import: {@code volts(3.2)}, {@code ampereHours(105)},
 * {@code squareMillimetres(35)}.
 *
 * <p>Every factory rejects NaN and infinity with {@link InvalidInputException}. To read a quantity
 * as a number, use a unit of {@link WorkshopUnits}: {@code VOLT.valueOf(voltage)}. Temperatures are
 * absolute ({@link #celsius}); a rise is made with {@link #kelvinsOfRise}.
 */
public final class Measures {
  private Measures() {}

  /**
   * Microvolt.
   *
   * @param value the number in µV, finite
   * @return the voltage
   */
  public static Quantity<ElectricPotential> microvolts(double value) {
    return WorkshopUnits.MICROVOLT.of(value);
  }

  /**
   * Millivolt.
   *
   * @param value the number in mV, finite
   * @return the voltage
   */
  public static Quantity<ElectricPotential> millivolts(double value) {
    return WorkshopUnits.MILLIVOLT.of(value);
  }

  /**
   * Volt.
   *
   * @param value the number in V, finite
   * @return the voltage
   */
  public static Quantity<ElectricPotential> volts(double value) {
    return WorkshopUnits.VOLT.of(value);
  }

  /**
   * Kilovolt.
   *
   * @param value the number in kV, finite
   * @return the voltage
   */
  public static Quantity<ElectricPotential> kilovolts(double value) {
    return WorkshopUnits.KILOVOLT.of(value);
  }

  /**
   * Microampere.
   *
   * @param value the number in µA, finite
   * @return the current
   */
  public static Quantity<ElectricCurrent> microamperes(double value) {
    return WorkshopUnits.MICROAMPERE.of(value);
  }

  /**
   * Milliampere.
   *
   * @param value the number in mA, finite
   * @return the current
   */
  public static Quantity<ElectricCurrent> milliamperes(double value) {
    return WorkshopUnits.MILLIAMPERE.of(value);
  }

  /**
   * Ampere.
   *
   * @param value the number in A, finite
   * @return the current
   */
  public static Quantity<ElectricCurrent> amperes(double value) {
    return WorkshopUnits.AMPERE.of(value);
  }

  /**
   * Kiloampere.
   *
   * @param value the number in kA, finite
   * @return the current
   */
  public static Quantity<ElectricCurrent> kiloamperes(double value) {
    return WorkshopUnits.KILOAMPERE.of(value);
  }

  /**
   * Coulomb.
   *
   * @param value the number in C, finite
   * @return the charge
   */
  public static Quantity<ElectricCharge> coulombs(double value) {
    return WorkshopUnits.COULOMB.of(value);
  }

  /**
   * Milliampere hour, 3.6 C.
   *
   * @param value the number in mA·h, finite
   * @return the charge
   */
  public static Quantity<ElectricCharge> milliampereHours(double value) {
    return WorkshopUnits.MILLIAMPERE_HOUR.of(value);
  }

  /**
   * Ampere hour, 3600 C.
   *
   * @param value the number in A·h, finite
   * @return the charge
   */
  public static Quantity<ElectricCharge> ampereHours(double value) {
    return WorkshopUnits.AMPERE_HOUR.of(value);
  }

  /**
   * Joule.
   *
   * @param value the number in J, finite
   * @return the energy
   */
  public static Quantity<Energy> joules(double value) {
    return WorkshopUnits.JOULE.of(value);
  }

  /**
   * Kilojoule.
   *
   * @param value the number in kJ, finite
   * @return the energy
   */
  public static Quantity<Energy> kilojoules(double value) {
    return WorkshopUnits.KILOJOULE.of(value);
  }

  /**
   * Megajoule.
   *
   * @param value the number in MJ, finite
   * @return the energy
   */
  public static Quantity<Energy> megajoules(double value) {
    return WorkshopUnits.MEGAJOULE.of(value);
  }

  /**
   * Watt hour, 3600 J.
   *
   * @param value the number in W·h, finite
   * @return the energy
   */
  public static Quantity<Energy> wattHours(double value) {
    return WorkshopUnits.WATT_HOUR.of(value);
  }

  /**
   * Kilowatt hour, 3.6 MJ.
   *
   * @param value the number in kW·h, finite
   * @return the energy
   */
  public static Quantity<Energy> kilowattHours(double value) {
    return WorkshopUnits.KILOWATT_HOUR.of(value);
  }

  /**
   * Thermochemical kilocalorie, 4184 J.
   *
   * @param value the number in kcal, finite
   * @return the energy
   */
  public static Quantity<Energy> kilocalories(double value) {
    return WorkshopUnits.THERMOCHEMICAL_KILOCALORIE.of(value);
  }

  /**
   * British thermal unit (international table), 1055.05585262 J.
   *
   * @param value the number in Btu, finite
   * @return the energy
   */
  public static Quantity<Energy> britishThermalUnits(double value) {
    return WorkshopUnits.BRITISH_THERMAL_UNIT.of(value);
  }

  /**
   * Milliwatt.
   *
   * @param value the number in mW, finite
   * @return the power
   */
  public static Quantity<Power> milliwatts(double value) {
    return WorkshopUnits.MILLIWATT.of(value);
  }

  /**
   * Watt.
   *
   * @param value the number in W, finite
   * @return the power
   */
  public static Quantity<Power> watts(double value) {
    return WorkshopUnits.WATT.of(value);
  }

  /**
   * Kilowatt.
   *
   * @param value the number in kW, finite
   * @return the power
   */
  public static Quantity<Power> kilowatts(double value) {
    return WorkshopUnits.KILOWATT.of(value);
  }

  /**
   * Megawatt.
   *
   * @param value the number in MW, finite
   * @return the power
   */
  public static Quantity<Power> megawatts(double value) {
    return WorkshopUnits.MEGAWATT.of(value);
  }

  /**
   * Imperial (mechanical) horsepower, 550 ft·lbf/s.
   *
   * @param value the number in hp, finite
   * @return the power
   */
  public static Quantity<Power> imperialHorsepower(double value) {
    return WorkshopUnits.IMPERIAL_HORSEPOWER.of(value);
  }

  /**
   * Metric horsepower, 75 kgf·m/s = 735.49875 W.
   *
   * @param value the number in PS, finite
   * @return the power
   */
  public static Quantity<Power> metricHorsepower(double value) {
    return WorkshopUnits.METRIC_HORSEPOWER.of(value);
  }

  /**
   * Electric horsepower, 746 W.
   *
   * @param value the number in hp (electric), finite
   * @return the power
   */
  public static Quantity<Power> electricHorsepower(double value) {
    return WorkshopUnits.ELECTRIC_HORSEPOWER.of(value);
  }

  /**
   * British thermal unit per hour.
   *
   * @param value the number in Btu/h, finite
   * @return the power
   */
  public static Quantity<Power> britishThermalUnitsPerHour(double value) {
    return WorkshopUnits.BTU_PER_HOUR.of(value);
  }

  /**
   * Microohm.
   *
   * @param value the number in µΩ, finite
   * @return the resistance
   */
  public static Quantity<ElectricResistance> microohms(double value) {
    return WorkshopUnits.MICROOHM.of(value);
  }

  /**
   * Milliohm.
   *
   * @param value the number in mΩ, finite
   * @return the resistance
   */
  public static Quantity<ElectricResistance> milliohms(double value) {
    return WorkshopUnits.MILLIOHM.of(value);
  }

  /**
   * Ohm.
   *
   * @param value the number in Ω, finite
   * @return the resistance
   */
  public static Quantity<ElectricResistance> ohms(double value) {
    return WorkshopUnits.OHM.of(value);
  }

  /**
   * Kiloohm.
   *
   * @param value the number in kΩ, finite
   * @return the resistance
   */
  public static Quantity<ElectricResistance> kiloohms(double value) {
    return WorkshopUnits.KILOOHM.of(value);
  }

  /**
   * Megaohm.
   *
   * @param value the number in MΩ, finite
   * @return the resistance
   */
  public static Quantity<ElectricResistance> megaohms(double value) {
    return WorkshopUnits.MEGAOHM.of(value);
  }

  /**
   * Gigaohm.
   *
   * @param value the number in GΩ, finite
   * @return the resistance
   */
  public static Quantity<ElectricResistance> gigaohms(double value) {
    return WorkshopUnits.GIGAOHM.of(value);
  }

  /**
   * Siemens.
   *
   * @param value the number in S, finite
   * @return the conductance
   */
  public static Quantity<ElectricConductance> siemens(double value) {
    return WorkshopUnits.SIEMENS.of(value);
  }

  /**
   * Picofarad.
   *
   * @param value the number in pF, finite
   * @return the capacitance
   */
  public static Quantity<ElectricCapacitance> picofarads(double value) {
    return WorkshopUnits.PICOFARAD.of(value);
  }

  /**
   * Nanofarad.
   *
   * @param value the number in nF, finite
   * @return the capacitance
   */
  public static Quantity<ElectricCapacitance> nanofarads(double value) {
    return WorkshopUnits.NANOFARAD.of(value);
  }

  /**
   * Microfarad.
   *
   * @param value the number in µF, finite
   * @return the capacitance
   */
  public static Quantity<ElectricCapacitance> microfarads(double value) {
    return WorkshopUnits.MICROFARAD.of(value);
  }

  /**
   * Millifarad.
   *
   * @param value the number in mF, finite
   * @return the capacitance
   */
  public static Quantity<ElectricCapacitance> millifarads(double value) {
    return WorkshopUnits.MILLIFARAD.of(value);
  }

  /**
   * Farad.
   *
   * @param value the number in F, finite
   * @return the capacitance
   */
  public static Quantity<ElectricCapacitance> farads(double value) {
    return WorkshopUnits.FARAD.of(value);
  }

  /**
   * Nanohenry.
   *
   * @param value the number in nH, finite
   * @return the inductance
   */
  public static Quantity<ElectricInductance> nanohenries(double value) {
    return WorkshopUnits.NANOHENRY.of(value);
  }

  /**
   * Microhenry.
   *
   * @param value the number in µH, finite
   * @return the inductance
   */
  public static Quantity<ElectricInductance> microhenries(double value) {
    return WorkshopUnits.MICROHENRY.of(value);
  }

  /**
   * Millihenry.
   *
   * @param value the number in mH, finite
   * @return the inductance
   */
  public static Quantity<ElectricInductance> millihenries(double value) {
    return WorkshopUnits.MILLIHENRY.of(value);
  }

  /**
   * Henry.
   *
   * @param value the number in H, finite
   * @return the inductance
   */
  public static Quantity<ElectricInductance> henries(double value) {
    return WorkshopUnits.HENRY.of(value);
  }

  /**
   * Millimetre.
   *
   * @param value the number in mm, finite
   * @return the length
   */
  public static Quantity<Length> millimetres(double value) {
    return WorkshopUnits.MILLIMETRE.of(value);
  }

  /**
   * Centimetre.
   *
   * @param value the number in cm, finite
   * @return the length
   */
  public static Quantity<Length> centimetres(double value) {
    return WorkshopUnits.CENTIMETRE.of(value);
  }

  /**
   * International inch, 25.4 mm.
   *
   * @param value the number in in, finite
   * @return the length
   */
  public static Quantity<Length> inches(double value) {
    return WorkshopUnits.INCH.of(value);
  }

  /**
   * International foot, 0.3048 m.
   *
   * @param value the number in ft, finite
   * @return the length
   */
  public static Quantity<Length> feet(double value) {
    return WorkshopUnits.FOOT.of(value);
  }

  /**
   * Metre.
   *
   * @param value the number in m, finite
   * @return the length
   */
  public static Quantity<Length> metres(double value) {
    return WorkshopUnits.METRE.of(value);
  }

  /**
   * Kilometre.
   *
   * @param value the number in km, finite
   * @return the length
   */
  public static Quantity<Length> kilometres(double value) {
    return WorkshopUnits.KILOMETRE.of(value);
  }

  /**
   * International mile, 1609.344 m.
   *
   * @param value the number in mi, finite
   * @return the length
   */
  public static Quantity<Length> miles(double value) {
    return WorkshopUnits.MILE.of(value);
  }

  /**
   * Square millimetre.
   *
   * @param value the number in mm², finite
   * @return the area
   */
  public static Quantity<Area> squareMillimetres(double value) {
    return WorkshopUnits.SQUARE_MILLIMETRE.of(value);
  }

  /**
   * Square centimetre.
   *
   * @param value the number in cm², finite
   * @return the area
   */
  public static Quantity<Area> squareCentimetres(double value) {
    return WorkshopUnits.SQUARE_CENTIMETRE.of(value);
  }

  /**
   * Square inch, 645.16 mm².
   *
   * @param value the number in in², finite
   * @return the area
   */
  public static Quantity<Area> squareInches(double value) {
    return WorkshopUnits.SQUARE_INCH.of(value);
  }

  /**
   * Circular mil.
   *
   * @param value the number in cmil, finite
   * @return the area
   */
  public static Quantity<Area> circularMils(double value) {
    return WorkshopUnits.CIRCULAR_MIL.of(value);
  }

  /**
   * Thousand circular mils.
   *
   * @param value the number in kcmil, finite
   * @return the area
   */
  public static Quantity<Area> kilocircularMils(double value) {
    return WorkshopUnits.KILOCIRCULAR_MIL.of(value);
  }

  /**
   * Square metre.
   *
   * @param value the number in m², finite
   * @return the area
   */
  public static Quantity<Area> squareMetres(double value) {
    return WorkshopUnits.SQUARE_METRE.of(value);
  }

  /**
   * Cubic centimetre.
   *
   * @param value the number in cm³, finite
   * @return the volume
   */
  public static Quantity<Volume> cubicCentimetres(double value) {
    return WorkshopUnits.CUBIC_CENTIMETRE.of(value);
  }

  /**
   * Litre.
   *
   * @param value the number in L, finite
   * @return the volume
   */
  public static Quantity<Volume> litres(double value) {
    return WorkshopUnits.LITRE.of(value);
  }

  /**
   * United States liquid gallon, 3.785411784 L.
   *
   * @param value the number in gal (US), finite
   * @return the volume
   */
  public static Quantity<Volume> usGallons(double value) {
    return WorkshopUnits.US_GALLON.of(value);
  }

  /**
   * Imperial gallon, 4.54609 L.
   *
   * @param value the number in gal (UK), finite
   * @return the volume
   */
  public static Quantity<Volume> imperialGallons(double value) {
    return WorkshopUnits.IMPERIAL_GALLON.of(value);
  }

  /**
   * Cubic metre.
   *
   * @param value the number in m³, finite
   * @return the volume
   */
  public static Quantity<Volume> cubicMetres(double value) {
    return WorkshopUnits.CUBIC_METRE.of(value);
  }

  /**
   * Gram.
   *
   * @param value the number in g, finite
   * @return the mass
   */
  public static Quantity<Mass> grams(double value) {
    return WorkshopUnits.GRAM.of(value);
  }

  /**
   * Pound (avoirdupois), 0.45359237 kg.
   *
   * @param value the number in lb, finite
   * @return the mass
   */
  public static Quantity<Mass> pounds(double value) {
    return WorkshopUnits.POUND.of(value);
  }

  /**
   * Kilogram.
   *
   * @param value the number in kg, finite
   * @return the mass
   */
  public static Quantity<Mass> kilograms(double value) {
    return WorkshopUnits.KILOGRAM.of(value);
  }

  /**
   * Long hundredweight, 112 lb.
   *
   * @param value the number in cwt (UK), finite
   * @return the mass
   */
  public static Quantity<Mass> longHundredweights(double value) {
    return WorkshopUnits.LONG_HUNDREDWEIGHT.of(value);
  }

  /**
   * Long ton, 2240 lb.
   *
   * @param value the number in ton (UK), finite
   * @return the mass
   */
  public static Quantity<Mass> longTons(double value) {
    return WorkshopUnits.LONG_TON.of(value);
  }

  /**
   * Tonne, 1000 kg.
   *
   * @param value the number in t, finite
   * @return the mass
   */
  public static Quantity<Mass> tonnes(double value) {
    return WorkshopUnits.TONNE.of(value);
  }

  /**
   * Microsecond.
   *
   * @param value the number in µs, finite
   * @return the time
   */
  public static Quantity<Time> microseconds(double value) {
    return WorkshopUnits.MICROSECOND.of(value);
  }

  /**
   * Millisecond.
   *
   * @param value the number in ms, finite
   * @return the time
   */
  public static Quantity<Time> milliseconds(double value) {
    return WorkshopUnits.MILLISECOND.of(value);
  }

  /**
   * Second.
   *
   * @param value the number in s, finite
   * @return the time
   */
  public static Quantity<Time> seconds(double value) {
    return WorkshopUnits.SECOND.of(value);
  }

  /**
   * Minute.
   *
   * @param value the number in min, finite
   * @return the time
   */
  public static Quantity<Time> minutes(double value) {
    return WorkshopUnits.MINUTE.of(value);
  }

  /**
   * Hour.
   *
   * @param value the number in h, finite
   * @return the time
   */
  public static Quantity<Time> hours(double value) {
    return WorkshopUnits.HOUR.of(value);
  }

  /**
   * Day of 24 h.
   *
   * @param value the number in d, finite
   * @return the time
   */
  public static Quantity<Time> days(double value) {
    return WorkshopUnits.DAY.of(value);
  }

  /**
   * Kelvin, absolute temperature.
   *
   * @param value the number in K, finite
   * @return the temperature
   */
  public static Quantity<Temperature> kelvins(double value) {
    return WorkshopUnits.KELVIN.of(value);
  }

  /**
   * Degree Celsius, absolute temperature.
   *
   * @param value the number in °C, finite
   * @return the temperature
   */
  public static Quantity<Temperature> celsius(double value) {
    return WorkshopUnits.CELSIUS.of(value);
  }

  /**
   * Degree Fahrenheit, absolute temperature.
   *
   * @param value the number in °F, finite
   * @return the temperature
   */
  public static Quantity<Temperature> fahrenheit(double value) {
    return WorkshopUnits.FAHRENHEIT.of(value);
  }

  /**
   * Kelvin of difference: a rise, never an absolute temperature.
   *
   * @param value the number in K, finite
   * @return the temperature difference
   */
  public static Quantity<TemperatureDifference> kelvinsOfRise(double value) {
    return WorkshopUnits.KELVIN_OF_DIFFERENCE.of(value);
  }

  /**
   * Degree Fahrenheit of difference, 5/9 K.
   *
   * @param value the number in °F, finite
   * @return the temperature difference
   */
  public static Quantity<TemperatureDifference> fahrenheitOfRise(double value) {
    return WorkshopUnits.FAHRENHEIT_OF_DIFFERENCE.of(value);
  }

  /**
   * Newton.
   *
   * @param value the number in N, finite
   * @return the force
   */
  public static Quantity<Force> newtons(double value) {
    return WorkshopUnits.NEWTON.of(value);
  }

  /**
   * Kilonewton.
   *
   * @param value the number in kN, finite
   * @return the force
   */
  public static Quantity<Force> kilonewtons(double value) {
    return WorkshopUnits.KILONEWTON.of(value);
  }

  /**
   * Kilogram-force, 9.80665 N.
   *
   * @param value the number in kgf, finite
   * @return the force
   */
  public static Quantity<Force> kilogramsForce(double value) {
    return WorkshopUnits.KILOGRAM_FORCE.of(value);
  }

  /**
   * Pound-force, 4.4482216152605 N.
   *
   * @param value the number in lbf, finite
   * @return the force
   */
  public static Quantity<Force> poundsForce(double value) {
    return WorkshopUnits.POUND_FORCE.of(value);
  }

  /**
   * Newton metre.
   *
   * @param value the number in N·m, finite
   * @return the torque
   */
  public static Quantity<Torque> newtonMetres(double value) {
    return WorkshopUnits.NEWTON_METRE.of(value);
  }

  /**
   * Kilonewton metre.
   *
   * @param value the number in kN·m, finite
   * @return the torque
   */
  public static Quantity<Torque> kilonewtonMetres(double value) {
    return WorkshopUnits.KILONEWTON_METRE.of(value);
  }

  /**
   * Pound-force foot, 1.3558179483314 N·m.
   *
   * @param value the number in lbf·ft, finite
   * @return the torque
   */
  public static Quantity<Torque> poundForceFeet(double value) {
    return WorkshopUnits.POUND_FORCE_FOOT.of(value);
  }

  /**
   * Metre per second.
   *
   * @param value the number in m/s, finite
   * @return the speed
   */
  public static Quantity<Speed> metresPerSecond(double value) {
    return WorkshopUnits.METRE_PER_SECOND.of(value);
  }

  /**
   * Kilometre per hour.
   *
   * @param value the number in km/h, finite
   * @return the speed
   */
  public static Quantity<Speed> kilometresPerHour(double value) {
    return WorkshopUnits.KILOMETRE_PER_HOUR.of(value);
  }

  /**
   * Mile per hour, 0.44704 m/s.
   *
   * @param value the number in mi/h, finite
   * @return the speed
   */
  public static Quantity<Speed> milesPerHour(double value) {
    return WorkshopUnits.MILE_PER_HOUR.of(value);
  }

  /**
   * Radian per second.
   *
   * @param value the number in rad/s, finite
   * @return the rotational speed
   */
  public static Quantity<RotationalSpeed> radiansPerSecond(double value) {
    return WorkshopUnits.RADIAN_PER_SECOND.of(value);
  }

  /**
   * Revolution per minute, π/30 rad/s.
   *
   * @param value the number in 1/min, finite
   * @return the rotational speed
   */
  public static Quantity<RotationalSpeed> revolutionsPerMinute(double value) {
    return WorkshopUnits.REVOLUTION_PER_MINUTE.of(value);
  }

  /**
   * Metre per second squared.
   *
   * @param value the number in m/s², finite
   * @return the acceleration
   */
  public static Quantity<Acceleration> metresPerSecondSquared(double value) {
    return WorkshopUnits.METRE_PER_SECOND_SQUARED.of(value);
  }

  /**
   * Standard gravity, 9.80665 m/s².
   *
   * @param value the number in gn, finite
   * @return the acceleration
   */
  public static Quantity<Acceleration> standardGravities(double value) {
    return WorkshopUnits.STANDARD_GRAVITY.of(value);
  }

  /**
   * Pascal.
   *
   * @param value the number in Pa, finite
   * @return the pressure
   */
  public static Quantity<Pressure> pascals(double value) {
    return WorkshopUnits.PASCAL.of(value);
  }

  /**
   * Hectopascal, the millibar.
   *
   * @param value the number in hPa, finite
   * @return the pressure
   */
  public static Quantity<Pressure> hectopascals(double value) {
    return WorkshopUnits.HECTOPASCAL.of(value);
  }

  /**
   * Kilopascal.
   *
   * @param value the number in kPa, finite
   * @return the pressure
   */
  public static Quantity<Pressure> kilopascals(double value) {
    return WorkshopUnits.KILOPASCAL.of(value);
  }

  /**
   * Bar, 100 kPa.
   *
   * @param value the number in bar, finite
   * @return the pressure
   */
  public static Quantity<Pressure> bars(double value) {
    return WorkshopUnits.BAR.of(value);
  }

  /**
   * Pound-force per square inch, 6894.757 Pa.
   *
   * @param value the number in psi, finite
   * @return the pressure
   */
  public static Quantity<Pressure> poundsPerSquareInch(double value) {
    return WorkshopUnits.POUND_PER_SQUARE_INCH.of(value);
  }

  /**
   * Megapascal, N/mm².
   *
   * @param value the number in MPa, finite
   * @return the pressure
   */
  public static Quantity<Pressure> megapascals(double value) {
    return WorkshopUnits.MEGAPASCAL.of(value);
  }

  /**
   * Gigapascal.
   *
   * @param value the number in GPa, finite
   * @return the pressure
   */
  public static Quantity<Pressure> gigapascals(double value) {
    return WorkshopUnits.GIGAPASCAL.of(value);
  }

  /**
   * Hertz.
   *
   * @param value the number in Hz, finite
   * @return the frequency
   */
  public static Quantity<Frequency> hertz(double value) {
    return WorkshopUnits.HERTZ.of(value);
  }

  /**
   * Kilohertz.
   *
   * @param value the number in kHz, finite
   * @return the frequency
   */
  public static Quantity<Frequency> kilohertz(double value) {
    return WorkshopUnits.KILOHERTZ.of(value);
  }

  /**
   * Degree, π/180 rad.
   *
   * @param value the number in °, finite
   * @return the angle
   */
  public static Quantity<Angle> degrees(double value) {
    return WorkshopUnits.DEGREE.of(value);
  }

  /**
   * Radian.
   *
   * @param value the number in rad, finite
   * @return the angle
   */
  public static Quantity<Angle> radians(double value) {
    return WorkshopUnits.RADIAN.of(value);
  }

  /**
   * Litre per minute.
   *
   * @param value the number in L/min, finite
   * @return the volume flow
   */
  public static Quantity<VolumeFlow> litresPerMinute(double value) {
    return WorkshopUnits.LITRE_PER_MINUTE.of(value);
  }

  /**
   * Cubic metre per hour.
   *
   * @param value the number in m³/h, finite
   * @return the volume flow
   */
  public static Quantity<VolumeFlow> cubicMetresPerHour(double value) {
    return WorkshopUnits.CUBIC_METRE_PER_HOUR.of(value);
  }

  /**
   * Cubic metre per second.
   *
   * @param value the number in m³/s, finite
   * @return the volume flow
   */
  public static Quantity<VolumeFlow> cubicMetresPerSecond(double value) {
    return WorkshopUnits.CUBIC_METRE_PER_SECOND.of(value);
  }

  /**
   * Kilogram per second.
   *
   * @param value the number in kg/s, finite
   * @return the mass flow
   */
  public static Quantity<MassFlow> kilogramsPerSecond(double value) {
    return WorkshopUnits.KILOGRAM_PER_SECOND.of(value);
  }

  /**
   * Watt per metre and kelvin.
   *
   * @param value the number in W/(m·K), finite
   * @return the thermal conductivity
   */
  public static Quantity<ThermalConductivity> wattsPerMetreKelvin(double value) {
    return WorkshopUnits.WATT_PER_METRE_KELVIN.of(value);
  }

  /**
   * Watt per kelvin.
   *
   * @param value the number in W/K, finite
   * @return the thermal conductance
   */
  public static Quantity<ThermalConductance> wattsPerKelvin(double value) {
    return WorkshopUnits.WATT_PER_KELVIN.of(value);
  }

  /**
   * Kelvin per watt.
   *
   * @param value the number in K/W, finite
   * @return the thermal resistance
   */
  public static Quantity<ThermalResistance> kelvinsPerWatt(double value) {
    return WorkshopUnits.KELVIN_PER_WATT.of(value);
  }

  /**
   * Watt per square metre and kelvin.
   *
   * @param value the number in W/(m²·K), finite
   * @return the heat transfer coefficient
   */
  public static Quantity<HeatTransferCoefficient> wattsPerSquareMetreKelvin(double value) {
    return WorkshopUnits.WATT_PER_SQUARE_METRE_KELVIN.of(value);
  }

  /**
   * Joule per kilogram and kelvin.
   *
   * @param value the number in J/(kg·K), finite
   * @return the specific heat capacity
   */
  public static Quantity<SpecificHeatCapacity> joulesPerKilogramKelvin(double value) {
    return WorkshopUnits.JOULE_PER_KILOGRAM_KELVIN.of(value);
  }

  /**
   * Joule per kelvin.
   *
   * @param value the number in J/K, finite
   * @return the heat capacity
   */
  public static Quantity<HeatCapacity> joulesPerKelvin(double value) {
    return WorkshopUnits.JOULE_PER_KELVIN.of(value);
  }

  /**
   * Kilojoule per kelvin.
   *
   * @param value the number in kJ/K, finite
   * @return the heat capacity
   */
  public static Quantity<HeatCapacity> kilojoulesPerKelvin(double value) {
    return WorkshopUnits.KILOJOULE_PER_KELVIN.of(value);
  }

  /**
   * Ohm per kilometre, which is milliohm per metre.
   *
   * @param value the number in Ω/km, finite
   * @return the resistance per length
   */
  public static Quantity<ResistancePerLength> ohmsPerKilometre(double value) {
    return WorkshopUnits.OHM_PER_KILOMETRE.of(value);
  }

  /**
   * Ohm per thousand feet.
   *
   * @param value the number in Ω/kft, finite
   * @return the resistance per length
   */
  public static Quantity<ResistancePerLength> ohmsPerKilofoot(double value) {
    return WorkshopUnits.OHM_PER_KILOFOOT.of(value);
  }

  /**
   * Ohm per metre.
   *
   * @param value the number in Ω/m, finite
   * @return the resistance per length
   */
  public static Quantity<ResistancePerLength> ohmsPerMetre(double value) {
    return WorkshopUnits.OHM_PER_METRE.of(value);
  }

  /**
   * Microhenry per metre.
   *
   * @param value the number in µH/m, finite
   * @return the inductance per length
   */
  public static Quantity<InductancePerLength> microhenriesPerMetre(double value) {
    return WorkshopUnits.MICROHENRY_PER_METRE.of(value);
  }

  /**
   * Henry per metre.
   *
   * @param value the number in H/m, finite
   * @return the inductance per length
   */
  public static Quantity<InductancePerLength> henriesPerMetre(double value) {
    return WorkshopUnits.HENRY_PER_METRE.of(value);
  }

  /**
   * Joule per metre.
   *
   * @param value the number in J/m, finite
   * @return the energy per distance
   */
  public static Quantity<EnergyPerDistance> joulesPerMetre(double value) {
    return WorkshopUnits.JOULE_PER_METRE.of(value);
  }

  /**
   * Watt hour per kilometre, 3.6 J/m.
   *
   * @param value the number in W·h/km, finite
   * @return the energy per distance
   */
  public static Quantity<EnergyPerDistance> wattHoursPerKilometre(double value) {
    return WorkshopUnits.WATT_HOUR_PER_KILOMETRE.of(value);
  }

  /**
   * Watt hour per mile.
   *
   * @param value the number in W·h/mi, finite
   * @return the energy per distance
   */
  public static Quantity<EnergyPerDistance> wattHoursPerMile(double value) {
    return WorkshopUnits.WATT_HOUR_PER_MILE.of(value);
  }

  /**
   * Kilowatt hour per hundred kilometres, 36 J/m.
   *
   * @param value the number in kW·h/100 km, finite
   * @return the energy per distance
   */
  public static Quantity<EnergyPerDistance> kilowattHoursPer100Kilometres(double value) {
    return WorkshopUnits.KILOWATT_HOUR_PER_100_KILOMETRES.of(value);
  }

  /**
   * Metre per joule.
   *
   * @param value the number in m/J, finite
   * @return the distance per energy
   */
  public static Quantity<DistancePerEnergy> metresPerJoule(double value) {
    return WorkshopUnits.METRE_PER_JOULE.of(value);
  }

  /**
   * Kilometre per kilowatt hour.
   *
   * @param value the number in km/(kW·h), finite
   * @return the distance per energy
   */
  public static Quantity<DistancePerEnergy> kilometresPerKilowattHour(double value) {
    return WorkshopUnits.KILOMETRE_PER_KILOWATT_HOUR.of(value);
  }

  /**
   * Mile per kilowatt hour.
   *
   * @param value the number in mi/(kW·h), finite
   * @return the distance per energy
   */
  public static Quantity<DistancePerEnergy> milesPerKilowattHour(double value) {
    return WorkshopUnits.MILE_PER_KILOWATT_HOUR.of(value);
  }

  /**
   * Ampere squared second.
   *
   * @param value the number in A²·s, finite
   * @return the joule integral
   */
  public static Quantity<JouleIntegral> ampereSquaredSeconds(double value) {
    return WorkshopUnits.AMPERE_SQUARED_SECOND.of(value);
  }

  /**
   * Kiloampere squared second, 10⁶ A²·s.
   *
   * @param value the number in kA²·s, finite
   * @return the joule integral
   */
  public static Quantity<JouleIntegral> kiloampereSquaredSeconds(double value) {
    return WorkshopUnits.KILOAMPERE_SQUARED_SECOND.of(value);
  }

  /**
   * Joule per kilogram.
   *
   * @param value the number in J/kg, finite
   * @return the specific energy
   */
  public static Quantity<SpecificEnergy> joulesPerKilogram(double value) {
    return WorkshopUnits.JOULE_PER_KILOGRAM.of(value);
  }

  /**
   * Watt hour per kilogram.
   *
   * @param value the number in W·h/kg, finite
   * @return the specific energy
   */
  public static Quantity<SpecificEnergy> wattHoursPerKilogram(double value) {
    return WorkshopUnits.WATT_HOUR_PER_KILOGRAM.of(value);
  }

  /**
   * Joule per cubic metre.
   *
   * @param value the number in J/m³, finite
   * @return the energy density
   */
  public static Quantity<EnergyDensity> joulesPerCubicMetre(double value) {
    return WorkshopUnits.JOULE_PER_CUBIC_METRE.of(value);
  }

  /**
   * Watt hour per litre.
   *
   * @param value the number in W·h/L, finite
   * @return the energy density
   */
  public static Quantity<EnergyDensity> wattHoursPerLitre(double value) {
    return WorkshopUnits.WATT_HOUR_PER_LITRE.of(value);
  }

  /**
   * Ampere per square metre.
   *
   * @param value the number in A/m², finite
   * @return the current density
   */
  public static Quantity<CurrentDensity> amperesPerSquareMetre(double value) {
    return WorkshopUnits.AMPERE_PER_SQUARE_METRE.of(value);
  }

  /**
   * Ampere per square millimetre.
   *
   * @param value the number in A/mm², finite
   * @return the current density
   */
  public static Quantity<CurrentDensity> amperesPerSquareMillimetre(double value) {
    return WorkshopUnits.AMPERE_PER_SQUARE_MILLIMETRE.of(value);
  }

  /**
   * Kilogram per cubic metre.
   *
   * @param value the number in kg/m³, finite
   * @return the density
   */
  public static Quantity<Density> kilogramsPerCubicMetre(double value) {
    return WorkshopUnits.KILOGRAM_PER_CUBIC_METRE.of(value);
  }

  /**
   * Gram per cubic centimetre.
   *
   * @param value the number in g/cm³, finite
   * @return the density
   */
  public static Quantity<Density> gramsPerCubicCentimetre(double value) {
    return WorkshopUnits.GRAM_PER_CUBIC_CENTIMETRE.of(value);
  }

  /**
   * Gram per metre, which is kilogram per kilometre.
   *
   * @param value the number in g/m, finite
   * @return the mass per length
   */
  public static Quantity<MassPerLength> gramsPerMetre(double value) {
    return WorkshopUnits.GRAM_PER_METRE.of(value);
  }

  /**
   * Kilogram per metre.
   *
   * @param value the number in kg/m, finite
   * @return the mass per length
   */
  public static Quantity<MassPerLength> kilogramsPerMetre(double value) {
    return WorkshopUnits.KILOGRAM_PER_METRE.of(value);
  }

  /**
   * Kilogram square metre.
   *
   * @param value the number in kg·m², finite
   * @return the moment of inertia
   */
  public static Quantity<MomentOfInertia> kilogramSquareMetres(double value) {
    return WorkshopUnits.KILOGRAM_SQUARE_METRE.of(value);
  }

  /**
   * Newton per metre.
   *
   * @param value the number in N/m, finite
   * @return the spring rate
   */
  public static Quantity<SpringRate> newtonsPerMetre(double value) {
    return WorkshopUnits.NEWTON_PER_METRE.of(value);
  }

  /**
   * Pound-force per inch.
   *
   * @param value the number in lbf/in, finite
   * @return the spring rate
   */
  public static Quantity<SpringRate> poundsForcePerInch(double value) {
    return WorkshopUnits.POUND_FORCE_PER_INCH.of(value);
  }

  /**
   * Newton per millimetre.
   *
   * @param value the number in N/mm, finite
   * @return the spring rate
   */
  public static Quantity<SpringRate> newtonsPerMillimetre(double value) {
    return WorkshopUnits.NEWTON_PER_MILLIMETRE.of(value);
  }

  /**
   * Newton metre per radian.
   *
   * @param value the number in N·m/rad, finite
   * @return the roll stiffness
   */
  public static Quantity<RollStiffness> newtonMetresPerRadian(double value) {
    return WorkshopUnits.NEWTON_METRE_PER_RADIAN.of(value);
  }

  /**
   * Newton metre per degree.
   *
   * @param value the number in N·m/°, finite
   * @return the roll stiffness
   */
  public static Quantity<RollStiffness> newtonMetresPerDegree(double value) {
    return WorkshopUnits.NEWTON_METRE_PER_DEGREE.of(value);
  }

  /**
   * Millivolt per kelvin.
   *
   * @param value the number in mV/K, finite
   * @return the entropic coefficient
   */
  public static Quantity<EntropicCoefficient> millivoltsPerKelvin(double value) {
    return WorkshopUnits.MILLIVOLT_PER_KELVIN.of(value);
  }

  /**
   * Volt per kelvin.
   *
   * @param value the number in V/K, finite
   * @return the entropic coefficient
   */
  public static Quantity<EntropicCoefficient> voltsPerKelvin(double value) {
    return WorkshopUnits.VOLT_PER_KELVIN.of(value);
  }

  /**
   * Joule per mole.
   *
   * @param value the number in J/mol, finite
   * @return the molar energy
   */
  public static Quantity<MolarEnergy> joulesPerMole(double value) {
    return WorkshopUnits.JOULE_PER_MOLE.of(value);
  }

  /**
   * Kilojoule per mole.
   *
   * @param value the number in kJ/mol, finite
   * @return the molar energy
   */
  public static Quantity<MolarEnergy> kilojoulesPerMole(double value) {
    return WorkshopUnits.KILOJOULE_PER_MOLE.of(value);
  }

  /**
   * One per kelvin.
   *
   * @param value the number in 1/K, finite
   * @return the temperature coefficient
   */
  public static Quantity<TemperatureCoefficient> perKelvin(double value) {
    return WorkshopUnits.PER_KELVIN.of(value);
  }

  /**
   * Per cent per kelvin.
   *
   * @param value the number in %/K, finite
   * @return the temperature coefficient
   */
  public static Quantity<TemperatureCoefficient> percentPerKelvin(double value) {
    return WorkshopUnits.PERCENT_PER_KELVIN.of(value);
  }

  /**
   * Millipascal second.
   *
   * @param value the number in mPa·s, finite
   * @return the dynamic viscosity
   */
  public static Quantity<DynamicViscosity> millipascalSeconds(double value) {
    return WorkshopUnits.MILLIPASCAL_SECOND.of(value);
  }

  /**
   * Pascal second.
   *
   * @param value the number in Pa·s, finite
   * @return the dynamic viscosity
   */
  public static Quantity<DynamicViscosity> pascalSeconds(double value) {
    return WorkshopUnits.PASCAL_SECOND.of(value);
  }

  /**
   * Ohm per volt.
   *
   * @param value the number in Ω/V, finite
   * @return the resistance per voltage
   */
  public static Quantity<ResistancePerVoltage> ohmsPerVolt(double value) {
    return WorkshopUnits.OHM_PER_VOLT.of(value);
  }

  /**
   * Newton second per metre.
   *
   * @param value the number in N·s/m, finite
   * @return the force per speed
   */
  public static Quantity<ForcePerSpeed> newtonSecondsPerMetre(double value) {
    return WorkshopUnits.NEWTON_SECOND_PER_METRE.of(value);
  }

  /**
   * Newton per kilometre per hour.
   *
   * @param value the number in N/(km/h), finite
   * @return the force per speed
   */
  public static Quantity<ForcePerSpeed> newtonsPerKilometrePerHour(double value) {
    return WorkshopUnits.NEWTON_PER_KILOMETRE_PER_HOUR.of(value);
  }

  /**
   * Newton second squared per square metre.
   *
   * @param value the number in N·s²/m², finite
   * @return the force per speed squared
   */
  public static Quantity<ForcePerSpeedSquared> newtonSecondsSquaredPerSquareMetre(double value) {
    return WorkshopUnits.NEWTON_SECOND_SQUARED_PER_SQUARE_METRE.of(value);
  }

  /**
   * Newton per kilometre per hour squared.
   *
   * @param value the number in N/(km/h)², finite
   * @return the force per speed squared
   */
  public static Quantity<ForcePerSpeedSquared> newtonsPerKilometrePerHourSquared(double value) {
    return WorkshopUnits.NEWTON_PER_KILOMETRE_PER_HOUR_SQUARED.of(value);
  }

  /**
   * Milliweber.
   *
   * @param value the number in mWb, finite
   * @return the magnetic flux
   */
  public static Quantity<MagneticFlux> milliwebers(double value) {
    return WorkshopUnits.MILLIWEBER.of(value);
  }

  /**
   * Weber.
   *
   * @param value the number in Wb, finite
   * @return the magnetic flux
   */
  public static Quantity<MagneticFlux> webers(double value) {
    return WorkshopUnits.WEBER.of(value);
  }

  /**
   * Per cent.
   *
   * @param value the number in %, finite
   * @return the dimensionless
   */
  public static Quantity<Dimensionless> percent(double value) {
    return WorkshopUnits.PERCENT.of(value);
  }

  /**
   * One, a plain number.
   *
   * @param value the number in 1, finite
   * @return the dimensionless
   */
  public static Quantity<Dimensionless> number(double value) {
    return WorkshopUnits.ONE.of(value);
  }

  /**
   * Cross-section of a wire by its American Wire Gauge number, to ASTM B258.
   *
   * <p>d = 0.127 mm · 92^((36 − n)/39), A = π·d²/4. The gauges above 1 are 1/0 = 0, 2/0 = −1, 3/0 =
   * −2, 4/0 = −3.
   *
   * <p>Source: ASTM B258.
   *
   * @param gauge gauge number, −3 (4/0) to 40
   * @return area in mm²
   * @throws InvalidInputException if the gauge is outside its range
   */
  public static Quantity<Area> awg(int gauge) {
    return AmericanWireGauge.area(gauge);
  }

  /**
   * State of charge from per cent.
   *
   * @param percent 0 to 100
   * @return the state of charge
   * @throws InvalidInputException if outside 0 … 100
   */
  public static StateOfCharge percentCharge(double percent) {
    return StateOfCharge.ofPercent(percent);
  }

  /**
   * Difference of two absolute temperatures.
   *
   * @param upper minuend
   * @param lower subtrahend
   * @return upper − lower in K, negative if upper is the colder
   */
  public static Quantity<TemperatureDifference> difference(
      Quantity<Temperature> upper, Quantity<Temperature> lower) {
    return Kind.TEMPERATURE_DIFFERENCE.ofSi(
        Kind.TEMPERATURE.siValueOf(upper) - Kind.TEMPERATURE.siValueOf(lower));
  }

  /**
   * An absolute temperature raised by a difference.
   *
   * @param temperature absolute
   * @param rise difference, may be negative
   * @return the new absolute temperature in °C
   * @throws InvalidInputException if the result lies below absolute zero
   */
  public static Quantity<Temperature> raised(
      Quantity<Temperature> temperature, Quantity<TemperatureDifference> rise) {
    return Kind.TEMPERATURE.ofSi(
        Kind.TEMPERATURE.siValueOf(temperature) + Kind.TEMPERATURE_DIFFERENCE.siValueOf(rise));
  }

  /**
   * Consumption from distance per energy, its reciprocal: 4 mi/(kW·h) are 155.3 W·h/km.
   *
   * @param economy distance per energy, positive
   * @return energy per distance in W·h/km
   * @throws InvalidInputException if it is not positive
   */
  public static Quantity<EnergyPerDistance> consumption(Quantity<DistancePerEnergy> economy) {
    double economyMPerJ = Kind.DISTANCE_PER_ENERGY.siValueOf(economy);
    if (!(economyMPerJ > 0)) {
      throw InvalidInputException.of("economy", "> 0 km/(kW·h)", economy.toString());
    }
    return Kind.ENERGY_PER_DISTANCE.ofSi(1 / economyMPerJ);
  }

  /**
   * Distance per energy from consumption, its reciprocal. The mean of one is not the mean of the
   * other: average the consumptions.
   *
   * @param consumption energy per distance, positive
   * @return distance per energy in km/(kW·h)
   * @throws InvalidInputException if it is not positive
   */
  public static Quantity<DistancePerEnergy> economy(Quantity<EnergyPerDistance> consumption) {
    double consumptionJPerM = Kind.ENERGY_PER_DISTANCE.siValueOf(consumption);
    if (!(consumptionJPerM > 0)) {
      throw InvalidInputException.of("consumption", "> 0 W·h/km", consumption.toString());
    }
    return Kind.DISTANCE_PER_ENERGY.ofSi(1 / consumptionJPerM);
  }

  /**
   * Measured equality of two temperatures.
   *
   * @param first absolute
   * @param second absolute
   * @param tolerance largest difference, ≥ 0 K
   * @return whether both agree within the tolerance
   * @throws InvalidInputException if the tolerance is negative
   */
  public static boolean isClose(
      Quantity<Temperature> first,
      Quantity<Temperature> second,
      Quantity<TemperatureDifference> tolerance) {
    double toleranceK = Kind.TEMPERATURE_DIFFERENCE.siValueOf(tolerance);
    if (!(toleranceK >= 0)) {
      throw InvalidInputException.of("tolerance", "≥ 0 K", tolerance.toString());
    }
    return Math.abs(Kind.TEMPERATURE.siValueOf(first) - Kind.TEMPERATURE.siValueOf(second))
        <= toleranceK;
  }

  /**
   * Reads a text such as {@code 35 mm²}, {@code 105 Ah} or {@code 12 mOhm}.
   *
   * @param <Q> the JSR 385 quantity type
   * @param text number with a decimal point, optional space, unit
   * @param kind what the text must be a quantity of
   * @return the quantity, in the unit as written
   * @throws InvalidInputException if the text is not a number with a unit of that kind; the message
   *     names the text and the position
   */
  public static <Q extends Quantity<Q>> Quantity<Q> parse(String text, Kind<Q> kind) {
    return kind.parse(text);
  }

  /**
   * A text for people: four significant digits, the prefix stepped so that the number is handy.
   *
   * <p>{@code ohms(0.0123)} gives {@code 12.3 mΩ}. Digits before the point are never dropped.
   *
   * @param <Q> the JSR 385 quantity type
   * @param quantity any quantity of the kind
   * @param kind its kind
   * @return number, space, symbol; no locale
   */
  public static <Q extends Quantity<Q>> String format(Quantity<Q> quantity, Kind<Q> kind) {
    return MeasureFormat.sensible(Measure.from(quantity, kind));
  }

  /**
   * A text with a fixed number of decimals in a stated unit.
   *
   * @param <Q> the JSR 385 quantity type
   * @param quantity any quantity of the unit's kind
   * @param unit the unit to show
   * @param decimals digits after the point, 0 to 15
   * @return number, space, symbol; no locale
   * @throws InvalidInputException if decimals is outside its range
   */
  public static <Q extends Quantity<Q>> String format(
      Quantity<Q> quantity, NamedUnit<Q> unit, int decimals) {
    return MeasureFormat.fixed(unit.valueOf(quantity), unit, decimals);
  }
}
