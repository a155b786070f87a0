package org.wattwright.conversion;

import static org.wattwright.units.WorkshopUnits.KILOMETRE_PER_HOUR;
import static org.wattwright.units.WorkshopUnits.KILOPASCAL;
import static org.wattwright.units.WorkshopUnits.MILLIMETRE;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Given;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.vehicle.Axle;
import org.wattwright.vehicle.AxleSpring;
import org.wattwright.vehicle.BrakeHeat;
import org.wattwright.vehicle.CorneringStiffness;
import org.wattwright.vehicle.Descent;
import org.wattwright.vehicle.ParkingBrake;
import org.wattwright.vehicle.RuleSet;
import org.wattwright.vehicle.Tyre;

/**
 * What carries and stops the vehicle, as far as it is known: brakes, springs, tyre pressures, and
 * what the workshop or a rule asks of them.
 *
 * <p>Nothing is required. What is left out is NOT_CHECKED in the review, never a pass.
 *
 * <pre>{@code
 * Chassis chassis = Chassis.unknown()
 *     .brakes(Given.measured(0.36, "line pressures and cylinders"))
 *     .spring(rearSpring, millimetres(30))
 *     .steeringShareAtLeast(0.35, Source.requirement("workshop"));
 * }</pre>
 *
 * <p>Immutable and thread-safe: every call returns a new chassis.
 */
public final class Chassis {
  private static final Chassis UNKNOWN =
      new Chassis(new Fields(null, null, null, null, null), Parts.NONE);

  private final Fields fields;
  private final Parts parts;

  /** What there is one of. */
  private record Fields(
      @Nullable Given<Double> rearBrakeShare,
      @Nullable ParkingBrake parkingBrake,
      @Nullable SteeringShare steeringShare,
      @Nullable Handling handling,
      @Nullable Descent descent) {}

  /** What there is one of for each axle, or any number. */
  private record Parts(
      Map<Axle, Spring> springs,
      Map<Axle, TyrePressure> pressures,
      Map<Axle, BrakeHeat> heats,
      List<RuleSet> rules) {
    static final Parts NONE = new Parts(Map.of(), Map.of(), Map.of(), List.of());
  }

  /** Stiffness of both axles and how fast the vehicle goes. */
  record Handling(CorneringStiffness front, CorneringStiffness rear, Quantity<Speed> topSpeed) {}

  /** A spring and the bump travel that must be left. */
  record Spring(AxleSpring spring, Quantity<Length> least) {}

  /** The tyre of an axle and the pressure it is run at. */
  record TyrePressure(Tyre tyre, Given<Quantity<Pressure>> pressure) {}

  /** The least share of the steering axle and who asks for it. */
  record SteeringShare(double least, Source source) {}

  private Chassis(Fields fields, Parts parts) {
    this.fields = fields;
    this.parts = parts;
  }

  /**
   * A chassis of which nothing is known.
   *
   * @return the start
   */
  public static Chassis unknown() {
    return UNKNOWN;
  }

  /**
   * With the share of the rear axle in the brake force, the same before and after.
   *
   * @param rearShare 0 to 1, with what it rests on
   * @return a new chassis
   * @throws InvalidInputException if the share is outside its range
   */
  public Chassis brakes(Given<Double> rearShare) {
    Require.fraction("Chassis.brakes", rearShare.value());
    return new Chassis(
        new Fields(
            rearShare, fields.parkingBrake, fields.steeringShare, fields.handling, fields.descent),
        parts);
  }

  /**
   * With the parking brake.
   *
   * @param brake axle and, if known, force
   * @return a new chassis
   */
  public Chassis parkingBrake(ParkingBrake brake) {
    Objects.requireNonNull(brake, "brake");
    return new Chassis(
        new Fields(
            fields.rearBrakeShare, brake, fields.steeringShare, fields.handling, fields.descent),
        parts);
  }

  /**
   * With the least share of the front axle, which steers, in every load case.
   *
   * @param least of the mass of the vehicle, 0 to 1
   * @param source who asks for it
   * @return a new chassis
   * @throws InvalidInputException if the share is outside its range
   */
  public Chassis steeringShareAtLeast(double least, Source source) {
    Require.fraction("Chassis.steeringShareAtLeast", least);
    SteeringShare asked = new SteeringShare(least, Objects.requireNonNull(source, "source"));
    return new Chassis(
        new Fields(
            fields.rearBrakeShare, fields.parkingBrake, asked, fields.handling, fields.descent),
        parts);
  }

  /**
   * With what the tyres of both axles do in a bend, and the top speed of the converted vehicle.
   *
   * @param front stiffness of the front axle; an estimate gives at most a caution
   * @param rear stiffness of the rear axle
   * @param topSpeed &gt; 0 km/h
   * @return a new chassis
   * @throws InvalidInputException if the top speed is not positive or a stiffness is that of the
   *     other axle
   */
  public Chassis handling(
      CorneringStiffness front, CorneringStiffness rear, Quantity<Speed> topSpeed) {
    Require.quantity("Chassis.topSpeed", topSpeed, KILOMETRE_PER_HOUR).positive();
    if (front.axle() != Axle.FRONT || rear.axle() != Axle.REAR) {
      throw InvalidInputException.of(
          "Chassis.handling", "of front and rear axle", front.axle() + ", " + rear.axle());
    }
    Handling handling = new Handling(front, rear, topSpeed);
    return new Chassis(
        new Fields(
            fields.rearBrakeShare,
            fields.parkingBrake,
            fields.steeringShare,
            handling,
            fields.descent),
        parts);
  }

