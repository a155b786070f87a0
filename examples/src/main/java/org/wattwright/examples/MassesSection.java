package org.wattwright.examples;

import static org.wattwright.units.Measures.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.wattwright.check.Figure;
import org.wattwright.conversion.DataTable;
import org.wattwright.conversion.Drawing;
import org.wattwright.conversion.Paragraph;
import org.wattwright.conversion.Section;
import org.wattwright.conversion.SheetSections;
import org.wattwright.conversion.VehicleReview;
import org.wattwright.conversion.Working;
import org.wattwright.examples.job.BayInput;
import org.wattwright.examples.job.PartMassInput;
import org.wattwright.examples.job.VehicleInput;
import org.wattwright.examples.plot.SideViewPlot;
import org.wattwright.units.Kind;
import org.wattwright.vehicle.AxleLift;
import org.wattwright.vehicle.CentreOfGravity;
import org.wattwright.vehicle.LoadState;
import org.wattwright.vehicle.MassItem;

/** Masses before and after, where the modules go, and the drawing. */
final class MassesSection {
  /** For the drawing alone. */
  private static final double USUAL_WHEEL_RADIUS_M = 0.3;

  private MassesSection() {}

  static Section of(Design.Chosen chosen) {
    Section section = SheetSections.of(chosen.conversion()).masses();
    Optional<VehicleReview> review = chosen.conversion().masses();
    if (chosen.vehicle().isEmpty() || review.isEmpty()) {
      return section;
    }
    VehicleDesign vehicle = chosen.vehicle().get();
    Optional<Drawing> drawing = drawing(vehicle, review.get());
    if (drawing.isPresent()) {
      section = section.with(drawing.get());
    }
    section = section.withParts(bays(vehicle));
    Optional<AxleLift> lift = VehicleParts.lift(vehicle.input());
    return lift.isEmpty()
        ? section
        : section.withParts(
            Section.of("Height of the centre of gravity")
                .with(
                    new Paragraph("Weighed with the rear axle raised: " + lift.get() + "."),
                    new Working(lift.get().worksheet())));
  }

  private static Section bays(VehicleDesign vehicle) {
    PackPlacement placement = vehicle.placement();
    VehicleInput input = vehicle.input();
    DataTable table =
        DataTable.of(
            "",
            "Bay",
            ">Modules",
            ">Room",
            ">Mass with enclosure",
            ">Mass limit",
            "Cables to other bays",
            "Source");
    for (BayInput bay : input.bays()) {
      table =
          table.row(
              bay.name() + (bay.keptFree() ? " (kept free)" : ""),
              Integer.toString(placement.countIn(bay)),
              Integer.toString(bay.roomFor(placement.module().name())),
              format(placement.massIn(bay), Kind.MASS),
              bay.massLimit().map(limit -> format(limit, Kind.MASS)).orElse("none stated"),
              links(bay),
              bay.source());
    }
    return AllocationBlocks.addTo(Section.of("Modules in the bays"), vehicle.allocation(), table);
  }

  private static String links(BayInput bay) {
    return String.join(
        ", ",
        bay.links().entrySet().stream()
            .map(link -> link.getKey() + " " + link.getValue())
            .sorted()
            .toList());
  }

  private static Optional<Drawing> drawing(VehicleDesign vehicle, VehicleReview review) {
    VehicleInput input = vehicle.input();
    if (input.shape().isEmpty()) {
      return Optional.empty();
    }
    LoadState light = review.states().get(0);
    LoadState laden = review.heaviest();
    SideViewPlot plot =
        SideViewPlot.of(outline(input, input.shape().get()))
            .view(
                new SideViewPlot.View(
                    "Before: parts that leave",
                    marks(review.ledger().removed(), SideViewPlot.Sort.REMOVED),
                    load(light.before()),
                    load(laden.before()),
                    centre(light.before())))
            .view(
                new SideViewPlot.View(
                    "After: parts that go in",
                    after(vehicle),
                    load(light),
                    load(laden),
                    centre(light)));
    return Optional.of(
        new Drawing(
            plot.svg("side-view"),
            "Parts removed and added, and axle loads before and after",
            "Places to scale, front to the left; a square is a bay with its modules and enclosure. The area of a mark is in proportion to its mass, the length "
                + "of an arrow to the axle load: filled "
                + light.loadCase().name()
                + ", hollow "
                + laden.loadCase().name()
                + ". "
                + change(light)
                + ". "
                + change(laden)
                + "."));
  }

  private static SideViewPlot.Outline outline(VehicleInput input, VehicleInput.Shape shape) {
    double wheelRadiusM =
        input
            .scales()
            .lift()
            .map(lift -> metres(lift.frontRadius()))
            .or(() -> input.front().tyre().map(tyre -> metres(tyre.loadedRadius().typical())))
            .orElse(USUAL_WHEEL_RADIUS_M);
    return new SideViewPlot.Outline(
        metres(input.scales().wheelbase()),
        metres(shape.frontOverhang()),
        metres(shape.rearOverhang()),
        metres(shape.height()),
        wheelRadiusM);
  }

  private static List<SideViewPlot.Mark> marks(List<MassItem> items, SideViewPlot.Sort sort) {
    return items.stream()
        .filter(item -> item.position().aboveGround().isPresent())
        .filter(item -> kilograms(item.mass()) > 0)
        .map(
            item ->
                new SideViewPlot.Mark(
                    item.name(),
                    kilograms(item.mass()),
                    metres(item.position().behindFrontAxle()),
                    metres(item.position().aboveGround().orElseThrow()),
                    sort))
        .toList();
  }

  /** Modules and enclosure of a bay are one mark; their places are one. */
  private static List<SideViewPlot.Mark> after(VehicleDesign vehicle) {
    List<SideViewPlot.Mark> marks =
        new ArrayList<>(
            marks(
                VehicleParts.items(vehicle.input(), PartMassInput.Change.ADDED),
                SideViewPlot.Sort.ADDED));
    for (PackPlacement.Filled filled : vehicle.placement().bays()) {
      String label = filled.bay().name() + ", " + filled.count() + " modules";
      MassItem item =
          MassItem.of(
              label, vehicle.placement().massIn(filled.bay()), PackPlacement.middle(filled));
      marks.addAll(marks(List.of(item), SideViewPlot.Sort.BATTERY));
    }
    return marks;
  }

  private static SideViewPlot.AxleLoad load(LoadState state) {
    return new SideViewPlot.AxleLoad(
        state.loadCase().name(), kilograms(state.axles().front()), kilograms(state.axles().rear()));
  }

  private static SideViewPlot.Centre centre(LoadState state) {
    CentreOfGravity centre = state.centreOfGravity();
    return new SideViewPlot.Centre(
        metres(centre.behindFrontAxle()),
        centre.aboveGround().map(MassesSection::metres).orElse(Double.NaN));
  }

  private static double metres(Quantity<Length> length) {
    return Kind.LENGTH.siValueOf(length);
  }

  private static double kilograms(Quantity<Mass> mass) {
    return Kind.MASS.siValueOf(mass);
  }

  private static String change(LoadState state) {
    return "Change "
        + state.loadCase().name()
        + ": front "
        + Figure.of(state.change().front(), Kind.MASS)
        + ", rear "
        + Figure.of(state.change().rear(), Kind.MASS);
  }
}
