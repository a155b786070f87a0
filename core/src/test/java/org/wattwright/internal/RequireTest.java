package org.wattwright.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.wattwright.units.Measures.ampereHours;
import static org.wattwright.units.Measures.millivolts;
import static org.wattwright.units.Measures.volts;
import static org.wattwright.units.WorkshopUnits.AMPERE_HOUR;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.measure.quantity.ElectricPotential;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wattwright.units.InvalidInputException;

class RequireTest {
  @Test
  void handsOutTheSiValue() {
    assertThat(Require.quantity("Cell.capacity", ampereHours(2), AMPERE_HOUR).positive())
        .isEqualTo(7200);
    assertThat(voltage(-3).any()).isEqualTo(-3);
    assertThat(voltage(0).nonNegative()).isZero();
    assertThat(Require.quantity("x", millivolts(2500), VOLT).between(2.5, 3)).isEqualTo(2.5);
    assertThat(voltage(3).between(2.5, 3)).isEqualTo(3);
    assertThat(voltage(3).positiveUpTo(3)).isEqualTo(3);
  }

  @Test
  void namesFieldBoundAndValueWithItsUnit() {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(
            () -> Require.quantity("Cell.capacity", ampereHours(-105), AMPERE_HOUR).positive())
        .withMessage("Cell.capacity must be > 0 A·h, but was -105 A·h")
        .satisfies(
            e -> {
              assertThat(e.field()).isEqualTo("Cell.capacity");
              assertThat(e.bound()).isEqualTo("> 0 A·h");
              assertThat(e.value()).isEqualTo("-105 A·h");
            });
    rejects(() -> voltage(0).positive(), "U must be > 0 V, but was 0 V");
    rejects(() -> voltage(-1).nonNegative(), "U must be ≥ 0 V, but was -1 V");
    rejects(() -> voltage(2).between(2.5, 3), "U must be from 2.5 to 3 V, but was 2 V");
    rejects(() -> voltage(3.1).between(2.5, 3), "U must be from 2.5 to 3 V, but was 3.1 V");
    rejects(() -> voltage(0).positiveUpTo(3), "U must be > 0 and ≤ 3 V, but was 0 V");
    rejects(() -> voltage(4).positiveUpTo(3), "U must be > 0 and ≤ 3 V, but was 4 V");
  }

  @Test
  void keepsTheUnitOfTheCaller() {
    rejects(
        () -> Require.quantity("U", millivolts(-5), VOLT).positive(),
        "U must be > 0 V, but was -5 mV");
  }

  @Test
  void namesTheFieldThatIsNull() {
    assertThatNullPointerException()
        .isThrownBy(() -> Require.quantity("Cell.capacity", null, AMPERE_HOUR))
        .withMessage("Cell.capacity");
    assertThatNullPointerException().isThrownBy(() -> Require.text("T.x", null)).withMessage("T.x");
    assertThatNullPointerException()
        .isThrownBy(() -> Require.nonEmpty("T.x", null))
        .withMessage("T.x");
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void everyGuardRejectsWhatIsNotFinite(double value) {
    rejects(() -> Require.fraction("x", value), "x must be from 0 to 1, but was " + value);
    rejects(
        () -> Require.between("x", value, -1, 2.5), "x must be from -1 to 2.5, but was " + value);
    rejects(() -> Require.positive("x", value), "x must be > 0 and finite, but was " + value);
    rejects(() -> Require.nonNegative("x", value), "x must be ≥ 0 and finite, but was " + value);
    rejects(() -> Require.finite("x", value), "x must be finite, but was " + value);
  }

  @Test
  void boundsOfNumbersAreInclusiveWhereTheySaySo() {
    assertThat(Require.fraction("x", 0)).isZero();
    assertThat(Require.fraction("x", 1)).isEqualTo(1);
    assertThat(Require.between("x", -1, -1, 2)).isEqualTo(-1);
    assertThat(Require.between("x", 2, -1, 2)).isEqualTo(2);
    assertThat(Require.nonNegative("x", 0)).isZero();
    assertThat(voltage(2).nonNegative()).isEqualTo(2);
    assertThat(Require.positive("x", Double.MIN_VALUE)).isEqualTo(Double.MIN_VALUE);
    assertThat(Require.positive("x", Double.MAX_VALUE)).isEqualTo(Double.MAX_VALUE);
    assertThat(Require.nonNegative("x", Double.MAX_VALUE)).isEqualTo(Double.MAX_VALUE);
    assertThat(Require.finite("x", -5)).isEqualTo(-5);
    rejects(() -> Require.positive("x", 0), "x must be > 0 and finite, but was 0.0");
    rejects(() -> Require.nonNegative("x", -1e-9), "x must be ≥ 0 and finite, but was -1.0E-9");
    rejects(() -> Require.fraction("x", 1.01), "x must be from 0 to 1, but was 1.01");
    rejects(
        () -> Require.between("x", 0, 1e15, 2e15), "x must be from 1.0E15 to 2.0E15, but was 0.0");
  }

  @Test
  void countsHaveBoundsToo() {
    assertThat(Require.count("n", 1, 1, 3)).isEqualTo(1);
    assertThat(Require.count("n", 3, 1, 3)).isEqualTo(3);
    assertThat(Require.positiveCount("n", 1)).isEqualTo(1);
    rejects(() -> Require.count("n", 4, 1, 3), "n must be from 1 to 3, but was 4");
    rejects(() -> Require.count("n", 0, 1, 3), "n must be from 1 to 3, but was 0");
    rejects(() -> Require.positiveCount("n", 0), "n must be ≥ 1, but was 0");
  }

  @Test
  void textIsStrippedAndNotBlank() {
    assertThat(Require.text("T.name", "  van ")).isEqualTo("van");
    rejects(() -> Require.text("T.name", " \t"), "T.name must be a text, but was \" \t\"");
  }

  @Test
  void listIsCopiedAndNotEmpty() {
    List<String> given = new ArrayList<>(List.of("a"));
    List<String> copy = Require.nonEmpty("T.list", given);
    given.add("b");
    assertThat(copy).containsExactly("a").isUnmodifiable();
    rejects(
        () -> Require.nonEmpty("T.list", List.of()),
        "T.list must be a list with at least one element, but was empty");
    assertThatNullPointerException()
        .isThrownBy(() -> Require.nonEmpty("T.list", Arrays.asList("a", null)));
  }

  private static Require.Guarded<ElectricPotential> voltage(double volts) {
    return Require.quantity("U", volts(volts), VOLT);
  }

  private static void rejects(ThrowingCallable call, String message) {
    assertThatExceptionOfType(InvalidInputException.class).isThrownBy(call).withMessage(message);
  }
}
