package org.wattwright.protection;

import java.util.List;
import java.util.stream.Stream;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.ReferenceRows;

/** Reference rows of one topic, by the letters of their identifiers. */
final class TopicRows {
  private TopicRows() {}

  static Stream<ReferenceRow> of(String... letters) {
    List<String> wanted = List.of(letters);
    return ReferenceRows.read("/protection/protection-and-charging.csv").stream()
        .filter(row -> wanted.contains(row.id().substring(0, row.id().indexOf('-'))));
  }

  static ReferenceRow row(String id) {
    return ReferenceRows.read("/protection/protection-and-charging.csv").row(id);
  }
}
