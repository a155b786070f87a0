package org.wattwright.benchmarks.conversion;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.wattwright.check.Check;
import org.wattwright.conversion.CalculationSheet;
import org.wattwright.conversion.Conversion;
import org.wattwright.conversion.Fingerprint;
import org.wattwright.conversion.VehicleReview;
import org.wattwright.examples.JobConversion;
import org.wattwright.vehicle.LoadCase;
import org.wattwright.vehicle.LoadState;
import org.wattwright.voltage.Device;

/**
 * The review of the demonstration without cycle simulations. Beside it what is computed before: the
 * conversion built of its parts, and the whole design from the files of the job; and what is made
 * of it: the fingerprint and the sheet.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(
    value = 1,
    jvmArgsAppend = {"-Xms1g", "-Xmx1g", "-XX:+UseSerialGC"})
public class ReviewBenchmark {
  private static final int LEAST_CHECKS = 400;

  private Path folder;
  private Conversion van;

  /** Designs the demonstration, and sees that its review is whole. */
  @Setup
  public void setup() {
    Path fromTop = Path.of("examples", "data");
    folder = Files.isDirectory(fromTop) ? fromTop : Path.of("..", "examples", "data");
    van = JobConversion.of(folder).orElseThrow();
    int checks = van.review().size();
    if (checks < LEAST_CHECKS) {
      throw new IllegalStateException("only " + checks + " checks");
    }
    if (!builtAgain().review().containsAll(van.windows().checks())) {
      throw new IllegalStateException("the conversion built again has other checks");
    }
  }

  /** Every check, sorted by severity. */
  @Benchmark
  public List<Check> review() {
    return van.review();
  }

  /** Windows and masses reviewed at build, then every check; the circuits are designed before. */
  @Benchmark
  public List<Check> buildAndReview() {
    return builtAgain().review();
  }

  /** From the files to the review: search, bays, circuits. */
  @Benchmark
  public List<Check> designAndReview() {
    return JobConversion.of(folder).orElseThrow().review();
  }

  /** SHA-256 over the inputs. */
  @Benchmark
  public Fingerprint fingerprint() {
    return van.fingerprint();
  }

  /** The sheet with every working. */
  @Benchmark
  public CalculationSheet sheet() {
    return van.toSheet();
  }

  private Conversion builtAgain() {
    Conversion.Builder builder =
        Conversion.of(van.title()).pack(van.pack()).conditions(van.conditions());
    for (Device device : van.devices()) {
      builder.device(device);
    }
    VehicleReview masses = van.masses().orElseThrow();
    return builder
        .masses(masses.ledger())
        .loadCases(masses.states().stream().map(LoadState::loadCase).toArray(LoadCase[]::new))
        .axleLimits(masses.limits())
        .chassis(masses.chassis())
        .circuits(van.circuits().orElseThrow())
        .build();
  }
}
