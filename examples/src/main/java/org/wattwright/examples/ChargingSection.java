package org.wattwright.examples;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.wattwright.charging.ChargeMoment;
import org.wattwright.conversion.Conversion;
import org.wattwright.conversion.Drawing;
import org.wattwright.conversion.PlannedCharge;
import org.wattwright.conversion.Section;
import org.wattwright.conversion.SheetSections;
import org.wattwright.examples.plot.LineSeriesPlot;
import org.wattwright.examples.plot.Point;
import org.wattwright.examples.plot.Series;
import org.wattwright.units.WorkshopUnits;

/** The section about charging, with power and state of charge against time. */
final class ChargingSection {
  private ChargingSection() {}

  static Section of(Conversion conversion) {
    Section section = SheetSections.of(conversion).charging();
    if (conversion.charging().isEmpty()) {
      return section;
    }
    List<PlannedCharge> charges = conversion.charging().get().charges();
    return section.with(
        new Drawing(
            plot(
                    charges,
                    "power into the pack [kW]",
                    moment -> WorkshopUnits.KILOWATT.valueOf(moment.power()))
                .svg("charge-power"),
            "Power into the pack against time",
            "Held by supply, cable or charger; it falls where the charge voltage is reached."),
        new Drawing(
            plot(charges, "state of charge [%]", moment -> moment.stateOfCharge().percent())
                .svg("charge-state"),
            "State of charge against time",
            "One line a supply, from the same state of charge."));
  }

  private static LineSeriesPlot plot(
      List<PlannedCharge> charges, String label, ToDoubleFunction<ChargeMoment> figure) {
    LineSeriesPlot plot = LineSeriesPlot.of("time [h]", label);
    for (PlannedCharge charge : charges) {
      List<Point> points = new ArrayList<>();
      for (ChargeMoment moment : charge.result().curve()) {
        points.add(
            new Point(WorkshopUnits.HOUR.valueOf(moment.time()), figure.applyAsDouble(moment)));
      }
      plot = plot.series(Series.of(charge.label(), points));
    }
    return plot;
  }
}
