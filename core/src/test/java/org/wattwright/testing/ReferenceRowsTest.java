package org.wattwright.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.wattwright.testing.ReferenceTolerance.Type;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

class ReferenceRowsTest {
  private static final ReferenceRows ROWS = ReferenceRows.read("/testing/sample.csv");

  @Test
  void readsEveryColumn() {
    ReferenceRow row = ROWS.row("X-1");
    assertThat(row.topic()).isEqualTo("1 first");
    assertThat(row.quantity()).isEqualTo("drop, one way");
    assertThat(row.conditions()).containsOnlyKeys("I", "R", "held still");
    assertThat(row.value()).isEqualTo("1.20");
    assertThat(row.unit()).isEqualTo("mV");
    assertThat(row.tolerance())
        .isEqualTo(new ReferenceTolerance(Type.ABSOLUTE, new BigDecimal("0.05")));
    assertThat(row.source()).isEqualTo("Invented, \"first\" edition");
    assertThat(row.obtained()).isEqualTo("memory");
    assertThat(row.note()).isEqualTo("a note");
  }

  @Test
  void findsByTopicAndQuantity() {
    assertThat(ROWS.stream()).hasSize(4);
    assertThat(ROWS.topic("2 second")).extracting(ReferenceRow::id).containsExactly("X-2", "X-3");
    assertThat(ROWS.quantity("verdict")).extracting(ReferenceRow::id).containsExactly("X-4");
    assertThatIllegalArgumentException().isThrownBy(() -> ROWS.topic("9 none"));
    assertThatIllegalArgumentException().isThrownBy(() -> ROWS.quantity("none"));
    assertThatIllegalArgumentException().isThrownBy(() -> ROWS.row("X-9"));
  }

  @Test
  void readsConditionsAsNumbersAndQuantities() {
    ReferenceRow row = ROWS.row("X-1");
    assertThat(row.given("I", Kind.CURRENT)).isEqualTo(Measures.amperes(2.5));
    assertThat(row.given("R", Kind.RESISTANCE)).isEqualTo(Measures.milliohms(0.48));
    assertThat(row.givenNumber("R")).isEqualTo(0.48);
    assertThat(row.has("held still")).isTrue();
    assertThat(row.quantity(Kind.VOLTAGE)).isEqualTo(Measures.millivolts(1.2));
    assertThatIllegalArgumentException().isThrownBy(() -> row.given("L"));
    assertThatIllegalArgumentException().isThrownBy(() -> row.given("I", Kind.VOLTAGE));
    assertThatIllegalArgumentException().isThrownBy(() -> row.givenNumber("held still"));
  }

  @Test
  void absoluteToleranceIncludesItsEdgeInDecimals() {
    ReferenceRow row = ROWS.row("X-1");
    row.assertMatches(1.25);
    row.assertMatches(1.15);
    row.assertMatches(Measures.volts(0.0012), Kind.VOLTAGE);
    assertDiffers(row, 1.2501);
    assertDiffers(row, 1.1499);
    assertDiffers(row, Double.NaN);
  }

  @Test
  void relativeToleranceCountsFromThePublishedValue() {
    ReferenceRow row = ROWS.row("X-2");
    row.assertMatches(-202);
    assertDiffers(row, -202.001);
    assertDiffers(row, 200);
  }

  @Test
  void exactAllowsOnlyTheRoundingOfDoubles() {
    ReferenceRow row = ROWS.row("X-3");
    row.assertMatches(0.1 + 0.2);
    assertDiffers(row, 0.300000000001);
  }

  @Test
  void textIsComparedAsText() {
    ReferenceRow row = ROWS.row("X-4");
    row.assertMatches("PASS");
    assertThatExceptionOfType(AssertionError.class).isThrownBy(() -> row.assertMatches("FAIL"));
  }

  @Test
  void displayNameShowsSourceAndThatAValueIsRecalled() {
    assertThat(ROWS.row("X-1"))
        .hasToString(
            "X-1 drop, one way (I=2.5 A for 10 s; R=0.48 mohm; held still) = 1.20 mV "
                + "[Invented, \"first\" edition] (from memory)");
    assertThat(ROWS.row("X-2").toString()).endsWith("= -200 V [Invented]");
  }

  @Test
  void deviationIsSignedAndCountedLikeTheTolerance() {
    assertThat(ROWS.row("X-1").tolerance().deviation(1.2, 1.21)).startsWith("abs 0.010");
    assertThat(ROWS.row("X-2").tolerance().deviation(-200, -199)).isEqualTo("rel -0.0050");
    assertThat(ROWS.row("X-3").tolerance().deviation(0.3, 0.3)).isEqualTo("0");
  }

  private static void assertDiffers(ReferenceRow row, double ours) {
    assertThatExceptionOfType(AssertionError.class)
        .isThrownBy(() -> row.assertMatches(ours))
        .withMessageContaining(row.id());
  }
}
