package org.wattwright.conversion;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.wattwright.check.Check;
import org.wattwright.check.Given;
import org.wattwright.check.Source;
import org.wattwright.check.Worksheet;
import org.wattwright.vehicle.Axle;
import org.wattwright.vehicle.BrakeHeat;
import org.wattwright.vehicle.Descent;

/** How hot the brakes get on a long descent that the drive does not help with. */
final class DescentChecks {
  private DescentChecks() {}

  static List<Check> of(VehicleReview review) {
    return Arrays.stream(Axle.values()).map(axle -> check(review, axle)).toList();
  }

  private static Check check(VehicleReview review, Axle axle) {
    Optional<Descent> descent = review.descent();
    Optional<BrakeHeat> heat = review.chassis().brakeHeat(axle);
    Optional<Given<Double>> rear = review.chassis().rearBrakeShare();
    String name = review.heaviest().loadCase().name();
    if (descent.isPresent() && heat.isPresent() && rear.isPresent()) {
      return descent
          .get()
          .check(heat.get(), share(axle, rear.get().value()), rear.get().basis())
          .in(name);
    }
    List<String> missing = new ArrayList<>();
    descent.ifPresentOrElse(road -> {}, () -> missing.add("Chassis.descent"));
    heat.ifPresentOrElse(
        known -> {}, () -> missing.add("Chassis.brakeHeat of the " + axle + " axle"));
    rear.ifPresentOrElse(share -> {}, () -> missing.add("Chassis.brakes"));
    return Check.named(
            "brake.descent." + axle, axle + " brakes on a long descent, full or cold pack, " + name)
        .source(Source.dataSheet("brake lining"))
        .safety()
        .notChecked(missing.toArray(String[]::new));
  }

  private static double share(Axle axle, double rearShare) {
    return axle == Axle.REAR ? rearShare : 1 - rearShare;
  }

  /** One for each axle of which enough is known. */
  static List<Worksheet> worksheets(VehicleReview review) {
    List<Worksheet> sheets = new ArrayList<>();
    Optional<Descent> descent = review.descent();
    Optional<Given<Double>> rear = review.chassis().rearBrakeShare();
    if (descent.isEmpty() || rear.isEmpty()) {
      return sheets;
    }
    for (Axle axle : Axle.values()) {
      review
          .chassis()
          .brakeHeat(axle)
          .map(heat -> descent.get().worksheet(heat, share(axle, rear.get().value())))
          .ifPresent(sheets::add);
    }
    return sheets;
  }
}
