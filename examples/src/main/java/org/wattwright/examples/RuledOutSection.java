package org.wattwright.examples;

import org.wattwright.conversion.DataTable;
import org.wattwright.conversion.Paragraph;
import org.wattwright.conversion.Section;
import org.wattwright.layout.PackSearch;
import org.wattwright.layout.Rejection;

/** What ruled out the packs that were looked at and not found good. */
final class RuledOutSection {
  private RuledOutSection() {}

  static Section of(PackSearch.Result found) {
    DataTable table =
        DataTable.of(
            "",
            "Requirement",
            ">Packs that break it",
            ">By this alone",
            "What would admit one more");
    for (Rejection rejection : found.rejections()) {
      table =
          table.row(
              rejection.reason(),
              Long.toString(rejection.count()),
              Long.toString(rejection.aloneCount()),
              rejection.relaxation().map(Object::toString).orElse(""));
    }
    return Section.of("What ruled out the rest")
        .with(
            new Paragraph(
                "A pack may break several requirements. The last column names the smallest change of a limit "
                    + "that would admit a pack that breaks it alone."),
            table);
  }
}
