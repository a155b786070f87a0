package org.wattwright.conversion;

import static org.wattwright.units.WorkshopUnits.KILOMETRE;
import static org.wattwright.units.WorkshopUnits.KILOMETRE_PER_HOUR;
import static org.wattwright.units.WorkshopUnits.SECOND;
import static org.wattwright.units.WorkshopUnits.WATT;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Length;
import javax.measure.quantity.Power;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.battery.Ageing;
import org.wattwright.check.Check;
import org.wattwright.check.Given;
import org.wattwright.check.Source;
import org.wattwright.drive.Ability;
import org.wattwright.drive.DriveCycle;
import org.wattwright.drive.ElectricVehicle;
import org.wattwright.drive.LimitedDrive;
import org.wattwright.drive.Performance;
import org.wattwright.drive.PowerLimitStudy;
import org.wattwright.drive.RangeResult;
import org.wattwright.drive.SmallestLimit;
import org.wattwright.internal.MissingFields;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.StateOfCharge;

/**
 * How the converted vehicle goes: performance, range when new, laden, aged and in winter, what a
 * limit costs, and whether that is what was asked for.
 *
 * <pre>{@code
 * Motion motion = Motion.of(van)
 *     .laden(ladenVan)
 *     .startsOn(0.2, Source.requirement("customer: harbour hill"))
 *     .goes(RangeCase.WINTER, kilometres(90), Source.requirement("customer: two rounds"))
 *     .cycle(StandardCycle.ECE_15.cycle()).reserve(percentCharge(10))
 *     .winter(celsius(-5), kilowatts(2))
 *     .build();
 * motion.checks().forEach(System.out::println);
 * }</pre>
 *
 * <p>Ranges and checks are worked out once, when it is built. A range is an estimate and no
 * promise. Immutable and thread-safe.
 */
public final class Motion {
  private static final Given<Ageing> END_OF_LIFE =
      Given.estimated(Ageing.END_OF_TRACTION_LIFE, Source.commonPractice("end of traction life"));

  private final ElectricVehicle vehicle;
  private final @Nullable ElectricVehicle laden;
  private final Given<Ageing> ageing;
  private final @Nullable ElectricVehicle winter;
  private final List<DriveCycle> cycles;
  private final StateOfCharge reserve;
  private final List<Quantity<ElectricCurrent>> limits;
  private final List<MotionDemand> demands;
  private final Performance performance;
  private final Map<RangeCase, Map<DriveCycle, RangeResult>> ranges;
  private final List<Check> checks;

  private Motion(Builder builder) {
    vehicle = builder.vehicle;
    laden = builder.laden;
    ageing = builder.ageing;
    winter = builder.winter;
    cycles = List.copyOf(builder.cycles);
    reserve = MissingFields.present(builder.reserve);
    limits = builder.limits;
    demands = List.copyOf(builder.demands);
    performance = Performance.of(vehicle);
    ranges = MotionRuns.ranges(this);
    checks = MotionRuns.checks(this);
  }

  /**
   * Starts with the vehicle as new, with its driver, pack as charged.
   *
   * @param vehicle motor, driveline, road load, pack, and its state at the start
   * @return a builder
   */
  public static Builder of(ElectricVehicle vehicle) {
    return new Builder(Objects.requireNonNull(vehicle, "vehicle"));
  }

  /** Collects what is asked. */
  public static final class Builder {
    private final ElectricVehicle vehicle;
    private @Nullable ElectricVehicle laden;
    private Given<Ageing> ageing = END_OF_LIFE;
    private @Nullable ElectricVehicle winter;
    private final List<DriveCycle> cycles = new ArrayList<>();
    private @Nullable StateOfCharge reserve;
    private List<Quantity<ElectricCurrent>> limits = List.of();
    private final List<MotionDemand> demands = new ArrayList<>();

    Builder(ElectricVehicle vehicle) {
      this.vehicle = vehicle;
    }

    /**
     * The vehicle fully laden, given whole: its mass and what its driven axle then carries.
     *
     * @param value of the same pack
     * @return this builder
     */
    public Builder laden(ElectricVehicle value) {
      laden = Objects.requireNonNull(value, "laden");
      return this;
    }

    /**
     * Asks for a grade at a speed, {@code drive.hold}, of the vehicle as given first.
     *
     * @param speed &gt; 0 km/h
     * @param grade tangent, 0.05 for 5 %
     * @param source who asks
     * @return this builder
     * @throws InvalidInputException if the speed is not positive or the grade not from 0 to 1
     */
    public Builder holds(Quantity<Speed> speed, double grade, Source source) {
      Require.quantity("Motion.holds.speed", speed, KILOMETRE_PER_HOUR).positive();
      return ask(new MotionDemand.Hold(speed, grade("Motion.holds", grade), named(source)));
    }

