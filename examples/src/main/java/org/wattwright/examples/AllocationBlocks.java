package org.wattwright.examples;

import static org.wattwright.units.Measures.format;

import java.util.List;
import java.util.Optional;
import org.wattwright.check.Figure;
import org.wattwright.conversion.BulletList;
import org.wattwright.conversion.DataTable;
import org.wattwright.conversion.Paragraph;
import org.wattwright.conversion.Section;
import org.wattwright.conversion.Working;
import org.wattwright.layout.Allocation;
import org.wattwright.layout.AllocationResult;
import org.wattwright.units.Kind;
import org.wattwright.vehicle.LoadCase;

/**
 * What the allocator found: the split, the next best ones, and its working; or why there is none.
 */
final class AllocationBlocks {
  private AllocationBlocks() {}

  static Section addTo(Section section, AllocationResult found, DataTable bays) {
    if (found.best().isEmpty()) {
      return section.with(
          new Paragraph(
              "No split of the modules meets every limit. The bays are shown filled one after the other, so "
                  + "that the table of loads tells what is too much."),
          new BulletList(found.whyNone().lines().toList()),
          bays);
    }
    Allocation best = found.best().get();
    return section.with(
        new Paragraph(
            "The best of all splits that keep every limit in every load case ("
                + found.coverage()
                + "): front share within its band of the nearest that can be had, then fewest enclosures, then shortest link cable, "
                + "then lowest centre of gravity."),
        bays,
        alternatives(best, found.alternatives()),
        new Working(best.worksheet()));
  }

  private static DataTable alternatives(Allocation best, List<Allocation> others) {
    DataTable table =
        DataTable.of(
            "The best split and the next best",
            "Modules by bay",
            ">Front share, kerb",
            ">Off the wanted share",
            ">Enclosures",
            ">Link cable",
            "");
    table = row(table, best, "chosen");
    for (Allocation other : others) {
      table = row(table, other, "");
    }
    return table;
  }

  private static DataTable row(DataTable table, Allocation allocation, String remark) {
    List<String> counts =
        allocation.counts().entrySet().stream()
            .map(bay -> bay.getKey() + " " + bay.getValue())
            .toList();
    return table.row(
        String.join(", ", counts),
        Figure.share(allocation.frontShare(LoadCase.KERB)).toString(),
        text(allocation.frontShareDeviation().map(d -> Figure.share(d).toString())),
        Integer.toString(allocation.enclosureCount()),
        text(allocation.linkLength().map(length -> format(length, Kind.LENGTH))),
        remark);
  }

  private static String text(Optional<String> value) {
    return value.orElse("not stated");
  }
}
