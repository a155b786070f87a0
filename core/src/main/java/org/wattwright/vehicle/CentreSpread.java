package org.wattwright.vehicle;

import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Length;

/**
 * The place of the centre of gravity with what the stated tolerances do to it; for an estimated or
 * a measured height with a band, the band too.
 *
 * <p>Tolerances of the wheelbase and the tracks are not among them. Immutable and thread-safe.
 *
 * @param behindFrontAxle along the vehicle
 * @param leftOfCentre sideways, positive to the left; empty if not determined
 * @param aboveGround height; empty if not determined
 */
public record CentreSpread(
    Spread<Length> behindFrontAxle,
    Optional<Spread<Length>> leftOfCentre,
    Optional<Spread<Length>> aboveGround) {
  /**
   * Rejects null.
   *
   * @param behindFrontAxle along the vehicle
   * @param leftOfCentre sideways
   * @param aboveGround height
   */
  public CentreSpread {
    Objects.requireNonNull(behindFrontAxle, "behindFrontAxle");
    Objects.requireNonNull(leftOfCentre, "leftOfCentre");
    Objects.requireNonNull(aboveGround, "aboveGround");
  }
}
