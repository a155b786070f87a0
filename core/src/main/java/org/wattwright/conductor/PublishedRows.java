package org.wattwright.conductor;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.wattwright.check.Basis;
import org.wattwright.check.Source;

/** Rows of this package's own tables; a row from memory says so in its source. */
final class PublishedRows {
  private PublishedRows() {}

  /** One line of a table; the last two columns are source and how it was obtained. */
  record Row(List<String> cells) {
    String text(int column) {
      return cells.get(column);
    }

    double number(int column) {
      return Double.parseDouble(cells.get(column));
    }

    boolean isFromMemory() {
      return cells.get(cells.size() - 1).equals("from memory");
    }

    Source source() {
      String title = cells.get(cells.size() - 2);
      return isFromMemory() ? Source.standard(title, "from memory") : Source.standard(title, "");
    }

    Basis basis() {
      return isFromMemory() ? Basis.ESTIMATED : Basis.DATA_SHEET;
    }
  }

  static List<Row> of(String resource) {
    try (InputStream in = PublishedRows.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException("missing resource " + resource);
      }
      List<Row> rows =
          new String(in.readAllBytes(), UTF_8)
              .lines()
              .filter(line -> !line.startsWith("#") && !line.isBlank())
              .map(line -> new Row(cells(line)))
              .toList();
      return rows.subList(1, rows.size());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<String> cells(String line) {
    List<String> cells = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (c == '"') {
        quoted = !quoted;
      } else if (c == ',' && !quoted) {
        cells.add(cell.toString());
        cell.setLength(0);
      } else {
        cell.append(c);
      }
    }
    cells.add(cell.toString());
    return List.copyOf(cells);
  }
}
