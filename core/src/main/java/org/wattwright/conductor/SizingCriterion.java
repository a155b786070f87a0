package org.wattwright.conductor;

/** What a conductor size must pass. */
public enum SizingCriterion {
  /** Steady conductor temperature at the continuous current. */
  CONTINUOUS_TEMPERATURE("conductor.continuous-temperature", "continuous temperature"),
  /** Continuous current by the ampacity method that was asked for. */
  AMPACITY("conductor.ampacity", "ampacity"),
  /** Highest conductor temperature over the repeated current profile. */
  PROFILE_PEAK_TEMPERATURE("conductor.profile-peak-temperature", "profile peak"),
  /** Temperature of the hottest terminal. */
  TERMINAL_TEMPERATURE("conductor.terminal-temperature", "terminal temperature"),
  /** Voltage lost in both polarities with all joints. */
  VOLTAGE_DROP("conductor.voltage-drop", "voltage drop"),
  /** Joule integral of the fault against what the conductor withstands. */
  SHORT_CIRCUIT("conductor.short-circuit", "short circuit"),
  /** Smallest bend radius against the room there is. */
  BEND_RADIUS("conductor.bend-radius", "bend radius"),
  /** Area against the mechanical minimum. */
  MECHANICAL_MINIMUM("conductor.mechanical-minimum", "mechanical minimum"),
  /** Voltage rating against the highest voltage of the circuit. */
  VOLTAGE_RATING("conductor.voltage-rating", "voltage rating");

  private final String code;
  private final String label;

  SizingCriterion(String code, String label) {
    this.code = code;
    this.label = label;
  }

  /**
   * Code of its check.
   *
   * @return lower case with dots
   */
  public String code() {
    return code;
  }

  /**
   * Whether a wrong verdict could burn or shock somebody; an estimate is then at most a caution.
   *
   * @return false for voltage drop, bend radius and mechanical minimum
   */
  public boolean isForSafety() {
    return this != VOLTAGE_DROP && this != BEND_RADIUS && this != MECHANICAL_MINIMUM;
  }

  /** The inputs of it that may be an estimate; empty if none may. */
  String[] estimates() {
    return switch (this) {
      case CONTINUOUS_TEMPERATURE, AMPACITY, SHORT_CIRCUIT ->
          new String[] {"dimensions of the cable, and how it is laid"};
      case PROFILE_PEAK_TEMPERATURE ->
          new String[] {"heat capacity of the insulation, dimensions of the cable, how it is laid"};
      case TERMINAL_TEMPERATURE -> new String[] {"temperature rise of the lugs"};
      case VOLTAGE_DROP -> new String[] {"resistance of the joints"};
      case BEND_RADIUS -> new String[] {"dimensions of the cable"};
      case MECHANICAL_MINIMUM, VOLTAGE_RATING -> new String[0];
    };
  }

  /**
   * The label as reports print it.
   *
   * @return for example {@code voltage drop}
   */
  @Override
  public String toString() {
    return label;
  }
}
