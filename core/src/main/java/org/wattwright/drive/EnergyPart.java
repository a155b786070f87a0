package org.wattwright.drive;

/** Where the energy of the battery goes. */
public enum EnergyPart {
  /** Rolling resistance. */
  ROLLING("rolling resistance"),
  /** Air drag. */
  AIR("air drag"),
  /** Height gained; negative for height lost. */
  GRADE("grade"),
  /** Kinetic energy at the end less that at the start. */
  KINETIC("kinetic energy"),
  /** Friction brakes. */
  BRAKES("friction brakes"),
  /** Gears and final drive, both ways. */
  DRIVELINE("driveline"),
  /** Motor and inverter, both ways. */
  MOTOR("motor and inverter"),
  /** Auxiliaries. */
  AUXILIARIES("auxiliaries"),
  /** Cabin heater. */
  HEATER("heater"),
  /** Resistance of the pack, both ways. */
  PACK("pack resistance");

  private final String text;

  EnergyPart(String text) {
    this.text = text;
  }

  /**
   * In words.
   *
   * @return for example {@code rolling resistance}
   */
  @Override
  public String toString() {
    return text;
  }
}
