package org.wattwright.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.check.Outcome.CAUTION;
import static org.wattwright.check.Outcome.FAIL;
import static org.wattwright.check.Outcome.NOT_CHECKED;
import static org.wattwright.check.Outcome.PASS;
import static org.wattwright.units.Measures.ampereSquaredSeconds;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.grams;
import static org.wattwright.units.Measures.kiloamperes;
import static org.wattwright.units.Measures.kilovolts;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.milliseconds;
import static org.wattwright.units.Measures.minutes;
import static org.wattwright.units.Measures.ohms;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;
import static org.wattwright.units.Measures.watts;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Source;
import org.wattwright.profile.Profile;
import org.wattwright.testing.ValueTypeContract;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Price;

/** What a contactor may carry, make, break and stand; every part is invented. */
class ContactorTest {
  private static ContactorBuilder full() {
    return Contactor.of("K-250", volts(450))
        .carry(amperes(250))
        .carryCurve(
            CarryCurve.steps(
                CarryCurve.point(amperes(300), minutes(10)),
                CarryCurve.point(amperes(400), minutes(1)),
                CarryCurve.point(amperes(800), seconds(10))))
        .makeLimit(amperes(650))
        .breaks(BreakRating.forward(amperes(1500), volts(450)))
        .breaks(BreakRating.forward(amperes(250), volts(450)).times(1000))
        .breaks(BreakRating.reverse(amperes(300), volts(400)).times(10))
        .polarised()
        .withstand(ampereSquaredSeconds(40_000))
        .peakWithstand(amperes(6000))
        .contactResistance(milliohms(0.2))
        .openingTime(milliseconds(15))
        .coil(ContactorCoil.plain(volts(8), celsius(20)).dropOut(volts(2)).resistance(ohms(24)))
        .mass(grams(430))
        .price(Price.of("85.00", "EUR"));
  }

  private static ContactorChecks checks() {
    return full().build().checks();
  }

  private static ContactorChecks bare() {
    return Contactor.of("bare", volts(450)).build().checks();
  }

  @Test
  void everyMissingFieldIsNamedAndNothingPasses() {
    BreakRating trip = BreakRating.forward(amperes(100), volts(400));
    assertMissing(bare().carry(amperes(1)), "contactor.carry");
    assertMissing(bare().carry(amperes(1), seconds(1)), "contactor.carryCurve");
    assertMissing(bare().carry(hill(1).repeating()), "contactor.carry");
    assertMissing(bare().make(amperes(1)), "contactor.makeLimit");
    assertMissing(bare().breaks(trip), "contactor.breaks at 400 V, forward");
    assertMissing(bare().withstand(ampereSquaredSeconds(1)), "contactor.withstand");
    assertMissing(bare().withstandPeak(amperes(1)), "contactor.peakWithstand");
    assertMissing(bare().pullIn(volts(9), celsius(85)), "contactor.coil");
    assertMissing(bare().hold(volts(9), celsius(85)), "contactor.coil");
  }

  private static void assertMissing(Check check, String field) {
    assertThat(check.outcome()).isEqualTo(NOT_CHECKED);
    assertThat(check.missing()).containsExactly(field);
    assertThat(check.isSafety()).isTrue();
  }

  @Test
  void wholePackVoltageDecides() {
    assertThat(checks().voltage(volts(450)).outcome()).isEqualTo(PASS);
    assertThat(checks().voltage(volts(450.1)).outcome()).isEqualTo(FAIL);
    assertThat(checks().voltage(kilovolts(0.45))).isEqualTo(checks().voltage(volts(450)));
  }

  @Test
  void steadyCurrentInEitherDirection() {
    assertThat(checks().carry(amperes(200)).outcome()).isEqualTo(PASS);
    assertThat(checks().carry(amperes(-250)).outcome()).isEqualTo(CAUTION);
    assertThat(checks().carry(amperes(-251)).outcome()).isEqualTo(FAIL);
  }

  @Nested
  class CarryAgainstTime {
    @Test
    void aStepTablePromisesNothingBetweenItsRows() {
      assertThat(checks().carry(amperes(301), seconds(50)).outcome()).isEqualTo(PASS);
      assertThat(checks().carry(amperes(301), seconds(61)).outcome()).isEqualTo(FAIL);
      assertThat(checks().carry(amperes(300), seconds(500)).outcome()).isEqualTo(PASS);
      assertThat(checks().carry(amperes(300), seconds(601)).outcome()).isEqualTo(FAIL);
    }

