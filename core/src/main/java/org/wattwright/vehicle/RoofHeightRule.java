package org.wattwright.vehicle;

import static org.wattwright.units.WorkshopUnits.METRE;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.wattwright.check.Estimate;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;

/**
 * Estimate of the height of the centre of gravity from the height of the roof: 0.39 of it, between
 * 0.35 and 0.45.
 *
 * <p>For passenger cars and light vans at kerb mass, as built; from memory, common practice. A
 * stopgap until the vehicle has been weighed with one axle raised: every check that uses it looks
 * at both ends of the band and gives at most a caution.
 */
public final class RoofHeightRule {
  private static final double LOW = 0.35;
  private static final double TYPICAL = 0.39;
  private static final double HIGH = 0.45;

  private static final Source SOURCE =
      Source.commonPractice("0.39 of the roof height, 0.35 to 0.45, from memory");

  private RoofHeightRule() {}

  /**
   * The estimate for a vehicle.
   *
   * @param roof height of the roof above ground, &gt; 0 m
   * @return height of the centre of gravity with its band
   * @throws org.wattwright.units.InvalidInputException if the roof height is not positive
   */
  public static Estimate<Length> estimate(Quantity<Length> roof) {
    double roofM = Require.quantity("RoofHeightRule.roof", roof, METRE).positive();
    return Estimate.of(
        "centre of gravity height",
        METRE.of(TYPICAL * roofM),
        Kind.LENGTH,
        new Estimate.Band(LOW / TYPICAL, HIGH / TYPICAL),
        SOURCE);
  }
}
