package org.wattwright.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.ampereSquaredSeconds;
import static org.wattwright.units.Measures.farads;
import static org.wattwright.units.Measures.henries;
import static org.wattwright.units.Measures.microhenries;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.millivolts;
import static org.wattwright.units.Measures.ohms;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.Generator;
import org.wattwright.units.Kind;

/** What holds for every fault. */
class FaultPropertyTest {
  /** Own algebra. */
  private static final double ROUNDING = 1e-12;

  static Stream<Generator> cases() {
    return Generator.cases(300);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void moreResistanceGivesLessCurrent(Generator random) {
    double ohm = random.betweenDecades(1e-3, 1);
    double timeS = random.betweenDecades(1e-7, 1);
    double henry = random.betweenDecades(1e-7, 1e-2);
    FaultCurrent less = FaultParts.fault(400, ohm, henry);
    FaultCurrent more = FaultParts.fault(400, ohm * 1.01, henry);
    assertThat(more.prospectiveA()).isLessThan(less.prospectiveA());
    assertThat(more.currentA(timeS)).isLessThan(less.currentA(timeS));
    assertThat(more.jouleIntegralA2S(timeS)).isLessThan(less.jouleIntegralA2S(timeS));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void jouleIntegralGrowsAndItsTimeIsFoundAgain(Generator random) {
    FaultCurrent fault = FaultParts.fault(400, 0.05, 0.05 * random.betweenDecades(1e-7, 1e-1));
    double timeS = random.betweenDecades(1e-8, 10);
    double integralA2S = fault.jouleIntegralA2S(timeS);
    assertThat(fault.jouleIntegralA2S(timeS * 1.0001)).isGreaterThan(integralA2S);
    assertThat(fault.timeToReachS(integralA2S)).isCloseTo(timeS, within(ROUNDING * timeS));
  }

  /** The slope of the joule integral is the square of the current, over any stretch. */
  @ParameterizedTest
  @MethodSource("cases")
  void stretchesAddUpToTheSquareOfTheCurrent(Generator random) {
    double tauS = random.betweenDecades(1e-5, 1e-2);
    FaultCurrent fault = FaultParts.fault(400, 0.05, 0.05 * tauS);
    double startS = tauS * random.betweenDecades(1e-2, 5);
    double lengthS = tauS * 1e-3;
    double middleA = fault.currentA(startS + lengthS / 2);
    double stretchA2S = fault.jouleIntegralA2S(startS + lengthS) - fault.jouleIntegralA2S(startS);
    assertThat(stretchA2S).isCloseTo(middleA * middleA * lengthS, within(1e-3 * stretchA2S));
  }

  @Test
  void seriesAndClosedFormMeet() {
    FaultCurrent fault = FaultParts.fault(400, 0.05, 0.05 * 1e-3);
    double below = fault.jouleIntegralA2S(Math.nextDown(0.5e-3));
    double above = fault.jouleIntegralA2S(0.5e-3);
    assertThat(below).isCloseTo(above, within(1e-13 * above));
  }

  @Test
  void limitsOfTimeAndInductance() {
    FaultCurrent fault = FaultParts.fault(400, 0.05, 50e-6);
    assertThat(fault.currentA(0)).isZero();
    assertThat(fault.jouleIntegralA2S(0)).isZero();
    assertThat(fault.currentA(1)).isEqualTo(8000);
    // t ≪ τ: U²t³/3L²; the next term of the series is 3/4·t/τ.
    assertThat(fault.jouleIntegralA2S(1e-12)).isCloseTo(64e12 * 1e-36 / 3, within(1e-30));
    // t ≫ τ: I²·(t − 1.5 τ).
    assertThat(fault.jouleIntegralA2S(2)).isCloseTo(64e6 * (2 - 1.5e-3), within(1e-4));
    FaultCurrent dead = FaultParts.fault(400, 0.05, 0);
    assertThat(dead.currentA(0)).isEqualTo(8000);
    assertThat(dead.jouleIntegralA2S(1e-3)).isCloseTo(64e3, within(1e-7));
    assertThat(dead.timeToReachS(64e3)).isCloseTo(1e-3, within(1e-15));
    assertThat(dead.jouleIntegralA2S(0)).isZero();
    assertThat(dead.timeToReachS(0)).isZero();
    assertThat(fault.timeToReachS(0)).isZero();
  }

  @Test
  void unitsDoNotMatter() {
    FaultCurrent one = FaultCurrent.of(volts(400), ohms(0.05), henries(5e-5));
    FaultCurrent other = FaultCurrent.of(millivolts(400_000), milliohms(50), microhenries(50));
    assertThat(other.prospectiveA()).isCloseTo(one.prospectiveA(), within(1e-9));
    assertThat(Kind.TIME.siValueOf(other.timeToReach(ampereSquaredSeconds(9000))))
        .isCloseTo(one.timeToReachS(9000), within(1e-15));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void capacitorPassesItsEnergy(Generator random) {
    double farad = random.betweenDecades(1e-5, 1e-2);
    double ohm = random.betweenDecades(1e-3, 1);
    double henry = random.betweenDecades(1e-8, 1e-5);
    CapacitorDischarge discharge =
        CapacitorDischarge.of("C", farads(farad), volts(400)).through(ohms(ohm), henries(henry));
    double wholeA2S = farad * 400 * 400 / 2 / ohm;
    double longS = 60 * Math.max(2 * henry / ohm, ohm * farad);
    assertThat(discharge.jouleIntegralA2S(longS)).isCloseTo(wholeA2S, within(1e-9 * wholeA2S));
    assertThat(Kind.JOULE_INTEGRAL.siValueOf(discharge.jouleIntegral()))
        .isCloseTo(wholeA2S, within(ROUNDING * wholeA2S));
    double peakS = Kind.TIME.siValueOf(discharge.timeOfPeak());
    assertThat(discharge.currentA(peakS)).isGreaterThanOrEqualTo(discharge.currentA(peakS * 0.999));
    assertThat(discharge.currentA(peakS)).isGreaterThanOrEqualTo(discharge.currentA(peakS * 1.001));
    assertThat(discharge.peakA()).isLessThanOrEqualTo(400 / ohm);
    assertThat(discharge.peakA()).isLessThanOrEqualTo(400 * Math.sqrt(farad / henry));
  }

  /** Early sum and later difference of energies agree where one takes over from the other. */
  @ParameterizedTest
  @MethodSource("cases")
  void earlyAndLateIntegralsMeet(Generator random) {
    double ohm = random.betweenDecades(1e-3, 1);
    double henry = random.betweenDecades(1e-8, 1e-5);
    SeriesDamping damping = new SeriesDamping(400, ohm, henry, 1e-3);
    double joinS = 1 / Math.max(ohm / (2 * henry), 1 / Math.sqrt(henry * 1e-3));
    double early = damping.jouleIntegralA2S(joinS * (1 - 1e-12));
    double late = damping.jouleIntegralA2S(joinS * (1 + 1e-12));
    assertThat(early).isCloseTo(late, within(1e-9 * late));
  }

  @Test
  void criticalDampingLiesBetweenItsNeighbours() {
    double ohm = 2 * Math.sqrt(1e-6 / 1e-3);
    assertThat(peakA(ohm)).isBetween(peakA(ohm * 1.0001), peakA(ohm * 0.9999));
    // U/(e·L·α) = 2U/(e·R)
    assertThat(peakA(ohm)).isCloseTo(2 * 400 / (Math.E * ohm), within(1e-4));
  }

  private static double peakA(double ohm) {
    return CapacitorDischarge.of("C", farads(1e-3), volts(400))
        .through(ohms(ohm), henries(1e-6))
        .peakA();
  }

  @Test
  void withoutInductanceThePeakIsAtOnce() {
    CapacitorDischarge discharge =
        CapacitorDischarge.of("C", farads(1e-3), volts(400)).through(ohms(0.1), henries(0));
    assertThat(discharge.peakA()).isEqualTo(4000);
    assertThat(discharge.timeOfPeak()).isEqualTo(seconds(0));
    assertThat(discharge.currentA(1e-4)).isCloseTo(4000 / Math.E, within(1e-9));
    assertThat(discharge.isOscillating()).isFalse();
    assertThat(discharge.jouleIntegralA2S(5e-5)).isCloseTo(800 * (1 - Math.exp(-1)), within(1e-9));
  }
}
