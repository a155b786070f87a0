package org.wattwright.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** The example prints a proven split and its working. */
class SplitThePackTest {
  @Test
  void printsTheProvenSplit() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    PrintStream before = System.out;
    System.setOut(new PrintStream(bytes, true, StandardCharsets.UTF_8));
    try {
      SplitThePack.main(new String[0]);
    } finally {
      System.setOut(before);
    }
    assertThat(bytes.toString(StandardCharsets.UTF_8))
        .startsWith(
            "14s1p crate module: bonnet 7, boot 2, tunnel 5; front share 0.4794 in kerb (PROVEN over 44 candidates)")
        .contains("s_f = m_f/m_t = 472.7 kg / 986 kg = 47.94 %");
  }
}
