package org.wattwright.testing;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * The published values of one file of test resources.
 *
 * <p>Columns: {@code id, topic, quantity, conditions, value, unit, tolerance, source, obtained,
 * note}. Lines that begin with {@code #} are remarks.
 */
public final class ReferenceRows {
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180
          .builder()
          .setHeader()
          .setSkipHeaderRecord(true)
          .setCommentMarker('#')
          .setIgnoreEmptyLines(true)
          .get();

  private final String resource;
  private final Map<String, ReferenceRow> rows;

  private ReferenceRows(String resource, Map<String, ReferenceRow> rows) {
    this.resource = resource;
    this.rows = rows;
  }

  /** Reads a resource such as {@code /units/units.csv}. */
  public static ReferenceRows read(String resource) {
    Map<String, ReferenceRow> rows = new LinkedHashMap<>();
    try (InputStream in =
            Objects.requireNonNull(ReferenceRows.class.getResourceAsStream(resource), resource);
        CSVParser records = FORMAT.parse(new InputStreamReader(in, UTF_8))) {
      for (CSVRecord values : records) {
        ReferenceRow row = row(values);
        if (rows.put(row.id(), row) != null) {
          throw new IllegalArgumentException(resource + ": twice: " + row.id());
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(resource, e);
    }
    return new ReferenceRows(resource, rows);
  }

  private static ReferenceRow row(CSVRecord values) {
    return new ReferenceRow(
        values.get("id"),
        values.get("topic"),
        values.get("quantity"),
        ReferenceRow.conditionsOf(values.get("conditions")),
        values.get("value"),
        values.get("unit"),
        ReferenceTolerance.parse(values.get("tolerance")),
        values.get("source"),
        values.get("obtained"),
        values.get("note"));
  }

  /** All rows in the order of the file. */
  public Stream<ReferenceRow> stream() {
    return rows.values().stream();
  }

  /** The rows of one topic; fails if there are none. */
  public Stream<ReferenceRow> topic(String topic) {
    return atLeastOne(stream().filter(row -> row.topic().equals(topic)).toList(), topic);
  }

  /** The rows of one quantity; fails if there are none. */
  public Stream<ReferenceRow> quantity(String quantity) {
    return atLeastOne(stream().filter(row -> row.quantity().equals(quantity)).toList(), quantity);
  }

  /** One row by its identifier. */
  public ReferenceRow row(String id) {
    ReferenceRow row = rows.get(id);
    if (row == null) {
      throw new IllegalArgumentException(resource + " has no row " + id);
    }
    return row;
  }

  private Stream<ReferenceRow> atLeastOne(List<ReferenceRow> found, String what) {
    if (found.isEmpty()) {
      throw new IllegalArgumentException(resource + " has no rows of " + what);
    }
    return found.stream();
  }
}
