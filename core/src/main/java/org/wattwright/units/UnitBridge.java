package org.wattwright.units;

import java.util.Map;
import javax.measure.Dimension;
import javax.measure.IncommensurableException;
import javax.measure.Quantity;
import javax.measure.UnconvertibleException;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import javax.measure.quantity.Frequency;
import tech.units.indriya.unit.Units;

/**
 * Between our units and those of other JSR 385 implementations. Loaded only when the first foreign
 * unit is met or asked for, so that plain use never pays for loading the reference implementation.
 */
final class UnitBridge {
  /** A foreign converter is taken as affine if a third point agrees to this relative difference. */
  private static final double AFFINE_TOLERANCE = 1e-12;

  private UnitBridge() {}

  static <Q extends Quantity<Q>> Unit<Q> unitOf(NamedUnit<Q> unit) {
    return ReferenceUnits.unitOf(unit);
  }

  /** Our unit for a foreign one: from the table if it is there, else derived on the spot. */
  static <Q extends Quantity<Q>> NamedUnit<Q> namedUnit(Unit<Q> unit, Kind<Q> kind) {
    NamedUnit<Q> known = ReferenceUnits.find(unit, kind);
    return known != null ? known : derived(unit, kind);
  }

  /** A foreign quantity as one of ours, in the unit it has if we name that, else customary. */
  static <Q extends Quantity<Q>> Measure<Q> read(Quantity<Q> quantity, Kind<Q> kind) {
    rejectWrongScale(quantity, kind);
    double value = quantity.getValue().doubleValue();
    NamedUnit<Q> unit = namedUnit(quantity.getUnit(), kind);
    Measure<Q> measure = Measure.of(value, unit);
    return unit.isForeign() ? Measure.ofSi(measure.siValue(), kind) : measure;
  }

  /** A foreign quantity of a kind not known beforehand, for products and quotients. */
  static Measure<?> readAny(Quantity<?> quantity) {
    Unit<?> unit = quantity.getUnit();
    boolean relative = quantity.getScale() == Quantity.Scale.RELATIVE;
    if (!relative && unit.isCompatible(Kind.TEMPERATURE.siUnit().toUnit())) {
      throw new ArithmeticException(
          "an absolute temperature cannot be multiplied or divided: " + quantity);
    }
    double[] affine = affine(unit, unit.getSystemUnit(), "quantity");
    double atZero = relative ? 0 : affine[0];
    double siValue = quantity.getValue().doubleValue() * affine[1] + atZero;
    return unnamed(siValue, unit.getSystemUnit());
  }

  /** A quantity of a kind without a name. */
  // The interface that Q stands for does not exist; Frequency is only a carrier for the compiler.
  @SuppressWarnings("unchecked")
  static Measure<?> unnamed(double siValue, Unit<?> siUnit) {
    Kind<Frequency> kind = Kind.unnamed((Unit<Frequency>) siUnit);
    return Measure.of(siValue, kind.siUnit());
  }

  static boolean sameDimension(Kind<?> first, Kind<?> second) {
    return dimensionOf(first).equals(dimensionOf(second));
  }

  private static Dimension dimensionOf(Kind<?> kind) {
    return kind.siUnit().toUnit().getDimension();
  }

  private static <Q extends Quantity<Q>> NamedUnit<Q> derived(Unit<Q> unit, Kind<Q> kind) {
    rejectUnknownTurns(unit, kind);
    double[] affine = affine(unit, kind.siUnit().toUnit(), kind.name());
    double scale = affine[1];
    // A difference knows no zero point: 5 °C of rise are 5 K.
    double shift = kind == Kind.TEMPERATURE_DIFFERENCE ? 0 : affine[0] / scale;
    return new NamedUnit<>(kind, unit.toString(), scale, 1, shift, "", unit);
  }

  /** Value at zero, and what one more adds to it. */
  private static double[] affine(Unit<?> from, Unit<?> to, String field) {
    UnitConverter converter = converter(from, to, field);
    try {
      double atZero = converter.convert(0.0);
      double scale = converter.convert(1.0) - atZero;
      double atThousand = converter.convert(1000.0);
      double expected = scale * 1000 + atZero;
      if (Math.abs(atThousand - expected) <= AFFINE_TOLERANCE * Math.abs(expected)) {
        return new double[] {atZero, scale};
      }
    } catch (ArithmeticException | NumberFormatException e) {
      // The reference implementation throws so where a logarithm is infinite.
    }
    throw InvalidInputException.of(field, "in a linear unit", from.toString());
  }

  private static UnitConverter converter(Unit<?> from, Unit<?> to, String field) {
    try {
      return from.getConverterToAny(to);
    } catch (IncommensurableException | UnconvertibleException e) {
      throw InvalidInputException.of(field, "in a unit convertible to " + to, from.toString());
    }
  }

  private static void rejectWrongScale(Quantity<?> quantity, Kind<?> kind) {
    boolean relative = quantity.getScale() == Quantity.Scale.RELATIVE;
    if (relative && kind == Kind.TEMPERATURE) {
      throw wrongScale(quantity, kind, "an absolute temperature", "a relative scale");
    }
    if (relative || kind != Kind.TEMPERATURE_DIFFERENCE) {
      return;
    }
    // Kelvins without a stated scale may be a difference; degrees may not.
    double[] affine = affine(quantity.getUnit(), kind.siUnit().toUnit(), kind.name());
    if (affine[0] != 0) {
      throw wrongScale(quantity, kind, "a difference in K", "an absolute scale");
    }
  }

  /** JSR 385 takes the radian for 1, so that 1/min might mean a radian or a revolution. */
  private static void rejectUnknownTurns(Unit<?> unit, Kind<?> kind) {
    Map<? extends Unit<?>, Integer> bases = unit.getSystemUnit().getBaseUnits();
    if (kind == Kind.ROTATIONAL_SPEED && (bases == null || !bases.containsKey(Units.RADIAN))) {
      throw InvalidInputException.of(
              kind.name(), "in rad/s or in a unit made of it", unit.toString())
          .withHint("for revolutions use REVOLUTION_PER_MINUTE.toUnit()");
    }
  }

  private static InvalidInputException wrongScale(
      Quantity<?> quantity, Kind<?> kind, String bound, String scale) {
    return InvalidInputException.of(kind.name(), bound, quantity + " on " + scale);
  }
}
