package org.wattwright.installation;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * A force on a component, and the point it acts at.
 *
 * <p>Immutable and thread-safe.
 *
 * @param alongU component along u
 * @param alongV component along v
 * @param away component away from the mounting face; negative presses the component on
 * @param u place of the point along u
 * @param v place along v
 * @param height distance of the point from the face
 */
public record GroupLoad(
    Quantity<Force> alongU,
    Quantity<Force> alongV,
    Quantity<Force> away,
    Quantity<Length> u,
    Quantity<Length> v,
    Quantity<Length> height)
    implements Serializable {
  /**
   * Any finite values.
   *
   * @param alongU component along u
   * @param alongV component along v
   * @param away component away from the face
   * @param u place along u
   * @param v place along v
   * @param height distance from the face
   */
  public GroupLoad {
    alongU = Measure.from(alongU, Kind.FORCE);
    alongV = Measure.from(alongV, Kind.FORCE);
    away = Measure.from(away, Kind.FORCE);
    u = Measure.from(u, Kind.LENGTH);
    v = Measure.from(v, Kind.LENGTH);
    height = Measure.from(height, Kind.LENGTH);
  }

  double[] forceN() {
    return new double[] {
      Kind.FORCE.siValueOf(alongU), Kind.FORCE.siValueOf(alongV), Kind.FORCE.siValueOf(away)
    };
  }

  double[] pointM() {
    return new double[] {
      Kind.LENGTH.siValueOf(u), Kind.LENGTH.siValueOf(v), Kind.LENGTH.siValueOf(height)
    };
  }
}
