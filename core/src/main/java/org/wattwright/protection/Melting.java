package org.wattwright.protection;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Joule integral that melts a fuse at a prospective current, on plain doubles: I∞²·t of the
 * pre-arcing curve, and the stated pre-arcing I²t beyond its short end.
 */
final class Melting {
  /** No heat is lost in times up to here; the I²t of IEC 60269-1 are those of 10 ms. */
  static final double ADIABATIC_S = 0.01;

  private final @Nullable TimeCurrentCurve curve;
  private final @Nullable Double statedA2S;
  private final double band;

  Melting(FuseData data) {
    this.curve = data.preArcing();
    this.statedA2S = data.preArcingA2S();
    this.band = curve != null ? curve.band() : 1 + TimeCurrentCurve.USUAL_TOLERANCE;
  }

  /** Where a current lies. */
  enum Place {
    BELOW_CURVE,
    ON_CURVE,
    ADIABATIC,
    UNKNOWN
  }

  /** Where the slowest link finds a current. */
  Place placeForSlowest(double prospectiveA) {
    double seenA = prospectiveA / band;
    if (curve != null && seenA < curve.firstA()) {
      return Place.BELOW_CURVE;
    }
    if (curve != null && seenA <= curve.lastA()) {
      return Place.ON_CURVE;
    }
    return isAdiabatic(prospectiveA) ? Place.ADIABATIC : Place.UNKNOWN;
  }

  private boolean isAdiabatic(double prospectiveA) {
    if (statedA2S == null) {
      return false;
    }
    boolean curveEndsThere = curve != null && curve.lastTimeS() <= ADIABATIC_S;
    return curveEndsThere || statedA2S / (prospectiveA * prospectiveA) <= ADIABATIC_S;
  }

  /** Most that it takes to melt; only where the place is on the curve or adiabatic. */
  double mostA2S(double prospectiveA) {
    if (curve != null && placeForSlowest(prospectiveA) == Place.ON_CURVE) {
      return prospectiveA * prospectiveA * curve.table().at(prospectiveA / band);
    }
    if (statedA2S == null) {
      throw new IllegalStateException("no pre-arcing I²t: ask for the place first");
    }
    // Stated is the fastest link; the slowest bears the band twice, and I²t goes with I².
    return statedA2S * Math.pow(band, 4);
  }

  /** Least that it takes to melt; null if neither the curve nor the stated I²t tells. */
  @Nullable Double leastA2S(double prospectiveA) {
    double seenA = prospectiveA * band;
    if (curve == null || seenA > curve.lastA()) {
      return statedA2S;
    }
    // Below the curve it takes longer still than at its first point.
    double timeS = curve.table().at(Math.max(seenA, curve.firstA()));
    return prospectiveA * prospectiveA * timeS;
  }

  /** Current at which the slowest curve has a time; empty outside the curve. */
  Optional<Double> slowestCurrentAtA(double timeS) {
    return curve != null && curve.table().coversInverse(timeS)
        ? Optional.of(curve.table().inverseAt(timeS) * band)
        : Optional.empty();
  }

  /** Currents at which the slowest curve bends. */
  double[] bendsA() {
    return bendsA(band);
  }

  /** Currents at which the fastest curve bends. */
  double[] fastestBendsA() {
    return bendsA(1 / band);
  }

  private double[] bendsA(double factor) {
    if (curve == null) {
      return new double[0];
    }
    double[] bends = new double[curve.table().size()];
    for (int i = 0; i < bends.length; i++) {
      bends[i] = curve.table().x(i) * factor;
    }
    return bends;
  }
}
