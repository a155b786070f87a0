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
 * L: 200, 6, 6 on a grid of 0.1 kg·cm. F: the same on 0.01 kg·mm. The mixed-integer solver is run
 * on S alone: beyond it needs more than seconds. The allocator also ranks ties by bays in use and
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

  /** Builds the problem, and insists that both solvers find the same optimum. */
  @Setup(Level.Trial)
  public void build() {
    problem = BayProblem.of(size);
    linear = problem.allocator(false);
    full = problem.allocator(true);
    double ours = deviation(linear.run());
    double theirs = ChocoAllocation.run(problem);
    if (!(Math.abs(ours - theirs) <= 1e-13)) {
      throw new IllegalStateException("allocator " + ours + ", constraint solver " + theirs);
    }
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
    return ChocoAllocation.run(problem);
  }

  /**
   * The linear core by mixed-integer programming, building included.
   *
   * @return deviation
   */
  @Benchmark
  public double mixedIntegerSolver() {
    return OjalgoAllocation.run(problem);
  }
}
