package org.wattwright.units;

import java.io.InvalidObjectException;
import java.io.NotSerializableException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.jspecify.annotations.Nullable;

/**
 * A unit that the library knows by symbol, such as mm² or kW·h.
 *
 * <p>Makes quantities ({@code MILLIVOLT.of(3200)}) and reads them ({@code
 * MILLIVOLT.valueOf(voltage)}). The constants stand in {@link WorkshopUnits}. Factors are quotients
 * of integers, a conversion rounds once, and numbers are converted as typed: 0.128072 MW, 128.072
 * kW and 128 072 W are equal to the last bit. On the way back from SI, where several numbers stand
 * for the same SI value, the one with the shortest text is taken: 1.001 V is 1001 mV, not
 * 1000.9999999999999 mV.
 *
 * <p>Immutable and thread-safe; serialises as kind and symbol.
 *
 * @param <Q> the JSR 385 quantity type
 */
public final class NamedUnit<Q extends Quantity<Q>> implements Serializable {
  private static final long serialVersionUID = 1L;

  /** More than people type, times a factor; few enough to be hit by chance once in a thousand. */
  private static final int TYPED_DIGITS = 13;

  private final transient Kind<Q> kind;
  private final transient String symbol;

  /** SI value = (value + zeroShift) · numerator / denominator. */
  private final transient double numerator;

  private final transient double denominator;
  private final transient double zeroShift;

  /** What the double of 273.15 lacks to 273.15. */
  private final transient double zeroShiftRest;

  /** Units of one family step up and down with the size of a number; empty: never changed. */
  private final transient String family;

  /** Set only for a unit that came from outside. */
  private final transient @Nullable Unit<Q> foreignUnit;

  NamedUnit(Kind<Q> kind, String symbol, double numerator, double denominator, String family) {
    this(kind, symbol, numerator, denominator, 0, family, null);
  }

  NamedUnit(
      Kind<Q> kind,
      String symbol,
      double numerator,
      double denominator,
      double zeroShift,
      String family,
      @Nullable Unit<Q> foreignUnit) {
    this.kind = kind;
    this.symbol = symbol;
    this.numerator = numerator;
    this.denominator = denominator;
    this.zeroShift = zeroShift;
    this.zeroShiftRest = zeroShift == 0 ? 0 : Decimal.roundingOf(zeroShift);
    this.family = family;
    this.foreignUnit = foreignUnit;
  }

  /**
   * A quantity in this unit.
   *
   * @param value the number, finite
   * @return the quantity; it prints as given
   * @throws InvalidInputException if the value is NaN or infinite
   */
  public Quantity<Q> of(double value) {
    return Measure.of(value, this);
  }

  /**
   * Reads any quantity of this kind as a plain number in this unit.
   *
   * @param quantity any JSR 385 implementation
   * @return the number, finite; exactly as given if the quantity was made in this unit
   * @throws InvalidInputException if the quantity is of another kind, or not finite
   */
  @SuppressWarnings("ReferenceEquality") // the fast path; any other unit takes the long way
  public double valueOf(Quantity<Q> quantity) {
    if (quantity instanceof Measure<?> measure && measure.namedUnit() == this) {
      return measure.doubleValue();
    }
    return fromSi(kind.siValueOf(quantity));
  }

  double toSi(double value) {
    if (zeroShift == 0) {
      return numerator == denominator ? value : asTyped(scaled(value, 0, numerator, denominator));
    }
    double shifted = value + zeroShift;
    if (shifted == 0) {
      return 0; // −273.15 °C is absolute zero, though no double is −273.15
    }
    double roundedShift = shifted - value;
    double rest = (value - (shifted - roundedShift)) + (zeroShift - roundedShift) + zeroShiftRest;
    return asTyped(scaled(shifted, rest, numerator, denominator));
  }

