package org.wattwright.examples;

import org.wattwright.conversion.Section;
import org.wattwright.conversion.SheetSections;

/** What is still to be answered, and by whom. */
final class OpenItemSection {
  private OpenItemSection() {}

  static Section of(Design design) {
    return design
        .chosen()
        .map(chosen -> SheetSections.of(chosen.conversion()).openItems())
        .orElseGet(() -> Section.of("Open items"))
        .withParts(EstimateSection.of(design.job()));
  }
}
