package org.wattwright.internal;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.NamedUnit;

/**
 * Guards of public inputs, in positive form so that NaN fails, with the message that names field,
 * bound and value. A quantity that passes is returned as a plain number in SI.
 */
public final class Require {
  private Require() {}

  /** A quantity under test; bounds are numbers in the given unit. */
  public static <Q extends Quantity<Q>> Guarded<Q> quantity(
      String field, Quantity<Q> quantity, NamedUnit<Q> unit) {
    return new Guarded<>(field, Objects.requireNonNull(quantity, field), unit);
  }

  /** A share, 0 to 1. */
  public static double fraction(String field, double value) {
    return between(field, value, 0, 1);
  }

  /** A dimensionless number between two bounds, both allowed. */
  public static double between(String field, double value, double low, double high) {
    if (value >= low && value <= high) {
      return value;
    }
    throw InvalidInputException.of(
        field, "from " + text(low) + " to " + text(high), Double.toString(value));
  }

  /** A dimensionless number greater than 0 and finite. */
  public static double positive(String field, double value) {
    if (value > 0 && value <= Double.MAX_VALUE) {
      return value;
    }
    throw InvalidInputException.of(field, "> 0 and finite", Double.toString(value));
  }

  /** A dimensionless number at least 0 and finite. */
  public static double nonNegative(String field, double value) {
    if (value >= 0 && value <= Double.MAX_VALUE) {
      return value;
    }
    throw InvalidInputException.of(field, "≥ 0 and finite", Double.toString(value));
  }

  /** A finite dimensionless number. */
  public static double finite(String field, double value) {
    if (Double.isFinite(value)) {
      return value;
    }
    throw InvalidInputException.of(field, "finite", Double.toString(value));
  }

  /** A count between two bounds, both allowed. */
  public static int count(String field, int value, int low, int high) {
    if (value >= low && value <= high) {
      return value;
    }
    String bound = high == Integer.MAX_VALUE ? "≥ " + low : "from " + low + " to " + high;
    throw InvalidInputException.of(field, bound, Integer.toString(value));
  }

  /** A count of at least 1. */
  public static int positiveCount(String field, int value) {
    return count(field, value, 1, Integer.MAX_VALUE);
  }

  /** A text with at least one visible character, without leading or trailing space. */
  public static String text(String field, String value) {
    Objects.requireNonNull(value, field);
    if (value.isBlank()) {
      throw InvalidInputException.of(field, "a text", "\"" + value + "\"");
    }
    return value.strip();
  }

  /** An immutable copy of a list with at least one element and no null. */
  public static <T> List<T> nonEmpty(String field, List<? extends T> values) {
    Objects.requireNonNull(values, field);
    if (values.isEmpty()) {
      throw InvalidInputException.of(field, "a list with at least one element", "empty");
    }
    return List.copyOf(values);
  }

  private static String text(double value) {
    return value == Math.rint(value) && Math.abs(value) < 1e15
        ? Long.toString((long) value)
        : Double.toString(value);
  }

  /**
   * A quantity under test.
   *
   * @param <Q> the quantity type
   */
  public static final class Guarded<Q extends Quantity<Q>> {
    private final String field;
    private final Quantity<Q> quantity;
    private final NamedUnit<Q> unit;

    Guarded(String field, Quantity<Q> quantity, NamedUnit<Q> unit) {
      this.field = field;
      this.quantity = quantity;
      this.unit = unit;
    }

    /** Any finite value. */
    public double any() {
      return unit.kind().siValueOf(quantity);
    }

    /** Greater than 0. */
    public double positive() {
      double si = any();
      if (si > 0) {
        return si;
      }
      throw error("> 0 " + unit.symbol());
    }

    /** At least 0. */
    public double nonNegative() {
      double si = any();
      if (si >= 0) {
        return si;
      }
      throw error("≥ 0 " + unit.symbol());
    }

    /** Between two numbers in the unit of this guard, both allowed. */
    public double between(double low, double high) {
      double value = unit.valueOf(quantity);
      if (value >= low && value <= high) {
        return any();
      }
      throw error("from " + text(low) + " to " + text(high) + " " + unit.symbol());
    }

    /** Greater than 0 and at most a number in the unit of this guard. */
    public double positiveUpTo(double high) {
      double value = unit.valueOf(quantity);
      if (value > 0 && value <= high) {
        return any();
      }
      throw error("> 0 and ≤ " + text(high) + " " + unit.symbol());
    }

    private InvalidInputException error(String bound) {
      return InvalidInputException.of(field, bound, quantity.toString());
    }
  }
}
