package org.wattwright.voltage;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import org.jspecify.annotations.Nullable;
import org.wattwright.battery.BatteryModule;
import org.wattwright.battery.Pack;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/**
 * Finds how many modules in series fit the voltage windows of all devices.
 *
 * <p>Immutable: every call returns a new matcher. Thread-safe.
 *
 * <pre>{@code
 * WindowMatch match = WindowMatcher.of(module, 1)
 *     .device(inverter)
 *     .device(charger)
 *     .under(conditions)
 *     .match();
 * }</pre>
 */
public final class WindowMatcher {
  /** No traction pack has more cells in series. */
  private static final int MOST_CELLS_IN_SERIES = 400;

  private final BatteryModule module;
  private final int parallel;
  private final List<Device> devices;
  private final @Nullable OperatingConditions conditions;

  private WindowMatcher(
      BatteryModule module,
      int parallel,
      List<Device> devices,
      @Nullable OperatingConditions conditions) {
    this.module = module;
    this.parallel = parallel;
    this.devices = devices;
    this.conditions = conditions;
  }

  /**
   * Starts a matcher.
   *
   * @param module the module type
   * @param parallel strings in parallel, ≥ 1
   * @return a matcher without devices
   * @throws InvalidInputException if parallel is less than 1
   */
  public static WindowMatcher of(BatteryModule module, int parallel) {
    return new WindowMatcher(
        Objects.requireNonNull(module, "module"),
        Require.positiveCount("WindowMatcher.parallel", parallel),
        List.of(),
        null);
  }

  /**
   * Adds a device on the bus.
   *
   * @param device the device
   * @return a new matcher
   */
  public WindowMatcher device(Device device) {
    List<Device> more = new ArrayList<>(devices);
    more.add(Objects.requireNonNull(device, "device"));
    return new WindowMatcher(module, parallel, List.copyOf(more), conditions);
  }

  /**
   * Sets the conditions.
   *
   * @param value the conditions
   * @return a new matcher
   */
  public WindowMatcher under(OperatingConditions value) {
    return new WindowMatcher(
        module, parallel, devices, Objects.requireNonNull(value, "conditions"));
  }

  /**
   * Reviews one number of modules in series.
   *
   * @param series modules in series, ≥ 1
   * @return envelope, checks and more
   * @throws InvalidInputException if there is no device, no conditions, or series is less than 1
   */
  public WindowReview review(int series) {
    return WindowReview.of(Pack.of(module, series, parallel), devices, requiredConditions());
  }

  /**
   * Every number of modules in series that breaks no window and carries the peak load, up to 400
   * cells.
   *
   * @return the numbers, or the conflict
   * @throws InvalidInputException if there is no device or no conditions
   */
  public WindowMatch match() {
    Require.nonEmpty("WindowMatcher.devices", devices);
    int most = Math.max(1, MOST_CELLS_IN_SERIES / module.series());
    List<VoltageEnvelope> envelopes = new ArrayList<>();
    List<Boolean> peaks = new ArrayList<>();
    for (int series = 1; series <= most; series++) {
      EnvelopeSolver solver = solver(series);
      envelopes.add(solver.envelope());
      peaks.add(solver.peakLoad(requiredConditions().emptiest()).available());
    }
    List<Integer> fitting = new ArrayList<>();
    for (int series = 1; series <= most; series++) {
      VoltageEnvelope envelope = envelopes.get(series - 1);
      if (peaks.get(series - 1) && devices.stream().allMatch(d -> fits(d, envelope))) {
        fitting.add(series);
      }
    }
    return fitting.isEmpty() ? conflict(envelopes, peaks) : new WindowMatch.Fits(fitting);
  }

  private EnvelopeSolver solver(int series) {
    return new EnvelopeSolver(
        Pack.of(module, series, parallel), requiredConditions(), org.wattwright.check.Recorder.OFF);
  }

  private OperatingConditions requiredConditions() {
    if (conditions == null) {
      throw InvalidInputException.of("WindowMatcher.conditions", "given by under(…)", "missing");
    }
    return conditions;
  }