    @Test
    void belowContinuousAnyTimeAndJustAboveTheFirstRow() {
      assertThat(checks().carry(amperes(250), minutes(1000)).outcome()).isEqualTo(PASS);
      assertThat(checks().carry(amperes(251), minutes(11)).outcome()).isEqualTo(FAIL);
    }

    @Test
    void nothingIsClaimedBeyondTheHighestCurrent() {
      assertMissing(
          checks().carry(amperes(801), milliseconds(1)), "contactor.carryCurve above 800 A");
    }

    @Test
    void aCurveIsStraightOnLogLogPaper() {
      CarryCurve curve =
          CarryCurve.through(
              CarryCurve.point(amperes(300), seconds(900)),
              CarryCurve.point(amperes(900), seconds(100)));
      // I²t = 81e6 A²s along the whole line, so √3·300 A has 300 s.
      assertThat(curve.durationS(300 * Math.sqrt(3)).orElseThrow()).isCloseTo(300, within(1e-9));
      assertThat(curve.currentForA(300)).isCloseTo(300 * Math.sqrt(3), within(1e-9));
      assertThat(curve.currentForA(901)).isZero();
      assertThat(curve.currentForA(1)).isEqualTo(900);
    }

    @Test
    void stepsGiveTheCurrentOfTheNextLongerDuration() {
      CarryCurve curve = full().build().carryCurve().orElseThrow();
      assertThat(curve.currentForA(60)).isEqualTo(400);
      assertThat(curve.currentForA(61)).isEqualTo(300);
      assertThat(curve.currentForA(10)).isEqualTo(800);
      assertThat(curve.currentForA(600)).isEqualTo(300);
    }

    @Test
    void durationMustFall() {
      assertThatThrownBy(
              () ->
                  CarryCurve.steps(
                      CarryCurve.point(amperes(300), seconds(1)),
                      CarryCurve.point(amperes(400), seconds(2))))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageContaining("CarryCurve.duration must be falling as current rises");
    }

    @Test
    void curveMustLieAboveTheContinuousCurrent() {
      assertThatThrownBy(() -> full().carry(amperes(300)).build())
          .isInstanceOf(InvalidInputException.class)
          .hasMessageContaining("Contactor.carryCurve")
          .hasMessageContaining("300 A");
    }
  }

  /** A peak for some seconds in a minute at 100 A. */
  private static Profile<javax.measure.quantity.ElectricCurrent> hill(double peakS) {
    return Profile.segments(Kind.CURRENT)
        .hold(amperes(-600), seconds(peakS))
        .hold(amperes(100), seconds(60 - peakS))
        .build();
  }

  @Nested
  class CarryProfileOfCurrent {
    @Test
    void rmsOfARepeatingProfileAgainstContinuous() {
      // (600²·10 + 100²·50)/60 = 68333 A², RMS 261.4 A
      Check check = checks().carry(hill(10).repeating());
      assertThat(check.outcome()).isEqualTo(FAIL);
      assertThat(ampere(check.actual().orElseThrow()))
          .isCloseTo(Math.sqrt(410e4 / 60), within(1e-9));
      assertThat(check.remark()).contains("RMS of the whole");
    }

    @Test
    void whatHappensOnceIsAllowedMore() {
      // 261.4 A for a minute against 400 A; the 10 s window 600 A against 800 A uses more
      Check check = checks().carry(hill(10));
      assertThat(check.outcome()).isEqualTo(PASS);
      assertThat(check.comparison()).isEqualTo("600 A ≤ 800 A");
      assertThat(check.remark()).contains("highest RMS over 10 s");
    }

    @Test
    void peakBeyondTheCurveIsNotClaimed() {
      assertMissing(checks().carry(hill(1).scaled(1.4)), "contactor.carryCurve above 800 A");
    }

    @Test
    void peakWithoutACurveIsNotClaimed() {
      Contactor plain = Contactor.of("plain", volts(450)).carry(amperes(250)).build();
      assertMissing(plain.checks().carry(hill(1).repeating()), "contactor.carryCurve");
      assertThat(plain.checks().carry(hill(20).repeating()).outcome()).isEqualTo(FAIL);
    }

    private double ampere(org.wattwright.check.Figure figure) {
      return Kind.CURRENT.siValueOf(figure.quantity(Kind.CURRENT));
    }
  }

  @Test
  void makeLimit() {
    assertThat(checks().make(amperes(600)).outcome()).isEqualTo(PASS);
    assertThat(checks().make(amperes(651)).outcome()).isEqualTo(FAIL);
  }

