package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.DEGREE;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Given;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;

/**
 * Joints of shafts at an angle: how unevenly a single universal joint turns, and how far joints may
 * bend at full speed.
 *
 * <p>Output over input speed runs between cos β and 1/cos β twice in every turn; two joints cancel
 * it where their angles are equal. Source: universal-joint kinematics.
 */
public final class UniversalJoint {
  private static final double PROPSHAFT_LIMIT_DEG = 3;
  private static final double LEAST_PROPSHAFT_DEG = 0.5;
  private static final double HALF_SHAFT_LIMIT_DEG = 8;

  private UniversalJoint() {}

  private static double cosine(Quantity<Angle> angle) {
    Require.quantity("UniversalJoint.angle", angle, DEGREE).between(0, 60);
    return Math.cos(Math.toRadians(DEGREE.valueOf(angle)));
  }

  /**
   * Highest output speed over input speed: 1/cos β.
   *
   * @param angle between the shafts, 0° to 60°
   * @return at least 1
   * @throws org.wattwright.units.InvalidInputException if the angle is outside its range
   */
  public static double highestSpeedRatio(Quantity<Angle> angle) {
    return 1 / cosine(angle);
  }

  /**
   * Lowest output speed over input speed: cos β.
   *
   * @param angle between the shafts, 0° to 60°
   * @return at most 1
   * @throws org.wattwright.units.InvalidInputException if the angle is outside its range
   */
  public static double lowestSpeedRatio(Quantity<Angle> angle) {
    return cosine(angle);
  }

  /**
   * Ripple of the output speed from peak to peak, over the input speed: sin β·tan β.
   *
   * @param angle between the shafts, 0° to 60°
   * @return ≥ 0
   * @throws org.wattwright.units.InvalidInputException if the angle is outside its range
   */
  public static double ripple(Quantity<Angle> angle) {
    double cosine = cosine(angle);
    return (1 - cosine * cosine) / cosine;
  }

  /**
   * Whether a propeller shaft joint bends little enough at full speed, and enough for its needles
   * to roll: 0.5° to 3° (common practice).
   *
   * @param angle between the shafts, 0° to 60°, with its basis
   * @return check {@code installation.joint-angle}; a caution where it is not followed
   * @throws org.wattwright.units.InvalidInputException if the angle is outside its range
   */
  public static Check checkPropshaft(Given<Quantity<Angle>> angle) {
    cosine(angle.value());
    double deg = DEGREE.valueOf(angle.value());
    return Check.named(
            "installation.joint-angle",
            "propeller shaft joint at " + Figure.of(angle.value(), DEGREE) + " between 0.5° and 3°")
        .source(Source.commonPractice("propeller shaft joint at full speed, both ends equal"))
        .basisOf(angle)
        .recommends(deg >= LEAST_PROPSHAFT_DEG && deg <= PROPSHAFT_LIMIT_DEG);
  }

  /**
   * Whether the constant-velocity joint of a half-shaft stays within about 8° at ride height
   * (common practice; the maker's limit goes before).
   *
   * @param angle at ride height, 0° to 60°, with its basis
   * @return check {@code installation.joint-angle}; a caution where it is not followed
   * @throws org.wattwright.units.InvalidInputException if the angle is outside its range
   */
  public static Check checkHalfShaft(Given<Quantity<Angle>> angle) {
    cosine(angle.value());
    return Check.named(
            "installation.joint-angle",
            "half-shaft joint at " + Figure.of(angle.value(), DEGREE) + ", at most about 8°")
        .source(Source.commonPractice("constant-velocity joint at ride height"))
        .basisOf(angle)
        .recommends(DEGREE.valueOf(angle.value()) <= HALF_SHAFT_LIMIT_DEG);
  }
}
