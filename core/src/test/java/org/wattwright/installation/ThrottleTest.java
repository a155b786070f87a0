package org.wattwright.installation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.milliseconds;
import static org.wattwright.units.Measures.millivolts;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;

import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.check.Check;
import org.wattwright.check.Outcome;
import org.wattwright.testing.Generator;
import org.wattwright.units.InvalidInputException;

class ThrottleTest {
  private static final ThrottleTrack FIRST = new ThrottleTrack(volts(0.8), volts(4));
  private static final ThrottleTrack SECOND = new ThrottleTrack(volts(0.4), volts(2));

  /** Two slopes that never meet: the first is always well above the second. */
  private static final ThrottleSignal SIGNAL = ThrottleSignal.of(FIRST, SECOND, volts(5));

  static Stream<Generator> cases() {
    return Generator.cases(100);
  }

  private static Outcome outcome(ThrottleSignal signal, String code) {
    return signal.checks().stream()
        .filter(c -> c.code().equals("installation." + code))
        .map(Check::outcome)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aFallingTrackReadsTheSameTravel() {
    ThrottleTrack falling = new ThrottleTrack(volts(4.5), volts(0.5));
    assertThat(falling.travelAt(volts(3.5))).isCloseTo(0.25, within(1e-12));
    assertThat(falling.signalOf(0.1)).isEqualTo(volts(0.4));
    assertThat(falling.travelAt(millivolts(3500))).isEqualTo(falling.travelAt(volts(3.5)));
  }

  @Test
  void aBrokenWireIsImplausibleEvenIfBothAgree() {
    ThrottleSignal signal =
        ThrottleSignal.of(
            new ThrottleTrack(volts(0), volts(4)), new ThrottleTrack(volts(0), volts(2)), volts(5));
    ThrottleSignal.Reading broken = signal.read(volts(0), volts(0));
    assertThat(broken.deviation()).isZero();
    assertThat(broken.isWithinBand()).isFalse();
    assertThat(broken.isPlausible()).isFalse();
    assertThat(signal.read(volts(4.8), volts(2.4)).isWithinBand()).isFalse();
    assertThat(signal.read(volts(1), volts(0.5)).isPlausible()).isTrue();
  }

  @Test
  void timeAndDeviationAtTheirLimitsStillDrive() {
    assertThat(SIGNAL.allowsTorque(0.10, seconds(10))).isTrue();
    assertThat(SIGNAL.allowsTorque(0.101, milliseconds(100))).isTrue();
    assertThat(SIGNAL.allowsTorque(0.101, milliseconds(101))).isFalse();
    ThrottleSignal tight = SIGNAL.deviationLimit(0.05).timeLimit(milliseconds(50));
    assertThat(tight.allowsTorque(0.06, milliseconds(51))).isFalse();
    assertThat(tight.read(volts(2.4), volts(1.12)).isPlausible()).isTrue();
    assertThat(tight.read(volts(2.4), volts(1.10)).isPlausible()).isFalse();
    assertThat(tight.deviationLimit()).isEqualTo(0.05);
    assertThat(tight.timeLimit()).isEqualTo(milliseconds(50));
  }

  @Test
  void wiresThatTouchAreFoundAtAnyTravel() {
    // both carry 0.8 … 4 V: the second reads 25 % … 225 %
    assertThat(SIGNAL.deviationIfShorted(0)).isCloseTo(0.25, within(1e-12));
    assertThat(SIGNAL.deviationIfShorted(1)).isCloseTo(1.25, within(1e-12));
    assertThat(outcome(SIGNAL, "throttle-short")).isEqualTo(Outcome.PASS);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void theLeastDeviationOfAShortIsTheCheckedOne(Generator random) {
    ThrottleTrack second = new ThrottleTrack(volts(random.between(0.3, 4)), volts(4.5));
    ThrottleSignal signal = ThrottleSignal.of(FIRST, second, volts(5));
    double least = 10;
    for (int i = 0; i <= 1000; i++) {
      least = Math.min(least, signal.deviationIfShorted(i / 1000.0));
    }
    boolean found = least >= 0.10;
    boolean close = Math.abs(least - 0.10) < 2e-3;
    assertThat(close || (outcome(signal, "throttle-short") == Outcome.PASS) == found).isTrue();
  }

  @Test
  void likeTracksAndWideLimitsFail() {
    ThrottleSignal twins = ThrottleSignal.of(FIRST, FIRST, volts(5));
    assertThat(outcome(twins, "throttle-tracks")).isEqualTo(Outcome.FAIL);
    assertThat(outcome(twins, "throttle-short")).isEqualTo(Outcome.FAIL);
    assertThat(outcome(SIGNAL, "throttle-tracks")).isEqualTo(Outcome.PASS);
    assertThat(outcome(SIGNAL, "throttle-band-low")).isEqualTo(Outcome.PASS);
    assertThat(outcome(SIGNAL, "throttle-band-high")).isEqualTo(Outcome.PASS);
    ThrottleSignal edge =
        ThrottleSignal.of(new ThrottleTrack(volts(0.2), volts(4.8)), SECOND, volts(5));
    assertThat(outcome(edge, "throttle-band-low")).isEqualTo(Outcome.FAIL);
    assertThat(outcome(edge, "throttle-band-high")).isEqualTo(Outcome.FAIL);
    assertThat(outcome(SIGNAL.deviationLimit(0.2), "throttle-deviation")).isEqualTo(Outcome.FAIL);
    assertThat(outcome(SIGNAL.timeLimit(milliseconds(200)), "throttle-time"))
        .isEqualTo(Outcome.FAIL);
    assertThat(outcome(SIGNAL, "throttle-deviation")).isEqualTo(Outcome.PASS);
    assertThat(outcome(SIGNAL, "throttle-time")).isEqualTo(Outcome.PASS);
  }

  @Test
  void mapHasDeadBandsAndPassesThroughItsPoint() {
    ThrottleMap map = ThrottleMap.between(0.1, 0.1).through(0.5, 0.3);
    assertThat(map.demandAt(-0.1)).isZero();
    assertThat(map.demandAt(0.1)).isZero();
    assertThat(map.demandAt(0.5)).isCloseTo(0.3, within(1e-12));
    assertThat(map.demandAt(0.9)).isCloseTo(1, within(1e-12));
    assertThat(map.demandAt(1.2)).isEqualTo(1);
    assertThat(ThrottleMap.between(0, 0).demandAt(0.25)).isEqualTo(0.25);
    assertThat(ThrottleMap.handLever().demandAt(0.3)).isLessThan(ThrottleMap.pedal().demandAt(0.3));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void moreTravelNeverAsksForLess(Generator random) {
    ThrottleMap map =
        ThrottleMap.between(random.between(0, 0.5), random.between(0, 0.4))
            .through(random.between(0.01, 0.99), random.between(0, 1));
    double[] travel = random.rising(20, -0.1, 1.1);
    for (int i = 1; i < travel.length; i++) {
      assertThat(map.demandAt(travel[i]))
          .isGreaterThanOrEqualTo(map.demandAt(travel[i - 1]))
          .isBetween(0.0, 1.0);
    }
  }

  @Test
  void torqueComesAndGoesNoFasterThanTold() {
    ThrottleMap map = ThrottleMap.between(0, 0).risesIn(seconds(1)).fallsIn(seconds(0.5));
    assertThat(map.demandAfter(0, 1, seconds(0.25))).isCloseTo(0.25, within(1e-12));
    assertThat(map.demandAfter(0.9, 1, seconds(0.25))).isEqualTo(1);
    assertThat(map.demandAfter(1, 0, seconds(0.25))).isCloseTo(0.5, within(1e-12));
    assertThat(map.demandAfter(0.2, 0.1, seconds(0.25))).isEqualTo(0.1);
    assertThat(ThrottleMap.between(0, 0).demandAfter(0, 1, seconds(0))).isEqualTo(1);
  }

  @Test
  void theDeadBandHoldsTheTolerance() {
    assertThat(ThrottleMap.pedal().checks(0.05, seconds(0.2)))
        .extracting(Check::outcome)
        .containsExactly(Outcome.PASS, Outcome.PASS);
    assertThat(ThrottleMap.pedal().checks(0.06, seconds(0.09)))
        .extracting(Check::outcome)
        .containsExactly(Outcome.FAIL, Outcome.FAIL);
  }

  @Test
  void brakeAndAcceleratorTogether() {
    BrakeOverride rule = BrakeOverride.USUAL;
    assertThat(rule.isCut(0.25, true, false)).isFalse();
    assertThat(rule.isCut(0.26, true, false)).isTrue();
    assertThat(rule.isCut(0.9, false, false)).isFalse();
    assertThat(rule.isCut(0.05, false, true)).isTrue();
    assertThat(rule.isCut(0.049, false, true)).isFalse();
  }

  @Test
  void rejectsWhatCannotBe() {
    List.<ThrowingCallable>of(
            () -> new ThrottleTrack(volts(1), volts(1)),
            () -> new ThrottleTrack(volts(-1), volts(1)),
            () -> FIRST.signalOf(1.1),
            () -> ThrottleSignal.of(FIRST, SECOND, volts(0)),
            () -> SIGNAL.deviationLimit(Double.NaN),
            () -> SIGNAL.timeLimit(seconds(-1)),
            () -> SIGNAL.allowsTorque(-0.1, seconds(0)),
            () -> SIGNAL.deviationIfShorted(2),
            () -> ThrottleMap.between(0.6, 0),
            () -> ThrottleMap.between(0, 0.5),
            () -> ThrottleMap.pedal().through(0, 0.5),
            () -> ThrottleMap.pedal().through(0.5, 1.5),
            () -> ThrottleMap.pedal().demandAt(Double.NaN),
            () -> ThrottleMap.pedal().demandAfter(2, 0, seconds(0)),
            () -> ThrottleMap.pedal().risesIn(seconds(-1)),
            () -> new BrakeOverride(0.1, 0.2),
            () -> BrakeOverride.USUAL.isCut(-1, true, true))
        .forEach(call -> assertThatThrownBy(call).isInstanceOf(InvalidInputException.class));
  }
}
