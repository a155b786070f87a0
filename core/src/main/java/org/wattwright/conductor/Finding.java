package org.wattwright.conductor;

import java.util.List;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.units.NamedUnit;

/**
 * One criterion of one candidate in SI, before it becomes a check.
 *
 * <p>The use is the actual value as a share of what is allowed; above 1 the criterion fails. It
 * ranks criteria of different kinds against each other.
 */
record Finding(
    SizingCriterion criterion,
    double actualSi,
    double limitSi,
    double use,
    Terms terms,
    List<String> missing) {

  /** Unit to show, direction, basis and source of a comparison. */
  record Terms(NamedUnit<?> unit, boolean isAtLeast, Basis basis, Source source, String note) {
    Terms(NamedUnit<?> unit, boolean isAtLeast, Basis basis, Source source) {
      this(unit, isAtLeast, basis, source, "");
    }

    Terms withNote(String text) {
      return new Terms(unit, isAtLeast, basis, source, text);
    }
  }

  /** Room for the rounding of a sum of products, as {@link Check} has it. */
  private static final double ROUNDING = 1e-12;

  static Finding atMost(SizingCriterion criterion, double actualSi, double limitSi, Terms terms) {
    return new Finding(criterion, actualSi, limitSi, actualSi / limitSi, terms, List.of());
  }

  static Finding atLeast(SizingCriterion criterion, double actualSi, double limitSi, Terms terms) {
    return new Finding(criterion, actualSi, limitSi, limitSi / actualSi, terms, List.of());
  }

  /** A temperature, whose use counts from the air's. */
  static Finding temperature(
      SizingCriterion criterion, double actualK, double limitK, double airK, Terms terms) {
    double use = limitK > airK ? (actualK - airK) / (limitK - airK) : Double.POSITIVE_INFINITY;
    return new Finding(criterion, actualK, limitK, use, terms, List.of());
  }

  static Finding notChecked(SizingCriterion criterion, Terms terms, List<String> missing) {
    return new Finding(criterion, Double.NaN, Double.NaN, Double.NaN, terms, missing);
  }

  boolean isNotChecked() {
    return !missing.isEmpty();
  }

  boolean fails() {
    if (isNotChecked()) {
      return false;
    }
    double rounding = ROUNDING * Math.abs(limitSi);
    return terms.isAtLeast()
        ? !(actualSi >= limitSi - rounding)
        : !(actualSi <= limitSi + rounding);
  }

  /** What to ask for where the verdict leans on an estimate. */
  private String[] estimates() {
    return terms.basis() == Basis.ESTIMATED ? criterion.estimates() : new String[0];
  }

  Check toCheck(String who) {
    CheckBuilder builder =
        Check.named(criterion.code(), criterion + " of " + who)
            .source(terms.source())
            .basis(terms.basis())
            .estimated(estimates())
            .note(terms.note());
    CheckBuilder check = criterion.isForSafety() ? builder.safety() : builder;
    if (isNotChecked()) {
      return check.notChecked(missing.toArray(String[]::new));
    }
    if (!(actualSi < Double.POSITIVE_INFINITY)) {
      return check.note("no steady temperature below 400 °C: the conductor runs away").holds(false);
    }
    Figure actual = Figure.ofSi(actualSi, terms.unit());
    Figure limit = Figure.ofSi(limitSi, terms.unit());
    return terms.isAtLeast() ? check.atLeast(actual, limit) : check.atMost(actual, limit);
  }
}
