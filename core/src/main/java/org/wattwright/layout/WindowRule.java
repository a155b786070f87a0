package org.wattwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import org.wattwright.check.Check;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;
import org.wattwright.voltage.Device;
import org.wattwright.voltage.DeviceRole;
import org.wattwright.voltage.VoltageWindow;

/** One side of a device's voltage window; the check itself comes from the review of the windows. */
final class WindowRule implements Rule {
  private final Device device;
  private final Side side;
  private final EnvelopeVoltage voltage;
  private final Bound bound;

  /** Which end of the window, and how the message says it. */
  enum Side {
    UPPER_END("ends at"),
    LOWER_END("begins at"),
    ABSOLUTE_MAXIMUM("stands at most");

    private final String verb;

    Side(String verb) {
      this.verb = verb;
    }
  }

  private WindowRule(Device device, Side side, EnvelopeVoltage voltage, double limitV) {
    this.device = device;
    this.side = side;
    this.voltage = voltage;
    this.bound = side == Side.LOWER_END ? Bound.atLeast(limitV) : Bound.atMost(limitV);
  }

  /** All sides of a device; an absolute maximum that is not known is a limit that is NaN. */
  static List<Rule> of(Device device, Bus bus) {
    boolean charger = device.role() == DeviceRole.CHARGER;
    EnvelopePoint top = charger ? EnvelopePoint.END_OF_CHARGE : EnvelopePoint.FULL_UNDER_CHARGE;
    EnvelopePoint bottom = charger ? EnvelopePoint.EMPTY_AT_REST : EnvelopePoint.EMPTY_UNDER_LOAD;
    VoltageWindow window = device.window();
    double absoluteV = window.absoluteMaximum().map(Kind.VOLTAGE::siValueOf).orElse(Double.NaN);
    List<Rule> rules = new ArrayList<>();
    rules.add(rule(device, Side.UPPER_END, new EnvelopeVoltage(top, bus)));
    rules.add(rule(device, Side.LOWER_END, new EnvelopeVoltage(bottom, bus)));
    rules.add(
        new WindowRule(
            device,
            Side.ABSOLUTE_MAXIMUM,
            new EnvelopeVoltage(EnvelopePoint.FULL_UNDER_CHARGE, bus),
            absoluteV));
    return rules;
  }

  private static Rule rule(Device device, Side side, EnvelopeVoltage voltage) {
    Quantity<ElectricPotential> limit =
        side == Side.UPPER_END
            ? device.window().operating().highest()
            : device.window().operating().lowest();
    return new WindowRule(device, side, voltage, Kind.VOLTAGE.siValueOf(limit));
  }

  private boolean isKnown() {
    return !Double.isNaN(bound.limitSi());
  }

  @Override
  public String name() {
    String end = side == Side.ABSOLUTE_MAXIMUM ? " (absolute maximum)" : "";
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
            + side.verb
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
