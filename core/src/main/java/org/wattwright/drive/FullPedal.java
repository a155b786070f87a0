package org.wattwright.drive;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/** A vehicle under full pedal in one state of its pack: what is left of force, and for how long. */
final class FullPedal {
  private static final int SCAN = 400;
  private static final int INTERVALS = 2000;
  private static final int MOST_EVALUATIONS = 200;
  private static final double SPEED_TOLERANCE_MS = 1e-10;
  private static final double HALF_NODE = Math.sqrt(3) / 6;

  /** Any gear. */
  static final int BEST = -1;

  private final DriveModel model;
  private final double soc;
  private final int gear;

  FullPedal(DriveModel model, double soc, int gear) {
    this.model = model;
    this.soc = soc;
    this.gear = gear;
  }

  int gearAt(double speedMs) {
    return gear == BEST ? model.strongestGear(speedMs, soc) : gear;
  }

  double forceN(double speedMs) {
    return model.mostN(speedMs, soc, gearAt(speedMs));
  }

  DriveLimit limitAt(double speedMs) {
    return model.limitAt(speedMs, soc, gearAt(speedMs));
  }

  double fastestMs() {
    return gear == BEST ? model.fastestMs() : model.motor.maximumRadPerS() / model.radPerM[gear];
  }

  private double resistanceN(double speedMs, double slope) {
    return model.load.rollingN(speedMs, Math.cos(slope))
        + model.load.dragN(speedMs)
        + model.load.gradeN(Math.sin(slope));
  }

  double freeN(double speedMs, double slope) {
    return Math.min(forceN(speedMs), gripN(slope)) - resistanceN(speedMs, slope);
  }

  /** On a slope the tyres carry cos α of the weight; that gravity shifts it is in the limit. */
  private double gripN(double slope) {
    return model.tractionN * Math.cos(slope);
  }

  /** Highest speed that the force holds, looked for from above; 0 if there is none. */
  double topMs(double slope) {
    double fastest = fastestMs();
    UnivariateFunction free = v -> freeN(v, slope);
    double upper = fastest;
    if (free.value(upper) >= 0) {
      return upper;
    }
    for (int i = SCAN - 1; i >= 0; i--) {
      double lower = fastest * i / SCAN;
      if (free.value(lower) >= 0) {
        return new BrentSolver(SPEED_TOLERANCE_MS).solve(MOST_EVALUATIONS, free, lower, upper);
      }
      upper = lower;
    }
    return 0;
  }

  /** Slope that uses up all force or all grip at a speed. */
  double slopeAt(double speedMs) {
    return Math.min(motorSlopeAt(speedMs), gripSlopeAt(speedMs));
  }

  /** What limits the slope. */
  DriveLimit slopeLimitAt(double speedMs) {
    return gripSlopeAt(speedMs) < motorSlopeAt(speedMs) ? DriveLimit.ADHESION : limitAt(speedMs);
  }

  double motorSlopeAt(double speedMs) {
    double share = (forceN(speedMs) - model.load.dragN(speedMs)) / model.load.gradeN(1);
    return slope(share, rollingShare(speedMs));
  }

  /** From F = m·a·cos α, with a the level's limit: it stands on the side of the resistances. */
  double gripSlopeAt(double speedMs) {
    double weightN = model.load.gradeN(1);
    if (model.tractionN == Double.POSITIVE_INFINITY) {
      return Math.PI / 2;
    }
    double share = -model.load.dragN(speedMs) / weightN;
    return slope(share, rollingShare(speedMs) - model.tractionN / weightN);
  }

  private double rollingShare(double speedMs) {
    return model.load.rollingN(speedMs, 1) / model.load.gradeN(1);
  }

  /** α of sin α + f·cos α = d, in closed form. */
  private static double slope(double d, double f) {
    double square = 1 - d * d + f * f;
    if (d >= 1 || square < 0) {
      return Math.PI / 2;
    }
    double sine = (d - f * Math.sqrt(square)) / (1 + f * f);
    return Math.asin(Math.max(-1, Math.min(1, sine)));
  }

  /** t = ∫ m·dv/(F − R) by the two-point rule over many short intervals. */
  TimeToSpeed between(double fromMs, double toMs, double slope) {
    if (toMs > fastestMs() * (1 + 1e-12)) {
      return TimeToSpeed.stuck(Math.max(fromMs, topMs(slope)), DriveLimit.MOTOR_SPEED);
    }
    double timeS = 0;
    double distanceM = 0;
    double width = (toMs - fromMs) / INTERVALS;
    for (int i = 0; i < INTERVALS; i++) {
      double middle = fromMs + (i + 0.5) * width;
      for (int side = -1; side <= 1; side += 2) {
        double speedMs = middle + side * HALF_NODE * width;
        int used = gearAt(speedMs);
        double forceN = Math.min(model.mostN(speedMs, soc, used), gripN(slope));
        double freeN = forceN - resistanceN(speedMs, slope);
        if (!(freeN > 0)) {
          return TimeToSpeed.stuck(middle, model.limitAt(speedMs, soc, used));
        }
        double partS = width / 2 * model.inertiaKg[used] / freeN;
        timeS += partS;
        distanceM += partS * speedMs;
      }
    }
    return TimeToSpeed.reached(timeS, distanceM);
  }
}
