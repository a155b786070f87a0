package org.wattwright.examples;

import static org.wattwright.units.Measures.format;
import static org.wattwright.units.WorkshopUnits.KILOGRAM;
import static org.wattwright.units.WorkshopUnits.KILOWATT_HOUR;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.wattwright.conversion.ComparedFigure;
import org.wattwright.conversion.Comparison;
import org.wattwright.conversion.DataTable;
import org.wattwright.conversion.Drawing;
import org.wattwright.conversion.Paragraph;
import org.wattwright.conversion.RangeCase;
import org.wattwright.conversion.Section;
import org.wattwright.drive.RangeResult;
import org.wattwright.examples.plot.Point;
import org.wattwright.examples.plot.ScatterFrontPlot;
import org.wattwright.examples.plot.ScatterFrontPlot.Standing;
import org.wattwright.layout.Candidate;
import org.wattwright.layout.Criterion;
import org.wattwright.units.Kind;

/** The packs that no other beats in mass, energy, power and price. */
final class AlternativeSection {
  private static final int MOST_IN_PLOT = 60;

  private AlternativeSection() {}

  static Section of(Design design) {
    Section section = Section.of("Alternatives");
    if (design.chosen().isEmpty()) {
      return section.with(new Paragraph("No pack meets every requirement."));
    }
    List<Candidate> front =
        design
            .found()
            .paretoFront(
                Criterion.MASS, Criterion.USABLE_ENERGY, Criterion.PEAK_POWER, Criterion.PRICE);
    return section
        .with(
            new Paragraph(
                design.found().candidateCount()
                    + " packs were looked at, "
                    + design.found().feasibleCount()
                    + " meet every requirement ("
                    + design.found().coverage()
                    + "). None of those below is beaten by another in mass, usable energy, peak power and price "
                    + "at once."),
            table(front, design),
            new Drawing(
                plot(design),
                "Usable energy over mass of the packs that meet every requirement",
                "Filled marks on the line are beaten by no other in these two; the ring marks the one chosen."))
        .withParts(nextBest(design).stream().toArray(Section[]::new));
  }

  /**
   * The whole van with the next of the ranking that has as many strings, for which the circuits are
   * laid out, beside the one chosen.
   */
  private static Optional<Section> nextBest(Design design) {
    Design.Chosen chosen = design.chosen().orElseThrow();
    return design.found().top(MOST_IN_PLOT).stream()
        .filter(other -> !other.equals(chosen.candidate()))
        .filter(other -> other.parallel() == chosen.candidate().parallel())
        .findFirst()
        .map(next -> against(chosen, next, design.with(next)));
  }

  private static Section against(Design.Chosen chosen, Candidate next, Design.Chosen variant) {
    Comparison comparison =
        chosen
            .conversion()
            .compare(variant.conversion())
            .named(name(chosen.candidate()), name(next))
            .with(range(chosen, variant));
    Section section =
        comparison.only(check -> check.isOfVerdict() && check.after().isPresent()).toSection();
    long others =
        comparison.changedChecks().stream()
            .filter(check -> !check.isOfVerdict() || check.after().isEmpty())
            .count();
    return new Section("Against the next best with as many strings", section.blocks(), List.of())
        .with(
            new Paragraph(
                others + " more checks changed their margin alone, or have no counterpart."));
  }

  private static ComparedFigure range(Design.Chosen chosen, Design.Chosen variant) {
    return ComparedFigure.of(
        "range when new, first cycle",
        Kind.LENGTH,
        new ComparedFigure.Sides<>(range(chosen), range(variant)));
  }

  private static Optional<Quantity<Length>> range(Design.Chosen chosen) {
    return chosen
        .conversion()
        .motion()
        .flatMap(motion -> motion.range(RangeCase.NEW, motion.cycles().get(0)))
        .map(RangeResult::distance);
  }

  private static String name(Candidate candidate) {
    return label(candidate) + " " + candidate.module().name();
  }

  private static DataTable table(List<Candidate> front, Design design) {
    DataTable table =
        DataTable.of("", "Pack", ">Mass", ">Usable energy", ">Peak power", ">Volume", ">Price", "");
    Candidate chosen = design.chosen().orElseThrow().candidate();
    for (Candidate candidate : front) {
      table =
          table.row(
              name(candidate),
              format(candidate.mass(), Kind.MASS),
              text(candidate.usableEnergy().map(e -> format(e, Kind.ENERGY))),
              text(candidate.peakPower().map(p -> format(p, Kind.POWER))),
              text(candidate.volume().map(v -> format(v, Kind.VOLUME))),
              text(candidate.price().map(Object::toString)),
              candidate.equals(chosen) ? "chosen" : "");
    }
    return table;
  }

  private static String text(Optional<String> value) {
    return value.orElse("not known");
  }

  private static String label(Candidate candidate) {
    return candidate.series() + "s" + candidate.parallel() + "p";
  }

  private static String plot(Design design) {
    List<Candidate> front = design.found().paretoFront(Criterion.MASS, Criterion.USABLE_ENERGY);
    Candidate chosen = design.chosen().orElseThrow().candidate();
    ScatterFrontPlot plot = ScatterFrontPlot.of("mass of the modules [kg]", "usable energy [kW·h]");
    for (Candidate candidate : design.found().top(MOST_IN_PLOT)) {
      Standing standing = Standing.BEATEN;
      if (candidate.equals(chosen)) {
        standing = Standing.CHOSEN;
      } else if (front.contains(candidate)) {
        standing = Standing.ON_FRONT;
      }
      plot =
          plot.candidate(
              new ScatterFrontPlot.Candidate(
                  label(candidate),
                  candidate.module().name(),
                  new Point(
                      KILOGRAM.valueOf(candidate.mass()),
                      KILOWATT_HOUR.valueOf(candidate.usableEnergy().orElseThrow())),
                  standing));
    }
    return plot.svg("mass-energy-front");
  }
}
