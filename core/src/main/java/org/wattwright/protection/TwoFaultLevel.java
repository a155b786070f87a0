package org.wattwright.protection;

/** Voltage and resistance of a part at one end of its band, in SI; NaN if not known. */
record TwoFaultLevel(double voltageV, double resistanceOhm) {
  static final TwoFaultLevel NOTHING = new TwoFaultLevel(0, 0);
  static final TwoFaultLevel UNKNOWN = new TwoFaultLevel(Double.NaN, Double.NaN);

  TwoFaultLevel plus(TwoFaultLevel other) {
    return new TwoFaultLevel(voltageV + other.voltageV, resistanceOhm + other.resistanceOhm);
  }

  double currentA() {
    return voltageV / resistanceOhm;
  }

  boolean isKnown() {
    return voltageV >= 0;
  }
}
