package org.wattwright.examples.job;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.wattwright.conversion.Fingerprint;

/** The files of a job folder as they were typed, for the fingerprint on the sheet. */
public final class InputFiles {
  private InputFiles() {}

  /**
   * The fingerprint of all CSV files of a folder: names and lines. Comments, empty lines, space at
   * either end of a line and the sort of line ends play no part; the order of lines does, because
   * circuits stand behind those that feed them.
   *
   * @param folder the job folder
   * @return the same for the same files
   * @throws JobFileException if the folder cannot be read
   */
  public static Fingerprint fingerprint(Path folder) {
    Map<String, String> texts = new TreeMap<>();
    try (Stream<Path> entries = Files.list(folder)) {
      List<Path> files = entries.filter(file -> file.toString().endsWith(".csv")).toList();
      for (Path file : files) {
        texts.put(TextFile.nameOf(file), lines(file));
      }
    } catch (IOException e) {
      throw JobFileException.of("job folder " + folder + " cannot be read: " + e.getMessage());
    }
    return Fingerprint.ofParts(texts);
  }

  private static String lines(Path file) throws IOException {
    return new String(Files.readAllBytes(file), StandardCharsets.UTF_8)
        .lines()
        .map(String::strip)
        .filter(line -> !line.isEmpty() && !line.startsWith("#"))
        .collect(Collectors.joining("\n"));
  }
}
