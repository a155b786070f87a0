package org.wattwright.voltage;

/** What a device on the traction bus does, as far as it decides which voltages it meets. */
public enum DeviceRole {
  /** Inverter of the drive unit: meets every voltage, driving and regenerating. */
  INVERTER("inverter"),
  /** On-board charger: must reach the end-of-charge voltage of the pack. */
  CHARGER("charger"),
  /** DC-DC converter to the low-voltage system. */
  CONVERTER("DC-DC converter"),
  /** Heater of cabin or pack. */
  HEATER("heater"),
  /** Any other load. */
  OTHER("load");

  private final String label;

  DeviceRole(String label) {
    this.label = label;
  }

  /**
   * The role in words.
   *
   * @return for example {@code DC-DC converter}
   */
  @Override
  public String toString() {
    return label;
  }
}
