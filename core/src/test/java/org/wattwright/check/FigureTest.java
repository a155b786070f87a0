package org.wattwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.millivolts;
import static org.wattwright.units.Measures.ohms;
import static org.wattwright.units.Measures.volts;
import static org.wattwright.units.WorkshopUnits.MILLIVOLT;
import static org.wattwright.units.WorkshopUnits.VOLT;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.wattwright.testing.Locales;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Price;
import org.wattwright.units.StateOfCharge;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

class FigureTest {
  @Test
  void showsFourDigitsWithTheUnitAsGiven() {
    assertThat(Figure.of(volts(3.65), Kind.VOLTAGE)).hasToString("3.65 V");
    assertThat(Figure.of(ohms(0.0123456), Kind.RESISTANCE)).hasToString("12.35 mΩ");
    assertThat(Figure.of(celsius(25), Kind.TEMPERATURE)).hasToString("25 °C");
    assertThat(Figure.ofSi(0.9, MILLIVOLT)).hasToString("900 mV");
    assertThat(Figure.number(0.92345)).hasToString("0.9235");
    assertThat(Figure.number(3)).hasToString("3");
    assertThat(Figure.share(0.805)).hasToString("80.5 %");
    assertThat(Figure.of(StateOfCharge.ofPercent(20))).hasToString("20 %");
    assertThat(Figure.count(96)).hasToString("96");
    assertThat(Figure.of(Price.of("1250.5", "EUR"))).hasToString("1250.50 EUR");
    assertThat(Figure.of(Price.of("1250.5", "JPY"))).hasToString("1251 JPY");
  }

  @Test
  void showsNothingOfTheLocale() {
    Locales.ALL.forEach(
        locale ->
            Locales.with(
                locale,
                () -> {
                  assertThat(Figure.number(1234.5)).hasToString("1235");
                  assertThat(Figure.share(0.125)).hasToString("12.5 %");
                  assertThat(Figure.count(-12)).hasToString("-12");
                  assertThat(Figure.of(Price.of("0.5", "EUR"))).hasToString("0.50 EUR");
                }));
  }

  @Test
  void handsOutWhatItHolds() {
    Figure voltage = Figure.of(millivolts(3650), VOLT);
    assertThat(voltage.type()).isEqualTo(Figure.Type.QUANTITY);
    assertThat(voltage.quantity(Kind.VOLTAGE)).isEqualTo(volts(3.65)).hasToString("3.65 V");
    assertThat(Figure.number(2.5).number()).isEqualTo(2.5);
    assertThat(Figure.share(0.2).number()).isEqualTo(0.2);
    assertThat(Figure.count(7).number()).isEqualTo(7);
    assertThat(Figure.count(7).count()).isEqualTo(7);
    assertThat(Figure.of(Price.of("5", "EUR")).type()).isEqualTo(Figure.Type.PRICE);
  }

  @Test
  void takesForeignQuantities() {
    assertThat(
            Figure.of(
                Quantities.getQuantity(3650, javax.measure.MetricPrefix.MILLI(Units.VOLT)), VOLT))
        .isEqualTo(Figure.of(volts(3.65), VOLT));
  }

  @Test
  void rejectsAskingForSomethingElse() {
    Figure voltage = Figure.of(volts(3), VOLT);
    rejects(() -> voltage.quantity(Kind.CURRENT), "Figure must be a current, but was 3 V");
    rejects(voltage::number, "Figure must be a number without unit, but was 3 V");
    rejects(voltage::count, "Figure must be a count, but was 3 V");
    rejects(() -> Figure.number(3).count(), "Figure must be a count, but was 3");
    rejects(() -> Figure.count(3).quantity(Kind.VOLTAGE), "Figure must be a voltage, but was 3");
    rejects(
        () -> Figure.of(Price.of("5", "EUR")).number(),
        "Figure must be a number without unit, but was 5.00 EUR");
  }

  @Test
  void rejectsWhatIsNotFinite() {
    rejects(() -> Figure.number(Double.NaN), "Figure.number must be finite, but was NaN");
    rejects(
        () -> Figure.share(Double.POSITIVE_INFINITY),
        "Figure.share must be finite, but was Infinity");
    rejects(() -> Figure.ofSi(Double.NaN, VOLT), "voltage must be finite, but was NaN V");
  }

  @Test
  void rejectsCountsThatADoubleCannotHold() {
    long largest = 1L << 53;
    assertThat(Figure.count(largest).count()).isEqualTo(largest);
    assertThat(Figure.count(-largest).count()).isEqualTo(-largest);
    rejects(
        () -> Figure.count(largest + 1),
        "Figure.count must be from −2⁵³ to 2⁵³, but was 9007199254740993");
    rejects(
        () -> Figure.count(-largest - 1),
        "Figure.count must be from −2⁵³ to 2⁵³, but was -9007199254740993");
  }

  @Test
  void equalityIsByValueAndKindNotByUnit() {
    assertThat(Figure.of(millivolts(3650), Kind.VOLTAGE))
        .isEqualTo(Figure.of(volts(3.65), VOLT))
        .hasSameHashCodeAs(Figure.of(volts(3.65), VOLT));
    assertThat(Figure.number(-0.0)).isEqualTo(Figure.number(0)).hasToString("0");
    assertThat(Figure.number(1)).isNotEqualTo(Figure.count(1)).isNotEqualTo(Figure.share(1));
    assertThat(Figure.of(volts(1), VOLT)).isNotEqualTo(Figure.of(ohms(1), Kind.RESISTANCE));
    assertThat(Figure.of(Price.of("1", "EUR"))).isNotEqualTo(Figure.of(Price.of("1", "USD")));
  }

  @Test
  void tellsCloseValuesApart() {
    Figure limit = Figure.of(volts(116), VOLT);
    Figure over = Figure.of(volts(116.004), VOLT);
    assertThat(over.toStringApartFrom(limit)).isEqualTo("116.004 V");
    assertThat(limit.toStringApartFrom(over)).isEqualTo("116.000 V");
    assertThat(limit.toStringApartFrom(limit)).isEqualTo("116 V");
    assertThat(limit.toStringApartFrom(Figure.of(volts(117), VOLT))).isEqualTo("116 V");
    Figure inMillivolts = Figure.of(millivolts(116_004), Kind.VOLTAGE);
    assertThat(inMillivolts).hasToString("116 V");
    assertThat(inMillivolts.toStringApartFrom(limit)).isEqualTo("116004 mV");
    assertThat(Figure.number(1.00001).toStringApartFrom(Figure.number(1))).isEqualTo("1.00001");
    assertThat(Figure.share(0.20001).toStringApartFrom(Figure.share(0.2))).isEqualTo("20.001 %");
    double hair = Math.nextUp(1.0);
    assertThat(Figure.number(hair).toStringApartFrom(Figure.number(1)))
        .isEqualTo("1.000000000000000");
  }

  @Test
  void pricesThatDifferByLessThanACentStayAsTheyAre() {
    Figure one = Figure.of(Price.of("5.001", "EUR"));
    assertThat(one.toStringApartFrom(Figure.of(Price.of("5.002", "EUR")))).isEqualTo("5.00 EUR");
  }

  @Test
  void unitToShowMayBeStated() {
    assertThat(Figure.of(milliohms(50), Kind.RESISTANCE)).hasToString("50 mΩ");
    assertThat(Figure.of(volts(0.5), MILLIVOLT).quantity(Kind.VOLTAGE)).hasToString("500 mV");
  }

  private static void rejects(ThrowingCallable call, String message) {
    assertThatExceptionOfType(InvalidInputException.class).isThrownBy(call).withMessage(message);
  }
}
