package org.wattwright.benchmarks.charging;

import static org.wattwright.units.Measures.ampereHours;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.kilojoulesPerKelvin;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.volts;
import static org.wattwright.units.Measures.wattsPerKelvin;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.wattwright.battery.BatteryModule;
import org.wattwright.battery.Cell;
import org.wattwright.battery.CellEstimates;
import org.wattwright.battery.Chemistry;
import org.wattwright.battery.Pack;
import org.wattwright.battery.TemperatureRange;
import org.wattwright.charging.AmbientCooling;
import org.wattwright.charging.ChargeResult;
import org.wattwright.charging.ChargeSimulation;
import org.wattwright.charging.Charger;
import org.wattwright.charging.ChargingPoint;
import org.wattwright.charging.EfficiencyByLoad;
import org.wattwright.charging.Supply;
import org.wattwright.units.Kind;
import org.wattwright.voltage.VoltageRange;
import org.wattwright.voltage.VoltageWindow;

/**
 * What one whole charge costs, from 10 % through the taper, with the cells at one temperature and
 * with cells that warm; every part is invented.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 500, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 8, time = 500, timeUnit = TimeUnit.MILLISECONDS)
@Fork(
    value = 2,
    jvmArgs = {"-Xms1g", "-Xmx1g", "-XX:+UseSerialGC", "-XX:+AlwaysPreTouch"})
public class ChargeSimulationBenchmark {
  private ChargeSimulation steady;
  private ChargeSimulation warming;

  /** A pack of about 38 kW·h on a 6.6 kW charger. */
  @Setup(Level.Trial)
  public void build() {
    Cell cell =
        Cell.of("invented plate cell", Chemistry.LFP)
            .capacity(ampereHours(105))
            .openCircuit(CellEstimates.openCircuit(Chemistry.LFP))
            .resistance(CellEstimates.resistanceOverTemperature(milliohms(0.8)))
            .minimumVoltage(volts(2.5))
            .maximumVoltage(volts(3.65))
            .continuousDischargeCurrent(amperes(105))
            .continuousChargeCurrent(amperes(52))
            .dischargeTemperatures(TemperatureRange.between(celsius(-20), celsius(55)))
            .chargeTemperatures(TemperatureRange.between(celsius(0), celsius(45)))
            .mass(kilograms(1.98))
            .build();
    Charger charger =
        Charger.of(
                "charger", VoltageWindow.operating(VoltageRange.between(volts(120), volts(201.8))))
            .maximumPower(kilowatts(6.6))
            .maximumCurrent(amperes(42))
            .maximumInputCurrent(amperes(32))
            .efficiency(EfficiencyByLoad.from(0.1, 0.86).and(0.5, 0.94).and(1, 0.93))
            .build();
    steady =
        ChargeSimulation.of(Pack.of(BatteryModule.of(cell).series(4).build(), 14, 2))
            .charger(charger)
            .at(ChargingPoint.of(Supply.singlePhase(volts(230), amperes(32))))
            .from(percentCharge(10))
            .temperature(celsius(10));
    warming =
        steady.cooling(AmbientCooling.of(kilojoulesPerKelvin(250), wattsPerKelvin(10), celsius(5)));
    double hours = Kind.TIME.siValueOf(steady.run().time()) / 3600;
    if (!(hours > 4 && hours < 7)) {
      throw new IllegalStateException("a charge of about six hours expected: " + hours);
    }
  }

  /** Cells at one temperature. */
  @Benchmark
  public ChargeResult steady() {
    return steady.run();
  }

  /** Cells that warm by their losses. */
  @Benchmark
  public ChargeResult warming() {
    return warming.run();
  }
}
