package org.wattwright.installation;

/** Limits and settings of temperature in a {@link SettingsLadder}. */
public enum TemperatureStep {
  /** Coldest cell that may be charged, by its data sheet. */
  COLDEST_CHARGE("coldest charge of the cell"),
  /** Reading below which charging and regeneration are inhibited. */
  CHARGE_INHIBIT("cold-charge inhibit"),
  /** Reading at which the contactors open. */
  HOT_TRIP("hot trip"),
  /** Hottest cell, by its data sheet. */
  HOTTEST_CELL("hottest cell");

  private final String label;

  TemperatureStep(String label) {
    this.label = label;
  }

  /**
   * The label as reports print it.
   *
   * @return for example {@code cold-charge inhibit}
   */
  @Override
  public String toString() {
    return label;
  }
}
