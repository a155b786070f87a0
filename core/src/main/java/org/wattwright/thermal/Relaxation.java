package org.wattwright.thermal;

/**
 * C·dT/dt = q − G·(T − Ts) with q, G and Ts constant, in closed forms that also hold for G = 0.
 *
 * <p>r is the rate at the start, (q − G·(T₀ − Ts))/C, and k = G/C.
 */
final class Relaxation {
  private static final double SERIES_BELOW = 1e-2;

  private Relaxation() {}

  /** T₀ + r·t·φ₁(−k·t), φ₁(x) = (eˣ − 1)/x. */
  static double afterK(double startK, double rateKPerS, double decayPerS, double timeS) {
    return startK + rateKPerS * timeS * phi1(-decayPerS * timeS);
  }

  /** ∫(T − T₀)·dt from 0 to t: r·t²·φ₂(−k·t), φ₂(x) = (eˣ − 1 − x)/x². */
  static double riseIntegralKs(double rateKPerS, double decayPerS, double timeS) {
    return rateKPerS * timeS * timeS * phi2(-decayPerS * timeS);
  }

  /** Time in which T rises (or falls) by a difference; infinite if it never does. */
  static double timeToS(double riseK, double rateKPerS, double decayPerS) {
    if (riseK == 0) {
      return 0;
    }
    if (!(riseK * rateKPerS > 0)) {
      return Double.POSITIVE_INFINITY;
    }
    double linearS = riseK / rateKPerS;
    double argument = -decayPerS * linearS;
    if (argument == 0) {
      return linearS;
    }
    return argument > -1 ? -Math.log1p(argument) / decayPerS : Double.POSITIVE_INFINITY;
  }

  private static double phi1(double x) {
    return x == 0 ? 1 : Math.expm1(x) / x;
  }

  private static double phi2(double x) {
    if (Math.abs(x) < SERIES_BELOW) {
      return 1 / 2d + x * (1 / 6d + x * (1 / 24d + x * (1 / 120d + x * (1 / 720d + x / 5040))));
    }
    return (Math.expm1(x) - x) / (x * x);
  }
}