  @Nested
  class Break {
    @Test
    void withinItsCurrentVoltageAndNumber() {
      assertThat(checks().breaks(BreakRating.forward(amperes(1400), volts(450))).outcome())
          .isEqualTo(PASS);
      assertThat(checks().breaks(BreakRating.forward(amperes(1501), volts(450))).outcome())
          .isEqualTo(FAIL);
      BreakRating often = BreakRating.forward(amperes(300), volts(400)).times(2);
      assertThat(checks().breaks(often).outcome()).isEqualTo(FAIL);
      assertThat(checks().breaks(often).comparison()).isEqualTo("300 A > 250 A");
    }

    @Test
    void aVoltageAboveEveryRatingIsNotClaimed() {
      assertMissing(
          checks().breaks(BreakRating.reverse(amperes(10), volts(401))),
          "contactor.breaks at 401 V, reverse");
    }

    @Test
    void moreBreaksThanStatedAreNotClaimed() {
      assertMissing(
          checks().breaks(BreakRating.forward(amperes(10), volts(400)).times(2000)),
          "contactor.breaks at 400 V, forward, 2000 times");
    }

    @Test
    void reverseHasItsOwnRatingAndCode() {
      Check check = checks().breaks(BreakRating.reverse(amperes(400), volts(400)));
      assertThat(check.outcome()).isEqualTo(FAIL);
      assertThat(check.code()).isEqualTo("contactor.break-reverse");
    }

    @Test
    void polarisedContactsWithoutAReverseRatingFail() {
      ContactorBuilder forwardOnly =
          Contactor.of("one way", volts(450)).breaks(BreakRating.forward(amperes(9), volts(450)));
      BreakRating reverse = BreakRating.reverse(amperes(1), volts(100));
      assertThat(forwardOnly.build().checks().breaks(reverse).outcome()).isEqualTo(NOT_CHECKED);
      assertThat(forwardOnly.polarised().build().checks().breaks(reverse).outcome())
          .isEqualTo(FAIL);
    }

    @Test
    void eitherWayServesBoth() {
      Contactor both =
          Contactor.of("both", volts(450))
              .breaks(BreakRating.eitherWay(amperes(100), volts(450)))
              .build();
      for (BreakDirection way : BreakDirection.values()) {
        assertThat(both.breakLimit(volts(450), way)).hasValue(amperes(100));
      }
      assertThat(both.breakLimit(volts(451), BreakDirection.FORWARD)).isEmpty();
    }

    @Test
    void theFuseMustBeQuickerThanATripThatTheContactorCannotBreak() {
      BreakRating fault = BreakRating.forward(amperes(2000), volts(450));
      assertThat(checks().fuseFirst(fault, milliseconds(30), milliseconds(20)).outcome())
          .isEqualTo(FAIL);
      assertThat(checks().fuseFirst(fault, milliseconds(30), milliseconds(100)).outcome())
          .isEqualTo(PASS);
      BreakRating small = BreakRating.forward(amperes(1000), volts(450));
      assertThat(checks().fuseFirst(small, seconds(9), milliseconds(20)).outcome()).isEqualTo(PASS);
    }
  }

  @Test
  void shortTimeWithstand() {
    assertThat(checks().withstand(ampereSquaredSeconds(30_000)).outcome()).isEqualTo(PASS);
    assertThat(checks().withstand(ampereSquaredSeconds(40_001)).outcome()).isEqualTo(FAIL);
    assertThat(checks().withstandPeak(kiloamperes(5)).outcome()).isEqualTo(PASS);
    assertThat(checks().withstandPeak(amperes(6001)).outcome()).isEqualTo(FAIL);
  }

  @Nested
  class Coil {
    @Test
    void aHotCopperCoilNeedsMoreVoltage() {
      // 8 V·(1 + 0.00393·65)
      ContactorCoil coil = ContactorCoil.plain(volts(8), celsius(20));
      double hotV = Kind.VOLTAGE.siValueOf(coil.pullInAt(celsius(85)).orElseThrow());
      assertThat(hotV).isCloseTo(10.0436, within(1e-9));
      assertThat(checks().pullIn(volts(10.0), celsius(85)).outcome()).isEqualTo(FAIL);
      assertThat(checks().pullIn(volts(10.6), celsius(85)).outcome()).isEqualTo(PASS);
    }

    @Test
    void statedHotScalesBack() {
      ContactorCoil coil = ContactorCoil.plain(volts(10.0436), celsius(85));
      assertThat(Kind.VOLTAGE.siValueOf(coil.pullInAt(celsius(20)).orElseThrow()))
          .isCloseTo(8, within(1e-9));
    }

