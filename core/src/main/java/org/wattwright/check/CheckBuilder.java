package org.wattwright.check;

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
  private Basis basis = Basis.DATA_SHEET;
  private Source source = Source.PHYSICS;
  private List<String> missing = List.of();
  private String note = "";
  private boolean safety;
  private @Nullable CautionBand band;

  CheckBuilder(String code, String what) {
    this.code = code;
    this.what = what;
  }

  /**
   * Where the limit comes from.
   *
   * @param value the source
   * @return this builder
   */
  public CheckBuilder source(Source value) {
    source = Objects.requireNonNull(value, "source");
    return this;
  }

  /**
   * The weakest basis of the inputs; data sheet unless told.
   *
   * @param value the basis
   * @return this builder
   */
  public CheckBuilder basis(Basis value) {
    basis = Objects.requireNonNull(value, "basis");
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
    note = Objects.requireNonNull(value, "note");
    return this;
  }

  /**
   * The actual value may not exceed the limit.
   *
   * @param actual the value
   * @param limit the limit, of the same kind
   * @return the check
   * @throws InvalidInputException if the two cannot be compared
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
   * @throws InvalidInputException if the two cannot be compared
   */
  public Check atLeast(Figure actual, Figure limit) {
    return compare(Check.Relation.AT_LEAST, actual, limit);
  }

  /**
   * A statement that holds or does not.
   *
   * @param holds whether it holds
   * @return the check
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
   * @throws InvalidInputException if no input is named
   */
  public Check notChecked(String... missingInputs) {
    missing = Require.nonEmpty("Check.missing", List.of(missingInputs));
    return new Check(this, Check.Relation.HOLDS, Outcome.NOT_CHECKED, Check.Figures.NONE);
  }

  private Check compare(Check.Relation relation, Figure actual, Figure limit) {
    if (!actual.isComparableWith(limit)) {
      throw InvalidInputException.of(
          "Check.limit", "comparable with the actual value " + actual, limit.toString());
    }
    boolean atMost = relation == Check.Relation.AT_MOST;
    double marginSi = atMost ? limit.value() - actual.value() : actual.value() - limit.value();
    Outcome outcome = verdict(marginSi, limit);
    Check.Figures figures = new Check.Figures(actual, limit, limit.difference(marginSi));
    return new Check(this, relation, outcome, figures);
  }

  private Outcome verdict(double marginSi, Figure limit) {
    double rounding = ROUNDING * Math.abs(limit.value());
    if (!(marginSi >= -rounding)) {
      return Outcome.FAIL;
    }
    CautionBand used = band != null ? band : CautionBand.usualFor(limit);
    boolean close = marginSi < used.widthSi(limit.value()) - rounding;
    return limitedByBasis(close ? Outcome.CAUTION : Outcome.PASS);
  }

  private Outcome limitedByBasis(Outcome outcome) {
    return safety && basis == Basis.ESTIMATED ? outcome.and(Outcome.CAUTION) : outcome;
  }

  String code() {
    return code;
  }

  String what() {
    return what;
  }

  Basis basis() {
    return basis;
  }

  Source source() {
    return source;
  }

  List<String> missing() {
    return missing;
  }

  String note() {
    return note;
  }
}
