package org.wattwright.check;

import java.util.Comparator;
import java.util.List;

/** Lists of checks as reports print them. */
public final class Checks {
  /** Worst first, then by code and words, so that the order never depends on the input's. */
  private static final Comparator<Check> BY_SEVERITY =
      Comparator.comparing(Check::outcome)
          .reversed()
          .thenComparing(Check::code)
          .thenComparing(Check::what);

  private Checks() {}

  /**
   * Sorted by severity, then by code.
   *
   * @param checks any order
   * @return worst first
   */
  public static List<Check> bySeverity(List<Check> checks) {
    return checks.stream().sorted(BY_SEVERITY).toList();
  }

  /**
   * Plain text, one check a line.
   *
   * @param checks in the order to print
   * @return the text, ending with a line feed unless empty
   */
  public static String toText(List<Check> checks) {
    StringBuilder out = new StringBuilder();
    checks.forEach(check -> out.append(check).append('\n'));
    return out.toString();
  }

  /**
   * A Markdown table.
   *
   * @param checks in the order to print
   * @return the table, ending with a line feed
   */
  public static String toMarkdown(List<Check> checks) {
    MarkdownTable table =
        MarkdownTable.withColumns(
            "Verdict", "Check", "Actual", "Limit", "Margin", "Basis", "Source", "Remark");
    for (Check check : checks) {
      table.row(
          check.outcome().toString(),
          check.what(),
          text(check.actual().orElse(null)),
          (check.relation().sign() + " " + text(check.limit().orElse(null))).strip(),
          text(check.margin().orElse(null)),
          check.basis().toString(),
          check.source().toString(),
          remark(check));
    }
    return table.toText();
  }

  private static String text(@org.jspecify.annotations.Nullable Figure figure) {
    return figure == null ? "" : figure.toString();
  }

  private static String remark(Check check) {
    String missing =
        check.missing().isEmpty() ? "" : "missing: " + String.join(", ", check.missing());
    return missing.isEmpty() || check.note().isEmpty()
        ? missing + check.note()
        : missing + "; " + check.note();
  }
}
