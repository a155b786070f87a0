package org.wattwright.drive;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.StateOfCharge;

/**
 * Drives a vehicle on a cycle: once for energy and currents, or over and over for its range.
 *
 * <p>Steps are those of the cycle, never longer and never adapted across its points. In each step
 * the force is R(v) + m·a, through driveline and motor to the pack, whose current follows from I =
 * 2·P/(OCV + √(OCV² − 4·R·P)). Braking goes to the motor as far as it, the pack's charge limit in
 * that state, the grip of the driven axle and the fade towards low speed let it. Where a limit
 * leaves less force than the trace asks for, the vehicle gives what it can in the gear with the
 * most force and catches up later.
 *
 * <pre>{@code
 * CycleRun run = CycleRun.of(van);
 * run.once(StandardCycle.NEDC.cycle()).balance().toMarkdown();
 * run.range(StandardCycle.NEDC.cycle(), percentCharge(10));
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class CycleRun {
  /** No vehicle drives a cycle this often on one charge. */
  private static final int MOST_CYCLES = 10_000;

  /** Steps of all cycles of a run together: an hour of computing at most, whatever the cycle. */
  private static final long MOST_STEPS = 100_000_000L;

  private final ElectricVehicle vehicle;
  private final DriveModel model;
  private final boolean stopsWhenBehind;

  private CycleRun(ElectricVehicle vehicle, DriveModel model, boolean stopsWhenBehind) {
    this.vehicle = vehicle;
    this.model = model;
    this.stopsWhenBehind = stopsWhenBehind;
  }

  /**
   * Runs of a vehicle, from its state of charge at its temperature.
   *
   * @param vehicle the vehicle
   * @return runs that end a range where the trace cannot be followed
   */
  public static CycleRun of(ElectricVehicle vehicle) {
    return new CycleRun(Objects.requireNonNull(vehicle, "vehicle"), DriveModel.of(vehicle), true);
  }

  static CycleRun of(ElectricVehicle vehicle, PackTable pack) {
    return new CycleRun(vehicle, DriveModel.of(vehicle, pack), true);
  }

  /**
   * Runs that go on with full pedal where the trace cannot be followed, and end only at the
   * reserve.
   *
   * @return new runs
   */
  public CycleRun carryingOnBehind() {
    return new CycleRun(vehicle, model, false);
  }

  /**
   * The cycle once, to its end.
   *
   * @param cycle the cycle
   * @return energy, currents, and how well it was followed
   */
  public CycleResult once(DriveCycle cycle) {
    CycleKernel kernel = kernel(cycle);
    double[] currentsA = new double[cycle.steps()];
    CycleDriver driver = new CycleDriver(kernel, cycle, Double.NEGATIVE_INFINITY, currentsA);
    driver.once(false);
    return new CycleResult(cycle, kernel, driver, currentsA, basis());
  }

  /**
   * The cycle over and over, from where it ended, until the reserve is reached, the trace cannot be
   * followed for four seconds on end (UN GTR No. 15, Annex 8, from memory), or 10 000 cycles or 100
   * million steps are driven.
   *
   * @param cycle the cycle
   * @param reserve state of charge that stays in the pack, below that at the start
   * @return distance and what ended it
   * @throws InvalidInputException if the reserve is not below the start
   */
  public RangeResult range(DriveCycle cycle, StateOfCharge reserve) {
    StateOfCharge start = vehicle.state().stateOfCharge();
    if (!(reserve.fraction() < start.fraction())) {
      throw InvalidInputException.of("CycleRun.reserve", "< " + start, reserve.toString());
    }
    CycleKernel kernel = kernel(cycle);
    CycleDriver driver = new CycleDriver(kernel, cycle, reserve.fraction(), new double[0]);
    long most = Math.max(1, Math.min(MOST_CYCLES, MOST_STEPS / cycle.steps()));
    int full = 0;
    @Nullable RangeEnd end = driver.once(stopsWhenBehind);
    while (end == null && ++full < most) {
      end = driver.once(stopsWhenBehind);
    }
    return new RangeResult(
        cycle, kernel, driver, full, end == null ? RangeEnd.MOST_CYCLES : end, basis());
  }

  private CycleKernel kernel(DriveCycle cycle) {
    Require.between("DriveCycle.grade", cycle.grade(), -0.5, 0.5);
    return new CycleKernel(
        model, vehicle, cycle.grade(), vehicle.state().stateOfCharge().fraction());
  }

  private Basis basis() {
    return vehicle.basis();
  }

  /**
   * The vehicle.
   *
   * @return one line
   */
  @Override
  public String toString() {
    return "runs of " + vehicle;
  }
}
