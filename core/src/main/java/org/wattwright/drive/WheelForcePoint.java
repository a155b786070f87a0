package org.wattwright.drive;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Speed;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.Measures;

/**
 * Force at the road at one speed, in the gear with the most force.
 *
 * @param speed of the vehicle
 * @param peak most force with the peak torque of the motor and all limits
 * @param continuous most force with its continuous torque; the peak where none is known
 * @param roadLoad resistance at steady speed on the level
 * @param gear name of the gear
 * @param limit what limits the peak
 */
public record WheelForcePoint(
    Quantity<Speed> speed,
    Quantity<Force> peak,
    Quantity<Force> continuous,
    Quantity<Force> roadLoad,
    String gear,
    DriveLimit limit)
    implements Serializable {
  /**
   * Takes any implementation of a quantity.
   *
   * @param speed of the vehicle
   * @param peak most force with the peak torque
   * @param continuous most force with the continuous torque
   * @param roadLoad resistance at steady speed on the level
   * @param gear name of the gear
   * @param limit what limits the peak
   */
  public WheelForcePoint {
    speed = Measure.from(speed, Kind.SPEED);
    peak = Measure.from(peak, Kind.FORCE);
    continuous = Measure.from(continuous, Kind.FORCE);
    roadLoad = Measure.from(roadLoad, Kind.FORCE);
    Objects.requireNonNull(gear, "gear");
    Objects.requireNonNull(limit, "limit");
  }

  /**
   * Speed, force and what limits it.
   *
   * @return for example {@code 40 km/h: 3182 N, road load 206 N, limited by motor torque}
   */
  @Override
  public String toString() {
    return Measures.format(speed, Kind.SPEED)
        + ": "
        + Measures.format(peak, Kind.FORCE)
        + ", road load "
        + Measures.format(roadLoad, Kind.FORCE)
        + ", limited by "
        + limit;
  }
}
