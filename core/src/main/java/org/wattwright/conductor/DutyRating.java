package org.wattwright.conductor;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.SECOND;

import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Time;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;

/**
 * Currents above the continuous one that a conductor bears for a time or part of the time.
 *
 * <p>First-order lumped model with constant resistance and time constant τ: good for an estimate on
 * paper; {@link TransientHeating} works out the temperature itself.
 */
public final class DutyRating {
  private DutyRating() {}

  /**
   * On-current of a fast periodic load: I = I_z/√d.
   *
   * <p>Holds only while the period is short against the time constant; common practice of welding
   * cables, 5 min (BS 638-4).
   *
   * @param continuous continuous current I_z, ≥ 0 A
   * @param dutyShare share of the time that the current flows, &gt; 0 and at most 1
   * @return in A
   * @throws InvalidInputException if an argument is outside its range
   */
  public static Quantity<ElectricCurrent> onCurrent(
      Quantity<ElectricCurrent> continuous, double dutyShare) {
    double continuousA = currentA("DutyRating.continuous", continuous);
    double share = Require.between("DutyRating.dutyShare", dutyShare, 1e-6, 1);
    return AMPERE.of(continuousA / Math.sqrt(share));
  }

  /**
   * Current that heats from a preload to the continuous limit in a time: I = √[I₀² + (I_z² −
   * I₀²)/(1 − e^(−t/τ))].
   *
   * @param continuous continuous current I_z, ≥ 0 A
   * @param preload steady current before, 0 A to I_z
   * @param time how long the current flows, &gt; 0 s
   * @param timeConstant τ, &gt; 0 s
   * @return in A
   * @throws InvalidInputException if an argument is outside its range
   */
  public static Quantity<ElectricCurrent> shortTimeCurrent(
      Quantity<ElectricCurrent> continuous,
      Quantity<ElectricCurrent> preload,
      Quantity<Time> time,
      Quantity<Time> timeConstant) {
    double continuousA = currentA("DutyRating.continuous", continuous);
    double preloadA = currentA("DutyRating.preload", preload);
    if (!(preloadA <= continuousA)) {
      throw InvalidInputException.of(
          "DutyRating.preload", "≤ continuous current " + continuous, preload.toString());
    }
    double share = riseShare(time, timeConstant);
    double squares = continuousA * continuousA - preloadA * preloadA;
    return AMPERE.of(Math.sqrt(preloadA * preloadA + squares / share));
  }

  /**
   * On-current of a slow periodic load: I = I_z·√[(1 − e^(−T/τ))/(1 − e^(−t_on/τ))].
   *
   * @param continuous continuous current I_z, ≥ 0 A
   * @param on time with current, &gt; 0 s, at most the period
   * @param period on and off together, &gt; 0 s
   * @param timeConstant τ, &gt; 0 s
   * @return in A
   * @throws InvalidInputException if an argument is outside its range
   */
  public static Quantity<ElectricCurrent> periodicOnCurrent(
      Quantity<ElectricCurrent> continuous,
      Quantity<Time> on,
      Quantity<Time> period,
      Quantity<Time> timeConstant) {
    double continuousA = currentA("DutyRating.continuous", continuous);
    double onShare = riseShare(on, timeConstant);
    double periodShare = riseShare(period, timeConstant);
    if (!(onShare <= periodShare)) {
      throw InvalidInputException.of("DutyRating.on", "≤ period " + period, on.toString());
    }
    return AMPERE.of(continuousA * Math.sqrt(periodShare / onShare));
  }

  /** 1 − e^(−t/τ). */
  private static double riseShare(Quantity<Time> time, Quantity<Time> timeConstant) {
    double timeS = Require.quantity("DutyRating.time", time, SECOND).positive();
    double constantS = Require.quantity("DutyRating.timeConstant", timeConstant, SECOND).positive();
    return -Math.expm1(-timeS / constantS);
  }

  private static double currentA(String field, Quantity<ElectricCurrent> current) {
    return Require.quantity(field, current, AMPERE).nonNegative();
  }
}
