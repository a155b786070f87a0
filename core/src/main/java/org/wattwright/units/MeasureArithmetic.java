package org.wattwright.units;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;

/** The arithmetic of JSR 385 for {@link Measure}: plain, correct, used by no solver. */
final class MeasureArithmetic {
  private MeasureArithmetic() {}

  /** The right operand: same kind, or the difference that may join an absolute temperature. */
  static <Q extends Quantity<Q>> Measure<Q> operand(Measure<Q> left, Quantity<Q> right) {
    Objects.requireNonNull(right, left.kind().name());
    if (isTemperature(left) || isDifference(left)) {
      return temperatureOperand(right);
    }
    return Measure.from(right, left.kind());
  }

  @SuppressWarnings("unchecked")
  private static <Q extends Quantity<Q>> Measure<Q> temperatureOperand(Quantity<Q> right) {
    if (right instanceof Measure<Q> measure) {
      return measure;
    }
    Kind<?> kind =
        right.getScale() == Quantity.Scale.RELATIVE
            ? Kind.TEMPERATURE_DIFFERENCE
            : Kind.TEMPERATURE;
    return Measure.from(right, (Kind<Q>) kind);
  }

  static <Q extends Quantity<Q>> Quantity<Q> add(Measure<Q> left, Quantity<Q> right) {
    Measure<Q> operand = operand(left, right);
    if (isTemperature(left) && isTemperature(operand)) {
      throw new ArithmeticException(
          "two absolute temperatures have no sum: " + left + " + " + operand);
    }
    Measure<Q> absolute = isTemperature(operand) ? operand : left;
    return ofSi(left.siValue() + operand.siValue(), absolute);
  }

  @SuppressWarnings("unchecked")
  static <Q extends Quantity<Q>> Quantity<Q> subtract(Measure<Q> left, Quantity<Q> right) {
    Measure<Q> operand = operand(left, right);
    double differenceSi = left.siValue() - operand.siValue();
    if (isTemperature(left) && isTemperature(operand)) {
      // JSR 385 types both a temperature and a difference as Temperature; the kind tells them
      // apart.
      return (Quantity<Q>) (Quantity<?>) Measure.ofSi(differenceSi, Kind.TEMPERATURE_DIFFERENCE);
    }
    if (isTemperature(operand)) {
      throw new ArithmeticException(
          "a difference minus a temperature has no meaning: " + left + " − " + operand);
    }
    return ofSi(differenceSi, left);
  }

  static <Q extends Quantity<Q>> Quantity<Q> scale(Measure<Q> left, double by, double over) {
    rejectTemperature(left);
    rejectZero(over, left);
    if (!Double.isFinite(by) || !Double.isFinite(over)) {
      throw new ArithmeticException("factor must be finite: " + left + " × " + by + " / " + over);
    }
    return Measure.of(left.doubleValue() * by / over, left.namedUnit());
  }

  static Quantity<?> product(Measure<?> left, Quantity<?> right, boolean divide) {
    Measure<?> operand = anyKind(right);
    rejectTemperature(left);
    rejectTemperature(operand);
    if (divide) {
      rejectZero(operand.siValue(), left);
    }
    Unit<?> leftUnit = left.kind().siUnit().toUnit();
    Unit<?> rightUnit = operand.kind().siUnit().toUnit();
    double resultSi =
        divide ? left.siValue() / operand.siValue() : left.siValue() * operand.siValue();
    return UnitBridge.unnamed(
        resultSi, divide ? leftUnit.divide(rightUnit) : leftUnit.multiply(rightUnit));
  }

  static Quantity<?> inverse(Measure<?> measure) {
    rejectTemperature(measure);
    rejectZero(measure.siValue(), measure);
    return UnitBridge.unnamed(1 / measure.siValue(), measure.kind().siUnit().toUnit().inverse());
  }

  @SuppressWarnings("unchecked")
  static <T extends Quantity<T>> Quantity<T> asType(Measure<?> measure, Class<T> type) {
    Kind<?> kind = Kind.ofType(Objects.requireNonNull(type, "type"));
    if (kind == measure.kind()) {
      return (Quantity<T>) measure;
    }
    // Torque is not energy: only what has no name yet can be given one. And no product is absolute.
    boolean nameable = !measure.kind().isNamed() && kind != Kind.TEMPERATURE;
    if (kind == null || !nameable || !UnitBridge.sameDimension(measure.kind(), kind)) {
      throw new ClassCastException(
          "the " + measure.kind() + " " + measure + " is no quantity of " + type.getSimpleName());
    }
    return Measure.ofSi(measure.siValue(), (Kind<T>) kind);
  }

  private static Measure<?> anyKind(Quantity<?> quantity) {
    Objects.requireNonNull(quantity, "quantity");
    return quantity instanceof Measure<?> measure ? measure : UnitBridge.readAny(quantity);
  }

  private static <Q extends Quantity<Q>> Measure<Q> ofSi(double siValue, Measure<Q> like) {
    return Measure.of(like.namedUnit().fromSi(siValue), like.namedUnit());
  }

  private static boolean isTemperature(Measure<?> measure) {
    return measure.kind().equals(Kind.TEMPERATURE);
  }

  private static boolean isDifference(Measure<?> measure) {
    return measure.kind().equals(Kind.TEMPERATURE_DIFFERENCE);
  }

  private static void rejectTemperature(Measure<?> measure) {
    if (isTemperature(measure)) {
      throw new ArithmeticException(
          "an absolute temperature cannot be multiplied or divided: " + measure);
    }
  }

  private static void rejectZero(double divisor, Measure<?> dividend) {
    if (divisor == 0) {
      throw new ArithmeticException("division by zero: " + dividend + " / 0");
    }
  }
}
