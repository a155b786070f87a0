package org.wattwright.battery;

import static org.wattwright.units.WorkshopUnits.AMPERE_HOUR;
import static org.wattwright.units.WorkshopUnits.KILOWATT_HOUR;
import static org.wattwright.units.WorkshopUnits.SECOND;
import static org.wattwright.units.WorkshopUnits.VOLT;

import org.wattwright.check.Basis;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.StepBuilder;
import org.wattwright.units.StateOfCharge;

/** Writes down what {@link EnergySolver} found. */
final class EnergySteps {
  /** 0.001 W·h. */
  private static final double LEAST_ERROR_SHOWN_J = 3.6;

  private final Pack pack;
  private final Recorder recorder;

  private EnergySteps(Pack pack, Recorder recorder) {
    this.pack = pack;
    this.recorder = recorder;
  }

  static void record(Pack pack, StateOfCharge from, EnergyResult result, Recorder recorder) {
    EnergySteps steps = new EnergySteps(pack, recorder);
    EnergySolver.Sum sum = result.sum();
    double chargeC = pack.capacityC() * (from.fraction() - result.end().fraction());
    steps.charge(from, result.end(), chargeC);
    if (chargeC > 0) {
      steps.energies(sum, chargeC);
    }
    steps
        .step("t", result.endedBy().map(limit -> "time, ended by " + limit).orElse("time"))
        .formula("∫Q/I ds")
        .gives(sum.timeS(), SECOND);
  }

  private StepBuilder step(String symbol, String meaning) {
    Basis weakest =
        pack.basis(CellProperty.CAPACITY)
            .and(pack.basis(CellProperty.VOLTAGE))
            .and(pack.basis(CellProperty.RESISTANCE));
    return recorder.step(symbol, meaning).basis(weakest);
  }

  private void charge(StateOfCharge from, StateOfCharge end, double chargeC) {
    step("q", "charge drawn, all strings at the same state of charge")
        .formula("Q·(s₁ − s₀)")
        .with("Q", pack.capacityC(), AMPERE_HOUR)
        .with("s₁", Figure.of(from))
        .with("s₀", Figure.of(end))
        .gives(chargeC, AMPERE_HOUR);
  }

  private void energies(EnergySolver.Sum sum, double chargeC) {
    double openCircuitV = sum.openCircuitJ() / chargeC;
    double underLoadV = sum.energyJ() / chargeC;
    step("OCV_mean", "mean open-circuit voltage over that charge")
        .formula("∫OCV dq/q")
        .gives(openCircuitV, VOLT);
    step("U_mean", "mean terminal voltage over that charge")
        .formula("∫U dq/q")
        .gives(underLoadV, VOLT);
    step("E_loss", "lost in the resistance of the pack")
        .formula("q·(OCV_mean − U_mean)")
        .with("q", chargeC, AMPERE_HOUR)
        .with("OCV_mean", openCircuitV, VOLT)
        .with("U_mean", underLoadV, VOLT)
        .gives(sum.heatJ(), KILOWATT_HOUR);
    step("E", "energy at the terminals, integration error below " + error(sum))
        .formula("q·U_mean")
        .with("q", chargeC, AMPERE_HOUR)
        .with("U_mean", underLoadV, VOLT)
        .gives(sum.energyJ(), KILOWATT_HOUR);
  }

  /** A bound far below what is printed is rounded up to one that can be read. */
  private static Figure error(EnergySolver.Sum sum) {
    return Figure.ofSi(
        Math.max(sum.errorJ(), LEAST_ERROR_SHOWN_J), org.wattwright.units.WorkshopUnits.WATT_HOUR);
  }
}