    /**
     * Asks for a start on a grade, laden, {@code drive.start}.
     *
     * @param grade tangent, 0.2 for 20 %
     * @param source who asks
     * @return this builder
     * @throws InvalidInputException if the grade is not from 0 to 1
     */
    public Builder startsOn(double grade, Source source) {
      return ask(new MotionDemand.Start(grade("Motion.startsOn", grade), named(source)));
    }

    /**
     * Asks for a top speed on the level, {@code drive.top-speed}.
     *
     * @param speed &gt; 0 km/h
     * @param source who asks
     * @return this builder
     * @throws InvalidInputException if the speed is not positive
     */
    public Builder topSpeed(Quantity<Speed> speed, Source source) {
      Require.quantity("Motion.topSpeed", speed, KILOMETRE_PER_HOUR).positive();
      return ask(new MotionDemand.TopSpeed(speed, named(source)));
    }

    /**
     * Asks for a speed from rest within a time, {@code drive.time}.
     *
     * @param speed &gt; 0 km/h
     * @param within &gt; 0 s
     * @param source who asks
     * @return this builder
     * @throws InvalidInputException if an amount is not positive
     */
    public Builder reaches(Quantity<Speed> speed, Quantity<Time> within, Source source) {
      Require.quantity("Motion.reaches.speed", speed, KILOMETRE_PER_HOUR).positive();
      Require.quantity("Motion.reaches.within", within, SECOND).positive();
      return ask(new MotionDemand.Reach(speed, within, named(source)));
    }

    /**
     * Asks for a range on the first cycle, down to the reserve: {@code range.new}, {@code
     * range.laden}, {@code range.aged} or {@code range.winter}.
     *
     * @param state in which
     * @param distance &gt; 0 km
     * @param source who asks
     * @return this builder
     * @throws InvalidInputException if the distance is not positive
     */
    public Builder goes(RangeCase state, Quantity<Length> distance, Source source) {
      Require.quantity("Motion.goes", distance, KILOMETRE).positive();
      Objects.requireNonNull(state, "state");
      return ask(new MotionDemand.Goes(state, distance, named(source)));
    }

    private Builder ask(MotionDemand demand) {
      demands.add(demand);
      return this;
    }

    private static double grade(String field, double grade) {
      return Require.between(field + ".grade", grade, 0, 1);
    }

    private static Source named(Source source) {
      return Objects.requireNonNull(source, "source");
    }

    /**
     * Adds a cycle; at least one is required. Ranges asked for are those on the first.
     *
     * @param value the cycle
     * @return this builder
     */
    public Builder cycle(DriveCycle value) {
      cycles.add(Objects.requireNonNull(value, "cycle"));
      return this;
    }

    /**
     * The state of charge kept in reserve. Required.
     *
     * @param value below that at the start
     * @return this builder
     */
    public Builder reserve(StateOfCharge value) {
      reserve = Objects.requireNonNull(value, "reserve");
      return this;
    }

    /**
     * The age that the aged range is worked out for. Unless told {@link
     * Ageing#END_OF_TRACTION_LIFE}, common practice and so an estimate.
     *
     * @param value capacity and resistance against those of the pack as given, with what they rest
     *     on
     * @return this builder
     */
    public Builder aged(Given<Ageing> value) {
      ageing = Objects.requireNonNull(value, "ageing");
      return this;
    }

    /**
     * Winter: pack and air at this temperature, air of 101.325 kPa, heater on all the way. The
     * rolling resistance stays as stated; that of cold tyres is higher.
     *
     * @param temperature of pack and air
     * @param heater drawn from the pack, beside the auxiliaries, ≥ 0 W
     * @return this builder
     * @throws InvalidInputException if the power is below zero
     */
    public Builder winter(Quantity<Temperature> temperature, Quantity<Power> heater) {
      Require.quantity("Motion.winter.heater", heater, WATT).nonNegative();
      winter = MotionRuns.winter(vehicle, temperature, heater);
      return this;
    }

    /**
     * The limits on the current of the pack to look at in the power-limit study.
     *
     * @param values each &gt; 0 A
     * @return this builder
     */
    public Builder currentLimits(List<Quantity<ElectricCurrent>> values) {
      limits = List.copyOf(values);
      return this;
    }

