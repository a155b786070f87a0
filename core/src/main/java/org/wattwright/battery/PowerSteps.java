package org.wattwright.battery;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.KILOWATT;
import static org.wattwright.units.WorkshopUnits.MILLIOHM;
import static org.wattwright.units.WorkshopUnits.SECOND;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.util.Locale;
import org.wattwright.check.Basis;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.Source;
import org.wattwright.check.StepBuilder;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;
import org.wattwright.units.StateOfCharge;

/** Writes down what {@link PackSolver} found, from the cell to the pack. */
final class PowerSteps {
  private final PackSolver solver;
  private final Direction direction;
  private final Recorder recorder;

  private PowerSteps(PackSolver solver, Direction direction, Recorder recorder) {
    this.solver = solver;
    this.direction = direction;
    this.recorder = recorder;
  }

  static void record(
      PackSolver solver, Direction direction, PackSolver.Bound found, Recorder recorder) {
    PowerSteps steps = new PowerSteps(solver, direction, recorder);
    steps.circuit();
    steps.currentLimit(found);
    steps.voltageUnderLoad(found.currentA() * steps.sign(), found.voltageV());
    steps.power(found);
  }

  static void recordVoltage(
      PackSolver solver, double currentA, double voltageV, Recorder recorder) {
    Direction direction = currentA >= 0 ? Direction.DISCHARGE : Direction.CHARGE;
    PowerSteps steps = new PowerSteps(solver, direction, recorder);
    steps.circuit();
    steps.voltageUnderLoad(currentA, voltageV);
  }

  private double sign() {
    return direction == Direction.DISCHARGE ? 1 : -1;
  }

  private boolean uniform() {
    return solver.pack().isUniform();
  }

  private Basis basis(CellProperty property) {
    return solver.pack().basis(property);
  }

  private StepBuilder step(String symbol, String meaning, CellProperty property) {
    return recorder.step(symbol, meaning).basis(basis(property));
  }

  private String state() {
    return String.format(
        Locale.ROOT,
        "%s and %s",
        Figure.of(StateOfCharge.of(solver.state().soc())),
        Measures.format(Kind.TEMPERATURE.ofSi(solver.state().temperatureK()), Kind.TEMPERATURE));
  }

  private void circuit() {
    if (uniform()) {
      cell();
      uniformCircuit();
    } else {
      for (int k = 0; k < solver.strings().count(); k++) {
        string(k);
      }
    }
  }

  private CellLimits cellLimits() {
    return CellLimits.of(module().cell(), solver.state(), solver.load(direction));
  }

  private BatteryModule module() {
    return solver.pack().strings().get(0).groups().get(0).module();
  }

  private void cell() {
    CellLimits cell = cellLimits();
    step("u_cell", "open-circuit voltage of a cell at " + state(), CellProperty.VOLTAGE)
        .formula("open-circuit curve")
        .source(module().cell().source(CellProperty.VOLTAGE))
        .gives(cell.openCircuitV(), VOLT);
    Cell data = module().cell();
    double durationS = solver.load(direction).durationS();
    if (data.rcPair().isEmpty() || durationS == 0) {
      step("R_cell", "resistance of a cell, " + direction, CellProperty.RESISTANCE)
          .formula("resistance table")
          .source(data.source(CellProperty.RESISTANCE))
          .gives(cell.ohm(), MILLIOHM);
    } else {
      polarisedCell(data.rcPair().get(), durationS, cell.ohm());
    }
  }

  private void polarisedCell(RcPair pair, double durationS, double ohm) {
    StepBuilder step =
        step(
            "R_cell",
            "resistance of a cell, " + direction + ", polarisation included",
            CellProperty.RESISTANCE);
    double seriesOhm = ohm - pair.ohmAfter(durationS);
    boolean steady = Double.isInfinite(durationS);
    step.formula(steady ? "R₀ + R₁" : "R₀ + R₁·(1 − e^(−t/τ))")
        .with("R₀", seriesOhm, MILLIOHM)
        .with("R₁", Figure.of(pair.resistance(), MILLIOHM));
    if (!steady) {
      step.with("t", durationS, SECOND).with("τ", Figure.of(pair.timeConstant(), SECOND));
    }
    step.gives(ohm, MILLIOHM);
  }

  private void uniformCircuit() {
    SeriesString first = solver.pack().strings().get(0);
    CellLimits cell = cellLimits();
    step("OCV", "open-circuit voltage of the pack, S cells in series", CellProperty.VOLTAGE)
        .formula("S·u_cell")
        .with("S", Figure.count(first.cellsInSeries()))
        .with("u_cell", cell.openCircuitV(), VOLT)
        .gives(solver.openCircuitV(), VOLT);
    step("R_string", "resistance of a string, p cells side by side", CellProperty.RESISTANCE)
        .formula("S·R_cell/p + M·R_interconnect + R_link")
        .with("S", Figure.count(first.cellsInSeries()))
        .with("R_cell", cell.ohm(), MILLIOHM)
        .with("p", Figure.count(module().parallel()))
        .with("M", Figure.count(first.moduleCount()))
        .with("R_interconnect", Figure.of(module().interconnectResistance(), MILLIOHM))
        .with("R_link", Figure.of(first.linkResistance(), MILLIOHM))
        .gives(solver.strings().resistanceOhm(0, direction), MILLIOHM);
    step("R", "resistance of the pack, P strings", CellProperty.RESISTANCE)
        .formula("R_string/P + R_lead")
        .with("R_string", solver.strings().resistanceOhm(0, direction), MILLIOHM)
        .with("P", Figure.count(solver.strings().count()))
        .with("R_lead", Figure.of(solver.pack().leadResistance(), MILLIOHM))
        .gives(solver.strings().resistanceOhm(direction), MILLIOHM);
  }

