package org.wattwright.examples;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Speed;
import org.wattwright.check.Basis;
import org.wattwright.check.Given;
import org.wattwright.conversion.Chassis;
import org.wattwright.examples.job.VehicleInput;
import org.wattwright.units.Measures;
import org.wattwright.vehicle.Axle;
import org.wattwright.vehicle.BrakeHeat;
import org.wattwright.vehicle.BrakeHeatSink;
import org.wattwright.vehicle.CorneringStiffness;
import org.wattwright.vehicle.Descent;
import org.wattwright.vehicle.RuleSet;

/** What road, speed and rules ask of the vehicle, as far as a job states it. */
final class RoadParts {
  /** Of an estimate whose job does not say how far it may be off. */
  private static final double USUAL_MOST_OFF = 0.25;

  private RoadParts() {}

  static Chassis addTo(Chassis chassis, VehicleInput input) {
    Chassis result = chassis;
    for (RuleSet rules : input.rules()) {
      result = result.rules(rules);
    }
    Optional<VehicleInput.Descent> descent = input.road().descent();
    if (descent.isPresent()) {
      result = result.descent(descent(descent.get(), weighed(input)));
    }
    for (Axle axle : Axle.values()) {
      Optional<BrakeHeat> heat = heat(input, axle);
      if (heat.isPresent()) {
        result = result.brakeHeat(heat.get());
      }
    }
    Optional<CorneringStiffness> front = stiffness(input, Axle.FRONT);
    Optional<CorneringStiffness> rear = stiffness(input, Axle.REAR);
    Optional<Quantity<Speed>> topSpeed = input.road().topSpeed();
    return front.isPresent() && rear.isPresent() && topSpeed.isPresent()
        ? result.handling(front.get(), rear.get(), topSpeed.get())
        : result;
  }

  private static Quantity<Mass> weighed(VehicleInput input) {
    return VehicleParts.weighed(input).axles().total();
  }

  private static Descent descent(VehicleInput.Descent road, Quantity<Mass> mass) {
    return road.origin()
        .locate(
            () ->
                Descent.builder()
                    .mass(mass)
                    .drop(road.drop())
                    .distance(road.distance())
                    .speed(road.speed())
                    .build());
  }

  private static Optional<BrakeHeat> heat(VehicleInput input, Axle axle) {
    return input
        .on(axle)
        .brakeHeat()
        .flatMap(
            capacity ->
                input
                    .road()
                    .liningLimit()
                    .map(
                        limit -> {
                          BrakeHeat heat =
                              BrakeHeat.of(BrakeHeatSink.uncooled(axle, capacity.value()), limit);
                          return capacity.basis() == Basis.ESTIMATED
                              ? heat.estimatedWithin(mostOff(input))
                              : heat.withBasis(capacity.basis());
                        }));
  }

  private static Optional<CorneringStiffness> stiffness(VehicleInput input, Axle axle) {
    Optional<Given<Quantity<Force>>> force = input.on(axle).cornering();
    return force.map(
        given -> {
          CorneringStiffness stiffness =
              CorneringStiffness.ofTyre(axle, given.value(), Measures.degrees(1));
          return given.basis() == Basis.ESTIMATED
              ? stiffness.estimatedWithin(mostOff(input))
              : stiffness.withBasis(given.basis());
        });
  }

  private static double mostOff(VehicleInput input) {
    return input.road().mostOff().orElse(USUAL_MOST_OFF);
  }
}
