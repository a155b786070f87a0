package org.wattwright.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import org.wattwright.internal.Require;
import org.wattwright.units.NamedUnit;

/** Describes one step of a worksheet and ends with its result. */
public final class StepBuilder {
  private final Recorder recorder;
  private final String symbol;
  private final String meaning;
  private final List<Step.Input> inputs = new ArrayList<>();
  private String formula = "";
  private Basis basis = Basis.MEASURED;
  private Source source = Source.PHYSICS;

  StepBuilder(Recorder recorder, String symbol, String meaning) {
    this.recorder = recorder;
    this.symbol = Require.text("Step.symbol", symbol);
    this.meaning = Require.text("Step.meaning", meaning);
  }

  /**
   * The formula in symbols.
   *
   * @param value right-hand side, in Unicode, such as {@code S·u}
   * @return this builder
   */
  public StepBuilder formula(String value) {
    formula = Objects.requireNonNull(value, "formula");
    return this;
  }

  /**
   * A symbol of the formula with its value.
   *
   * @param inputSymbol as it stands in the formula
   * @param value its value
   * @return this builder
   */
  public StepBuilder with(String inputSymbol, Figure value) {
    inputs.add(new Step.Input(inputSymbol, value));
    return this;
  }

  /**
   * A symbol of the formula with its SI value and the unit to show it in.
   *
   * @param <Q> the quantity type
   * @param inputSymbol as it stands in the formula
   * @param siValue value in the coherent SI unit
   * @param shownIn the unit to show
   * @return this builder
   */
  public <Q extends Quantity<Q>> StepBuilder with(
      String inputSymbol, double siValue, NamedUnit<Q> shownIn) {
    return with(inputSymbol, Figure.ofSi(siValue, shownIn));
  }

  /**
   * Weakens the basis of this step by that of an input.
   *
   * @param value basis of an input
   * @return this builder
   */
  public StepBuilder basis(Basis value) {
    basis = basis.and(value);
    return this;
  }

  /**
   * Source of the formula.
   *
   * @param value the source; a law of physics unless told
   * @return this builder
   */
  public StepBuilder source(Source value) {
    source = Objects.requireNonNull(value, "source");
    return this;
  }

  /**
   * Ends the step.
   *
   * @param result the result
   */
  public void gives(Figure result) {
    recorder.add(new Step(symbol, meaning, formula, inputs, result, basis, source));
  }

  /**
   * Ends the step with a result in SI.
   *
   * @param <Q> the quantity type
   * @param siValue value in the coherent SI unit
   * @param shownIn the unit to show
   */
  public <Q extends Quantity<Q>> void gives(double siValue, NamedUnit<Q> shownIn) {
    gives(Figure.ofSi(siValue, shownIn));
  }
}
