package org.wattwright.charging;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.DAY;
import static org.wattwright.units.WorkshopUnits.MINUTE;
import static org.wattwright.units.WorkshopUnits.WATT;

import java.util.List;
import java.util.function.Predicate;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.units.Kind;

/** Whether converter and battery serve a budget. */
final class LowVoltageChecks {
  private static final Source ASKED = Source.requirement("low-voltage system");

  private final LowVoltageBudget budget;
  private final DcDcConverter converter;
  private final LowVoltageTargets targets;
  private final Quantity<Temperature> temperature;
  private final double givesW;

  LowVoltageChecks(
      LowVoltageBudget budget,
      DcDcConverter converter,
      Quantity<Temperature> temperature,
      LowVoltageTargets targets) {
    this.budget = budget;
    this.converter = converter;
    this.targets = targets;
    this.temperature = temperature;
    this.givesW = Kind.POWER.siValueOf(converter.outputPowerAt(temperature));
  }

  List<Check> all() {
    return List.of(power(), peak(), voltage(), holdUp(), parked());
  }

  /** A check that rests on some of the loads. */
  private CheckBuilder named(String code, String what, Predicate<LowVoltageLoad> counts) {
    CheckBuilder check = Check.named(code, what);
    for (LowVoltageLoad load : budget.loads()) {
      if (counts.test(load)) {
        check.basis(load.basis());
        if (load.basis() == Basis.ESTIMATED) {
          check.estimated("load " + load.name());
        }
      }
    }
    return check;
  }

  private Check power() {
    String remark = "at " + temperature + "; " + budget;
    return named(
            "charging.converter-power", "required power against " + converter.name(), load -> true)
        .source(Source.dataSheet(converter.name()))
        .note(remark)
        .atMost(Figure.of(budget.requiredPower(), WATT), Figure.ofSi(givesW, WATT));
  }

  /** What the converter cannot give at the peak comes from the battery. */
  private Check peak() {
    double missingA = Math.max(0, budget.peakA() - givesW / budget.voltageV());
    CheckBuilder check =
        named("charging.converter-peak", "current the battery adds at the peak", load -> true)
            .source(Source.dataSheet("low-voltage battery"))
            .note(Figure.of(budget.peakPower(), WATT) + " at the peak");
    if (missingA == 0) {
      return check.holds(true);
    }
    return budget
        .battery()
        .peakCurrent()
        .map(most -> check.atMost(Figure.ofSi(missingA, AMPERE), Figure.of(most, AMPERE)))
        .orElseGet(
            () -> check.notChecked(Figure.ofSi(missingA, AMPERE), "lowVoltageBattery.peakCurrent"));
  }

  private Check voltage() {
    return Check.named(
            "charging.converter-voltage", "voltage of " + converter.name() + " in what loads stand")
        .source(targets.supply().source())
        .note(converter.outputVoltage() + " in " + targets.supply())
        .holds(targets.supply().range().contains(converter.outputVoltage()));
  }

  private Check holdUp() {
    CheckBuilder check =
        named(
                "charging.hold-up",
                "essential loads on the battery alone, the converter stopped",
                LowVoltageLoad::isEssential)
            .source(ASKED)
            .safety()
            .note(Figure.of(budget.essentialCurrent(), AMPERE) + " from " + budget.battery());
    Figure asked = Figure.of(targets.holdUp(), MINUTE);
    return budget
        .holdUp()
        .map(time -> check.atLeast(Figure.of(time, MINUTE), asked))
        .orElseGet(() -> check.notChecked("lowVoltageLoad.essential"));
  }

  private Check parked() {
    CheckBuilder check =
        named(
                "charging.parked",
                "time parked until the usable charge is gone",
                load -> load.asleepA() > 0)
            .source(ASKED)
            .note(Figure.of(budget.keyOffCurrent(), AMPERE) + " with the key off");
    return budget
        .parkedUntilFlat()
        .map(time -> check.atLeast(days(time), days(targets.parked())))
        .orElseGet(() -> check.notChecked("lowVoltageLoad.asleep"));
  }

  private static Figure days(Quantity<Time> time) {
    return Figure.of(time, DAY);
  }
}
