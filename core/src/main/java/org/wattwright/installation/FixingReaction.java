package org.wattwright.installation;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * What one fixing carries.
 *
 * <p>Immutable and thread-safe.
 *
 * @param fixing its name
 * @param shearU shear along u, with its sign
 * @param shearV shear along v, with its sign
 * @param tension pull away from the face, ≥ 0 but for rounding
 */
public record FixingReaction(
    String fixing, Quantity<Force> shearU, Quantity<Force> shearV, Quantity<Force> tension)
    implements Serializable {
  /**
   * Any finite values.
   *
   * @param fixing its name
   * @param shearU shear along u
   * @param shearV shear along v
   * @param tension pull away from the face
   */
  public FixingReaction {
    Objects.requireNonNull(fixing, "fixing");
    shearU = Measure.from(shearU, Kind.FORCE);
    shearV = Measure.from(shearV, Kind.FORCE);
    tension = Measure.from(tension, Kind.FORCE);
  }

  /**
   * Resultant shear: √(F_u² + F_v²).
   *
   * @return ≥ 0 N
   */
  public Quantity<Force> shear() {
    return Kind.FORCE.ofSi(shearN());
  }

  double shearN() {
    return Math.hypot(Kind.FORCE.siValueOf(shearU), Kind.FORCE.siValueOf(shearV));
  }

  double tensionN() {
    return Kind.FORCE.siValueOf(tension);
  }
}
