package org.wattwright.benchmarks.layout;

import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.seconds;

import java.util.List;
import org.wattwright.battery.BatteryModule;
import org.wattwright.battery.Direction;
import org.wattwright.battery.Pack;
import org.wattwright.battery.PackState;
import org.wattwright.battery.PowerLimit;
import org.wattwright.units.Kind;
import org.wattwright.voltage.OperatingConditions;
import org.wattwright.voltage.VoltageEnvelope;

/** What one would write without a library: doubles in arrays, one condition after the other. */
final class PlainLoop {
  private final double[][] modules;

  private PlainLoop(double[][] modules) {
    this.modules = modules;
  }

  static PlainLoop of(List<BatteryModule> modules) {
    return new PlainLoop(modules.stream().map(PlainLoop::read).toArray(double[][]::new));
  }

  private static double[] read(BatteryModule module) {
    OperatingConditions conditions = Catalogue.conditions();
    Pack one = Pack.of(module, 1, 1);
    VoltageEnvelope envelope = VoltageEnvelope.of(one, conditions);
    PackState empty = PackState.of(conditions.emptiest(), conditions.coldest());
    PackState full = PackState.of(conditions.fullest(), celsius(0));
    PowerLimit peak = one.maximumDischargePower(empty, seconds(10));
    PackState asked = PackState.of(percentCharge(20), celsius(0));
    double meanV =
        Kind.VOLTAGE.siValueOf(
            module
                .cell()
                .openCircuit()
                .meanBetween(conditions.emptiest(), conditions.fullest(), conditions.usual()));
    return new double[] {
      Kind.MASS.siValueOf(module.mass()),
      Kind.CHARGE.siValueOf(module.capacity()) * module.series() * meanV * 0.9,
      Kind.POWER.siValueOf(one.maximumDischargePower(asked, seconds(10)).power()),
      Kind.VOLTAGE.siValueOf(envelope.endOfCharge()),
      Kind.VOLTAGE.siValueOf(one.openCircuitVoltage(full)),
      Kind.RESISTANCE.siValueOf(one.resistance(full, Direction.CHARGE, seconds(10))),
      Kind.VOLTAGE.siValueOf(one.openCircuitVoltage(empty)),
      Kind.RESISTANCE.siValueOf(one.resistance(empty, Direction.DISCHARGE, seconds(10))),
      Kind.POWER.siValueOf(peak.power()),
      Kind.VOLTAGE.siValueOf(peak.voltage())
    };
  }

  long count(int seriesAtMost, int parallelAtMost) {
    long passing = 0;
    for (double[] m : modules) {
      for (int parallel = 1; parallel <= parallelAtMost; parallel++) {
        for (int series = 1; series <= seriesAtMost; series++) {
          passing += passes(m, series, parallel) ? 1 : 0;
        }
      }
    }
    return passing;
  }

  /** Every value is worked out, as the counts of the search need them. */
  private static boolean passes(double[] m, int series, int parallel) {
    int count = series * parallel;
    double endV = series * m[3];
    double fullV = series * Math.max(m[3], m[4] + 60.0 / parallel * m[5]);
    double emptyV = series * m[6];
    double shareW = 45_000.0 / count;
    double root = Math.sqrt(Math.max(0, m[6] * m[6] - 4 * m[7] * shareW));
    double loadedV = series * (shareW <= m[8] ? m[6] - 2 * shareW / (m[6] + root) * m[7] : m[9]);
    boolean inverter = (fullV <= 420) & (fullV <= 450) & (loadedV >= 220);
    boolean charger = (endV <= 437) & (fullV <= 467) & (emptyV >= 200);
    boolean pack =
        (count * m[0] <= 400)
            & (count * m[1] >= 28 * 3.6e6)
            & (count * m[2] >= 60_000)
            & (count * m[8] >= 45_000);
    return inverter & charger & pack;
  }
}
