package org.wattwright.examples.plot;

/** What a symbol of a single-line diagram stands for; drawn as IEC 60617 has it. */
public enum LineSymbol {
  /** Cells in series. */
  BATTERY(34),
  /** Fuse: a rectangle with the conductor through it. */
  FUSE(34),
  /** Disconnector: an open blade, a bar at the fixed contact. */
  DISCONNECTOR(34),
  /** Contactor: an open blade, a half circle at the fixed contact. */
  CONTACTOR(34),
  /** Contactor with a resistor and its own contactor beside it. */
  PRECHARGED_CONTACTOR(58),
  /** Cable: a stroke through the conductor. */
  CABLE(26),
  /** Direct to alternating current. */
  INVERTER(40),
  /** Direct to direct current. */
  DC_CONVERTER(40),
  /** Alternating to direct current. */
  CHARGER(40),
  /** Motor for three phases. */
  MOTOR(40),
  /** Heating element. */
  HEATER(40),
  /** Plug and socket. */
  INLET(34),
  /** Any other load. */
  LOAD(34);

  private final double height;

  LineSymbol(double height) {
    this.height = height;
  }

  /** Height with its leads. */
  double height() {
    return height;
  }

  /** From the conductor to the left edge of the case. */
  double halfWidth() {
    return this == HEATER ? 6 : 14;
  }

  /** Whether its metal case is bonded to the chassis. */
  boolean hasCase() {
    return switch (this) {
      case INVERTER, DC_CONVERTER, CHARGER, MOTOR, HEATER -> true;
      default -> false;
    };
  }
}
