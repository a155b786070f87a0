package org.wattwright.examples.sheet;

import java.util.List;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;

/** Checks as the cells of a table; the verdict stands first. */
final class CheckTable {
  static final List<String> HEADINGS =
      List.of("Verdict", "Check", "Actual", "Limit", "Margin", "Basis", "Source", "Remark");

  private CheckTable() {}

  static List<String> cells(Check check) {
    String limit = check.relation().sign() + " " + check.limit().map(Figure::toString).orElse("");
    return List.of(
        check.outcome().toString(),
        check.what(),
        check.actual().map(Figure::toString).orElse(""),
        limit.strip(),
        check.margin().map(Figure::toString).orElse(""),
        check.basis().toString(),
        check.source().toString(),
        remark(check));
  }

  private static String remark(Check check) {
    if (check.missing().isEmpty()) {
      return check.note();
    }
    String missing = "missing: " + String.join(", ", check.missing());
    return check.note().isEmpty() ? missing : missing + "; " + check.note();
  }
}
