package org.wattwright.examples.job;

import java.util.List;

/**
 * A file of a job as it was typed: the columns with their units, and the rows with their sources.
 *
 * <p>Immutable and thread-safe.
 *
 * @param file its name
 * @param columns headings, with the unit
 * @param rows one text a column; one that is not stated is empty
 */
public record StatedTable(String file, List<String> columns, List<List<String>> rows) {
  /**
   * Copies the lists.
   *
   * @param file its name
   * @param columns headings, with the unit
   * @param rows one text a column
   */
  public StatedTable {
    columns = List.copyOf(columns);
    rows = rows.stream().map(List::copyOf).toList();
  }
}
