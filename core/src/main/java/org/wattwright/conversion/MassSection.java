package org.wattwright.conversion;

import static org.wattwright.units.Measures.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.units.Kind;
import org.wattwright.vehicle.Axle;
import org.wattwright.vehicle.BrakeBalance;
import org.wattwright.vehicle.BrakeComparison;
import org.wattwright.vehicle.CentreOfGravity;
import org.wattwright.vehicle.LoadState;
import org.wattwright.vehicle.MassItem;
import org.wattwright.vehicle.Side;
import org.wattwright.vehicle.WheelLoads;

/** The section about masses, axles and brakes. */
final class MassSection {
  private static final String TITLE = "Masses and axles";
  private static final String UNKNOWN = "not known";

  private MassSection() {}

  /** For a conversion without a ledger. */
  static Section missing() {
    return Section.of(TITLE)
        .with(
            new Paragraph(
                "The vehicle was not weighed: nothing is said about axles, tyres and brakes."));
  }

  static Section of(VehicleReview review) {
    Section section =
        Section.of(TITLE)
            .with(
                new Paragraph("As weighed: " + review.ledger().vehicle() + "."),
                loads(review),
                wheels(review),
                new Paragraph(SpreadTable.NOTE),
                SpreadTable.of(review))
            .with(brakes(review))
            .with(
                verdicts(review),
                new Paragraph("Sources, margins and remarks stand with the checks."))
            .with(ReviewSection.open("The vehicle as a whole", review.overallChecks()));
    return section.withParts(items(review)).withParts(new MassWorking(review).sections());
  }

  private static Section items(VehicleReview review) {
    DataTable table =
        DataTable.of(
            "",
            "",
            "Part",
            ">Mass",
            ">Behind front axle",
            ">Left of centre",
            ">Above ground",
            ">± mass",
            ">± place",
            "Basis");
    for (MassItem item : review.ledger().removed()) {
      table = table.row(row("out", item));
    }
    for (MassItem item : review.ledger().added()) {
      table = table.row(row("in", item));
    }
    return Section.of("Parts removed and added").with(table);
  }

  private static String[] row(String way, MassItem item) {
    return new String[] {
      way,
      item.name() + (item.isUnsprung() ? " (on the axle)" : ""),
      format(item.mass(), Kind.MASS),
      length(Optional.of(item.position().behindFrontAxle())),
      length(item.position().leftOfCentre()),
      length(item.position().aboveGround()),
      format(item.massTolerance(), Kind.MASS),
      length(Optional.of(item.positionTolerance())),
      item.basis().toString()
    };
  }

  private static String length(Optional<Quantity<Length>> length) {
    return length.map(q -> format(q, Kind.LENGTH)).orElse(UNKNOWN);
  }

  private static DataTable loads(VehicleReview review) {
    DataTable table =
        DataTable.of(
            "Axle loads and centre of gravity, before and after",
            "Load case",
            "",
            ">Front axle",
            ">Rear axle",
            ">Total",
            ">Front share",
            ">Centre behind front axle",
            ">Centre above ground");
    for (LoadState state : review.states()) {
      table = table.row(row(state.loadCase().name(), "before", state.before()));
      table = table.row(row("", "after", state));
      table =
          table.row(
              "",
              "change",
              format(state.change().front(), Kind.MASS),
              format(state.change().rear(), Kind.MASS),
              format(state.change().total(), Kind.MASS),
              Figure.number(100 * (state.frontShare() - state.before().frontShare())) + " points",
              "",
              "");
    }
    return table;
  }

  private static String[] row(String name, String when, LoadState state) {
    CentreOfGravity centre = state.centreOfGravity();
    return new String[] {
      name,
      when,
      format(state.axles().front(), Kind.MASS),
      format(state.axles().rear(), Kind.MASS),
      format(state.total(), Kind.MASS),
      Figure.share(state.frontShare()).toString(),
      format(centre.behindFrontAxle(), Kind.LENGTH),
      length(centre.aboveGround())
    };
  }

