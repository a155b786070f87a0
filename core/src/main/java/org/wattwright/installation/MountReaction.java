package org.wattwright.installation;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * What the drive unit puts on one mount.
 *
 * <p>Immutable and thread-safe.
 *
 * @param mount its name
 * @param alongU force on the mount along u
 * @param up force on the mount upward; negative presses it down
 */
public record MountReaction(String mount, Quantity<Force> alongU, Quantity<Force> up)
    implements Serializable {
  /**
   * Any finite values.
   *
   * @param mount its name
   * @param alongU force along u
   * @param up force upward
   */
  public MountReaction {
    Objects.requireNonNull(mount, "mount");
    alongU = Measure.from(alongU, Kind.FORCE);
    up = Measure.from(up, Kind.FORCE);
  }

  /**
   * The resultant.
   *
   * @return ≥ 0 N
   */
  public Quantity<Force> resultant() {
    return Kind.FORCE.ofSi(Math.hypot(Kind.FORCE.siValueOf(alongU), Kind.FORCE.siValueOf(up)));
  }
}
