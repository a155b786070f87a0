package org.wattwright.check;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.wattwright.internal.Require;

/**
 * One line of a worksheet: symbol, formula, the formula with its numbers, result and source.
 *
 * <p>Immutable and thread-safe.
 *
 * @param symbol symbol of the result, such as {@code U_full}
 * @param meaning what the result is, in words
 * @param formula right-hand side in symbols, such as {@code S·u}; empty for a plain input
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
  public record Input(String symbol, Figure value) implements Serializable {
    /**
     * Rejects a blank symbol.
     *
     * @param symbol as it stands in the formula
     * @param value its value
     */
    public Input {
      symbol = Require.text("Step.input", symbol);
      Objects.requireNonNull(value, "value");
    }

    /**
     * Symbol and value.
     *
     * @return for example {@code U_min = 2.5 V}
     */
    @Override
    public String toString() {
      return symbol + " = " + value;
    }
  }

  /**
   * Copies the list; rejects null, and a blank symbol or meaning.
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
    symbol = Require.text("Step.symbol", symbol);
    meaning = Require.text("Step.meaning", meaning);
    formula = formula.strip();
    inputs = List.copyOf(inputs);
    Objects.requireNonNull(result, "result");
    Objects.requireNonNull(basis, "basis");
    Objects.requireNonNull(source, "source");
  }

  /**
   * The formula with every symbol replaced by its value.
   *
   * <p>A value gets brackets where its minus sign or unit would be read wrongly. An input that the
   * formula does not show stands behind it: {@code (x = 3 V)}.
   *
   * @return for example {@code 30 · 3.65 V}; empty if there are no inputs
   */
  public String substituted() {
    return inputs.isEmpty() ? "" : Substitution.of(formula, inputs);
  }

  /** Formula, formula with numbers, and result, as far as there are such. */
  List<String> sides() {
    return Stream.of(formula, substituted(), result.toString())
        .filter(side -> !side.isEmpty())
        .toList();
  }

  /**
   * One line.
   *
   * @return symbol = formula = substituted = result
   */
  @Override
  public String toString() {
    return symbol + " = " + String.join(" = ", sides());
  }
}
