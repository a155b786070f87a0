package org.wattwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.degrees;
import static org.wattwright.units.Measures.kelvinsOfRise;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.kilometresPerHour;
import static org.wattwright.units.Measures.kilopascals;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.newtonMetres;
import static org.wattwright.units.Measures.newtons;
import static org.wattwright.units.Measures.number;
import static org.wattwright.units.Measures.ohms;
import static org.wattwright.units.Measures.percent;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;
import static org.wattwright.units.Measures.wattHours;
import static org.wattwright.units.Measures.watts;

import java.util.stream.Stream;
import javax.measure.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Price;
import org.wattwright.units.StateOfCharge;

class CautionBandTest {
  /** The widest margin that is still a caution is just below the band. */
  private static void assertBand(Figure limit, Figure inside, Figure outside) {
    assertThat(atLeast(inside, limit)).isEqualTo(Outcome.CAUTION);
    assertThat(atLeast(outside, limit)).isEqualTo(Outcome.PASS);
  }

  private static Outcome atLeast(Figure actual, Figure limit) {
    return Check.named("a", "b").source(Source.PHYSICS).atLeast(actual, limit).outcome();
  }

  @Test
  void usualBandIsFivePerCentOfTheLimit() {
    assertBand(
        figure(volts(200), Kind.VOLTAGE),
        figure(volts(209.9), Kind.VOLTAGE),
        figure(volts(210), Kind.VOLTAGE));
    assertBand(
        figure(volts(-200), Kind.VOLTAGE),
        figure(volts(-190.1), Kind.VOLTAGE),
        figure(volts(-190), Kind.VOLTAGE));
    assertBand(Figure.number(2), Figure.number(2.09), Figure.number(2.1));
    assertBand(
        Figure.of(Price.of("100", "EUR")),
        Figure.of(Price.of("104.99", "EUR")),
        Figure.of(Price.of("105", "EUR")));
  }

  @Test
  void usualBandOfTemperaturesIsFiveKelvinWhateverTheLimit() {
    assertBand(temperature(90), temperature(94.9), temperature(95));
    assertBand(temperature(0), temperature(4.9), temperature(5));
    assertBand(temperature(-20), temperature(-15.1), temperature(-15));
    assertBand(
        figure(kelvinsOfRise(60), Kind.TEMPERATURE_DIFFERENCE),
        figure(kelvinsOfRise(64.9), Kind.TEMPERATURE_DIFFERENCE),
        figure(kelvinsOfRise(65), Kind.TEMPERATURE_DIFFERENCE));
  }

  @Test
  void usualBandOfSharesIsTwoPoints() {
    assertBand(Figure.share(0), Figure.share(0.0199), Figure.share(0.02));
    assertBand(
        Figure.of(StateOfCharge.ofPercent(20)),
        Figure.of(StateOfCharge.ofPercent(21.9)),
        Figure.of(StateOfCharge.ofPercent(22)));
  }

  @Test
  void countsHaveNoBand() {
    assertThat(atLeast(Figure.count(96), Figure.count(96))).isEqualTo(Outcome.PASS);
    assertThat(atLeast(Figure.count(95), Figure.count(96))).isEqualTo(Outcome.FAIL);
  }

  static Stream<Arguments> usualBandsAtZero() {
    return Stream.of(
        atZero(millimetres(0), millimetres(1.9), millimetres(2), Kind.LENGTH),
        atZero(kilograms(0), kilograms(0.9), kilograms(1), Kind.MASS),
        atZero(newtons(0), newtons(9.9), newtons(10), Kind.FORCE),
        atZero(volts(0), volts(0.49), volts(0.5), Kind.VOLTAGE),
        atZero(amperes(0), amperes(0.49), amperes(0.5), Kind.CURRENT),
        atZero(watts(0), watts(49), watts(50), Kind.POWER),
        atZero(wattHours(0), wattHours(9.9), wattHours(10), Kind.ENERGY),
        atZero(seconds(0), seconds(0.09), seconds(0.1), Kind.TIME),
        atZero(kilometresPerHour(0), kilometresPerHour(0.99), kilometresPerHour(1), Kind.SPEED),
        atZero(newtonMetres(0), newtonMetres(0.9), newtonMetres(1), Kind.TORQUE),
        atZero(kilopascals(0), kilopascals(0.9), kilopascals(1), Kind.PRESSURE),
        atZero(degrees(0), degrees(0.49), degrees(0.5001), Kind.ANGLE));
  }

