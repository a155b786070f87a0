package org.wattwright.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** The example prints both faults, their clearing, and checks that all hold. */
class CoordinateAFuseTest {
  @Test
  void printsACoordinatedFuse() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    PrintStream before = System.out;
    System.setOut(new PrintStream(bytes, true, StandardCharsets.UTF_8));
    try {
      CoordinateAFuse.main(new String[0]);
    } finally {
      System.setOut(before);
    }
    assertThat(bytes.toString(StandardCharsets.UTF_8))
        .startsWith("120 A at 116.8 V in air of 60 °C, faults 1.008 kA … 6.418 kA")
        .contains("near: off within", "far:  off within")
        .contains("I∞ = U/R = 72 V / 71.4 mΩ = 1.008 kA")
        .doesNotContain("FAIL", "NOT CHECKED");
  }
}
