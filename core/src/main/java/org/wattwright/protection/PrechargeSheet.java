package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.AMPERE_SQUARED_SECOND;
import static org.wattwright.units.WorkshopUnits.JOULE;
import static org.wattwright.units.WorkshopUnits.MICROFARAD;
import static org.wattwright.units.WorkshopUnits.OHM;
import static org.wattwright.units.WorkshopUnits.SECOND;
import static org.wattwright.units.WorkshopUnits.VOLT;
import static org.wattwright.units.WorkshopUnits.WATT;

import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Time;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.check.StepBuilder;
import org.wattwright.check.Worksheet;
import org.wattwright.units.JouleIntegral;
import org.wattwright.units.Kind;

/** Writes the working of a pre-charge: target, course, corners, peak, energy. */
final class PrechargeSheet {
  private final Worksheet.Recording sheet = Worksheet.record("Pre-charge");
  private final Precharge precharge;
  private final PrechargeResistor resistor;
  private final Figure supply;
  private final Figure bus;
  private final Figure ohms;
  private final Figure supplyOhms;

  PrechargeSheet(Precharge precharge, PrechargeResistor resistor) {
    this.precharge = precharge;
    this.resistor = resistor;
    supply = Figure.ofSi(precharge.supplyV(), VOLT);
    bus = Figure.of(precharge.capacitance(), MICROFARAD);
    ohms = Figure.of(resistor.resistance(), OHM);
    supplyOhms = Figure.ofSi(precharge.supplyOhmOrZero(), OHM);
  }

  Worksheet write(PrechargeResult result) {
    inputs();
    Figure closing = closing();
    course(result, closing);
    peak(result);
    result.energyPerShot().ifPresent(energy -> energy(result.worstShot(), energy));
    return sheet.toWorksheet();
  }

  /** At the corner of the tolerances that heats it most. */
  private void energy(PrechargeResult.Shot shot, Quantity<Energy> energy) {
    Quantity<JouleIntegral> integral = shot.course().jouleIntegral(SECOND.of(shot.timeS()));
    step("W", "most energy in the resistor at a shot, until the contactor closes")
        .formula("R_w·∫i²dt")
        .with("R_w", shot.ohm(), OHM)
        .with("∫i²dt", Figure.of(integral, AMPERE_SQUARED_SECOND))
        .gives(Figure.of(energy, JOULE));
  }

  private StepBuilder step(String symbol, String meaning) {
    return sheet.step(symbol, meaning).basis(precharge.basis());
  }

  private void inputs() {
    step("U", "highest voltage of the pack").gives(supply);
    step("C", "capacitance of the bus").gives(bus);
    if (precharge.capacitanceTolerance() > 0) {
      step("c", "by which share it may be more or less")
          .basis(precharge.givenTolerance().basis())
          .source(precharge.givenTolerance().source())
          .gives(Figure.share(precharge.capacitanceTolerance()));
    }
    step("R", "resistor " + resistor.name()).source(Source.dataSheet(resistor.name())).gives(ohms);
    step("R_s", "resistance of the supply, 0 Ω if not stated").gives(supplyOhms);
    PrechargeKernel.Load load = precharge.load();
    if (load.conductanceS() > 0) {
      step("R_L", "loads, as a resistance").gives(1 / load.conductanceS(), OHM);
    }
    if (load.currentA() > 0) {
      step("I_L", "loads, as a current").gives(load.currentA(), AMPERE);
    }
  }

