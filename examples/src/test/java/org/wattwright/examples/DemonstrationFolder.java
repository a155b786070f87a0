package org.wattwright.examples;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The job folder that comes with the project; tests run in the folder of the module. */
public final class DemonstrationFolder {
  public static final Path PATH = Path.of("data");

  private DemonstrationFolder() {}

  public static void copyTo(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(PATH)) {
      for (Path file : (List<Path>) files.toList()) {
        Files.copy(file, folder.resolve(file.getFileName().toString()));
      }
    }
  }
}
