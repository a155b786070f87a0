package org.wattwright.examples;

import static org.wattwright.units.Measures.format;

import java.util.List;
import org.wattwright.check.Check;
import org.wattwright.check.Outcome;
import org.wattwright.conversion.DataTable;
import org.wattwright.conversion.Paragraph;
import org.wattwright.conversion.Section;
import org.wattwright.conversion.Working;
import org.wattwright.installation.Retention;
import org.wattwright.units.Kind;

/** How the battery boxes are bolted in: every pattern tried, and the checks of the ones built. */
final class MountingSection {
  private MountingSection() {}

  static Section of(MountingDesign design) {
    DataTable table =
        DataTable.of(
            "Patterns of fixings, in the order tried; the last one of a box is built",
            "Box",
            "Pattern",
            "Verdict on strength",
            ">Mass",
            ">Would carry",
            "Gives first",
            "Rule",
            "Source");
    for (MountingDesign.Tried each : design.tried()) {
      table = row(table, each);
    }
    Section section =
        Section.of("Mountings")
            .with(
                new Paragraph(
                    "Forces of the fixings by the elastic method for a rigid base; the metal around"
                        + " the holes, the boxes and their lids need their own proof. Local codes"
                        + " and the approving engineer decide which accelerations apply."),
                table);
    for (MountingDesign.Tried each : design.built()) {
      section =
          section.withParts(
              Section.of("Mounting of the box " + each.input().bay())
                  .with(SectionChecks.of(each.retention().checks()))
                  .with(new Working(each.retention().worksheet())));
    }
    return section;
  }

  private static DataTable row(DataTable table, MountingDesign.Tried tried) {
    Retention retention = tried.retention();
    return table.row(
        tried.input().bay(),
        tried.input().pattern(),
        verdict(retention.checks()).toString(),
        format(retention.mass().value(), Kind.MASS),
        retention.carriedMass().map(mass -> format(mass, Kind.MASS)).orElse("nothing"),
        retention.governing().map(Object::toString).orElse("turns freely"),
        tried.input().rules().toString(),
        tried.input().source());
  }

  /** Of the strength alone: what is not known of the clamping stays in the list of checks. */
  private static Outcome verdict(List<Check> checks) {
    return Outcome.worstOf(
        checks.stream().filter(check -> !check.code().equals("installation.slip")).toList());
  }
}
