package org.wattwright.conversion;

import java.util.List;
import org.wattwright.check.Check;
import org.wattwright.check.Checks;
import org.wattwright.check.Figure;

/**
 * Checks with their verdicts.
 *
 * @param checks in the order to print
 */
public record CheckList(List<Check> checks) implements Block {
  /**
   * Copies the list.
   *
   * @param checks in the order to print
   */
  public CheckList {
    checks = List.copyOf(checks);
  }

  /**
   * The headings of a table of checks.
   *
   * @return one a column
   */
  public static List<String> headings() {
    return List.of(
        "Verdict",
        "Check",
        "Actual and limit",
        "Margin",
        "Basis",
        "Source",
        "Remark",
        "Area",
        "Code");
  }

  /**
   * A check as the cells of a row.
   *
   * @param check the check
   * @return one text a column; the verdict stands first
   */
  public static List<String> cells(Check check) {
    return List.of(
        check.outcome().toString(),
        check.what(),
        check.comparison(),
        check.margin().map(Figure::toString).orElse(""),
        check.basis().toString(),
        check.source().toString(),
        check.remark(),
        ReviewArea.of(check).toString(),
        check.code());
  }

  /**
   * The verdicts.
   *
   * @return for example {@code 2 CAUTION, 7 PASS}
   */
  @Override
  public String toString() {
    return Checks.summary(checks);
  }

  @Override
  public void accept(BlockWriter writer) {
    writer.checkList(this);
  }
}
