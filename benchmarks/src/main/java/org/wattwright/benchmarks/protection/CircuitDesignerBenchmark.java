package org.wattwright.benchmarks.protection;

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
import org.wattwright.conductor.Cable;
import org.wattwright.protection.CircuitDesign;
import org.wattwright.protection.CircuitDesigner;
import org.wattwright.protection.Contactor;
import org.wattwright.protection.Fuse;
import org.wattwright.units.Kind;

/**
 * One circuit over 60 cables × 80 fuses × 20 contactors, from the catalogues to the parts with all
 * their checks. Beside it every combination of smaller catalogues, 12 × 16 × 4, asked one by one,
 * and the designer over the same smaller catalogues.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(
    value = 1,
    jvmArgsAppend = {"-Xms1g", "-Xmx1g", "-XX:+UseSerialGC"})
public class CircuitDesignerBenchmark {
  private CircuitDesigner large;
  private CircuitDesigner small;
  private List<Cable> cables;
  private List<Fuse> fuses;
  private List<Contactor> contactors;

  /** Makes the questions, and sees that both ways give the same mass. */
  @Setup
  public void setup() {
    large =
        CircuitDesigner.fedBy(CircuitCatalogue.battery())
            .circuits(List.of(CircuitCatalogue.circuit()))
            .cables(CircuitCatalogue.cables(60))
            .fuses(CircuitCatalogue.fuses(80))
            .contactors(CircuitCatalogue.contactors(20));
    cables = CircuitCatalogue.cables(12);
    fuses = CircuitCatalogue.fuses(16);
    contactors = CircuitCatalogue.contactors(20).subList(8, 12);
    small = large.cables(cables).fuses(fuses).contactors(contactors);
    double byOne = everyCombination();
    double found = massKg(small.run());
    if (!(Math.abs(byOne - found) <= 1e-9)) {
      throw new IllegalStateException("one by one " + byOne + " kg, designer " + found + " kg");
    }
  }

  /** The whole design. */
  @Benchmark
  public Object design() {
    return large.run();
  }

  /** The same over the smaller catalogues. */
  @Benchmark
  public Object designSmall() {
    return small.run();
  }

  /** Every combination of the smaller catalogues as a design of its own. */
  @Benchmark
  public double everyCombination() {
    double least = Double.POSITIVE_INFINITY;
    for (Cable cable : cables) {
      for (Fuse fuse : fuses) {
        for (Contactor contactor : contactors) {
          CircuitDesign design =
              small
                  .cables(List.of(cable))
                  .fuses(List.of(fuse))
                  .contactors(List.of(contactor))
                  .run();
          least = Math.min(least, massKg(design));
        }
      }
    }
    return least;
  }

  private static double massKg(CircuitDesign design) {
    return design.mass().map(Kind.MASS::siValueOf).orElse(Double.POSITIVE_INFINITY);
  }
}
