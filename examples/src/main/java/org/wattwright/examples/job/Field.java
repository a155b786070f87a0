package org.wattwright.examples.job;

import java.util.Arrays;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.NamedUnit;
import org.wattwright.units.Price;
import org.wattwright.units.StateOfCharge;

/**
 * One filled cell with the unit that its header states; reads itself as what it should be.
 *
 * <p>Numbers have a decimal point and no grouping, on every machine. Immutable and thread-safe.
 */
public final class Field {
  private static final Pattern NUMBER =
      Pattern.compile("[+\\-\u2212]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][+-]?\\d{1,3})?");

  /** Nothing about a vehicle is larger, in any unit; beyond, a result would no longer be finite. */
  private static final double LARGEST = 1e12;

  private static final double SMALLEST = 1e-12;

  private final String text;
  private final String unit;
  private final String where;
  private final String unitWhere;

  Field(String text, String unit, String where, String unitWhere) {
    this.text = text.strip();
    this.unit = unit.strip();
    this.where = where;
    this.unitWhere = unitWhere;
  }

  boolean isEmpty() {
    return text.isEmpty();
  }

  /**
   * An error at this cell.
   *
   * @param message what is wrong and what was expected
   * @return the exception, to be thrown by the caller
   */
  public JobFileException error(String message) {
    return JobFileException.of(where + ": " + message);
  }

  /**
   * The text.
   *
   * @return without spaces at the ends, not empty
   * @throws JobFileException if the header states a unit
   */
  public String text() {
    rejectUnit();
    return text;
  }

  /**
   * The text with its unit, as given.
   *
   * @return for example {@code 105 Ah}; for a text the text alone
   */
  public String asGiven() {
    return unit.isEmpty() ? text : text + " " + unit;
  }

  /**
   * A quantity in the unit of the header.
   *
   * @param <Q> the quantity type
   * @param kind what it must be a quantity of
   * @return the quantity, in the unit as written
   * @throws JobFileException if the header states no unit of that kind, or the text is no number
   */
  public <Q extends Quantity<Q>> Quantity<Q> quantity(Kind<Q> kind) {
    rejectOtherUnit(kind);
    String digits = number();
    try {
      return kind.parse(withUnit(digits));
    } catch (InvalidInputException e) {
      throw error(String.valueOf(e.getMessage()));
    }
  }

  /**
   * A quantity above zero.
   *
   * @param <Q> the quantity type
   * @param kind what it must be a quantity of
   * @return the quantity, in the unit as written
   * @throws JobFileException as {@link #quantity}, and if it is not above zero
   */
  public <Q extends Quantity<Q>> Quantity<Q> positive(Kind<Q> kind) {
    Quantity<Q> quantity = quantity(kind);
    if (!(kind.siValueOf(quantity) > 0)) {
      throw outside("> 0 " + unit);
    }
    return quantity;
  }

  /**
   * A quantity that is not below zero.
   *
   * @param <Q> the quantity type
   * @param kind what it must be a quantity of
   * @return the quantity, in the unit as written
   * @throws JobFileException as {@link #quantity}, and if it is below zero
   */
  public <Q extends Quantity<Q>> Quantity<Q> nonNegative(Kind<Q> kind) {
    Quantity<Q> quantity = quantity(kind);
    if (!(kind.siValueOf(quantity) >= 0)) {
      throw outside("≥ 0 " + unit);
    }
    return quantity;
  }

  /**
   * A share such as an efficiency, from a column in per cent or in 1.
   *
   * @return above 0, at most 1
   * @throws JobFileException if the header states neither unit, or the share is out of range
   */
  public double share() {
    double share = Kind.DIMENSIONLESS.siValueOf(quantity(Kind.DIMENSIONLESS));
    if (!(share > 0 && share <= 1)) {
      throw outside("> 0 % and ≤ 100 %");
    }
    return share;
  }

  /**
   * A state of charge, from a column in per cent or in 1.
   *
   * @return the state of charge
   * @throws JobFileException if the header states neither unit, or the value is out of range
   */
  public StateOfCharge stateOfCharge() {
    double fraction = Kind.DIMENSIONLESS.siValueOf(quantity(Kind.DIMENSIONLESS));
    if (!(fraction >= 0 && fraction <= 1)) {
      throw outside("from 0 % to 100 %");
    }
    return StateOfCharge.of(fraction);
  }

