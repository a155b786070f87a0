package org.wattwright.examples;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.wattwright.check.Given;
import org.wattwright.conversion.Chassis;
import org.wattwright.examples.job.PartMassInput;
import org.wattwright.examples.job.PlaceInput;
import org.wattwright.examples.job.SeatInput;
import org.wattwright.examples.job.VehicleInput;
import org.wattwright.units.Measures;
import org.wattwright.vehicle.Axle;
import org.wattwright.vehicle.AxleLift;
import org.wattwright.vehicle.AxleLimits;
import org.wattwright.vehicle.AxleLimitsBuilder;
import org.wattwright.vehicle.AxleSpring;
import org.wattwright.vehicle.MassItem;
import org.wattwright.vehicle.ParkingBrake;
import org.wattwright.vehicle.Position;
import org.wattwright.vehicle.Seating;
import org.wattwright.vehicle.WeighedVehicle;
import org.wattwright.vehicle.WeighedVehicleBuilder;

/**
 * Makes the library's vehicle out of what a job states; what is wrong is reported with its line.
 */
final class VehicleParts {
  private VehicleParts() {}

  /** The vehicle on the scales, with the height of its centre of gravity if it was raised. */
  static WeighedVehicle weighed(VehicleInput input) {
    return input
        .origin()
        .locate(
            () -> {
              WeighedVehicleBuilder builder = level(input);
              lift(input).ifPresent(builder::centreOfGravityHeight);
              return builder.build();
            });
  }

  /** The weighing with the rear axle raised; empty if there was none. */
  static Optional<AxleLift> lift(VehicleInput input) {
    return input
        .scales()
        .lift()
        .map(
            lift ->
                lift.origin()
                    .locate(
                        () ->
                            AxleLift.of(level(input).build(), Axle.REAR)
                                .reading(lift.frontReading())
                                .rise(lift.rise())
                                .frontLoadedRadius(lift.frontRadius())
                                .rearLoadedRadius(lift.rearRadius())
                                .lengthTolerance(lift.lengthTolerance())
                                .build()));
  }

  private static WeighedVehicleBuilder level(VehicleInput input) {
    VehicleInput.Scales scales = input.scales();
    WeighedVehicleBuilder builder =
        WeighedVehicle.withWheelbase(scales.wheelbase())
            .frontLeft(scales.frontLeft())
            .frontRight(scales.frontRight())
            .rearLeft(scales.rearLeft())
            .rearRight(scales.rearRight())
            .readingTolerance(scales.tolerance());
    input.front().track().ifPresent(builder::frontTrack);
    input.rear().track().ifPresent(builder::rearTrack);
    input.front().rollStiffness().ifPresent(builder::frontRollStiffness);
    input.rear().rollStiffness().ifPresent(builder::rearRollStiffness);
    return builder;
  }

  static List<MassItem> items(VehicleInput input, PartMassInput.Change change) {
    return input.parts(change).stream().map(VehicleParts::item).toList();
  }

  private static MassItem item(PartMassInput part) {
    return part.origin()
        .locate(
            () -> {
              MassItem item =
                  MassItem.of(part.name(), part.mass(), position(part.place()))
                      .withMassTolerance(part.tolerance().mass())
                      .withPositionTolerance(part.tolerance().position())
                      .withBasis(part.basis());
              return part.carriedBy() == PartMassInput.CarriedBy.AXLE ? item.onAxle() : item;
            });
  }

  static Position position(PlaceInput place) {
    Position position = Position.behindFrontAxle(place.behind());
    if (place.left().isPresent()) {
      position = position.leftOfCentre(place.left().get());
    }
    return place.above().isPresent() ? position.aboveGround(place.above().get()) : position;
  }

  static Seating seating(VehicleInput input) {
    Seating seating = Seating.driverAt(position(seats(input, SeatInput.Use.DRIVER).get(0).place()));
    for (SeatInput row : seats(input, SeatInput.Use.PASSENGERS)) {
      seating = seating.row(row.name(), row.persons(), position(row.place()));
    }
    return seating;
  }

  /** Middle of the load space; empty if goods have no place. */
  static Optional<Position> goods(VehicleInput input) {
    return seats(input, SeatInput.Use.GOODS).stream()
        .findFirst()
        .map(seat -> position(seat.place()));
  }

  private static List<SeatInput> seats(VehicleInput input, SeatInput.Use use) {
    return input.seats().stream().filter(seat -> seat.use() == use).toList();
  }

  static AxleLimits limits(VehicleInput input) {
    AxleLimitsBuilder builder = AxleLimits.builder();
    input.plates().front().ifPresent(builder::frontAxle);
    input.plates().rear().ifPresent(builder::rearAxle);
    input.plates().gross().ifPresent(builder::grossMass);
    input.front().tyre().ifPresent(builder::frontTyre);
    input.rear().tyre().ifPresent(builder::rearTyre);
    return builder.build();
  }

  static Chassis chassis(VehicleInput input) {
    Chassis chassis = Chassis.unknown();
    if (input.brakes().rearShare().isPresent()) {
      chassis = chassis.brakes(input.brakes().rearShare().get());
    }
    if (input.steeringShare().isPresent()) {
      Given<Double> asked = input.steeringShare().get();
      chassis = chassis.steeringShareAtLeast(asked.value(), asked.source());
    }
    Optional<ParkingBrake> parking = parkingBrake(input.brakes());
    if (parking.isPresent()) {
      chassis = chassis.parkingBrake(parking.get());
    }
    for (Axle axle : Axle.values()) {
      chassis = withAxle(chassis, axle, input);
    }
    return RoadParts.addTo(chassis, input);
  }

  private static Optional<ParkingBrake> parkingBrake(VehicleInput.Brakes brakes) {
    return brakes
        .parkingAxle()
        .map(ParkingBrake::on)
        .map(
            brake ->
                brakes
                    .parkingForce()
                    .map(force -> brake.withForce(force.value(), force.basis()))
                    .orElse(brake));
  }

  private static Chassis withAxle(Chassis chassis, Axle axle, VehicleInput input) {
    VehicleInput.AxleParts parts = input.on(axle);
    Quantity<Length> least = input.leastTravel().orElse(Measures.millimetres(0));
    Chassis result = chassis;
    if (parts.wheelRate().isPresent() && parts.bumpTravel().isPresent()) {
      AxleSpring spring =
          AxleSpring.of(axle, parts.wheelRate().get().value(), parts.bumpTravel().get())
              .withBasis(parts.wheelRate().get().basis());
      result = result.spring(spring, least);
    }
    if (parts.tyre().isPresent() && parts.pressure().isPresent()) {
      result = result.tyrePressure(axle, parts.tyre().get(), parts.pressure().get());
    }
    return result;
  }
}
