package org.wattwright.drive;

import static org.wattwright.units.WorkshopUnits.KILOMETRE_PER_HOUR;
import static org.wattwright.units.WorkshopUnits.METRE_PER_SECOND_SQUARED;
import static org.wattwright.units.WorkshopUnits.SECOND;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Acceleration;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/**
 * What a driver in a hurry asks for, without a trace: full pedal to a speed, hold it, brake to a
 * stop, stand; stage after stage. A stronger vehicle gets there sooner and uses more.
 *
 * <p>Immutable and thread-safe.
 */
public final class DriveDemand implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Longest time at full pedal in one stage; then the speed that was reached is held. */
  static final double LONGEST_PEDAL_S = 120;

  private static final double STANDING_S = 10;

  private final List<Stage> stages;
  private final double brakingMs2;

  /** One start: target speed and time to hold it. */
  record Stage(double targetMs, double holdS) implements Serializable {}

  private DriveDemand(List<Stage> stages, double brakingMs2) {
    this.stages = List.copyOf(stages);
    this.brakingMs2 = brakingMs2;
  }

  /**
   * A demand without a stage yet.
   *
   * @param braking deceleration, &gt; 0 m/s²
   * @return the demand
   * @throws InvalidInputException if not positive
   */
  public static DriveDemand braking(Quantity<Acceleration> braking) {
    double ms2 =
        Require.quantity("DriveDemand.braking", braking, METRE_PER_SECOND_SQUARED).positive();
    return new DriveDemand(List.of(), ms2);
  }

  /**
   * With one more start: full pedal to a speed, for two minutes at most, hold it, brake, stand for
   * 10 s.
   *
   * @param target &gt; 0
   * @param hold how long, ≥ 0 s and at most 3600 s
   * @return a new demand
   * @throws InvalidInputException if an argument is outside its range
   */
  public DriveDemand then(Quantity<Speed> target, Quantity<Time> hold) {
    double targetMs =
        Require.quantity("DriveDemand.target", target, KILOMETRE_PER_HOUR).positiveUpTo(400);
    double holdS = Require.quantity("DriveDemand.hold", hold, SECOND).between(0, 3600);
    List<Stage> more = new ArrayList<>(stages);
    more.add(new Stage(targetMs, holdS));
    return new DriveDemand(more, brakingMs2);
  }

  /** Drives the stages; ends early where the reserve is reached. */
  DemandResult drive(DriveModel model, ElectricVehicle vehicle) {
    Require.nonEmpty("DriveDemand.stages", stages);
    double soc = vehicle.state().stateOfCharge().fraction();
    CycleKernel kernel = new CycleKernel(model, vehicle, 0, soc);
    int reached = 0;
    for (Stage stage : stages) {
      double speedMs = accelerate(kernel, stage.targetMs);
      reached += speedMs >= stage.targetMs * (1 - 1e-9) ? 1 : 0;
      hold(kernel, speedMs, stage.holdS);
      brake(kernel, speedMs);
      hold(kernel, 0, STANDING_S);
    }
    return new DemandResult(
        kernel.timeS, kernel.distanceM, kernel.balance(), stages.size() - reached);
  }

  private static final double STEP_S = 0.25;

  private static double accelerate(CycleKernel kernel, double targetMs) {
    double speedMs = 0;
    for (double t = 0; t < LONGEST_PEDAL_S && speedMs < targetMs; t += STEP_S) {
      speedMs = kernel.step(speedMs, targetMs, STEP_S);
    }
    return speedMs;
  }

  private static void hold(CycleKernel kernel, double speedMs, double durationS) {
    double heldMs = speedMs;
    for (double t = 0; t < durationS; t += 1) {
      heldMs = kernel.step(heldMs, speedMs, Math.min(1, durationS - t));
    }
  }

  private void brake(CycleKernel kernel, double fromMs) {
    double speedMs = fromMs;
    while (speedMs > 0) {
      double stepS = Math.min(1, speedMs / brakingMs2);
      double nextMs = stepS < 1 ? 0 : Math.max(0, speedMs - brakingMs2 * stepS);
      speedMs = kernel.step(speedMs, nextMs, stepS);
    }
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof DriveDemand that
        && stages.equals(that.stages)
        && brakingMs2 == that.brakingMs2;
  }

  @Override
  public int hashCode() {
    return Objects.hash(stages, brakingMs2);
  }

  /**
   * Number of stages and braking.
   *
   * @return for example {@code 3 starts with full pedal, braking at 1.2 m/s²}
   */
  @Override
  public String toString() {
    return stages.size()
        + " starts with full pedal, braking at "
        + Measures.format(Kind.ACCELERATION.ofSi(brakingMs2), Kind.ACCELERATION);
  }
}
