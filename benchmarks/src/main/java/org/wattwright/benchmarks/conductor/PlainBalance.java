package org.wattwright.benchmarks.conductor;

import org.apache.commons.math3.analysis.UnivariateFunction;

/**
 * The heat balance of a 35 mm² PVC cable in plain doubles: the raw limit, and the function that a
 * general solver is given.
 *
 * <p>Air is linear in the film temperature between 0 °C and 200 °C here, so that one evaluation
 * costs no more than ours; temperatures differ from the library's by up to a kelvin.
 */
final class PlainBalance implements UnivariateFunction {
  static final double AIR_K = 313.15;
  private static final double OUTER_M = 0.0117;
  private static final double THERMAL_KM_PER_W = 5.0 / (2 * Math.PI) * Math.log(11.7 / 7.9);
  private static final double OHM_PER_M = 0.554e-3;
  private static final double ALPHA = 0.00393;
  private static final double ROOT_OF_DIAMETER = Math.sqrt(OUTER_M);
  private static final double RADIATION = 0.9 * 5.670374419e-8 * Math.PI * OUTER_M;

  private final double atAirW;
  private final double slopeWPerK;

  PlainBalance(double currentA) {
    double referenceW = currentA * currentA * OHM_PER_M;
    double denominator = 1 - referenceW * ALPHA * THERMAL_KM_PER_W;
    slopeWPerK = referenceW * ALPHA / denominator;
    atAirW = referenceW * (1 + ALPHA * (AIR_K - 293.15)) / denominator;
  }

  double conductorK(double surfaceK) {
    return surfaceK + (atAirW + slopeWPerK * (surfaceK - AIR_K)) * THERMAL_KM_PER_W;
  }

  @Override
  public double value(double surfaceK) {
    double riseK = surfaceK - AIR_K;
    double filmC = (surfaceK + AIR_K) / 2 - 273.15;
    double conductivity = 0.02364 + 7.08e-5 * filmC;
    double group = 9.4 - 0.0127 * filmC;
    double root = 0.60 + group * ROOT_OF_DIAMETER * Math.cbrt(Math.sqrt(Math.abs(riseK)));
    double loss =
        Math.PI * conductivity * root * root * riseK
            + RADIATION * (fourth(surfaceK) - fourth(AIR_K));
    return loss - atAirW - slopeWPerK * riseK;
  }

  private static double fourth(double x) {
    double square = x * x;
    return square * square;
  }

  /** A secant without bracket, range check or estimate of the error: what cannot be undercut. */
  double secant() {
    double x0 = AIR_K;
    double f0 = -atAirW;
    double x1 = AIR_K + atAirW / (0.40 - slopeWPerK);
    double f1 = value(x1);
    for (int i = 0; i < 20; i++) {
      double next = x1 - f1 * (x1 - x0) / (f1 - f0);
      if (Math.abs(next - x1) <= 1e-5) {
        return next;
      }
      x0 = x1;
      f0 = f1;
      x1 = next;
      f1 = value(x1);
    }
    return x1;
  }
}
