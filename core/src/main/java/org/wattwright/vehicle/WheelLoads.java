package org.wattwright.vehicle;

import java.io.Serializable;
import java.util.List;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.wattwright.check.Figure;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * What the four wheels carry on level ground at rest, as mass, the way corner scales show it.
 *
 * <p>Immutable and thread-safe.
 *
 * @param frontLeft in kg
 * @param frontRight in kg
 * @param rearLeft in kg
 * @param rearRight in kg
 */
public record WheelLoads(
    Quantity<Mass> frontLeft,
    Quantity<Mass> frontRight,
    Quantity<Mass> rearLeft,
    Quantity<Mass> rearRight)
    implements Serializable {
  /**
   * Takes any implementation of a quantity.
   *
   * @param frontLeft in kg
   * @param frontRight in kg
   * @param rearLeft in kg
   * @param rearRight in kg
   */
  public WheelLoads {
    frontLeft = Measure.from(frontLeft, Kind.MASS);
    frontRight = Measure.from(frontRight, Kind.MASS);
    rearLeft = Measure.from(rearLeft, Kind.MASS);
    rearRight = Measure.from(rearRight, Kind.MASS);
  }

  static WheelLoads ofKg(List<Double> kg) {
    return new WheelLoads(
        Si.mass(kg.get(0)), Si.mass(kg.get(1)), Si.mass(kg.get(2)), Si.mass(kg.get(3)));
  }

  /**
   * What one wheel carries.
   *
   * @param axle front or rear
   * @param side left or right
   * @return in kg
   */
  public Quantity<Mass> on(Axle axle, Side side) {
    if (axle == Axle.FRONT) {
      return side == Side.LEFT ? frontLeft : frontRight;
    }
    return side == Side.LEFT ? rearLeft : rearRight;
  }

  /**
   * The heavier wheel of an axle.
   *
   * @param axle front or rear
   * @return in kg
   */
  public Quantity<Mass> heavier(Axle axle) {
    Quantity<Mass> left = on(axle, Side.LEFT);
    Quantity<Mass> right = on(axle, Side.RIGHT);
    return Kind.MASS.compare(left, right) >= 0 ? left : right;
  }

  /**
   * Both axles.
   *
   * @return sum of left and right
   */
  public AxleLoads axles() {
    double[] kg = kg();
    return AxleLoads.ofKg(kg[0] + kg[1], kg[2] + kg[3]);
  }

  /**
   * All four.
   *
   * @return in kg
   */
  public Quantity<Mass> total() {
    double[] kg = kg();
    return Si.mass(kg[0] + kg[1] + (kg[2] + kg[3]));
  }

  /**
   * Share of the left wheels in the total.
   *
   * @return 0 to 1 while no wheel lifts
   */
  public double leftShare() {
    double[] kg = kg();
    return (kg[0] + kg[2]) / (kg[0] + kg[1] + (kg[2] + kg[3]));
  }

  /**
   * Share of the diagonal front right – rear left in the total; one half means no wedge.
   *
   * @return 0 to 1 while no wheel lifts
   */
  public double crossShare() {
    double[] kg = kg();
    return (kg[1] + kg[2]) / (kg[0] + kg[1] + (kg[2] + kg[3]));
  }

  /** Front left, front right, rear left, rear right. */
  double[] kg() {
    return Stream.of(frontLeft, frontRight, rearLeft, rearRight)
        .mapToDouble(Kind.MASS::siValueOf)
        .toArray();
  }

  /**
   * All four loads.
   *
   * @return for example {@code FL 276 kg, FR 264 kg, RL 241 kg, RR 229 kg}
   */
  @Override
  public String toString() {
    return "FL "
        + text(frontLeft)
        + ", FR "
        + text(frontRight)
        + ", RL "
        + text(rearLeft)
        + ", RR "
        + text(rearRight);
  }

  private static String text(Quantity<Mass> mass) {
    return Figure.of(mass, Kind.MASS).toString();
  }
}
