package org.wattwright.examples;

import org.wattwright.battery.Direction;
import org.wattwright.battery.Pack;
import org.wattwright.battery.PackState;
import org.wattwright.check.Worksheet;
import org.wattwright.conversion.Paragraph;
import org.wattwright.conversion.Section;
import org.wattwright.conversion.SheetSections;
import org.wattwright.conversion.Working;
import org.wattwright.examples.job.Requirement;

/** The chosen pack and its working. */
final class PackSection {
  private PackSection() {}

  static Section of(Design design, Design.Chosen chosen) {
    Requirement requirement = design.job().requirement();
    Pack pack = chosen.conversion().pack();
    PackState peak =
        PackState.of(requirement.peak().stateOfCharge(), requirement.peak().temperature());
    Worksheet power = pack.powerWorksheet(peak, Direction.DISCHARGE, requirement.peak().duration());
    Section section =
        SheetSections.of(chosen.conversion())
            .pack()
            .withParts(
                Section.of("Working of the search")
                    .with(
                        new Paragraph(
                            "Without link cables, because the search knows no bays; everything below this "
                                + "table counts them."),
                        new Working(chosen.candidate().worksheet())));
    if (chosen.links().worksheet().isPresent()) {
      section =
          section.withParts(
              Section.of("Working of the link cables")
                  .with(new Working(chosen.links().worksheet().get())));
    }
    return section.withParts(Section.of("Working of the peak power").with(new Working(power)));
  }
}
