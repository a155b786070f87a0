package org.wattwright.drive;

import java.io.Serializable;
import org.wattwright.units.Kind;
import org.wattwright.voltage.VoltageRange;
import org.wattwright.voltage.VoltageWindow;

/** The derating of a voltage window as plain numbers: its two bands with straight lines between. */
record DeratingTable(double lowestV, double fullFromV, double fullToV, double highestV)
    implements Serializable {
  static DeratingTable of(VoltageWindow window) {
    VoltageRange outer = window.operating();
    VoltageRange inner = window.fullPerformance().orElse(outer);
    return new DeratingTable(
        Kind.VOLTAGE.siValueOf(outer.lowest()),
        Kind.VOLTAGE.siValueOf(inner.lowest()),
        Kind.VOLTAGE.siValueOf(inner.highest()),
        Kind.VOLTAGE.siValueOf(outer.highest()));
  }

  double at(double voltageV) {
    if (!(voltageV >= lowestV && voltageV <= highestV)) {
      return 0;
    }
    if (voltageV < fullFromV) {
      return (voltageV - lowestV) / (fullFromV - lowestV);
    }
    return voltageV > fullToV ? (highestV - voltageV) / (highestV - fullToV) : 1;
  }
}
