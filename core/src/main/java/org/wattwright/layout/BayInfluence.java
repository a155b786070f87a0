package org.wattwright.layout;

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

  /** Mass in kg and name of each type of module of a pack, in the order in which a bay fills. */
  static final class Masses {
    private final double[] moduleKg;
    private final PackOption option;

    Masses(PackOption option) {
      this.option = option;
      this.moduleKg = option.moduleKg();
    }
  }

  /**
   * W = Σ n·m + m_box; front W_f = Σ n·m·c + m_box·c_box with c at the middle of the n modules of a
   * type, which sit behind those of the types before it.
   */
  BayLoad load(Masses masses, int[] modules, Recorder recorder) {
    int before = 0;
    double modulesKg = 0;
    double[] loads = new double[SHARES];
    for (int type = 0; type < modules.length; type++) {
      if (modules[type] > 0) {
        double kg = modules[type] * masses.moduleKg[type];
        add(loads, kg, before + (modules[type] - 1) / 2.0);
        modulesKg += kg;
        before += modules[type];
      }
    }
    if (before == 0) {
      return new BayLoad(0, 0, new double[4], 0);
    }
    for (int i = 0; i < SHARES; i++) {
      loads[i] += boxKg * box[i];
    }
    if (recorder.isOn()) {
      record(recorder, masses, modules, loads[0]);
    }
    double[] wheels = {loads[1], loads[2], loads[3], loads[4]};
    return new BayLoad(modulesKg + boxKg, loads[0], wheels, loads[5]);
  }

  private void add(double[] loads, double kg, double steps) {
    for (int i = 0; i < SHARES; i++) {
      loads[i] += kg * (first[i] + steps * perStep[i]);
    }
  }

  private void record(Recorder recorder, Masses masses, int[] modules, double frontKg) {
    BayRecord steps = new BayRecord(bay.name(), boxKg, box[0]);
    int before = 0;
    for (int type = 0; type < modules.length; type++) {
      if (modules[type] > 0) {
        double share = first[0] + (before + (modules[type] - 1) / 2.0) * perStep[0];
        String name = masses.option.module(type).name();
        steps.add(new BayRecord.Row(name, modules[type], masses.moduleKg[type], share));
        before += modules[type];
      }
    }
    steps.record(recorder, frontKg);
  }
}
