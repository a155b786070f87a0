package org.wattwright.check;

import java.io.Serializable;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.Measures;
import org.wattwright.units.NamedUnit;
import org.wattwright.units.Price;
import org.wattwright.units.StateOfCharge;
import org.wattwright.units.WorkshopUnits;

/**
 * One value in a check or a worksheet: a quantity of any kind, a number, a share, a count or a
 * price.
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
    COUNT,
    /** An amount of money. */
    PRICE
  }

  private static final long LARGEST_COUNT = 1L << 53;

  /** More decimals say nothing: a double has no more. */
  private static final int MOST_DECIMALS = 15;

  private final Type type;

  /** SI value of a quantity, else the number itself. */
  private final double value;

  private final @Nullable Measure<?> measure;
  private final @Nullable Currency currency;

  private Figure(
      Type type, double value, @Nullable Measure<?> measure, @Nullable Currency currency) {
    this.type = type;
    this.value = value + 0.0; // + 0.0 turns −0 into 0
    this.measure = measure;
    this.currency = currency;
  }

  private Figure(Type type, double value) {
    this(type, value, null, null);
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
    return new Figure(Type.QUANTITY, kind.siValueOf(measure), measure, null);
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
    return new Figure(Type.NUMBER, Require.finite("Figure.number", value));
  }

  /**
   * A share of one, shown in per cent.
   *
   * @param share finite; may lie outside 0 … 1
   * @return the figure
   */
  public static Figure share(double share) {
    return new Figure(Type.SHARE, Require.finite("Figure.share", share));
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
   * @param count any whole number from −2⁵³ to 2⁵³
   * @return the figure
   * @throws InvalidInputException if count is outside its range
   */
  public static Figure count(long count) {
    if (!(count >= -LARGEST_COUNT && count <= LARGEST_COUNT)) {
      throw InvalidInputException.of("Figure.count", "from −2⁵³ to 2⁵³", Long.toString(count));
    }
    return new Figure(Type.COUNT, count);
  }

  /**
   * An amount of money; comparable only with one of the same currency.
   *
   * @param price the amount
   * @return the figure
   */
  public static Figure of(Price price) {
    return new Figure(Type.PRICE, price.amount().doubleValue(), null, price.currency());
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
   * @throws InvalidInputException if this figure is a quantity with a unit, or a price
   */
  public double number() {
    if (type == Type.QUANTITY || type == Type.PRICE) {
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

  /** Whether two figures can be compared: same type, and same kind or currency. */
  boolean isComparableWith(Figure other) {
    return type == other.type && kind() == other.kind() && Objects.equals(currency, other.currency);
  }

  /** A figure like this one with another value; for temperatures that is a difference. */
  Figure difference(double siDifference) {
    if (measure == null) {
      return new Figure(type, siDifference, null, currency);
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

  /**
   * Equal if type, value, and kind or currency are equal; the unit shown does not matter.
   *
   * @param other any object
   * @return whether both are the same value
   */
  @Override
  public boolean equals(@Nullable Object other) {
    return this == other
        || (other instanceof Figure that
            && Double.compare(value, that.value) == 0
            && isComparableWith(that));
  }

  @Override
  public int hashCode() {
    @Nullable Kind<?> kind = kind();
    return Objects.hash(type, value, kind == null ? "" : kind.name(), currency);
  }

  /**
   * Number and unit with four significant digits.
   *
   * @return for example {@code 12.3 mΩ}, {@code 80.5 %}, {@code 96} or {@code 1250.00 EUR}
   */
  @Override
  public String toString() {
    return switch (type) {
      case QUANTITY -> sensible(Objects.requireNonNull(measure));
      case COUNT -> Long.toString((long) value);
      case SHARE -> sensible(Measures.percent(value * 100));
      case NUMBER -> sensible(Measures.number(value));
      case PRICE -> priceText(Objects.requireNonNull(currency));
    };
  }

  private String priceText(Currency of) {
    int decimals = Math.max(0, of.getDefaultFractionDigits());
    BigDecimal amount = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    return amount.toPlainString() + " " + of.getCurrencyCode();
  }

  private static String sensible(Quantity<Dimensionless> number) {
    return Measures.format(number, Kind.DIMENSIONLESS);
  }

  private static <Q extends Quantity<Q>> String sensible(Measure<Q> measure) {
    return Measures.format(measure, measure.kind());
  }

  /**
   * The text with as many digits as it takes to tell this value from another one of its kind; so
   * that a limit missed by a hair does not read as one that is kept.
   */
  String toStringApartFrom(Figure other) {
    if (value == other.value || !toString().equals(other.toString())) {
      return toString();
    }
    for (int decimals = 0; decimals < MOST_DECIMALS; decimals++) {
      String text = fixed(decimals);
      if (!text.equals(like(other).fixed(decimals))) {
        return text;
      }
    }
    return fixed(MOST_DECIMALS);
  }

  /** The other value, shown in the unit of this one. */
  private Figure like(Figure other) {
    return measure == null ? other : shownLike(measure, other);
  }

  private static <Q extends Quantity<Q>> Figure shownLike(Measure<Q> like, Figure other) {
    return of(other.quantity(like.kind()), like.namedUnit());
  }

  private String fixed(int decimals) {
    return switch (type) {
      case QUANTITY -> fixed(Objects.requireNonNull(measure), decimals);
      case SHARE -> Measures.format(Measures.percent(value * 100), WorkshopUnits.PERCENT, decimals);
      case NUMBER -> Measures.format(Measures.number(value), WorkshopUnits.ONE, decimals);
      case COUNT, PRICE -> toString();
    };
  }

  private static <Q extends Quantity<Q>> String fixed(Measure<Q> measure, int decimals) {
    return Measures.format(measure, measure.namedUnit(), decimals);
  }
}
