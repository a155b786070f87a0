package org.wattwright.vehicle;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.Acceleration;
import org.wattwright.check.Figure;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * Which axle locks first on a given road, and at what deceleration.
 *
 * <p>Immutable and thread-safe.
 *
 * @param axle the axle that locks first
 * @param rate deceleration over gravity
 * @param deceleration in m/s²
 * @param efficiency rate over adhesion coefficient: share of the grip that is used
 */
public record FirstLock(
    Axle axle, double rate, Quantity<Acceleration> deceleration, double efficiency)
    implements Serializable {
  /**
   * Takes any implementation of a quantity.
   *
   * @param axle the axle that locks first
   * @param rate deceleration over gravity
   * @param deceleration in m/s²
   * @param efficiency rate over adhesion coefficient
   */
  public FirstLock {
    deceleration = Measure.from(deceleration, Kind.ACCELERATION);
  }

  /**
   * Axle and deceleration.
   *
   * @return for example {@code rear locks first at 7.016 m/s², 89.43 % of the grip}
   */
  @Override
  public String toString() {
    return axle
        + " locks first at "
        + Figure.of(deceleration, Kind.ACCELERATION)
        + ", "
        + Figure.share(efficiency)
        + " of the grip";
  }
}
