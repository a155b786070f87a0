package org.wattwright.conversion;

import static org.wattwright.units.WorkshopUnits.HOUR;
import static org.wattwright.units.WorkshopUnits.MINUTE;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Time;
import org.wattwright.charging.ChargePhase;
import org.wattwright.charging.ChargeResult;
import org.wattwright.check.Figure;
import org.wattwright.units.WorkshopUnits;

/** The section about charging. */
final class ChargeSection {
  private static final String TITLE = "Charging";
  private static final String NONE = "–";

  private ChargeSection() {}

  /** For a conversion without a charge plan. */
  static Section missing() {
    return Section.of(TITLE)
        .with(
            new Paragraph(
                "No charge plan was given: nothing is said about current, time and energy of a"
                    + " charge."));
  }

  static Section of(ChargeReview review) {
    ChargePlan plan = review.plan();
    return Section.of(TITLE)
        .with(
            new Paragraph(
                "Charger: "
                    + plan.charger()
                    + ". Every charge runs from "
                    + Figure.of(plan.from())
                    + " to "
                    + Figure.of(plan.to())
                    + " with the cells at "
                    + plan.temperature()
                    + " all along."),
            table(review),
            phases(review))
        .with(ReviewSection.open("Whether the charges do what is asked", review.checks()));
  }

  /** The working of every charge. */
  static Section working(ChargeReview review) {
    Section section = Section.of("Working of the charges");
    for (PlannedCharge charge : review.charges()) {
      section = section.with(new Paragraph("From " + charge.label() + ":"));
      if (charge.current().isPresent()) {
        section = section.with(new Working(charge.current().get().worksheet()));
      }
      section = section.with(new Working(charge.result().worksheet()));
    }
    return section;
  }

  private static DataTable table(ChargeReview review) {
    DataTable table =
        DataTable.of(
            "One row a supply",
            "Supply",
            ">Current of each phase",
            "Limited by",
            ">Reached",
            ">Time",
            ">Allowed",
            ">From the mains",
            ">Into the pack",
            ">Stored of it");
    for (PlannedCharge charge : review.charges()) {
      ChargeResult result = charge.result();
      table =
          table.row(
              charge.label(),
              charge
                  .current()
                  .map(c -> figure(Figure.of(c.current(), WorkshopUnits.AMPERE)))
                  .orElse(NONE),
              charge.current().map(c -> c.governing().toString()).orElse("DC station"),
              figure(Figure.of(result.end())),
              hours(Optional.of(result.time())),
              hours(review.plan().allowed(charge.label())),
              result.wallEnergy().map(ChargeSection::energy).orElse(NONE),
              energy(result.packEnergy()),
              result.efficiency().map(share -> figure(Figure.share(share))).orElse(NONE));
    }
    return table;
  }

  private static DataTable phases(ChargeReview review) {
    DataTable table =
        DataTable.of(
            "What limits when", "Supply", ">From", ">To", ">Time", ">Into the pack", "Limited by");
    for (PlannedCharge charge : review.charges()) {
      for (ChargePhase phase : charge.result().phases()) {
        table =
            table.row(
                charge.label(),
                figure(Figure.of(phase.from())),
                figure(Figure.of(phase.to())),
                hours(Optional.of(phase.duration())),
                energy(phase.energy()),
                phase.limit().toString());
      }
    }
    return table;
  }

  private static String hours(Optional<Quantity<Time>> time) {
    return time.map(value -> figure(Figure.of(value, HOUR.valueOf(value) < 1 ? MINUTE : HOUR)))
        .orElse(NONE);
  }

  private static String energy(Quantity<Energy> energy) {
    return figure(Figure.of(energy, WorkshopUnits.KILOWATT_HOUR));
  }

  private static String figure(Figure figure) {
    return figure.toString();
  }
}