  private static boolean fits(Device device, VoltageEnvelope envelope) {
    return fitsAbove(device, envelope) && fitsBelow(device, envelope);
  }

  private static boolean fitsAbove(Device device, VoltageEnvelope envelope) {
    return keeps(highest(device, envelope), upperEnd(device));
  }

  /** With the rounding that a check allows too. */
  private static boolean keeps(
      Quantity<ElectricPotential> actual, Quantity<ElectricPotential> limit) {
    double limitV = Kind.VOLTAGE.siValueOf(limit);
    return Kind.VOLTAGE.siValueOf(actual) <= limitV * (1 + 1e-12);
  }

  private static boolean fitsBelow(Device device, VoltageEnvelope envelope) {
    Quantity<ElectricPotential> lowest =
        device.role() == DeviceRole.CHARGER ? envelope.emptyAtRest() : envelope.emptyUnderLoad();
    return keeps(device.window().operating().lowest(), lowest);
  }

  /** The highest voltage that a device meets: a charger the end of charge, all others more. */
  private static Quantity<ElectricPotential> highest(Device device, VoltageEnvelope envelope) {
    return device.role() == DeviceRole.CHARGER
        ? envelope.endOfCharge()
        : envelope.fullUnderCharge();
  }

  private static Quantity<ElectricPotential> upperEnd(Device device) {
    return device.window().operating().highest();
  }

  /** The device that allows the fewest modules against the one that needs the most. */
  private WindowMatch conflict(List<VoltageEnvelope> envelopes, List<Boolean> peaks) {
    Device upper = devices.get(0);
    int most = Integer.MAX_VALUE;
    String lower = "the peak load";
    Optional<Integer> fewest = firstIndex(peaks);
    for (Device device : devices) {
      int allowed = (int) envelopes.stream().filter(e -> fitsAbove(device, e)).count();
      if (allowed < most) {
        most = allowed;
        upper = device;
      }
      Optional<Integer> needed =
          firstIndex(envelopes.stream().map(e -> fitsBelow(device, e)).toList());
      if (fewest.isPresent() && (needed.isEmpty() || needed.get() > fewest.get())) {
        fewest = needed;
        lower = device.name();
      }
    }
    return conflictOf(upper, most, lower, fewest, envelopes);
  }

  private static Optional<Integer> firstIndex(List<Boolean> values) {
    int index = values.indexOf(true);
    return index < 0 ? Optional.empty() : Optional.of(index + 1);
  }

  private WindowMatch conflictOf(
      Device upper,
      int most,
      String lower,
      Optional<Integer> fewest,
      List<VoltageEnvelope> envelopes) {
    Quantity<ElectricPotential> end = upperEnd(upper);
    String atMost = "at most " + most + " in series";
    if (fewest.isEmpty() || fewest.get() <= most) {
      // The windows overlap, but no number carries the load: more strings in parallel are needed.
      String text = lower + " is met by no number of modules in series; " + atMost;
      return new WindowMatch.Conflict(
          upper.name(), end, most, lower, Optional.empty(), Optional.empty(), text);
    }
    VoltageEnvelope needed = envelopes.get(fewest.get() - 1);
    Quantity<ElectricPotential> full = highest(upper, needed);
    Quantity<ElectricPotential> apart =
        Kind.VOLTAGE.ofSi(Kind.VOLTAGE.siValueOf(full) - Kind.VOLTAGE.siValueOf(end));
    String text =
        upper.name()
            + " ends at "
            + Measures.format(end, Kind.VOLTAGE)
            + ", pack full is "
            + Measures.format(full, Kind.VOLTAGE)
            + ": "
            + Measures.format(apart, Kind.VOLTAGE)
            + " apart; "
            + atMost
            + ", but "
            + lower
            + " needs "
            + fewest.get();
    return new WindowMatch.Conflict(
        upper.name(), end, most, lower, fewest, Optional.of(apart), text);
  }
}
