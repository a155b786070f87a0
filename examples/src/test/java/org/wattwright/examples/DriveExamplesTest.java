package org.wattwright.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** The examples of range and limit print what they promise. */
class DriveExamplesTest {
  private static String printed(Runnable example) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    PrintStream before = System.out;
    System.setOut(new PrintStream(bytes, true, StandardCharsets.UTF_8));
    try {
      example.run();
    } finally {
      System.setOut(before);
    }
    return bytes.toString(StandardCharsets.UTF_8);
  }

  @Test
  void rangeNewAgedAndInWinter() {
    String text = printed(() -> RangeOnACycle.main(new String[0]));
    assertThat(text).contains("new: ", "aged: ", "winter: ", "until the ", "| pack resistance");
  }

  @Test
  void tableOfLimitsAndTheSmallestOne() {
    String text = printed(() -> PowerLimit.main(new String[0]));
    assertThat(text).contains("| 150 A", "| 400 A", ", for hold 80 km/h on 3 %");
  }
}
