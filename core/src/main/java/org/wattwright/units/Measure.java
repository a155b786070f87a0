package org.wattwright.units;

import java.io.InvalidObjectException;
import java.io.NotSerializableException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.jspecify.annotations.Nullable;

/**
 * The library's own quantity: a finite number with a unit, and beside it the value in SI.
 *
 * <p>It keeps value and unit as given, so it prints as given. Two measures are equal if kind and SI
 * value are equal (3.7 V equals 3700 mV); they are ordered by SI value. It is a carrier: the
 * arithmetic of JSR 385 is there and correct, but solvers compute on plain doubles. Made by {@link
 * Measures} and {@link NamedUnit#of}.
 *
 * <p>Temperatures: absolute + absolute and absolute × number are errors, absolute − absolute is a
 * difference, absolute ± difference is absolute. Immutable and thread-safe; serialises as value and
 * unit.
 *
 * @param <Q> the JSR 385 quantity type
 */
public final class Measure<Q extends Quantity<Q>>
    implements Quantity<Q>, Comparable<Measure<Q>>, Serializable {
  private static final long serialVersionUID = 1L;

  private final transient double value;
  private final transient NamedUnit<Q> unit;
  private final transient double siValue;
  private final transient Kind<Q> kind;

  private Measure(double value, NamedUnit<Q> unit) {
    this.value = value + 0.0; // + 0.0 turns −0 into 0
    this.unit = unit;
    this.kind = unit.kind();
    this.siValue = unit.toSi(value) + 0.0;
  }

  static <Q extends Quantity<Q>> Measure<Q> of(double value, NamedUnit<Q> unit) {
    if (!Double.isFinite(value)) {
      throw InvalidInputException.of(
          unit.kind().name(), "finite", unit.after(Double.toString(value)));
    }
    Measure<Q> made = new Measure<>(value, unit);
    if (!Double.isFinite(made.siValue)) {
      throw InvalidInputException.of(
          unit.kind().name(), "finite in SI units", unit.after(Decimal.shortest(value)));
    }
    if (made.kind.equals(Kind.TEMPERATURE) && made.siValue < 0) {
      throw InvalidInputException.of(
          "temperature", "≥ absolute zero (0 K)", unit.after(Decimal.shortest(value)));
    }
    return made;
  }

  static <Q extends Quantity<Q>> Measure<Q> ofSi(double siValue, Kind<Q> kind) {
    NamedUnit<Q> unit = kind.customaryUnit();
    return of(unit.fromSi(siValue), unit);
  }

  /**
   * Turns any JSR 385 quantity into one of ours.
   *
   * @param <Q> the JSR 385 quantity type
   * @param quantity any implementation
   * @param kind the kind it must have
   * @return the same object if it is ours already; else a measure in the same unit where the
   *     library names that unit, otherwise in the customary unit of the kind
   * @throws InvalidInputException if it is of another kind, cannot be converted, or is not finite
   */
  public static <Q extends Quantity<Q>> Measure<Q> from(Quantity<Q> quantity, Kind<Q> kind) {
    Objects.requireNonNull(quantity, kind.name());
    if (quantity instanceof Measure<Q> measure) {
      return measure.ofKind(kind);
    }
    return UnitBridge.read(quantity, kind);
  }

  private Measure<Q> ofKind(Kind<Q> wanted) {
    if (kind.isSameAs(wanted)) {
      return this;
    }
    // Raw types and casts can get here: a difference where an absolute temperature is meant.
    throw InvalidInputException.of(wanted.name(), "a " + wanted.name(), "the " + kind + " " + this);
  }

  double doubleValue() {
    return value;
  }

  double siValue() {
    return siValue;
  }

  /**
   * What this is a quantity of.
   *
   * @return the kind
   */
  public Kind<Q> kind() {
    return kind;
  }

  /**
   * The unit as given.
   *
   * @return one of the library's units
   */
  public NamedUnit<Q> namedUnit() {
    return unit;
  }

  /**
   * The same amount in another unit.
   *
   * @param target the unit to show it in
   * @return a measure in that unit
   */
  public Measure<Q> in(NamedUnit<Q> target) {
    return target.equals(unit) ? this : of(target.fromSi(siValue), target);
  }

  @Override
  public Number getValue() {
    return value;
  }

  @Override
  public Unit<Q> getUnit() {
    return unit.toUnit();
  }

  @Override
  public Scale getScale() {
    return kind.equals(Kind.TEMPERATURE_DIFFERENCE) ? Scale.RELATIVE : Scale.ABSOLUTE;
  }

  @Override
  public boolean isEquivalentTo(Quantity<Q> that) {
    Measure<Q> operand = MeasureArithmetic.operand(this, that);
    return kind.isSameAs(operand.kind) && siValue == operand.siValue;
  }

  /**
   * Measured equality: the SI values differ by no more than the tolerance.
   *
   * @param that the other quantity, of the same kind
   * @param tolerance largest absolute difference, ≥ 0
   * @return whether both agree
   * @throws InvalidInputException if the tolerance is negative, or if this is an absolute
   *     temperature: a tolerance of 1 °C would be 274.15 K; use {@link Measures#isClose(Quantity,
   *     Quantity, Quantity)}
   */
  public boolean isCloseTo(Quantity<Q> that, Quantity<Q> tolerance) {
    if (kind.equals(Kind.TEMPERATURE)) {
      throw InvalidInputException.of("tolerance", "a temperature difference", tolerance.toString())
          .withHint("use Measures.isClose");
    }
    double toleranceSi = kind.siValueOf(tolerance);
    if (!(toleranceSi >= 0)) {
      throw InvalidInputException.of("tolerance", "≥ 0", tolerance.toString());
    }
    return Math.abs(siValue - kind.siValueOf(that)) <= toleranceSi;
  }

  @Override
  public int compareTo(Measure<Q> that) {
    return Double.compare(siValue, kind.siValueOf(that));
  }

  @Override
  public Quantity<Q> add(Quantity<Q> that) {
    return MeasureArithmetic.add(this, that);
  }

  @Override
  public Quantity<Q> subtract(Quantity<Q> that) {
    return MeasureArithmetic.subtract(this, that);
  }

  @Override
  public Quantity<Q> multiply(Number factor) {
    return MeasureArithmetic.scale(this, factor.doubleValue(), 1);
  }

  @Override
  public Quantity<Q> divide(Number divisor) {
    return MeasureArithmetic.scale(this, 1, divisor.doubleValue());
  }

  @Override
  public Quantity<?> multiply(Quantity<?> that) {
    return MeasureArithmetic.product(this, that, false);
  }

  @Override
  public Quantity<?> divide(Quantity<?> that) {
    return MeasureArithmetic.product(this, that, true);
  }

  @Override
  public Quantity<?> inverse() {
    return MeasureArithmetic.inverse(this);
  }

  @Override
  public Quantity<Q> negate() {
    return MeasureArithmetic.scale(this, -1, 1);
  }

  @Override
  public Quantity<Q> to(Unit<Q> target) {
    return in(UnitBridge.namedUnit(target, kind));
  }

  @Override
  public <T extends Quantity<T>> Quantity<T> asType(Class<T> type) {
    return MeasureArithmetic.asType(this, type);
  }

  /**
   * Equal if the other is a measure of the same kind with the same SI value.
   *
   * @param other any object
   * @return whether both are equal; quantities of other implementations never are
   */
  @Override
  public boolean equals(@Nullable Object other) {
    return this == other
        || (other instanceof Measure<?> that
            && siValue == that.siValue
            && kind.isSameAs(that.kind));
  }

  /**
   * Agrees with {@link #equals}.
   *
   * @return the hash code
   */
  @Override
  public int hashCode() {
    return Double.hashCode(siValue) * 31 + kind.hash();
  }

  /**
   * Number and symbol without a locale, such as {@code 3.2 V}; parses back to an equal measure.
   *
   * @return the text, in the unit as given; if that is not one of ours, in the customary unit, or
   *     in the SI unit if only that is exact
   */
  @Override
  public String toString() {
    return unit.isForeign() && kind.isNamed()
        ? inOwnUnit().toString()
        : unit.after(Decimal.shortest(value));
  }

  private Measure<Q> inOwnUnit() {
    Measure<Q> customary = ofSi(siValue, kind);
    return customary.siValue == siValue ? customary : of(siValue, kind.siUnit());
  }

  private Object writeReplace() throws NotSerializableException {
    if (!kind.isNamed()) {
      throw new NotSerializableException("product or quotient without a name: call asType first");
    }
    Measure<Q> own = unit.isForeign() ? inOwnUnit() : this;
    return new Proxy(own.value, own.unit);
  }

  private void readObject(ObjectInputStream stream) throws InvalidObjectException {
    throw new InvalidObjectException("serialised by proxy only");
  }

  /** Serial form: number and unit. */
  private record Proxy(double value, NamedUnit<?> unit) implements Serializable {
    private Object readResolve() {
      return unit.of(value);
    }
  }
}
