package org.wattwright.benchmarks.drive;

import static org.wattwright.units.Measures.ampereHours;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kelvinsOfRise;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.newtonMetres;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.revolutionsPerMinute;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.squareMetres;
import static org.wattwright.units.Measures.volts;
import static org.wattwright.units.Measures.watts;

import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.wattwright.battery.BatteryModule;
import org.wattwright.battery.Cell;
import org.wattwright.battery.CellEstimates;
import org.wattwright.battery.Chemistry;
import org.wattwright.battery.Pack;
import org.wattwright.battery.PackState;
import org.wattwright.battery.TemperatureRange;
import org.wattwright.check.Given;
import org.wattwright.drive.CycleResult;
import org.wattwright.drive.CycleRun;
import org.wattwright.drive.DriveCycle;
import org.wattwright.drive.DriveFactor;
import org.wattwright.drive.Driveline;
import org.wattwright.drive.ElectricVehicle;
import org.wattwright.drive.MotorEnvelope;
import org.wattwright.drive.MotorLoss;
import org.wattwright.drive.RangeSpread;
import org.wattwright.drive.RangeUncertainty;
import org.wattwright.drive.RoadLoad;
import org.wattwright.drive.RollingResistance;
import org.wattwright.drive.StandardCycle;
import org.wattwright.profile.Profile;
import org.wattwright.units.Kind;

/**
 * A cycle of 1180 s at 1 Hz with the full model, and a scatter of the range by 64 samples. All
 * parts are invented.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 300, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 8, time = 300, timeUnit = TimeUnit.MILLISECONDS)
@Fork(
    value = 3,
    jvmArgs = {"-Xms1g", "-Xmx1g", "-XX:+UseSerialGC", "-XX:+AlwaysPreTouch"})
public class CycleBenchmark {
  private static final int STEPS = 1180;
  private static final double SOURCE_V = 99;
  private static final double OHM = 0.008;

  private final ElectricVehicle van = van();
  private final CycleRun run = CycleRun.of(van);
  private final DriveCycle cycle = eachSecond();
  private final double[] speedsMs = speeds(cycle);
  private final ForkJoinPool oneThread = new ForkJoinPool(1);
  private final RangeUncertainty uncertainty =
      RangeUncertainty.of(van, cycle, percentCharge(10))
          .tolerance(DriveFactor.MASS, 0.03)
          .tolerance(DriveFactor.DRAG_AREA, 0.1)
          .temperatureTolerance(kelvinsOfRise(5));

  private static DriveCycle eachSecond() {
    DriveCycle corners = StandardCycle.NEDC.cycle();
    Profile<javax.measure.quantity.Speed> trace = corners.trace();
    return DriveCycle.of(
        corners.name(),
        corners.source(),
        Profile.sampled(Kind.SPEED, corners.duration(), STEPS, trace::at));
  }

  private static double[] speeds(DriveCycle cycle) {
    double[] speedsMs = new double[STEPS + 1];
    for (int i = 0; i <= STEPS; i++) {
      speedsMs[i] = Kind.SPEED.siValueOf(cycle.trace().at(seconds(i)));
    }
    return speedsMs;
  }

  private static ElectricVehicle van() {
    Cell cell =
        Cell.of("plate cell", Chemistry.LFP)
            .capacity(ampereHours(105))
            .openCircuit(CellEstimates.openCircuit(Chemistry.LFP))
            .resistance(CellEstimates.resistanceOverTemperature(milliohms(0.8)))
            .minimumVoltage(volts(2.5))
            .maximumVoltage(volts(3.65))
            .continuousDischargeCurrent(amperes(157))
            .continuousChargeCurrent(amperes(105))
            .pulseDischargeCurrent(amperes(315), seconds(30))
            .dischargeTemperatures(TemperatureRange.between(celsius(-20), celsius(55)))
            .chargeTemperatures(TemperatureRange.between(celsius(0), celsius(45)))
            .mass(kilograms(1.98))
            .build();
    MotorEnvelope motor =
        MotorEnvelope.of("drive unit")
            .peak(newtonMetres(140), kilowatts(50))
            .maximumSpeed(revolutionsPerMinute(9000))
            .ratedVoltage(volts(90))
            .loss(
                MotorLoss.law()
                    .copper(kilowatts(3), newtonMetres(140))
                    .iron(watts(300), revolutionsPerMinute(6000))
                    .standing(watts(150)))
            .build();
    return ElectricVehicle.of(
            motor,
            Driveline.fixed(7.2, 0.96, Given.measured(metres(1.83), "rolled")),
            RoadLoad.of(kilograms(1180), RollingResistance.radialTyre(), squareMetres(0.9)),
            Pack.of(BatteryModule.of(cell).series(6).parallel(3).build(), 5, 1))
        .at(PackState.of(percentCharge(85), celsius(20)))
        .auxiliaries(watts(300))
        .build();
  }

  @Benchmark
  public CycleResult oneCycle() {
    return run.once(cycle);
  }

  /** The same trace by a plain Simpson rule on doubles, without limits, losses by part or pack. */
  @Benchmark
  public double plainSimpson() {
    double socC = 0.85 * 315 * 3600;
    double energyJ = 0;
    for (int i = 0; i < STEPS; i++) {
      double startMs = speedsMs[i];
      double endMs = speedsMs[i + 1];
      double a = endMs - startMs;
      double startA = plainA(startMs, a);
      double middleA = plainA((startMs + endMs) / 2, a);
      double endA = plainA(endMs, a);
      double movedC = (startA + 4 * middleA + endA) / 6;
      socC -= movedC;
      energyJ += movedC * SOURCE_V;
    }
    return energyJ + socC;
  }

  private static double plainA(double speedMs, double accelerationMs2) {
    double forceN = 140 + (0.0002 + 0.535 * speedMs) * speedMs + 1215 * accelerationMs2;
    double powerW = forceN * speedMs * (forceN >= 0 ? 1.15 : 0.85) + 300;
    return (SOURCE_V - Math.sqrt(SOURCE_V * SOURCE_V - 4 * OHM * powerW)) / (2 * OHM);
  }

  @Benchmark
  public RangeSpread scatterOf64() {
    return uncertainty.spread(64, 7);
  }

  /** The same samples, held to one thread. */
  @Benchmark
  public RangeSpread scatterOf64OnOneThread() throws Exception {
    return oneThread.submit(() -> uncertainty.spread(64, 7)).get();
  }

  @Benchmark
  public ElectricVehicle packTable() {
    return van();
  }
}
