package org.wattwright.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** The example prints three charge times and the working of one. */
class ChargeTimeTest {
  @Test
  void printsTimesAndWhatLimitsThem() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    PrintStream before = System.out;
    System.setOut(new PrintStream(bytes, true, StandardCharsets.UTF_8));
    try {
      ChargeTime.main(new String[0]);
    } finally {
      System.setOut(before);
    }
    assertThat(bytes.toString(StandardCharsets.UTF_8))
        .contains("bakery yard, 10 A: 15 % … 100 % in ")
        .contains("harbour kerb, 16 A: 15 % … 100 % in ")
        .contains("workshop, 32 A: 15 % … 100 % in ")
        .contains("I_supply = I_rated·k = 10 A · 1 = 10 A");
  }
}
