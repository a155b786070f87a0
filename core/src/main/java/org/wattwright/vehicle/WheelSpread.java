package org.wattwright.vehicle;

import java.io.Serializable;
import java.util.List;
import javax.measure.quantity.Mass;
import org.wattwright.units.Kind;

/**
 * The four wheel loads with what the stated tolerances do to them.
 *
 * <p>Tolerances of the roll stiffness and the tracks are not among them. Immutable and thread-safe.
 *
 * @param frontLeft front left wheel
 * @param frontRight front right wheel
 * @param rearLeft rear left wheel
 * @param rearRight rear right wheel
 */
public record WheelSpread(
    Spread<Mass> frontLeft, Spread<Mass> frontRight, Spread<Mass> rearLeft, Spread<Mass> rearRight)
    implements Serializable {

  static WheelSpread of(List<Spread.Ends> kg) {
    return new WheelSpread(
        new Spread<>(Kind.MASS, kg.get(0)),
        new Spread<>(Kind.MASS, kg.get(1)),
        new Spread<>(Kind.MASS, kg.get(2)),
        new Spread<>(Kind.MASS, kg.get(3)));
  }

  /**
   * The spread of one wheel.
   *
   * @param axle front or rear
   * @param side left or right
   * @return its spread
   */
  public Spread<Mass> on(Axle axle, Side side) {
    if (axle == Axle.FRONT) {
      return side == Side.LEFT ? frontLeft : frontRight;
    }
    return side == Side.LEFT ? rearLeft : rearRight;
  }
}
