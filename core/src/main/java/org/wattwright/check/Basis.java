package org.wattwright.check;

/** What an input rests on, from strongest to weakest. */
public enum Basis {
  /** Measured on this very part or vehicle. */
  MEASURED("measured"),
  /** Stated by a data sheet, a plate, a standard or the customer. */
  DATA_SHEET("data sheet"),
  /** Estimated by a named rule. */
  ESTIMATED("estimated");

  private final String label;

  Basis(String label) {
    this.label = label;
  }

  /**
   * The weaker of two; a result is no better than its weakest input.
   *
   * @param other the other basis
   * @return the weaker
   */
  public Basis and(Basis other) {
    return compareTo(other) >= 0 ? this : other;
  }

  /**
   * The label as reports print it.
   *
   * @return {@code measured}, {@code data sheet} or {@code estimated}
   */
  @Override
  public String toString() {
    return label;
  }
}
