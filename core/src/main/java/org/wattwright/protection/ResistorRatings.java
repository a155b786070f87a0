package org.wattwright.protection;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.LogLogTable;

/** What a pre-charge resistor stands, in SI; null where the catalogue does not say. */
record ResistorRatings(
    @Nullable Double tolerance,
    @Nullable Double continuousW,
    @Nullable Double pulseJ,
    @Nullable LogLogTable overload,
    @Nullable Double voltageV)
    implements Serializable {
  static final ResistorRatings UNKNOWN = new ResistorRatings(null, null, null, null, null);

  ResistorRatings withTolerance(double share) {
    return new ResistorRatings(share, continuousW, pulseJ, overload, voltageV);
  }

  ResistorRatings withContinuousW(double watt) {
    return new ResistorRatings(tolerance, watt, pulseJ, overload, voltageV);
  }

  ResistorRatings withPulseJ(double joule) {
    return new ResistorRatings(tolerance, continuousW, joule, overload, voltageV);
  }

  ResistorRatings withOverload(LogLogTable table) {
    return new ResistorRatings(tolerance, continuousW, pulseJ, table, voltageV);
  }

  ResistorRatings withVoltageV(double volt) {
    return new ResistorRatings(tolerance, continuousW, pulseJ, overload, volt);
  }

  /** How long it bears a power: infinite if for any time; NaN if not known. */
  double bearsS(double powerW) {
    if (continuousW != null && powerW <= continuousW) {
      return Double.POSITIVE_INFINITY;
    }
    if (overload != null && overload.covers(powerW)) {
      return overload.at(powerW);
    }
    return pulseJ == null ? Double.NaN : pulseJ / powerW;
  }
}
