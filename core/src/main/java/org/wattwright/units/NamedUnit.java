package org.wattwright.units;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.jspecify.annotations.Nullable;

/**
 * A unit that the library knows by symbol, such as mm² or kW·h.
 *
 * <p>Makes quantities ({@code MILLIVOLT.of(3200)}) and reads them ({@code
 * MILLIVOLT.valueOf(voltage)}). The constants stand in {@link WorkshopUnits}. Conversion is by one
 * multiplication with an integer and one division by an integer, so that it is the correctly
 * rounded one wherever that is possible: 3700 mV is 3.7 V to the last bit.
 *
 * <p>Immutable and thread-safe.
 *
 * @param <Q> the JSR 385 quantity type
 */
public final class NamedUnit<Q extends Quantity<Q>> {
  private final Kind<Q> kind;
  private final String symbol;

  /** SI value = (value + zeroShift) · numerator / denominator. */
  private final double numerator;

  private final double denominator;
  private final double zeroShift;

  /** Units of one family step up and down with the size of a number; empty: never changed. */
  private final String family;

  /** Set only for a unit that came from outside. */
  private final @Nullable Unit<Q> foreignUnit;

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
    return (value + zeroShift) * numerator / denominator;
  }

  double fromSi(double siValue) {
    return siValue * denominator / numerator - zeroShift;
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
            && kind == that.kind
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
    return Objects.hash(kind.name(), symbol);
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
