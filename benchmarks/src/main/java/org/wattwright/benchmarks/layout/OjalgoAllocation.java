package org.wattwright.benchmarks.layout;

import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/** The linear core by mixed-integer programming: one model per pack, scaled to numbers near one. */
final class OjalgoAllocation {
  private OjalgoAllocation() {}

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
    ExpressionsBasedModel model = new ExpressionsBasedModel();
    double unit = (double) problem.moduleMass[pack.type()] * problem.lever(0);
    Variable deviation = model.newVariable("deviation").lower(0).weight(1);
    if (best < Double.POSITIVE_INFINITY) {
      deviation.upper(best / problem.share(1, pack) / unit);
    }
    int[] limits = ChocoAllocation.limits(problem, pack);
    double wanted = -problem.baseExcess() / unit;
    Expression all = model.newExpression("all").level(pack.modules());
    Expression axles = model.newExpression("axles").lower(limits[1] / unit).upper(limits[0] / unit);
    Expression sides =
        model.newExpression("sides").lower(-limits[2] / unit).upper(limits[2] / unit);
    Expression above = model.newExpression("above").upper(wanted).set(deviation, -1);
    Expression below = model.newExpression("below").lower(wanted).set(deviation, 1);
    int mass = problem.moduleMass[pack.type()];
    for (int b = 0; b < problem.bays(); b++) {
      Variable count = model.newVariable("n" + b).integer().lower(0).upper(problem.room);
      double lever = mass * problem.lever(b) / unit;
      all.set(count, 1);
      axles.set(count, lever);
      sides.set(count, mass * (problem.left[b] / problem.grid.stepMm()) / unit);
      above.set(count, lever);
      below.set(count, lever);
    }
    Optimisation.Result result = model.minimise();
    return result.getState().isFeasible()
        ? problem.share(Math.round(result.getValue() * unit), pack)
        : Double.POSITIVE_INFINITY;
  }
}
