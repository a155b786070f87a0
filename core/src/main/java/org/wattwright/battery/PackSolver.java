package org.wattwright.battery;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.KILOWATT;
import static org.wattwright.units.WorkshopUnits.MILLIOHM;
import static org.wattwright.units.WorkshopUnits.VOLT;

import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.Source;
import org.wattwright.units.Kind;

/** A pack in one state, on plain doubles in SI: voltage, current, power, limits. */
final class PackSolver {
  private static final Source POWER_SOURCE = Source.PHYSICS;

  private final Pack pack;
  private final double soc;
  private final double temperatureK;
  private final double leadOhm;

  PackSolver(Pack pack, double soc, double temperatureK) {
    this.pack = pack;
    this.soc = soc;
    this.temperatureK = temperatureK;
    this.leadOhm = Kind.RESISTANCE.siValueOf(pack.leadResistance());
  }

  static PackSolver of(Pack pack, PackState state) {
    return new PackSolver(pack, state.soc(), state.temperatureK());
  }

  Node node(double durationS) {
    int count = pack.models().size();
    double[] sourceV = new double[count];
    double[] dischargeOhm = new double[count];
    double[] chargeOhm = new double[count];
    for (int k = 0; k < count; k++) {
      StringModel model = pack.models().get(k);
      sourceV[k] = model.openCircuitV(soc, temperatureK);
      dischargeOhm[k] =
          model.resistanceOhm(soc, temperatureK, new Load(Direction.DISCHARGE, durationS));
      chargeOhm[k] = model.resistanceOhm(soc, temperatureK, new Load(Direction.CHARGE, durationS));
    }
    return new Node(sourceV, dischargeOhm, chargeOhm);
  }

  double openCircuitV() {
    return node(0).voltageAt(0);
  }

  /** Resistance seen from the terminals with all strings working in one direction. */
  double resistanceOhm(Load load) {
    double conductanceS = 0;
    for (StringModel model : pack.models()) {
      conductanceS += 1 / model.resistanceOhm(soc, temperatureK, load);
    }
    return 1 / conductanceS + leadOhm;
  }

  double terminalV(double currentA, double durationS) {
    return node(durationS).voltageAt(currentA) - currentA * leadOhm;
  }

  /** I²·R of every string and of the leads. */
  double heatW(double currentA, double durationS) {
    Node node = node(durationS);
    return node.heatAt(node.voltageAt(currentA)) + currentA * currentA * leadOhm;
  }

  /** A limiting operating point; power and current as magnitudes. */
  record Bound(double powerW, double currentA, double voltageV, Limit limit) {}

  /** The largest power in one direction. */
  Bound bound(Load load, Recorder recorder) {
    boolean discharge = load.direction() == Direction.DISCHARGE;
    double sign = discharge ? 1 : -1;
    double nodeV = discharge ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
    Limit limit = Limit.CURRENT;
    for (StringModel model : pack.models()) {
      StringModel.CurrentBound bound = model.bound(soc, temperatureK, load);
      double atBoundV =
          model.openCircuitV(soc, temperatureK)
              - sign * bound.currentA() * model.resistanceOhm(soc, temperatureK, load);
      if (sign * atBoundV > sign * nodeV) {
        nodeV = atBoundV;
        limit = bound.limit();
      }
    }
    double currentA = Math.max(0, sign * node(load.durationS()).currentAt(nodeV));
    Bound found = limitedByTransfer(load, currentA, limit);
    if (recorder.isOn()) {
      record(load, found, recorder);
    }
    return found;
  }

  /** More than OCV/(2·R) brings less power. */
  private Bound limitedByTransfer(Load load, double currentA, Limit limit) {
    boolean discharge = load.direction() == Direction.DISCHARGE;
    double transferA = openCircuitV() / (2 * resistanceOhm(load));
    boolean byTransfer = discharge && transferA < currentA;
    double usedA = byTransfer ? transferA : currentA;
    double voltageV = terminalV(discharge ? usedA : -usedA, load.durationS());
    return new Bound(usedA * voltageV, usedA, voltageV, byTransfer ? Limit.POWER_TRANSFER : limit);
  }

  private void record(Load load, Bound found, Recorder recorder) {
    boolean discharge = load.direction() == Direction.DISCHARGE;
    double openCircuitV = openCircuitV();
    recorder
        .step("OCV", "open-circuit voltage of the pack at " + pack.describe(soc, temperatureK))
        .formula("S·u_cell")
        .basis(pack.basis(CellProperty.VOLTAGE))
        .gives(openCircuitV, VOLT);
    recorder
        .step("R", "pack resistance, " + load.direction())
        .formula("1/Σ(1/R_string) + R_lead")
        .basis(pack.basis(CellProperty.RESISTANCE))
        .gives(resistanceOhm(load), MILLIOHM);
    recorder
        .step("I_max", "largest " + load.direction() + " current, limited by " + found.limit())
        .formula(
            "least of the limits by cell voltage, cell current, temperature and power transfer")
        .basis(pack.basis(CellProperty.CURRENT))
        .gives(found.currentA(), AMPERE);
    recorder
        .step("U", "terminal voltage at that current")
        .formula(discharge ? "OCV − I_max·R" : "OCV + I_max·R")
        .with("OCV", openCircuitV, VOLT)
        .with("I_max", found.currentA(), AMPERE)
        .with("R", resistanceOhm(load), MILLIOHM)
        .basis(pack.basis(CellProperty.RESISTANCE))
        .source(POWER_SOURCE)
        .gives(found.voltageV(), VOLT);
    recorder
        .step("P_max", "largest " + load.direction() + " power")
        .formula("I_max·U")
        .with("I_max", found.currentA(), AMPERE)
        .with("U", found.voltageV(), VOLT)
        .basis(pack.basis(CellProperty.RESISTANCE).and(pack.basis(CellProperty.CURRENT)))
        .gives(Figure.ofSi(found.powerW(), KILOWATT));
  }

  /**
   * Current at a power that is known to be available; discharge positive.
   *
   * <p>I = 2P/(OCV + √(OCV² − 4RP)), the form that keeps its digits as P tends to 0.
   */
  double currentA(double powerW, double durationS) {
    Load load = new Load(powerW >= 0 ? Direction.DISCHARGE : Direction.CHARGE, durationS);
    double openCircuitV = openCircuitV();
    double ohm = resistanceOhm(load);
    double root = Math.sqrt(openCircuitV * openCircuitV - 4 * ohm * powerW);
    double guessA = 2 * powerW / (openCircuitV + root);
    return pack.hasEqualStrings() ? guessA : PowerRoot.solve(this, powerW, durationS, guessA);
  }
}
