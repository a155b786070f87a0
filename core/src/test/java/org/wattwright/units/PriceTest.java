package org.wattwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import java.math.BigDecimal;
import java.util.Currency;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PriceTest {
  private static final Price TEN = Price.of("10", "EUR");

  @Test
  void trailingZerosDoNotMatter() {
    assertThat(Price.of("12.50", "EUR")).isEqualTo(Price.of("12.5", "EUR"));
    assertThat(Price.of("0.00", "EUR")).isEqualTo(Price.of("0", "EUR")).hasToString("0 EUR");
    assertThat(Price.of("1000", "EUR")).hasToString("1000 EUR");
    assertThat(Price.of(" 3 ", "EUR")).isEqualTo(Price.of("3", "EUR"));
  }

  @Test
  void addsAndMultiplies() {
    assertThat(TEN.plus(Price.of("0.1", "EUR"))).hasToString("10.1 EUR");
    assertThat(TEN.times(3)).hasToString("30 EUR");
    assertThat(TEN.times(0)).hasToString("0 EUR");
  }

  @Test
  void currenciesDoNotMix() {
    Price pounds = Price.of("10", "GBP");
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> TEN.plus(pounds))
        .withMessage("Price.currency must be EUR, but was GBP");
    assertThatExceptionOfType(InvalidInputException.class).isThrownBy(() -> TEN.compareTo(pounds));
  }

  @Test
  void negativeAmountsAreRejected() {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> Price.of("-0.01", "EUR"))
        .withMessage("Price.amount must be ≥ 0, but was -0.01");
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> TEN.times(-1))
        .withMessage("Price.times must be ≥ 0, but was -1");
  }

  @Test
  void textsThatAreNoPriceAreRejected() {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> Price.of("1,50", "EUR"))
        .withMessage("Price.amount must be a decimal number, but was \"1,50\"");
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> Price.of("1.50", "euro"))
        .withMessage("Price.currency must be an ISO 4217 code, but was \"euro\"");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "12.50", "12.50 EUR each", "EUR"})
  void textsInAnotherShapeAreRejected(String text) {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> Price.parse(text))
        .withMessageStartingWith("Price must be an amount and an ISO 4217 code")
        .withMessageEndingWith("\"" + text + "\"");
  }

  @Test
  void nullIsRejectedByName() {
    assertThatNullPointerException()
        .isThrownBy(() -> new Price(null, Currency.getInstance("EUR")))
        .withMessage("amount");
    assertThatNullPointerException()
        .isThrownBy(() -> new Price(BigDecimal.ONE, null))
        .withMessage("currency");
    assertThatNullPointerException().isThrownBy(() -> Price.of(null, "EUR")).withMessage("amount");
    assertThatNullPointerException()
        .isThrownBy(() -> Price.of("1", null))
        .withMessage("currencyCode");
    assertThatNullPointerException().isThrownBy(() -> Price.parse(null)).withMessage("text");
  }
}
