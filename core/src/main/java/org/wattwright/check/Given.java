package org.wattwright.check;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.wattwright.internal.Require;

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

  /**
   * What follows from this input alone.
   *
   * @param <R> type of the result
   * @param function makes the result
   * @return the result, on the same basis and source
   */
  public <R> Given<R> map(Function<? super T, ? extends R> function) {
    return new Given<>(function.apply(value), basis, source);
  }

  /**
   * What follows from this input and another one.
   *
   * @param <U> type of the other input
   * @param <R> type of the result
   * @param other the other input
   * @param function makes the result
   * @return the result, on the weaker basis and its source; on this one's if both are equal
   */
  public <U, R> Given<R> with(
      Given<U> other, BiFunction<? super T, ? super U, ? extends R> function) {
    Given<?> weaker = basis.and(other.basis) == basis ? this : other;
    return new Given<>(function.apply(value, other.value), weaker.basis, weaker.source);
  }

  /**
   * The weakest basis of several inputs.
   *
   * @param inputs at least one
   * @return the weakest
   * @throws org.wattwright.units.InvalidInputException if there is none
   */
  public static Basis weakestOf(Given<?>... inputs) {
    return Require.nonEmpty("Given.weakestOf", List.of(inputs)).stream()
        .map(Given::basis)
        .reduce(Basis.MEASURED, Basis::and);
  }

  /**
   * Value and source; says so if it is estimated.
   *
   * @return for example {@code 3.65 V (data sheet: cell)}
   */
  @Override
  public String toString() {
    String mark = basis == Basis.ESTIMATED ? "estimated, " : "";
    return value + " (" + mark + source + ")";
  }
}
