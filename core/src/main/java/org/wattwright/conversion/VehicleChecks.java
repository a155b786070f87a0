package org.wattwright.conversion;

import static org.wattwright.units.WorkshopUnits.KILOPASCAL;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.units.Kind;
import org.wattwright.vehicle.Axle;
import org.wattwright.vehicle.InflationLaw;
import org.wattwright.vehicle.LoadState;
import org.wattwright.vehicle.RuleSubject;
import org.wattwright.vehicle.StabilityFactor;

/** All checks of a vehicle review, in a fixed order. */
final class VehicleChecks {
  private static final Source PRESSURE_LAW =
      Source.standard("ETRTO Standards Manual", "load formula");

  private VehicleChecks() {}

  static List<Check> inCase(VehicleReview review, LoadState state) {
    List<Check> checks = new ArrayList<>(review.limits().check(state));
    checks.add(steeringShare(review.chassis(), state));
    checks.addAll(BrakeChecks.of(review, state));
    checks.add(stability(state));
    checks.add(HandlingChecks.of(review, state));
    for (Axle axle : Axle.values()) {
      checks.add(spring(review.chassis(), state, axle));
    }
    return List.copyOf(checks);
  }

  static List<Check> overall(VehicleReview review) {
    List<Check> checks = new ArrayList<>();
    checks.add(review.limits().checkPlates());
    for (Axle axle : Axle.values()) {
      checks.add(pressure(review, axle));
    }
    checks.addAll(BrakeChecks.parking(review));
    checks.addAll(DescentChecks.of(review));
    checks.addAll(rules(review));
    return List.copyOf(checks);
  }

  /** For a ledger without load cases: kerb alone says nothing about the gross mass. */
  static Check missingLoadCases() {
    return Check.named("vehicle.load-cases", "the laden vehicle")
        .source(Source.PHYSICS)
        .safety()
        .notChecked("Conversion.loadCases");
  }

  /** For a conversion without a ledger: nothing is known of what the vehicle carries. */
  static Check missingMasses() {
    return Check.named("vehicle.masses", "axles, tyres, brakes and springs of the vehicle")
        .source(Source.PHYSICS)
        .safety()
        .notChecked("Conversion.masses");
  }

  private static Check steeringShare(Chassis chassis, LoadState state) {
    Figure share = Figure.share(state.frontShare());
    CheckBuilder check =
        Check.named("axle.steering.share", "share of the steering axle, " + state.loadCase().name())
            .basis(state.basis())
            .note("before: " + Figure.share(state.before().frontShare()))
            .safety();
    Optional<Chassis.SteeringShare> asked = chassis.steeringShare();
    return asked.isPresent()
        ? check.source(asked.get().source()).atLeast(share, Figure.share(asked.get().least()))
        : check.source(Source.PHYSICS).notChecked(share, "Chassis.steeringShareAtLeast");
  }

  private static Check stability(LoadState state) {
    Optional<StabilityFactor> after = StabilityFactor.of(state);
    Optional<StabilityFactor> before = StabilityFactor.of(state.before());
    if (after.isPresent() && before.isPresent()) {
      return after.get().checkAgainst(before.get()).in(state.loadCase().name());
    }
    List<String> missing = new ArrayList<>(state.missingForHeight());
    for (Axle axle : Axle.values()) {
      if (state.vehicle().track(axle).isEmpty()) {
        missing.add("WeighedVehicle." + axle + "Track");
      }
    }
    return Check.named(
            "stability.change",
            "static stability factor against that before, " + state.loadCase().name())
        .source(Source.requirement("no less stable than before the conversion"))
        .safety()
        .notChecked(missing.toArray(String[]::new));
  }

  private static Check spring(Chassis chassis, LoadState state, Axle axle) {
    Optional<Chassis.Spring> spring = chassis.spring(axle);
    if (spring.isPresent()) {
      return spring.get().spring().check(state, spring.get().least());
    }
    return Check.named(
            "spring." + axle,
            "bump travel left on the " + axle + " axle, " + state.loadCase().name())
        .source(Source.requirement("bump travel"))
        .notChecked("Chassis.spring of the " + axle + " axle");
  }

  /** At the load case that loads the axle most. */
  private static Check pressure(VehicleReview review, Axle axle) {
    LoadState worst = worst(review, axle);
    CheckBuilder check =
        Check.named(
                "tyre.pressure." + axle,
                "pressure of the " + axle + " tyres, " + worst.loadCase().name())
            .source(PRESSURE_LAW)
            .basis(worst.basis())
            .safety();
    Optional<Chassis.TyrePressure> run = review.chassis().tyrePressure(axle);
    if (run.isEmpty()) {
      return check.notChecked("Chassis.tyrePressure of the " + axle + " axle");
    }
    Optional<InflationLaw> law = InflationLaw.of(run.get().tyre());
    if (law.isEmpty()) {
      return check.notChecked("load table of " + run.get().tyre());
    }
    return check
        .basisOf(run.get().pressure())
        .atLeast(
            Figure.of(run.get().pressure().value(), KILOPASCAL),
            Figure.of(law.get().pressureFor(wheelLoad(worst, axle)), KILOPASCAL));
  }

  static LoadState worst(VehicleReview review, Axle axle) {
    return review.states().stream()
        .max((a, b) -> Kind.MASS.compare(a.axles().on(axle), b.axles().on(axle)))
        .orElseThrow();
  }

  /** The heavier wheel where it is known, else half the axle. */
  static Quantity<Mass> wheelLoad(LoadState state, Axle axle) {
    return state
        .wheels()
        .map(wheels -> wheels.heavier(axle))
        .orElseGet(() -> Kind.MASS.ofSi(Kind.MASS.siValueOf(state.axles().on(axle)) / 2));
  }

  private static List<Check> rules(VehicleReview review) {
    RuleSubject subject = review.ruleSubject();
    return review.chassis().rules().stream()
        .flatMap(rules -> rules.check(subject).stream())
        .toList();
  }
}
