package org.wattwright.voltage;

import static org.wattwright.units.WorkshopUnits.MILLIOHM;
import static org.wattwright.units.WorkshopUnits.SECOND;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Time;
import org.wattwright.battery.BatteryModule;
import org.wattwright.battery.Cell;
import org.wattwright.battery.Direction;
import org.wattwright.battery.PackState;
import org.wattwright.battery.RcPair;
import org.wattwright.battery.SeriesString;
import org.wattwright.check.Figure;
import org.wattwright.check.StepBuilder;
import org.wattwright.units.Kind;

/**
 * Voltage and resistance of a string as formulas of its modules and cells, for a worksheet: n
 * modules of s cells in series and p in parallel, numbered where the string mixes modules.
 */
final class StringFormula {
  private final SeriesString string;

  StringFormula(SeriesString string) {
    this.string = string;
  }

  /** Σ n·s·u with a voltage of each group's cells. */
  String sum(String symbol) {
    List<String> terms = new ArrayList<>();
    for (int i = 0; i < string.groups().size(); i++) {
      terms.add("n" + index(i) + "·s" + index(i) + "·" + symbol + index(i));
    }
    return String.join(" + ", terms);
  }

  void sumInputs(
      StepBuilder step,
      String symbol,
      Function<SeriesString.Group, Quantity<ElectricPotential>> cell) {
    for (int i = 0; i < string.groups().size(); i++) {
      SeriesString.Group group = string.groups().get(i);
      step.with("n" + index(i), Figure.count(group.count()))
          .with("s" + index(i), Figure.count(group.module().series()))
          .with(symbol + index(i), Figure.of(cell.apply(group), VOLT));
    }
  }

  /** Σ n·(s·r/p + r_i) plus links; parts that are 0 are left out. */
  String resistance() {
    List<String> terms = new ArrayList<>();
    for (int i = 0; i < string.groups().size(); i++) {
      BatteryModule module = string.groups().get(i).module();
      String cells = "s" + index(i) + "·" + cellResistance(i) + "/p" + index(i);
      String all = isZero(module) ? "·" + cells : "·(" + cells + " + r_i" + index(i) + ")";
      terms.add("n" + index(i) + all);
    }
    if (hasLinks()) {
      terms.add("r_links");
    }
    return String.join(" + ", terms);
  }

  private String cellResistance(int i) {
    return rcPair(i) == null
        ? "r" + index(i)
        : "(r" + index(i) + " + r_1" + index(i) + "·(1 − e^(−t/τ" + index(i) + ")))";
  }

  void resistanceInputs(
      StepBuilder step, PackState state, Direction direction, Quantity<Time> duration) {
    for (int i = 0; i < string.groups().size(); i++) {
      SeriesString.Group group = string.groups().get(i);
      BatteryModule module = group.module();
      Cell cell = module.cell();
      step.with("n" + index(i), Figure.count(group.count()))
          .with("s" + index(i), Figure.count(module.series()))
          .with("p" + index(i), Figure.count(module.parallel()))
          .with("r" + index(i), Figure.of(cell.resistance(direction).at(state), MILLIOHM));
      if (!isZero(module)) {
        step.with("r_i" + index(i), Figure.of(module.interconnectResistance(), MILLIOHM));
      }
      polarisationInputs(step, i, duration);
    }
    if (hasLinks()) {
      step.with("r_links", Figure.of(string.linkResistance(), MILLIOHM));
    }
  }

  private void polarisationInputs(StepBuilder step, int i, Quantity<Time> duration) {
    RcPair pair = rcPair(i);
    if (pair != null) {
      step.with("r_1" + index(i), Figure.of(pair.resistance(), MILLIOHM))
          .with("t", Figure.of(duration, SECOND))
          .with("τ" + index(i), Figure.of(pair.timeConstant(), SECOND));
    }
  }

  private @org.jspecify.annotations.Nullable RcPair rcPair(int i) {
    return string.groups().get(i).module().cell().rcPair().orElse(null);
  }

  private static boolean isZero(BatteryModule module) {
    return Kind.RESISTANCE.siValueOf(module.interconnectResistance()) == 0;
  }

  private boolean hasLinks() {
    return Kind.RESISTANCE.siValueOf(string.linkResistance()) > 0;
  }

  private String index(int i) {
    return string.groups().size() == 1 ? "" : "_" + (char) ('a' + i % 26);
  }
}
