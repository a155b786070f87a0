package org.wattwright.conversion;

import static org.wattwright.units.WorkshopUnits.OHM_PER_VOLT;

import org.wattwright.check.Basis;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.check.StepBuilder;
import org.wattwright.check.Worksheet;
import org.wattwright.protection.IsolationLeaks;
import org.wattwright.units.Kind;

/** The working of an isolation budget: leaks, what is asked for, capacitors. */
final class IsolationWorking {
  private final Worksheet.Recording sheet = Worksheet.record("Isolation budget");
  private final IsolationBudget budget;
  private final Basis basis;
  private final Figure working;

  private IsolationWorking(IsolationBudget budget) {
    this.budget = budget;
    this.basis = budget.basis();
    this.working = Figure.of(budget.working(), Kind.VOLTAGE);
  }

  static Worksheet of(IsolationBudget budget) {
    IsolationWorking working = new IsolationWorking(budget);
    working.leaks();
    working.capacitors();
    return working.sheet.toWorksheet();
  }

  private StepBuilder step(String symbol, String meaning) {
    return sheet.step(symbol, meaning).basis(basis);
  }

  private void leaks() {
    IsolationLeaks all = budget.together();
    step("U", "highest working voltage").gives(working);
    int i = 0;
    StepBuilder plus = step("R_p", "leak of plus, all devices").formula("1/Σ(1/R_p,i)");
    StepBuilder minus = step("R_n", "leak of minus, all devices").formula("1/Σ(1/R_n,i)");
    for (IsolationBudget.Entry entry : budget.entries()) {
      i++;
      plus.with("R_p" + i, Figure.of(entry.leaks().plus(), Kind.RESISTANCE));
      minus.with("R_n" + i, Figure.of(entry.leaks().minus(), Kind.RESISTANCE));
    }
    plus.gives(Figure.of(all.plus(), Kind.RESISTANCE));
    minus.gives(Figure.of(all.minus(), Kind.RESISTANCE));
    Figure lesser = Figure.of(all.lesser(), Kind.RESISTANCE);
    step("R", "isolation resistance, the lesser leak")
        .formula("min(R_p, R_n)")
        .with("R_p", Figure.of(all.plus(), Kind.RESISTANCE))
        .with("R_n", Figure.of(all.minus(), Kind.RESISTANCE))
        .gives(lesser);
    needed();
    step("I", "through somebody who touches the other pole and the chassis")
        .formula("U/R")
        .with("U", working)
        .with("R", lesser)
        .gives(Figure.of(all.faultCurrent(budget.working()), Kind.CURRENT));
  }

  private void needed() {
    Figure perVolt = Figure.of(budget.rule().perVolt(), OHM_PER_VOLT);
    Source source = budget.together().check(budget.working(), budget.rule()).source();
    sheet.step("r", "rule " + budget.rule()).source(source).gives(perVolt);
    step("R_min", "isolation resistance that is needed")
        .formula("r·U")
        .with("r", perVolt)
        .with("U", working)
        .source(source)
        .gives(Figure.of(budget.rule().required(budget.working()), Kind.RESISTANCE));
  }

  private void capacitors() {
    Figure total = Figure.of(budget.capacitors().total(), Kind.CAPACITANCE);
    step("C_Y", "capacitors of one pole, all devices").formula("ΣC_i").gives(total);
    step("E", "energy of one pole's capacitors, all of the voltage across them")
        .formula("C_Y·U²/2")
        .with("C_Y", total)
        .with("U", working)
        .gives(Figure.of(budget.capacitors().energy(budget.working()), Kind.ENERGY));
  }
}
