package org.wattwright.vehicle;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.wattwright.check.Figure;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * Where the mass of the whole vehicle acts.
 *
 * <p>ISO 8855 directions with the origin on the ground below the middle of the front axle: x =
 * −{@code behindFrontAxle}, y = {@code leftOfCentre}, z = {@code aboveGround}. Immutable and
 * thread-safe.
 *
 * @param behindFrontAxle along the vehicle, in m
 * @param leftOfCentre sideways, in m, positive to the left; empty if not determined
 * @param aboveGround in m; empty if not determined
 */
public record CentreOfGravity(
    Quantity<Length> behindFrontAxle,
    Optional<Quantity<Length>> leftOfCentre,
    Optional<Quantity<Length>> aboveGround) {
  /**
   * Takes any implementation of a quantity.
   *
   * @param behindFrontAxle along the vehicle, in m
   * @param leftOfCentre sideways, in m, positive to the left; empty if not determined
   * @param aboveGround in m; empty if not determined
   */
  public CentreOfGravity {
    behindFrontAxle = Measure.from(behindFrontAxle, Kind.LENGTH);
    leftOfCentre = leftOfCentre.map(q -> Measure.from(q, Kind.LENGTH));
    aboveGround = aboveGround.map(q -> Measure.from(q, Kind.LENGTH));
  }

  /**
   * What is known.
   *
   * @return for example {@code 1.248 m behind front axle, 0.5272 m up}
   */
  @Override
  public String toString() {
    return text(behindFrontAxle)
        + " behind front axle"
        + leftOfCentre.map(q -> ", " + text(q) + " left").orElse("")
        + aboveGround.map(q -> ", " + text(q) + " up").orElse("");
  }

  private static String text(Quantity<Length> length) {
    return Figure.of(length, Kind.LENGTH).toString();
  }
}
