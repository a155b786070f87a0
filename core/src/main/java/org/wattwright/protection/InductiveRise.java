package org.wattwright.protection;

/**
 * A current that rises through an inductance, i = I∞·(1 − e^(−t/τ)), on plain doubles in SI.
 *
 * <p>With x = t/τ and m = 1 − e^(−x) the joule integral is I∞²·τ·g(x), g = x − m − m²/2 = x − 2(1 −
 * e^(−x)) + ½(1 − e^(−2x)).
 */
final class InductiveRise {
  /** Below this the difference of near-equal numbers is replaced by the series of g. */
  private static final double SERIES_BELOW = 0.5;

  private static final int MOST_STEPS = 100;
  private static final double CLOSE_ENOUGH = 4e-16;

  private InductiveRise() {}

  static double currentA(double finalA, double tauS, double timeS) {
    return tauS == 0 ? finalA : -finalA * Math.expm1(-timeS / tauS);
  }

  static double jouleIntegralA2S(double finalA, double tauS, double timeS) {
    if (timeS == 0) {
      return 0;
    }
    double x = timeS / tauS;
    if (x < SERIES_BELOW) {
      return finalA * finalA * tauS * series(x);
    }
    double m = -Math.expm1(-x);
    return finalA * finalA * (timeS - tauS * (m + m * m / 2));
  }

  /** Time at which the joule integral is reached. */
  static double timeS(double finalA, double tauS, double integralA2S) {
    double steadyS = integralA2S / (finalA * finalA);
    if (tauS == 0 || steadyS == 0) {
      return steadyS;
    }
    double wanted = steadyS / tauS;
    // g is convex and below both x and x³/3, so that Newton's steps come down from the right.
    double x = Math.max(wanted, Math.cbrt(3 * wanted));
    for (int i = 0; i < MOST_STEPS; i++) {
      double slope = Math.expm1(-x) * Math.expm1(-x);
      double step = (shape(x) - wanted) / slope;
      x -= step;
      if (Math.abs(step) <= CLOSE_ENOUGH * x) {
        break;
      }
    }
    return x * tauS;
  }

  private static double shape(double x) {
    if (x < SERIES_BELOW) {
      return series(x);
    }
    double m = -Math.expm1(-x);
    return x - m - m * m / 2;
  }

  /** g = Σ (−1)ⁿ·(2ⁿ − 2)/(n + 1)!·x^(n + 1), from n = 2: x³/3 − x⁴/4 + 7x⁵/60 … */
  private static double series(double x) {
    double term = x * x / 2;
    double power = 2;
    double sum = 0;
    for (int n = 2; n < MOST_STEPS; n++) {
      power *= 2;
      term *= -x / (n + 1);
      double next = -(power - 2) * term;
      sum += next;
      if (Math.abs(next) <= CLOSE_ENOUGH * sum) {
        break;
      }
    }
    return sum;
  }
}
