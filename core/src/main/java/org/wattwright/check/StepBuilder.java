package org.wattwright.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.Require;
import org.wattwright.units.NamedUnit;

/** Describes one step of a worksheet and ends with its result. */
public final class StepBuilder {
  private final Recorder recorder;
  private final String symbol;
  private final String meaning;
  private final List<Step.Input> inputs = new ArrayList<>();
  private String formula = "";
  private @Nullable Basis basis;
  private @Nullable Source source;

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
   * A symbol of the formula with its value, which also weakens the basis of this step.
   *
   * @param <Q> the quantity type
   * @param inputSymbol as it stands in the formula
   * @param value its value and what that rests on
   * @param shownIn the unit to show
   * @return this builder
   */
  public <Q extends Quantity<Q>> StepBuilder with(
      String inputSymbol, Given<? extends Quantity<Q>> value, NamedUnit<Q> shownIn) {
    basis(value.basis());
    return with(inputSymbol, Figure.of(value.value(), shownIn));
  }

  /**
   * What an input rests on; told several times, the weakest counts. Data sheet if never told.
   *
   * @param value basis of an input
   * @return this builder
   */
  public StepBuilder basis(Basis value) {
    Objects.requireNonNull(value, "basis");
    basis = basis == null ? value : basis.and(value);
    return this;
  }

  /**
   * Source of the formula.
   *
   * @param value the source; a law of physics unless told, and {@link Source#AS_GIVEN} for a step
   *     without formula
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
    Basis weakest = basis != null ? basis : Basis.DATA_SHEET;
    Source unlessTold = formula.isEmpty() ? Source.AS_GIVEN : Source.PHYSICS;
    Source from = source != null ? source : unlessTold;
    recorder.add(new Step(symbol, meaning, formula, inputs, result, weakest, from));
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
