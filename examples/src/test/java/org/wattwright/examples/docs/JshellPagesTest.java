package org.wattwright.examples.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every jshell block in the documentation shows what jshell really answers. With {@code
 * -Dwattwright.update=true} the pages are rewritten instead. Each page starts a jshell of its own,
 * so this belongs to the full build.
 */
@Tag("jshell")
class JshellPagesTest {
  private static final Path ROOT = Path.of("..").toAbsolutePath().normalize();
  private static final Path STARTUP = ROOT.resolve("examples/jshell/wattwright.jsh");

  static Stream<Path> pages() throws IOException {
    try (Stream<Path> docs = Files.list(ROOT.resolve("docs"))) {
      List<Path> pages =
          Stream.concat(Stream.of(ROOT.resolve("README.md")), docs.sorted())
              .filter(path -> path.toString().endsWith(".md") && Files.exists(path))
              .filter(path -> !new JshellPage(lines(path)).typed().isEmpty())
              .toList();
      return pages.stream();
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("pages")
  void pageShowsWhatJshellAnswers(Path page) throws Exception {
    List<String> lines = lines(page);
    JshellPage written = new JshellPage(lines);
    String session = JshellSession.run(written.typed(), STARTUP);

    List<List<String>> exchanges = JshellPage.exchanges(session);
    // The last prompt waits for input that never comes.
    List<String> real = written.withAnswers(exchanges.subList(0, exchanges.size() - 1));

    assertThat(real).as("lines that do not compile").doesNotContain("|  Error:");
    if (Boolean.getBoolean("wattwright.update")) {
      Files.write(page, real);
    } else {
      assertThat(lines).isEqualTo(real);
    }
  }

  private static List<String> lines(Path page) {
    try {
      return Files.readAllLines(page);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
