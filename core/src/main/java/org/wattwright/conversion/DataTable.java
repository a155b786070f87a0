package org.wattwright.conversion;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;

/**
 * A table of texts.
 *
 * <p>Immutable; {@link #row} returns a longer table.
 *
 * @param caption above the table; may be empty
 * @param columns headings, at least one
 * @param rows one text a column
 */
public record DataTable(String caption, List<Column> columns, List<List<String>> rows)
    implements Block {
  /**
   * A column.
   *
   * @param heading its heading
   * @param isNumeric whether its cells are set flush right
   */
  public record Column(String heading, boolean isNumeric) {
    /**
     * Checks the column.
     *
     * @param heading its heading
     * @param isNumeric whether its cells are set flush right
     */
    public Column {
      Objects.requireNonNull(heading, "heading");
    }
  }

  /**
   * Copies the lists.
   *
   * @param caption above the table; may be empty
   * @param columns headings, at least one
   * @param rows one text a column
   * @throws InvalidInputException if there is no column, or if a row has not one text a column
   */
  public DataTable {
    Objects.requireNonNull(caption, "caption");
    columns = Require.nonEmpty("DataTable.columns", columns);
    rows = rows.stream().map(List::copyOf).toList();
    for (List<String> row : rows) {
      if (row.size() != columns.size()) {
        throw wrongLength(columns.size(), row.size());
      }
    }
  }

  private static InvalidInputException wrongLength(int columns, int cells) {
    String message = "DataTable.row must have " + columns + " cells, but had " + cells;
    return InvalidInputException.withMessage(
        "DataTable.row", columns + " cells", cells + " cells", message);
  }

  /**
   * A table without rows.
   *
   * @param caption above the table; may be empty
   * @param headings one a column; one that begins with {@code >} is set flush right
   * @return the table
   * @throws InvalidInputException if there is no heading
   */
  public static DataTable of(String caption, String... headings) {
    List<Column> columns = new ArrayList<>();
    for (String heading : headings) {
      boolean isNumeric = heading.startsWith(">");
      columns.add(new Column(isNumeric ? heading.substring(1) : heading, isNumeric));
    }
    return new DataTable(caption, columns, List.of());
  }

  /**
   * This table with one more row.
   *
   * @param cells one a column
   * @return a longer table
   * @throws InvalidInputException if there is not one text a column
   */
  public DataTable row(String... cells) {
    List<List<String>> longer = new ArrayList<>(rows);
    longer.add(List.of(cells));
    return new DataTable(caption, columns, longer);
  }

  /**
   * Caption and size.
   *
   * @return for example {@code table "List", columns: 2, rows: 7}
   */
  @Override
  public String toString() {
    String name = caption.isEmpty() ? "table" : "table \"" + caption + "\"";
    return name + ", columns: " + columns.size() + ", rows: " + rows.size();
  }

  @Override
  public void accept(BlockWriter writer) {
    writer.dataTable(this);
  }
}