    @Test
    void electronicsHoldUpToTheirTemperatureOnly() {
      ContactorCoil coil = ContactorCoil.electronic(volts(9), celsius(85));
      assertThat(coil.pullInAt(celsius(85))).hasValue(volts(9));
      ContactorChecks checks = Contactor.of("e", volts(450)).coil(coil).build().checks();
      assertMissing(checks.pullIn(volts(12), celsius(86)), "contactor.coil.pullIn at 86 °C");
      assertMissing(checks.hold(volts(12), celsius(20)), "contactor.coil.dropOut at 20 °C");
      assertThat(coil.holdPower(volts(12), celsius(20))).isEmpty();
      assertThat(coil.holdPower(watts(1.7)).holdPower(volts(12), celsius(20))).hasValue(watts(1.7));
    }

    @Test
    void holdsThroughADip() {
      assertThat(checks().hold(volts(6), celsius(20)).outcome()).isEqualTo(PASS);
      assertThat(checks().hold(volts(2.2), celsius(85)).outcome()).isEqualTo(FAIL);
    }

    @Test
    void powerIsThatOfItsResistance() {
      ContactorCoil coil = ContactorCoil.plain(volts(8), celsius(20)).resistance(ohms(24));
      assertThat(coil.pullInPower(volts(12), celsius(20))).hasValue(watts(6));
      assertThat(coil.holdPower(volts(12), celsius(20))).hasValue(watts(6));
    }

    @Test
    void temperatureMustBeOneOfThisWorld() {
      assertThatThrownBy(() -> ContactorCoil.plain(volts(8), celsius(300)))
          .hasMessageContaining("ContactorCoil.statedAt must be from -60 to 200 °C");
    }
  }

  @Test
  void anEstimatedContactorPassesNoSafetyCheck() {
    Contactor guess = full().basis(Basis.ESTIMATED).build();
    assertThat(guess.checks().make(amperes(10)).outcome()).isEqualTo(CAUTION);
  }

  @Test
  void carriesItsSource() {
    Contactor part = full().source(Source.measurement("test bench")).build();
    assertThat(part.checks().make(amperes(10)).source().toString()).contains("test bench");
  }

  @Test
  void badInputNamesTheField() {
    assertThatThrownBy(() -> Contactor.of(" ", volts(450))).hasMessageContaining("Contactor.name");
    assertThatThrownBy(() -> Contactor.of("x", volts(-1)))
        .hasMessage("Contactor.voltage must be > 0 V, but was -1 V");
    assertThatThrownBy(() -> full().makeLimit(amperes(0)))
        .hasMessage("Contactor.makeLimit must be > 0 A, but was 0 A");
    assertThatThrownBy(() -> BreakRating.forward(amperes(1), volts(1)).times(0))
        .hasMessageContaining("BreakRating.breaks must be ≥ 1");
  }

  @Nested
  class AsValue extends ValueTypeContract<Contactor> {
    @Override
    protected Contactor sample() {
      return full().build();
    }

    @Override
    protected List<Contactor> different() {
      return List.of(
          Contactor.of("K-250", volts(450)).build(),
          Contactor.of("K-250", volts(900)).build(),
          full().makeLimit(amperes(1)).build(),
          full().breaks(BreakRating.eitherWay(amperes(1), volts(1))).build(),
          full().coil(ContactorCoil.electronic(volts(9), celsius(85))).build(),
          full()
              .carryCurve(
                  CarryCurve.through(
                      CarryCurve.point(amperes(300), minutes(10)),
                      CarryCurve.point(amperes(400), minutes(1)),
                      CarryCurve.point(amperes(800), seconds(10))))
              .build());
    }

    @Override
    protected Stream<Object> partsHandedOut(Contactor value) {
      return Stream.of(value.breakRatings(), value.breakRatings().get(0).directions());
    }

    @Test
    void aBuilderOfACopyKnowsAll() {
      assertThat(sample().toBuilder().build()).isEqualTo(sample());
    }

    @Test
    void handsOutWhatItWasGiven() {
      Contactor part = sample();
      assertThat(part.carry()).hasValue(amperes(250));
      assertThat(part.makeLimit()).hasValue(amperes(650));
      assertThat(part.withstand()).hasValue(ampereSquaredSeconds(40_000));
      assertThat(part.peakWithstand()).hasValue(amperes(6000));
      assertThat(part.contactResistance()).hasValue(milliohms(0.2));
      assertThat(part.openingTime()).hasValue(milliseconds(15));
      assertThat(part.mass()).hasValue(grams(430));
      assertThat(part.price()).hasValue(Price.of("85.00", "EUR"));
      assertThat(part).hasToString("K-250 (450 V, carries 250 A)");
    }
  }
}
