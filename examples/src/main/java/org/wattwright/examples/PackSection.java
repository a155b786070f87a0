package org.wattwright.examples;

import static org.wattwright.units.Measures.format;

import org.wattwright.battery.Direction;
import org.wattwright.battery.Pack;
import org.wattwright.battery.PackState;
import org.wattwright.check.Worksheet;
import org.wattwright.examples.job.Requirement;
import org.wattwright.examples.sheet.DataTable;
import org.wattwright.examples.sheet.Paragraph;
import org.wattwright.examples.sheet.Section;
import org.wattwright.examples.sheet.Working;
import org.wattwright.units.Kind;

/** The chosen pack and its working. */
final class PackSection {
  private PackSection() {}

  static Section of(Design design, Design.Chosen chosen) {
    Requirement requirement = design.job().requirement();
    Pack pack = chosen.conversion().pack();
    PackState peak =
        PackState.of(requirement.peak().stateOfCharge(), requirement.peak().temperature());
    Worksheet power = pack.powerWorksheet(peak, Direction.DISCHARGE, requirement.peak().duration());
    return Section.of("Pack")
        .with(figures(pack, requirement))
        .withParts(
            Section.of("Working of the search")
                .with(
                    new Paragraph(
                        "Without link cables, because the search knows no bays; everything below this "
                            + "table counts them."),
                    new Working(chosen.candidate().worksheet())),
            Section.of("Working of the peak power").with(new Working(power)));
  }

  private static DataTable figures(Pack pack, Requirement requirement) {
    DataTable table =
        DataTable.of("", "What", ">Value")
            .row("strings", pack.strings().get(0) + (pack.strings().size() > 1 ? " (each)" : ""))
            .row("capacity", format(pack.capacity(), Kind.CHARGE))
            .row("energy at rest voltage, full to empty, 25 °C", energy(pack))
            .row(
                "voltage limits of the cells",
                format(pack.minimumVoltage(), Kind.VOLTAGE)
                    + " … "
                    + format(pack.maximumVoltage(), Kind.VOLTAGE))
            .row("mass of the modules", format(pack.mass(), Kind.MASS));
    table =
        pack.volume().isPresent()
            ? table.row("volume of the modules", format(pack.volume().get(), Kind.VOLUME))
            : table;
    return table.row(
        "usable energy at " + requirement.energy().power(),
        pack.usableEnergyAtPower(
                requirement.energy().power(),
                requirement.energy().full(),
                requirement.energy().empty(),
                requirement.energy().temperature())
            .toString());
  }

  private static String energy(Pack pack) {
    return format(pack.nominalEnergy(org.wattwright.units.Measures.celsius(25)), Kind.ENERGY);
  }
}
