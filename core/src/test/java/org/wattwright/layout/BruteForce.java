package org.wattwright.layout;

import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.seconds;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.wattwright.battery.BatteryModule;
import org.wattwright.battery.Pack;
import org.wattwright.battery.PackState;
import org.wattwright.check.Outcome;
import org.wattwright.units.Kind;
import org.wattwright.voltage.OperatingConditions;
import org.wattwright.voltage.WindowReview;

/** The same question answered by a plain double loop over packs, without the search. */
final class BruteForce {
  /** Rounding of sums and products; the limits of the tests are typed numbers. */
  private static final double ROUNDING = 1e-12;

  private final RandomSearch asked;

  BruteForce(RandomSearch asked) {
    this.asked = asked;
  }

  /** Name, series and parallel of all packs that pass with all data known. */
  TreeSet<String> passing() {
    TreeSet<String> passing = new TreeSet<>();
    for (BatteryModule module : asked.modules()) {
      for (int series = 1; series <= RandomSearch.SERIES; series++) {
        for (int parallel = 1; parallel <= RandomSearch.PARALLEL; parallel++) {
          if (passes(module, Pack.of(module, series, parallel))) {
            passing.add(key(module, series, parallel));
          }
        }
      }
    }
    return passing;
  }

  static String key(BatteryModule module, int series, int parallel) {
    return module.name() + " " + series + "s" + parallel + "p";
  }

  static TreeSet<String> keys(List<Candidate> candidates) {
    TreeSet<String> keys = new TreeSet<>();
    candidates.forEach(c -> keys.add(key(c.module(), c.series(), c.parallel())));
    return keys;
  }

  private boolean passes(BatteryModule module, Pack pack) {
    List<Boolean> verdicts = new ArrayList<>();
    RandomSearch.Demands demands = asked.demands();
    verdicts.add(atMost(Kind.MASS.siValueOf(pack.mass()), demands.massKg()));
    verdicts.add(atLeast(energyKwh(module, pack), demands.energyKwh()));
    verdicts.add(
        atLeast(
            kilowattsOf(
                pack.maximumDischargePower(PackState.of(percentCharge(20), celsius(0)), seconds(10))
                    .power()),
            demands.powerKw()));
    verdicts.add(
        atLeast(
            kilowattsOf(
                pack.maximumChargePower(PackState.of(percentCharge(80), celsius(20)), seconds(5))
                    .power()),
            demands.chargeKw()));
    double litres =
        pack.volume().map(v -> 1000 * Kind.VOLUME.siValueOf(v)).orElse(Double.MAX_VALUE);
    verdicts.add(atMost(litres, demands.volumeL()));
    if (!asked.devices().isEmpty()) {
      Outcome windows = WindowReview.of(pack, asked.devices(), asked.conditions()).outcome();
      verdicts.add(windows == Outcome.PASS || windows == Outcome.CAUTION);
    }
    return !verdicts.contains(false);
  }

  private double energyKwh(BatteryModule module, Pack pack) {
    OperatingConditions conditions = asked.conditions();
    if (!Double.isNaN(asked.demands().meanKw())) {
      return Kind.ENERGY.siValueOf(
              pack.usableEnergyAtPower(
                      kilowatts(asked.demands().meanKw()),
                      conditions.fullest(),
                      conditions.emptiest(),
                      conditions.usual())
                  .energy())
          / 3.6e6;
    }
    double cellV =
        Kind.VOLTAGE.siValueOf(
            module
                .cell()
                .openCircuit()
                .meanBetween(conditions.emptiest(), conditions.fullest(), conditions.usual()));
    double share = conditions.fullest().fraction() - conditions.emptiest().fraction();
    int cells = pack.strings().get(0).cellsInSeries();
    return Kind.CHARGE.siValueOf(pack.capacity()) * share * cellV * cells / 3.6e6;
  }

  private static double kilowattsOf(javax.measure.Quantity<javax.measure.quantity.Power> power) {
    return Kind.POWER.siValueOf(power) / 1000;
  }

  private static boolean atMost(double actual, double limit) {
    return Double.isNaN(limit) || actual <= limit * (1 + ROUNDING);
  }

  private static boolean atLeast(double actual, double limit) {
    return Double.isNaN(limit) || actual >= limit * (1 - ROUNDING);
  }
}
