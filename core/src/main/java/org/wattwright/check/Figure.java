package org.wattwright.check;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.Measures;
import org.wattwright.units.NamedUnit;
import org.wattwright.units.StateOfCharge;

/**
 * One value in a check or a worksheet: a quantity of any kind, a number, a share or a count.
 *
 * <p>Typed access: {@link #quantity(Kind)}, {@link #number()}, {@link #count()}. Immutable and
 * thread-safe.
 */
public final class Figure implements Serializable {
  private static final long serialVersionUID = 1L;

  /** What a figure holds. */
  public enum Type {
    /** A quantity with a unit. */
    QUANTITY,
    /** A dimensionless number. */
    NUMBER,
    /** A share of one, shown in per cent. */
    SHARE,
    /** A whole number of things. */
    COUNT
  }

  private final Type type;

  /** SI value of a quantity, else the number itself. */
  private final double value;

  private final @Nullable Measure<?> measure;

  private Figure(Type type, double value, @Nullable Measure<?> measure) {
    this.type = type;
    this.value = value;
    this.measure = measure;
  }

  /**
   * A quantity, shown in the unit it was given in.
   *
   * @param <Q> the quantity type
   * @param quantity any implementation
   * @param kind its kind
   * @return the figure
   */
  public static <Q extends Quantity<Q>> Figure of(Quantity<Q> quantity, Kind<Q> kind) {
    Measure<Q> measure = Measure.from(quantity, kind);
    return new Figure(Type.QUANTITY, kind.siValueOf(measure), measure);
  }

  /**
   * A quantity, shown in a stated unit.
   *
   * @param <Q> the quantity type
   * @param quantity any implementation
   * @param shownIn the unit to show
   * @return the figure
   */
  public static <Q extends Quantity<Q>> Figure of(Quantity<Q> quantity, NamedUnit<Q> shownIn) {
    return of(Measure.from(quantity, shownIn.kind()).in(shownIn), shownIn.kind());
  }

  /**
   * A quantity from its SI value, shown in a stated unit.
   *
   * @param <Q> the quantity type
   * @param siValue value in the coherent SI unit of the kind, finite
   * @param shownIn the unit to show
   * @return the figure
   */
  public static <Q extends Quantity<Q>> Figure ofSi(double siValue, NamedUnit<Q> shownIn) {
    return of(shownIn.kind().ofSi(siValue), shownIn);
  }

  /**
   * A dimensionless number.
   *
   * @param value finite
   * @return the figure
   */
  public static Figure number(double value) {
    return new Figure(Type.NUMBER, Require.finite("Figure.number", value), null);
  }

  /**
   * A share of one, shown in per cent.
   *
   * @param share finite; may lie outside 0 … 1
   * @return the figure
   */
  public static Figure share(double share) {
    return new Figure(Type.SHARE, Require.finite("Figure.share", share), null);
  }

  /**
   * A state of charge, shown in per cent.
   *
   * @param stateOfCharge the state of charge
   * @return the figure
   */
  public static Figure of(StateOfCharge stateOfCharge) {
    return share(stateOfCharge.fraction());
  }

  /**
   * A number of things.
   *
   * @param count any whole number up to 2⁵³
   * @return the figure
   */
  public static Figure count(long count) {
    return new Figure(Type.COUNT, count, null);
  }

  /**
   * What this figure holds.
   *
   * @return the type
   */
  public Type type() {
    return type;
  }

  /**
   * The quantity of this figure.
   *
   * @param <Q> the quantity type
   * @param kind the kind expected
   * @return the quantity, in the unit it is shown in
   * @throws InvalidInputException if this figure holds something else
   */
  @SuppressWarnings("unchecked") // the kind is compared first
  public <Q extends Quantity<Q>> Quantity<Q> quantity(Kind<Q> kind) {
    if (measure == null || measure.kind() != kind) {
      throw InvalidInputException.of("Figure", "a " + kind, toString());
    }
    return (Quantity<Q>) measure;
  }

  /**
   * The number of this figure.
   *
   * @return number, share or count as it is
   * @throws InvalidInputException if this figure is a quantity with a unit
   */
  public double number() {
    if (type == Type.QUANTITY) {
      throw InvalidInputException.of("Figure", "a number without unit", toString());
    }
    return value;
  }

  /**
   * The count of this figure.
   *
   * @return the whole number
   * @throws InvalidInputException if this figure is no count
   */
  public long count() {
    if (type != Type.COUNT) {
      throw InvalidInputException.of("Figure", "a count", toString());
    }
    return (long) value;
  }

  double value() {
    return value;
  }

  /** The kind of a quantity; null for all else. */
  @Nullable Kind<?> kind() {
    return measure == null ? null : measure.kind();
  }

  /** Whether two figures can be compared: same type, and same kind if they are quantities. */
  boolean isComparableWith(Figure other) {
    return type == other.type && kind() == other.kind();
  }

  /** A figure like this one with another value; for temperatures that is a difference. */
  Figure difference(double siDifference) {
    if (measure == null) {
      return new Figure(type, siDifference, null);
    }
    if (measure.kind() == Kind.TEMPERATURE) {
      return of(Measures.kelvinsOfRise(siDifference), Kind.TEMPERATURE_DIFFERENCE);
    }
    return differenceLike(measure, siDifference);
  }

  private static <Q extends Quantity<Q>> Figure differenceLike(
      Measure<Q> like, double siDifference) {
    return ofSi(siDifference, like.namedUnit());
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return this == other
        || (other instanceof Figure that
            && type == that.type
            && Double.compare(value, that.value) == 0
            && kind() == that.kind());
  }

  @Override
  public int hashCode() {
    return Objects.hash(type, value);
  }

  /**
   * Number and unit with four significant digits.
   *
   * @return for example {@code 12.3 mΩ}, {@code 80.5 %} or {@code 96}
   */
  @Override
  public String toString() {
    if (measure != null) {
      return sensible(measure);
    }
    if (type == Type.COUNT) {
      return Long.toString((long) value);
    }
    String text =
        type == Type.SHARE
            ? Measures.format(Measures.percent(value * 100), Kind.DIMENSIONLESS)
            : Measures.format(Measures.number(value), Kind.DIMENSIONLESS);
    return type == Type.SHARE ? text : text.substring(0, text.length() - 2);
  }

  private static <Q extends Quantity<Q>> String sensible(Measure<Q> measure) {
    return Measures.format(measure, measure.kind());
  }
}
