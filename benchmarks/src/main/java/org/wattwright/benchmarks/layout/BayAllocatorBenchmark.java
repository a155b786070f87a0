package org.wattwright.benchmarks.layout;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.wattwright.layout.AllocationResult;
import org.wattwright.layout.BayAllocator;
import org.wattwright.layout.Coverage;

/**
 * Modules to bays: the allocator against a constraint solver and a mixed-integer solver, same
 * problem, same proven optimum; and the allocator on the full problem.
 *
 * <p>W, a workshop job: 16 modules, 3 bays, 1 type. S: 40 modules, 2 bays, 3 types. M: 100, 4, 4.
 * L: 200, 6, 6 on a grid of 0.1 kg·cm. F: the same on 0.01 kg·mm. Run the mixed-integer solver on W
 * and S and the constraint solver on W, S and M with {@code -p size=…}; beyond, the first needs
 * more than seconds and the second minutes. The allocator also ranks ties by bays in use and
 * height, which the others do not.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(
    value = 1,
    jvmArgs = {"-Xms1g", "-Xmx1g", "-XX:+UseSerialGC", "-XX:+AlwaysPreTouch"})
public class BayAllocatorBenchmark {
  /** Size of the problem. */
  @Param({"W", "S", "M", "L", "F"})
  public String size = "S";

  private BayProblem problem = BayProblem.of("S");
  private BayAllocator linear = problem.allocator(false);
  private BayAllocator full = problem.allocator(true);
  private double optimum;

  /** Builds the problem and solves it once. */
  @Setup(Level.Trial)
  public void build() {
    problem = BayProblem.of(size);
    linear = problem.allocator(false);
    full = problem.allocator(true);
    optimum = deviation(linear.run());
  }

  /** A peer must find the same optimum, else it is not the same problem. */
  private double same(double theirs) {
    if (!(Math.abs(optimum - theirs) <= 1e-13)) {
      throw new IllegalStateException("allocator " + optimum + ", peer " + theirs);
    }
    return theirs;
  }

  private static double deviation(AllocationResult result) {
    if (result.coverage().status() != Coverage.Status.PROVEN) {
      throw new IllegalStateException("not proven");
    }
    return result.best().flatMap(best -> best.frontShareDeviation()).orElseThrow();
  }

  /**
   * The linear core by the allocator, building included.
   *
   * @return deviation
   */
  @Benchmark
  public double allocator() {
    return deviation(linear.run());
  }

  /**
   * Enclosures, fill positions, links, heights, two load cases, a band.
   *
   * @return deviation
   */
  @Benchmark
  public double allocatorFullProblem() {
    return deviation(full.run());
  }

  /**
   * The linear core by constraint programming, building included.
   *
   * @return deviation
   */
  @Benchmark
  public double constraintSolver() {
    return same(ChocoAllocation.run(problem));
  }

  /**
   * The linear core by mixed-integer programming, building included.
   *
   * @return deviation
   */
  @Benchmark
  public double mixedIntegerSolver() {
    return same(OjalgoAllocation.run(problem));
  }
}
