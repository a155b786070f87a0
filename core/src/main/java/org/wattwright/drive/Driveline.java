package org.wattwright.drive;

import static org.wattwright.units.WorkshopUnits.METRE;
import static org.wattwright.units.WorkshopUnits.METRE_PER_SECOND;
import static org.wattwright.units.WorkshopUnits.NEWTON_METRE;
import static org.wattwright.units.WorkshopUnits.REVOLUTION_PER_MINUTE;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Speed;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Estimate;
import org.wattwright.check.Given;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;
import org.wattwright.units.RotationalSpeed;
import org.wattwright.units.Torque;
import org.wattwright.vehicle.Tyre;

/**
 * From the motor shaft to the road: one fixed ratio or a retained gearbox, final drive, half-shafts
 * behind an open differential, driven tyres.
 *
 * <p>n = 60·v·i/C, F = 2·π·T·i·η/C, half-shaft torque T·i·η/2; i = gear × final drive, C = rolling
 * circumference. Braking through the driveline, η acts the other way. Source: kinematics; M. Ehsani
 * et al., Modern Electric, Hybrid Electric and Fuel Cell Vehicles (CRC).
 *
 * <pre>{@code
 * Driveline box = Driveline.of(tyre, Gear.of("2", 2.05, 0.97), Gear.of("3", 1.32, 0.97))
 *     .withFinalDrive(4.22, 0.97)
 *     .withHalfShaftLimit(Given.estimated(…));
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class Driveline implements Serializable {
  private static final long serialVersionUID = 1L;

  private final List<Gear> gears;
  private final Given<Quantity<Length>> circumference;
  private final double finalRatio;
  private final double finalEfficiency;
  private final @Nullable Given<Quantity<Torque>> halfShaftLimit;
  private final double shiftUpRadPerS;

  private Driveline(Parts parts) {
    this.gears = parts.gears;
    this.circumference = parts.circumference;
    this.finalRatio = parts.finalRatio;
    this.finalEfficiency = parts.finalEfficiency;
    this.halfShaftLimit = parts.halfShaftLimit;
    this.shiftUpRadPerS = parts.shiftUpRadPerS;
  }

  private record Parts(
      List<Gear> gears,
      Given<Quantity<Length>> circumference,
      double finalRatio,
      double finalEfficiency,
      @Nullable Given<Quantity<Torque>> halfShaftLimit,
      double shiftUpRadPerS) {}

  private Parts parts() {
    return new Parts(
        gears, circumference, finalRatio, finalEfficiency, halfShaftLimit, shiftUpRadPerS);
  }

  /**
   * One fixed ratio from motor to wheels.
   *
   * @param ratio motor turns for one turn of the wheels, &gt; 0
   * @param efficiency above 0 and at most 1
   * @param circumference rolling circumference of the driven tyres, &gt; 0 m
   * @return the driveline
   * @throws InvalidInputException if a value is outside its range
   */
  public static Driveline fixed(
      double ratio, double efficiency, Given<Quantity<Length>> circumference) {
    return of(circumference, Gear.of("fixed", ratio, efficiency));
  }

  /**
   * A gearbox; the final drive is 1 : 1 until told.
   *
   * @param circumference rolling circumference of the driven tyres, &gt; 0 m
   * @param gears the gears in use, at least one, shortest (highest ratio) first
   * @return the driveline
   * @throws InvalidInputException if there is no gear, the ratios do not fall or the circumference
   *     is not positive
   */
  public static Driveline of(Given<Quantity<Length>> circumference, Gear... gears) {
    Require.quantity("Driveline.circumference", circumference.value(), METRE).positive();
    List<Gear> given = Require.nonEmpty("Driveline.gears", List.of(gears));
    for (int i = 1; i < given.size(); i++) {
      double before = given.get(i - 1).ratio();
      if (!(given.get(i).ratio() < before)) {
        throw InvalidInputException.of(
            "Driveline.gears[" + i + "].ratio", "< " + before, "" + given.get(i).ratio());
      }
    }
    return new Driveline(new Parts(given, circumference, 1, 1, null, Double.POSITIVE_INFINITY));
  }

  /**
   * A gearbox on tyres whose rolling circumference is estimated from their size.
   *
   * @param tyre the driven tyres
   * @param gears at least one, shortest first
   * @return the driveline; its speeds and forces rest on an estimate
   * @throws InvalidInputException as for {@link #of(Given, Gear...)}
   */
  public static Driveline of(Tyre tyre, Gear... gears) {
    return of(tyre.rollingCircumference().toGiven(), gears);
  }

  /**
   * With a final drive behind the gears.
   *
   * @param ratio &gt; 0
   * @param efficiency above 0 and at most 1
   * @return a new driveline
   * @throws InvalidInputException if a value is outside its range
   */
  public Driveline withFinalDrive(double ratio, double efficiency) {
    Parts p = parts();
    return new Driveline(
        new Parts(
            p.gears,
            p.circumference,
            Require.positive("Driveline.finalDrive.ratio", ratio),
            MotorLoss.efficiency("Driveline.finalDrive.efficiency", efficiency),
            p.halfShaftLimit,
            p.shiftUpRadPerS));
  }

  /**
   * With what one half-shaft stands; see {@link HalfShaft} for estimates.
   *
   * @param torque &gt; 0 N·m
   * @return a new driveline
   * @throws InvalidInputException if not positive
   */
  public Driveline withHalfShaftLimit(Given<Quantity<Torque>> torque) {
    Require.quantity("Driveline.halfShaftLimit", torque.value(), NEWTON_METRE).positive();
    Parts p = parts();
    return new Driveline(
        new Parts(
            p.gears, p.circumference, p.finalRatio, p.finalEfficiency, torque, p.shiftUpRadPerS));
  }

  /**
   * With an estimate of what one half-shaft stands; checks take the low end of its band.
   *
   * @param torque from {@link HalfShaft}
   * @return a new driveline
   */
  public Driveline withHalfShaftLimit(Estimate<Torque> torque) {
    return withHalfShaftLimit(Given.estimated(torque.low(), torque.source()));
  }

  /**
   * With the motor speed at which the driver shifts up in normal driving; without it he does so
   * only at the highest speed of the motor.
   *
   * @param motorSpeed &gt; 0
   * @return a new driveline
   * @throws InvalidInputException if not positive
   */
  public Driveline withShiftUpAt(Quantity<RotationalSpeed> motorSpeed) {
    double radPerS =
        Require.quantity("Driveline.shiftUpAt", motorSpeed, REVOLUTION_PER_MINUTE).positive();
    Parts p = parts();
    return new Driveline(
        new Parts(
            p.gears, p.circumference, p.finalRatio, p.finalEfficiency, p.halfShaftLimit, radPerS));
  }

  /**
   * The gears in use.
   *
   * @return shortest first
   */
  public List<Gear> gears() {
    return gears;
  }

  /**
   * The gear of a name.
   *
   * @param name as given
   * @return the gear
   * @throws InvalidInputException if there is none
   */
  public Gear gear(String name) {
    return gears.stream()
        .filter(g -> g.name().equals(name))
        .findFirst()
        .orElseThrow(() -> InvalidInputException.of("Driveline.gear", "one of " + gears, name));
  }

  /**
   * Gear times final drive.
   *
   * @param gear one of this driveline
   * @return motor turns for one turn of the wheels
   */
  public double overallRatio(Gear gear) {
    return gear.ratio() * finalRatio;
  }

  /**
   * Efficiency of gear and final drive together.
   *
   * @param gear one of this driveline
   * @return above 0 and at most 1
   */
  public double overallEfficiency(Gear gear) {
    return gear.efficiency() * finalEfficiency;
  }

  /**
   * Rolling circumference of the driven tyres.
   *
   * @return with what it rests on
   */
  public Given<Quantity<Length>> circumference() {
    return circumference;
  }

  /**
   * What one half-shaft stands.
   *
   * @return empty if not known
   */
  public Optional<Given<Quantity<Torque>>> halfShaftLimit() {
    return Optional.ofNullable(halfShaftLimit);
  }

  /**
   * Motor speed at a road speed: i·v·2·π/C in radians for each second.
   *
   * @param speed ≥ 0
   * @param gear one of this driveline
   * @return in 1/min
   * @throws InvalidInputException if the speed is negative
   */
  public Quantity<RotationalSpeed> motorSpeedAt(Quantity<Speed> speed, Gear gear) {
    double speedMs = Require.quantity("Driveline.speed", speed, METRE_PER_SECOND).nonNegative();
    return Kind.ROTATIONAL_SPEED.ofSi(speedMs * radPerMetre(gear));
  }

  /**
   * Road speed at a motor speed.
   *
   * @param motorSpeed ≥ 0
   * @param gear one of this driveline
   * @return in km/h
   * @throws InvalidInputException if the speed is negative
   */
  public Quantity<Speed> speedAt(Quantity<RotationalSpeed> motorSpeed, Gear gear) {
    double radPerS =
        Require.quantity("Driveline.motorSpeed", motorSpeed, REVOLUTION_PER_MINUTE).nonNegative();
    return Kind.SPEED.ofSi(radPerS / radPerMetre(gear));
  }

  /**
   * Torque on both driven wheels together: T·i·η.
   *
   * @param motorTorque of the motor
   * @param gear one of this driveline
   * @return in N·m
   */
  public Quantity<Torque> wheelTorque(Quantity<Torque> motorTorque, Gear gear) {
    return NEWTON_METRE.of(
        Kind.TORQUE.siValueOf(motorTorque) * overallRatio(gear) * overallEfficiency(gear));
  }

  /**
   * Torque of one half-shaft behind an open differential: T·i·η/2.
   *
   * @param motorTorque of the motor
   * @param gear one of this driveline
   * @return in N·m
   */
  public Quantity<Torque> halfShaftTorque(Quantity<Torque> motorTorque, Gear gear) {
    return NEWTON_METRE.of(Kind.TORQUE.siValueOf(wheelTorque(motorTorque, gear)) / 2);
  }

  /**
   * Torque of the shaft between gearbox and final drive: T·i_gear·η_gear; the final drive does not
   * load it.
   *
   * @param motorTorque of the motor
   * @param gear one of this driveline
   * @return in N·m
   */
  public Quantity<Torque> propellerShaftTorque(Quantity<Torque> motorTorque, Gear gear) {
    return NEWTON_METRE.of(Kind.TORQUE.siValueOf(motorTorque) * gear.ratio() * gear.efficiency());
  }

  /**
   * Force at the road: T·i·η/r with r = C/(2·π).
   *
   * @param motorTorque of the motor
   * @param gear one of this driveline
   * @return in N
   */
  public Quantity<Force> wheelForce(Quantity<Torque> motorTorque, Gear gear) {
    return Kind.FORCE.ofSi(Kind.TORQUE.siValueOf(motorTorque) * newtonsPerNm(gear));
  }

  /**
   * Highest overall ratio that lets the motor reach a road speed: n·C/v.
   *
   * @param motorSpeed highest of the motor, &gt; 0
   * @param circumference of the driven tyres, &gt; 0 m
   * @param speed wanted, &gt; 0
   * @return motor turns for one turn of the wheels
   * @throws InvalidInputException if an argument is not positive
   */
  public static double highestRatioFor(
      Quantity<RotationalSpeed> motorSpeed, Quantity<Length> circumference, Quantity<Speed> speed) {
    double radPerS =
        Require.quantity("Driveline.motorSpeed", motorSpeed, REVOLUTION_PER_MINUTE).positive();
    double lengthM = Require.quantity("Driveline.circumference", circumference, METRE).positive();
    double speedMs = Require.quantity("Driveline.speed", speed, METRE_PER_SECOND).positive();
    return radPerS / (2 * Math.PI) * lengthM / speedMs;
  }

  Basis basis() {
    return circumference.basis();
  }

  double radiusM() {
    return Kind.LENGTH.siValueOf(circumference.value()) / (2 * Math.PI);
  }

  double radPerMetre(Gear gear) {
    return overallRatio(gear) / radiusM();
  }

  double newtonsPerNm(Gear gear) {
    return overallRatio(gear) * overallEfficiency(gear) / radiusM();
  }

  double shiftUpRadPerS() {
    return shiftUpRadPerS;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Driveline that && parts().equals(that.parts());
  }

  @Override
  public int hashCode() {
    return Objects.hash(parts());
  }

  /**
   * Overall ratios and circumference.
   *
   * @return for example {@code ratios 9, rolling circumference 1.833 m}
   */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder(gears.size() == 1 ? "ratio " : "ratios ");
    for (int i = 0; i < gears.size(); i++) {
      double rounded = Math.round(overallRatio(gears.get(i)) * 1000) / 1000.0;
      text.append(i == 0 ? "" : ", ").append(rounded);
    }
    String length = Measures.format(circumference.value(), METRE, 3);
    return text + ", rolling circumference " + length;
  }
}
