package org.wattwright.layout;

import java.util.Objects;

/**
 * How much of the stated space a search has covered.
 *
 * <p>Immutable and thread-safe.
 *
 * @param covered candidates examined
 * @param total candidates of the space
 * @param next the first candidate that was not examined, in words; empty if there is none
 */
public record Coverage(long covered, long total, String next) {
  /** Whether the answer is proven over the stated space. */
  public enum Status {
    /** Every candidate was examined. */
    PROVEN,
    /** The search was cancelled, or its budget was used up. */
    STOPPED
  }

  /**
   * Checks the counts.
   *
   * @param covered candidates examined
   * @param total candidates of the space
   * @param next the first candidate that was not examined
   */
  public Coverage {
    if (covered < 0 || covered > total) {
      throw org.wattwright.units.InvalidInputException.of(
          "Coverage.covered", "from 0 to " + total, Long.toString(covered));
    }
    Objects.requireNonNull(next, "next");
  }

  /**
   * Whether the answer is proven.
   *
   * @return PROVEN if nothing remains
   */
  public Status status() {
    return covered == total ? Status.PROVEN : Status.STOPPED;
  }

  /**
   * Candidates not examined.
   *
   * @return 0 if proven
   */
  public long remaining() {
    return total - covered;
  }

  /**
   * Status and counts.
   *
   * @return for example {@code STOPPED after 100 of 600 candidates; not covered from 4s2p tall on}
   */
  @Override
  public String toString() {
    return status() == Status.PROVEN
        ? "PROVEN over " + total + " candidates"
        : "STOPPED after "
            + covered
            + " of "
            + total
            + " candidates; not covered from "
            + next
            + " on";
  }
}
