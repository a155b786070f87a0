package org.wattwright.examples;

import java.util.List;
import org.wattwright.battery.Pack;
import org.wattwright.check.Check;
import org.wattwright.check.Outcome;
import org.wattwright.conversion.BulletList;
import org.wattwright.conversion.Conversion;
import org.wattwright.conversion.Paragraph;
import org.wattwright.conversion.Section;

/** The answer in a few lines, for the reader who turns no page. */
final class ResultSection {
  private ResultSection() {}

  static Section of(Design design) {
    Section section = Section.of("Result");
    return design
        .chosen()
        .map(chosen -> section.with(new Paragraph(pack(chosen)), summary(chosen)))
        .orElseGet(
            () ->
                section.with(
                    new Paragraph("No pack meets every requirement."),
                    new BulletList(design.found().whyNone().lines().toList())));
  }

  private static String pack(Design.Chosen chosen) {
    return "The pack: "
        + chosen.candidate().moduleCount()
        + " × "
        + chosen.candidate().module().name()
        + ", "
        + chosen.candidate().series()
        + " in series, "
        + chosen.candidate().parallel()
        + (chosen.candidate().parallel() == 1 ? " string." : " strings in parallel.");
  }

  private static BulletList summary(Design.Chosen chosen) {
    Conversion conversion = chosen.conversion();
    Pack pack = conversion.pack();
    List<Check> review = conversion.review();
    return new BulletList(
        List.of(
            pack.toString() + ".",
            "Voltages: " + conversion.windows().envelope() + ".",
            "Verdict of "
                + review.size()
                + " checks: "
                + count(review, Outcome.PASS)
                + ", "
                + count(review, Outcome.CAUTION)
                + ", "
                + count(review, Outcome.NOT_CHECKED)
                + ", "
                + count(review, Outcome.FAIL)
                + "."));
  }

  private static String count(List<Check> review, Outcome outcome) {
    long count = review.stream().filter(check -> check.outcome() == outcome).count();
    return count + " " + outcome;
  }
}
