package org.wattwright.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.ampereSquaredSeconds;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.milliseconds;
import static org.wattwright.units.Measures.percentPerKelvin;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/** What a fuse does with a fault. */
class FuseTest {
  private static Clearing clearing(FuseBuilder fuse, double ampere) {
    return fuse.build().clearing(FaultParts.fault(ampere), volts(400));
  }

  private static double letThrough(Clearing clearing) {
    return Kind.JOULE_INTEGRAL.siValueOf(clearing.orElseThrow().letThrough());
  }

  private static List<String> missing(Clearing clearing) {
    return clearing.fold(c -> List.of(), n -> List.of(), Clearing.NotKnown::missing);
  }

  @Test
  void slowFaultFollowsTheCurve() {
    Clearing.Cleared cleared = clearing(FaultParts.fuse(), 400).orElseThrow();
    assertThat(Kind.TIME.siValueOf(cleared.time())).isCloseTo(2, within(1e-12));
    assertThat(letThrough(cleared)).isCloseTo(320_000, within(1e-7));
    assertThat(Kind.CURRENT.siValueOf(cleared.peak())).isCloseTo(400, within(1e-9));
  }

  @Test
  void theSlowestCurveCounts() {
    FuseBuilder fuse =
        FaultParts.fuse()
            .preArcingCurve(FaultParts.curve().tolerance(0.1).readingError(0.05).build());
    Clearing.Cleared cleared = clearing(fuse, 400 * 1.1 * 1.05).orElseThrow();
    assertThat(Kind.TIME.siValueOf(cleared.time())).isCloseTo(2, within(1e-12));
    assertThat(missing(clearing(fuse.partialRange(amperes(100)), 150 * 1.1 * 1.05 * 0.99)))
        .containsExactly("fuse.preArcingCurve");
  }

  @Test
  void riseThroughAnInductanceDelaysByUpToThreeHalvesOfTau() {
    FaultCurrent slow = FaultParts.fault(400, 1, 1e-3);
    Clearing.Cleared cleared = FaultParts.fuse().build().clearing(slow, volts(400)).orElseThrow();
    assertThat(Kind.TIME.siValueOf(cleared.time())).isCloseTo(2 + 1.5e-3, within(1e-9));
  }

  @Test
  void fastFaultLetsTheTotalIntegralThrough() {
    assertThat(letThrough(clearing(FaultParts.fuse(), 5000))).isEqualTo(90_000);
    Clearing atLowVoltage = FaultParts.fuse().build().clearing(FaultParts.fault(5000), volts(300));
    assertThat(letThrough(atLowVoltage)).isEqualTo(60_000);
  }

  @Test
  void arcingAddsBelowATenthOfASecond() {
    // 1000 A: on the curve, below 0.1 s; arcing 90000 − 32000.
    TimeCurrentCurve curve = FaultParts.curve().build();
    double meltS = Kind.TIME.siValueOf(curve.timeAt(amperes(1000)).orElseThrow());
    assertThat(letThrough(clearing(FaultParts.fuse(), 1000)))
        .isCloseTo(1e6 * meltS + 58_000, within(1e-6));
    assertThat(letThrough(clearing(FaultParts.fuse(), 800))).isCloseTo(64_000, within(1e-7));
  }

  @Test
  void curveOfTotalTimesCountsWhereThereIsOne() {
    TimeCurrentCurve total =
        TimeCurrentCurve.ofPoints()
            .point(amperes(800), seconds(0.12))
            .point(amperes(1600), seconds(0.03))
            .tolerance(0)
            .readingError(0)
            .build();
    assertThat(letThrough(clearing(FaultParts.fuse().totalCurve(total), 1600)))
        .isCloseTo(1600 * 1600 * 0.03, within(1e-6));
  }

  @Test
  void statedCutOffCurrentBoundsThePeak() {
    FuseBuilder fuse = FaultParts.fuse().peakLetThrough(amperes(6000));
    assertThat(clearing(fuse, 9000).orElseThrow().peak()).isEqualTo(amperes(6000));
    assertThat(Kind.CURRENT.siValueOf(clearing(fuse, 5000).orElseThrow().peak()))
        .isCloseTo(5000, within(1e-9));
  }

  @Test
  void nothingIsClaimedBeyondTheDataSheet() {
    Fuse bare = Fuse.of("bare", amperes(100)).build();
    assertThat(missing(bare.clearing(FaultParts.fault(1000), volts(400))))
        .containsExactly("fuse.directVoltage");
    FuseBuilder noIntegral = Fuse.of("F", amperes(100)).directVoltage(volts(500));
    assertThat(missing(clearing(noIntegral, 1000))).containsExactly("fuse.breakingCapacity");
    noIntegral.breakingCapacity(amperes(20_000));
    assertThat(missing(clearing(noIntegral, 1000))).containsExactly("fuse.testTimeConstant");
    noIntegral.testTimeConstant(milliseconds(5));
    assertThat(missing(clearing(noIntegral, 1000))).containsExactly("fuse.breakingRange");
    noIntegral.partialRange();
    assertThat(missing(clearing(noIntegral, 1000))).containsExactly("fuse.minimumBreakingCurrent");
    noIntegral.fullRange();
    assertThat(missing(clearing(noIntegral, 1000))).containsExactly("fuse.preArcingCurve");
    noIntegral.preArcingCurve(FaultParts.curve().build());
    assertThat(missing(clearing(noIntegral, 5000))).containsExactly("fuse.preArcingJouleIntegral");
    assertThat(missing(clearing(noIntegral, 2000))).containsExactly("fuse.totalJouleIntegral");
    assertThat(clearing(noIntegral, 300)).isInstanceOf(Clearing.Cleared.class);
  }

