package org.wattwright.conversion;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.wattwright.battery.Pack;
import org.wattwright.battery.PackState;
import org.wattwright.charging.AcCurrent;
import org.wattwright.charging.ChargeResult;
import org.wattwright.charging.ChargeSimulation;
import org.wattwright.check.Check;

/**
 * One charge of a plan: the current that its supply allows, and what comes of it.
 *
 * @param label the supply, as the plan names it
 * @param current what the charger may draw; empty at a DC station
 * @param result time, energies, what limits when
 * @param checks each with the supply in its text
 */
public record PlannedCharge(
    String label, Optional<AcCurrent> current, ChargeResult result, List<Check> checks) {
  /**
   * Copies the list.
   *
   * @param label the supply, as the plan names it
   * @param current what the charger may draw; empty at a DC station
   * @param result time, energies, what limits when
   * @param checks each with the supply in its text
   */
  public PlannedCharge {
    Objects.requireNonNull(label, "label");
    Objects.requireNonNull(current, "current");
    Objects.requireNonNull(result, "result");
    checks = List.copyOf(checks);
  }

  static PlannedCharge of(Pack pack, ChargePlan plan, ChargePlan.Place place) {
    ChargeSimulation charge =
        ChargeSimulation.of(pack).from(plan.from()).to(plan.to()).temperature(plan.temperature());
    List<Check> checks = new ArrayList<>();
    Optional<AcCurrent> current = Optional.empty();
    if (place.station() != null) {
      charge = charge.station(place.station());
      checks.addAll(place.station().checks(pack, PackState.of(plan.from(), plan.temperature())));
    }
    if (place.point() != null) {
      charge = charge.charger(plan.charger()).at(place.point());
      checks.addAll(place.point().checks(plan.charger()));
      current = Optional.of(place.point().allows(plan.charger()));
    }
    ChargeResult result = charge.run();
    checks.addAll(result.checks());
    if (place.target() != null) {
      checks.add(result.timeCheck(place.target().time(), place.target().source()));
    }
    return new PlannedCharge(
        place.label(),
        current,
        result,
        checks.stream().map(check -> check.in(place.label())).toList());
  }

  /**
   * Supply and result.
   *
   * @return for example {@code bakery: 15 % … 100 % in 5 h 10 min, …}
   */
  @Override
  public String toString() {
    return label + ": " + result;
  }
}
