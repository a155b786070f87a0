package org.wattwright.conversion;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.wattwright.check.Figure;
import org.wattwright.check.Step;
import org.wattwright.check.Worksheet;
import org.wattwright.units.Kind;
import org.wattwright.units.WorkshopUnits;
import org.wattwright.vehicle.Axle;
import org.wattwright.vehicle.BrakeComparison;
import org.wattwright.vehicle.InflationLaw;
import org.wattwright.vehicle.LoadCase;
import org.wattwright.vehicle.LoadInfluence;
import org.wattwright.vehicle.LoadState;
import org.wattwright.vehicle.MassItem;
import org.wattwright.vehicle.MassLedger;
import org.wattwright.vehicle.ParkingBrake;
import org.wattwright.vehicle.StabilityFactor;

/** The working of the section about masses: the ledger once, then what each load case adds. */
final class MassWorking {
  private final VehicleReview review;

  MassWorking(VehicleReview review) {
    this.review = review;
  }

  /** In the order in which one figure rests on another. */
  Section[] sections() {
    List<Section> sections = new ArrayList<>(List.of(masses(), before(), tolerances()));
    addIfAny(sections, "Working of the brakes", brakes());
    addIfAny(sections, "Working of springs, stability, steering and tyres", chassis());
    addIfAny(sections, "Working of the rules", rules());
    return sections.toArray(Section[]::new);
  }

  private static void addIfAny(List<Section> sections, String title, List<Worksheet> sheets) {
    List<Working> workings =
        sheets.stream().filter(sheet -> !sheet.steps().isEmpty()).map(Working::new).toList();
    if (!workings.isEmpty()) {
      sections.add(Section.of(title).with(workings.toArray(Block[]::new)));
    }
  }

  private Section masses() {
    MassLedger ledger = review.ledger();
    LoadState kerb = ledger.after(LoadCase.KERB);
    Section section =
        Section.of("Working of the masses")
            .with(
                new Paragraph(
                    "Each part counts once, here. A part of mass m at the distance d behind the front "
                        + "axle adds m·(1 − d/L) to the front axle and m·d/L to the rear axle, with the "
                        + "wheelbase L = "
                        + format(ledger.vehicle().wheelbase())
                        + "; y is its place left of the centre line, z its height."),
                ledgerTable(ledger),
                new Working(kerb.sumWorksheet()));
    for (LoadState state : review.states()) {
      if (!state.loadCase().load().isEmpty()) {
        section = section.with(new Working(state.worksheetFromKerb()));
      }
    }
    return section;
  }

  private static DataTable ledgerTable(MassLedger ledger) {
    DataTable table =
        DataTable.of(
            "Shares of the parts",
            "",
            "Part",
            ">m",
            ">d",
            ">m·(1 − d/L)",
            ">m·d/L",
            ">m·y in kg·m",
            ">m·z in kg·m");
    Sum sum = new Sum();
    for (MassItem item : ledger.removed()) {
      table = table.row(sum.row("out", item, ledger, -1));
    }
    for (MassItem item : ledger.added()) {
      table = table.row(sum.row("in", item, ledger, 1));
    }
    return table.row(sum.row());
  }

  /** Adds up while the rows are written. */
  private static final class Sum {
    private double massKg;
    private double frontKg;
    private double rearKg;
    private double acrossKgM;
    private double upKgM;

    String[] row(String way, MassItem item, MassLedger ledger, int sign) {
      LoadInfluence influence = ledger.influenceOf(item.position());
      double kg = sign * Kind.MASS.siValueOf(item.mass());
      double front = kg * influence.on(Axle.FRONT);
      double rear = kg * influence.on(Axle.REAR);
      double across = kg * metres(item.position().leftOfCentre());
      double up = kg * metres(item.position().aboveGround());
      massKg += kg;
      frontKg += front;
      rearKg += rear;
      acrossKgM += across;
      upKgM += up;
      return new String[] {
        way,
        item.name(),
        kilograms(kg),
        format(item.position().behindFrontAxle()),
        kilograms(front),
        kilograms(rear),
        number(across),
        number(up)
      };
    }

    String[] row() {
      return new String[] {
        "",
        "sum",
        kilograms(massKg),
        "",
        kilograms(frontKg),
        kilograms(rearKg),
        number(acrossKgM),
        number(upKgM)
      };
    }

    private static double metres(Optional<Quantity<Length>> length) {
      return length.map(Kind.LENGTH::siValueOf).orElse(Double.NaN);
    }

    private static String number(double value) {
      return Double.isNaN(value) ? "not known" : Figure.number(value).toString();
    }
  }

  private static String kilograms(double massKg) {
    return Figure.ofSi(massKg, WorkshopUnits.KILOGRAM).toString();
  }

