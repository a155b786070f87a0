package org.wattwright.examples;

import java.util.ArrayList;
import java.util.List;
import org.wattwright.check.Basis;
import org.wattwright.conversion.DataTable;
import org.wattwright.conversion.Paragraph;
import org.wattwright.conversion.Section;
import org.wattwright.examples.job.CellInput;
import org.wattwright.examples.job.JobInput;
import org.wattwright.examples.job.Statement;
import org.wattwright.examples.job.VehicleInput;

/**
 * The inputs that somebody estimated: each is a question to be answered before parts are ordered.
 */
final class EstimateSection {
  private EstimateSection() {}

  static Section of(JobInput job) {
    Section section = Section.of("Estimated inputs");
    List<String[]> rows = rows(job);
    if (rows.isEmpty()) {
      return section.with(new Paragraph("No input is marked as estimated."));
    }
    DataTable table = DataTable.of("", "What", ">Value", "Estimated by", "Stands in");
    for (String[] row : rows) {
      table = table.row(row);
    }
    return section.with(
        new Paragraph(
            "Each of these wants a measurement or a data sheet. Until then every result that rests on it is "
                + "marked as estimated, and a safety check that rests on it is at most a caution."),
        table);
  }

  private static List<String[]> rows(JobInput job) {
    List<String[]> rows = new ArrayList<>();
    List<Statement> statements = new ArrayList<>(job.statements());
    job.weighed().ifPresent(weighed -> statements.addAll(weighed.statements()));
    job.drive().ifPresent(drive -> statements.addAll(drive.statements()));
    for (Statement statement : statements) {
      if (statement.basis() == Basis.ESTIMATED) {
        rows.add(
            new String[] {
              statement.what(), statement.value(), statement.source(), statement.origin().toString()
            });
      }
    }
    job.cells().forEach(cell -> rows.addAll(rows(cell)));
    job.modules().stream()
        .filter(module -> module.basis() == Basis.ESTIMATED)
        .forEach(
            module -> rows.add(all(module.name(), module.source(), module.origin().toString())));
    job.devices().stream()
        .filter(device -> device.basis() == Basis.ESTIMATED)
        .forEach(
            device -> rows.add(all(device.name(), device.source(), device.origin().toString())));
    job.weighed().ifPresent(weighed -> rows.addAll(rows(weighed)));
    return rows;
  }

  private static List<String[]> rows(VehicleInput weighed) {
    List<String[]> rows = new ArrayList<>();
    weighed.parts().stream()
        .filter(part -> part.basis() == Basis.ESTIMATED)
        .forEach(
            part ->
                rows.add(
                    new String[] {
                      "mass and place of " + part.name(),
                      part.mass().toString(),
                      part.source(),
                      part.origin().toString()
                    }));
    weighed.bays().stream()
        .filter(bay -> bay.basis() == Basis.ESTIMATED)
        .forEach(bay -> rows.add(all(bay.name(), bay.source(), bay.origin().toString())));
    return rows;
  }

  private static List<String[]> rows(CellInput cell) {
    List<String[]> rows = new ArrayList<>();
    String origin = cell.origin().toString();
    if (cell.basis() == Basis.ESTIMATED) {
      rows.add(all(cell.name(), cell.source(), origin));
    }
    if (cell.capacity().basis() == Basis.ESTIMATED) {
      String capacity = cell.capacity().present().toString();
      rows.add(new String[] {"capacity of " + cell.name(), capacity, cell.source(), origin});
    }
    if (cell.resistances().basis() == Basis.ESTIMATED) {
      boolean isStated = cell.resistances().discharge().isPresent();
      String by = isStated ? "resistance.csv" : "chemistry, capacity and age";
      rows.add(new String[] {"resistance of " + cell.name(), "", by, origin});
    }
    return rows;
  }

  private static String[] all(String part, String source, String origin) {
    return new String[] {"all data of " + part, "", source, origin};
  }
}
