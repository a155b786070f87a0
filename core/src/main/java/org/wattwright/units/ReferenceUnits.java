package org.wattwright.units;

import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import javax.measure.MetricPrefix;
import javax.measure.Prefix;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.jspecify.annotations.Nullable;
import tech.units.indriya.unit.Units;

/** Our fixed table of units in terms of the reference implementation, built once. */
final class ReferenceUnits {
  private static final Map<NamedUnit<?>, Unit<?>> TO_REFERENCE = new HashMap<>();
  private static final Map<Kind<?>, Map<Unit<?>, NamedUnit<?>>> FROM_REFERENCE = new HashMap<>();

  static {
    Map<Kind<?>, Unit<?>> coherent = coherentUnits();
    for (WorkshopUnits.Named named : WorkshopUnits.defined()) {
      NamedUnit<?> ours = named.unit();
      Unit<?> si = Objects.requireNonNull(coherent.get(ours.kind()), ours.kind().name());
      Unit<?> theirs = reference(ours, si);
      TO_REFERENCE.put(ours, theirs);
      FROM_REFERENCE.computeIfAbsent(ours.kind(), k -> new HashMap<>()).put(theirs, ours);
    }
  }

  private ReferenceUnits() {}

  @SuppressWarnings("unchecked") // the map pairs units of one kind
  static <Q extends Quantity<Q>> Unit<Q> unitOf(NamedUnit<Q> unit) {
    Unit<?> known = TO_REFERENCE.get(unit);
    return (Unit<Q>) Objects.requireNonNull(known, unit.symbol());
  }

  @SuppressWarnings("unchecked") // the map pairs units of one kind
  static <Q extends Quantity<Q>> @Nullable NamedUnit<Q> find(Unit<Q> unit, Kind<Q> kind) {
    Map<Unit<?>, NamedUnit<?>> units = FROM_REFERENCE.get(kind);
    return units == null ? null : (NamedUnit<Q>) units.get(unit);
  }

  private static Unit<?> reference(NamedUnit<?> ours, Unit<?> si) {
    Unit<?> standard = standardUnit(ours);
    if (standard != null) {
      return standard;
    }
    Unit<?> scaled = si;
    Prefix prefix = prefixOf(ours);
    if (prefix != null) {
      scaled = si.prefix(prefix);
    } else {
      scaled = ours.numerator() == 1 ? scaled : scaled.multiply(ours.numerator());
      scaled = ours.denominator() == 1 ? scaled : scaled.divide(ours.denominator());
    }
    return ours.zeroShift() == 0 ? scaled : scaled.shift(ours.zeroShift());
  }

  /** Units that the reference implementation names itself, so that its texts read well. */
  private static @Nullable Unit<?> standardUnit(NamedUnit<?> ours) {
    if (ours.equals(WorkshopUnits.CELSIUS)) {
      return Units.CELSIUS;
    } else if (ours.equals(WorkshopUnits.GRAM)) {
      return Units.GRAM;
    } else if (ours.equals(WorkshopUnits.MINUTE)) {
      return Units.MINUTE;
    } else if (ours.equals(WorkshopUnits.HOUR)) {
      return Units.HOUR;
    } else if (ours.equals(WorkshopUnits.DAY)) {
      return Units.DAY;
    } else if (ours.equals(WorkshopUnits.LITRE)) {
      return Units.LITRE;
    } else if (ours.equals(WorkshopUnits.KILOMETRE_PER_HOUR)) {
      return Units.KILOMETRE_PER_HOUR;
    } else if (ours.equals(WorkshopUnits.PERCENT)) {
      return Units.PERCENT;
    }
    return null;
  }

  /** The metric prefix of a unit such as mV, if its symbol is a prefix before the SI symbol. */
  private static @Nullable Prefix prefixOf(NamedUnit<?> ours) {
    String siSymbol = ours.kind().siSymbol();
    for (MetricPrefix prefix : MetricPrefix.values()) {
      // The size is compared too: mm² is not a milli-square-metre.
      double size = Math.pow(10, prefix.getExponent());
      boolean sameSize = Math.abs(ours.toSi(1) / size - 1) < 1e-12;
      if (sameSize && ours.symbol().equals(prefix.getSymbol() + siSymbol)) {
        return prefix;
      }
    }
    return null;
  }

  private static Map<Kind<?>, Unit<?>> coherentUnits() {
    Map<Kind<?>, Unit<?>> units = new HashMap<>();
    putNamed(units);
    putMechanical(units);
    putElectrical(units);
    putThermal(units);
    return units;
  }