  private static Block wheels(VehicleReview review) {
    DataTable table =
        DataTable.of(
            "Wheel loads after the conversion",
            "Load case",
            ">Front left",
            ">Front right",
            ">Rear left",
            ">Rear right");
    for (LoadState state : review.states()) {
      if (state.wheels().isEmpty()) {
        return new Paragraph(
            "Wheel loads are not determined; missing: "
                + String.join(", ", state.missingForWheels())
                + ".");
      }
      table = table.row(row(state.loadCase().name(), state.wheels().get()));
    }
    return table;
  }

  private static String[] row(String name, WheelLoads wheels) {
    List<String> cells = new ArrayList<>(List.of(name));
    for (Axle axle : Axle.values()) {
      cells.add(format(wheels.on(axle, Side.LEFT), Kind.MASS));
      cells.add(format(wheels.on(axle, Side.RIGHT), Kind.MASS));
    }
    return cells.toArray(String[]::new);
  }

  private static Block brakes(VehicleReview review) {
    DataTable table =
        DataTable.of(
            "Brake balance, brakes unchanged, dry road (adhesion "
                + BrakeChecks.DRY_ROAD
                + "), no regeneration",
            "Load case",
            "First lock before",
            "First lock after",
            ">Equal adhesion before",
            ">after");
    for (LoadState state : review.states()) {
      Optional<BrakeComparison> brakes = review.brakes(state);
      if (brakes.isEmpty()) {
        return new Paragraph("Brake balance: the brake split or a height is not known.");
      }
      BrakeBalance before = brakes.get().before();
      BrakeBalance after = brakes.get().after();
      table =
          table.row(
              state.loadCase().name(),
              before.firstLock(BrakeChecks.DRY_ROAD).toString(),
              after.firstLock(BrakeChecks.DRY_ROAD).toString(),
              rate(before),
              rate(after));
    }
    return table;
  }

  /** Braking rate at which both axles use the same adhesion; the rear locks first above it. */
  private static String rate(BrakeBalance balance) {
    return Figure.number(balance.equalAdhesionRate()).toString();
  }

  /** One row a check, one column a load case: every case has the same checks. */
  private static DataTable verdicts(VehicleReview review) {
    List<String> headings = new ArrayList<>(List.of("Check", ">Limit"));
    review.states().forEach(state -> headings.add(">" + state.loadCase().name()));
    DataTable table =
        DataTable.of(
            "Axles, tyres, brakes and springs in each load case", headings.toArray(String[]::new));
    for (int i = 0; i < review.checksInCase(0).size(); i++) {
      table = table.row(row(review, i));
    }
    return table;
  }

  private static String[] row(VehicleReview review, int index) {
    Check first = review.checksInCase(0).get(index);
    String ofCase = ", " + review.states().get(0).loadCase().name();
    String what = first.what();
    List<String> cells = new ArrayList<>();
    cells.add(what.endsWith(ofCase) ? what.substring(0, what.length() - ofCase.length()) : what);
    // A critical speed, for one, has a limit only in the load cases that have such a speed.
    List<Check> limited =
        IntStream.range(0, review.states().size())
            .mapToObj(i -> review.checksInCase(i).get(index))
            .filter(check -> check.limit().isPresent())
            .toList();
    boolean sameLimit = limited.stream().map(Check::limit).distinct().count() <= 1;
    cells.add(
        sameLimit
            ? limited.stream()
                .findFirst()
                .map(check -> check.relation().sign() + " " + check.limit().orElseThrow())
                .orElse("")
            : "by load case");
    for (int i = 0; i < review.states().size(); i++) {
      Check check = review.checksInCase(i).get(index);
      String actual =
          sameLimit ? check.actual().map(Figure::toString).orElse("") : check.comparison();
      cells.add(actual.isEmpty() ? check.outcome().toString() : actual + ", " + check.outcome());
    }
    return cells.toArray(String[]::new);
  }
}
