package org.wattwright.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;
import static org.wattwright.units.Measures.ampereSquaredSeconds;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.milliseconds;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;

import org.junit.jupiter.api.Test;
import org.wattwright.check.Check;
import org.wattwright.check.Given;
import org.wattwright.check.Outcome;
import org.wattwright.units.Kind;

/** Slowest and fastest link of a band, and the worst fault of a range. */
class FuseBandTest {
  private static final double OWN_ALGEBRA = 1e-9;

  /** ±10 % of the links and 5 % of reading. */
  private static final double BAND = 1.1 * 1.05;

  private static final Melting BANDED =
      new Melting(FaultParts.fuse().preArcingCurve(FaultParts.curve().build()).build().data());

  @Test
  void theSlowestLinkMeltsAtTheTimeOfLessCurrent() {
    // The printed 2 s of 400 A are those of 462 A.
    assertThat(BANDED.mostA2S(400 * BAND))
        .isCloseTo(2 * 400 * 400 * BAND * BAND, withPercentage(OWN_ALGEBRA));
    // Beyond the curve the band counts twice, with I²t in I².
    assertThat(BANDED.mostA2S(5000))
        .isCloseTo(32_000 * Math.pow(BAND, 4), withPercentage(OWN_ALGEBRA));
  }

  @Test
  void theFastestLinkMeltsAtTheTimeOfMoreCurrent() {
    assertThat(BANDED.leastA2S(400 / BAND))
        .isCloseTo(2 * 400 * 400 / BAND / BAND, withPercentage(OWN_ALGEBRA));
    assertThat(BANDED.leastA2S(5000)).isEqualTo(32_000);
    assertThat(BANDED.leastA2S(2000 / BAND * (1 + 1e-9))).isEqualTo(32_000);
    assertThat(BANDED.fastestBendsA()[2]).isCloseTo(400 / BAND, withPercentage(OWN_ALGEBRA));
    assertThat(BANDED.bendsA()[2]).isCloseTo(400 * BAND, withPercentage(OWN_ALGEBRA));
  }

  @Test
  void aBandWiderThanTheStatedTotalCounts() {
    Fuse fuse =
        FaultParts.fuse()
            .fullRange()
            .preArcingCurve(FaultParts.curve().build())
            .preArcingJouleIntegral(ampereSquaredSeconds(59_000))
            .build();
    Clearing.Cleared cleared = fuse.clearing(FaultParts.fault(8000), volts(400)).orElseThrow();
    assertThat(Kind.JOULE_INTEGRAL.siValueOf(cleared.letThrough()))
        .isCloseTo(59_000 * Math.pow(BAND, 4), withPercentage(OWN_ALGEBRA));
  }

  /** A total curve whose I²t is largest in the middle: 0.4 s at 1 kA, 400 000 A²s. */
  private static Fuse hump(double tolerance) {
    return FaultParts.fuse()
        .fullRange()
        .totalCurve(
            TimeCurrentCurve.ofPoints()
                .point(amperes(400), seconds(2.2))
                .point(amperes(1000), seconds(0.4))
                .point(amperes(4000), milliseconds(10))
                .tolerance(tolerance)
                .readingError(0)
                .build())
        .build();
  }

  private static Check letThrough(Fuse fuse, FaultRange faults) {
    FuseDuty duty =
        FuseDuty.of(faults)
            .highestVoltage(volts(403))
            .continuousCurrent(amperes(60))
            .air(celsius(60))
            .withstand(Given.measured(ampereSquaredSeconds(1e9), "test"))
            .build();
    return fuse.checks(duty).stream()
        .filter(check -> check.code().equals("fuse.let-through"))
        .findFirst()
        .orElseThrow();
  }

  private static double a2s(Check check) {
    return Kind.JOULE_INTEGRAL.siValueOf(
        check.actual().orElseThrow().quantity(Kind.JOULE_INTEGRAL));
  }

  private static FaultRange between(double lowA, double highA) {
    return FaultRange.of(FaultParts.fault(highA), FaultParts.fault(lowA));
  }

  @Test
  void theWorstFaultOfARangeCounts() {
    assertThat(a2s(letThrough(hump(0), between(500, 3000))))
        .isCloseTo(400_000, withPercentage(OWN_ALGEBRA));
    // The slowest link sees a tenth less: 0.4 s at 1.1 kA.
    assertThat(a2s(letThrough(hump(0.1), between(500, 3000))))
        .isCloseTo(1100 * 1100 * 0.4, withPercentage(OWN_ALGEBRA));
    // Rising up to the highest.
    double slope = Math.log(2.2 / 0.4) / Math.log(400.0 / 1000);
    double timeS = 2.2 * Math.pow(900.0 / 400, slope);
    assertThat(a2s(letThrough(hump(0), between(500, 900))))
        .isCloseTo(900 * 900 * timeS, withPercentage(OWN_ALGEBRA));
  }

  @Test
  void oneFaultThatIsNotClearedOrNotKnownDecides() {
    assertThat(letThrough(hump(0), between(500, 21_000)).outcome()).isEqualTo(Outcome.FAIL);
    // 100 A lie below the curve.
    assertThat(letThrough(hump(0), between(100, 3000)).outcome()).isEqualTo(Outcome.NOT_CHECKED);
    assertThat(letThrough(hump(0), between(100, 21_000)).outcome()).isEqualTo(Outcome.FAIL);
    Fuse noTotal = Fuse.of("F", amperes(100)).build();
    assertThat(letThrough(noTotal, between(500, 3000)).outcome()).isEqualTo(Outcome.NOT_CHECKED);
  }

  /** Least to spare where the upstream curve bends: 1 kA in its own terms, 2 kA in all. */
  @Test
  void selectivityLooksAtTheBendsOfTheUpstreamCurve() {
    Fuse up =
        Fuse.of("up", amperes(400))
            .preArcingCurve(
                TimeCurrentCurve.ofPoints()
                    .point(amperes(500), seconds(100))
                    .point(amperes(1000), seconds(0.1))
                    .point(amperes(4000), milliseconds(90))
                    .tolerance(0.1)
                    .readingError(0)
                    .build())
            .build();
    Fuse down = FaultParts.fuse().fullRange().build();
    Check check =
        Selectivity.of(up).carrying(0.5).over(down).check(between(1200, 6000), volts(403));
    double bendA = 1000 / 1.1;
    assertThat(
            Kind.JOULE_INTEGRAL.siValueOf(
                check.limit().orElseThrow().quantity(Kind.JOULE_INTEGRAL)))
        .isCloseTo(bendA * bendA * 0.1, withPercentage(1e-6));
  }
}
