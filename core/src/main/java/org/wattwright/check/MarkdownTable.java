package org.wattwright.check;

import java.util.ArrayList;
import java.util.List;
import org.wattwright.units.InvalidInputException;

/**
 * A Markdown table; every cell is escaped, so text from input cannot break it or turn into HTML.
 *
 * <p>The builder is mutable and not thread-safe.
 */
public final class MarkdownTable {
  private final List<String> lines = new ArrayList<>();
  private final int columns;

  private MarkdownTable(List<String> headings) {
    columns = headings.size();
    lines.add(line(headings));
    lines.add("|" + " --- |".repeat(columns));
  }

  /**
   * Starts a table.
   *
   * @param headings one per column
   * @return the table
   */
  public static MarkdownTable withColumns(String... headings) {
    return new MarkdownTable(List.of(headings));
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
    lines.add(line(List.of(cells)));
    return this;
  }

  /**
   * The table.
   *
   * @return Markdown, ending with a line feed
   */
  public String toText() {
    return String.join("\n", lines) + "\n";
  }

  /**
   * Escapes text for Markdown: no markup, no HTML, no line break.
   *
   * @param text any text
   * @return the escaped text
   */
  public static String escaped(String text) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      out.append(escaped(text.charAt(i)));
    }
    return out.toString();
  }

  private static String escaped(char c) {
    return switch (c) {
      case '&' -> "&amp;";
      case '<' -> "&lt;";
      case '>' -> "&gt;";
      case '|' -> "\\|";
      case '*' -> "\\*";
      case '_' -> "\\_";
      case '`' -> "\\`";
      case '~' -> "\\~";
      case '[' -> "\\[";
      case ']' -> "\\]";
      case '\\' -> "\\\\";
      default -> Character.isISOControl(c) ? " " : String.valueOf(c);
    };
  }

  private static String line(List<String> cells) {
    StringBuilder out = new StringBuilder("|");
    for (String cell : cells) {
      out.append(' ').append(escaped(cell)).append(" |");
    }
    return out.toString();
  }
}
