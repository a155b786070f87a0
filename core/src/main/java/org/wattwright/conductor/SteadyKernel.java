package org.wattwright.conductor;

/**
 * Surface temperature at which a surface loses what flows into it, by Newton's method in a bracket.
 *
 * <p>The inflow is linear in the surface temperature: for a current it is I²R(T_c) with T_c = T_s +
 * q·T₁ eliminated, for a given conductor temperature it is (T_c − T_s)/T₁. The first guess takes
 * the loss as a power of the rise, fitted at 30 K and 90 K; the slope is exact but for the kinks of
 * the table of air; the bracket keeps a wild step inside. The last step is taken without looking
 * again, since the bend of the loss bounds the error that it leaves.
 */
final class SteadyKernel {
  /** Highest surface temperature for which the formulas and the table of air are claimed. */
  static final double HIGHEST_K = 673.15;

  private static final double TRIAL_RISE_K = 30;
  private static final double TRIAL_RATIO = 3;

  /** Second derivative over first, times the rise, of convection: ∝ ΔT^1.33 at the most. */
  private static final double RISE_BEND = 0.34;

  /** Second derivative over first, times the temperature, of radiation: ∝ T⁴. */
  private static final double TEMPERATURE_BEND = 3;

  /** Error of a surface temperature that is small enough, in K. */
  private static final double ERROR_K = 1e-7;

  private static final int MOST_STEPS = 100;

  private final SurfaceLoss loss;
  private final double airK;
  private final double lossAtAirWPerM;
  private final double trialConductanceWPerMK;
  private final double conductanceExponent;

  SteadyKernel(SurfaceLoss loss) {
    this.loss = loss;
    this.airK = loss.airK();
    this.lossAtAirWPerM = loss.lossWPerM(airK);
    this.trialConductanceWPerMK = conductance(TRIAL_RISE_K);
    double ratio = conductance(TRIAL_RISE_K * TRIAL_RATIO) / trialConductanceWPerMK;
    this.conductanceExponent = Math.log(ratio) / Math.log(TRIAL_RATIO);
  }

  private double conductance(double riseK) {
    return (loss.lossWPerM(airK + riseK) - lossAtAirWPerM) / riseK;
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
    for (int i = 0; i < MOST_STEPS; i++) {
      double riseK = x - airK;
      double power = loss.powerOfRise(riseK);
      double f = loss.lossWPerM(riseK, power) - inflowAtAirWPerM - slopeWPerMK * riseK;
      double outward = loss.slopeWPerMK(riseK, power);
      double gain = outward - slopeWPerMK;
      low = f < 0 ? x : low;
      high = f < 0 ? high : x;
      double next = x - f / gain;
      if (next > low && next < high) {
        double stepK = next - x;
        double bend = outward * (RISE_BEND / (next - airK) + TEMPERATURE_BEND / next);
        if (bend * stepK * stepK <= 2 * ERROR_K * gain) {
          return next;
        }
      } else {
        if (high == HIGHEST_K && !(residual(HIGHEST_K, inflowAtAirWPerM, slopeWPerMK) >= 0)) {
          return Double.POSITIVE_INFINITY;
        }
        next = (low + high) / 2;
        if (!(next > low && next < high)) {
          return high;
        }
      }
      x = next;
    }
    throw new IllegalStateException(
        "no surface temperature between " + low + " K and " + high + " K after " + MOST_STEPS);
  }

  private double residual(double surfaceK, double inflowAtAirWPerM, double slopeWPerMK) {
    return loss.lossWPerM(surfaceK) - inflowAtAirWPerM - slopeWPerMK * (surfaceK - airK);
  }

  /** From excess = (G₃₀·(ΔT/30)^m − q₁)·ΔT, with the exponent of the bracket as it is at 30 K. */
  private double firstGuessK(double excessWPerM, double slopeWPerMK) {
    double conductance = trialConductanceWPerMK - slopeWPerMK;
    if (!(conductance > 0)) {
      return (airK + HIGHEST_K) / 2;
    }
    double ratio = excessWPerM / (conductance * TRIAL_RISE_K);
    double exponent = 1 + conductanceExponent * trialConductanceWPerMK / conductance;
    double riseK = TRIAL_RISE_K * Math.pow(ratio, 1 / exponent);
    return Math.min(airK + riseK, (airK + HIGHEST_K) / 2);
  }
}
