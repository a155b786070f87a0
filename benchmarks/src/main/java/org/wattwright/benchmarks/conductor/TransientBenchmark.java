package org.wattwright.benchmarks.conductor;

import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.milliseconds;
import static org.wattwright.units.Measures.volts;
import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.SECOND;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import javax.measure.quantity.ElectricCurrent;
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
import org.wattwright.conductor.ConductorMaterial;
import org.wattwright.conductor.ConductorSize;
import org.wattwright.conductor.ConductorSizer;
import org.wattwright.conductor.FaultDuty;
import org.wattwright.conductor.Installation;
import org.wattwright.conductor.InsulationMaterial;
import org.wattwright.conductor.SizingResult;
import org.wattwright.conductor.StrandClass;
import org.wattwright.conductor.TransientHeating;
import org.wattwright.conductor.TransientResult;
import org.wattwright.conductor.WireSurface;
import org.wattwright.profile.Profile;

/**
 * Conductor temperature over a drive cycle of 1,800 steps of 1 s, and a whole sizing.
 *
 * <p>Targets: one pass at most 50 µs. The plain pass is explicit Euler with a constant conductance.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(
    value = 2,
    jvmArgs = {"-Xms1g", "-Xmx1g", "-XX:+UseSerialGC", "-XX:+AlwaysPreTouch"})
@Warmup(iterations = 3, time = 300, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 4, time = 300, timeUnit = TimeUnit.MILLISECONDS)
public class TransientBenchmark {
  private static final int STEPS = 1800;

  private final double[] currentsA = new SplittableRandom(7).doubles(STEPS, -150, 300).toArray();

  private final Profile<ElectricCurrent> profile =
      Profile.ofSteps(SECOND, ones(), AMPERE, currentsA);

  private final List<Cable> catalogue =
      ConductorSize.metricSizes(StrandClass.FLEXIBLE, WireSurface.PLAIN, ConductorMaterial.COPPER)
          .stream()
          .map(
              size ->
                  Cable.of("G", size, InsulationMaterial.XLPE)
                      .conductorDiameter(millimetres(1.33 * Math.sqrt(squareMm(size))))
                      .outerDiameter(millimetres(1.2 + 1.75 * Math.sqrt(squareMm(size))))
                      .build())
          .toList();

  private final TransientHeating heating =
      TransientHeating.of(catalogue.get(10), Installation.freeAir(celsius(40)));

  private static double squareMm(ConductorSize size) {
    return org.wattwright.units.WorkshopUnits.SQUARE_MILLIMETRE.valueOf(size.area());
  }

  private static double[] ones() {
    double[] ones = new double[STEPS];
    Arrays.fill(ones, 1);
    return ones;
  }

  /**
   * The library, one pass with its course.
   *
   * @return the result
   */
  @Benchmark
  public TransientResult onePass() {
    return heating.from(celsius(40), profile);
  }

  /**
   * The library, until the repeated profile settles.
   *
   * @return the result
   */
  @Benchmark
  public TransientResult settled() {
    return heating.settled(profile);
  }

  /**
   * Explicit Euler in plain doubles.
   *
   * @return end temperature in K
   */
  @Benchmark
  public double plainEuler() {
    double temperatureK = 313.15;
    for (double currentA : currentsA) {
      double heat = currentA * currentA * 0.386e-3 * (1 + 0.00393 * (temperatureK - 293.15));
      temperatureK += (heat - 0.5 * (temperatureK - 313.15)) / 200;
    }
    return temperatureK;
  }

  /**
   * A sizing over 19 cables by temperature, drop and short circuit.
   *
   * @return the result
   */
  @Benchmark
  public SizingResult sizing() {
    return ConductorSizer.over(catalogue)
        .installation(Installation.freeAir(celsius(40)))
        .continuousCurrent(amperes(150))
        .length(metres(4))
        .voltageDropAtMost(volts(1))
        .fault(FaultDuty.of(amperes(6000), milliseconds(20)))
        .run();
  }
}
