package org.wattwright.protection;

import java.util.Locale;

/** What a circuit does in the vehicle, and with it what is usually asked of its protection. */
public enum CircuitRole {
  /** From the battery to the inverter. */
  TRACTION_MAIN("traction main", Way.BOTH),
  /** Between two bays of a split battery. */
  INTER_BAY_LINK("inter-bay link", Way.BOTH),
  /** One string of several in parallel, up to the common bus. */
  STRING("string", Way.BOTH),
  /** Output of the on-board charger. */
  CHARGER("charger", Way.INTO_BATTERY),
  /** Fast-charging inlet for direct current. */
  DC_INLET("DC inlet", Way.INTO_BATTERY),
  /** Mains inlet of the on-board charger. */
  AC_INLET("AC inlet", Way.OUT_OF_BATTERY),
  /** High-voltage side of the DC-DC converter. */
  DCDC_INPUT("DC-DC input", Way.OUT_OF_BATTERY),
  /** From the DC-DC converter to the low-voltage battery, fused at the battery. */
  DCDC_OUTPUT("DC-DC output", Way.OUT_OF_BATTERY),
  /** Cabin or battery heater. */
  HEATER("heater", Way.OUT_OF_BATTERY),
  /** Compressor, pump and other high-voltage loads. */
  AUXILIARY("auxiliary", Way.OUT_OF_BATTERY),
  /** From inverter to motor, alternating current. */
  MOTOR_PHASE("motor phase", Way.BOTH),
  /** Feed of a low-voltage load. */
  LOW_VOLTAGE_FEED("low-voltage feed", Way.OUT_OF_BATTERY),
  /** Cell or module voltage tap. */
  SENSE_WIRE("sense wire", Way.BOTH);

  /** Which way the current may flow. */
  enum Way {
    OUT_OF_BATTERY,
    INTO_BATTERY,
    BOTH
  }

  private final String label;
  private final Way way;

  CircuitRole(String label, Way way) {
    this.label = label;
    this.way = way;
  }

  /**
   * Whether the operating current may flow out of the battery.
   *
   * @return false for charging alone
   */
  public boolean takesFromBattery() {
    return way != Way.INTO_BATTERY;
  }

  /**
   * Whether the operating current may flow into the battery.
   *
   * @return true for charging and regeneration
   */
  public boolean feedsBattery() {
    return way != Way.OUT_OF_BATTERY;
  }

  /**
   * Whether a fault in the circuit is fed by the traction battery.
   *
   * @return false for the mains inlet, the motor phases and the low-voltage side
   */
  public boolean isFedByTractionBattery() {
    return this != AC_INLET
        && this != MOTOR_PHASE
        && this != DCDC_OUTPUT
        && this != LOW_VOLTAGE_FEED;
  }

  /**
   * The label as reports print it.
   *
   * @return for example {@code inter-bay link}
   */
  @Override
  public String toString() {
    return label;
  }

  /** Label in code form, such as {@code inter-bay-link}. */
  String code() {
    return label.toLowerCase(Locale.ROOT).replace(' ', '-');
  }
}
