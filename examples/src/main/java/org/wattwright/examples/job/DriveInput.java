package org.wattwright.examples.job;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.MagneticFlux;
import javax.measure.quantity.Power;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.wattwright.battery.Ageing;
import org.wattwright.check.Given;
import org.wattwright.units.RotationalSpeed;
import org.wattwright.units.StateOfCharge;
import org.wattwright.units.Torque;

/**
 * How the vehicle is driven, and what is asked of it.
 *
 * <p>Immutable.
 *
 * @param origin where the drive unit is named
 * @param motor the drive unit
 * @param line from the motor to the road
 * @param road what holds the vehicle back
 * @param use how it is used
 * @param wanted what is asked, as far as stated
 * @param currentLimits that the power-limit study looks at
 * @param statements every line of the file
 */
public record DriveInput(
    Origin origin,
    Motor motor,
    Line line,
    Road road,
    Use use,
    Wanted wanted,
    List<Quantity<ElectricCurrent>> currentLimits,
    List<Statement> statements) {
  /**
   * Copies the lists.
   *
   * @param origin where the drive unit is named
   * @param motor the drive unit
   * @param line from the motor to the road
   * @param road what holds the vehicle back
   * @param use how it is used
   * @param wanted what is asked
   * @param currentLimits that the power-limit study looks at
   * @param statements every line of the file
   */
  public DriveInput {
    currentLimits = List.copyOf(currentLimits);
    statements = List.copyOf(statements);
  }

  /**
   * A point of the torque curves.
   *
   * @param speed of the motor
   * @param peak for a short time
   * @param continuous for any length of time
   */
  public record TorquePoint(
      Quantity<RotationalSpeed> speed, Quantity<Torque> peak, Quantity<Torque> continuous) {}

  /**
   * The drive unit.
   *
   * @param device its name among the devices
   * @param curve speeds rising
   * @param highestSpeed that the controller lets it reach
   * @param efficiency motor and inverter together, 0 to 1
   * @param magnet what it makes when turned; empty if not stated
   */
  public record Motor(
      String device,
      List<TorquePoint> curve,
      Quantity<RotationalSpeed> highestSpeed,
      double efficiency,
      Optional<Magnet> magnet) {}

  /**
   * The magnets of the motor.
   *
   * @param flux linkage, peak of one phase
   * @param polePairs ≥ 1
   * @param overspeed highest speed of the rotor
   */
  public record Magnet(
      Given<Quantity<MagneticFlux>> flux, int polePairs, Quantity<RotationalSpeed> overspeed) {}

  /**
   * From the motor to the road.
   *
   * @param ratio one fixed ratio
   * @param efficiency 0 to 1
   * @param gearLimit at the motor shaft; empty if not stated
   * @param halfShaftLimit of one half-shaft; empty if not stated
   * @param circumference of a driven tyre, rolling
   */
  public record Line(
      double ratio,
      double efficiency,
      Optional<Quantity<Torque>> gearLimit,
      Optional<Given<Quantity<Torque>>> halfShaftLimit,
      Given<Quantity<Length>> circumference) {}

  /**
   * What holds the vehicle back, and what it stands on.
   *
   * @param rolling coefficient of rolling resistance
   * @param dragArea drag coefficient times frontal area
   * @param adhesion of a driven tyre
   */
  public record Road(Given<Double> rolling, Quantity<Area> dragArea, double adhesion) {}

  /**
   * How it is used.
   *
   * @param auxiliaries drawn all the way
   * @param regenerationShare of all braking, 0 to 1
   * @param regenerationForce at the road, at most; empty if as much as the drive gives
   * @param temperature of the pack, but in winter
   * @param heater drawn in winter, mean
   * @param reserve left at the end
   * @param aged pack at the end of its life
   */
  public record Use(
      Quantity<Power> auxiliaries,
      double regenerationShare,
      Optional<Quantity<Force>> regenerationForce,
      Quantity<Temperature> temperature,
      Quantity<Power> heater,
      StateOfCharge reserve,
      Given<Ageing> aged) {}

  /**
   * What is asked, each with its source.
   *
   * @param hold a grade at a speed
   * @param startGrade laden
   * @param topSpeed on the level
   * @param timeToFifty from rest to 50 km/h
   * @param rangeNew on the first cycle
   * @param rangeLaden fully laden
   * @param rangeAged with the aged pack
   * @param rangeWinter at the coldest temperature, heater on
   */
  public record Wanted(
      Optional<Hold> hold,
      Optional<Given<Double>> startGrade,
      Optional<Given<Quantity<Speed>>> topSpeed,
      Optional<Given<Quantity<Time>>> timeToFifty,
      Optional<Given<Quantity<Length>>> rangeNew,
      Optional<Given<Quantity<Length>>> rangeLaden,
      Optional<Given<Quantity<Length>>> rangeAged,
      Optional<Given<Quantity<Length>>> rangeWinter) {}

  /**
   * A grade at a speed.
   *
   * @param speed &gt; 0
   * @param grade tangent, 0 to 1
   */
  public record Hold(Quantity<Speed> speed, Given<Double> grade) {}
}
