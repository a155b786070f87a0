package org.wattwright.benchmarks.layout;

import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/** The linear core by mixed-integer programming: one model per pack. */
final class OjalgoAllocation {
  private OjalgoAllocation() {}

  /** Least deviation from the target share over all packs. */
  static double run(BayProblem problem) {
    double best = Double.POSITIVE_INFINITY;
    for (BayProblem.Pack pack : problem.packs) {
      best = Math.min(best, solve(problem, pack, best));
    }
    return best;
  }

  private static double solve(BayProblem problem, BayProblem.Pack pack, double best) {
    ExpressionsBasedModel model = new ExpressionsBasedModel();
    Variable deviation = model.newVariable("deviation").lower(0).weight(1);
    if (best < Double.POSITIVE_INFINITY) {
      deviation.upper(Math.floor(best / problem.share(1, pack) + 1e-9));
    }
    int[] limits = ChocoAllocation.limits(problem, pack);
    Expression all = model.newExpression("all").level(pack.modules());
    Expression axles = model.newExpression("axles").lower(limits[1]).upper(limits[0]);
    Expression sides = model.newExpression("sides").lower(-limits[2]).upper(limits[2]);
    Expression above = model.newExpression("above").upper(-problem.baseExcess()).set(deviation, -1);
    Expression below = model.newExpression("below").lower(-problem.baseExcess()).set(deviation, 1);
    int mass = problem.moduleMass[pack.type()];
    for (int b = 0; b < problem.bays(); b++) {
      Variable count = model.newVariable("n" + b).integer().lower(0).upper(problem.room);
      long lever = (long) mass * problem.lever(b);
      all.set(count, 1);
      axles.set(count, lever);
      sides.set(count, (long) mass * (problem.left[b] / problem.grid.stepMm()));
      above.set(count, lever);
      below.set(count, lever);
    }
    Optimisation.Result result = model.minimise();
    return result.getState().isFeasible()
        ? problem.share(Math.round(result.getValue()), pack)
        : Double.POSITIVE_INFINITY;
  }
}
