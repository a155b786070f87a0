package org.wattwright.vehicle;

import java.io.Serializable;
import java.util.List;
import org.wattwright.check.CautionBand;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;

/**
 * The same brakes before and after the conversion.
 *
 * <p>Immutable and thread-safe.
 *
 * @param before brakes and weight split before
 * @param after brakes and weight split after
 */
public record BrakeComparison(BrakeBalance before, BrakeBalance after) implements Serializable {
  /**
   * Brakes left as they were under a vehicle whose masses have moved.
   *
   * @param before the vehicle before
   * @param after the vehicle after, same load case
   * @param rearShare share of the rear axle in the brake force, 0 to 1
   * @return the comparison
   * @throws org.wattwright.units.InvalidInputException if the share is outside its range
   */
  public static BrakeComparison ofUnchangedBrakes(Stance before, Stance after, double rearShare) {
    return new BrakeComparison(
        BrakeBalance.of(before, rearShare), BrakeBalance.of(after, rearShare));
  }

  /**
   * Whether the conversion left the order of locking as safe as it was.
   *
   * <p>Codes: {@code brake.lockAxle.change} fails if the rear axle now locks first where the front
   * did; {@code brake.efficiency.change} fails if less of the grip can be used than before; that is
   * a requirement of the workshop, not a rule.
   *
   * @param adhesion coefficient μ of the road, above 0 and up to 2
   * @return two checks
   * @throws org.wattwright.units.InvalidInputException if the coefficient is outside its range
   */
  public List<Check> check(double adhesion) {
    FirstLock was = before.firstLock(adhesion);
    FirstLock is = after.firstLock(adhesion);
    Source source = Source.requirement("brakes no worse than before the conversion");
    Check order =
        Check.named(
                "brake.lockAxle.change",
                "rear axle does not newly lock first, adhesion " + adhesion)
            .source(source)
            .basis(after.stance().basis().and(before.stance().basis()))
            .safety()
            .note("before: " + was + "; after: " + is)
            .holds(is.axle() == Axle.FRONT || was.axle() == Axle.REAR);
    Check efficiency =
        Check.named("brake.efficiency.change", "share of the grip used, adhesion " + adhesion)
            .source(source)
            .basis(after.stance().basis().and(before.stance().basis()))
            .cautionBand(CautionBand.NONE)
            .atLeast(Figure.share(is.efficiency()), Figure.share(was.efficiency()));
    return List.of(order, efficiency);
  }

  /**
   * Both balances.
   *
   * @return before and after
   */
  @Override
  public String toString() {
    return "before: " + before + "; after: " + after;
  }
}