  private static <Q extends Quantity<Q>> Arguments atZero(
      Quantity<Q> limit, Quantity<Q> inside, Quantity<Q> outside, Kind<Q> kind) {
    return Arguments.of(figure(limit, kind), figure(inside, kind), figure(outside, kind));
  }

  @ParameterizedTest
  @MethodSource("usualBandsAtZero")
  void limitAtZeroHasAnAbsoluteBand(Figure limit, Figure inside, Figure outside) {
    assertBand(limit, inside, outside);
  }

  @Test
  void limitAtZeroOfAnotherKindHasNone() {
    assertThat(atLeast(figure(ohms(0), Kind.RESISTANCE), figure(ohms(0), Kind.RESISTANCE)))
        .isEqualTo(Outcome.PASS);
  }

  @Test
  void ownBandReplacesTheUsualOne() {
    CheckBuilder check =
        Check.named("a", "b")
            .source(Source.PHYSICS)
            .cautionBand(CautionBand.absolute(kelvinsOfRise(20), Kind.TEMPERATURE_DIFFERENCE));
    assertThat(check.atMost(temperature(71), temperature(90)).outcome()).isEqualTo(Outcome.CAUTION);
    assertThat(check.atMost(temperature(69), temperature(90)).outcome()).isEqualTo(Outcome.PASS);
    CheckBuilder relative =
        Check.named("a", "b").source(Source.PHYSICS).cautionBand(CautionBand.shareOfLimit(0.2));
    assertThat(relative.atMost(Figure.number(81), Figure.number(100)).outcome())
        .isEqualTo(Outcome.CAUTION);
    assertThat(relative.atMost(Figure.number(80), Figure.number(100)).outcome())
        .isEqualTo(Outcome.PASS);
    CheckBuilder points =
        Check.named("a", "b")
            .source(Source.PHYSICS)
            .cautionBand(CautionBand.absolute(percent(10), Kind.DIMENSIONLESS));
    assertThat(points.atLeast(Figure.share(0.29), Figure.share(0.2)).outcome())
        .isEqualTo(Outcome.CAUTION);
    CheckBuilder things =
        Check.named("a", "b")
            .source(Source.PHYSICS)
            .cautionBand(CautionBand.absolute(number(2), Kind.DIMENSIONLESS));
    assertThat(things.atLeast(Figure.count(97), Figure.count(96)).outcome())
        .isEqualTo(Outcome.CAUTION);
  }

  @Test
  void readsWell() {
    assertThat(CautionBand.NONE).hasToString("none");
    assertThat(CautionBand.shareOfLimit(0.05)).hasToString("5 % of the limit");
    assertThat(CautionBand.absolute(kelvinsOfRise(5), Kind.TEMPERATURE_DIFFERENCE))
        .hasToString("5 K");
    assertThat(CautionBand.usualFor(temperature(20))).hasToString("5 K");
  }

  @Test
  void rejectsWidthsOutsideTheirRange() {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> CautionBand.shareOfLimit(5))
        .withMessage("CautionBand.shareOfLimit must be from 0 to 1, but was 5.0");
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> CautionBand.absolute(volts(-1), Kind.VOLTAGE))
        .withMessage("CautionBand.absolute must be ≥ 0 V, but was -1 V");
  }

  private static Figure temperature(double celsius) {
    return figure(celsius(celsius), Kind.TEMPERATURE);
  }

  private static <Q extends Quantity<Q>> Figure figure(Quantity<Q> quantity, Kind<Q> kind) {
    return Figure.of(quantity, kind);
  }
}
