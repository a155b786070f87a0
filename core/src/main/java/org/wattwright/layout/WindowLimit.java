package org.wattwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wattwright.check.Check;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;
import org.wattwright.voltage.Device;
import org.wattwright.voltage.WindowRule;

/** One side of a device's voltage window; the check itself comes from the review of the windows. */
final class WindowLimit implements Rule {
  private final Device device;
  private final WindowRule rule;
  private final EnvelopeVoltage voltage;
  private final Bound bound;

  /** A limit that is not known is NaN. */
  private WindowLimit(Device device, WindowRule rule, Bus bus) {
    this.device = device;
    this.rule = rule;
    this.voltage = new EnvelopeVoltage(rule.point(), bus);
    double limitV = rule.limitOf(device).map(Kind.VOLTAGE::siValueOf).orElse(Double.NaN);
    this.bound = rule.isUpper() ? Bound.atMost(limitV) : Bound.atLeast(limitV);
  }

  /** All sides of a device. */
  static List<Rule> of(Device device, Bus bus) {
    List<Rule> limits = new ArrayList<>();
    WindowRule.of(device).forEach(rule -> limits.add(new WindowLimit(device, rule, bus)));
    return limits;
  }

  private String verb() {
    if (rule == WindowRule.ABSOLUTE_MAXIMUM) {
      return "stands at most";
    }
    return rule.isUpper() ? "ends at" : "begins at";
  }

  private boolean isKnown() {
    return !Double.isNaN(bound.limitSi());
  }

  @Override
  public String name() {
    String end = rule == WindowRule.ABSOLUTE_MAXIMUM ? " (absolute maximum)" : "";
    String limit = isKnown() ? volts(bound.limitSi()) : "not known";
    return device.name()
        + ": pack "
        + voltage.point()
        + " "
        + bound.relation().sign()
        + " "
        + limit
        + end;
  }

  private static String volts(double voltageV) {
    return Measures.format(Kind.VOLTAGE.ofSi(voltageV), Kind.VOLTAGE);
  }

  @Override
  public Gate on(Variant variant, int mostModules) {
    return voltage.gate(variant, bound, mostModules);
  }

  @Override
  public Optional<Check> check(Candidate candidate) {
    return Optional.empty();
  }

  @Override
  public Optional<String> missing(Variant variant) {
    return isKnown() ? Optional.empty() : Optional.of(device.name() + ".absoluteMaximum");
  }

  @Override
  public Optional<Relaxation> relaxation(Candidate candidate, double shortfallSi) {
    double sign = bound.isAtMost() ? 1 : -1;
    double neededV = bound.limitSi() + sign * shortfallSi;
    String conflict =
        device.name()
            + " "
            + verb()
            + " "
            + volts(bound.limitSi())
            + ", pack "
            + voltage.point()
            + " is "
            + volts(neededV);
    return Optional.of(
        new Relaxation(
            name(), voltage.figure(bound.limitSi()), voltage.figure(neededV), candidate, conflict));
  }
}
