package org.wattwright.conductor;

/**
 * Surface temperature at which a surface loses what flows into it, by a bracketed secant.
 *
 * <p>The inflow is linear in the surface temperature: for a current it is I²R(T_c) with T_c = T_s +
 * q·T₁ eliminated, for a given conductor temperature it is (T_c − T_s)/T₁. The first guess takes
 * the loss as ∝ ΔT^1.2, the first slope follows from it, and the bracket keeps a wild step inside.
 * Three evaluations are usual, four the most seen.
 */
final class SteadyKernel {
  /** Highest surface temperature for which the formulas and the table of air are claimed. */
  static final double HIGHEST_K = 673.15;

  private static final double TRIAL_RISE_K = 30;
  private static final double EXPONENT = 1.2;

  /**
   * A secant step this small, as a share of the rise, leaves an error of less than 1e-6 K: the
   * error is of the order of the product of the last two steps.
   */
  private static final double LAST_STEP_SHARE = 1e-5;

  /** The first slope is a guess, so its step leaves an error of the order of itself. */
  private static final double LAST_GUESSED_STEP_SHARE = 1e-8;

  private static final int MOST_STEPS = 100;

  private final SurfaceLoss loss;
  private final double airK;
  private final double lossAtAirWPerM;
  private final double trialConductanceWPerMK;

  SteadyKernel(SurfaceLoss loss) {
    this.loss = loss;
    this.airK = loss.airK();
    this.lossAtAirWPerM = loss.lossWPerM(airK);
    double trialWPerM = loss.lossWPerM(airK + TRIAL_RISE_K) - lossAtAirWPerM;
    this.trialConductanceWPerMK = trialWPerM / TRIAL_RISE_K;
  }

  SurfaceLoss loss() {
    return loss;
  }

  /** Loss over rise at a rise of 30 K, in W/(m·K). */
  double trialConductance() {
    return trialConductanceWPerMK;
  }

  /**
   * Solves loss(T_s) = q₀ + q₁·(T_s − T_air) for T_s ≥ T_air; infinite if that lies above {@link
   * #HIGHEST_K}.
   */
  double surfaceK(double inflowAtAirWPerM, double slopeWPerMK) {
    double excessWPerM = inflowAtAirWPerM - lossAtAirWPerM;
    if (!(excessWPerM > 0)) {
      return airK;
    }
    double low = airK;
    double high = HIGHEST_K;
    double x = firstGuessK(excessWPerM, slopeWPerMK);
    double f = residual(x, inflowAtAirWPerM, slopeWPerMK);
    double riseK = x - airK;
    double gain = EXPONENT * (f + excessWPerM + slopeWPerMK * riseK) / riseK - slopeWPerMK;
    for (int i = 0; i < MOST_STEPS; i++) {
      low = f < 0 ? x : low;
      high = f < 0 ? high : x;
      double next = x - f / gain;
      double share = i == 0 ? LAST_GUESSED_STEP_SHARE : LAST_STEP_SHARE;
      if (Math.abs(next - x) <= share * (next - airK)) {
        return next;
      }
      if (!(next > low && next < high)) {
        if (high == HIGHEST_K && !(residual(HIGHEST_K, inflowAtAirWPerM, slopeWPerMK) >= 0)) {
          return Double.POSITIVE_INFINITY;
        }
        next = (low + high) / 2;
      }
      double nextF = residual(next, inflowAtAirWPerM, slopeWPerMK);
      gain = (nextF - f) / (next - x);
      x = next;
      f = nextF;
    }
    throw new IllegalStateException(
        "no surface temperature between " + low + " K and " + high + " K after " + MOST_STEPS);
  }

  private double residual(double surfaceK, double inflowAtAirWPerM, double slopeWPerMK) {
    return loss.lossWPerM(surfaceK) - inflowAtAirWPerM - slopeWPerMK * (surfaceK - airK);
  }

  /** From excess = (G₃₀·(ΔT/30)^0.2 − q₁)·ΔT with the power worked in. */
  private double firstGuessK(double excessWPerM, double slopeWPerMK) {
    double conductance = trialConductanceWPerMK - slopeWPerMK;
    if (!(conductance > 0)) {
      return (airK + HIGHEST_K) / 2;
    }
    double ratio = excessWPerM / (conductance * TRIAL_RISE_K);
    double riseK = TRIAL_RISE_K * ratio / CylinderLoss.sixthRoot(ratio);
    return Math.min(airK + riseK, (airK + HIGHEST_K) / 2);
  }
}