  /**
   * With a long descent that the wheel brakes must stand without help from the drive, as with a
   * full or cold pack.
   *
   * @param road drop, distance and speed; its mass is replaced by that of the heaviest load case,
   *     and its regeneration left out
   * @return a new chassis
   */
  public Chassis descent(Descent road) {
    Descent alone = road.withoutRegeneration();
    return new Chassis(
        new Fields(
            fields.rearBrakeShare,
            fields.parkingBrake,
            fields.steeringShare,
            fields.handling,
            alone),
        parts);
  }

  /**
   * With the heat that the brakes of an axle can store; for the same axle it replaces.
   *
   * @param heat drums or discs, and what their linings stand
   * @return a new chassis
   */
  public Chassis brakeHeat(BrakeHeat heat) {
    Map<Axle, BrakeHeat> more = new EnumMap<>(Axle.class);
    more.putAll(parts.heats);
    more.put(heat.sink().axle(), heat);
    return new Chassis(
        fields, new Parts(parts.springs, parts.pressures, Map.copyOf(more), parts.rules));
  }

  /**
   * With the springs of an axle; for the same axle they replace.
   *
   * @param spring rate at the wheel and bump travel as weighed
   * @param leastTravel that must be left in every load case, ≥ 0 mm
   * @return a new chassis
   * @throws InvalidInputException if the travel is negative
   */
  public Chassis spring(AxleSpring spring, Quantity<Length> leastTravel) {
    Require.quantity("Chassis.leastTravel", leastTravel, MILLIMETRE).nonNegative();
    Map<Axle, Spring> more = new EnumMap<>(Axle.class);
    more.putAll(parts.springs);
    more.put(spring.axle(), new Spring(spring, leastTravel));
    return new Chassis(
        fields, new Parts(Map.copyOf(more), parts.pressures, parts.heats, parts.rules));
  }

  /**
   * With the pressure that the tyres of an axle are run at; for the same axle it replaces.
   *
   * @param axle front or rear
   * @param tyre fitted there, single
   * @param pressure cold, &gt; 0 kPa
   * @return a new chassis
   * @throws InvalidInputException if the pressure is not positive
   */
  public Chassis tyrePressure(Axle axle, Tyre tyre, Given<Quantity<Pressure>> pressure) {
    Objects.requireNonNull(axle, "axle");
    Objects.requireNonNull(tyre, "tyre");
    Require.quantity("Chassis." + axle + "TyrePressure", pressure.value(), KILOPASCAL).positive();
    Map<Axle, TyrePressure> more = new EnumMap<>(Axle.class);
    more.putAll(parts.pressures);
    more.put(axle, new TyrePressure(tyre, pressure));
    return new Chassis(
        fields, new Parts(parts.springs, Map.copyOf(more), parts.heats, parts.rules));
  }

  /**
   * With the limits of a national rule, as data.
   *
   * @param ruleSet added to those given before
   * @return a new chassis
   */
  public Chassis rules(RuleSet ruleSet) {
    List<RuleSet> more = new ArrayList<>(parts.rules);
    more.add(Objects.requireNonNull(ruleSet, "ruleSet"));
    return new Chassis(
        fields, new Parts(parts.springs, parts.pressures, parts.heats, List.copyOf(more)));
  }

  /**
   * Share of the rear axle in the brake force.
   *
   * @return empty if not known
   */
  public Optional<Given<Double>> rearBrakeShare() {
    return Optional.ofNullable(fields.rearBrakeShare);
  }

  Optional<ParkingBrake> parkingBrake() {
    return Optional.ofNullable(fields.parkingBrake);
  }

  Optional<SteeringShare> steeringShare() {
    return Optional.ofNullable(fields.steeringShare);
  }

  Optional<Handling> handling() {
    return Optional.ofNullable(fields.handling);
  }

  Optional<Descent> descent() {
    return Optional.ofNullable(fields.descent);
  }

  Optional<BrakeHeat> brakeHeat(Axle axle) {
    return Optional.ofNullable(parts.heats.get(axle));
  }

  Optional<Spring> spring(Axle axle) {
    return Optional.ofNullable(parts.springs.get(axle));
  }

  Optional<TyrePressure> tyrePressure(Axle axle) {
    return Optional.ofNullable(parts.pressures.get(axle));
  }

  List<RuleSet> rules() {
    return parts.rules;
  }

  /**
   * How much is known.
   *
   * @return for example {@code brakes, parking brake, 2 springs, 2 tyre pressures, 1 rule set}
   */
  @Override
  public String toString() {
    return (fields.rearBrakeShare == null ? "brakes not known" : "brakes")
        + (fields.parkingBrake == null ? "" : ", parking brake")
        + (fields.descent == null ? "" : ", descent")
        + (fields.handling == null ? "" : ", handling")
        + ", springs of "
        + parts.springs.size()
        + ", tyre pressures of "
        + parts.pressures.size()
        + " axles, rule sets: "
        + parts.rules.size();
  }
}
