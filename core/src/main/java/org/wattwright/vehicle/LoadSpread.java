package org.wattwright.vehicle;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.quantity.Mass;

/**
 * Axle loads and total, or their change, with what the stated tolerances do to them.
 *
 * <p>Immutable and thread-safe.
 *
 * @param front front axle
 * @param rear rear axle
 * @param total whole vehicle
 */
public record LoadSpread(Spread<Mass> front, Spread<Mass> rear, Spread<Mass> total)
    implements Serializable {
  /**
   * Rejects null.
   *
   * @param front front axle
   * @param rear rear axle
   * @param total whole vehicle
   */
  public LoadSpread {
    Objects.requireNonNull(front, "front");
    Objects.requireNonNull(rear, "rear");
    Objects.requireNonNull(total, "total");
  }

  /**
   * The spread of one axle.
   *
   * @param axle front or rear
   * @return its spread
   */
  public Spread<Mass> on(Axle axle) {
    return axle == Axle.FRONT ? front : rear;
  }
}
