package org.wattwright.examples.docs;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import jdk.jshell.tool.JavaShellToolBuilder;

/** Runs lines in jshell, started as {@code examples/jshell/start} starts it. */
final class JshellSession {
  private JshellSession() {}

  /** Everything that jshell prints, the typed lines after their prompts included. */
  static String run(List<String> typed, Path startup) throws Exception {
    String input = String.join("\n", typed) + "\n";
    ByteArrayOutputStream output = new ByteArrayOutputStream();
    PrintStream out = new PrintStream(output, true, StandardCharsets.UTF_8);
    JavaShellToolBuilder.builder()
        .in(new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)), null)
        .out(out)
        .err(out)
        .persistence(new HashMap<>())
        .locale(Locale.ROOT)
        .start(
            "--class-path",
            System.getProperty("java.class.path"),
            "--startup",
            "DEFAULT",
            "--startup",
            startup.toString(),
            "-R-Dfile.encoding=UTF-8",
            "--feedback",
            "normal");
    return output.toString(StandardCharsets.UTF_8);
  }
}
