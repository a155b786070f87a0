package org.wattwright.check;

import java.io.Serializable;
import java.util.List;

/**
 * One line of a worksheet: symbol, formula, the formula with its numbers, result and source.
 *
 * <p>Immutable and thread-safe.
 *
 * @param symbol symbol of the result, such as {@code U_full}
 * @param meaning what the result is, in words
 * @param formula right-hand side in symbols, such as {@code S·u}
 * @param inputs symbols of the formula with their values, in the order of first use
 * @param result the result
 * @param basis weakest basis of the inputs
 * @param source source of the formula
 */
public record Step(
    String symbol,
    String meaning,
    String formula,
    List<Input> inputs,
    Figure result,
    Basis basis,
    Source source)
    implements Serializable {
  /**
   * A symbol with its value.
   *
   * @param symbol as it stands in the formula
   * @param value its value
   */
  public record Input(String symbol, Figure value) implements Serializable {}

  /**
   * Copies the list.
   *
   * @param symbol symbol of the result
   * @param meaning what the result is, in words
   * @param formula right-hand side in symbols
   * @param inputs symbols of the formula with their values
   * @param result the result
   * @param basis weakest basis of the inputs
   * @param source source of the formula
   */
  public Step {
    inputs = List.copyOf(inputs);
  }

  /**
   * The formula with every symbol replaced by its value.
   *
   * @return for example {@code 30·3.65 V}
   */
  public String substituted() {
    return Substitution.of(formula, inputs);
  }

  /**
   * One line.
   *
   * @return symbol = formula = substituted = result
   */
  @Override
  public String toString() {
    String numbers = inputs.isEmpty() ? "" : " = " + substituted();
    return symbol + " = " + formula + numbers + " = " + result;
  }
}
