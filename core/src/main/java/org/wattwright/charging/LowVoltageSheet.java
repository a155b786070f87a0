package org.wattwright.charging;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.AMPERE_HOUR;
import static org.wattwright.units.WorkshopUnits.DAY;
import static org.wattwright.units.WorkshopUnits.MILLIAMPERE;
import static org.wattwright.units.WorkshopUnits.MINUTE;
import static org.wattwright.units.WorkshopUnits.VOLT;
import static org.wattwright.units.WorkshopUnits.WATT;

import org.wattwright.check.Figure;
import org.wattwright.check.StepBuilder;
import org.wattwright.check.Worksheet;
import org.wattwright.units.Kind;

/** Writes down a low-voltage budget. */
final class LowVoltageSheet {
  private final LowVoltageBudget budget;
  private final Worksheet.Recording recording = Worksheet.record("Low-voltage budget");

  private LowVoltageSheet(LowVoltageBudget budget) {
    this.budget = budget;
  }

  static Worksheet of(LowVoltageBudget budget) {
    LowVoltageSheet sheet = new LowVoltageSheet(budget);
    budget.loads().forEach(sheet::load);
    sheet.powers();
    sheet.battery();
    return sheet.recording.toWorksheet();
  }

  private StepBuilder step(String symbol, String meaning) {
    return recording.step(symbol, meaning).basis(budget.basis());
  }

  private void load(LowVoltageLoad load) {
    double onA = load.onA(budget.voltageV());
    recording
        .step("P_load", load.name() + (load.isEssential() ? ", essential" : ""))
        .basis(load.basis())
        .formula("U·I·duty")
        .with("U", budget.voltageV(), VOLT)
        .with("I", onA, AMPERE)
        .with("duty", Figure.share(load.duty()))
        .gives(load.duty() * onA * budget.voltageV(), WATT);
  }

  private void powers() {
    step("P_mean", "average power").formula("ΣP_load").gives(Figure.of(budget.meanPower(), WATT));
    step("P_all", "everything on").formula("ΣU·I").gives(Figure.of(budget.allOnPower(), WATT));
    step("P_peak", "everything on, and the largest surge")
        .formula("P_all + U·ΔI")
        .with("P_all", Figure.of(budget.allOnPower(), WATT))
        .with("U", budget.voltageV(), VOLT)
        .with("ΔI", budget.peakA() - budget.allOnA(), AMPERE)
        .gives(Figure.of(budget.peakPower(), WATT));
    step("P_req", "required of the converter")
        .formula("P_mean + U·I_recharge")
        .with("P_mean", Figure.of(budget.meanPower(), WATT))
        .with("U", budget.voltageV(), VOLT)
        .with("I_recharge", budget.rechargeA(), AMPERE)
        .gives(Figure.of(budget.requiredPower(), WATT));
  }

  private void battery() {
    budget
        .parkedUntilFlat()
        .ifPresent(
            time ->
                step("t_parked", "parked until the usable charge is gone")
                    .formula("(k·Q − Q_awake)/I_off")
                    .with("k", Figure.share(budget.battery().usable()))
                    .with("Q", Figure.of(budget.battery().capacity(), AMPERE_HOUR))
                    .with("Q_awake", budget.awakeC(), AMPERE_HOUR)
                    .with("I_off", budget.keyOffA(), MILLIAMPERE)
                    .gives(Figure.of(time, DAY)));
    budget
        .holdUp()
        .ifPresent(
            time ->
                step("t_hold", "essential loads on the battery alone")
                    .formula("k·Q(I)/I")
                    .with("k", Figure.share(budget.battery().usable()))
                    .with("Q(I)", chargeC(Kind.TIME.siValueOf(time)), AMPERE_HOUR)
                    .with("I", budget.essentialA(), AMPERE)
                    .gives(Figure.of(time, MINUTE)));
  }

  /** Capacity at the essential current. */
  private double chargeC(double holdS) {
    return holdS * budget.essentialA() / budget.battery().usable();
  }
}
