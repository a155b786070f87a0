package org.wattwright.drive;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Speed;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.Measures;

/**
 * A highest speed and what limits it.
 *
 * @param speed the speed; 0 where the vehicle does not move at all
 * @param limit what limits it
 */
public record LimitedSpeed(Quantity<Speed> speed, DriveLimit limit) implements Serializable {
  /**
   * Takes any implementation of a quantity.
   *
   * @param speed the speed
   * @param limit what limits it
   */
  public LimitedSpeed {
    speed = Measure.from(speed, Kind.SPEED);
    Objects.requireNonNull(limit, "limit");
  }

  /**
   * Speed and limit.
   *
   * @return for example {@code 92.1 km/h, limited by motor speed}
   */
  @Override
  public String toString() {
    return Measures.format(speed, Kind.SPEED) + ", limited by " + limit;
  }
}
