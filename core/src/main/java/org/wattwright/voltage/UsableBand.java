package org.wattwright.voltage;

import java.util.List;
import java.util.Optional;
import java.util.function.DoublePredicate;
import org.wattwright.units.Kind;
import org.wattwright.units.StateOfCharge;

/** Finds the states of charge in which every device works. */
final class UsableBand {
  /** Far below what any gauge can tell. */
  private static final double RESOLUTION = 1e-6;

  private final EnvelopeSolver solver;
  private final List<Device> devices;
  private final OperatingConditions conditions;

  UsableBand(EnvelopeSolver solver, List<Device> devices, OperatingConditions conditions) {
    this.solver = solver;
    this.devices = devices;
    this.conditions = conditions;
  }

  Optional<StateOfChargeBand> find() {
    double emptiest = conditions.emptiest().fraction();
    double fullest = conditions.fullest().fraction();
    if (!worksEmpty(fullest) || !worksFull(emptiest)) {
      return Optional.empty();
    }
    double from = worksEmpty(emptiest) ? emptiest : edge(this::worksEmpty, fullest, emptiest);
    double to = worksFull(fullest) ? fullest : edge(this::worksFull, emptiest, fullest);
    return from > to
        ? Optional.empty()
        : Optional.of(new StateOfChargeBand(StateOfCharge.of(from), StateOfCharge.of(to)));
  }

  /**
   * Voltage rises with state of charge, so each condition changes once; bisection keeps the good.
   */
  private static double edge(DoublePredicate works, double good, double bad) {
    double inside = good;
    double outside = bad;
    while (Math.abs(inside - outside) > RESOLUTION) {
      double middle = (inside + outside) / 2;
      if (works.test(middle)) {
        inside = middle;
      } else {
        outside = middle;
      }
    }
    return inside;
  }

  private boolean worksEmpty(double soc) {
    EnvelopeSolver.PeakLoad peak = solver.peakLoad(StateOfCharge.of(soc));
    return peak.available()
        && devices.stream()
            .filter(device -> device.role() != DeviceRole.CHARGER)
            .allMatch(device -> peak.voltageV() >= device.window().operating().lowestV());
  }

  private boolean worksFull(double soc) {
    double regeneratingV = solver.regeneratingV(StateOfCharge.of(soc));
    return devices.stream()
        .filter(device -> device.role() != DeviceRole.CHARGER)
        .allMatch(
            device ->
                regeneratingV <= Kind.VOLTAGE.siValueOf(device.window().operating().highest()));
  }
}
