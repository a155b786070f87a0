package org.wattwright.check;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/**
 * One comparison with a limit: what, actual, limit, margin, source, basis and verdict.
 *
 * <p>A check is never silent. Missing data gives {@link Outcome#NOT_CHECKED} and names the missing
 * inputs; on a safety check an estimate gives at most {@link Outcome#CAUTION}. The code is stable
 * and may be used to find a check again.
 *
 * <pre>{@code
 * Check check = Check.named("voltage.maximum", "pack full at rest against inverter maximum")
 *     .source(Source.dataSheet("inverter"))
 *     .basis(Basis.DATA_SHEET)
 *     .atMost(Figure.of(volts(108), VOLT), Figure.of(volts(116), VOLT));
 * check.outcome();   // PASS
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class Check implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final Pattern CODE = Pattern.compile("[a-z0-9]+([.-][a-z0-9]+)*");

  /** How actual and limit are compared. */
  public enum Relation {
    /** The actual value may not exceed the limit. */
    AT_MOST("≤", ">"),
    /** The actual value must reach the limit. */
    AT_LEAST("≥", "<"),
    /** A statement that holds or does not. */
    HOLDS("", "");

    private final String sign;
    private final String brokenSign;

    Relation(String sign, String brokenSign) {
      this.sign = sign;
      this.brokenSign = brokenSign;
    }

    String brokenSign() {
      return brokenSign;
    }

    /**
     * The sign as reports print it.
     *
     * @return {@code ≤}, {@code ≥} or nothing
     */
    public String sign() {
      return sign;
    }
  }

  private final String code;
  private final String what;
  private final Relation relation;
  private final @Nullable Figure actual;
  private final @Nullable Figure limit;
  private final @Nullable Figure margin;
  private final Outcome outcome;
  private final Basis basis;
  private final Source source;
  private final List<String> missing;
  private final List<String> estimates;
  private final Party answeredBy;
  private final boolean safety;
  private final String note;

  Check(CheckBuilder builder, Relation relation, Outcome outcome, Figures figures) {
    this.code = builder.code();
    this.what = builder.what();
    this.basis = builder.basis();
    this.source = builder.source();
    this.missing = builder.missing();
    this.estimates = builder.estimates();
    this.answeredBy = builder.answeredBy();
    this.safety = builder.isSafety();
    this.note = builder.note();
    this.relation = relation;
    this.outcome = outcome;
    this.actual = figures.actual();
    this.limit = figures.limit();
    this.margin = figures.margin();
  }

  private Check(Check other, String what) {
    this.code = other.code;
    this.what = what;
    this.relation = other.relation;
    this.actual = other.actual;
    this.limit = other.limit;
    this.margin = other.margin;
    this.outcome = other.outcome;
    this.basis = other.basis;
    this.source = other.source;
    this.missing = other.missing;
    this.estimates = other.estimates;
    this.answeredBy = other.answeredBy;
    this.safety = other.safety;
    this.note = other.note;
  }

  /** The figures of a comparison, as far as they are known. */
  record Figures(@Nullable Figure actual, @Nullable Figure limit, @Nullable Figure margin) {
    static final Figures NONE = new Figures(null, null, null);
  }

  /**
   * Starts a check.
   *
   * @param code stable code, lower case with dots, such as {@code voltage.maximum}
   * @param what what is compared with what, in words
   * @return a builder that ends with {@code atMost}, {@code atLeast}, {@code holds} or {@code
   *     notChecked}
   * @throws InvalidInputException if what is blank, or code is not of letters, digits and hyphens
   *     in words joined by dots
   */
  public static CheckBuilder named(String code, String what) {
    if (!CODE.matcher(code).matches()) {
      throw InvalidInputException.of(
          "Check.code", "in lower case with dots, such as voltage.maximum", '"' + code + '"');
    }
    return new CheckBuilder(code, Require.text("Check.what", what));
  }

  /**
   * The same check, said of one case among several: a load case, a bay, a circuit.
   *
   * @param which the case, as reports print it behind what is compared
   * @return a check that differs in {@link #what()} alone
   * @throws InvalidInputException if the text is blank
   */
  public Check in(String which) {
    return new Check(this, what + ", " + Require.text("Check.in", which));
  }

  /**
   * The stable code.
   *
   * @return lower case with dots
   */
  public String code() {
    return code;
  }

  /**
   * What is compared with what.
   *
   * @return in words
   */
  public String what() {
    return what;
  }

  /**
   * How actual and limit are compared.
   *
   * @return the relation
   */
  public Relation relation() {
    return relation;
  }

  /**
   * The actual value.
   *
   * @return empty if it is not known, or a statement was checked
   */
  public Optional<Figure> actual() {
    return Optional.ofNullable(actual);
  }

  /**
   * The limit.
   *
   * @return empty if it is not known, or a statement was checked
   */
  public Optional<Figure> limit() {
    return Optional.ofNullable(limit);
  }

  /**
   * Distance to the limit, positive on the good side; a temperature's margin is a difference.
   *
   * @return empty if nothing was compared
   */
  public Optional<Figure> margin() {
    return Optional.ofNullable(margin);
  }

  /**
   * Share of the limit that is used; above 1 the limit is broken.
   *
   * @return actual by limit, or limit by actual where it must be reached; empty for a statement and
   *     for temperatures, whose zero means nothing
   */
  public Optional<Double> use() {
    Figure of = actual;
    Figure to = limit;
    if (of == null || to == null || of.kind() == Kind.TEMPERATURE) {
      return Optional.empty();
    }
    double share =
        relation == Relation.AT_LEAST ? to.value() / of.value() : of.value() / to.value();
    return Double.isNaN(share) ? Optional.empty() : Optional.of(share);
  }

  /**
   * The verdict.
   *
   * @return PASS, CAUTION, NOT_CHECKED or FAIL
   */
  public Outcome outcome() {
    return outcome;
  }

  /**
   * The weakest basis of the inputs.
   *
   * @return measured, data sheet or estimated
   */
  public Basis basis() {
    return basis;
  }

  /**
   * Where the limit comes from.
   *
   * @return the source
   */
  public Source source() {
    return source;
  }

  /**
   * The inputs that were missing.
   *
   * @return empty unless NOT_CHECKED
   */
  public List<String> missing() {
    return missing;
  }

  /**
   * The inputs that were estimated.
   *
   * @return their names, as far as given; empty if none is estimated
   */
  public List<String> estimates() {
    return estimates;
  }

  /**
   * Who can give a missing input, or replace an estimated one.
   *
   * @return the workshop unless stated
   */
  public Party answeredBy() {
    return answeredBy;
  }

  /**
   * Whether somebody may be hurt if this fails.
   *
   * @return whether this is a safety check
   */
  public boolean isSafety() {
    return safety;
  }

  /**
   * A remark for the reader.
   *
   * @return may be empty
   */
  public String note() {
    return note;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return this == other
        || (other instanceof Check that
            && code.equals(that.code)
            && what.equals(that.what)
            && relation == that.relation
            && Objects.equals(actual, that.actual)
            && Objects.equals(limit, that.limit)
            && outcome == that.outcome
            && basis == that.basis
            && source.equals(that.source)
            && missing.equals(that.missing)
            && estimates.equals(that.estimates)
            && answeredBy == that.answeredBy
            && safety == that.safety
            && note.equals(that.note));
  }

  @Override
  public int hashCode() {
    return Objects.hash(
        code,
        what,
        relation,
        actual,
        limit,
        outcome,
        basis,
        source,
        missing,
        estimates,
        answeredBy,
        safety,
        note);
  }

  /** Whether only the estimate among its inputs keeps this from a pass. */
  boolean isHeldBackByEstimate() {
    return safety && basis == Basis.ESTIMATED && outcome == Outcome.CAUTION;
  }

  /**
   * Actual value against limit with the sign that is true.
   *
   * @return for example {@code 131.4 V > 118.8 V}; empty if nothing was compared
   */
  public String comparison() {
    if (actual == null) {
      return "";
    }
    if (limit == null) {
      return actual.toString();
    }
    if (isKeptByRounding(actual, limit)) {
      return actual + " " + relation.sign() + " " + limit;
    }
    String sign = outcome == Outcome.FAIL ? relation.brokenSign() : relation.sign();
    return actual.toStringApartFrom(limit) + " " + sign + " " + limit.toStringApartFrom(actual);
  }

  /** Digits that tell the two apart would contradict the sign between them. */
  private boolean isKeptByRounding(Figure value, Figure bound) {
    boolean isBeyond =
        relation == Relation.AT_LEAST
            ? value.value() < bound.value()
            : value.value() > bound.value();
    return outcome != Outcome.FAIL && isBeyond;
  }

  /**
   * What is missing, what is estimated, and the note, as reports print it.
   *
   * @return in words; may be empty
   */
  public String remark() {
    List<String> parts = new ArrayList<>();
    if (!missing.isEmpty()) {
      parts.add("missing: " + String.join(", ", missing));
    }
    if (!estimates.isEmpty()) {
      parts.add("estimated: " + String.join(", ", estimates));
    }
    if (isHeldBackByEstimate()) {
      parts.add("an estimate gives at most a caution");
    }
    if (!note.isEmpty()) {
      parts.add(note);
    }
    return String.join("; ", parts);
  }

  /**
   * One line.
   *
   * @return for example {@code PASS voltage.maximum: 108 V ≤ 116 V, margin 8 V}
   */
  @Override
  public String toString() {
    String head = outcome + " " + code + ": ";
    if (outcome == Outcome.NOT_CHECKED) {
      return head + "missing " + String.join(", ", missing);
    }
    return head + (limit == null ? what : comparison() + ", margin " + margin);
  }
}
