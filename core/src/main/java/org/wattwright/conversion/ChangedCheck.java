package org.wattwright.conversion;

import java.io.Serializable;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Outcome;

/**
 * A check that differs between two variants: in its verdict, in its margin, or because only one of
 * them has it.
 *
 * <p>Immutable and thread-safe.
 */
public final class ChangedCheck implements Serializable {
  private static final long serialVersionUID = 1L;

  private final @Nullable Check before;
  private final @Nullable Check after;

  ChangedCheck(@Nullable Check before, @Nullable Check after) {
    this.before = before;
    this.after = after;
  }

  /**
   * The check of the first variant.
   *
   * @return empty if only the second has it
   */
  public Optional<Check> before() {
    return Optional.ofNullable(before);
  }

  /**
   * The check of the second variant.
   *
   * @return empty if only the first has it
   */
  public Optional<Check> after() {
    return Optional.ofNullable(after);
  }

  /**
   * What is compared with what.
   *
   * @return in words, of the second variant if it has it
   */
  public String what() {
    return any().what();
  }

  /**
   * The stable code.
   *
   * @return lower case with dots
   */
  public String code() {
    return any().code();
  }

  private Check any() {
    return after().or(this::before).orElseThrow();
  }

  /**
   * Whether the verdict changed, not the margin alone.
   *
   * @return true also for a check that only one variant has
   */
  public boolean isOfVerdict() {
    return before == null || after == null || before.outcome() != after.outcome();
  }

  /**
   * Whether the second variant has the worse verdict; a check that it lacks, or that it alone has,
   * counts as NOT_CHECKED on the other side.
   *
   * @return true if it became worse
   */
  public boolean isWorse() {
    return outcome(after).compareTo(outcome(before)) > 0;
  }

  private static Outcome outcome(@Nullable Check check) {
    return check == null ? Outcome.NOT_CHECKED : check.outcome();
  }

  /** Verdict, comparison and margin of one side. */
  static String side(Optional<Check> check) {
    if (check.isEmpty()) {
      return "–";
    }
    String figures = check.get().comparison();
    String margin = check.get().margin().map(Figure::toString).map(m -> ", margin " + m).orElse("");
    return check.get().outcome() + (figures.isEmpty() ? "" : ": " + figures) + margin;
  }

  /**
   * One line.
   *
   * @return for example {@code front axle load, kerb: PASS: 558.2 kg ≤ 760 kg, margin 201.8 kg →
   *     FAIL: …}
   */
  @Override
  public String toString() {
    return what() + ": " + side(before()) + " → " + side(after());
  }
}
