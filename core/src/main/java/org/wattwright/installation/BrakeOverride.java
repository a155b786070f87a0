package org.wattwright.installation;

import java.io.Serializable;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;

/**
 * Brake and accelerator pressed together: the motor is off above one travel, and stays off until
 * the accelerator is back below another. Immutable and thread-safe.
 *
 * @param cutsAbove travel of the accelerator, 0 to 1
 * @param releasesBelow travel of the accelerator, 0 to the first
 */
public record BrakeOverride(double cutsAbove, double releasesBelow) implements Serializable {
  /** 25 % and 5 %: Formula SAE rules EV.4.7, from memory. */
  public static final BrakeOverride USUAL = new BrakeOverride(0.25, 0.05);

  /**
   * Checks the ranges.
   *
   * @param cutsAbove 0 to 1
   * @param releasesBelow 0 to the first
   * @throws InvalidInputException if a value is outside its range
   */
  public BrakeOverride {
    Require.fraction("BrakeOverride.cutsAbove", cutsAbove);
    if (!(releasesBelow >= 0 && releasesBelow <= cutsAbove)) {
      throw InvalidInputException.of(
          "BrakeOverride.releasesBelow", "from 0 to " + cutsAbove, "" + releasesBelow);
    }
  }

  /**
   * Whether the motor is cut.
   *
   * @param travel of the accelerator, 0 to 1
   * @param braking whether the brake is pressed
   * @param cutBefore whether it was cut until now
   * @return whether it is cut now
   * @throws InvalidInputException if the travel is outside its range
   */
  public boolean isCut(double travel, boolean braking, boolean cutBefore) {
    Require.fraction("BrakeOverride.travel", travel);
    return cutBefore ? !(travel < releasesBelow) : braking && travel > cutsAbove;
  }
}
