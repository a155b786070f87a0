package org.wattwright.battery;

/**
 * Current at a power for strings that differ: while some charge others the pack is not one source
 * with one resistance. Newton steps on the piecewise linear voltage, which is exact once the right
 * piece is found.
 */
final class PowerRoot {
  private static final int MOST_STEPS = 60;
  private static final double RELATIVE_STEP = 1e-7;
  private static final double TOLERANCE = 1e-14;

  private PowerRoot() {}

  static double solve(PackSolver solver, double powerW, double durationS, double guessA) {
    double currentA = Double.isFinite(guessA) ? guessA : 0;
    for (int i = 0; i < MOST_STEPS; i++) {
      double voltageV = solver.terminalV(currentA, durationS);
      double stepA = RELATIVE_STEP * Math.max(1, Math.abs(currentA));
      double nextV = solver.terminalV(currentA + stepA, durationS);
      double slopeV = voltageV + currentA * (nextV - voltageV) / stepA;
      double changeA = (voltageV * currentA - powerW) / slopeV;
      currentA -= changeA;
      if (Math.abs(changeA) <= TOLERANCE * Math.max(1, Math.abs(currentA))) {
        break;
      }
    }
    return currentA;
  }
}
