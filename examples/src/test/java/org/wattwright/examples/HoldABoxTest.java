package org.wattwright.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** The example finds more holes in thin sheet than in rails, and what they carry. */
class HoldABoxTest {
  @Test
  void printsTheHolesThatHold() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    PrintStream before = System.out;
    System.setOut(new PrintStream(bytes, true, StandardCharsets.UTF_8));
    try {
      HoldABox.main(new String[0]);
    } finally {
      System.setOut(before);
    }
    assertThat(bytes.toString(StandardCharsets.UTF_8))
        .startsWith("floor of 0.8 mm: 5 fixings")
        .contains("rails of 3 mm: 4 fixings")
        .contains("mass these fixings would carry")
        .contains("tighten M10 8.8 to 50.46 N·m")
        .doesNotContain("FAIL");
  }
}
