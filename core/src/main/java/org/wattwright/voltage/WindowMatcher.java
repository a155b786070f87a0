package org.wattwright.voltage;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.wattwright.battery.BatteryModule;
import org.wattwright.battery.Pack;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;

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
   * Every number of modules in series that breaks no known limit and carries the peak load, up to
   * 400 cells: those whose {@link #review} holds no FAIL. A limit that is not known breaks nothing;
   * the review says what is not checked.
   *
   * <p>Every voltage rises with the number of modules, so each limit holds up to a number, or from
   * a number on, and is found by halving.
   *
   * @return the numbers, or the conflict
   * @throws InvalidInputException if there is no device or no conditions
   */
  public WindowMatch match() {
    Require.nonEmpty("WindowMatcher.devices", devices);
    int most = Math.max(1, MOST_CELLS_IN_SERIES / module.series());
    return new SeriesSearch(
            series -> new EnvelopeSolver(Pack.of(module, series, parallel), requiredConditions()),
            devices,
            most)
        .run();
  }

  private OperatingConditions requiredConditions() {
    if (conditions == null) {
      throw InvalidInputException.of("WindowMatcher.conditions", "given by under(…)", "missing");
    }
    return conditions;
  }

  /**
   * Module, strings, devices and conditions.
   *
   * @return for example {@code flat module, 2 strings, with inverter, charger; 10 % … 100 %, …}
   */
  @Override
  public String toString() {
    String strings = parallel == 1 ? "1 string" : parallel + " strings";
    String names = String.join(", ", devices.stream().map(Device::name).toList());
    return module.name()
        + ", "
        + strings
        + (devices.isEmpty() ? ", no devices" : ", with " + names)
        + "; "
        + (conditions == null ? "no conditions" : conditions);
  }
}
