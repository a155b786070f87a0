package org.wattwright.testing;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Assumptions;

/**
 * Runs a circuit through ngspice, a general circuit simulator, as an independent oracle.
 *
 * <p>Tests that use it carry the tag {@code ngspice}. Where it is not installed they are skipped,
 * unless the system property {@code wattwright.full} is {@code true}: then they fail.
 */
public final class Ngspice {
  private static final Pattern RESULT =
      Pattern.compile("^([a-z][\\w().#,]*)\\s*=\\s*([-+]?[\\d.]+(?:e[-+]?\\d+)?)\\b.*");

  private Ngspice() {}

  /**
   * The values that a deck prints, by name in lower case: {@code print v(1)} in its control
   * section, or {@code .measure}.
   *
   * @param deck netlist with analyses; the first line is its title
   */
  public static Map<String, Double> run(String deck) throws IOException, InterruptedException {
    requireInstalled();
    Path file = Files.createTempFile("circuit", ".cir");
    Path log = Files.createTempFile("circuit", ".log");
    try {
      Files.writeString(file, deck);
      int exit = exitOf(log, "ngspice", "-b", file.toString());
      String text = Files.readString(log, UTF_8);
      Assertions.assertThat(text).as("ngspice, exit %d", exit).doesNotContain("Error");
      return results(text);
    } finally {
      Files.deleteIfExists(file);
      Files.deleteIfExists(log);
    }
  }

  private static void requireInstalled() throws InterruptedException {
    boolean installed;
    try {
      Path log = Files.createTempFile("ngspice", ".log");
      installed = exitOf(log, "ngspice", "--version") == 0;
      Files.deleteIfExists(log);
    } catch (IOException e) {
      installed = false;
    }
    if (Boolean.getBoolean("wattwright.full")) {
      Assertions.assertThat(installed).as("ngspice must be installed for the full build").isTrue();
    }
    Assumptions.assumeTrue(installed, "ngspice is not installed");
  }

  private static int exitOf(Path log, String... command) throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(log.toFile()).start();
    process.getOutputStream().close();
    if (!process.waitFor(60, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      throw new IOException("no answer after 60 s: " + String.join(" ", command));
    }
    return process.exitValue();
  }

  private static Map<String, Double> results(String text) {
    Map<String, Double> results = new LinkedHashMap<>();
    for (String line : text.split("\\R")) {
      Matcher matcher = RESULT.matcher(line.strip());
      if (matcher.matches()) {
        results.put(matcher.group(1), Double.parseDouble(matcher.group(2)));
      }
    }
    return results;
  }
}
