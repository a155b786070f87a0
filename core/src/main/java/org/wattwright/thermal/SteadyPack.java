package org.wattwright.thermal;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.wattwright.battery.Direction;
import org.wattwright.battery.PackState;
import org.wattwright.units.Kind;

/**
 * Balance of heat and loss for good: the current for a temperature, the temperature of a current.
 */
final class SteadyPack {
  private static final double HOTTEST_K = 473.15;
  private static final double COLDEST_K = 173.15;
  private static final double SCAN_K = 1;
  private static final double ACCURACY_K = 1e-9;
  private static final int MOST_EVALUATIONS = 200;

  /** A linear part below this share of the heat is the rounding of a difference. */
  private static final double ROUNDING = 1e-13;

  private final PackHeatModel model;

  private SteadyPack(PackHeatModel model) {
    this.model = model;
  }

  static SteadyPack of(PackHeatModel model) {
    return new SteadyPack(model);
  }

  /** Heat of a linear circuit is a·I² + b·I + c; three currents give all three. */
  record Parabola(double aOhm, double bV, double cW) {
    /** The larger size at which the heat reaches a loss; NaN if the heat is always above it. */
    double largestA(double lossW) {
      double room = cW - lossW;
      double root = Math.sqrt(bV * bV - 4 * aOhm * room);
      double largest = bV <= 0 ? (root - bV) / (2 * aOhm) : -2 * room / (root + bV);
      return largest >= 0 ? largest + 0.0 : Double.NaN;
    }
  }

  Parabola parabola(PackState state, Direction direction) {
    double soc = state.stateOfCharge().fraction();
    double atK = Kind.TEMPERATURE.siValueOf(state.temperature());
    double sign = direction == Direction.CHARGE ? -1 : 1;
    double scaleA = model.chargeC() / 3600;
    double zeroW = model.heatW(soc, atK, 0);
    double onceW = model.heatW(soc, atK, sign * scaleA) - zeroW;
    double twiceW = model.heatW(soc, atK, 2 * sign * scaleA) - zeroW;
    double squareW = (twiceW - 2 * onceW) / 2;
    double lineW = onceW - squareW;
    double cleanW = Math.abs(lineW) > ROUNDING * Math.abs(twiceW) ? lineW : 0;
    return new Parabola(squareW / (scaleA * scaleA), cleanW / scaleA, zeroW);
  }

  double continuousA(PackState state, Direction direction) {
    double atK = Kind.TEMPERATURE.siValueOf(state.temperature());
    return parabola(state, direction).largestA(model.lossW(atK));
  }

  /** From the temperature without current in 1 K steps towards the heat, then Brent. */
  double steadyK(double currentA, double soc) {
    UnivariateFunction excessW = atK -> model.heatW(soc, atK, currentA) - model.lossW(atK);
    double fromK = model.sinkK();
    double from = excessW.value(fromK);
    if (from == 0) {
      return fromK;
    }
    double stepK = from > 0 ? SCAN_K : -SCAN_K;
    while (fromK <= HOTTEST_K && fromK >= COLDEST_K) {
      double toK = fromK + stepK;
      if (excessW.value(toK) * from <= 0) {
        return new BrentSolver(ACCURACY_K)
            .solve(MOST_EVALUATIONS, excessW, Math.min(fromK, toK), Math.max(fromK, toK));
      }
      fromK = toK;
    }
    return Double.NaN;
  }
}