  @Test
  void statedIntegralHoldsUpToTenMillisecondsOnly() {
    FuseBuilder fuse =
        Fuse.of("F", amperes(100))
            .directVoltage(volts(500))
            .breakingCapacity(amperes(20_000))
            .testTimeConstant(milliseconds(5))
            .fullRange()
            .preArcingJouleIntegral(ampereSquaredSeconds(32_000))
            .totalJouleIntegral(ampereSquaredSeconds(90_000), volts(500));
    assertThat(letThrough(clearing(fuse, 1800))).isEqualTo(90_000);
    assertThat(missing(clearing(fuse, 1700))).containsExactly("fuse.preArcingCurve");
  }

  @Test
  void outsideItsRatingsItDoesNotClear() {
    Fuse fuse = FaultParts.fuse().build();
    assertThat(fuse.clearing(FaultParts.fault(1000), volts(501)))
        .hasToString("not cleared: the circuit's 501 V are above its rated 500 V");
    assertThat(fuse.clearing(FaultParts.fault(25_000), volts(400)).toString())
        .contains("above its breaking capacity");
    assertThat(fuse.clearing(FaultParts.fault(399), volts(400)).toString())
        .contains("below its minimum breaking current");
    assertThat(fuse.clearing(FaultParts.fault(400, 0.1, 0.001), volts(400)).toString())
        .contains("tested at");
    assertThatThrownBy(() -> fuse.clearing(FaultParts.fault(25_000), volts(400)).orElseThrow())
        .isInstanceOf(IllegalStateException.class);
  }

  @Test
  void derating() {
    AmbientDerating table =
        AmbientDerating.table(
            List.of(
                new AmbientDerating.Point(celsius(20), 1),
                new AmbientDerating.Point(celsius(60), 0.8)));
    assertThat(table.factorAt(celsius(40))).isCloseTo(0.9, within(1e-12));
    assertThat(table.factorAt(celsius(0))).isEqualTo(1);
    assertThat(table.factorAt(celsius(61))).isZero();
    AmbientDerating root = AmbientDerating.squareRoot(celsius(130), celsius(30));
    assertThat(root.factorAt(celsius(0))).isEqualTo(1);
    assertThat(root.factorAt(celsius(131))).isZero();
    assertThat(root.factorAt(celsius(80))).isCloseTo(Math.sqrt(0.5), within(1e-12));
    Fuse cooled = FaultParts.fuse().coolingFactor(1.2).continuousFactor(0.5).build();
    assertThat(Kind.CURRENT.siValueOf(cooled.continuousCurrentAt(celsius(80)).orElseThrow()))
        .isCloseTo(60 * Math.sqrt(0.5), within(1e-10));
  }

  @Test
  void nonsenseIsRefused() {
    assertThatThrownBy(() -> Fuse.of("F", amperes(0)))
        .hasMessage("Fuse.ratedCurrent must be > 0 A, but was 0 A");
    assertThatThrownBy(() -> FaultParts.fuse().peakLetThrough(amperes(99)).build())
        .hasMessage("Fuse.peakLetThrough must be ≥ rated current 100 A, but was 99 A");
    assertThat(FaultParts.fuse().peakLetThrough(amperes(100)).build().peakLetThrough())
        .contains(amperes(100));
    assertThatThrownBy(() -> FaultParts.fuse().partialRange(amperes(30_000)).build())
        .hasMessageContaining("Fuse.minimumBreakingCurrent must be ≤ breaking capacity");
    assertThatThrownBy(
            () -> FaultParts.fuse().preArcingJouleIntegral(ampereSquaredSeconds(70_000)).build())
        .hasMessageContaining("Fuse.totalJouleIntegral");
    assertThatThrownBy(() -> FaultParts.fuse().cyclicFactor(Double.NaN))
        .isInstanceOf(InvalidInputException.class);
    assertThatThrownBy(() -> FaultParts.curve().point(amperes(1900), milliseconds(1)))
        .hasMessageContaining("TimeCurrentCurve[5].current must be > 2000 A");
    assertThatThrownBy(() -> FaultParts.curve().point(amperes(3000), milliseconds(9)))
        .hasMessageContaining("TimeCurrentCurve[5].time");
    assertThatThrownBy(() -> TimeCurrentCurve.ofPoints().point(amperes(1), seconds(1)).build())
        .hasMessageContaining("at least two");
    assertThatThrownBy(() -> FaultParts.curve().tolerance(0.6))
        .isInstanceOf(InvalidInputException.class);
    assertThatThrownBy(() -> AmbientDerating.squareRoot(celsius(30), celsius(30)))
        .hasMessageContaining("AmbientDerating.elementLimit must be > reference");
    assertThatThrownBy(() -> AmbientDerating.linear(percentPerKelvin(6), celsius(40)))
        .isInstanceOf(InvalidInputException.class);
    assertThatThrownBy(
            () -> FuseDuty.of(FaultRange.of(FaultParts.fault(2), FaultParts.fault(1))).build())
        .hasMessage(
            "FuseDuty is missing 3 of 3 required fields: highestVoltage, continuousCurrent, air");
  }
}
