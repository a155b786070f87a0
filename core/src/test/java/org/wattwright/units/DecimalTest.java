package org.wattwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DecimalTest {
  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "-0.0, 0",
    "1, 1",
    "100, 100",
    "0.1, 0.1",
    "0.002, 0.002",
    "-12.50, -12.5",
    "0.30000000000000004, 0.30000000000000004",
    "1e-6, 0.000001",
    "9.99e-7, 9.99E-7",
    "123456789012345, 123456789012345",
    "999999999999999, 999999999999999",
    "1e15, 1E15",
    "-2.5e20, -2.5E20",
    "1e23, 1E23",
    "2e-44, 2E-44",
    "1.7976931348623157e308, 1.7976931348623157E308",
    "2.2250738585072014e-308, 2.2250738585072014E-308",
  })
  void shortestHasNoNeedlessDigit(double value, String text) {
    assertThat(Decimal.shortest(value)).isEqualTo(text);
    assertThat(Double.parseDouble(text)).isEqualTo(value + 0.0);
  }

  @Test
  void shortestDoesNotDependOnTheJavaVersion() {
    // Double.toString gives 8.409999999999999E21 and 9.999999999999999E22 before Java 19, the
    // shorter ones since (JDK-4511638).
    assertThat(Decimal.shortest(8.41E21)).isEqualTo("8.41E21");
    assertThat(Decimal.shortest(1E23)).isEqualTo("1E23");
  }

  @ParameterizedTest
  @CsvSource({
    "0, 4, 0",
    "1, 4, 1",
    "12.3456, 4, 12.35",
    "12.345, 4, 12.35",
    "-12.345, 4, -12.35",
    "2.675, 3, 2.68",
    "0.00012344, 4, 0.0001234",
    "1234.5, 4, 1235",
    "12345.5, 4, 12346",
    "123456.4, 4, 123456",
    "999.96, 4, 1000",
    "9999.6, 4, 10000",
    "0.99996, 4, 1",
    "1.5e14, 4, 150000000000000",
    "123456789012345, 4, 123456789012345",
    "1.23456e15, 4, 1.235E15",
    "9.99999e14, 4, 1E15",
    "1.23456e-7, 4, 1.235E-7",
    "9.9999e-7, 4, 0.000001",
  })
  void significantRoundsHalfUpAndKeepsDigitsBeforeThePoint(double value, int digits, String text) {
    assertThat(Decimal.significant(value, digits)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({
    "0, 2, 0.00",
    "1, 0, 1",
    "2.675, 2, 2.68",
    "-2.675, 2, -2.68",
    "-0.001, 2, 0.00",
    "1e20, 1, 100000000000000000000.0",
    "0.125, 2, 0.13",
  })
  void fixedKeepsTrailingZerosAndDropsTheSignOfZero(double value, int decimals, String text) {
    assertThat(Decimal.fixed(value, decimals)).isEqualTo(text);
  }

  @Test
  void roundsToTheDecimalPlaceOfASize() {
    assertThat(Decimal.rounded(1000.9999999999999, 15, 1000)).isEqualTo(1001);
    assertThat(Decimal.rounded(0.10000000000002274, 15, 273)).isEqualTo(0.1);
    assertThat(Decimal.rounded(123456789.5, 3, 123456789.5)).isEqualTo(123000000);
    assertThat(Decimal.rounded(-123456789.5, 3, 123456789.5)).isEqualTo(-123000000);
    assertThat(Decimal.rounded(1.23456e-7, 3, 1.23456e-7)).isEqualTo(1.23e-7);
    assertThat(Decimal.rounded(1.23456e-9, 3, 1.23456e-9)).isEqualTo(1.23e-9);
    assertThat(Decimal.rounded(1.23456e200, 3, 1.23456e200)).isEqualTo(1.23e200);
    assertThat(Decimal.rounded(0, 15, 0)).isZero();
    assertThat(Decimal.rounded(Double.NaN, 15, Double.NaN)).isNaN();
    assertThat(Decimal.rounded(Double.POSITIVE_INFINITY, 15, 1 / 0.0)).isInfinite();
  }

  @Test
  void roundingOfADoubleIsWhatItLacks() {
    // 273.15 = 273.14999999999997726263245567679405212402343750 as a double.
    assertThat(Decimal.roundingOf(273.15)).isEqualTo(2.273736754432321e-14, within(1e-28));
    assertThat(Decimal.roundingOf(0.5)).isZero();
  }
}
