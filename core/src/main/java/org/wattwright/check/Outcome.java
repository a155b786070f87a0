package org.wattwright.check;

import java.util.Collection;

/** Verdict of a check, from best to worst. */
public enum Outcome {
  /** The limit is kept, with more than the caution band to spare. */
  PASS,
  /** The limit is kept, but within the caution band, or on the strength of an estimate. */
  CAUTION,
  /** An input is missing: nothing is known, so nothing is claimed. */
  NOT_CHECKED,
  /** The limit is broken. */
  FAIL;

  /**
   * The worse of two: FAIL over NOT_CHECKED over CAUTION over PASS.
   *
   * @param other the other verdict
   * @return the worse
   */
  public Outcome and(Outcome other) {
    return compareTo(other) >= 0 ? this : other;
  }

  /**
   * The worst of many.
   *
   * @param checks any number of checks
   * @return the worst verdict; PASS if there is none, so say with {@link Checks#summary} that
   *     nothing was checked
   */
  public static Outcome worstOf(Collection<Check> checks) {
    Outcome worst = PASS;
    for (Check check : checks) {
      worst = worst.and(check.outcome());
    }
    return worst;
  }

  /**
   * The name as reports print it.
   *
   * @return {@code PASS}, {@code CAUTION}, {@code NOT CHECKED} or {@code FAIL}
   */
  @Override
  public String toString() {
    return this == NOT_CHECKED ? "NOT CHECKED" : name();
  }
}
