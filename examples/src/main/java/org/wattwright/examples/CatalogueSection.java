package org.wattwright.examples;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wattwright.conversion.DataTable;
import org.wattwright.conversion.Paragraph;
import org.wattwright.conversion.Section;
import org.wattwright.examples.job.CircuitsInput;
import org.wattwright.examples.job.JobInput;
import org.wattwright.examples.job.StatedTable;

/** The parts that the circuits were chosen from, as stated, each with its source. */
final class CatalogueSection {
  /** That tell a row from the others. */
  private static final int KEY_COLUMNS = 2;

  /** Name, one quantity, another one: a point of a curve. */
  private static final int CURVE_COLUMNS = 3;

  /** Beside those, on a page in upright format. */
  private static final int MOST_COLUMNS = 8;

  private static final Map<String, String> TITLES =
      Map.of(
          "cables.csv", "Cables",
          "fuses.csv", "Fuses",
          "fuse-curves.csv", "Curves of the fuses",
          "contactors.csv", "Contactors",
          "contactor-loads.csv", "What contactors carry for a time",
          "precharge-resistors.csv", "Pre-charge resistors");

  private CatalogueSection() {}

  static Optional<Section> of(JobInput job) {
    return job.circuits().map(CatalogueSection::of);
  }

  private static Section of(CircuitsInput circuits) {
    Section section =
        Section.of("Catalogues")
            .with(
                new Paragraph(
                    "The parts that the circuits were chosen from, as stated; what a cell leaves"
                        + " open is not known. The lugs are stated among the circuits."));
    for (StatedTable table : circuits.catalogue().stated()) {
      Section part = Section.of(TITLES.getOrDefault(table.file(), table.file()));
      for (DataTable piece : pieces(compact(table))) {
        part = part.with(piece);
      }
      section = section.withParts(part);
    }
    return section;
  }

  /** Points of a curve stand in one row. */
  private static StatedTable compact(StatedTable table) {
    if (table.columns().size() != CURVE_COLUMNS) {
      return table;
    }
    Map<String, List<String>> points = new LinkedHashMap<>();
    for (List<String> row : table.rows()) {
      points
          .computeIfAbsent(row.get(0), any -> new ArrayList<>())
          .add(row.get(1) + ": " + row.get(2));
    }
    return new StatedTable(
        table.file(),
        List.of(
            table.columns().get(0), table.columns().get(1) + ": " + table.columns().get(2) + " "),
        points.entrySet().stream()
            .map(e -> List.of(e.getKey(), String.join(", ", e.getValue())))
            .toList());
  }

  /** A table too wide for the page becomes several, each with the columns that name the row. */
  private static List<DataTable> pieces(StatedTable table) {
    int others = Math.max(0, table.columns().size() - KEY_COLUMNS);
    int count = Math.max(1, (others + MOST_COLUMNS - 1) / MOST_COLUMNS);
    List<DataTable> pieces = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      int from = KEY_COLUMNS + others * i / count;
      int to = KEY_COLUMNS + others * (i + 1) / count;
      String caption = count == 1 ? table.file() : table.file() + ", " + (i + 1) + " of " + count;
      pieces.add(piece(table, caption, columns(table, from, to)));
    }
    return pieces;
  }

  private static List<Integer> columns(StatedTable table, int from, int to) {
    List<Integer> columns = new ArrayList<>();
    for (int i = 0; i < table.columns().size(); i++) {
      if (i < KEY_COLUMNS || (i >= from && i < to)) {
        columns.add(i);
      }
    }
    return columns;
  }

  private static DataTable piece(StatedTable table, String caption, List<Integer> columns) {
    return new DataTable(
        caption,
        columns.stream()
            .map(i -> new DataTable.Column(table.columns().get(i), isNumeric(table, i)))
            .toList(),
        table.rows().stream().map(row -> columns.stream().map(row::get).toList()).toList());
  }

  /** A column with a unit holds numbers. */
  private static boolean isNumeric(StatedTable table, int column) {
    return table.columns().get(column).endsWith("]");
  }
}
