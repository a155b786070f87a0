package org.wattwright.conductor;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.CELSIUS;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.wattwright.internal.Require;
import org.wattwright.profile.Profile;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/**
 * Temperature of a cable or busbar under a current that changes with time.
 *
 * <p>Conductor and insulation are one lump: C·dθ/dt = I²·R′(θ) − q(θ), q being the loss of the
 * {@link SteadyHeating} balance and C the heat capacity of the metal with Van Wormer's share of the
 * insulation (IEC 60853-2, from memory). Each stretch of constant current is solved exactly, for
 * any step, without overshoot. RMS and peaks both count. The lump holds for stretches of seconds
 * and longer; for a short circuit see {@link ShortCircuit}. Range: −60 °C to 400 °C at the surface.
 * Immutable and thread-safe.
 */
public final class TransientHeating {
  /** Share of the time constant that a piece of a ramp may last. */
  private static final double PIECE_SHARE = 0.01;

  /** A repeated profile has settled when it ends this close to where it started. */
  private static final double SETTLED_K = 1e-3;

  private static final int MOST_PASSES = 60;

  private final List<TransientKernel> kernels;
  private final double currentFactor;

  private TransientHeating(SteadyHeating steady) {
    this.kernels = steady.conductors().stream().map(TransientKernel::new).toList();
    this.currentFactor = steady.currentFactor();
  }

  /**
   * From a heat balance.
   *
   * @param steady the balance of a cable or busbar in its place
   * @return the transient model with the same loss
   */
  public static TransientHeating of(SteadyHeating steady) {
    return new TransientHeating(steady);
  }

  /**
   * A cable in its place.
   *
   * @param cable with its diameters, given or estimated
   * @param installation where it lies
   * @return the model
   * @throws InvalidInputException if a diameter is missing
   */
  public static TransientHeating of(Cable cable, Installation installation) {
    return of(SteadyHeating.of(cable, installation));
  }

  /**
   * One pass of a profile from a start temperature.
   *
   * @param start conductor temperature at the start, −50 °C to 400 °C
   * @param current current in one conductor; the sign does not matter
   * @return the course of the temperature
   * @throws InvalidInputException if the start is outside its range
   */
  public TransientResult from(Quantity<Temperature> start, Profile<ElectricCurrent> current) {
    double startK = Require.quantity("TransientHeating.start", start, CELSIUS).between(-50, 400);
    return hottest(kernel -> run(kernel, startK, compared(kernel, current)));
  }

  /**
   * A profile that repeats for ever: the pass in which the temperature ends where it started.
   *
   * @param current current in one conductor; the sign does not matter
   * @return the course of the temperature over one pass
   */
  public TransientResult settled(Profile<ElectricCurrent> current) {
    return hottest(
        kernel -> {
          CurrentSteps steps = compared(kernel, current);
          return run(kernel, settledStartK(kernel, steps), steps);
        });
  }

  private CurrentSteps compared(TransientKernel kernel, Profile<ElectricCurrent> current) {
    return CurrentSteps.of(current, PIECE_SHARE * kernel.timeConstantS()).scaled(1 / currentFactor);
  }

  private interface Pass {
    TransientResult by(TransientKernel kernel);
  }

  private TransientResult hottest(Pass pass) {
    TransientResult hottest = pass.by(kernels.get(0));
    for (int i = 1; i < kernels.size(); i++) {
      TransientResult other = pass.by(kernels.get(i));
      hottest = other.peakK() > hottest.peakK() ? other : hottest;
    }
    return hottest;
  }

  private static TransientResult run(TransientKernel kernel, double startK, CurrentSteps steps) {
    double[] endsK = new double[steps.durationsS().length];
    TransientKernel.Run run = kernel.run(startK, steps.durationsS(), steps.currentsA(), endsK);
    return new TransientResult(startK, run, steps.durationsS(), endsK);
  }

  /** Start of the pass that repeats itself, by Aitken's step on passes from the RMS temperature. */
  private double settledStartK(TransientKernel kernel, CurrentSteps steps) {
    double startK = Math.min(kernel.conductor().conductorK(steps.rmsA()), kernel.highestK());
    double[] none = {};
    for (int pass = 0; pass < MOST_PASSES; pass++) {
      double onceK = kernel.run(startK, steps.durationsS(), steps.currentsA(), none).endK;
      double moveK = onceK - startK;
      if (Math.abs(moveK) <= SETTLED_K) {
        return startK;
      }
      double twiceK = kernel.run(onceK, steps.durationsS(), steps.currentsA(), none).endK;
      double ratio = (twiceK - onceK) / moveK;
      boolean converges = ratio >= 0 && ratio < 1;
      double nextK = converges ? startK + moveK / (1 - ratio) : twiceK;
      startK = Math.max(kernel.coldestK(), Math.min(nextK, kernel.highestK()));
    }
    return startK;
  }

  /**
   * Time a steady current takes to heat the conductor from one temperature to another.
   *
   * @param current current in one conductor, ≥ 0 A
   * @param start conductor temperature at the start, −50 °C to 400 °C
   * @param limit at least the start, at most 400 °C
   * @return in s; empty if the limit is never reached
   * @throws InvalidInputException if an argument is outside its range
   */
  public Optional<Quantity<Time>> timeToReach(
      Quantity<ElectricCurrent> current, Quantity<Temperature> start, Quantity<Temperature> limit) {
    double currentA = Require.quantity("TransientHeating.current", current, AMPERE).nonNegative();
    double startK = Require.quantity("TransientHeating.start", start, CELSIUS).between(-50, 400);
    double limitK = Require.quantity("TransientHeating.limit", limit, CELSIUS).between(-50, 400);
    if (!(limitK >= startK)) {
      throw InvalidInputException.of(
          "TransientHeating.limit", "≥ start " + start, limit.toString());
    }
    double shortestS = Double.POSITIVE_INFINITY;
    for (TransientKernel kernel : kernels) {
      shortestS = Math.min(shortestS, kernel.timeToS(currentA / currentFactor, startK, limitK));
    }
    return shortestS < Double.POSITIVE_INFINITY
        ? Optional.of(Kind.TIME.ofSi(shortestS))
        : Optional.empty();
  }

  /** Peak of a settled profile in K, without its course; a kernel for searches. */
  double settledPeakK(Profile<ElectricCurrent> current, double share) {
    double highestK = 0;
    double[] none = {};
    for (TransientKernel kernel : kernels) {
      CurrentSteps steps = compared(kernel, current).scaled(share);
      double startK = settledStartK(kernel, steps);
      TransientKernel.Run run = kernel.run(startK, steps.durationsS(), steps.currentsA(), none);
      highestK = Math.max(highestK, run.peakK);
    }
    return highestK;
  }
}