    /**
     * Drives all cycles and makes the checks.
     *
     * @return the motion
     * @throws InvalidInputException if cycle or reserve is missing, one error lists both; if the
     *     reserve is not below the charge at the start; if the laden vehicle has another pack
     */
    public Motion build() {
      new MissingFields("Motion")
          .field("cycle", cycles.isEmpty() ? null : cycles)
          .field("reserve", reserve)
          .rejectIfAny();
      if (laden != null && !laden.pack().equals(vehicle.pack())) {
        throw InvalidInputException.of(
            "Motion.laden.pack", "the pack of the vehicle", laden.pack().toString());
      }
      return new Motion(this);
    }
  }

  /**
   * The vehicle as new.
   *
   * @return as given
   */
  public ElectricVehicle vehicle() {
    return vehicle;
  }

  /**
   * The vehicle fully laden.
   *
   * @return empty if not given
   */
  public Optional<ElectricVehicle> laden() {
    return Optional.ofNullable(laden);
  }

  /**
   * The vehicle in one of the states that a range is given for.
   *
   * @param state which
   * @return empty if nothing is said about winter, or about the load
   */
  public Optional<ElectricVehicle> vehicleIn(RangeCase state) {
    return switch (state) {
      case NEW -> Optional.of(vehicle);
      case LADEN -> laden();
      case AGED ->
          Optional.of(vehicle.toBuilder().pack(vehicle.pack().aged(ageing.value())).build());
      case WINTER -> Optional.ofNullable(winter);
    };
  }

  /**
   * Age of the aged pack.
   *
   * @return against the pack as given, with what it rests on
   */
  public Given<Ageing> ageing() {
    return ageing;
  }

  /**
   * The cycles.
   *
   * @return in the order given, at least one
   */
  public List<DriveCycle> cycles() {
    return cycles;
  }

  /**
   * What is kept in reserve.
   *
   * @return the state of charge at the end of every range
   */
  public StateOfCharge reserve() {
    return reserve;
  }

  /**
   * Full pedal, of the vehicle as new.
   *
   * @return its performance
   */
  public Performance performance() {
    return performance;
  }

  /**
   * A range, as worked out when this was built.
   *
   * @param state new, laden, aged or winter
   * @param cycle one of {@link #cycles()}
   * @return empty if nothing is said about winter or about the load, or if the cycle is another one
   */
  public Optional<RangeResult> range(RangeCase state, DriveCycle cycle) {
    return Optional.ofNullable(ranges.getOrDefault(state, Map.of()).get(cycle));
  }

  List<MotionDemand> demands() {
    return demands;
  }

  /**
   * The limits on the current of the pack to look at.
   *
   * @return empty if none was given
   */
  public List<Quantity<ElectricCurrent>> currentLimits() {
    return limits;
  }

  /**
   * Half-shafts, gears and traction, as new and laden; cycles followed; everything asked for.
   *
   * @return an immutable list in a fixed order
   */
  public List<Check> checks() {
    return checks;
  }

  /**
   * What each of {@link #currentLimits()} costs, on the first cycle; worked out at each call. The
   * laden grade is that of the laden road load with the grip of the vehicle as new.
   *
   * @return a row each; empty if there are no limits
   */
  public List<LimitedDrive> limitedDrives() {
    return limits.isEmpty() ? List.of() : study().byCurrent(limits);
  }

  /**
   * The smallest limit on the current that still gives everything asked for but the ranges; worked
   * out at each call.
   *
   * @return empty if nothing such is asked for
   */
  public Optional<SmallestLimit<ElectricCurrent>> smallestCurrent() {
    List<Ability> abilities = demands.stream().flatMap(d -> d.ability(this).stream()).toList();
    return abilities.isEmpty() ? Optional.empty() : Optional.of(study().smallestCurrent(abilities));
  }

  private PowerLimitStudy study() {
    return PowerLimitStudy.of(vehicle, cycles.get(0), reserve, laden().orElse(vehicle).roadLoad());
  }

  /** What the fingerprint rests on. */
  Map<String, Object> inputs() {
    Map<String, Object> inputs = new LinkedHashMap<>();
    inputs.put("vehicle", vehicle);
    inputs.put("laden", laden());
    inputs.put("ageing", ageing);
    inputs.put("winter", vehicleIn(RangeCase.WINTER));
    inputs.put("cycles", cycles);
    inputs.put("reserve", reserve);
    inputs.put("limits", limits);
    inputs.put("demands", demands);
    return inputs;
  }

  /**
   * Vehicle and ranges on the first cycle.
   *
   * @return for example {@code range on ECE-15: new 195 km, aged 151 km, winter 121 km}
   */
  @Override
  public String toString() {
    return MotionRuns.summary(this);
  }
}
