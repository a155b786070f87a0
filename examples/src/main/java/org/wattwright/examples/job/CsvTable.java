package org.wattwright.examples.job;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.function.Function;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * One CSV file: a header line, then rows.
 *
 * <p>UTF-8, cells separated by commas, quoted by {@code "} where needed; empty lines and lines that
 * begin with {@code #} are skipped. A table holds at most {@value #MOST_ROWS} rows. Columns are
 * known by being asked for; any other is an error.
 *
 * <p>Immutable and thread-safe.
 */
public final class CsvTable {
  /** Most rows of one table; far above any real job. */
  public static final int MOST_ROWS = 10_000;

  private static final CSVFormat FORMAT =
      CSVFormat.DEFAULT.builder().setCommentMarker('#').setIgnoreEmptyLines(true).get();

  private final String name;
  private final String text;

  private CsvTable(String name, String text) {
    this.name = name;
    this.text = text;
  }

  /**
   * Reads a file.
   *
   * @param file the file
   * @return the table; its rows are looked at by {@link #map}
   * @throws JobFileException if the file is missing, empty, too large or no UTF-8 text
   */
  public static CsvTable read(Path file) {
    String text = TextFile.read(file);
    String name = TextFile.nameOf(file);
    if (text.isBlank()) {
      throw JobFileException.of(name + " is empty: expected a header line and at least one row");
    }
    return new CsvTable(name, text);
  }

  /**
   * Turns every row into something.
   *
   * @param <T> what a row becomes
   * @param mapper reads a row; it must ask for every column that the table may have
   * @return one element a row, in the order of the file, at least one
   * @throws JobFileException if the file breaks a rule or the mapper rejects a row
   */
  public <T> List<T> map(Function<CsvRow, T> mapper) {
    try (CSVParser parser =
        CSVParser.builder().setReader(new StringReader(text)).setFormat(FORMAT).get()) {
      return mapAll(parser, mapper);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private <T> List<T> mapAll(CSVParser parser, Function<CsvRow, T> mapper) {
    Iterator<CSVRecord> records = parser.iterator();
    CSVRecord first = next(parser, records);
    Header header = new Header(originOf(parser, first), first);
    List<T> results = new ArrayList<>();
    while (hasNext(parser, records)) {
      CSVRecord record = next(parser, records);
      if (isBlank(record)) {
        continue;
      }
      if (results.size() == MOST_ROWS) {
        throw originOf(parser, record).error("more than " + MOST_ROWS + " rows");
      }
      CsvRow row = new CsvRow(originOf(parser, record), header, record);
      results.add(row.origin().locate(() -> mapper.apply(row)));
    }
    if (results.isEmpty()) {
      throw JobFileException.of(name + " has a header line but no rows");
    }
    header.rejectUnknown();
    return List.copyOf(results);
  }

  /**
   * The table as it was typed, for the reader of a sheet.
   *
   * @return columns and rows
   * @throws JobFileException if the file breaks a rule
   */
  public StatedTable stated() {
    List<List<String>> lines = new ArrayList<>();
    try (CSVParser parser =
        CSVParser.builder().setReader(new StringReader(text)).setFormat(FORMAT).get()) {
      Iterator<CSVRecord> records = parser.iterator();
      while (hasNext(parser, records)) {
        CSVRecord record = records.next();
        if (!isBlank(record)) {
          lines.add(record.stream().map(String::strip).toList());
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new StatedTable(name, lines.get(0), lines.subList(1, lines.size()));
  }

  private boolean hasNext(CSVParser parser, Iterator<CSVRecord> records) {
    try {
      return records.hasNext();
    } catch (UncheckedIOException e) {
      long line = parser.getCurrentLineNumber();
      throw new Origin(name, Math.max(line, 1)).error("misplaced or missing quotation mark");
    }
  }

  private CSVRecord next(CSVParser parser, Iterator<CSVRecord> records) {
    if (!hasNext(parser, records)) {
      throw JobFileException.of(name + " holds comments only: expected a header line");
    }
    return records.next();
  }

  private static boolean isBlank(CSVRecord record) {
    return record.stream().allMatch(String::isBlank);
  }

  /** The parser stands at the last line of the record; a quoted cell may span several. */
  private Origin originOf(CSVParser parser, CSVRecord record) {
    long breaks =
        record.stream().mapToLong(cell -> cell.chars().filter(c -> c == '\n').count()).sum();
    return new Origin(name, parser.getCurrentLineNumber() - breaks);
  }
}
