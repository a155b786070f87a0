package org.wattwright.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.wattwright.units.Measures.kiloohms;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.ohms;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wattwright.units.InvalidInputException;

/** Values: IEC 60063, series E12 and E24, from memory. */
class PreferredValuesTest {
  @ParameterizedTest
  @CsvSource({
    "E12, 33.4, 39, 33",
    "E12, 33, 33, 33",
    "E24, 33.4, 36, 33",
    "E12, 83, 100, 82",
    "E24, 92, 100, 91",
    "E24, 99.99, 100, 91",
    "E24, 4700, 4700, 4700",
    "E12, 0.47, 0.47, 0.47",
    "E12, 0.001, 0.001, 0.001",
    "E24, 1e7, 1e7, 1e7"
  })
  void neighbours(PreferredValues series, double ohm, double above, double below) {
    assertThat(series.atLeast(ohms(ohm)).isEquivalentTo(ohms(above))).isTrue();
    assertThat(series.atMost(ohms(ohm)).isEquivalentTo(ohms(below))).isTrue();
  }

  @Test
  void anUnitsOwnPrefixDoesNotMatter() {
    assertThat(PreferredValues.E12.atLeast(kiloohms(4.7)))
        .isEqualTo(PreferredValues.E12.atMost(ohms(4700)));
  }

  @Test
  void outsideTheRangeIsRefused() {
    assertThatThrownBy(() -> PreferredValues.E12.atLeast(milliohms(0.9)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("PreferredValues.resistance");
    assertThatThrownBy(() -> PreferredValues.E24.atMost(ohms(1.1e7)))
        .isInstanceOf(InvalidInputException.class);
  }
}
