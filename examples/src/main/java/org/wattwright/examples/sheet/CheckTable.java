package org.wattwright.examples.sheet;

import java.util.List;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;

/** Checks as the cells of a table; the verdict stands first. */
final class CheckTable {
  static final List<String> HEADINGS =
      List.of(
          "Verdict", "Check", "Actual and limit", "Margin", "Basis", "Source", "Remark", "Code");

  private CheckTable() {}

  static List<String> cells(Check check) {
    return List.of(
        check.outcome().toString(),
        check.what(),
        check.comparison(),
        check.margin().map(Figure::toString).orElse(""),
        check.basis().toString(),
        check.source().toString(),
        check.remark(),
        check.code());
  }
}
