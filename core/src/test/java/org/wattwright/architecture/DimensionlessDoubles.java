package org.wattwright.architecture;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The list of public members that take or return a plain double, each with the reason why the
 * number has no dimension.
 *
 * <p>A line is {@code package.Type.member: reason}; {@code package.Type.*} stands for all members
 * of one type.
 */
record DimensionlessDoubles(Map<String, String> reasons) {
  static final String FILE = "/architecture/dimensionless-doubles.txt";

  static DimensionlessDoubles read() {
    try (InputStream in = DimensionlessDoubles.class.getResourceAsStream(FILE)) {
      return parse(new String(in.readAllBytes(), UTF_8).lines().toList());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static DimensionlessDoubles parse(List<String> lines) {
    Map<String, String> reasons = new LinkedHashMap<>();
    for (String line : lines) {
      if (line.isBlank() || line.startsWith("#")) {
        continue;
      }
      String[] parts = line.split(":", 2);
      if (parts.length < 2 || parts[1].isBlank()) {
        throw new IllegalArgumentException(FILE + ": no reason given: " + line);
      }
      if (reasons.put(parts[0].strip(), parts[1].strip()) != null) {
        throw new IllegalArgumentException(FILE + ": listed twice: " + line);
      }
    }
    return new DimensionlessDoubles(reasons);
  }

  List<String> unlisted(List<String> found) {
    return found.stream()
        .filter(key -> !reasons.containsKey(key) && !reasons.containsKey(allOf(key)))
        .toList();
  }

  List<String> stale(List<String> found) {
    return reasons.keySet().stream()
        .filter(
            line -> found.stream().noneMatch(key -> line.equals(key) || line.equals(allOf(key))))
        .toList();
  }

  private static String allOf(String key) {
    return key.substring(0, key.lastIndexOf('.')) + ".*";
  }
}
