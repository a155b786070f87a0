package org.wattwright.units;

import java.util.Objects;

/**
 * A nonsensical input: names the field, the value as the caller gave it, and the bound it broke.
 *
 * <p>The message reads {@code <Type>.<field> must be <bound>, but was <value>}, for example {@code
 * Cell.capacity must be > 0 A·h, but was -105 A·h}. An infeasible design is never reported this
 * way: that is an answer, not an error.
 */
public final class InvalidInputException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  /** The offending field, as {@code Type.field}. */
  private final String field;

  /** The value as given, with its unit. */
  private final String value;

  /** The bound that was broken, with its unit. */
  private final String bound;

  private InvalidInputException(String field, String bound, String value, String message) {
    super(message);
    this.field = field;
    this.bound = bound;
    this.value = value;
  }

  /**
   * An error whose message follows the usual template.
   *
   * @param field the field as {@code Type.field}
   * @param bound what the value must be, with unit, such as {@code > 0 A·h}
   * @param value the value as given, with unit
   * @return the exception, to be thrown by the caller
   */
  public static InvalidInputException of(String field, String bound, String value) {
    Objects.requireNonNull(field, "field");
    Objects.requireNonNull(bound, "bound");
    Objects.requireNonNull(value, "value");
    String message = field + " must be " + bound + ", but was " + value;
    return new InvalidInputException(field, bound, value, message);
  }

  /**
   * The same error with a hint appended in brackets.
   *
   * @param hint what the caller may have meant
   * @return a new exception with the longer message
   */
  public InvalidInputException withHint(String hint) {
    return new InvalidInputException(field, bound, value, getMessage() + " (" + hint + ")");
  }

  /**
   * An error with a message of its own, where the template would not read well.
   *
   * @param field the field as {@code Type.field}
   * @param bound what the value must be
   * @param value the value as given
   * @param message the whole message; must name the field, the value and the bound
   * @return the exception, to be thrown by the caller
   */
  public static InvalidInputException withMessage(
      String field, String bound, String value, String message) {
    return new InvalidInputException(field, bound, value, message);
  }

  /**
   * The offending field.
   *
   * @return the field as {@code Type.field}
   */
  public String field() {
    return field;
  }

  /**
   * The offending value.
   *
   * @return the value as given, with its unit
   */
  public String value() {
    return value;
  }

  /**
   * The bound that was broken.
   *
   * @return what the value must be, with unit
   */
  public String bound() {
    return bound;
  }
}
