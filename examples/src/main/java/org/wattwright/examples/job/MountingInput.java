package org.wattwright.examples.job;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.wattwright.installation.AccelerationRules;
import org.wattwright.installation.FixingGroup;
import org.wattwright.installation.MountingFace;

/**
 * One pattern of fixings for the box of a bay; the last pattern of a bay is the one that is built.
 *
 * <p>Immutable and thread-safe.
 *
 * @param origin where it stands
 * @param bay name of the bay
 * @param pattern name of the pattern
 * @param face what the box is bolted to
 * @param group the fixings
 * @param centre centre of gravity of the full box
 * @param rules accelerations it must stand
 * @param source where the pattern comes from
 */
public record MountingInput(
    Origin origin,
    String bay,
    String pattern,
    MountingFace face,
    FixingGroup group,
    Centre centre,
    AccelerationRules rules,
    String source) {
  /**
   * A centre of gravity in the directions of the face.
   *
   * @param u place along u
   * @param v place along v
   * @param height distance from the face
   */
  public record Centre(Quantity<Length> u, Quantity<Length> v, Quantity<Length> height) {}
}
