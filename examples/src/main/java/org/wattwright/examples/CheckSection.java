package org.wattwright.examples;

import org.wattwright.examples.sheet.CheckList;
import org.wattwright.examples.sheet.Paragraph;
import org.wattwright.examples.sheet.Section;

/** Every check of the conversion, worst first. */
final class CheckSection {
  private CheckSection() {}

  static Section of(Design.Chosen chosen) {
    return Section.of("Checks")
        .with(
            new Paragraph("Worst first. The pack counts with its link cables."),
            new CheckList(chosen.conversion().review()));
  }
}
