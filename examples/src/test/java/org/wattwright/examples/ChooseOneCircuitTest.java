package org.wattwright.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** The example prints parts of which no check fails, and leaves no current. */
class ChooseOneCircuitTest {
  @Test
  void printsTheParts() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    PrintStream before = System.out;
    System.setOut(new PrintStream(bytes, true, StandardCharsets.UTF_8));
    try {
      ChooseOneCircuit.main(new String[0]);
    } finally {
      System.setOut(before);
    }
    assertThat(bytes.toString(StandardCharsets.UTF_8))
        .startsWith("traction: ")
        .contains("runner-up: ", "governing: ", "I_min = U/(R_s + R_n + R_c)")
        .doesNotContain(": nothing (", "NOT CHECKED");
  }
}
