package org.wattwright.vehicle;

import java.io.Serializable;

/**
 * The loads of one load case with what the stated tolerances do to them.
 *
 * <p>Immutable and thread-safe.
 *
 * @param front front axle
 * @param rear rear axle
 * @param total whole vehicle
 */
public record LoadSpread(MassSpread front, MassSpread rear, MassSpread total)
    implements Serializable {
  /**
   * The spread of one axle.
   *
   * @param axle front or rear
   * @return its spread
   */
  public MassSpread on(Axle axle) {
    return axle == Axle.FRONT ? front : rear;
  }
}
