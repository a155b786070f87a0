package org.wattwright.check;

import java.util.ArrayList;
import java.util.List;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;

/**
 * A Markdown table; every cell is escaped, so text from input cannot break it or turn into HTML.
 *
 * <p>The builder is mutable and not thread-safe.
 */
public final class MarkdownTable {
  /** A longer cell does not widen its column any further: the source of the table stays legible. */
  private static final int WIDEST_COLUMN = 48;

  private static final int NARROWEST_COLUMN = 3;

  private final List<List<String>> rows = new ArrayList<>();
  private final int columns;

  private MarkdownTable(List<String> headings) {
    columns = headings.size();
    add(headings);
  }

  private void add(List<String> cells) {
    rows.add(cells.stream().map(MarkdownTable::escaped).toList());
  }

  /**
   * Starts a table.
   *
   * @param headings one per column, at least one
   * @return the table
   * @throws InvalidInputException if there is no heading
   */
  public static MarkdownTable withColumns(String... headings) {
    return new MarkdownTable(Require.nonEmpty("MarkdownTable.columns", List.of(headings)));
  }

  /**
   * Adds a row.
   *
   * @param cells one per column
   * @return this table
   * @throws InvalidInputException if the number of cells is not the number of columns
   */
  public MarkdownTable row(String... cells) {
    if (cells.length != columns) {
      throw InvalidInputException.of("MarkdownTable.row", columns + " cells", "" + cells.length);
    }
    add(List.of(cells));
    return this;
  }

  /**
   * The table, its columns aligned so that it can be read as it is.
   *
   * @return Markdown, ending with a line feed
   */
  public String toText() {
    int[] widths = widths();
    StringBuilder out = new StringBuilder();
    for (int row = 0; row < rows.size(); row++) {
      out.append(line(rows.get(row), widths));
      if (row == 0) {
        out.append(rule(widths));
      }
    }
    return out.toString();
  }

  private int[] widths() {
    int[] widths = new int[columns];
    for (int column = 0; column < columns; column++) {
      widths[column] = NARROWEST_COLUMN;
      for (List<String> row : rows) {
        int width = Math.min(row.get(column).length(), WIDEST_COLUMN);
        widths[column] = Math.max(widths[column], width);
      }
    }
    return widths;
  }

  private static String line(List<String> cells, int[] widths) {
    StringBuilder out = new StringBuilder("|");
    for (int column = 0; column < widths.length; column++) {
      out.append(' ').append(TextLayout.padded(cells.get(column), widths[column])).append(" |");
    }
    return out.append('\n').toString();
  }

  private static String rule(int[] widths) {
    StringBuilder out = new StringBuilder("|");
    for (int width : widths) {
      out.append(' ').append("-".repeat(width)).append(" |");
    }
    return out.append('\n').toString();
  }

  /**
   * Escapes text for Markdown: no markup, no HTML, no line break, no turned reading direction.
   *
   * @param text any text
   * @return the escaped text
   */
  public static String escaped(String text) {
    StringBuilder out = new StringBuilder();
    String plain = TextLayout.plain(text);
    for (int i = 0; i < plain.length(); i++) {
      char c = plain.charAt(i);
      out.append(isHarmless(plain, i) ? String.valueOf(c) : escaped(c));
    }
    return out.toString();
  }

  private static String escaped(char c) {
    return switch (c) {
      case '&' -> "&amp;";
      case '<' -> "&lt;";
      case '>' -> "&gt;";
      case '|', '*', '_', '`', '[', ']', '\\', '~', '#', '$' -> "\\" + c;
      default -> String.valueOf(c);
    };
  }

  /** {@code U_min}, {@code 3 < 4} and {@code A & B} are no markup and stay legible as they are. */
  private static boolean isHarmless(String text, int at) {
    if (at == 0 || at == text.length() - 1) {
      return false;
    }
    char before = text.charAt(at - 1);
    char after = text.charAt(at + 1);
    return switch (text.charAt(at)) {
      case '_' -> Character.isLetterOrDigit(before) && Character.isLetterOrDigit(after);
      case '<', '>', '&' -> before == ' ' && after == ' ';
      default -> false;
    };
  }
}
