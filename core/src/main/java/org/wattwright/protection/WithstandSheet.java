package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.AMPERE_SQUARED_SECOND;
import static org.wattwright.units.WorkshopUnits.CELSIUS;
import static org.wattwright.units.WorkshopUnits.FARAD;
import static org.wattwright.units.WorkshopUnits.MILLIOHM;
import static org.wattwright.units.WorkshopUnits.SQUARE_MILLIMETRE;
import static org.wattwright.units.WorkshopUnits.VOLT;

import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.check.Worksheet;
import org.wattwright.conductor.Cable;
import org.wattwright.conductor.SteadyHeating;
import org.wattwright.units.Kind;

/** Writes what the cable bears, and what fuse and capacitors let through it. */
final class WithstandSheet {
  private final CircuitAssembly parts;
  private final Worksheet.Recording sheet;

  WithstandSheet(CircuitAssembly parts) {
    this.parts = parts;
    this.sheet = Worksheet.record("Short circuit of " + parts.of().circuit().name());
  }

  Worksheet write() {
    withstand();
    for (CircuitSupply supply : parts.of().supplies()) {
      letThrough(supply);
    }
    backwards();
    return sheet.toWorksheet();
  }

  private void withstand() {
    CableWithstand withstand = parts.cable().withstand();
    Cable cable = parts.cable().cable();
    sheet
        .step(
            "I_z",
            "current that the cable bears for ever, " + parts.cable().runs() + " in parallel")
        .formula("I(θ_max)")
        .with("θ_max", Figure.of(cable.temperatureLimit(), CELSIUS))
        .basis(withstand.basis())
        .source(SteadyHeating.BALANCE)
        .gives(withstand.ampacityA(), AMPERE);
    sheet
        .step("k²S²", "joule integral that one cable withstands, from its continuous limit")
        .formula("K²·S²·ln[(θ_f + β)/(θ_i + β)]")
        .with("S", Figure.of(cable.size().area(), SQUARE_MILLIMETRE))
        .with("θ_i", Figure.of(cable.temperatureLimit(), CELSIUS))
        .with("θ_f", Figure.of(cable.shortCircuitLimit(), CELSIUS))
        .basis(withstand.basis())
        .source(CableWithstand.SOURCE)
        .gives(withstand.withstandA2S(), AMPERE_SQUARED_SECOND);
  }

  private void letThrough(CircuitSupply supply) {
    FaultCurrent highest = supply.faults().highest().orElseThrow();
    FuseCase fuse = parts.fuseInCharge();
    if (fuse != null && fuse.clearing(highest) instanceof Clearing.Cleared cleared) {
      sheet
          .step(
              "I²t", "let through by " + fuse.fuse().name() + " at the highest fault" + of(supply))
          .formula("total I²t of the slowest link")
          .with("I_max", highest.prospectiveA(), AMPERE)
          .basis(fuse.fuse().basis().and(highest.basis()))
          .source(Source.dataSheet(fuse.fuse().name()))
          .gives(Kind.JOULE_INTEGRAL.siValueOf(cleared.letThrough()), AMPERE_SQUARED_SECOND);
    }
  }

  private String of(CircuitSupply supply) {
    return parts.of().supplies().size() == 1 ? "" : " of " + supply.name();
  }

  /** I²t = C·U²/(2·R), all of it in the loop of the cable. */
  private void backwards() {
    CircuitBus bus = parts.of().circuit().bus();
    if (!bus.isFedBackwards() || !(bus.highestF() > 0)) {
      return;
    }
    double voltV = parts.of().numbers().highestV();
    double ohm = parts.cable().leastLoopOhm();
    sheet
        .step("I²t_C", "what the capacitors at the load empty into a fault on the cable")
        .formula("C·(1 + c)·U²/(2·R)")
        .with("C", bus.highestF() / (1 + bus.tolerance().value()), FARAD)
        .with("c", Figure.share(bus.tolerance().value()))
        .with("U", voltV, VOLT)
        .with("R", ohm, MILLIOHM)
        .basis(bus.tolerance().basis())
        .gives(bus.highestF() * voltV * voltV / (2 * ohm), AMPERE_SQUARED_SECOND);
  }
}
