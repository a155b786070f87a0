package org.wattwright.conductor;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.MarkdownTable;
import org.wattwright.check.Outcome;

/**
 * The table of sizes: one line a candidate, smallest first, with each criterion's margin.
 *
 * <p>Immutable and thread-safe.
 *
 * @param lines one a candidate, smallest first
 */
public record SizingTable(List<SizingLine> lines) {
  /**
   * Copies the list.
   *
   * @param lines one a candidate, smallest first
   */
  public SizingTable {
    lines = List.copyOf(lines);
  }

  private List<SizingCriterion> criteria() {
    Set<SizingCriterion> asked = EnumSet.noneOf(SizingCriterion.class);
    for (SizingLine line : lines) {
      for (SizingCriterion criterion : SizingCriterion.values()) {
        line.check(criterion).ifPresent(check -> asked.add(criterion));
      }
    }
    return List.copyOf(asked);
  }

  private List<List<String>> cells() {
    List<SizingCriterion> criteria = criteria();
    List<List<String>> rows = new ArrayList<>();
    List<String> headings = new ArrayList<>(List.of("size"));
    criteria.forEach(criterion -> headings.add(criterion.toString()));
    headings.add("verdict");
    rows.add(headings);
    for (SizingLine line : lines) {
      List<String> row = new ArrayList<>(List.of(line.label()));
      criteria.forEach(
          criterion -> row.add(line.check(criterion).map(SizingTable::cell).orElse("")));
      row.add(Outcome.worstOf(line.checks()).toString());
      rows.add(row);
    }
    return rows;
  }

  private static String cell(Check check) {
    return check.margin().map(Figure::toString).orElse(check.outcome().toString());
  }

  /**
   * Plain text in columns: the margin to each limit, negative where it is broken.
   *
   * @return the table, ending with a line feed
   */
  public String toText() {
    List<List<String>> rows = cells();
    int[] widths = new int[rows.get(0).size()];
    for (List<String> row : rows) {
      for (int i = 0; i < widths.length; i++) {
        widths[i] = Math.max(widths[i], row.get(i).length());
      }
    }
    StringBuilder out = new StringBuilder();
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder();
      for (int i = 0; i < widths.length; i++) {
        line.append(row.get(i)).append(" ".repeat(widths[i] - row.get(i).length() + 2));
      }
      out.append(line.toString().stripTrailing()).append('\n');
    }
    return out.toString();
  }

  /**
   * A Markdown table of the same cells.
   *
   * @return the table, ending with a line feed
   */
  public String toMarkdown() {
    List<List<String>> rows = cells();
    MarkdownTable table = MarkdownTable.withColumns(rows.get(0).toArray(String[]::new));
    rows.stream().skip(1).forEach(row -> table.row(row.toArray(String[]::new)));
    return table.toText();
  }

  /**
   * Number of candidates and of those that pass.
   *
   * @return for example {@code 12 sizes, 4 pass}
   */
  @Override
  public String toString() {
    return lines.size() + " sizes, " + lines.stream().filter(SizingLine::passes).count() + " pass";
  }
}
