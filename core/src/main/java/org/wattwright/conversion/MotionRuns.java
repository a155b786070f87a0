package org.wattwright.conversion;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;
import org.wattwright.battery.CellProperty;
import org.wattwright.battery.PackState;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Source;
import org.wattwright.drive.AirDensity;
import org.wattwright.drive.CycleRun;
import org.wattwright.drive.DriveCycle;
import org.wattwright.drive.ElectricVehicle;
import org.wattwright.drive.Following;
import org.wattwright.drive.Performance;
import org.wattwright.drive.RangeResult;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/** Ranges and checks of a motion. */
final class MotionRuns {
  private MotionRuns() {}

  static ElectricVehicle winter(
      ElectricVehicle vehicle, Quantity<Temperature> temperature, Quantity<Power> heater) {
    return vehicle.toBuilder()
        .at(PackState.of(vehicle.state().stateOfCharge(), temperature))
        .roadLoad(
            vehicle
                .roadLoad()
                .withAirDensity(AirDensity.at(temperature, Measures.kilopascals(101.325))))
        .heater(heater)
        .build();
  }

  static Map<RangeCase, Map<DriveCycle, RangeResult>> ranges(Motion motion) {
    Map<RangeCase, Map<DriveCycle, RangeResult>> ranges = new EnumMap<>(RangeCase.class);
    for (RangeCase state : RangeCase.values()) {
      Optional<ElectricVehicle> vehicle = motion.vehicleIn(state);
      if (vehicle.isPresent()) {
        CycleRun run = CycleRun.of(vehicle.get());
        Map<DriveCycle, RangeResult> byCycle = new LinkedHashMap<>();
        motion.cycles().forEach(c -> byCycle.put(c, run.range(c, motion.reserve())));
        ranges.put(state, Collections.unmodifiableMap(byCycle));
      }
    }
    return Collections.unmodifiableMap(ranges);
  }

  static Check missing() {
    return Check.named("drive.motion", "performance and range of the vehicle")
        .source(Source.PHYSICS)
        .notChecked("Conversion.motion");
  }

  static List<Check> checks(Motion motion) {
    List<Check> checks = new ArrayList<>(motion.performance().checks());
    motion.laden().map(Performance::of).ifPresent(laden -> addLaden(checks, laden));
    motion.cycles().forEach(cycle -> checks.add(follows(motion, cycle)));
    motion.demands().forEach(demand -> checks.add(demand.check(motion)));
    return List.copyOf(checks);
  }

  /** A laden axle grips more, so that the half-shaft may get more. */
  private static void addLaden(List<Check> checks, Performance laden) {
    checks.add(laden.checkHalfShaft().in("laden"));
    checks.add(laden.checkTraction().in("laden"));
  }

  private static Check follows(Motion motion, DriveCycle cycle) {
    Following following = CycleRun.of(motion.vehicle()).once(cycle).following();
    CheckBuilder check = Check.named("drive.follow", "the vehicle follows " + cycle.name());
    return resting(check, motion.vehicle())
        .source(cycle.source())
        .note(following.toString())
        .recommends(following.isComplete());
  }

  /** With what the vehicle rests on, each estimate by its name. */
  static CheckBuilder resting(CheckBuilder check, ElectricVehicle vehicle) {
    check.basis(vehicle.basis());
    List<String> estimates = new ArrayList<>();
    if (vehicle.motor().basis() == Basis.ESTIMATED) {
      estimates.add("torque of " + vehicle.motor().name());
    }
    if (vehicle.driveline().circumference().basis() == Basis.ESTIMATED) {
      estimates.add("rolling circumference of the driven tyres");
    }
    if (vehicle.roadLoad().basis() == Basis.ESTIMATED) {
      estimates.add("road load of the vehicle");
    }
    for (CellProperty property :
        List.of(CellProperty.RESISTANCE, CellProperty.VOLTAGE, CellProperty.CAPACITY)) {
      if (vehicle.pack().basis(property) == Basis.ESTIMATED) {
        estimates.add("cells: " + property);
      }
    }
    return estimates.isEmpty() ? check : check.estimated(estimates.toArray(String[]::new));
  }

  static String summary(Motion motion) {
    DriveCycle cycle = motion.cycles().get(0);
    return Stream.of(RangeCase.values())
        .flatMap(state -> motion.range(state, cycle).map(r -> state + " " + distance(r)).stream())
        .collect(Collectors.joining(", ", "range on " + cycle.name() + ": ", ""));
  }

  static String distance(RangeResult range) {
    return Measures.format(range.distance(), Kind.LENGTH);
  }
}
