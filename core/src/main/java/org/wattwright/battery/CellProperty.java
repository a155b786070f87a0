package org.wattwright.battery;

/** Groups of cell data that may rest on a basis of their own. */
public enum CellProperty {
  /** Capacity. */
  CAPACITY("capacity"),
  /** Open-circuit curve and voltage limits. */
  VOLTAGE("voltage"),
  /** Resistance for seconds, and the RC pair. */
  RESISTANCE("resistance"),
  /** Resistance for milliseconds. */
  OHMIC_RESISTANCE("ohmic resistance"),
  /** Current limits. */
  CURRENT("current limits"),
  /** Temperature limits. */
  TEMPERATURE("temperature limits"),
  /** Mass and size. */
  MASS("mass and size"),
  /** Specific heat and entropic coefficient. */
  HEAT("specific heat");

  private final String label;

  CellProperty(String label) {
    this.label = label;
  }

  /**
   * The property in words.
   *
   * @return for example {@code ohmic resistance}
   */
  @Override
  public String toString() {
    return label;
  }
}
