package org.wattwright.voltage;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.MILLIOHM;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Time;
import org.wattwright.battery.Direction;
import org.wattwright.battery.Pack;
import org.wattwright.battery.PackState;
import org.wattwright.battery.SeriesString;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.StepBuilder;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/** Writes down the pack as a circuit: sources and resistances of its strings, then the pack. */
final class CircuitSheet {
  private static final Quantity<Time> AT_ONCE = Measures.seconds(0);

  private final EnvelopeSolver solver;
  private final Recorder recorder;
  private final List<SeriesString> strings;

  CircuitSheet(EnvelopeSolver solver, Recorder recorder) {
    this.solver = solver;
    this.recorder = recorder;
    List<SeriesString> all = solver.sagging().strings();
    this.strings = alike(all) ? all.subList(0, 1) : all;
  }

  private static boolean alike(List<SeriesString> strings) {
    SeriesString first = strings.get(0);
    return strings.stream()
        .allMatch(
            string ->
                string.groups().equals(first.groups())
                    && string.linkResistance().equals(first.linkResistance()));
  }

  boolean stringsAreAlike() {
    return strings.size() == 1;
  }

  /** One string if all are alike, else all. */
  List<SeriesString> strings() {
    return strings;
  }

  /** The string whose cells reach their maximum first. */
  SeriesString stringThatFillsFirst() {
    return strings.stream()
        .min(
            Comparator.comparingDouble(
                string -> Kind.VOLTAGE.siValueOf(alone(string).maximumVoltage())))
        .orElseThrow();
  }

  /** The name of a string where there are several. */
  String of(SeriesString string) {
    return stringsAreAlike() ? "" : ", " + string.name();
  }

  void atRest(String symbol, String meaning, PackState state, double voltageV) {
    if (stringsAreAlike()) {
      source(symbol, meaning + ", " + state, strings.get(0), state);
    } else {
      node(symbol, meaning, state, new Flow(0, AT_ONCE), voltageV);
    }
  }

  /**
   * U under a current, discharge positive, with E and R before it.
   *
   * @param currentStep writes down where the current comes from
   */
  void underCurrent(
      Loaded loaded, PackState state, double currentA, double voltageV, Runnable currentStep) {
    Flow flow = new Flow(currentA, solver.conditions().peakDuration());
    String index = loaded.index();
    if (!stringsAreAlike()) {
      node("U_" + index, loaded.meaning(), state, flow, voltageV);
      currentStep.run();
      return;
    }
    source("E_" + index, "open-circuit voltage, " + state, strings.get(0), state);
    double packOhm = packResistance(index, state, flow);
    currentStep.run();
    recorder
        .step("U_" + index, loaded.meaning())
        .formula("E_" + index + (currentA < 0 ? " + " : " − ") + "I_" + index + "·R_" + index)
        .with("E_" + index, Figure.of(solver.sagging().openCircuitVoltage(state), VOLT))
        .with("I_" + index, Math.abs(currentA), AMPERE)
        .with("R_" + index, packOhm, MILLIOHM)
        .basis(solver.loadedBasis())
        .gives(voltageV, VOLT);
  }

  /** Index of the symbols of a loaded point, and what it is. */
  record Loaded(String index, String meaning) {}

  /** A current and how long it has flowed. */
  private record Flow(double currentA, Quantity<Time> duration) {
    Direction direction() {
      return currentA < 0 ? Direction.CHARGE : Direction.DISCHARGE;
    }
  }

  private void source(String symbol, String meaning, SeriesString string, PackState state) {
    StringFormula formula = new StringFormula(string);
    StepBuilder step =
        recorder.step(symbol, meaning).formula(formula.sum("u")).basis(solver.restBasis());
    formula.sumInputs(step, "u", group -> group.module().cell().openCircuit().at(state));
    step.gives(Figure.of(alone(string).openCircuitVoltage(state), VOLT));
  }

