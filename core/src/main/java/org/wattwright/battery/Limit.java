package org.wattwright.battery;

/** What limits the power of a pack. */
public enum Limit {
  /** A cell reaches its lowest or highest voltage. */
  VOLTAGE("cell voltage"),
  /** A cell reaches its rated current. */
  CURRENT("cell current"),
  /** The temperature forbids the current, or reduces it. */
  TEMPERATURE("cell temperature"),
  /** More current would bring less power: half the open-circuit voltage is lost inside. */
  POWER_TRANSFER("power-transfer maximum");

  private final String label;

  Limit(String label) {
    this.label = label;
  }

  /**
   * The limit in words.
   *
   * @return for example {@code cell voltage}
   */
  @Override
  public String toString() {
    return label;
  }
}
