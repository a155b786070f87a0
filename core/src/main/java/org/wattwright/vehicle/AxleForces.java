package org.wattwright.vehicle;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import org.wattwright.check.Figure;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * Forces between road and axles, square to the road.
 *
 * <p>Immutable and thread-safe.
 *
 * @param front on the front axle, in N; negative where the axle would lift
 * @param rear on the rear axle, in N; negative where the axle would lift
 */
public record AxleForces(Quantity<Force> front, Quantity<Force> rear) implements Serializable {
  /**
   * Takes any implementation of a quantity.
   *
   * @param front on the front axle, in N
   * @param rear on the rear axle, in N
   */
  public AxleForces {
    front = Measure.from(front, Kind.FORCE);
    rear = Measure.from(rear, Kind.FORCE);
  }

  /**
   * The force on one axle.
   *
   * @param axle front or rear
   * @return in N
   */
  public Quantity<Force> on(Axle axle) {
    return axle == Axle.FRONT ? front : rear;
  }

  /**
   * Both forces.
   *
   * @return for example {@code front 4.559 kN, rear 5.061 kN}
   */
  @Override
  public String toString() {
    return "front " + Figure.of(front, Kind.FORCE) + ", rear " + Figure.of(rear, Kind.FORCE);
  }
}
