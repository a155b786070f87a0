package org.wattwright.battery;

/** Which way current flows through a battery. */
public enum Direction {
  /** Out of the battery; current counts positive. */
  DISCHARGE,
  /** Into the battery; current counts negative. */
  CHARGE;

  /**
   * The name as reports print it.
   *
   * @return {@code discharge} or {@code charge}
   */
  @Override
  public String toString() {
    return this == DISCHARGE ? "discharge" : "charge";
  }
}
