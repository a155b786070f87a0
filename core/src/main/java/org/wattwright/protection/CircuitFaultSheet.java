package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.MICROHENRY;
import static org.wattwright.units.WorkshopUnits.MILLIOHM;
import static org.wattwright.units.WorkshopUnits.MILLISECOND;
import static org.wattwright.units.WorkshopUnits.SECOND;
import static org.wattwright.units.WorkshopUnits.VOLT;

import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.check.Worksheet;
import org.wattwright.units.Kind;

/** Writes the highest and the lowest fault of a circuit and how soon the lowest is cleared. */
final class CircuitFaultSheet {
  private static final Source CURVES =
      Source.dataSheet("the slowest link; trip delay and opening time of the contactor");

  private final CircuitAssembly parts;
  private final Worksheet.Recording sheet;

  CircuitFaultSheet(CircuitAssembly parts) {
    this.parts = parts;
    this.sheet = Worksheet.record("Faults of " + parts.of().circuit().name());
  }

  Worksheet write() {
    for (CircuitSupply supply : parts.of().supplies()) {
      String of = parts.of().supplies().size() == 1 ? "" : " of " + supply.name();
      highest(supply, of);
      lowest(supply, of);
    }
    clearing();
    return sheet.toWorksheet();
  }

  private void highest(CircuitSupply supply, String of) {
    FaultCurrent highest = supply.faults().highest().orElseThrow();
    Figure ohm = Figure.of(highest.resistance(), MILLIOHM);
    sheet
        .step("I_max", "highest fault" + of + ", at the supply")
        .formula("U/R_s")
        .with("U", Figure.of(highest.drivingVoltage(), VOLT))
        .with("R_s", ohm)
        .basis(highest.basis())
        .gives(highest.prospectiveA(), AMPERE);
    sheet
        .step("τ", "its time constant")
        .formula("L/R_s")
        .with("L", Figure.of(highest.inductance(), MICROHENRY))
        .with("R_s", ohm)
        .basis(highest.basis())
        .gives(highest.timeConstantS(), MILLISECOND);
    Double withCapacitorsA = supply.highestA();
    if (withCapacitorsA != null && withCapacitorsA > highest.prospectiveA()) {
      sheet
          .step("I_peak", "highest fault" + of + " with what capacitors add")
          .basis(supply.faults().basis())
          .source(Source.PHYSICS)
          .gives(withCapacitorsA, AMPERE);
    }
  }

  private void lowest(CircuitSupply supply, String of) {
    FaultCurrent lowest = parts.lowestFault(supply);
    sheet
        .step("I_min", "lowest fault" + of + " at the far end, cables at their limit")
        .formula("U/(R_s + R_n + R_c)")
        .with("U", supply.lowestV(), VOLT)
        .with("R_s", supply.lowestOhm(), MILLIOHM)
        .with("R_n", parts.nearerOhm(), MILLIOHM)
        .with("R_c", parts.cable().loopOhm(), MILLIOHM)
        .basis(lowest.basis())
        .gives(lowest.prospectiveA(), AMPERE);
  }

  private void clearing() {
    sheet
        .step("I_need", "lowest current from which every fault is cleared in time")
        .formula("start of t_clear(I) ≤ t_max − 1.5·τ")
        .with("t_max", parts.of().numbers().clearingS(), SECOND)
        .with("1.5·τ", parts.of().numbers().riseS(), SECOND)
        .source(CableWithstand.SOURCE)
        .gives(parts.neededA(), AMPERE);
    parts
        .lowestFaultA()
        .ifPresent(
            lowestA ->
                sheet
                    .step("t_clear", "longest time in which the lowest fault is cleared")
                    .formula("min(t_fuse(I_min) + 1.5·τ; t_trip)")
                    .with("I_min", lowestA, AMPERE)
                    .with("1.5·τ", parts.of().numbers().riseS(), SECOND)
                    .source(CURVES)
                    .gives(Figure.of(Kind.TIME.ofSi(parts.clearingS(lowestA)), SECOND)));
  }
}
