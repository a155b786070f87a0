package org.wattwright.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;

/** Collects what belongs to a {@link Check} and ends with the comparison. */
public final class CheckBuilder {
  /**
   * Values this close to the limit, relative to it, count as equal: the rounding of a sum of
   * products, far below anything that can be measured.
   */
  private static final double ROUNDING = 1e-12;

  private final String code;
  private final String what;
  private final List<String> estimates = new ArrayList<>();
  private @Nullable Basis basis;
  private @Nullable Source source;
  private List<String> missing = List.of();
  private Party answeredBy = Party.WORKSHOP;
  private String note = "";
  private boolean safety;
  private @Nullable CautionBand band;

  CheckBuilder(String code, String what) {
    this.code = code;
    this.what = what;
  }

  /**
   * Where the limit comes from; required.
   *
   * @param value the source
   * @return this builder
   */
  public CheckBuilder source(Source value) {
    source = Objects.requireNonNull(value, "source");
    return this;
  }

  /**
   * What an input rests on; told several times, the weakest counts. Data sheet if never told.
   *
   * @param value the basis of one input or of several
   * @return this builder
   */
  public CheckBuilder basis(Basis value) {
    Objects.requireNonNull(value, "basis");
    basis = basis == null ? value : basis.and(value);
    return this;
  }

  /**
   * What several inputs rest on; the weakest counts.
   *
   * @param inputs the inputs
   * @return this builder
   */
  public CheckBuilder basisOf(Given<?>... inputs) {
    for (Given<?> input : inputs) {
      basis(input.basis());
    }
    return this;
  }

  /**
   * Names inputs that are estimated, so that they can be asked for; the basis is estimated then.
   *
   * @param inputs their names, such as {@code cell.resistance}
   * @return this builder
   */
  public CheckBuilder estimated(String... inputs) {
    for (String input : inputs) {
      estimates.add(Require.text("Check.estimated", input));
      basis(Basis.ESTIMATED);
    }
    return this;
  }

  /**
   * Who can give a missing input, or replace an estimated one; the workshop unless told.
   *
   * @param value who must answer
   * @return this builder
   */
  public CheckBuilder answeredBy(Party value) {
    answeredBy = Objects.requireNonNull(value, "answeredBy");
    return this;
  }

  /**
   * Marks a safety check: an estimate gives at most a caution.
   *
   * @return this builder
   */
  public CheckBuilder safety() {
    safety = true;
    return this;
  }

  /**
   * How close to the limit a pass becomes a caution; the usual band of the kind unless told.
   *
   * @param value the band
   * @return this builder
   */
  public CheckBuilder cautionBand(CautionBand value) {
    band = Objects.requireNonNull(value, "band");
    return this;
  }

  /**
   * A remark for the reader.
   *
   * @param value the remark
   * @return this builder
   */
  public CheckBuilder note(String value) {
    note = Objects.requireNonNull(value, "note").strip();
    return this;
  }

  /**
   * The actual value may not exceed the limit.
   *
   * @param actual the value
   * @param limit the limit, of the same kind
   * @return the check
   * @throws InvalidInputException if the two cannot be compared, if the caution band is of another
   *     kind, or if no source was given
   */
  public Check atMost(Figure actual, Figure limit) {
    return compare(Check.Relation.AT_MOST, actual, limit);
  }

  /**
   * The actual value must reach the limit.
   *
   * @param actual the value
   * @param limit the limit, of the same kind
   * @return the check
   * @throws InvalidInputException if the two cannot be compared, if the caution band is of another
   *     kind, or if no source was given
   */
  public Check atLeast(Figure actual, Figure limit) {
    return compare(Check.Relation.AT_LEAST, actual, limit);
  }

  /**
   * A statement that holds or does not.
   *
   * @param holds whether it holds
   * @return the check
   * @throws InvalidInputException if no source was given
   */
  public Check holds(boolean holds) {
    Outcome outcome = holds ? limitedByBasis(Outcome.PASS) : Outcome.FAIL;
    return new Check(this, Check.Relation.HOLDS, outcome, Check.Figures.NONE);
  }

  /**
   * A recommendation: a caution where it is not followed, never a failure.
   *
   * @param followed whether it is followed
   * @return the check
   */
  public Check recommends(boolean followed) {
    Outcome outcome = followed ? limitedByBasis(Outcome.PASS) : Outcome.CAUTION;
    return new Check(this, Check.Relation.HOLDS, outcome, Check.Figures.NONE);
  }

  /**
   * Nothing is known, because inputs are missing.
   *
   * @param missingInputs their names, at least one, such as {@code inverter.maximumVoltage}
   * @return the check
   * @throws InvalidInputException if no input is named, or no source was given
   */
  public Check notChecked(String... missingInputs) {
    return notChecked(Check.Figures.NONE, missingInputs);
  }

  /**
   * The value is known, but not its limit.
   *
   * @param actual the value
   * @param missingInputs names of the missing inputs, at least one
   * @return the check
   * @throws InvalidInputException if no input is named, or no source was given
   */
  public Check notChecked(Figure actual, String... missingInputs) {
    return notChecked(new Check.Figures(actual, null, null), missingInputs);
  }

  private Check notChecked(Check.Figures figures, String... missingInputs) {
    missing = Require.nonEmpty("Check.missing", List.of(missingInputs));
    missing.forEach(input -> Require.text("Check.missing", input));
    return new Check(this, Check.Relation.HOLDS, Outcome.NOT_CHECKED, figures);
  }

  private Check compare(Check.Relation relation, Figure actual, Figure limit) {
    if (!actual.isComparableWith(limit)) {
      throw InvalidInputException.of(
          "Check.limit", "comparable with the actual value " + actual, limit.toString());
    }
    boolean atMost = relation == Check.Relation.AT_MOST;
    double exactSi = atMost ? limit.value() - actual.value() : actual.value() - limit.value();
    double marginSi = Math.abs(exactSi) <= ROUNDING * Math.abs(limit.value()) ? 0 : exactSi;
    Outcome outcome = verdict(marginSi, limit);
    Check.Figures figures = new Check.Figures(actual, limit, limit.difference(marginSi));
    return new Check(this, relation, outcome, figures);
  }

  private Outcome verdict(double marginSi, Figure limit) {
    CautionBand used = band != null ? band : CautionBand.usualFor(limit);
    double widthSi = used.widthSi(limit);
    if (!(marginSi >= 0)) {
      return Outcome.FAIL;
    }
    boolean close = marginSi < widthSi - ROUNDING * Math.abs(limit.value());
    return limitedByBasis(close ? Outcome.CAUTION : Outcome.PASS);
  }

  private Outcome limitedByBasis(Outcome outcome) {
    return safety && basis() == Basis.ESTIMATED ? outcome.and(Outcome.CAUTION) : outcome;
  }

  String code() {
    return code;
  }

  String what() {
    return what;
  }

  Basis basis() {
    return basis != null ? basis : Basis.DATA_SHEET;
  }

  Source source() {
    if (source == null) {
      throw InvalidInputException.withMessage(
          "Check.source", "given", "missing", "Check " + code + " needs the source of its limit");
    }
    return source;
  }

  List<String> missing() {
    return missing;
  }

  List<String> estimates() {
    return estimates.stream().distinct().toList();
  }

  Party answeredBy() {
    return answeredBy;
  }

  boolean isSafety() {
    return safety;
  }

  String note() {
    return note;
  }
}
