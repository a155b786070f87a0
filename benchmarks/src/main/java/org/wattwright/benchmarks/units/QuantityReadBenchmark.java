package org.wattwright.benchmarks.units;

import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import javax.measure.MetricPrefix;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.ElectricPotential;
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
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;
import org.wattwright.units.WorkshopUnits;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/**
 * What the door costs: 256 voltages, half of them in mV, are read as volts and summed.
 *
 * <p>Baseline: the same sum over doubles, each times a cached factor. Peer: {@code
 * to(VOLT).getValue().doubleValue()} on the reference implementation.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 300, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 4, time = 300, timeUnit = TimeUnit.MILLISECONDS)
@Fork(
    value = 2,
    jvmArgs = {"-Xms1g", "-Xmx1g", "-XX:+UseSerialGC", "-XX:+AlwaysPreTouch"})
public class QuantityReadBenchmark {
  private static final int COUNT = 256;
  private static final long SEED = 20260101;
  private static final Unit<ElectricPotential> MILLIVOLT = MetricPrefix.MILLI(Units.VOLT);

  private final double[] values = new double[COUNT];
  private final double[] factors = new double[COUNT];
  private Quantity<ElectricPotential>[] ours;
  private Quantity<ElectricPotential>[] theirs;

  /** The same voltages three times; fails if they do not sum up alike. */
  @Setup(Level.Trial)
  @SuppressWarnings("unchecked")
  public void prepare() {
    SplittableRandom random = new SplittableRandom(SEED);
    ours = new Quantity[COUNT];
    theirs = new Quantity[COUNT];
    for (int i = 0; i < COUNT; i++) {
      boolean milli = i % 2 == 1;
      double value = random.nextDouble(2.5, 4.2) * (milli ? 1000 : 1);
      values[i] = value;
      factors[i] = milli ? 1e-3 : 1;
      ours[i] = milli ? Measures.millivolts(value) : Measures.volts(value);
      theirs[i] = Quantities.getQuantity(value, milli ? MILLIVOLT : Units.VOLT);
    }
    requireClose(oursInSi(), doublesTimesFactor());
    requireClose(oursInVolts(), doublesTimesFactor());
    requireClose(reference(), doublesTimesFactor());
  }

  private static void requireClose(double one, double other) {
    if (!(Math.abs(one - other) <= 1e-9 * other)) {
      throw new IllegalStateException(one + " is not " + other);
    }
  }

  /** Baseline. */
  @Benchmark
  @OperationsPerInvocation(COUNT)
  public double doublesTimesFactor() {
    double sum = 0;
    for (int i = 0; i < COUNT; i++) {
      sum += values[i] * factors[i];
    }
    return sum;
  }

  /** How solvers read. */
  @Benchmark
  @OperationsPerInvocation(COUNT)
  public double oursInSi() {
    double sum = 0;
    for (Quantity<ElectricPotential> quantity : ours) {
      sum += Kind.VOLTAGE.siValueOf(quantity);
    }
    return sum;
  }

  /** How callers read. */
  @Benchmark
  @OperationsPerInvocation(COUNT)
  public double oursInVolts() {
    double sum = 0;
    for (Quantity<ElectricPotential> quantity : ours) {
      sum += WorkshopUnits.VOLT.valueOf(quantity);
    }
    return sum;
  }

  /** How callers read in a unit that is not the SI unit. */
  @Benchmark
  @OperationsPerInvocation(COUNT)
  public double oursInMillivolts() {
    double sum = 0;
    for (Quantity<ElectricPotential> quantity : ours) {
      sum += WorkshopUnits.MILLIVOLT.valueOf(quantity);
    }
    return sum;
  }

  /** Peer. */
  @Benchmark
  @OperationsPerInvocation(COUNT)
  public double reference() {
    double sum = 0;
    for (Quantity<ElectricPotential> quantity : theirs) {
      sum += quantity.to(Units.VOLT).getValue().doubleValue();
    }
    return sum;
  }

  /** A foreign quantity at our door. */
  @Benchmark
  @OperationsPerInvocation(COUNT)
  public double foreignInSi() {
    double sum = 0;
    for (Quantity<ElectricPotential> quantity : theirs) {
      sum += Kind.VOLTAGE.siValueOf(quantity);
    }
    return sum;
  }
}