  private void string(int k) {
    String name = solver.pack().strings().get(k).name();
    String number = Integer.toString(k + 1);
    step("E" + number, "open-circuit voltage of " + name + " at " + state(), CellProperty.VOLTAGE)
        .formula("sum over its cells")
        .gives(solver.strings().sourceV(k), VOLT);
    step("R" + number, "resistance of " + name + ", " + direction, CellProperty.RESISTANCE)
        .formula("sum over its cells, interconnects and links")
        .gives(solver.strings().resistanceOhm(k, direction), MILLIOHM);
  }

  private void currentLimit(PackSolver.Bound found) {
    if (uniform()) {
      cellCurrents();
    } else {
      for (int k = 0; k < solver.strings().count(); k++) {
        stringCurrent(k);
      }
    }
    if (found.limit() == Limit.POWER_TRANSFER) {
      transferCurrent(found);
    } else if (uniform()) {
      step("I_max", "largest " + direction + " current, limited by " + found.limit(), currents())
          .formula("P·p·I_cell")
          .with("P", Figure.count(solver.strings().count()))
          .with("p", Figure.count(module().parallel()))
          .with("I_cell", cellLimits().currentA(), AMPERE)
          .basis(basis(CellProperty.RESISTANCE))
          .gives(found.currentA(), AMPERE);
    } else {
      step("I_max", "largest " + direction + " current, limited by " + found.limit(), currents())
          .formula("currents of all strings when the tightest is at its limit")
          .basis(basis(CellProperty.RESISTANCE))
          .gives(found.currentA(), AMPERE);
    }
  }

  private static CellProperty currents() {
    return CellProperty.CURRENT;
  }

  private void cellCurrents() {
    CellLimits cell = cellLimits();
    boolean discharge = direction == Direction.DISCHARGE;
    String bound = discharge ? "u_min" : "u_max";
    step("I_U", "current at which a cell reaches its voltage limit", CellProperty.VOLTAGE)
        .formula(discharge ? "(u_cell − u_min)/R_cell" : "(u_max − u_cell)/R_cell")
        .with("u_cell", cell.openCircuitV(), VOLT)
        .with(bound, cell.boundV(), VOLT)
        .with("R_cell", cell.ohm(), MILLIOHM)
        .basis(basis(CellProperty.RESISTANCE))
        .gives(cell.byVoltageA(), AMPERE);
    boolean byTemperature = Double.isFinite(cell.byTemperatureA());
    StepBuilder least =
        step("I_cell", "largest " + direction + " current of a cell", currents())
            .formula(byTemperature ? "least of I_U, I_rated, I_T" : "least of I_U, I_rated")
            .with("I_U", cell.byVoltageA(), AMPERE)
            .with("I_rated", cell.ratedA(), AMPERE);
    if (byTemperature) {
      least.with("I_T", cell.byTemperatureA(), AMPERE).basis(basis(CellProperty.TEMPERATURE));
    }
    least.gives(cell.currentA(), AMPERE);
  }

  private void stringCurrent(int k) {
    StringModel.CurrentBound bound = solver.stringBound(k, direction);
    String name = solver.pack().strings().get(k).name();
    step(
            "I" + (k + 1),
            "largest " + direction + " current of " + name + ", limited by " + bound.limit(),
            currents())
        .formula("least over its cells of the limits by voltage, rating and temperature")
        .basis(basis(CellProperty.RESISTANCE))
        .gives(bound.currentA(), AMPERE);
  }

  private void transferCurrent(PackSolver.Bound found) {
    step(
            "I_max",
            "current beyond which power falls, below the limits of the cells",
            CellProperty.RESISTANCE)
        .formula("U/R with U half of the source voltage")
        .with("U", found.voltageV(), VOLT)
        .with("R", found.voltageV() / found.currentA(), MILLIOHM)
        .source(Source.PHYSICS)
        .gives(found.currentA(), AMPERE);
  }

  private void voltageUnderLoad(double currentA, double voltageV) {
    StepBuilder step =
        step("U", "terminal voltage at that current", CellProperty.RESISTANCE)
            .basis(basis(CellProperty.VOLTAGE));
    if (uniform()) {
      step.formula(currentA >= 0 ? "OCV − I·R" : "OCV + I·R")
          .with("OCV", solver.openCircuitV(), VOLT)
          .with("I", Math.abs(currentA), AMPERE)
          .with("R", solver.strings().resistanceOhm(direction), MILLIOHM);
    } else {
      step.formula(
              "(Σ(E/R) − I)/Σ(1/R) − I·R_lead, each R by the direction of its string's current")
          .with("I", currentA, AMPERE)
          .with("R_lead", Figure.of(solver.pack().leadResistance(), MILLIOHM));
    }
    step.gives(voltageV, VOLT);
  }

  private void power(PackSolver.Bound found) {
    step("P_max", "largest " + direction + " power", CellProperty.RESISTANCE)
        .basis(basis(CellProperty.CURRENT))
        .formula("I_max·U")
        .with("I_max", found.currentA(), AMPERE)
        .with("U", found.voltageV(), VOLT)
        .gives(Figure.ofSi(found.powerW(), KILOWATT));
  }
}
