package org.wattwright.examples;

import java.util.List;
import org.wattwright.check.OpenItem;
import org.wattwright.examples.sheet.DataTable;
import org.wattwright.examples.sheet.Paragraph;
import org.wattwright.examples.sheet.Section;

/** What is still to be answered, and by whom. */
final class OpenItemSection {
  private OpenItemSection() {}

  static Section of(Design design) {
    List<OpenItem> items =
        design.chosen().map(chosen -> chosen.conversion().openItems()).orElse(List.of());
    Section section = Section.of("Open items").withParts(EstimateSection.of(design.job()));
    if (items.isEmpty()) {
      return section.with(new Paragraph("No check of the chosen pack waits for an answer."));
    }
    DataTable table = DataTable.of("", "Who must answer", "What", "Why", "Checks that wait");
    for (OpenItem item : items) {
      table =
          table.row(
              item.answeredBy().toString(),
              item.input(),
              item.reason() + (item.safety() ? ", safety" : ""),
              String.join(", ", item.checks()));
    }
    return section.with(table);
  }
}
