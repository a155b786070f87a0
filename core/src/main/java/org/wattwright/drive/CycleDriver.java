package org.wattwright.drive;

import org.jspecify.annotations.Nullable;

/** Takes a kernel through a cycle and notes where it falls behind. Not thread-safe. */
final class CycleDriver {
  private final CycleKernel kernel;
  private final DriveCycle cycle;
  private final double reserve;
  private final double[] currentsA;
  private double speedMs;
  private double behindS;
  private double inSuccessionS;
  private double mostMs;
  private double mostAtS;
  private @Nullable DriveLimit limit;
  private boolean begun;

  /** With a place for the current of each step of the first cycle. */
  CycleDriver(CycleKernel kernel, DriveCycle cycle, double reserve, double[] currentsA) {
    this.kernel = kernel;
    this.cycle = cycle;
    this.reserve = reserve;
    this.currentsA = currentsA;
  }

  /** One cycle on from where the last one ended; null if it was driven to its end. */
  @Nullable RangeEnd once(boolean stopWhenBehind) {
    if (!begun) {
      speedMs = cycle.speedMs(0);
      begun = true;
    }
    int steps = cycle.steps();
    for (int i = 0; i < steps; i++) {
      double stepS = cycle.timeS(i + 1) - cycle.timeS(i);
      double chargeBeforeC = kernel.chargeC;
      double socBefore = kernel.soc;
      double distanceBeforeM = kernel.distanceM;
      speedMs = kernel.step(speedMs, cycle.speedMs(i + 1), stepS);
      if (i < currentsA.length) {
        currentsA[i] = (kernel.chargeC - chargeBeforeC) / stepS;
      }
      note(cycle.speedMs(i + 1) - speedMs, stepS);
      if (kernel.soc <= reserve) {
        double lacking = (reserve - kernel.soc) / Math.max(socBefore - kernel.soc, 1e-300);
        overshootM = lacking * (kernel.distanceM - distanceBeforeM);
        return RangeEnd.RESERVE;
      }
      if (stopWhenBehind && inSuccessionS >= Following.BREAK_OFF_S) {
        return RangeEnd.LEFT_BEHIND;
      }
    }
    return null;
  }

  /** Driven beyond the reserve within the last step. */
  double overshootM;

  private void note(double gapMs, double stepS) {
    if (gapMs > mostMs && !kernel.followed) {
      mostMs = gapMs;
      mostAtS = kernel.timeS;
      limit = kernel.heldBackBy;
    } else if (gapMs > mostMs) {
      mostMs = gapMs;
      mostAtS = kernel.timeS;
    }
    if (gapMs > Following.TOLERANCE_MS) {
      behindS += stepS;
      inSuccessionS += stepS;
    } else {
      inSuccessionS = 0;
    }
  }

  Following following() {
    return new Following(kernel.timeS, behindS, mostMs, mostAtS, limit);
  }
}
