package org.wattwright.benchmarks.units;

import java.util.concurrent.TimeUnit;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Energy;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/**
 * What it costs to make a quantity, in its SI unit and in another, to wrap a result and to print.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 300, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 4, time = 300, timeUnit = TimeUnit.MILLISECONDS)
@Fork(
    value = 2,
    jvmArgs = {"-Xms1g", "-Xmx1g", "-XX:+UseSerialGC", "-XX:+AlwaysPreTouch"})
public class QuantityMakeBenchmark {
  private double volts = 3.7;
  private double millivolts = 3700;
  private double joules = 100.8e6;

  /** No conversion. */
  @Benchmark
  public Quantity<ElectricPotential> volts() {
    return Measures.volts(volts);
  }

  /** One conversion. */
  @Benchmark
  public Quantity<ElectricPotential> millivolts() {
    return Measures.millivolts(millivolts);
  }

  /** A solver's result, in the customary unit. */
  @Benchmark
  public Quantity<Energy> wrappedResult() {
    return Kind.ENERGY.ofSi(joules);
  }

  /** Number and symbol. */
  @Benchmark
  public String text() {
    return Measures.volts(volts).toString();
  }

  /** Number and symbol read. */
  @Benchmark
  public Quantity<ElectricPotential> parsed() {
    return Kind.VOLTAGE.parse("3700 mV");
  }

  /** Peer. */
  @Benchmark
  public Quantity<ElectricPotential> reference() {
    return Quantities.getQuantity(volts, Units.VOLT);
  }
}
