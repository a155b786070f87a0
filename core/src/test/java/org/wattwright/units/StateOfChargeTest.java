package org.wattwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class StateOfChargeTest {
  @Test
  void edgesAreAllowed() {
    assertThat(StateOfCharge.of(0)).isEqualTo(StateOfCharge.EMPTY);
    assertThat(StateOfCharge.of(-0.0)).isEqualTo(StateOfCharge.EMPTY).hasToString("0 %");
    assertThat(StateOfCharge.of(1)).isEqualTo(StateOfCharge.FULL);
    assertThat(StateOfCharge.ofPercent(0)).isEqualTo(StateOfCharge.EMPTY);
    assertThat(StateOfCharge.ofPercent(100)).isEqualTo(StateOfCharge.FULL).hasToString("100 %");
  }

  @Test
  void everyWholePerCentIsItselfAgain() {
    for (int percent = 0; percent <= 100; percent++) {
      StateOfCharge charge = StateOfCharge.ofPercent(percent);
      assertThat(charge.percent()).isEqualTo(percent);
      assertThat(charge).hasToString(percent + " %");
      assertThat(charge.fraction()).isEqualTo(percent / 100.0);
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.001, 1.0000001, Double.NaN, Double.POSITIVE_INFINITY})
  void fractionOutsideItsRangeIsRejected(double fraction) {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> StateOfCharge.of(fraction))
        .withMessageStartingWith("StateOfCharge must be from 0 to 1, but was " + fraction)
        .satisfies(e -> assertThat(e.field()).isEqualTo("StateOfCharge"));
  }

  @Test
  void perCentGivenAsAFractionGetsAHint() {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> StateOfCharge.of(80))
        .withMessage(
            "StateOfCharge must be from 0 to 1, but was 80.0 (per cent: use percentCharge(…))");
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> StateOfCharge.of(100))
        .withMessageEndingWith("(per cent: use percentCharge(…))");
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> StateOfCharge.of(100.5))
        .withMessageEndingWith("(a fraction)");
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1, 100.1, Double.NaN})
  void perCentOutsideItsRangeIsRejected(double percent) {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> StateOfCharge.ofPercent(percent))
        .withMessage("StateOfCharge must be from 0 %% to 100 %%, but was %s %%", percent);
  }

  @ParameterizedTest
  @CsvSource({"20 %, 0.2", "20%, 0.2", "0.2, 0.2", "1, 1", "100 %, 1", "0, 0", "12.5 %, 0.125"})
  void readsPerCentAndFractions(String text, double fraction) {
    assertThat(StateOfCharge.parse(text)).isEqualTo(StateOfCharge.of(fraction));
  }

  @ParameterizedTest
  @CsvSource({"20, 20", "101 %, 101 %", "-1 %, -1 %", "1.01, 1.01"})
  void textOutsideItsRangeIsRejected(String text, String shown) {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> StateOfCharge.parse(text))
        .withMessage("StateOfCharge must be from 0 % to 100 %, but was " + shown);
  }

  @Test
  void textThatIsNoNumberIsRejected() {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> StateOfCharge.parse("half"))
        .withMessageContaining("\"half\"");
  }
}
