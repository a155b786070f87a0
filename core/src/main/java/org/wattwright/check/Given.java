package org.wattwright.check;

import java.io.Serializable;
import java.util.Objects;

/**
 * An input together with what it rests on.
 *
 * <p>Immutable if the value is.
 *
 * @param <T> the value's type
 * @param value the input
 * @param basis measured, data sheet or estimated
 * @param source where it comes from
 */
public record Given<T>(T value, Basis basis, Source source) implements Serializable {
  /**
   * Rejects null.
   *
   * @param value the input
   * @param basis measured, data sheet or estimated
   * @param source where it comes from
   */
  public Given {
    Objects.requireNonNull(value, "value");
    Objects.requireNonNull(basis, "basis");
    Objects.requireNonNull(source, "source");
  }

  /**
   * A value measured on this part or vehicle.
   *
   * @param <T> the value's type
   * @param value the input
   * @param how what was measured and how
   * @return the input with its basis
   */
  public static <T> Given<T> measured(T value, String how) {
    return new Given<>(value, Basis.MEASURED, Source.measurement(how));
  }

  /**
   * A value from a data sheet or plate.
   *
   * @param <T> the value's type
   * @param value the input
   * @param part the part
   * @return the input with its basis
   */
  public static <T> Given<T> dataSheet(T value, String part) {
    return new Given<>(value, Basis.DATA_SHEET, Source.dataSheet(part));
  }

  /**
   * A value from a named estimate.
   *
   * @param <T> the value's type
   * @param value the input
   * @param source the rule behind the estimate
   * @return the input with its basis
   */
  public static <T> Given<T> estimated(T value, Source source) {
    return new Given<>(value, Basis.ESTIMATED, source);
  }
}
