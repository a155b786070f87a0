package org.wattwright.examples.job;

import java.util.Optional;
import org.apache.commons.csv.CSVRecord;

/**
 * One row of a table; its cells are asked for by the name of the column, without the unit.
 *
 * <p>Not thread-safe; of no use after the mapping.
 */
public final class CsvRow {
  private final Origin origin;
  private final Header header;
  private final CSVRecord cells;

  CsvRow(Origin origin, Header header, CSVRecord cells) {
    this.origin = origin;
    this.header = header;
    this.cells = cells;
    if (cells.size() != header.size()) {
      throw origin.error("%d cells where the header has %d".formatted(cells.size(), header.size()));
    }
  }

  /**
   * Where this row stands.
   *
   * @return file and line
   */
  public Origin origin() {
    return origin;
  }

  /**
   * A cell that must be there and filled.
   *
   * @param column name of the column
   * @return the cell
   * @throws JobFileException if the column is missing or the cell is empty
   */
  public Field field(String column) {
    Field field = at(header.require(column));
    if (field.isEmpty()) {
      throw field.error("is empty");
    }
    return field;
  }

  /**
   * A cell that may be empty, in a column that may be missing.
   *
   * @param column name of the column
   * @return the cell, if it is filled
   */
  public Optional<Field> optional(String column) {
    return header.find(column).map(this::at).filter(field -> !field.isEmpty());
  }

  private Field at(Heading heading) {
    return new Field(
        cells.get(heading.index()),
        heading.unit(),
        origin.column(heading.written()),
        header.origin().column(heading.written()));
  }
}
