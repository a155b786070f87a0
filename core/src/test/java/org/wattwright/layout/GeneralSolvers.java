package org.wattwright.layout;

import java.util.Arrays;
import java.util.OptionalLong;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solution;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/** The grid instance put to two general solvers: least deviation, and fewest bays within one. */
final class GeneralSolvers {
  private GeneralSolvers() {}

  /** Least |2·Σ front − wanted| by constraint programming; empty if infeasible. */
  static OptionalLong leastByChoco(GridInstance grid, int modules) {
    Choco choco = new Choco(grid, modules);
    return choco.minimise(choco.deviation);
  }

  /** Fewest bays with a deviation of at most so much, by constraint programming. */
  static OptionalLong fewestByChoco(GridInstance grid, int modules, long deviation) {
    Choco choco = new Choco(grid, modules);
    choco.model.arithm(choco.deviation, "<=", Math.toIntExact(deviation)).post();
    return choco.minimise(choco.used);
  }

  private static final class Choco {
    final Model model = new Model();
    final IntVar deviation;
    final IntVar used;

    Choco(GridInstance grid, int modules) {
      int bays = grid.room.length;
      IntVar[] count = new IntVar[bays];
      IntVar[] front = new IntVar[bays];
      BoolVar[] isUsed = new BoolVar[bays];
      for (int bay = 0; bay < bays; bay++) {
        int[] table = grid.front(bay);
        count[bay] = model.intVar(0, grid.room[bay]);
        front[bay] =
            model.intVar(
                Arrays.stream(table).min().getAsInt(), Arrays.stream(table).max().getAsInt(), true);
        model.element(front[bay], table, count[bay]).post();
        isUsed[bay] = model.arithm(count[bay], ">", 0).reify();
      }
      model.sum(count, "=", modules).post();
      IntVar sum = model.intVar(-5_000_000, 5_000_000, true);
      model.sum(front, "=", sum).post();
      model.arithm(sum, ">=", grid.leastFront(modules)).post();
      model.arithm(sum, "<=", grid.mostFront(modules)).post();
      IntVar excess = model.intVar(-15_000_000, 15_000_000, true);
      model
          .scalar(
              new IntVar[] {sum, excess}, new int[] {2, -1}, "=", grid.doubleFrontWanted(modules))
          .post();
      deviation = model.intVar(0, 15_000_000, true);
      model.absolute(deviation, excess).post();
      used = model.intVar(0, bays);
      model.sum(isUsed, "=", used).post();
    }

    OptionalLong minimise(IntVar objective) {
      Solution best = model.getSolver().findOptimalSolution(objective, Model.MINIMIZE);
      return best == null ? OptionalLong.empty() : OptionalLong.of(best.getIntVal(objective));
    }
  }

  /** The same by mixed-integer programming. */
  static OptionalLong leastByOjalgo(GridInstance grid, int modules) {
    Ojalgo ojalgo = new Ojalgo(grid, modules);
    ojalgo.deviation.weight(1);
    return ojalgo.minimise(grid.moduleMass);
  }

  /** The same by mixed-integer programming. */
  static OptionalLong fewestByOjalgo(GridInstance grid, int modules, long deviation) {
    Ojalgo ojalgo = new Ojalgo(grid, modules);
    ojalgo.deviation.upper((deviation + 0.5) / grid.moduleMass);
    ojalgo.used.weight(1);
    return ojalgo.minimise(1);
  }

  private static final class Ojalgo {
    final ExpressionsBasedModel model = new ExpressionsBasedModel();
    final Variable deviation = model.newVariable("deviation").lower(0);
    final Variable used = model.newVariable("used").lower(0);

    Ojalgo(GridInstance grid, int modules) {
      Expression all = model.newExpression("all").level(modules);
      Expression limits =
          model
              .newExpression("limits")
              .lower((grid.leastFront(modules) - 0.5) / grid.moduleMass)
              .upper((grid.mostFront(modules) + 0.5) / grid.moduleMass);
      double wanted = grid.doubleFrontWanted(modules) / (double) grid.moduleMass;
      Expression above = model.newExpression("above").upper(wanted).set(deviation, -1);
      Expression below = model.newExpression("below").lower(wanted).set(deviation, 1);
      Expression bays = model.newExpression("bays").level(grid.room.length).set(used, 1);
      for (int bay = 0; bay < grid.room.length; bay++) {
        int[] front = grid.front(bay);
        Expression one = model.newExpression("one of " + bay).level(1);
        for (int count = 0; count < front.length; count++) {
          Variable chosen = model.newVariable("x" + bay + "_" + count).binary();
          one.set(chosen, 1);
          all.set(chosen, count);
          int lever = front[count] / grid.moduleMass;
          limits.set(chosen, lever);
          above.set(chosen, 2 * lever);
          below.set(chosen, 2 * lever);
          bays.set(chosen, count == 0 ? 1 : 0);
        }
      }
    }

    /** Branch and bound on doubles: its answer counts if it keeps the equations. */
    OptionalLong minimise(double unit) {
      Optimisation.Result result = model.minimise();
      return result.getState().isFeasible()
          ? OptionalLong.of(Math.round(result.getValue() * unit))
          : OptionalLong.empty();
    }
  }
}
