package org.wattwright.conversion;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** The version of this library, which stands on every calculation sheet. */
public final class LibraryVersion {
  private static final String RESOURCE = "version.txt";

  /** Where the build did not fill the version in, as in some editors. */
  static final String UNBUILT = "development build";

  private LibraryVersion() {}

  /**
   * The version, read from a resource of the library that the build fills in. The same from a
   * folder of classes, from a jar and on the module path.
   *
   * @return for example {@code 0.1.0-SNAPSHOT}; {@code development build} if the classes were
   *     compiled without the project's build
   */
  public static String current() {
    try (InputStream stream =
        Objects.requireNonNull(
            LibraryVersion.class.getResourceAsStream(RESOURCE), "resource " + RESOURCE)) {
      return parsed(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String parsed(String text) {
    String version = text.strip();
    return version.isEmpty() || version.startsWith("${") ? UNBUILT : version;
  }
}
