package org.wattwright.conversion;

/** The state in which a range is asked for. */
public enum RangeCase {
  /** Pack as built, at the state and in the air of the vehicle as given. */
  NEW("new"),
  /** New pack, fully laden. */
  LADEN("laden"),
  /** Pack at the age given, all else the same. */
  AGED("aged"),
  /** New pack, cold, in cold air, with the heater on. */
  WINTER("winter");

  private final String label;

  RangeCase(String label) {
    this.label = label;
  }

  /**
   * The label as reports print it.
   *
   * @return for example {@code winter}
   */
  @Override
  public String toString() {
    return label;
  }
}
