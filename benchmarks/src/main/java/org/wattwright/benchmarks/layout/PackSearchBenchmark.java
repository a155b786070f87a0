package org.wattwright.benchmarks.layout;

import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.kilowattHours;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.seconds;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.wattwright.battery.BatteryModule;
import org.wattwright.layout.PackSearch;

/**
 * Candidates per second: 20 module types × 250 in series × 20 in parallel, two devices, energy,
 * power and mass asked for; eleven requirements in all. Beside it the same formulas as a double
 * loop over doubles that were read before. An operation is one candidate.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 4, time = 1)
@Fork(
    value = 1,
    jvmArgsAppend = {"-Xms1g", "-Xmx1g", "-XX:+UseSerialGC", "-XX:+AlwaysPreTouch"})
public class PackSearchBenchmark {
  private static final int MODULES = 20;
  private static final int SERIES = 250;
  private static final int PARALLEL = 20;
  private static final int CANDIDATES = MODULES * SERIES * PARALLEL;

  private PackSearch few;
  private PackSearch many;
  private PackSearch driving;
  private PlainLoop plain;

  /** Makes the questions, and sees that the plain loop gives the same answer. */
  @Setup
  public void setup() {
    List<BatteryModule> modules = Catalogue.modules(MODULES);
    PackSearch search =
        PackSearch.over(modules)
            .device(Catalogue.inverter())
            .device(Catalogue.charger())
            .under(Catalogue.conditions())
            .seriesAtMost(SERIES)
            .parallelAtMost(PARALLEL);
    few =
        search
            .usableEnergyAtLeast(kilowattHours(28))
            .peakPowerAtLeast(kilowatts(60), seconds(10), percentCharge(20), celsius(0))
            .massAtMost(kilograms(400));
    many = PackSearch.over(modules).seriesAtMost(SERIES).parallelAtMost(PARALLEL);
    driving = few.meanPower(kilowatts(8));
    plain = PlainLoop.of(modules);
    long expected = few.run().feasibleCount();
    if (expected == 0 || plain.count(SERIES, PARALLEL) != expected) {
      throw new IllegalStateException(
          "plain loop finds " + plain.count(SERIES, PARALLEL) + ", search finds " + expected);
    }
  }

  /** The whole search, from the modules to the counts. */
  @Benchmark
  @OperationsPerInvocation(CANDIDATES)
  public Object search() {
    return few.run();
  }

  /** Every candidate feasible, so every one is kept and ranked. */
  @Benchmark
  @OperationsPerInvocation(CANDIDATES)
  public Object searchThatKeepsAll() {
    return many.run().best();
  }

  /** Usable energy integrated at a mean power. */
  @Benchmark
  @OperationsPerInvocation(CANDIDATES)
  public Object searchAtMeanPower() {
    return driving.run();
  }

  /** The same formulas on doubles, counting what passes. */
  @Benchmark
  @OperationsPerInvocation(CANDIDATES)
  public long plainLoop() {
    return plain.count(SERIES, PARALLEL);
  }
}