  /** Voltage from which on the contactor may close. */
  private Figure closing() {
    Figure difference = Figure.of(precharge.targetDifference(), VOLT);
    Figure share = Figure.share(precharge.closingShare());
    double byShareV = (1 - precharge.closingShare()) * precharge.supplyV();
    StepBuilder step = step("ΔU", "voltage that may be missing");
    if (precharge.targetDifferenceV() < byShareV) {
      step.formula("I_make·Z")
          .with("I_make", makeLimit())
          .with("Z", Figure.ofSi(precharge.inrush().impedanceOhm(), OHM));
    } else {
      step.formula("(1 − s)·U").with("s", share).with("U", supply);
    }
    step.gives(difference);
    Figure closing = Figure.ofSi(precharge.supplyV() - precharge.targetDifferenceV(), VOLT);
    step("U_c", "voltage at which the contactor may close")
        .formula("U − ΔU")
        .with("U", supply)
        .with("ΔU", difference)
        .gives(closing);
    return closing;
  }

  private Figure makeLimit() {
    Contactor contactor = precharge.contactor();
    return contactor == null
        ? Figure.ofSi(0, AMPERE)
        : contactor.makeLimit().map(limit -> Figure.of(limit, AMPERE)).orElseThrow();
  }

  private void course(PrechargeResult result, Figure closing) {
    Figure end = finalVoltage(result.nominal().finalVoltage());
    Figure tau = timeConstant(result.nominal().timeConstant());
    result
        .nominal()
        .timeToTarget()
        .ifPresent(
            time ->
                step("t", "time until the contactor may close, nominal")
                    .formula("τ·ln(U_end/(U_end − U_c))")
                    .with("τ", tau)
                    .with("U_end", end)
                    .with("U_c", closing)
                    .gives(Figure.of(time, SECOND)));
    result
        .slowest()
        .timeToTarget()
        .ifPresent(
            time ->
                step("t_max", "the same with highest resistance and capacitance")
                    .formula("t(R·(1 + r), C·(1 + c))")
                    .with("r", Figure.share(resistor.toleranceOrZero()))
                    .with("c", Figure.share(precharge.capacitanceTolerance()))
                    .gives(Figure.of(time, SECOND)));
  }

  private Figure finalVoltage(Quantity<ElectricPotential> volt) {
    PrechargeKernel.Load load = precharge.load();
    StepBuilder step = step("U_end", "voltage that the bus tends to");
    boolean draws = load.currentA() > 0;
    String driving = draws ? "(U − (R + R_s)·I_L)" : "U";
    step.formula(load.conductanceS() > 0 ? driving + "/(1 + (R + R_s)/R_L)" : driving);
    step.with("U", supply);
    if (draws) {
      resistances(step).with("I_L", load.currentA(), AMPERE);
    }
    if (load.conductanceS() > 0) {
      (draws ? step : resistances(step)).with("R_L", 1 / load.conductanceS(), OHM);
    }
    Figure end = Figure.of(volt, VOLT);
    step.gives(end);
    return end;
  }

  private StepBuilder resistances(StepBuilder step) {
    return step.with("R", ohms).with("R_s", supplyOhms);
  }

  private Figure timeConstant(Quantity<Time> time) {
    PrechargeKernel.Load load = precharge.load();
    StepBuilder step = resistances(step("τ", "time constant")).with("C", bus);
    if (load.conductanceS() > 0) {
      step.formula("C/(1/(R + R_s) + 1/R_L)").with("R_L", 1 / load.conductanceS(), OHM);
    } else {
      step.formula("(R + R_s)·C");
    }
    Figure tau = Figure.of(time, SECOND);
    step.gives(tau);
    return tau;
  }

  private void peak(PrechargeResult result) {
    Figure share = Figure.share(resistor.toleranceOrZero());
    StepBuilder current = step("I_0", "highest current, at the start and at the lowest resistance");
    resistances(current.formula("U/(R·(1 − r) + R_s)").with("U", supply))
        .with("r", share)
        .gives(Figure.of(result.quickest().peakCurrent(), AMPERE));
    step("P_0", "highest power in the resistor, which stays if the bus is shorted")
        .formula("I_0²·R·(1 − r)")
        .with("I_0", Figure.of(result.quickest().peakCurrent(), AMPERE))
        .with("R", ohms)
        .with("r", share)
        .gives(Kind.POWER.siValueOf(result.quickest().peakPower()), WATT);
  }
}
