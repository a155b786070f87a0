package org.wattwright.conversion;

import java.util.List;
import java.util.function.Predicate;
import org.wattwright.check.Check;
import org.wattwright.check.Checks;
import org.wattwright.check.Figure;
import org.wattwright.check.Outcome;

/** The checks of a review: a table of areas, all that is not a pass, and behind it the passes. */
final class ReviewSection {
  static final String PASSED = "Checks passed";

  private static final Predicate<Check> PASS = check -> check.outcome() == Outcome.PASS;

  private ReviewSection() {}

  static Section summary(List<Check> review) {
    Section section =
        Section.of("Checks")
            .with(
                new Paragraph(
                    review.size()
                        + " checks: "
                        + Checks.summary(review)
                        + ". Nearest to its limit: the largest share of a limit that is used, of"
                        + " those that compare amounts; temperatures and counts aside."),
                areas(review));
    List<Check> open = Checks.bySeverity(review.stream().filter(PASS.negate()).toList());
    return open.isEmpty()
        ? section.with(new Paragraph("Every check is a pass; an appendix has them all."))
        : section.with(
            new Paragraph("All that is not a pass, worst first; an appendix has the passes."),
            new CheckList(open));
  }

  /**
   * Checks inside another section: how many of each verdict, then those that are not a pass; the
   * passes stand in an appendix.
   *
   * @param what they are about, as a sentence begins
   */
  static Block[] open(String what, List<Check> checks) {
    List<Check> open = checks.stream().filter(PASS.negate()).toList();
    Paragraph counts = new Paragraph(what + ": " + Checks.summary(checks) + ".");
    return open.isEmpty()
        ? new Block[] {counts}
        : new Block[] {counts, new CheckList(Checks.bySeverity(open))};
  }

  private static DataTable areas(List<Check> review) {
    DataTable table =
        DataTable.of(
            "By area",
            "Area",
            ">FAIL",
            ">NOT CHECKED",
            ">CAUTION",
            ">PASS",
            "Nearest to its limit",
            ">Used",
            "Actual and limit");
    for (AreaVerdict area : AreaVerdict.of(review)) {
      table =
          table.row(
              area.area().toString(),
              count(area, Outcome.FAIL),
              count(area, Outcome.NOT_CHECKED),
              count(area, Outcome.CAUTION),
              count(area, Outcome.PASS),
              area.tightest().map(Check::what).orElse(""),
              area.tightest().flatMap(Check::use).map(s -> Figure.share(s).toString()).orElse(""),
              area.tightest().map(Check::comparison).orElse(""));
    }
    return table;
  }

  private static String count(AreaVerdict area, Outcome outcome) {
    int count = area.count(outcome);
    return count == 0 ? "–" : Integer.toString(count);
  }

  /** The passes, a part for each area. */
  static Section passed(List<Check> review) {
    Section section = Section.of(PASSED);
    List<AreaVerdict> areas = AreaVerdict.of(review.stream().filter(PASS).toList());
    if (areas.isEmpty()) {
      return section.with(new Paragraph("No check is a pass."));
    }
    for (AreaVerdict area : areas) {
      String name = area.area().toString();
      section =
          section.withParts(
              Section.of(Character.toUpperCase(name.charAt(0)) + name.substring(1))
                  .with(new CheckList(area.checks())));
    }
    return section;
  }
}
