package org.wattwright.voltage;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.KILOWATT;
import static org.wattwright.units.WorkshopUnits.MILLIOHM;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import org.wattwright.battery.CellProperty;
import org.wattwright.battery.Direction;
import org.wattwright.battery.PackState;
import org.wattwright.battery.SeriesString;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.Source;
import org.wattwright.check.StepBuilder;
import org.wattwright.units.Kind;
import org.wattwright.units.StateOfCharge;

/** Writes the working of an envelope down, step by step with what each needs. */
final class EnvelopeSheet {
  private final EnvelopeSolver solver;
  private final OperatingConditions conditions;
  private final Recorder recorder;
  private final CircuitSheet circuit;

  EnvelopeSheet(EnvelopeSolver solver, Recorder recorder) {
    this.solver = solver;
    this.conditions = solver.conditions();
    this.recorder = recorder;
    this.circuit = new CircuitSheet(solver, recorder);
  }

  void record(EnvelopeSolver.Solution solution) {
    VoltageEnvelope envelope = solution.envelope();
    endOfCharge(envelope.endOfCharge());
    regeneration(solution.regeneratingV());
    highest(envelope, solution.regeneratingV());
    circuit.atRest(
        "U_full",
        "full at rest",
        PackState.of(conditions.fullest(), conditions.usual()),
        Kind.VOLTAGE.siValueOf(envelope.fullAtRest()));
    nominal(envelope.nominal());
    circuit.atRest(
        "U_empty",
        "empty at rest",
        PackState.of(conditions.emptiest(), conditions.coldest()),
        Kind.VOLTAGE.siValueOf(envelope.emptyAtRest()));
    peak(solution.peak());
  }

  private void endOfCharge(Quantity<ElectricPotential> voltage) {
    double voltageV = Kind.VOLTAGE.siValueOf(voltage);
    if (!conditions.fullest().equals(StateOfCharge.FULL)) {
      PackState state = PackState.of(conditions.fullest(), conditions.usual());
      circuit.atRest("U_end", "end of charge", state, voltageV);
      return;
    }
    SeriesString string = circuit.stringThatFillsFirst();
    StringFormula formula = new StringFormula(string);
    StepBuilder step =
        recorder
            .step("U_end", "end of charge, every cell at its maximum" + circuit.of(string))
            .formula(formula.sum("u_max"))
            .basis(solver.restBasis());
    formula.sumInputs(step, "u_max", group -> group.module().cell().maximumVoltage());
    step.gives(voltageV, VOLT);
  }

  private void regeneration(double voltageV) {
    if (conditions.regenerationIsStated()) {
      PackState state = solver.regenerationState(conditions.fullest());
      double currentA = Kind.CURRENT.siValueOf(conditions.regenerationCurrent());
      String meaning = "full under regeneration, as cold as charging is allowed";
      CircuitSheet.Loaded loaded = new CircuitSheet.Loaded("reg", meaning);
      circuit.underCurrent(loaded, state, -currentA, voltageV, () -> {});
    }
  }

  private void highest(VoltageEnvelope envelope, double regeneratingV) {
    if (conditions.regenerationIsStated()) {
      recorder
          .step("U_max", "full under charge")
          .formula("the higher of U_end and U_reg")
          .with("U_end", Figure.of(envelope.endOfCharge(), VOLT))
          .with("U_reg", regeneratingV, VOLT)
          .basis(solver.loadedBasis())
          .gives(Figure.of(envelope.fullUnderCharge(), VOLT));
    }
  }

  private void nominal(Quantity<ElectricPotential> nominal) {
    List<SeriesString> strings = circuit.strings();
    for (int k = 0; k < strings.size(); k++) {
      StringFormula formula = new StringFormula(strings.get(k));
      StepBuilder step =
          recorder
              .step(
                  strings.size() == 1 ? "U_nom" : "U_nom" + (k + 1),
                  "mean open-circuit voltage, ∫OCV ds/Δs, "
                      + new StateOfChargeBand(conditions.emptiest(), conditions.fullest())
                      + circuit.of(strings.get(k)))
              .formula(formula.sum("u_mean"))
              .basis(solver.restBasis());
      formula.sumInputs(step, "u_mean", group -> Kind.VOLTAGE.ofSi(solver.meanCellV(group)));
      step.gives(solver.meanV(strings.get(k)), VOLT);
    }
    if (strings.size() > 1) {
      recorder
          .step("U_nom", "nominal, the strings weighted by their capacities")
          .formula("Σ(Q·U)/ΣQ")
          .basis(solver.restBasis())
          .gives(Figure.of(nominal, VOLT));
    }
  }

  private void peak(PeakLoad peak) {
    PackState state = PackState.of(conditions.emptiest(), conditions.coldest());
    String load = peak.available() ? "the peak load" : "the largest load it carries";
    CircuitSheet.Loaded loaded = new CircuitSheet.Loaded("min", "empty and cold under " + load);
    circuit.underCurrent(
        loaded, state, peak.currentA(), peak.voltageV(), () -> current(peak, state));
  }

  private void current(PeakLoad peak, PackState state) {
    if (!peak.available()) {
      recorder
          .step("I_min", "largest current, limited by " + peak.maximum().governing())
          .formula("least by cell voltage, cell current, temperature and power transfer")
          .basis(solver.pack().basis(CellProperty.CURRENT).and(solver.loadedBasis()))
          .gives(peak.currentA(), AMPERE);
      return;
    }
    conditions
        .peakDischargePower()
        .ifPresent(power -> atPower(peak, state, Figure.of(power, KILOWATT)));
  }

  /** Where a power is given, the current follows from it. */
  private void atPower(PeakLoad peak, PackState state, Figure power) {
    StepBuilder step =
        recorder
            .step("I_min", "current at the peak power")
            .source(Source.PHYSICS)
            .basis(solver.loadedBasis());
    if (circuit.stringsAreAlike()) {
      step.formula("2·P/(E_min + √(E_min² − 4·R_min·P))")
          .with("P", power)
          .with("E_min", Figure.of(solver.sagging().openCircuitVoltage(state), VOLT))
          .with(
              "R_min",
              Figure.of(
                  solver
                      .sagging()
                      .resistance(state, Direction.DISCHARGE, conditions.peakDuration()),
                  MILLIOHM));
    } else {
      step.formula("P/U_min").with("P", power).with("U_min", peak.voltageV(), VOLT);
    }
    step.gives(peak.currentA(), AMPERE);
  }
}
