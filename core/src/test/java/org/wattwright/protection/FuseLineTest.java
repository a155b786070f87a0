package org.wattwright.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.data.Percentage.withPercentage;
import static org.wattwright.units.Measures.ampereSquaredSeconds;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.milliseconds;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.Generator;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/** The longest clearing time of a fuse as the search sees it. */
class FuseLineTest {
  private static final CapacitorInfeed NONE = CapacitorInfeed.of(List.of());

  static Stream<Generator> cases() {
    return Generator.cases(60);
  }

  private static Fuse fuse(Generator random) {
    double ratedA = random.betweenDecades(5, 500);
    double meltA2S = random.betweenDecades(0.3, 3) * ratedA * ratedA;
    return Fuse.of("F", amperes(ratedA))
        .directVoltage(volts(500))
        .testTimeConstant(milliseconds(5))
        .breakingCapacity(Measures.kiloamperes(20))
        .fullRange()
        .preArcingCurve(
            TimeCurrentCurve.ofPoints()
                .point(amperes(1.6 * ratedA), seconds(2000))
                .point(amperes(random.between(2, 3) * ratedA), seconds(random.between(10, 60)))
                .point(amperes(random.between(4, 6) * ratedA), seconds(random.between(0.05, 2)))
                .point(amperes(12 * ratedA), seconds(random.between(0.004, 0.02)))
                .tolerance(random.between(0, 0.1))
                .build())
        .preArcingJouleIntegral(ampereSquaredSeconds(meltA2S))
        .totalJouleIntegral(
            ampereSquaredSeconds(meltA2S * random.betweenDecades(1.2, 20)), volts(500))
        .build();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void neverRisesAndIsNeverShorterThanTheFuse(Generator random) {
    Fuse fuse = fuse(random);
    CapacitorInfeed infeed =
        new CapacitorInfeed(random.betweenDecades(1, 1e6), 1000, random.between(100, 600));
    FuseLine line = FuseLine.of(fuse, 400, infeed);
    assertThat(line).isNotNull();
    requireFalling(line.clearing());
    requireFalling(line.heat());
    for (int i = 0; i < 200; i++) {
      double currentA =
          random.betweenDecades(line.clearing().lowestA(), line.clearing().highestA());
      FaultCurrent fault = FaultParts.fault(currentA);
      if (fuse.clearing(fault, volts(400)) instanceof Clearing.Cleared cleared) {
        double aloneA2S = Kind.JOULE_INTEGRAL.siValueOf(cleared.letThrough());
        double leastS = aloneA2S / (currentA * currentA) * (1 - 1e-9);
        assertThat(line.clearing().at(currentA)).isGreaterThanOrEqualTo(leastS);
        double withA2S = infeed.throughA2S(fuse.data(), 400, aloneA2S);
        assertThat(withA2S).isGreaterThan(aloneA2S);
        assertThat(line.heat().at(currentA))
            .isGreaterThanOrEqualTo(withA2S / (currentA * currentA) * (1 - 1e-9));
      }
    }
  }

  private static void requireFalling(TimeCurve curve) {
    for (int i = 1; i < curve.size(); i++) {
      assertThat(curve.timeS(i)).isLessThanOrEqualTo(curve.timeS(i - 1) * (1 + 1e-12));
      assertThat(curve.currentA(i)).isGreaterThan(curve.currentA(i - 1));
    }
    assertThat(CoverCurve.of("curve", curve, Double.MAX_VALUE).points()).hasSize(curve.size());
  }

  @Test
  void whereArcingBeginsToCountTheLongerTimeHoldsBelow() {
    Fuse fuse = CircuitParts.fuse("F-50", 50, 1);
    ClearingSolver solver = new ClearingSolver(fuse.data(), 400);
    double edgeA = new Melting(fuse.data()).slowestCurrentAtA(0.1).orElseThrow();
    double below = timeS(solver, edgeA * (1 - 1e-9));
    double above = timeS(solver, edgeA * (1 + 1e-9));
    // 0.1 s, and (3.5 − 0.8)·50² A²s of arcing besides.
    assertThat(below).isCloseTo(0.1, withPercentage(1e-5));
    assertThat(above).isCloseTo(0.1 + 2.7 * 2500 / edgeA / edgeA, withPercentage(1e-5));
    FuseLine line = FuseLine.of(fuse, 400, NONE);
    assertThat(line).isNotNull();
    assertThat(line.clearing().at(edgeA * (1 - 1e-9))).isCloseTo(above, withPercentage(1e-5));
    assertThat(line.clearing().at(edgeA * (1 + 1e-9))).isCloseTo(above, withPercentage(1e-5));
    assertThat(line.heat()).isSameAs(line.clearing());
  }

  private static double timeS(ClearingSolver solver, double currentA) {
    Clearing.Cleared cleared = solver.solve(FaultParts.fault(currentA)).orElseThrow();
    return Kind.JOULE_INTEGRAL.siValueOf(cleared.letThrough()) / (currentA * currentA);
  }

  @Test
  void aCurveForAPlotRefusesTimesThatRise() {
    CoverCurve.Point first = new CoverCurve.Point(amperes(100), seconds(1));
    assertThat(new CoverCurve("c", List.of(first, first)).points()).hasSize(2);
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(
            () ->
                new CoverCurve(
                    "c", List.of(first, new CoverCurve.Point(amperes(200), seconds(1.01)))))
        .withMessage("CoverCurve.time must be ≤ 1 s at the current before, but was 1.01 s");
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(
            () ->
                new CoverCurve("c", List.of(first, new CoverCurve.Point(amperes(99), seconds(1)))));
  }
}
