package org.wattwright.examples.job;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import org.wattwright.check.Given;
import org.wattwright.units.HeatCapacity;
import org.wattwright.units.RollStiffness;
import org.wattwright.units.SpringRate;
import org.wattwright.vehicle.Axle;
import org.wattwright.vehicle.RuleSet;
import org.wattwright.vehicle.Tyre;

/**
 * The vehicle as weighed, what it may carry, and what changes in it.
 *
 * <p>Immutable and thread-safe.
 *
 * @param origin where its wheelbase stands
 * @param scales the weighing
 * @param plates what the vehicle may weigh
 * @param brakes what stops it
 * @param front springs and tyres of the front axle
 * @param rear springs and tyres of the rear axle
 * @param road what road and speed ask of brakes and steering
 * @param leastTravel bump travel that must be left; empty if not stated
 * @param steeringShare least share of the steering axle; empty if not stated
 * @param frontShare share of the front axle to come near to; empty if not stated
 * @param shape outline for the drawing; empty if not stated
 * @param parts what leaves and what goes in
 * @param bays for the modules, at least one
 * @param seats people and goods, at least the driver
 * @param rules limits of authorities on conversions; may be empty
 * @param statements every line of {@code vehicle.csv}, with its basis
 */
public record VehicleInput(
    Origin origin,
    Scales scales,
    Plates plates,
    Brakes brakes,
    AxleParts front,
    AxleParts rear,
    Road road,
    Optional<Quantity<Length>> leastTravel,
    Optional<Given<Double>> steeringShare,
    Optional<FrontShare> frontShare,
    Optional<Shape> shape,
    List<PartMassInput> parts,
    List<BayInput> bays,
    List<SeatInput> seats,
    List<RuleSet> rules,
    List<Statement> statements) {
  /**
   * Copies the lists.
   *
   * @param origin where its wheelbase stands
   * @param scales the weighing
   * @param plates what the vehicle may weigh
   * @param brakes what stops it
   * @param front springs and tyres of the front axle
   * @param rear springs and tyres of the rear axle
   * @param road what road and speed ask of brakes and steering
   * @param leastTravel bump travel that must be left
   * @param steeringShare least share of the steering axle
   * @param frontShare share of the front axle to come near to
   * @param shape outline for the drawing
   * @param parts what leaves and what goes in
   * @param bays for the modules
   * @param seats people and goods
   * @param rules limits of authorities on conversions
   * @param statements every line of {@code vehicle.csv}
   */
  public VehicleInput {
    parts = List.copyOf(parts);
    bays = List.copyOf(bays);
    seats = List.copyOf(seats);
    rules = List.copyOf(rules);
    statements = List.copyOf(statements);
  }

  /**
   * The share of the front axle that the bays should bring about, kerb.
   *
   * @param wanted 0 to 1
   * @param band how far off the best may be without counting, 0 to 1
   */
  public record FrontShare(double wanted, double band) {}

  /**
   * The weighing on four scales.
   *
   * @param wheelbase &gt; 0
   * @param frontLeft ≥ 0
   * @param frontRight ≥ 0
   * @param rearLeft ≥ 0
   * @param rearRight ≥ 0
   * @param tolerance of one reading, ≥ 0
   * @param lift weighing with the rear axle raised; empty if not stated
   */
  public record Scales(
      Quantity<Length> wheelbase,
      Quantity<Mass> frontLeft,
      Quantity<Mass> frontRight,
      Quantity<Mass> rearLeft,
      Quantity<Mass> rearRight,
      Quantity<Mass> tolerance,
      Optional<Lift> lift) {}

  /**
   * The weighing with the rear axle raised.
   *
   * @param origin where that reading stands
   * @param frontReading reading of the front axle
   * @param rise of the rear wheel centres
   * @param frontRadius loaded radius
   * @param rearRadius loaded radius
   * @param lengthTolerance half-width of each length
   */
  public record Lift(
      Origin origin,
      Quantity<Mass> frontReading,
      Quantity<Length> rise,
      Quantity<Length> frontRadius,
      Quantity<Length> rearRadius,
      Quantity<Length> lengthTolerance) {}

  /**
   * What the vehicle may weigh; what is empty was not stated.
   *
   * @param front axle
   * @param rear axle
   * @param gross mass of the laden vehicle
   */
  public record Plates(
      Optional<Quantity<Mass>> front,
      Optional<Quantity<Mass>> rear,
      Optional<Quantity<Mass>> gross) {}

  /**
   * What stops the vehicle; what is empty was not stated.
   *
   * @param rearShare share of the rear axle in the brake force
   * @param parkingAxle axle of the parking brake
   * @param parkingForce force of the parking brake at the road
   */
  public record Brakes(
      Optional<Given<Double>> rearShare,
      Optional<Axle> parkingAxle,
      Optional<Given<Quantity<Force>>> parkingForce) {}

  /**
   * A long descent and the top speed; what is empty was not stated.
   *
   * @param descent drop, distance and speed
   * @param liningLimit temperature that the linings stand
   * @param topSpeed of the converted vehicle
   * @param mostOff share by which estimates of heat capacity and stiffness may be off
   */
  public record Road(
      Optional<Descent> descent,
      Optional<Quantity<Temperature>> liningLimit,
      Optional<Quantity<Speed>> topSpeed,
      Optional<Double> mostOff) {}

  /**
   * The longest descent on the way.
   *
   * @param drop height that is lost, &gt; 0
   * @param distance length of the road, &gt; drop
   * @param speed steady, &gt; 0
   * @param origin where the drop stands
   */
  public record Descent(
      Quantity<Length> drop, Quantity<Length> distance, Quantity<Speed> speed, Origin origin) {}

  /**
   * Track, springs and tyres of an axle; what is empty was not stated.
   *
   * @param track between the wheel centres
   * @param rollStiffness of springs and anti-roll bar
   * @param wheelRate of one spring at the wheel
   * @param bumpTravel as weighed
   * @param tyre fitted
   * @param pressure of the tyres, cold
   * @param brakeHeat heat capacity of both drums or discs
   * @param cornering side force of one tyre at a slip angle of one degree
   */
  public record AxleParts(
      Optional<Quantity<Length>> track,
      Optional<Given<Quantity<RollStiffness>>> rollStiffness,
      Optional<Given<Quantity<SpringRate>>> wheelRate,
      Optional<Quantity<Length>> bumpTravel,
      Optional<Tyre> tyre,
      Optional<Given<Quantity<Pressure>>> pressure,
      Optional<Given<Quantity<HeatCapacity>>> brakeHeat,
      Optional<Given<Quantity<Force>>> cornering) {}

  /**
   * Outline of the vehicle.
   *
   * @param frontOverhang from the front axle forward, &gt; 0
   * @param rearOverhang from the rear axle backward, &gt; 0
   * @param height overall, &gt; 0
   */
  public record Shape(
      Quantity<Length> frontOverhang, Quantity<Length> rearOverhang, Quantity<Length> height) {}

  /**
   * The parts that leave or those that go in.
   *
   * @param change which
   * @return in the order of the file
   */
  public List<PartMassInput> parts(PartMassInput.Change change) {
    return parts.stream().filter(part -> part.change() == change).toList();
  }

  /**
   * An axle.
   *
   * @param axle front or rear
   * @return its springs and tyres
   */
  public AxleParts on(Axle axle) {
    return axle == Axle.FRONT ? front : rear;
  }
}
