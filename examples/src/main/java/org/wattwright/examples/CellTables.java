package org.wattwright.examples;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import org.wattwright.conversion.DataTable;
import org.wattwright.conversion.Section;
import org.wattwright.examples.job.CellInput;
import org.wattwright.examples.job.StateGrid;

/** The tables of each cell over state of charge and temperature, as the job states them. */
final class CellTables {
  private CellTables() {}

  static Section of(List<CellInput> cells) {
    Section section = Section.of("Cell tables");
    for (CellInput cell : cells) {
      section =
          section.with(
              table("Open-circuit voltage of " + cell.name(), cell.voltages().openCircuit()));
      section = withResistance(section, cell);
    }
    return section;
  }

  private static Section withResistance(Section section, CellInput cell) {
    Section longer = section;
    if (cell.resistances().discharge().isPresent()) {
      String caption = "Resistance of " + cell.name() + ", discharge";
      longer = longer.with(table(caption, cell.resistances().discharge().get()));
    }
    if (cell.resistances().charge().isPresent()) {
      String caption = "Resistance of " + cell.name() + ", charge";
      longer = longer.with(table(caption, cell.resistances().charge().get()));
    }
    return longer;
  }

  private static <Q extends Quantity<Q>> DataTable table(String caption, StateGrid<Q> grid) {
    List<DataTable.Column> columns = new ArrayList<>();
    columns.add(new DataTable.Column("State of charge", true));
    grid.temperatures().forEach(t -> columns.add(new DataTable.Column(t.toString(), true)));
    List<List<String>> rows = new ArrayList<>();
    for (StateGrid.Row<Q> row : grid.rows()) {
      List<String> cells = new ArrayList<>();
      cells.add(row.stateOfCharge().toString());
      row.values().forEach(value -> cells.add(value.toString()));
      rows.add(cells);
    }
    return new DataTable(caption, columns, rows);
  }
}
