package org.wattwright.protection;

/**
 * Direction in which a contactor's current flows when it opens.
 *
 * <p>Polarised contacts blow the arc into the chamber in one direction only; in the other they may
 * not break, which a vehicle meets under regeneration and while charging.
 */
public enum BreakDirection {
  /** From the terminal marked plus to the other: discharge. */
  FORWARD("forward"),
  /** Against the marks: regeneration, charge. */
  REVERSE("reverse");

  private final String label;

  BreakDirection(String label) {
    this.label = label;
  }

  /**
   * The word as reports print it.
   *
   * @return {@code forward} or {@code reverse}
   */
  @Override
  public String toString() {
    return label;
  }
}
