package org.wattwright.examples;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SizeACableTest {
  /**
   * By hand, with 1.91 Ω/km of IEC 60228 class 5 at 20 °C and copper at 70.4 °C: 1.8 m · 1.91 Ω/km
   * · (1 + 0.00393 · 50.4) + 4 · 0.06 mΩ = 4.358 mΩ; times 42 A is 183 mV.
   */
  @Test
  void itNamesTheCableAndShowsTheWorking() {
    String report = SizeACable.report();
    assertThat(report)
        .startsWith("10 mm² vehicle cable, governed by terminal temperature")
        .contains("= 4.358 mΩ")
        .contains("= 183.1 mV")
        .doesNotContain("no cable of these");
  }
}
