package org.wattwright.voltage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.wattwright.units.StateOfCharge;

/**
 * Finds the states of charge in which every device works.
 *
 * <p>Voltage rises with state of charge at rest, but under load a resistance that depends on it may
 * bend the curve back. So each requirement is looked at in steps; within one step the tables are
 * straight, and a requirement changes at most once.
 */
final class UsableBand {
  /** Far below what any gauge can tell. */
  private static final double RESOLUTION = 1e-6;

  private static final int STEPS = 100;

  private final OperatingConditions conditions;

  /** Each changes at most once within a step. */
  private final List<Predicate<StateOfCharge>> requirements = new ArrayList<>();

  UsableBand(EnvelopeSolver solver, List<Device> devices) {
    this.conditions = solver.conditions();
    requirements.add(soc -> solver.peakLoad(soc).available());
    for (EnvelopePoint point : EnvelopePoint.values()) {
      requirements.add(soc -> isKept(devices, point, point.atV(solver, soc)));
    }
  }

  private static boolean isKept(List<Device> devices, EnvelopePoint point, double voltageV) {
    for (Device device : devices) {
      for (WindowRule rule : WindowRule.of(device)) {
        if (rule.point() == point && !rule.isKept(device, voltageV)) {
          return false;
        }
      }
    }
    return true;
  }

  /** Part of a step, or of several, in which all requirements hold. */
  private record Part(double from, double to) {
    Part and(Part other) {
      return new Part(Math.max(from, other.from), Math.min(to, other.to));
    }

    boolean isEmpty() {
      return !(from <= to);
    }
  }

  private static final Part NOTHING = new Part(1, 0);

  Optional<StateOfChargeBand> find() {
    Part widest = NOTHING;
    Part current = NOTHING;
    List<Double> steps = steps();
    for (int i = 1; i < steps.size(); i++) {
      Part part = works(new Part(steps.get(i - 1), steps.get(i)));
      boolean goesOn = !current.isEmpty() && current.to() == part.from();
      current = goesOn && !part.isEmpty() ? new Part(current.from(), part.to()) : part;
      boolean wider = current.to() - current.from() > widest.to() - widest.from();
      widest = !current.isEmpty() && wider ? current : widest;
    }
    return widest.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new StateOfChargeBand(StateOfCharge.of(widest.from()), StateOfCharge.of(widest.to())));
  }

  private List<Double> steps() {
    double emptiest = conditions.emptiest().fraction();
    double fullest = conditions.fullest().fraction();
    List<Double> steps = new ArrayList<>();
    steps.add(emptiest);
    for (int i = 0; i <= STEPS; i++) {
      double step = (double) i / STEPS;
      if (step > emptiest && step < fullest) {
        steps.add(step);
      }
    }
    steps.add(fullest);
    return steps;
  }

  private Part works(Part step) {
    Part part = step;
    for (Predicate<StateOfCharge> requirement : requirements) {
      part = part.and(where(requirement, step));
      if (part.isEmpty()) {
        return NOTHING;
      }
    }
    return part;
  }

  private static Part where(Predicate<StateOfCharge> requirement, Part step) {
    boolean low = requirement.test(StateOfCharge.of(step.from()));
    boolean high = requirement.test(StateOfCharge.of(step.to()));
    if (low && high) {
      return step;
    }
    if (!low && !high) {
      return NOTHING;
    }
    return low
        ? new Part(step.from(), edge(requirement, step.from(), step.to()))
        : new Part(edge(requirement, step.to(), step.from()), step.to());
  }

  /** Bisection that keeps the good side. */
  private static double edge(Predicate<StateOfCharge> requirement, double good, double bad) {
    double inside = good;
    double outside = bad;
    while (Math.abs(inside - outside) > RESOLUTION) {
      double middle = (inside + outside) / 2;
      if (requirement.test(StateOfCharge.of(middle))) {
        inside = middle;
      } else {
        outside = middle;
      }
    }
    return inside;
  }
}
