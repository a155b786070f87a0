package org.wattwright.internal;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One of the library's own tables: a CSV resource in UTF-8 with a header line.
 *
 * <p>A line that begins with {@code #} is a remark; blank lines are passed over. A cell with a
 * comma stands in double quotes; a double quote within them is doubled. Cells are stripped of
 * spaces. Every line has as many cells as the header. A mistake in a table is one of the library,
 * not of its user: it throws {@link IllegalStateException}, which names resource, line and column.
 *
 * <p>Immutable.
 */
public final class ResourceTable {
  private final String name;
  private final List<String> columns;
  private final List<Row> rows;

  private ResourceTable(String name, List<String> lines) {
    this.name = name;
    List<String> header = List.of();
    List<Row> found = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      if (line.isBlank() || line.startsWith("#")) {
        continue;
      }
      Row row = new Row(i + 1, cells(line, i + 1));
      if (header.isEmpty()) {
        header = row.cells;
      } else {
        found.add(row);
      }
    }
    this.columns = header;
    this.rows = List.copyOf(found);
    requireComplete();
  }

  /** Reads the resource beside a class. */
  public static ResourceTable read(Class<?> owner, String resource) {
    String name = owner.getPackageName() + "/" + resource;
    try (@Nullable InputStream in = owner.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException(name + ": no such resource");
      }
      return parse(name, new String(in.readAllBytes(), UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(name, e);
    }
  }

  /** Reads a text; the name is for messages. */
  static ResourceTable parse(String name, String text) {
    return new ResourceTable(name, text.lines().toList());
  }

  private void requireComplete() {
    if (rows.isEmpty()) {
      throw new IllegalStateException(name + ": no rows");
    }
    if (new HashSet<>(columns).size() < columns.size()) {
      throw new IllegalStateException(name + ": two columns of one name: " + columns);
    }
    for (Row row : rows) {
      if (row.cells.size() != columns.size()) {
        throw row.error(row.cells.size() + " cells, but the header has " + columns.size());
      }
    }
  }

  private List<String> cells(String line, int number) {
    List<String> cells = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (quoted && c == '"' && line.startsWith("\"\"", i)) {
        cell.append(c);
        i++;
      } else if (c == '"') {
        quoted = !quoted;
      } else if (c == ',' && !quoted) {
        cells.add(cell.toString().strip());
        cell.setLength(0);
      } else {
        cell.append(c);
      }
    }
    if (quoted) {
      throw new IllegalStateException(name + " line " + number + ": a quote is not closed");
    }
    cells.add(cell.toString().strip());
    return List.copyOf(cells);
  }

  /** Names of the columns, in their order. */
  public List<String> columns() {
    return columns;
  }

  /** The lines below the header, in their order; at least one. */
  public List<Row> rows() {
    return rows;
  }

  /** A whole column as numbers. */
  public double[] numbers(String column) {
    return rows.stream().mapToDouble(row -> row.number(column)).toArray();
  }

  private int index(String column) {
    int index = columns.indexOf(Objects.requireNonNull(column, "column"));
    if (index < 0) {
      throw new IllegalStateException(name + ": no column \"" + column + "\" in " + columns);
    }
    return index;
  }

  /** One line of the table. */
  public final class Row {
    private final int line;
    private final List<String> cells;

    Row(int line, List<String> cells) {
      this.line = line;
      this.cells = cells;
    }

    /** Number of the line in the file, counted from 1, remarks included. */
    public int line() {
      return line;
    }

    /** The cell as it stands; may be empty. */
    public String text(String column) {
      return cells.get(index(column));
    }

    /** Whether the cell is empty. */
    public boolean isEmpty(String column) {
      return text(column).isEmpty();
    }

    /** The cell as a finite number. */
    public double number(String column) {
      double number;
      try {
        number = Double.parseDouble(text(column));
      } catch (NumberFormatException e) {
        throw cellError(column, "a number", e);
      }
      if (!Double.isFinite(number)) {
        throw cellError(column, "a finite number", null);
      }
      return number;
    }

    /** The cell as a whole number. */
    public int count(String column) {
      try {
        return Integer.parseInt(text(column));
      } catch (NumberFormatException e) {
        throw cellError(column, "a whole number", e);
      }
    }

    /** The cell as the constant of that name. */
    public <E extends Enum<E>> E constant(String column, Class<E> type) {
      for (E constant : type.getEnumConstants()) {
        if (constant.name().equals(text(column))) {
          return constant;
        }
      }
      throw cellError(column, "one of " + List.of(type.getEnumConstants()), null);
    }

    private IllegalStateException cellError(
        String column, String wanted, @Nullable NumberFormatException cause) {
      String message =
          ", column \"" + column + "\": must be " + wanted + ", but was \"" + text(column) + "\"";
      return new IllegalStateException(name + " line " + line + message, cause);
    }

    private IllegalStateException error(String message) {
      return new IllegalStateException(name + " line " + line + ": " + message);
    }
  }

  /** Name and size, such as {@code org.wattwright.conductor/air.csv (24 rows)}. */
  @Override
  public String toString() {
    return name + " (" + rows.size() + " rows)";
  }
}
