package org.wattwright.conversion;

import java.util.List;
import org.wattwright.battery.Pack;
import org.wattwright.check.Check;
import org.wattwright.check.Source;

/**
 * The charges of a plan, each run once, with their checks.
 *
 * <p>Immutable and thread-safe.
 */
public final class ChargeReview {
  private final ChargePlan plan;
  private final List<PlannedCharge> charges;

  private ChargeReview(ChargePlan plan, List<PlannedCharge> charges) {
    this.plan = plan;
    this.charges = charges;
  }

  /**
   * Runs every charge of a plan.
   *
   * @param pack the pack charged
   * @param plan from what, from which state of charge to which
   * @return what comes of it
   */
  public static ChargeReview of(Pack pack, ChargePlan plan) {
    return new ChargeReview(
        plan, plan.places().stream().map(place -> PlannedCharge.of(pack, plan, place)).toList());
  }

  /** For a conversion without a plan. */
  static Check missing() {
    return Check.named("charging.plan", "current, time and energy of a charge")
        .source(Source.PHYSICS)
        .notChecked("Conversion.charging");
  }

  /**
   * The plan.
   *
   * @return as given
   */
  public ChargePlan plan() {
    return plan;
  }

  /**
   * The charges.
   *
   * @return in the order of the plan
   */
  public List<PlannedCharge> charges() {
    return charges;
  }

  /**
   * The checks of all charges.
   *
   * @return each with its supply in the text
   */
  public List<Check> checks() {
    return charges.stream().flatMap(charge -> charge.checks().stream()).toList();
  }

  /**
   * One charge a line.
   *
   * @return supplies and results
   */
  @Override
  public String toString() {
    return String.join("\n", charges.stream().map(PlannedCharge::toString).toList());
  }
}
