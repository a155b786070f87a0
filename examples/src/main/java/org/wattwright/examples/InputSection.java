package org.wattwright.examples;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import org.wattwright.check.Figure;
import org.wattwright.conversion.DataTable;
import org.wattwright.conversion.Section;
import org.wattwright.examples.job.CellInput;
import org.wattwright.examples.job.ChargingPointInput;
import org.wattwright.examples.job.CircuitInput;
import org.wattwright.examples.job.CircuitsInput;
import org.wattwright.examples.job.DeviceInput;
import org.wattwright.examples.job.DriveInput;
import org.wattwright.examples.job.JobInput;
import org.wattwright.examples.job.LowVoltageInput;
import org.wattwright.examples.job.ModuleInput;
import org.wattwright.examples.job.Statement;

/** What went in: requirement, cells, modules and devices, each with what it rests on. */
final class InputSection {
  private static final String NOT_STATED = "not stated";

  private InputSection() {}

  static Section of(JobInput job) {
    Section section =
        Section.of("Inputs")
            .withParts(
                Section.of("What is asked for").with(statements(job.statements())),
                Section.of("Cells").with(cells(job.cells()), currents(job.cells())),
                Section.of("Candidate modules").with(modules(job.modules())),
                Section.of("Devices").with(windows(job.devices()), ratings(job.devices())),
                charging(job));
    Section wired =
        job.circuits().map(circuits -> section.withParts(circuits(circuits))).orElse(section);
    Section whole =
        job.controls()
            .map(
                controls ->
                    wired.withParts(
                        Section.of("Vacuum, settings and controls as stated")
                            .with(statements(controls.statements()))))
            .orElse(wired);
    Section withDrive =
        job.drive()
            .map(
                drive ->
                    whole.withParts(
                        Section.of("Drive as stated")
                            .with(statements(drive.statements()), torque(drive))))
            .orElse(whole);
    return job.weighed()
        .map(
            w ->
                withDrive.withParts(
                    Section.of("Vehicle as weighed").with(statements(w.statements()))))
        .orElse(withDrive);
  }

  private static DataTable torque(DriveInput drive) {
    DataTable table =
        DataTable.of("Torque of " + drive.motor().device(), ">Speed", ">Peak", ">Continuous");
    for (DriveInput.TorquePoint point : drive.motor().curve()) {
      table =
          table.row(
              point.speed().toString(), point.peak().toString(), point.continuous().toString());
    }
    return table;
  }

  private static Section charging(JobInput job) {
    List<Statement> lowVoltage =
        job.lowVoltage().map(LowVoltageInput::statements).orElse(List.of());
    return Section.of("Charging points and low voltage")
        .with(
            statements(job.chargingPoints().stream().map(ChargingPointInput::stated).toList()),
            statements(lowVoltage));
  }

  private static Section circuits(CircuitsInput input) {
    DataTable table =
        DataTable.of(
            "", "Circuit", "Role", "Fed from", ">Length out", ">Back", "Laid", "Basis", "Source");
    for (CircuitInput circuit : input.circuits()) {
      table =
          table.row(
              circuit.name(),
              circuit.role().toString(),
              circuit.feed().from().or(() -> circuit.feed().supply()).orElse(NOT_STATED),
              text(circuit.route().out()),
              text(circuit.route().back()),
              circuit.route().installation().map(Object::toString).orElse(NOT_STATED),
              circuit.basis().toString(),
              circuit.source());
    }
    return Section.of("Circuits as stated").with(table, statements(input.statements()));
  }

  private static DataTable statements(List<Statement> statements) {
    DataTable table = DataTable.of("", "What", ">Value", "Basis", "Source");
    for (Statement statement : statements) {
      table =
          table.row(
              statement.what(),
              statement.value(),
              statement.basis().toString(),
              statement.source());
    }
    return table;
  }

  private static DataTable cells(List<CellInput> cells) {
    DataTable table =
        DataTable.of(
            "Capacity and voltage",
            "Cell",
            "Chemistry",
            ">Capacity",
            "Basis of capacity",
            ">Lowest",
            ">Highest",
            ">Mass",
            "Basis of resistance",
            "Source");
    for (CellInput cell : cells) {
      table =
          table.row(
              cell.name(),
              cell.chemistry().toString(),
              cell.capacity().present().toString(),
              cell.capacity().basis().toString(),
              cell.voltages().minimum().toString(),
              cell.voltages().maximum().toString(),
              cell.mass().toString(),
              cell.resistances().basis().toString(),
              cell.source());
    }
    return table;
  }

  private static DataTable currents(List<CellInput> cells) {
    DataTable table =
        DataTable.of(
            "Currents and temperatures",
            "Cell",
            "Way",
            ">Continuous",
            ">For a limited time",
            ">Coldest",
            ">Hottest",
            "Basis");
    for (CellInput cell : cells) {
      table = table.row(currents(cell, "discharge", cell.discharge()));
      table = table.row(currents(cell, "charge", cell.charge()));
    }
    return table;
  }

  private static String[] currents(CellInput cell, String way, CellInput.Currents currents) {
    return new String[] {
      cell.name(),
      way,
      currents.continuous().toString(),
      currents
          .pulse()
          .map(pulse -> pulse.current() + " for " + pulse.duration())
          .orElse(NOT_STATED),
      currents.coldest().toString(),
      currents.hottest().toString(),
      cell.basis().toString()
    };
  }

  private static DataTable modules(List<ModuleInput> modules) {
    DataTable table =
        DataTable.of(
            "",
            "Module",
            "Cell",
            ">Series × parallel",
            ">Mass",
            "Size",
            ">Price",
            "State",
            "Basis",
            "Source");
    for (ModuleInput module : modules) {
      table =
          table.row(
              module.name(),
              module.cell().name(),
              module.series() + " × " + module.parallel(),
              module.mass().toString(),
              module.size().toString(),
              module.price().toString(),
              module.state().toString(),
              module.basis().toString(),
              module.source());
    }
    return table;
  }

  private static DataTable windows(List<DeviceInput> devices) {
    DataTable table =
        DataTable.of(
            "Voltage windows",
            "Device",
            "Role",
            ">Operating",
            ">Full performance",
            ">Absolute maximum",
            "Basis",
            "Source");
    for (DeviceInput device : devices) {
      DeviceInput.Window window = device.window();
      table =
          table.row(
              device.name(),
              device.role().toString(),
              window.operatingMinimum() + " … " + window.operatingMaximum(),
              text(window.fullMinimum()) + " … " + text(window.fullMaximum()),
              window.absoluteMaximum().toString(),
              device.basis().toString(),
              device.source());
    }
    return table;
  }

  private static DataTable ratings(List<DeviceInput> devices) {
    DataTable table =
        DataTable.of(
            "Ratings",
            "Device",
            ">Peak power",
            ">Continuous power",
            ">Current",
            ">From the mains",
            ">Capacitance",
            ">Efficiency",
            ">Mass");
    for (DeviceInput device : devices) {
      table =
          table.row(
              device.name(),
              text(device.power().peak()),
              device.power().continuous().toString(),
              text(device.current()),
              text(device.inputCurrent()),
              text(device.capacitance()),
              device.efficiency().map(share -> Figure.share(share).toString()).orElse(NOT_STATED),
              device.mass().toString());
    }
    return table;
  }

  private static <Q extends Quantity<Q>> String text(Optional<Quantity<Q>> quantity) {
    return quantity.map(Quantity::toString).orElse(NOT_STATED);
  }
}
