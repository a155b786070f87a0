package org.wattwright.benchmarks.conductor;

import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.squareMillimetres;

import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.wattwright.conductor.Cable;
import org.wattwright.conductor.ConductorSize;
import org.wattwright.conductor.HeatingResult;
import org.wattwright.conductor.Installation;
import org.wattwright.conductor.InsulationMaterial;
import org.wattwright.conductor.SteadyHeating;
import org.wattwright.conductor.StrandClass;

/**
 * Steady conductor temperature at one of 256 currents.
 *
 * <p>Targets: ours at most 0.4 µs, and at most half of Brent at 1e-6 K on the plain balance.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(
    value = 2,
    jvmArgs = {"-Xms1g", "-Xmx1g", "-XX:+UseSerialGC", "-XX:+AlwaysPreTouch"})
@Warmup(iterations = 3, time = 300, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 4, time = 300, timeUnit = TimeUnit.MILLISECONDS)
public class SteadyTemperatureBenchmark {
  private static final int CASES = 256;

  private final SteadyHeating heating =
      SteadyHeating.of(
          Cable.of(
                  "35",
                  ConductorSize.metric(squareMillimetres(35), StrandClass.FLEXIBLE),
                  InsulationMaterial.PVC)
              .conductorDiameter(millimetres(7.9))
              .outerDiameter(millimetres(11.7))
              .build(),
          Installation.freeAir(celsius(40)));

  private final double[] currentsA = new SplittableRandom(42).doubles(CASES, 20, 220).toArray();

  private final List<Quantity<ElectricCurrent>> currents =
      IntStream.range(0, CASES).mapToObj(i -> amperes(currentsA[i])).toList();

  private int next;

  private int index() {
    next = (next + 1) & (CASES - 1);
    return next;
  }

  /**
   * The library, from quantity to result.
   *
   * @return the result
   */
  @Benchmark
  public HeatingResult ours() {
    return heating.at(currents.get(index()));
  }

  /**
   * Secant on plain doubles.
   *
   * @return conductor temperature in K
   */
  @Benchmark
  public double plainSecant() {
    PlainBalance balance = new PlainBalance(currentsA[index()]);
    return balance.conductorK(balance.secant());
  }

  /**
   * One evaluation of the balance.
   *
   * @return excess in W
   */
  @Benchmark
  public double oneEvaluation() {
    int i = index();
    return new PlainBalance(currentsA[i]).value(330 + currentsA[i] * 0.1);
  }

  /**
   * Brent on plain doubles, 1e-6 K.
   *
   * @return conductor temperature in K
   */
  @Benchmark
  public double brent() {
    PlainBalance balance = new PlainBalance(currentsA[index()]);
    double surfaceK =
        new BrentSolver(1e-6).solve(100, balance, PlainBalance.AIR_K, PlainBalance.AIR_K + 300);
    return balance.conductorK(surfaceK);
  }
}
