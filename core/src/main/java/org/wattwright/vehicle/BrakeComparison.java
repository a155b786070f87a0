package org.wattwright.vehicle;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.wattwright.check.Basis;
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
  private static final Source NO_WORSE =
      Source.requirement("brakes no worse than before the conversion");

  /** First lock before and after, heights at the same end of their bands. */
  private record Pair(FirstLock was, FirstLock is) {
    boolean newlyRear() {
      return is.axle() == Axle.REAR && was.axle() == Axle.FRONT;
    }

    double gain() {
      return is.efficiency() - was.efficiency();
    }
  }

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
   * Whether the conversion left the brakes as good as they were.
   *
   * <p>Codes: {@code brake.lock.axle} fails if the rear axle now locks first where the front did;
   * {@code brake.efficiency.change} fails if less of the grip can be used than before. Both are
   * requirements of the workshop, not rules. Estimated heights are taken at both ends.
   *
   * @param adhesion coefficient μ of the road, above 0 and up to 2
   * @return two checks
   * @throws org.wattwright.units.InvalidInputException if the coefficient is outside its range
   */
  public List<Check> check(double adhesion) {
    List<Pair> pairs = pairs(adhesion);
    Basis basis = before.basis().and(after.basis());
    Pair worst = pairs.stream().min((a, b) -> Double.compare(a.gain(), b.gain())).orElseThrow();
    Check order =
        Check.named("brake.lock.axle", "rear axle does not newly lock first, adhesion " + adhesion)
            .source(NO_WORSE)
            .basis(basis)
            .safety()
            .note("before: " + worst.was() + "; after: " + worst.is())
            .holds(pairs.stream().noneMatch(Pair::newlyRear));
    Check efficiency =
        Check.named("brake.efficiency.change", "share of the grip used, adhesion " + adhesion)
            .source(NO_WORSE)
            .basis(basis)
            .safety()
            .cautionBand(CautionBand.NONE)
            .atLeast(Figure.share(worst.is().efficiency()), Figure.share(worst.was().efficiency()));
    return List.of(order, efficiency);
  }

  private List<Pair> pairs(double adhesion) {
    List<BrakeBalance> was = before.extremes();
    List<BrakeBalance> is = after.extremes();
    List<Pair> pairs = new ArrayList<>();
    for (int i = 0; i < Math.max(was.size(), is.size()); i++) {
      pairs.add(
          new Pair(
              was.get(i % was.size()).firstLock(adhesion),
              is.get(i % is.size()).firstLock(adhesion)));
    }
    return pairs;
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
