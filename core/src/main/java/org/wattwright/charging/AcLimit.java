package org.wattwright.charging;

/** What limits the current drawn from the mains, in the order in which equal ones are named. */
public enum AcLimit {
  /** What the control pilot offers. */
  PILOT("control pilot"),
  /** What the coding resistor of the cable allows. */
  CABLE("cable coding"),
  /** What the supply circuit carries for hours. */
  SUPPLY("supply circuit"),
  /** What the charger draws at most. */
  CHARGER("charger input current");

  private final String label;

  AcLimit(String label) {
    this.label = label;
  }

  /**
   * The limit in words.
   *
   * @return for example {@code supply circuit}
   */
  @Override
  public String toString() {
    return label;
  }
}
