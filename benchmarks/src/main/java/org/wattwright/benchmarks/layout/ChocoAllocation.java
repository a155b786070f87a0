package org.wattwright.benchmarks.layout;

import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solution;
import org.chocosolver.solver.variables.IntVar;

/**
 * The linear core by constraint programming: one model per pack, which must beat the best share so
 * far; nothing beats zero.
 */
final class ChocoAllocation {
  /** Largest magnitude that a variable of this solver holds. */
  private static final int MOST = 21_000_000;

  private ChocoAllocation() {}

  /** Least deviation from the target share over all packs. */
  static double run(BayProblem problem) {
    double best = Double.POSITIVE_INFINITY;
    for (BayProblem.Pack pack : problem.packs) {
      if (best > 0) {
        best = Math.min(best, solve(problem, pack, best));
      }
    }
    return best;
  }

  private static double solve(BayProblem problem, BayProblem.Pack pack, double best) {
    int bays = problem.bays();
    int mass = problem.moduleMass[pack.type()];
    Model model = new Model();
    IntVar[] count = model.intVarArray(bays, 0, problem.room);
    IntVar[] terms = new IntVar[bays + 1];
    int[] excess = new int[bays + 1];
    int[] side = new int[bays];
    for (int b = 0; b < bays; b++) {
      terms[b] = count[b];
      excess[b] = mass * problem.lever(b);
      side[b] = mass * (problem.left[b] / problem.grid.stepMm());
    }
    double step = problem.share(1, pack);
    int most = (int) Math.min(MOST, Math.ceil(best / step - 1e-6) - 1);
    terms[bays] = model.intVar(-most, most, true);
    excess[bays] = -1;
    model.sum(count, "=", pack.modules()).post();
    model.scalar(terms, excess, "=", (int) -problem.baseExcess()).post();
    int[] limits = limits(problem, pack);
    int[] lever = java.util.Arrays.copyOf(excess, bays);
    model.scalar(count, lever, "<=", limits[0]).post();
    model.scalar(count, lever, ">=", limits[1]).post();
    model.scalar(count, side, "<=", limits[2]).post();
    model.scalar(count, side, ">=", -limits[2]).post();
    IntVar deviation = model.intVar(0, most, true);
    model.absolute(deviation, terms[bays]).post();
    Solution found = model.getSolver().findOptimalSolution(deviation, Model.MINIMIZE);
    return found == null
        ? Double.POSITIVE_INFINITY
        : problem.share(found.getIntVal(deviation), pack);
  }

  /** Most and least Σ n·m·lever by front and rear limit, most Σ n·m·left either way, in steps. */
  static int[] limits(BayProblem problem, BayProblem.Pack pack) {
    long half = BayProblem.HALF_MM / problem.grid.stepMm();
    long perKg = problem.grid.perKg();
    long added = problem.mass(pack) - (problem.baseFrontKg + problem.baseRearKg) * perKg;
    long front = (problem.frontLimitKg - problem.baseFrontKg) * perKg;
    long rear = (problem.rearLimitKg - problem.baseRearKg) * perKg;
    long side = problem.leftRightKg * perKg * BayProblem.TRACK_MM / 2 / problem.grid.stepMm();
    return new int[] {
      Math.toIntExact(half * (2 * front - added)),
      Math.toIntExact(half * (added - 2 * rear)),
      Math.toIntExact(side)
    };
  }
}
