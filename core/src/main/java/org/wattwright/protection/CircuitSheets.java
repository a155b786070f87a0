package org.wattwright.protection;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wattwright.check.Worksheet;
import org.wattwright.conductor.ConductorSizer;
import org.wattwright.units.Kind;

/** The workings of one circuit: each by the kernel that chose or judged. */
final class CircuitSheets {
  private final CircuitAssembly parts;

  CircuitSheets(CircuitAssembly parts) {
    this.parts = parts;
  }

  private Circuit circuit() {
    return parts.of().circuit();
  }

  /** Cable, short circuit, fuse and faults, then pre-charge and discharge, as far as there are. */
  List<Worksheet> all() {
    List<Worksheet> sheets = new ArrayList<>(ofParts());
    precharge().ifPresent(result -> sheets.add(titled("Pre-charge", result.worksheet())));
    circuit()
        .bus()
        .discharge(Kind.VOLTAGE.ofSi(parts.of().numbers().highestV()))
        .ifPresent(bus -> sheets.add(titled("Discharge", bus.worksheet(DischargeRule.BLEED))));
    return List.copyOf(sheets);
  }

  private Optional<PrechargeResult> precharge() {
    SwitchCase contactor = parts.contactor();
    return contactor == null ? Optional.empty() : contactor.precharge().map(PrechargeCase::result);
  }

  /** Without pre-charge and discharge. */
  Worksheet joined() {
    Worksheet.Recording recording = Worksheet.record("Circuit " + circuit().name());
    ofParts().forEach(sheet -> sheet.steps().forEach(recording::add));
    return recording.toWorksheet();
  }

  private List<Worksheet> ofParts() {
    List<Worksheet> sheets = new ArrayList<>(List.of(cable(), new WithstandSheet(parts).write()));
    if (parts.fuseInCharge() != null && circuit().isFused()) {
      sheets.add(new FuseSheet(parts, parts.fuseInCharge()).write());
    }
    if (!parts.of().supplies().isEmpty()) {
      sheets.add(new CircuitFaultSheet(parts).write());
    }
    return sheets;
  }

  /** Temperatures, voltage drop and terminals of the very cable and number of runs. */
  private Worksheet cable() {
    CableCase cable = parts.cable();
    Worksheet sized =
        circuit()
            .sizer(ConductorSizer.over(List.of(cable.cable())))
            .circuitVoltage(Kind.VOLTAGE.ofSi(parts.of().numbers().highestV()))
            .worksheetOf(cable.cable(), cable.runs());
    return titled("Cable", sized);
  }

  private Worksheet titled(String what, Worksheet sheet) {
    return new Worksheet(what + " of " + circuit().name(), sheet.steps());
  }
}