  private static void putNamed(Map<Kind<?>, Unit<?>> units) {
    units.put(Kind.ACCELERATION, Units.METRE_PER_SQUARE_SECOND);
    units.put(Kind.ANGLE, Units.RADIAN);
    units.put(Kind.AREA, Units.SQUARE_METRE);
    units.put(Kind.CAPACITANCE, Units.FARAD);
    units.put(Kind.CHARGE, Units.COULOMB);
    units.put(Kind.CONDUCTANCE, Units.SIEMENS);
    units.put(Kind.CURRENT, Units.AMPERE);
    units.put(Kind.DIMENSIONLESS, Units.PERCENT.getSystemUnit());
    units.put(Kind.ENERGY, Units.JOULE);
    units.put(Kind.FORCE, Units.NEWTON);
    units.put(Kind.FREQUENCY, Units.HERTZ);
    units.put(Kind.INDUCTANCE, Units.HENRY);
    units.put(Kind.LENGTH, Units.METRE);
    units.put(Kind.MAGNETIC_FLUX, Units.WEBER);
    units.put(Kind.MASS, Units.KILOGRAM);
    units.put(Kind.POWER, Units.WATT);
    units.put(Kind.PRESSURE, Units.PASCAL);
    units.put(Kind.RESISTANCE, Units.OHM);
    units.put(Kind.SPEED, Units.METRE_PER_SECOND);
    units.put(Kind.TEMPERATURE, Units.KELVIN);
    units.put(Kind.TEMPERATURE_DIFFERENCE, Units.KELVIN);
    units.put(Kind.TIME, Units.SECOND);
    units.put(Kind.VOLTAGE, Units.VOLT);
    units.put(Kind.VOLUME, Units.CUBIC_METRE);
  }

  private static void putMechanical(Map<Kind<?>, Unit<?>> units) {
    Unit<?> newtonSecondPerMetre = Units.NEWTON.multiply(Units.SECOND).divide(Units.METRE);
    units.put(Kind.DENSITY, Units.KILOGRAM.divide(Units.CUBIC_METRE));
    units.put(Kind.DYNAMIC_VISCOSITY, Units.PASCAL.multiply(Units.SECOND));
    units.put(Kind.FORCE_PER_SPEED, newtonSecondPerMetre);
    units.put(
        Kind.FORCE_PER_SPEED_SQUARED,
        newtonSecondPerMetre.multiply(Units.SECOND).divide(Units.METRE));
    units.put(Kind.MASS_FLOW, Units.KILOGRAM.divide(Units.SECOND));
    units.put(Kind.MASS_PER_LENGTH, Units.KILOGRAM.divide(Units.METRE));
    units.put(Kind.MOMENT_OF_INERTIA, Units.KILOGRAM.multiply(Units.SQUARE_METRE));
    units.put(Kind.ROLL_STIFFNESS, Units.NEWTON.multiply(Units.METRE).divide(Units.RADIAN));
    units.put(Kind.ROTATIONAL_SPEED, Units.RADIAN.divide(Units.SECOND));
    units.put(Kind.SPRING_RATE, Units.NEWTON.divide(Units.METRE));
    units.put(Kind.TORQUE, Units.NEWTON.multiply(Units.METRE));
    units.put(Kind.VOLUME_FLOW, Units.CUBIC_METRE.divide(Units.SECOND));
  }

  private static void putElectrical(Map<Kind<?>, Unit<?>> units) {
    units.put(Kind.CURRENT_DENSITY, Units.AMPERE.divide(Units.SQUARE_METRE));
    units.put(Kind.DISTANCE_PER_ENERGY, Units.METRE.divide(Units.JOULE));
    units.put(Kind.ENERGY_DENSITY, Units.JOULE.divide(Units.CUBIC_METRE));
    units.put(Kind.ENERGY_PER_DISTANCE, Units.JOULE.divide(Units.METRE));
    units.put(Kind.INDUCTANCE_PER_LENGTH, Units.HENRY.divide(Units.METRE));
    units.put(Kind.JOULE_INTEGRAL, Units.AMPERE.multiply(Units.AMPERE).multiply(Units.SECOND));
    units.put(Kind.RESISTANCE_PER_LENGTH, Units.OHM.divide(Units.METRE));
    units.put(Kind.RESISTANCE_PER_VOLTAGE, Units.OHM.divide(Units.VOLT));
    units.put(Kind.SPECIFIC_ENERGY, Units.JOULE.divide(Units.KILOGRAM));
  }

  private static void putThermal(Map<Kind<?>, Unit<?>> units) {
    units.put(Kind.ENTROPIC_COEFFICIENT, Units.VOLT.divide(Units.KELVIN));
    units.put(Kind.HEAT_CAPACITY, Units.JOULE.divide(Units.KELVIN));
    units.put(
        Kind.HEAT_TRANSFER_COEFFICIENT, Units.WATT.divide(Units.SQUARE_METRE).divide(Units.KELVIN));
    units.put(Kind.MOLAR_ENERGY, Units.JOULE.divide(Units.MOLE));
    units.put(Kind.SPECIFIC_HEAT_CAPACITY, Units.JOULE.divide(Units.KILOGRAM).divide(Units.KELVIN));
    units.put(Kind.TEMPERATURE_COEFFICIENT, Units.KELVIN.inverse());
    units.put(Kind.THERMAL_CONDUCTANCE, Units.WATT.divide(Units.KELVIN));
    units.put(Kind.THERMAL_CONDUCTIVITY, Units.WATT.divide(Units.METRE).divide(Units.KELVIN));
    units.put(Kind.THERMAL_RESISTANCE, Units.KELVIN.divide(Units.WATT));
  }
}
