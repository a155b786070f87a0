package org.wattwright.charging;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.AMPERE_HOUR;
import static org.wattwright.units.WorkshopUnits.HOUR;
import static org.wattwright.units.WorkshopUnits.KILOWATT;
import static org.wattwright.units.WorkshopUnits.KILOWATT_HOUR;
import static org.wattwright.units.WorkshopUnits.MILLIOHM;
import static org.wattwright.units.WorkshopUnits.VOLT;
import static org.wattwright.units.WorkshopUnits.WATT;

import java.util.List;
import org.wattwright.battery.CellProperty;
import org.wattwright.battery.Pack;
import org.wattwright.check.Basis;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.check.StepBuilder;
import org.wattwright.check.Worksheet;

/** Writes down how a charge was worked out. */
final class ChargeSheet {
  private final ChargeSimulation simulation;
  private final ChargeKernel kernel;
  private final ChargeRun.Course course;
  private final ChargeResult.Sums sums;
  private final Worksheet.Recording recording;
  private final Basis cells;

  ChargeSheet(
      ChargeSimulation simulation,
      ChargeKernel kernel,
      ChargeRun.Course course,
      ChargeResult.Sums sums) {
    this.simulation = simulation;
    this.kernel = kernel;
    this.course = course;
    this.sums = sums;
    Figure from = Figure.of(org.wattwright.units.StateOfCharge.of(course.first().soc()));
    Figure to = Figure.of(org.wattwright.units.StateOfCharge.of(course.last().soc()));
    this.recording = Worksheet.record("Charge from " + from + " to " + to);
    Pack pack = simulation.pack();
    this.cells =
        pack.basis(CellProperty.CAPACITY)
            .and(pack.basis(CellProperty.VOLTAGE))
            .and(pack.basis(CellProperty.RESISTANCE));
  }

  Worksheet toWorksheet() {
    source();
    start();
    List<ChargePhase> phases = ChargeResult.phasesOf(course.states());
    for (int i = 0; i < phases.size(); i++) {
      phase(i + 1, phases.get(i));
    }
    totals();
    return recording.toWorksheet();
  }

  private StepBuilder step(String symbol, String meaning) {
    return recording.step(symbol, meaning).basis(cells);
  }

  private void source() {
    ChargingPoint point = simulation.point();
    if (point != null && kernel.source() instanceof BankModel bank) {
      point.recordLimits(point.limits(), recording);
      for (int k = 0; k < simulation.chargers().size(); k++) {
        charger(bank, k, point.supply());
      }
    }
    if (simulation.station() != null) {
      recording
          .step("P_DC", "largest output of " + simulation.station().name())
          .source(Source.dataSheet(simulation.station().name()))
          .gives(Figure.of(simulation.station().maximumPower(), KILOWATT));
    }
  }

  private void charger(BankModel bank, int k, Supply supply) {
    Charger charger = simulation.chargers().get(k);
    double inputW = charger.inputPowerW(supply, bank.inputA(k));
    double outputW = bank.availableW(k);
    recording
        .step("P_AC", "drawn by " + charger.name() + " at " + amperes(bank.inputA(k)))
        .formula("n·U·I·cos φ, at most the charger's own limit")
        .with("n", Figure.count(charger.phasesOn(supply)))
        .with("U", Figure.of(supply.voltage(), VOLT))
        .with("I", bank.inputA(k), AMPERE)
        .with("cos φ", Figure.number(charger.powerFactor()))
        .gives(inputW, KILOWATT);
    boolean byInput = charger.outputW(inputW) <= outputW;
    StepBuilder output = recording.step("P_DC", "given by " + charger.name() + " at most");
    if (byInput) {
      output
          .formula("η·P_AC")
          .with("η", Figure.share(charger.efficiency().at(outputW / charger.ratedW())))
          .with("P_AC", inputW, KILOWATT)
          .gives(outputW, KILOWATT);
    } else {
      output
          .formula("P_rated·d")
          .with("P_rated", charger.ratedW(), KILOWATT)
          .with("d", Figure.share(outputW / charger.ratedW()))
          .source(Source.dataSheet(charger.name()))
          .gives(outputW, KILOWATT);
    }
  }