  private static String format(Quantity<Length> length) {
    return Figure.of(length, Kind.LENGTH).toString();
  }

  /** Kerb before is what the scales showed. */
  private Section before() {
    Section section =
        Section.of("Working of the masses before the conversion")
            .with(
                new Paragraph(
                    "The same people, luggage and goods in the vehicle as weighed, which at kerb is what "
                        + "the scales showed."));
    for (LoadState state : review.states()) {
      if (!state.loadCase().load().isEmpty()) {
        section = section.with(new Working(state.before().worksheet()));
      }
    }
    return section;
  }

  private Section tolerances() {
    return Section.of("Working of the tolerances")
        .with(new Working(review.heaviest().spreadWorksheet()));
  }

  private List<Worksheet> brakes() {
    List<Worksheet> sheets = new ArrayList<>();
    Merged before = new Merged("Brake balance before the conversion");
    Merged after = new Merged("Brake balance after the conversion");
    for (LoadState state : review.states()) {
      Optional<BrakeComparison> brakes = review.brakes(state);
      if (brakes.isPresent()) {
        before.add(state, brakes.get().before().worksheet(BrakeChecks.DRY_ROAD));
        after.add(state, brakes.get().after().worksheet(BrakeChecks.DRY_ROAD));
      }
    }
    sheets.add(before.toWorksheet());
    sheets.add(after.toWorksheet());
    sheets.addAll(DescentChecks.worksheets(review));
    sheets.add(parking());
    return sheets;
  }

  private Worksheet parking() {
    LoadState heaviest = review.heaviest();
    Merged parking = new Merged("Parking brake");
    Optional<ParkingBrake> brake = review.chassis().parkingBrake();
    if (brake.isPresent() && heaviest.stance().isPresent()) {
      Worksheet.Recording force = Worksheet.record("force");
      ParkingBrake.forceNeeded(heaviest.stance().get(), ParkingBrake.USUAL_GRADE, force);
      parking.add(heaviest, force.toWorksheet());
      parking.add(
          heaviest,
          heaviest.stance().get().gripWorksheet(brake.get().axle(), BrakeChecks.WET_ROAD));
    }
    return parking.toWorksheet();
  }

  private List<Worksheet> chassis() {
    Merged springs = new Merged("Springs");
    Merged stability = new Merged("Static stability factor");
    Merged steering = new Merged("Steering");
    for (LoadState state : review.states()) {
      for (Axle axle : Axle.values()) {
        review
            .chassis()
            .spring(axle)
            .ifPresent(known -> springs.add(state, known.spring().worksheet(state)));
      }
      StabilityFactor.of(state.before())
          .ifPresent(factor -> stability.add("before, ", state, factor.worksheet()));
      StabilityFactor.of(state)
          .ifPresent(factor -> stability.add("after, ", state, factor.worksheet()));
      review.understeer(state).ifPresent(u -> steering.add(state, u.worksheet()));
    }
    return List.of(springs.toWorksheet(), stability.toWorksheet(), steering.toWorksheet(), tyres());
  }

  private Worksheet tyres() {
    Merged tyres = new Merged("Pressure of the tyres");
    for (Axle axle : Axle.values()) {
      Optional<Chassis.TyrePressure> run = review.chassis().tyrePressure(axle);
      Optional<InflationLaw> law = run.flatMap(known -> InflationLaw.of(known.tyre()));
      if (law.isPresent()) {
        LoadState worst = VehicleChecks.worst(review, axle);
        Worksheet.Recording sheet = Worksheet.record("pressure");
        law.get().pressureFor(VehicleChecks.wheelLoad(worst, axle), sheet);
        tyres.add(axle + " axle, ", worst, sheet.toWorksheet());
      }
    }
    return tyres.toWorksheet();
  }

  private List<Worksheet> rules() {
    return review.chassis().rules().stream()
        .map(rules -> rules.worksheet(review.ruleSubject()))
        .toList();
  }

  /** Several worksheets as one table; each step says of which load case it is. */
  private static final class Merged {
    private final String title;
    private final List<Step> steps = new ArrayList<>();

    Merged(String title) {
      this.title = title;
    }

    void add(LoadState state, Worksheet sheet) {
      add("", state, sheet);
    }

    void add(String before, LoadState state, Worksheet sheet) {
      for (Step step : sheet.steps()) {
        steps.add(
            new Step(
                step.symbol(),
                before + state.loadCase().name() + ": " + step.meaning(),
                step.formula(),
                step.inputs(),
                step.result(),
                step.basis(),
                step.source()));
      }
    }

    Worksheet toWorksheet() {
      return new Worksheet(title, steps);
    }
  }
}
