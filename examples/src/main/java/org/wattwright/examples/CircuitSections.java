package org.wattwright.examples;

import static org.wattwright.units.Measures.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wattwright.conversion.Circuits;
import org.wattwright.conversion.DataTable;
import org.wattwright.conversion.Paragraph;
import org.wattwright.conversion.Section;
import org.wattwright.conversion.SheetSections;
import org.wattwright.protection.DesignedCircuit;
import org.wattwright.protection.PrechargeResult;
import org.wattwright.units.Kind;

/** The sections about circuits, with their drawings. */
final class CircuitSections {
  private CircuitSections() {}

  static List<Section> of(Design.Chosen chosen) {
    Optional<Circuits> circuits = chosen.conversion().circuits();
    if (circuits.isEmpty()) {
      return List.of();
    }
    SheetSections sections = SheetSections.of(chosen.conversion());
    List<DesignedCircuit> designed = circuits.get().design().circuits();
    Section section = sections.circuits();
    if (!designed.isEmpty()) {
      section =
          section
              .with(SingleLine.of(Design.strings(chosen), circuits.get().design()))
              .withParts(coordination(designed));
    }
    List<Section> all = new ArrayList<>(List.of(section));
    designed.stream()
        .filter(each -> each.precharge().isPresent())
        .findFirst()
        .ifPresent(each -> all.add(precharge(each)));
    sections.isolation().ifPresent(all::add);
    return all;
  }

  private static Section coordination(List<DesignedCircuit> designed) {
    Section section = Section.of("Coordination of cables, fuses and contactors");
    for (DesignedCircuit each : designed) {
      if (isMain(each)) {
        section = section.with(CircuitDrawings.cover(each));
      }
    }
    return section;
  }

  /** A string like another one has the same picture. */
  private static boolean isMain(DesignedCircuit each) {
    return switch (each.circuit().role()) {
      case TRACTION_MAIN, INTER_BAY_LINK, CHARGER, DC_INLET, DCDC_INPUT, HEATER, DCDC_OUTPUT ->
          true;
      case STRING -> each.circuit().name().endsWith("1");
      default -> false;
    };
  }

  private static Section precharge(DesignedCircuit each) {
    PrechargeResult result = each.precharge().orElseThrow();
    DataTable table =
        DataTable.of("", "", ">Nominal", ">Slowest", ">Quickest")
            .row(
                "time until the contactor closes",
                time(result.nominal().timeToTarget()),
                time(result.slowest().timeToTarget()),
                time(result.quickest().timeToTarget()))
            .row(
                "highest current",
                format(result.nominal().peakCurrent(), Kind.CURRENT),
                format(result.slowest().peakCurrent(), Kind.CURRENT),
                format(result.quickest().peakCurrent(), Kind.CURRENT))
            .row(
                "highest power in the resistor",
                format(result.nominal().peakPower(), Kind.POWER),
                format(result.slowest().peakPower(), Kind.POWER),
                format(result.quickest().peakPower(), Kind.POWER));
    return Section.of("Pre-charge")
        .with(
            new Paragraph(
                "Resistor: "
                    + result.resistor()
                    + ". Energy of one shot: "
                    + result.energyPerShot().map(e -> format(e, Kind.ENERGY)).orElse("not known")
                    + ". On a shorted bus it lives "
                    + result.survivesShortedBus().map(t -> format(t, Kind.TIME)).orElse("for ever")
                    + "."),
            table)
        .with(CircuitDrawings.precharge(each).toArray(org.wattwright.conversion.Block[]::new));
  }

  private static String time(Optional<javax.measure.Quantity<javax.measure.quantity.Time>> time) {
    return time.map(t -> format(t, Kind.TIME)).orElse("never");
  }
}
