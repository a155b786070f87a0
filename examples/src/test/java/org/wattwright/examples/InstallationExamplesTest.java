package org.wattwright.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** The vacuum lasts at home and not in the hills; the ladder of settings holds. */
class InstallationExamplesTest {
  @Test
  void theReserveIsLessInTheHills() {
    // at home 0.35 L of 5.8 L at 101.325 kPa is 6.114 kPa a stop: 30 kPa to 66.325 kPa takes 5
    assertThat(printed(() -> AssistedStops.main(new String[0])))
        .startsWith("at home: 5 stops\nin the hills: 3 stops\nreservoir for the hills: 4.253 L")
        .contains("VP-30, 9 A, 9.225 % of the time")
        .doesNotContain("FAIL", "NOT CHECKED");
  }

  @Test
  void theLadderHolds() {
    assertThat(printed(() -> SetTheLimits.main(new String[0])))
        .contains("charger end, pack")
        .contains("112 V")
        .contains("balancing 2 %: 19.4")
        .doesNotContain("FAIL", "NOT CHECKED");
  }

  private static String printed(Runnable example) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    PrintStream before = System.out;
    System.setOut(new PrintStream(bytes, true, StandardCharsets.UTF_8));
    try {
      example.run();
    } finally {
      System.setOut(before);
    }
    return bytes.toString(StandardCharsets.UTF_8).replace("\r\n", "\n");
  }
}
