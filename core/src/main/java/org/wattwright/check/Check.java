package org.wattwright.check;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.Require;

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

  /** How actual and limit are compared. */
  public enum Relation {
    /** The actual value may not exceed the limit. */
    AT_MOST("≤"),
    /** The actual value must reach the limit. */
    AT_LEAST("≥"),
    /** A statement that holds or does not. */
    HOLDS("");

    private final String sign;

    Relation(String sign) {
      this.sign = sign;
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
  private final String note;

  Check(CheckBuilder builder, Relation relation, Outcome outcome, Figures figures) {
    this.code = builder.code();
    this.what = builder.what();
    this.basis = builder.basis();
    this.source = builder.source();
    this.missing = builder.missing();
    this.note = builder.note();
    this.relation = relation;
    this.outcome = outcome;
    this.actual = figures.actual();
    this.limit = figures.limit();
    this.margin = figures.margin();
  }

  /** The three figures of a comparison; all absent where nothing was compared. */
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
   * @throws org.wattwright.units.InvalidInputException if a text is blank
   */
  public static CheckBuilder named(String code, String what) {
    return new CheckBuilder(Require.text("Check.code", code), Require.text("Check.what", what));
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
   * @return empty if nothing was compared
   */
  public Optional<Figure> actual() {
    return Optional.ofNullable(actual);
  }

  /**
   * The limit.
   *
   * @return empty if nothing was compared
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
            && note.equals(that.note));
  }

  @Override
  public int hashCode() {
    return Objects.hash(code, what, actual, limit, outcome);
  }

  /**
   * One line.
   *
   * @return for example {@code PASS voltage.maximum: 108 V ≤ 116 V, margin 8 V}
   */
  @Override
  public String toString() {
    String head = outcome + " " + code + ": ";
    if (outcome == Outcome.NOT_CHECKED && !missing.isEmpty()) {
      return head + "missing " + String.join(", ", missing);
    }
    if (actual == null || limit == null) {
      return head + what;
    }
    return head + actual + " " + relation.sign() + " " + limit + ", margin " + margin;
  }
}
