package org.wattwright.installation;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.wattwright.check.Check;
import org.wattwright.check.Source;
import org.wattwright.vehicle.ParkingBrake;
import org.wattwright.vehicle.Stance;

/**
 * What holds a parked vehicle that has no gear to leave it in: the parking brake alone, unless a
 * park lock is fitted. A motor that is switched off holds nothing.
 */
public final class StandingHold {
  private StandingHold() {}

  /**
   * The parking brake's own verdicts on a grade, and {@code installation.second-hold}: CAUTION
   * without a second means, because one worn cable then lets the vehicle roll.
   *
   * @param brake the parking brake
   * @param stance the vehicle, laden
   * @param ground grade and grip
   * @param second a park lock of the drive, or chocks carried
   * @return four checks
   */
  public static List<Check> checks(
      ParkingBrake brake, Stance stance, Ground ground, boolean second) {
    List<Check> checks = new ArrayList<>(brake.check(stance, ground.grade(), ground.adhesion()));
    checks.add(
        Check.named("installation.second-hold", "a park lock, or chocks carried")
            .source(Source.commonPractice("a second means to hold where no gear does"))
            .safety()
            .recommends(second));
    return checks;
  }

  /**
   * The ground that a vehicle is parked on.
   *
   * @param grade tangent of the slope, 0 to 1; usually {@link ParkingBrake#USUAL_GRADE}
   * @param adhesion coefficient, 0 to 2
   */
  public record Ground(double grade, double adhesion) implements Serializable {}
}
