package org.wattwright.examples;

import java.util.List;
import org.wattwright.check.Check;
import org.wattwright.check.Checks;
import org.wattwright.check.Outcome;
import org.wattwright.conversion.Block;
import org.wattwright.conversion.CheckList;
import org.wattwright.conversion.Paragraph;

/** Checks inside a section: those that passed are counted, and stand in the appendix of passes. */
final class SectionChecks {
  private SectionChecks() {}

  static Block[] of(List<Check> checks) {
    List<Check> open =
        Checks.bySeverity(
            checks.stream().filter(check -> check.outcome() != Outcome.PASS).toList());
    int passed = checks.size() - open.size();
    if (passed == 0) {
      return new Block[] {new CheckList(open)};
    }
    String some = open.isEmpty() ? "All " + passed : passed + " of " + checks.size();
    Paragraph count =
        new Paragraph(some + " checks pass; they stand in the appendix of checks passed.");
    return open.isEmpty() ? new Block[] {count} : new Block[] {count, new CheckList(open)};
  }
}
