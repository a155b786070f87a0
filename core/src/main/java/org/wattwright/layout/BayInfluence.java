package org.wattwright.layout;

import static org.wattwright.units.WorkshopUnits.KILOGRAM;

import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.units.Kind;
import org.wattwright.vehicle.Axle;
import org.wattwright.vehicle.LoadInfluence;
import org.wattwright.vehicle.MassItem;
import org.wattwright.vehicle.MassLedger;
import org.wattwright.vehicle.Position;

/**
 * What modules in one bay put on axles and wheels. Shares are linear in the place, so those of the
 * first and the second module give those of the middle of any number of them.
 */
final class BayInfluence {
  /** Shares of front axle and four wheels, and the height in m. */
  private static final int SHARES = 6;

  private final Bay bay;
  private final double[] first;
  private final double[] perStep = new double[SHARES];
  private final double[] box;
  private final double boxKg;

  BayInfluence(Bay bay, MassLedger ledger) {
    this.bay = bay;
    this.first = shares(ledger, bay.first());
    double[] second = shares(ledger, bay.second());
    for (int i = 0; i < SHARES; i++) {
      perStep[i] = second[i] - first[i];
    }
    this.boxKg = bay.enclosure().map(MassItem::mass).map(Kind.MASS::siValueOf).orElse(0.0);
    this.box = bay.enclosure().map(MassItem::position).map(at -> shares(ledger, at)).orElse(first);
  }

  private static double[] shares(MassLedger ledger, Position position) {
    LoadInfluence influence = ledger.influenceOf(position);
    double[] shares = new double[SHARES];
    shares[0] = influence.on(Axle.FRONT);
    for (int i = 0; i < 4; i++) {
      shares[1 + i] =
          influence.hasWheels() ? influence.on(BayLoad.axle(i), BayLoad.side(i)) : Double.NaN;
    }
    shares[5] = BayAxis.heightM(position);
    return shares;
  }

  Bay bay() {
    return bay;
  }

  boolean hasWheels() {
    return !Double.isNaN(first[1] + perStep[1] + box[1]);
  }

  boolean hasHeight() {
    return !Double.isNaN(first[5] + perStep[5] + box[5]);
  }

  double boxKg() {
    return boxKg;
  }

  /** W = n·m + m_box; front W_f = n·m·c + m_box·c_box with c at the middle of the n modules. */
  BayLoad load(double moduleKg, int count, Recorder recorder) {
    if (count == 0) {
      return new BayLoad(0, 0, new double[4], 0);
    }
    double steps = (count - 1) / 2.0;
    double modulesKg = count * moduleKg;
    double[] loads = new double[SHARES];
    for (int i = 0; i < SHARES; i++) {
      loads[i] = modulesKg * (first[i] + steps * perStep[i]) + boxKg * box[i];
    }
    double massKg = modulesKg + boxKg;
    record(recorder, moduleKg, count, loads[0]);
    double[] wheels = {loads[1], loads[2], loads[3], loads[4]};
    return new BayLoad(massKg, loads[0], wheels, loads[5]);
  }

  private void record(Recorder recorder, double moduleKg, int count, double frontKg) {
    if (!recorder.isOn()) {
      return;
    }
    recorder
        .step("m_b", bay.name() + ": modules and enclosure")
        .formula("n·m + m_e")
        .with("n", Figure.count(count))
        .with("m", moduleKg, KILOGRAM)
        .with("m_e", boxKg, KILOGRAM)
        .gives(count * moduleKg + boxKg, KILOGRAM);
    recorder
        .step("Δm_f", bay.name() + ": front axle (c = 1 - d/L at the middle of the n modules)")
        .formula("n·m·c + m_e·c_e")
        .with("n", Figure.count(count))
        .with("m", moduleKg, KILOGRAM)
        .with("c", Figure.number(first[0] + (count - 1) / 2.0 * perStep[0]))
        .with("m_e", boxKg, KILOGRAM)
        .with("c_e", Figure.number(box[0]))
        .gives(frontKg, KILOGRAM);
  }
}