  private static Figure amperes(double currentA) {
    return Figure.ofSi(currentA, AMPERE);
  }

  private void start() {
    ChargeRun.State first = course.first();
    PackModel.Bound bound = kernel.pack().at(first.soc(), first.temperatureK());
    ChargeKernel.Moment moment = first.moment();
    step("E", "open-circuit voltage at the start").gives(bound.openCircuitV(), VOLT);
    step("R", "resistance on charge, polarisation included").gives(bound.ohm(), MILLIOHM);
    current(bound, moment);
    step("U", "terminal voltage at the start")
        .formula("E + I·R")
        .with("E", bound.openCircuitV(), VOLT)
        .with("I", moment.currentA(), AMPERE)
        .with("R", bound.ohm(), MILLIOHM)
        .gives(moment.voltageV(), VOLT);
  }

  private void current(PackModel.Bound bound, ChargeKernel.Moment moment) {
    StepBuilder current = step("I", "current at the start, limited by " + moment.limit());
    double terminalW = moment.terminalW();
    switch (moment.limit()) {
      case PILOT, CABLE, SUPPLY, CHARGER_INPUT, CHARGER_POWER, SET_POWER ->
          current
              .formula("2·P/(E + √(E² + 4·R·P))")
              .with("P", terminalW, KILOWATT)
              .with("E", bound.openCircuitV(), VOLT)
              .with("R", bound.ohm(), MILLIOHM);
      case CHARGE_VOLTAGE, CHARGER_VOLTAGE ->
          current
              .formula("(U_held − E)/R")
              .with("U_held", moment.voltageV(), VOLT)
              .with("E", bound.openCircuitV(), VOLT)
              .with("R", bound.ohm(), MILLIOHM);
      default -> current.formula("the limit itself");
    }
    current.gives(moment.currentA(), AMPERE);
  }

  private void phase(int number, ChargePhase phase) {
    step("t_" + number, "phase " + number + ", limited by " + phase.limit())
        .formula("∫Q/I ds from s₀ to s₁")
        .with("Q", kernel.pack().capacityC(), AMPERE_HOUR)
        .with("s₀", Figure.of(phase.from()))
        .with("s₁", Figure.of(phase.to()))
        .gives(Figure.of(phase.duration(), HOUR));
  }

  private void totals() {
    step("t", "time, " + course.end()).formula("Σt").gives(course.last().timeS(), HOUR);
    step("E_pack", "into the terminals").formula("∫U·I dt").gives(sums.terminalJ(), KILOWATT_HOUR);
    step("E_loss", "lost in the pack").formula("∫I²·R dt").gives(sums.heatJ(), KILOWATT_HOUR);
    if (sums.auxiliaryJ() > 0) {
      step("E_aux", "taken by auxiliaries")
          .formula("P_aux·t")
          .with("P_aux", kernel.settings().auxiliaryW(), WATT)
          .with("t", course.last().timeS(), HOUR)
          .gives(sums.auxiliaryJ(), KILOWATT_HOUR);
    }
    if (!Double.isNaN(sums.wallJ())) {
      step("E_mains", "drawn from the mains").formula("∫P/η dt").gives(sums.wallJ(), KILOWATT_HOUR);
      step("E_charger", "lost in the charger")
          .formula("E_mains − E_pack − E_aux")
          .with("E_mains", sums.wallJ(), KILOWATT_HOUR)
          .with("E_pack", sums.terminalJ(), KILOWATT_HOUR)
          .with("E_aux", sums.auxiliaryJ(), KILOWATT_HOUR)
          .gives(sums.chargerLossJ(), KILOWATT_HOUR);
    }
  }
}
