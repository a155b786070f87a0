package org.wattwright.examples.job;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.csv.CSVRecord;

/**
 * The header line of a table; remembers which columns were asked for, so that the rest is unknown.
 */
final class Header {
  private final Origin origin;
  private final Map<String, Heading> headings = new LinkedHashMap<>();
  private final Set<String> asked = new HashSet<>();

  Header(Origin origin, CSVRecord cells) {
    this.origin = origin;
    rejectOtherDelimiter(cells);
    for (int i = 0; i < cells.size(); i++) {
      add(Heading.parse(cells.get(i), i));
    }
  }

  private void rejectOtherDelimiter(CSVRecord cells) {
    String only = cells.size() == 1 ? cells.get(0) : "";
    if (only.contains(";") || only.contains("\t")) {
      throw origin.error("cells must be separated by commas, not by semicolons or tabs");
    }
  }

  private void add(Heading heading) {
    if (heading.name().isEmpty()) {
      throw origin.error("column " + (heading.index() + 1) + " has no name");
    }
    Heading first = headings.putIfAbsent(heading.name(), heading);
    if (first != null) {
      String message = "stands twice, in columns %d and %d";
      throw JobFileException.of(
          origin.column(heading.name())
              + ": "
              + message.formatted(first.index() + 1, heading.index() + 1));
    }
  }

  int size() {
    return headings.size();
  }

  Origin origin() {
    return origin;
  }

  Optional<Heading> find(String name) {
    asked.add(name);
    return Optional.ofNullable(headings.get(name));
  }

  Heading require(String name) {
    return find(name)
        .orElseThrow(
            () -> origin.error("missing column " + Quoted.of(name) + "; columns are " + list()));
  }

  void rejectUnknown() {
    for (Heading heading : headings.values()) {
      if (!asked.contains(heading.name())) {
        List<String> known = new ArrayList<>(asked);
        known.sort(null);
        throw JobFileException.of(
            origin.column(heading.written())
                + ": unknown column; known are "
                + String.join(", ", known));
      }
    }
  }

  private String list() {
    return String.join(", ", headings.values().stream().map(Heading::written).limit(40).toList());
  }
}