  private double packResistance(String index, PackState state, Flow flow) {
    int count = solver.sagging().strings().size();
    boolean leads = Kind.RESISTANCE.siValueOf(solver.sagging().leadResistance()) > 0;
    StringFormula formula = new StringFormula(strings.get(0));
    String one = formula.resistance();
    String shared = count == 1 ? one : "(" + one + ")/N";
    StepBuilder step =
        recorder
            .step("R_" + index, "pack resistance, " + flow.direction() + ", " + state)
            .formula(leads ? shared + " + r_leads" : shared)
            .basis(solver.loadedBasis());
    formula.resistanceInputs(step, state, flow.direction(), flow.duration());
    if (count > 1) {
      step.with("N", Figure.count(count));
    }
    if (leads) {
      step.with("r_leads", Figure.of(solver.sagging().leadResistance(), MILLIOHM));
    }
    double packOhm =
        Kind.RESISTANCE.siValueOf(
            solver.sagging().resistance(state, flow.direction(), flow.duration()));
    step.gives(packOhm, MILLIOHM);
    return packOhm;
  }

  /** Source and resistance of one string. */
  private record Branch(Figure source, Figure resistance) {}

  /** Strings that differ: the voltage at which their currents add up to the pack's. */
  private void node(String symbol, String meaning, PackState state, Flow flow, double voltageV) {
    double leadOhm = Kind.RESISTANCE.siValueOf(solver.sagging().leadResistance());
    boolean flows = flow.currentA() != 0;
    boolean leads = flows && leadOhm > 0;
    List<Branch> branches = new ArrayList<>();
    for (int k = 1; k <= strings.size(); k++) {
      branches.add(branch(k, state, flow, voltageV + flow.currentA() * leadOhm));
    }
    StepBuilder step =
        recorder
            .step(symbol, meaning + ", " + state)
            .formula(nodeFormula(flows) + (leads ? " − I·r_leads" : ""))
            .basis(flows ? solver.loadedBasis() : solver.restBasis());
    for (int k = 1; k <= branches.size(); k++) {
      Branch branch = branches.get(k - 1);
      step.with("E" + k, branch.source()).with("R" + k, branch.resistance());
    }
    if (flows) {
      step.with("I", flow.currentA(), AMPERE);
    }
    if (leads) {
      step.with("r_leads", leadOhm, MILLIOHM);
    }
    step.gives(voltageV, VOLT);
  }

  private String nodeFormula(boolean flows) {
    List<String> currents = new ArrayList<>();
    List<String> conductances = new ArrayList<>();
    for (int k = 1; k <= strings.size(); k++) {
      currents.add("E" + k + "/R" + k);
      conductances.add("1/R" + k);
    }
    String sum = String.join(" + ", currents) + (flows ? " − I" : "");
    return "(" + sum + ")/(" + String.join(" + ", conductances) + ")";
  }

  /** A string above the node discharges, one below it is charged. */
  private Branch branch(int k, PackState state, Flow flow, double nodeV) {
    SeriesString string = strings.get(k - 1);
    source("E" + k, "open-circuit voltage of " + string.name() + ", " + state, string, state);
    double sourceV = Kind.VOLTAGE.siValueOf(alone(string).openCircuitVoltage(state));
    Direction direction = sourceV >= nodeV ? Direction.DISCHARGE : Direction.CHARGE;
    return new Branch(
        Figure.ofSi(sourceV, VOLT), stringResistance(k, state, direction, flow.duration()));
  }

  private Figure stringResistance(
      int k, PackState state, Direction direction, Quantity<Time> duration) {
    SeriesString string = strings.get(k - 1);
    StringFormula formula = new StringFormula(string);
    StepBuilder step =
        recorder
            .step("R" + k, "resistance of " + string.name() + ", " + direction + ", " + state)
            .formula(formula.resistance())
            .basis(solver.loadedBasis());
    formula.resistanceInputs(step, state, direction, duration);
    Figure result = Figure.of(alone(string).resistance(state, direction, duration), MILLIOHM);
    step.gives(result);
    return result;
  }

  private static Pack alone(SeriesString string) {
    return Pack.of(List.of(string));
  }
}
