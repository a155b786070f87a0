package org.wattwright.drive;

/** What ended a run. */
public enum RangeEnd {
  /** The state of charge to be kept in reserve was reached. */
  RESERVE("the reserve is reached"),
  /** The vehicle fell behind the trace for four seconds or more. */
  LEFT_BEHIND("the cycle cannot be followed"),
  /** The bound on the number of cycles was reached. */
  MOST_CYCLES("the most cycles are driven");

  private final String text;

  RangeEnd(String text) {
    this.text = text;
  }

  /**
   * In words.
   *
   * @return for example {@code the reserve is reached}
   */
  @Override
  public String toString() {
    return text;
  }
}