  /**
   * 0.128072 MW are 128 072 W, though the double of 0.128072, times 10⁶, is not quite: where a
   * decimal of few digits lies within the rounding of the number as typed, that is meant.
   */
  private static double asTyped(double siValue) {
    double decimal = Decimal.rounded(siValue, TYPED_DIGITS, Math.abs(siValue));
    return Math.abs(decimal - siValue) <= 2 * Math.ulp(siValue) ? decimal : siValue;
  }

  double fromSi(double siValue) {
    double plain = scaled(siValue, 0, denominator, numerator) - zeroShift;
    return plain == siValue ? plain : shortestAlike(plain, siValue);
  }

  /**
   * (value + rest) · factor / divisor, rounded once: the rounding errors of the steps are carried
   * along (T. J. Dekker, Numerische Mathematik 18 (1971) 224–242).
   */
  private static double scaled(double value, double rest, double factor, double divisor) {
    double product = value * factor;
    if (!Double.isFinite(product)) {
      return product;
    }
    double productRest = Math.fma(value, factor, -product) + rest * factor;
    double quotient = product / divisor;
    double remainder = Math.fma(-quotient, divisor, product) + productRest;
    return quotient + remainder / divisor;
  }

  /** Among the numbers beside {@code plain} that convert to this SI value, the shortest. */
  private double shortestAlike(double plain, double siValue) {
    double size = Math.abs(plain) + Math.abs(zeroShift);
    double rounded = Decimal.rounded(plain, Decimal.SAFE_DIGITS, size);
    if (toSi(rounded) == siValue) {
      return rounded;
    }
    if (toSi(plain) == siValue) {
      return plain;
    }
    double above = Math.nextUp(plain);
    double below = Math.nextDown(plain);
    return toSi(above) == siValue ? above : toSi(below) == siValue ? below : plain;
  }

  double numerator() {
    return numerator;
  }

  double denominator() {
    return denominator;
  }

  double zeroShift() {
    return zeroShift;
  }

  String family() {
    return family;
  }

  boolean isForeign() {
    return foreignUnit != null;
  }

  /**
   * The kind of quantity that this unit measures.
   *
   * @return the kind
   */
  public Kind<Q> kind() {
    return kind;
  }

  /**
   * The symbol of this unit, as texts print and parse it.
   *
   * @return for example {@code mm²}
   */
  public String symbol() {
    return symbol;
  }

  /**
   * This unit for use with other JSR 385 code.
   *
   * @return the unit of the reference implementation
   */
  public Unit<Q> toUnit() {
    return foreignUnit != null ? foreignUnit : UnitBridge.unitOf(this);
  }

  /** The symbol behind a number; nothing behind a plain number. */
  String after(String number) {
    return symbol.equals("1") ? number : number + " " + symbol;
  }

  private Object writeReplace() throws NotSerializableException {
    if (isForeign()) {
      throw new NotSerializableException("unit that the library does not name: " + symbol);
    }
    return new Proxy(kind, symbol);
  }

  private void readObject(ObjectInputStream stream) throws InvalidObjectException {
    throw new InvalidObjectException("serialised by proxy only");
  }

  /** Serial form: kind and symbol. */
  private record Proxy(Kind<?> kind, String symbol) implements Serializable {
    private Object readResolve() {
      return kind.unit(symbol);
    }
  }

  /**
   * Equal if kind, symbol and conversion are equal.
   *
   * @param other any object
   * @return whether both are the same unit
   */
  @Override
  public boolean equals(@Nullable Object other) {
    return this == other
        || (other instanceof NamedUnit<?> that
            && kind.isSameAs(that.kind)
            && symbol.equals(that.symbol)
            && numerator == that.numerator
            && denominator == that.denominator
            && zeroShift == that.zeroShift);
  }

  /**
   * Agrees with {@link #equals}.
   *
   * @return the hash code
   */
  @Override
  public int hashCode() {
    return 31 * kind.hash() + symbol.hashCode();
  }

  /**
   * The symbol.
   *
   * @return as {@link #symbol()}
   */
  @Override
  public String toString() {
    return symbol;
  }
}
