package org.wattwright.protection;

import java.io.Serializable;
import javax.measure.quantity.ElectricCurrent;
import org.jspecify.annotations.Nullable;
import org.wattwright.profile.Profile;
import org.wattwright.units.Kind;

/**
 * What a circuit carries, in SI; null where it is not known.
 *
 * @param operatingA highest in normal operation, if it is not that of profile or continuous current
 * @param bus capacitors at the load end and what empties or loads them
 */
record CircuitLoad(
    @Nullable Double continuousA,
    @Nullable Profile<ElectricCurrent> profile,
    @Nullable Double operatingA,
    CircuitBus bus)
    implements Serializable {

  /** The profile's peak or the continuous current; 0 if none is known. */
  double leastPeakA() {
    double peakA = profile == null ? 0 : Math.abs(Kind.CURRENT.siValueOf(profile.peak()));
    return continuousA == null ? peakA : Math.max(peakA, continuousA);
  }

  /** Highest current in normal operation; 0 if none is known. */
  double highestA() {
    return operatingA == null ? leastPeakA() : operatingA;
  }

  /** Continuous current, or the profile's RMS; null if neither is known. */
  @Nullable Double heatingA() {
    if (continuousA != null) {
      return continuousA;
    }
    return profile == null ? null : Kind.CURRENT.siValueOf(profile.rms());
  }
}
