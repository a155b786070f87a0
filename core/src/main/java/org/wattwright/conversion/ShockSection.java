package org.wattwright.conversion;

import static org.wattwright.units.Measures.format;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricResistance;
import org.wattwright.check.Check;
import org.wattwright.protection.IsolationLeaks;
import org.wattwright.units.Kind;

/** The section about isolation, discharge, bonding and faults through the chassis. */
final class ShockSection {
  private static final String TITLE = "Isolation and bonding";

  private ShockSection() {}

  static Section of(Circuits circuits) {
    List<Check> checks = new ArrayList<>(circuits.isolationChecks());
    checks.addAll(circuits.furtherChecks());
    Section section =
        circuits
            .isolation()
            .filter(budget -> !budget.entries().isEmpty())
            .map(budget -> Section.of(TITLE).with(table(budget), note(budget)))
            .orElseGet(
                () ->
                    Section.of(TITLE).with(new Paragraph("The isolation of no device is known.")));
    Section whole =
        section.with(
            ReviewSection.open(
                "Isolation, discharge, bonding and faults through the chassis", checks));
    List<Working> workings = workings(circuits);
    return workings.isEmpty()
        ? whole
        : whole.withParts(
            Section.of("Working of isolation and discharge").with(workings.toArray(Block[]::new)));
  }

  private static List<Working> workings(Circuits circuits) {
    List<Working> workings = new ArrayList<>();
    circuits
        .isolation()
        .filter(budget -> !budget.entries().isEmpty())
        .ifPresent(budget -> workings.add(new Working(budget.worksheet())));
    circuits.furtherWorksheets().forEach(sheet -> workings.add(new Working(sheet)));
    return workings;
  }

  private static DataTable table(IsolationBudget budget) {
    DataTable table =
        DataTable.of(
            "Isolation budget: what leaks from each pole to the chassis",
            "Device",
            ">Plus to chassis",
            ">Minus to chassis",
            ">Share of the leak",
            ">Y capacitor of each pole",
            "Basis");
    IsolationLeaks all = budget.together();
    for (IsolationBudget.Entry entry : budget.entries()) {
      table =
          table.row(
              entry.name(),
              format(entry.leaks().plus(), Kind.RESISTANCE),
              format(entry.leaks().minus(), Kind.RESISTANCE),
              share(all, entry.leaks()),
              format(entry.capacitor(), Kind.CAPACITANCE),
              entry.basis().toString());
    }
    return table.row(
        "all together, in parallel",
        format(all.plus(), Kind.RESISTANCE),
        format(all.minus(), Kind.RESISTANCE),
        "100 %",
        format(budget.capacitors().total(), Kind.CAPACITANCE),
        budget.basis().toString());
  }

  /** On the pole that leaks more. */
  private static String share(IsolationLeaks all, IsolationLeaks own) {
    boolean isPlus = ohm(all.plus()) <= ohm(all.minus());
    double share = isPlus ? ohm(all.plus()) / ohm(own.plus()) : ohm(all.minus()) / ohm(own.minus());
    return org.wattwright.check.Figure.share(share).toString();
  }

  private static double ohm(Quantity<ElectricResistance> resistance) {
    return Kind.RESISTANCE.siValueOf(resistance);
  }

  private static Paragraph note(IsolationBudget budget) {
    IsolationLeaks all = budget.together();
    return new Paragraph(
        "Asked for: "
            + format(budget.rule().required(budget.working()), Kind.RESISTANCE)
            + " at "
            + format(budget.working(), Kind.VOLTAGE)
            + ". An isolation monitor shows both poles in parallel, "
            + format(all.monitorReading(), Kind.RESISTANCE)
            + ". Somebody who touches the other pole and the chassis carries "
            + format(all.faultCurrent(budget.working()), Kind.CURRENT)
            + ", while the energy of the capacitors is "
            + format(budget.capacitors().energy(budget.working()), Kind.ENERGY)
            + ".");
  }
}
