package org.wattwright.examples.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.wattwright.units.Measures.kilopascals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wattwright.examples.DemonstrationFolder;

/** Brake vacuum, settings, pedal and gauges as a file states them. */
class ControlsFileTest {
  @TempDir Path job;

  @BeforeEach
  void copyTheDemonstration() throws IOException {
    DemonstrationFolder.copyTo(job);
  }

  private void change(String find, String replacement) throws IOException {
    Path file = job.resolve("controls.csv");
    String text = Files.readString(file);
    assertThat(text).contains(find);
    Files.writeString(file, text.replace(find, replacement));
  }

  private ControlsInput read() {
    return JobFolder.read(job).controls().orElseThrow();
  }

  private void rejects(String message) {
    assertThatThrownBy(this::read)
        .isInstanceOf(JobFileException.class)
        .hasMessageContaining("controls.csv")
        .hasMessageContaining(message);
  }

  @Test
  void theDemonstrationIsRead() {
    ControlsInput input = read();
    assertThat(input.brakes().vacuum().stops(kilopascals(30), input.brakes().reserve()))
        .isEqualTo(7);
    assertThat(input.monitoring().everyTapFused()).isTrue();
    assertThat(input.throttle().tolerance()).isEqualTo(0.03);
    assertThat(input.statements()).hasSizeGreaterThan(50);
  }

  @Test
  void theFileMayBeLeftOut() throws IOException {
    Files.delete(job.resolve("controls.csv"));
    assertThat(JobFolder.read(job).controls()).isEmpty();
  }

  @Test
  void aMissingKeyIsNamed() throws IOException {
    change("servo air side,0.35,L", "# servo air side,0.35,L");
    rejects("servo air side");
  }

  @Test
  void anUnknownKeyIsAnError() throws IOException {
    change("servo air side,", "servo airside,0.3,L,,\nservo air side,");
    rejects("servo airside");
  }

  @Test
  void whatTheLibraryRejectsIsReportedWithItsLine() throws IOException {
    change("servo and hose,1.8,L", "servo and hose,0.3,L");
    rejects("BrakeServo.held must be ≥ 0.35 L, but was 0.3 L");
  }

  @Test
  void aWrongUnitIsAnError() throws IOException {
    change("vacuum reservoir,6,L", "vacuum reservoir,6,kg");
    rejects("kg");
  }

  @Test
  void yesOrNo() throws IOException {
    change("every tap fused,yes", "every tap fused,perhaps");
    rejects("perhaps");
  }
}
