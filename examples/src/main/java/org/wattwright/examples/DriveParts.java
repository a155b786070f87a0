package org.wattwright.examples;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.wattwright.battery.Pack;
import org.wattwright.battery.PackState;
import org.wattwright.check.Check;
import org.wattwright.check.Given;
import org.wattwright.check.Source;
import org.wattwright.conversion.Motion;
import org.wattwright.conversion.RangeCase;
import org.wattwright.drive.Driveline;
import org.wattwright.drive.ElectricVehicle;
import org.wattwright.drive.ElectricVehicleBuilder;
import org.wattwright.drive.Gear;
import org.wattwright.drive.MotorEnvelope;
import org.wattwright.drive.MotorLoss;
import org.wattwright.drive.Regeneration;
import org.wattwright.drive.RoadLoad;
import org.wattwright.drive.RollingResistance;
import org.wattwright.drive.StandardCycle;
import org.wattwright.drive.Traction;
import org.wattwright.examples.job.DriveInput;
import org.wattwright.examples.job.Requirement;
import org.wattwright.units.Measures;
import org.wattwright.vehicle.Axle;
import org.wattwright.vehicle.LoadState;
import org.wattwright.voltage.BackEmf;
import org.wattwright.voltage.Device;
import org.wattwright.voltage.DeviceRole;

/** The moving vehicle, from what a job states. */
record DriveParts(DriveInput input, Requirement requirement, List<Device> devices) {

  /** With driver, and in the heaviest load case, with the pack as built. */
  Motion motion(Pack pack, VehicleDesign vehicle) {
    ElectricVehicle asGiven = vehicle(pack, vehicle.ledger().after(vehicle.loadCases().get(1)));
    ElectricVehicle laden =
        vehicle(
            pack, vehicle.ledger().after(vehicle.loadCases().get(vehicle.loadCases().size() - 1)));
    Motion.Builder builder =
        Motion.of(asGiven)
            .laden(laden)
            .cycle(StandardCycle.WLTC_CLASS_1.cycle())
            .cycle(StandardCycle.ECE_15.cycle())
            .reserve(input.use().reserve())
            .aged(input.use().aged())
            .winter(requirement.climate().coldest(), input.use().heater())
            .currentLimits(input.currentLimits());
    ask(builder, input.wanted());
    return input.origin().locate(builder::build);
  }

  private static void ask(Motion.Builder builder, DriveInput.Wanted wanted) {
    wanted
        .hold()
        .ifPresent(h -> builder.holds(h.speed(), h.grade().value(), asked("grade", h.grade())));
    wanted.startGrade().ifPresent(g -> builder.startsOn(g.value(), asked("start", g)));
    wanted.topSpeed().ifPresent(v -> builder.topSpeed(v.value(), asked("top speed", v)));
    wanted
        .timeToFifty()
        .ifPresent(
            t -> builder.reaches(Measures.kilometresPerHour(50), t.value(), asked("time", t)));
    range(builder, RangeCase.NEW, wanted.rangeNew());
    range(builder, RangeCase.LADEN, wanted.rangeLaden());
    range(builder, RangeCase.AGED, wanted.rangeAged());
    range(builder, RangeCase.WINTER, wanted.rangeWinter());
  }

  private static void range(
      Motion.Builder builder, RangeCase state, Optional<Given<Quantity<Length>>> wanted) {
    wanted.ifPresent(d -> builder.goes(state, d.value(), asked("range", d)));
  }

  private static Source asked(String what, Given<?> given) {
    String by = given.source().detail();
    return Source.requirement(by.isBlank() ? what : by);
  }

  private ElectricVehicle vehicle(Pack pack, LoadState state) {
    Given<Double> rolling = input.road().rolling();
    RoadLoad load =
        RoadLoad.of(
            state.total(),
            RollingResistance.of(rolling.value(), rolling.basis(), rolling.source()),
            input.road().dragArea());
    ElectricVehicleBuilder builder =
        ElectricVehicle.of(motor(), driveline(), load, pack)
            .at(PackState.of(requirement.energy().full(), input.use().temperature()))
            .auxiliaries(input.use().auxiliaries());
    state
        .stance()
        .ifPresent(
            stance -> builder.traction(Traction.of(stance, Axle.REAR, input.road().adhesion())));
    input
        .use()
        .regenerationForce()
        .ifPresent(
            force ->
                builder.regeneration(
                    Regeneration.ofShare(input.use().regenerationShare()).withForceAtMost(force)));
    return input.origin().locate(builder::build);
  }

  private MotorEnvelope motor() {
    DriveInput.Motor motor = input.motor();
    List<DriveInput.TorquePoint> curve = motor.curve();
    return input
        .origin()
        .locate(
            () ->
                MotorEnvelope.of(motor.device())
                    .peak(
                        curve.stream().map(DriveInput.TorquePoint::speed).toList(),
                        curve.stream().map(DriveInput.TorquePoint::peak).toList())
                    .continuous(
                        curve.stream().map(DriveInput.TorquePoint::speed).toList(),
                        curve.stream().map(DriveInput.TorquePoint::continuous).toList())
                    .maximumSpeed(motor.highestSpeed())
                    .loss(MotorLoss.constantEfficiency(motor.efficiency()))
                    .inverter(inverter())
                    .build());
  }

  private Driveline driveline() {
    DriveInput.Line line = input.line();
    return input
        .origin()
        .locate(
            () -> {
              Gear gear = Gear.of("fixed", line.ratio(), line.efficiency());
              Driveline driveline =
                  Driveline.of(
                      line.circumference(),
                      line.gearLimit().map(gear::withTorqueLimit).orElse(gear));
              return line.halfShaftLimit().map(driveline::withHalfShaftLimit).orElse(driveline);
            });
  }

  private Device inverter() {
    return devices.stream()
        .filter(device -> device.role() == DeviceRole.INVERTER)
        .filter(device -> device.name().equals(input.motor().device()))
        .findFirst()
        .orElseThrow(
            () -> input.origin().error("no inverter of that name: " + input.motor().device()));
  }

  /** The motor as a generator at overspeed; empty if nothing is stated about its magnets. */
  Optional<Check> backEmf() {
    return input
        .motor()
        .magnet()
        .map(
            magnet ->
                BackEmf.of(magnet.flux().value(), magnet.polePairs())
                    .check(inverter(), magnet.overspeed(), magnet.flux().basis()));
  }
}
