package org.wattwright.charging;

/** What limits a charge at a moment, in the order in which equal ones are named. */
public enum ChargeLimit {
  /** The control pilot. */
  PILOT("control pilot"),
  /** The coding resistor of the charging cable. */
  CABLE("cable coding"),
  /** The supply circuit. */
  SUPPLY("supply circuit"),
  /** The charger's largest input current or power. */
  CHARGER_INPUT("charger input"),
  /** The largest output power of charger or station, derated if so. */
  CHARGER_POWER("charger output power"),
  /** The largest output current of charger or station. */
  CHARGER_CURRENT("charger output current"),
  /** The lowest output voltage of charger or station: the pack's rest voltage lies below it. */
  CHARGER_START("lowest output voltage of the charger"),
  /** The highest output voltage of charger or station. */
  CHARGER_VOLTAGE("charger output voltage"),
  /** The current the vehicle asks for at most. */
  SET_CURRENT("current asked for"),
  /** The power the vehicle asks for at most. */
  SET_POWER("power asked for"),
  /** The end-of-charge voltage of the pack, or the one the vehicle asks for. */
  CHARGE_VOLTAGE("charge voltage"),
  /** The rated charge current of a cell. */
  CELL_CURRENT("cell current"),
  /** The cells' temperature forbids or reduces the current. */
  CELL_TEMPERATURE("cell temperature"),
  /** A cell reaches its highest voltage. */
  CELL_VOLTAGE("cell voltage");

  private final String label;

  ChargeLimit(String label) {
    this.label = label;
  }

  static ChargeLimit of(AcLimit limit) {
    return switch (limit) {
      case PILOT -> PILOT;
      case CABLE -> CABLE;
      case SUPPLY -> SUPPLY;
      case CHARGER -> CHARGER_INPUT;
    };
  }

  /**
   * Whether it is a voltage that is held while the current falls: the taper at the end of a charge.
   *
   * @return true for the voltages of cell, pack and charger
   */
  public boolean isTaper() {
    return this == CELL_VOLTAGE || this == CHARGE_VOLTAGE || this == CHARGER_VOLTAGE;
  }

  /**
   * The limit in words.
   *
   * @return for example {@code charge voltage}
   */
  @Override
  public String toString() {
    return label;
  }
}
