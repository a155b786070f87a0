package org.wattwright.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** The example prints a pre-charge that holds and a bleed resistor from the series. */
class SizeAPrechargeTest {
  @Test
  void printsBothResistors() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    PrintStream before = System.out;
    System.setOut(new PrintStream(bytes, true, StandardCharsets.UTF_8));
    try {
      SizeAPrecharge.main(new String[0]);
    } finally {
      System.setOut(before);
    }
    assertThat(bytes.toString(StandardCharsets.UTF_8))
        .startsWith("3300 µF to 116.8 V, closes at 5.84 V missing")
        .contains("W-25 (68 Ω): closes after")
        .contains("bleed 39000 Ω: PASS discharge.time")
        .doesNotContain("FAIL", "NOT CHECKED");
  }
}