  /**
   * A number of things.
   *
   * @param least smallest allowed
   * @param most largest allowed
   * @return the number
   * @throws JobFileException if the text is no whole number or it is out of range
   */
  public int count(int least, int most) {
    rejectUnit();
    double value = Double.parseDouble(number());
    if (value != Math.rint(value)) {
      throw error("not a whole number: " + Quoted.of(text));
    }
    if (!(value >= least && value <= most)) {
      throw outside("from " + least + " to " + most);
    }
    return (int) value;
  }

  /**
   * A factor or other plain number.
   *
   * @return not below zero
   * @throws JobFileException if the text is no number, it is below zero, or there is a unit
   */
  public double plainNumber() {
    rejectUnit();
    double value = Double.parseDouble(number());
    if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
      throw outside("≥ 0 and finite");
    }
    return value;
  }

  /**
   * One of a few words, in capitals or not.
   *
   * @param <E> the enumeration
   * @param type its class; the words are those that {@code toString} gives
   * @return the constant
   * @throws JobFileException if the text is none of the words
   */
  public <E extends Enum<E>> E choice(Class<E> type) {
    rejectUnit();
    E[] constants = type.getEnumConstants();
    return Arrays.stream(constants)
        .filter(constant -> constant.toString().equalsIgnoreCase(text))
        .findFirst()
        .orElseThrow(
            () ->
                error(
                    Arrays.stream(constants)
                        .map(Enum::toString)
                        .collect(Collectors.joining(", ", "not one of ", ": " + Quoted.of(text)))));
  }

  /**
   * An amount of money; the header states the currency as in {@code price [EUR]}.
   *
   * @return the price
   * @throws JobFileException if the text is no amount ≥ 0 or the currency is unknown
   */
  public Price price() {
    if (unit.isEmpty()) {
      throw JobFileException.of(unitWhere + ": needs a currency in brackets, such as [EUR]");
    }
    String amount = number();
    try {
      return Price.of(amount, unit);
    } catch (InvalidInputException e) {
      throw error(String.valueOf(e.getMessage()));
    }
  }

  /** The library writes and reads plain numbers without a unit. */
  private String withUnit(String digits) {
    return unit.equals("1") ? digits : digits + " " + unit;
  }

  private String number() {
    if (!NUMBER.matcher(text).matches()) {
      String hint = text.indexOf(',') >= 0 ? " (use a decimal point, no grouping)" : "";
      throw error("not a number: " + Quoted.of(text) + hint);
    }
    String digits = text.replace('\u2212', '-');
    double size = Math.abs(Double.parseDouble(digits));
    if (!(size == 0 || (size >= SMALLEST && size <= LARGEST))) {
      throw error("must be from 1e-12 to 1e12 in size, or 0, but was " + asGiven());
    }
    return digits;
  }

  private JobFileException outside(String bound) {
    return error("must be " + bound.strip() + ", but was " + asGiven());
  }

  private void rejectUnit() {
    if (!unit.isEmpty()) {
      throw JobFileException.of(unitWhere + ": takes no unit, but has " + Quoted.of(unit));
    }
  }

  private <Q extends Quantity<Q>> void rejectOtherUnit(Kind<Q> kind) {
    String symbols = kind.units().stream().map(NamedUnit::symbol).collect(Collectors.joining(", "));
    String unitOfKind = kind.equals(Kind.DIMENSIONLESS) ? "unit of a share" : "unit of " + kind;
    if (unit.isEmpty()) {
      // A key has its unit in a column of its own.
      String place = unitWhere.equals(where) ? " in column \"unit\"" : " in brackets";
      throw JobFileException.of(
          unitWhere + ": needs a " + unitOfKind + place + ": one of " + symbols);
    }
    try {
      kind.parse(withUnit("1"));
    } catch (InvalidInputException e) {
      throw JobFileException.of(
          unitWhere + ": not a " + unitOfKind + ": " + Quoted.of(unit) + "; one of " + symbols);
    }
  }
}
