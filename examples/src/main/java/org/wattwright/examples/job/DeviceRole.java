package org.wattwright.examples.job;

/** What a device does on the traction circuit. */
public enum DeviceRole {
  /** Motor with its inverter. */
  DRIVE_UNIT("drive unit"),
  /** On-board charger. */
  CHARGER("charger"),
  /** Converter to the low-voltage system. */
  DC_DC_CONVERTER("DC-DC converter"),
  /** Cabin or coolant heater. */
  HEATER("heater");

  private final String label;

  DeviceRole(String label) {
    this.label = label;
  }

  /**
   * The words of the job file.
   *
   * @return for example {@code drive unit}
   */
  @Override
  public String toString() {
    return label;
  }
}
