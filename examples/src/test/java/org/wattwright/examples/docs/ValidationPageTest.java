package org.wattwright.examples.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The committed validation page says what the tests of the library have just found. It needs their
 * whole run, as {@code mvn verify} makes it.
 */
class ValidationPageTest {
  private static final Path ROOT = Path.of("..").toAbsolutePath().normalize();
  private static final Path PAGE = ROOT.resolve("docs/validation.md");
  private static final Path FOUND = ROOT.resolve("core/target/validation");

  @Test
  void theCommittedPageIsWhatTheTestsFound() throws IOException {
    assertThat(FOUND).as("written by the tests of core: run mvn verify").isDirectory();
    List<String> fresh = new ValidationPage(ValidationLine.readAll(FOUND)).lines();

    if (Boolean.getBoolean("wattwright.update")) {
      Files.write(PAGE, fresh);
    }
    assertThat(Files.readAllLines(PAGE)).isEqualTo(fresh);
  }

  @Test
  void noComparisonFailedUnexplained() throws IOException {
    assertThat(ValidationLine.readAll(FOUND))
        .isNotEmpty()
        .noneMatch(line -> line.verdict().equals("DIFFERS"));
  }
}
