package org.wattwright.conversion;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.DAY;
import static org.wattwright.units.WorkshopUnits.MILLIAMPERE;
import static org.wattwright.units.WorkshopUnits.MINUTE;
import static org.wattwright.units.WorkshopUnits.WATT;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Power;
import org.wattwright.charging.LowVoltageBudget;
import org.wattwright.charging.LowVoltageLoad;
import org.wattwright.check.Figure;

/** The section about the low-voltage side. */
final class LowVoltageSection {
  private static final String TITLE = "Low voltage";
  private static final String NONE = "–";

  private LowVoltageSection() {}

  /** For a conversion that says nothing about it. */
  static Section missing() {
    return Section.of(TITLE)
        .with(
            new Paragraph(
                "No loads were given: nothing is said about the low-voltage side, its converter and"
                    + " its battery."));
  }

  static Section of(LowVoltage lowVoltage) {
    return Section.of(TITLE)
        .with(
            new Paragraph(
                "Converter: "
                    + lowVoltage.converter()
                    + ". Battery: "
                    + lowVoltage.budget().battery()
                    + ". Asked for: "
                    + lowVoltage.targets()
                    + "."),
            loads(lowVoltage.budget()),
            sums(lowVoltage))
        .with(ReviewSection.open("Whether converter and battery serve", lowVoltage.checks()))
        .withParts(
            Section.of("Working of the low voltage")
                .with(new Working(lowVoltage.budget().worksheet())));
  }

  private static DataTable loads(LowVoltageBudget budget) {
    DataTable table =
        DataTable.of("Loads", "Load", ">Share of the time", ">Peak", "Essential", "Basis");
    for (LowVoltageLoad load : budget.loads()) {
      table =
          table.row(
              load.toString(),
              Figure.share(load.duty()).toString(),
              load.peak().map(peak -> Figure.of(peak, AMPERE).toString()).orElse(NONE),
              load.isEssential() ? "yes" : "",
              load.basis().toString());
    }
    return table;
  }

  private static DataTable sums(LowVoltage lowVoltage) {
    LowVoltageBudget budget = lowVoltage.budget();
    return DataTable.of("", "What", ">Value")
        .row("on average on the road", watts(budget.meanPower()))
        .row("everything on", watts(budget.allOnPower()))
        .row("at the peak", watts(budget.peakPower()))
        .row("asked of the converter, battery recharged", watts(budget.requiredPower()))
        .row(
            "the converter gives at " + lowVoltage.temperature(),
            watts(lowVoltage.converter().outputPowerAt(lowVoltage.temperature())))
        .row(
            "essential loads, the converter stopped",
            Figure.of(budget.essentialCurrent(), AMPERE).toString())
        .row("the battery carries them for", figure(budget.holdUp().map(t -> Figure.of(t, MINUTE))))
        .row("with the key off", Figure.of(budget.keyOffCurrent(), MILLIAMPERE).toString())
        .row(
            "parked until the usable charge is gone",
            figure(budget.parkedUntilFlat().map(t -> Figure.of(t, DAY))));
  }

  private static String watts(Quantity<Power> power) {
    return Figure.of(power, WATT).toString();
  }

  private static String figure(Optional<Figure> figure) {
    return figure.map(Figure::toString).orElse(NONE);
  }
}
