package org.wattwright.conversion;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wattwright.check.Check;
import org.wattwright.check.Source;
import org.wattwright.vehicle.LoadState;
import org.wattwright.vehicle.Understeer;

/** Whether the vehicle stays stable up to its top speed. */
final class HandlingChecks {
  private HandlingChecks() {}

  static Check of(VehicleReview review, LoadState state) {
    Optional<Chassis.Handling> known = review.chassis().handling();
    Optional<Understeer> understeer = review.understeer(state);
    if (known.isPresent() && understeer.isPresent()) {
      return understeer.get().check(known.get().topSpeed()).in(state.loadCase().name());
    }
    List<String> missing = new ArrayList<>(state.missingForHeight());
    if (known.isEmpty()) {
      missing.add("Chassis.handling");
    }
    return Check.named(
            "handling.speed.critical", "critical speed above top speed, " + state.loadCase().name())
        .source(Source.PHYSICS)
        .safety()
        .notChecked(missing.toArray(String[]::new));
  }
}
