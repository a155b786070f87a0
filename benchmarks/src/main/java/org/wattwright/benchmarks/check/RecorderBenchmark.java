package org.wattwright.benchmarks.check;

import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.wattwright.check.Recorder;
import org.wattwright.check.Worksheet;
import org.wattwright.units.WorkshopUnits;

/**
 * What it costs to ask a recorder that is off: a kernel of three formulas, plain, with the recorder
 * off, and recorded.
 *
 * <p>The kernel is warmed up with both recorders, as in a program that searches with one and
 * replays the winner with the other.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 300, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 8, time = 300, timeUnit = TimeUnit.MILLISECONDS)
@Fork(
    value = 3,
    jvmArgs = {"-Xms1g", "-Xmx1g", "-XX:+UseSerialGC", "-XX:+AlwaysPreTouch"})
public class RecorderBenchmark {
  private static final int CASES = 256;
  private static final long SEED = 42;

  private final double[] openCircuitV = new double[CASES];
  private final double[] resistanceOhm = new double[CASES];
  private final double[] powerW = new double[CASES];

  /** Packs of about 100 V and 40 mΩ that give 5 to 20 kW; the same on every run. */
  @Setup(Level.Trial)
  public void fill() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int i = 0; i < CASES; i++) {
      openCircuitV[i] = random.nextDouble(90, 120);
      resistanceOhm[i] = random.nextDouble(0.02, 0.06);
      powerW[i] = random.nextDouble(5_000, 20_000);
    }
    for (int i = 0; i < 20_000; i++) {
      Recorder recorder = i % 100 == 0 ? Worksheet.record("warm-up") : Recorder.OFF;
      double withRecorderW = recordedLossW(i % CASES, recorder);
      if (withRecorderW != plainLossW(i % CASES)) {
        throw new IllegalStateException("both kernels must compute the same");
      }
    }
  }

  @Benchmark
  @OperationsPerInvocation(CASES)
  public double plain() {
    double sumW = 0;
    for (int i = 0; i < CASES; i++) {
      sumW += plainLossW(i);
    }
    return sumW;
  }

  @Benchmark
  @OperationsPerInvocation(CASES)
  public double recorderOff() {
    double sumW = 0;
    for (int i = 0; i < CASES; i++) {
      sumW += recordedLossW(i, Recorder.OFF);
    }
    return sumW;
  }

  @Benchmark
  @OperationsPerInvocation(CASES)
  public double recorderOn() {
    double sumW = 0;
    for (int i = 0; i < CASES; i++) {
      sumW += recordedLossW(i, Worksheet.record("loss"));
    }
    return sumW;
  }

  private double plainLossW(int i) {
    double u0 = openCircuitV[i];
    double r = resistanceOhm[i];
    double p = powerW[i];
    double currentA = 2 * p / (u0 + Math.sqrt(u0 * u0 - 4 * r * p));
    double terminalV = u0 - currentA * r;
    return (u0 - terminalV) * currentA;
  }

  /** The way kernels are written: compute, then describe in a method of its own if asked. */
  private double recordedLossW(int i, Recorder recorder) {
    double u0 = openCircuitV[i];
    double r = resistanceOhm[i];
    double p = powerW[i];
    double currentA = 2 * p / (u0 + Math.sqrt(u0 * u0 - 4 * r * p));
    double terminalV = u0 - currentA * r;
    double lossW = (u0 - terminalV) * currentA;
    if (recorder.isOn()) {
      describe(i, recorder, new double[] {currentA, terminalV, lossW});
    }
    return lossW;
  }

  private void describe(int i, Recorder recorder, double[] results) {
    recorder
        .step("I", "current at that power")
        .formula("2·P/(U₀ + √(U₀² − 4·R·P))")
        .with("P", powerW[i], WorkshopUnits.KILOWATT)
        .with("U₀", openCircuitV[i], WorkshopUnits.VOLT)
        .with("R", resistanceOhm[i], WorkshopUnits.MILLIOHM)
        .gives(results[0], WorkshopUnits.AMPERE);
    recorder
        .step("U", "terminal voltage")
        .formula("U₀ − I·R")
        .with("U₀", openCircuitV[i], WorkshopUnits.VOLT)
        .with("I", results[0], WorkshopUnits.AMPERE)
        .with("R", resistanceOhm[i], WorkshopUnits.MILLIOHM)
        .gives(results[1], WorkshopUnits.VOLT);
    recorder
        .step("P_loss", "heat in the pack")
        .formula("(U₀ − U)·I")
        .with("U₀", openCircuitV[i], WorkshopUnits.VOLT)
        .with("U", results[1], WorkshopUnits.VOLT)
        .with("I", results[0], WorkshopUnits.AMPERE)
        .gives(results[2], WorkshopUnits.WATT);
  }
}
