package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.NEWTON;

import javax.measure.Quantity;
import javax.measure.quantity.Force;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;

/**
 * How shear and tension in one bolt are added up; the rules differ, so reports name the one used.
 */
public enum InteractionRule {
  /** F_v/F_v,Rd + F_t/(1.4·F_t,Rd) ≤ 1, and F_t ≤ F_t,Rd; EN 1993-1-8 Table 3.4. */
  LINEAR("linear interaction"),
  /** (F_v/F_v,Rd)² + (F_t/F_t,Rd)² ≤ 1; machine-design practice. */
  ELLIPTIC("elliptic interaction");

  private final String label;

  InteractionRule(String label) {
    this.label = label;
  }

  /**
   * The value that may not exceed 1.
   *
   * @param bolt the bolt
   * @param shear ≥ 0 N
   * @param tension ≥ 0 N
   * @return ≥ 0
   * @throws org.wattwright.units.InvalidInputException if a force is negative
   */
  public double value(Bolt bolt, Quantity<Force> shear, Quantity<Force> tension) {
    return value(
        Require.quantity("InteractionRule.shear", shear, NEWTON).nonNegative() / bolt.shearN(),
        Require.quantity("InteractionRule.tension", tension, NEWTON).nonNegative()
            / bolt.tensionN());
  }

  /** From the two shares of what the bolt carries alone. */
  double value(double shearShare, double tensionShare) {
    return this == LINEAR
        ? shearShare + tensionShare / 1.4
        : shearShare * shearShare + tensionShare * tensionShare;
  }

  /** As a share of the load: grows in proportion to it, at most 1 exactly when the rule holds. */
  double loadShare(double shearShare, double tensionShare) {
    double value = value(shearShare, tensionShare);
    return this == LINEAR ? value : Math.sqrt(value);
  }

  /**
   * Where the rule comes from.
   *
   * @return the source
   */
  public Source source() {
    return this == LINEAR ? Bolt.SOURCE : Source.commonPractice("machine-design practice");
  }

  /**
   * The label as reports print it.
   *
   * @return {@code linear interaction} or {@code elliptic interaction}
   */
  @Override
  public String toString() {
    return label;
  }
}
