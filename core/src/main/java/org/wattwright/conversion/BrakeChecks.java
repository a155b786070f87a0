package org.wattwright.conversion;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wattwright.check.Check;
import org.wattwright.check.Outcome;
import org.wattwright.check.Source;
import org.wattwright.vehicle.BrakeComparison;
import org.wattwright.vehicle.LoadState;
import org.wattwright.vehicle.ParkingBrake;
import org.wattwright.vehicle.Stance;

/** The brakes after the conversion, and against those before. */
final class BrakeChecks {
  /** Dry road; the upper end of the range of UN R13-H, Annex 5. */
  static final double DRY_ROAD = 0.8;

  /** Wet road, for the parking brake; common practice. */
  static final double WET_ROAD = 0.6;

  private BrakeChecks() {}

  static List<Check> of(VehicleReview review, LoadState state) {
    Optional<BrakeComparison> brakes = review.brakes(state);
    if (brakes.isEmpty()) {
      return List.of(notChecked(review, state));
    }
    List<Check> checks = new ArrayList<>();
    checks.add(brakes.get().after().checkLockOrder());
    checks.add(brakes.get().after().checkAdhesionUse(DRY_ROAD));
    for (Check check : brakes.get().check(DRY_ROAD)) {
      checks.add(check.code().equals("brake.efficiency.change") ? asAdvice(check) : check);
    }
    return checks.stream().map(check -> check.in(state.loadCase().name())).toList();
  }

  /**
   * Less of the grip in use is no broken rule as long as enough is left, which has a check of its
   * own; but somebody should look at the brakes.
   */
  private static Check asAdvice(Check change) {
    return Check.named(
            "brake.grip.change",
            "no less of the grip is used before a wheel locks than before the conversion")
        .source(change.source())
        .basis(change.basis())
        .safety()
        .note("after and before: " + change.comparison())
        .recommends(change.outcome() != Outcome.FAIL);
  }

  private static Check notChecked(VehicleReview review, LoadState state) {
    List<String> missing = new ArrayList<>(state.missingForHeight());
    if (review.chassis().rearBrakeShare().isEmpty()) {
      missing.add("Chassis.brakes");
    }
    return Check.named("brake.balance", "brake balance, " + state.loadCase().name())
        .source(Source.requirement("brakes no worse than before the conversion"))
        .safety()
        .notChecked(missing.toArray(String[]::new));
  }

  /** Grade held by the heaviest vehicle. */
  static List<Check> parking(VehicleReview review) {
    LoadState heaviest = review.heaviest();
    Optional<ParkingBrake> brake = review.chassis().parkingBrake();
    Optional<Stance> stance = heaviest.stance();
    if (brake.isPresent() && stance.isPresent()) {
      return brake.get().check(stance.get(), ParkingBrake.USUAL_GRADE, WET_ROAD).stream()
          .map(check -> check.in(heaviest.loadCase().name()))
          .toList();
    }
    List<String> missing = new ArrayList<>(heaviest.missingForHeight());
    if (brake.isEmpty()) {
      missing.add("Chassis.parkingBrake");
    }
    return List.of(
        Check.named("parking.grade", "grade held, " + heaviest.loadCase().name())
            .source(Source.standard("UN R13-H", "Annex 3, from memory"))
            .safety()
            .notChecked(missing.toArray(String[]::new)));
  }
}
