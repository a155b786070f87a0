package org.wattwright.conductor;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.AMPERE_SQUARED_SECOND;
import static org.wattwright.units.WorkshopUnits.CELSIUS;
import static org.wattwright.units.WorkshopUnits.METRE;
import static org.wattwright.units.WorkshopUnits.OHM;
import static org.wattwright.units.WorkshopUnits.OHM_PER_KILOMETRE;
import static org.wattwright.units.WorkshopUnits.PER_KELVIN;
import static org.wattwright.units.WorkshopUnits.SQUARE_MILLIMETRE;
import static org.wattwright.units.WorkshopUnits.VOLT;

import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.Source;

/** What the circuit's current asks beside heat: the voltage lost, and what a fault lets through. */
final class CircuitCriteria {
  private final CandidateCase of;
  private final SizingDuty duty;
  private final Recorder recorder;

  CircuitCriteria(CandidateCase of) {
    this.of = of;
    this.duty = of.duty();
    this.recorder = of.recorder();
  }

  /** Drop at a conductor temperature; null if no limit is set. */
  @Nullable Finding voltageDrop(double conductorK) {
    @Nullable Double limitV = duty.dropV();
    if (limitV == null) {
      return null;
    }
    // Without a known temperature the cable is taken at its limit: the most resistance it may have.
    double atK = Double.isInfinite(conductorK) ? of.cable().data().limitK() : conductorK;
    ConductorRun run = duty.run(of.candidate());
    double ohm = run.cableOhm(atK) + run.highJointsOhm();
    double dropV = duty.wiring().dropShare() * duty.dropCurrentA() * ohm;
    recordDrop(run, atK, ohm, dropV);
    Source source = Source.requirement("voltage drop");
    Finding.Terms terms = new Finding.Terms(VOLT, false, run.basis(), source);
    return Finding.atMost(SizingCriterion.VOLTAGE_DROP, dropV, limitV, terms);
  }

  private void recordDrop(ConductorRun run, double atK, double ohm, double dropV) {
    if (!recorder.isOn()) {
      return;
    }
    recordResistance(run, atK, ohm);
    recorder
        .step("ΔU", isThreePhase() ? "voltage drop between two phases" : "voltage drop")
        .formula(isThreePhase() ? "√3/2·I·R" : "I·R")
        .with("I", duty.dropCurrentA(), AMPERE)
        .with("R", ohm, OHM)
        .basis(run.basis())
        .gives(dropV, VOLT);
  }

  private boolean isThreePhase() {
    return duty.wiring() == Wiring.THREE_PHASE;
  }

  private String loop() {
    return switch (duty.wiring()) {
      case PAIR -> "both polarities";
      case THREE_PHASE -> "two phases";
      case CHASSIS_RETURN -> "the way out";
    };
  }

  private void recordResistance(ConductorRun run, double atK, double ohm) {
    ConductorSize size = of.cable().size();
    recorder
        .step("R", "resistance of " + loop() + " at the conductor temperature, with all joints")
        .formula("(L_out + L_back)·R′₂₀·[1 + α·(θ_c − 20 °C)]/n + ΣR_j")
        .with("L_out", run.outM(), METRE)
        .with("L_back", run.backM(), METRE)
        .with("R′₂₀", Figure.of(size.resistance().value(), OHM_PER_KILOMETRE))
        .with("α", size.material().coefficientPerK(), PER_KELVIN)
        .with("θ_c", atK, CELSIUS)
        .with("n", Figure.count(of.candidate().runs()))
        .with("ΣR_j", run.highJointsOhm(), OHM)
        .basis(run.basis())
        .source(size.resistance().source())
        .gives(ohm, OHM);
  }

  /** Joule integral of the fault in the worst loaded run; null if no fault is given. */
  @Nullable Finding shortCircuit() {
    FaultDuty fault = duty.fault();
    if (fault == null) {
      return null;
    }
    ConductorSize size = of.cable().size();
    double initialC = CELSIUS.valueOf(of.cable().temperatureLimit());
    double endC = CELSIUS.valueOf(of.cable().shortCircuitLimit());
    double withstandA2S =
        ShortCircuit.of(size.material()).withstandA2S(size.areaM2(), initialC, endC);
    recordWithstand(size, withstandA2S);
    double dutyA2S = fault.jouleIntegralA2S() * of.worstShare() * of.worstShare();
    Finding.Terms terms =
        new Finding.Terms(AMPERE_SQUARED_SECOND, false, Basis.DATA_SHEET, ShortCircuit.ADIABATIC)
            .withNote(fault.remark());
    return Finding.atMost(SizingCriterion.SHORT_CIRCUIT, dutyA2S, withstandA2S, terms);
  }

  private void recordWithstand(ConductorSize size, double withstandA2S) {
    if (!recorder.isOn()) {
      return;
    }
    recorder
        .step("k²S²", "joule integral that one run withstands, from its limit")
        .formula("K²·S²·ln[(θ_f + β)/(θ_i + β)]")
        .with("S", Figure.of(size.area(), SQUARE_MILLIMETRE))
        .with("θ_i", Figure.of(of.cable().temperatureLimit(), CELSIUS))
        .with("θ_f", Figure.of(of.cable().shortCircuitLimit(), CELSIUS))
        .basis(Basis.DATA_SHEET)
        .source(ShortCircuit.ADIABATIC)
        .gives(withstandA2S, AMPERE_SQUARED_SECOND);
  }
}
