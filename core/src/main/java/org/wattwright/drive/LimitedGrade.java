package org.wattwright.drive;

import java.io.Serializable;
import java.util.Objects;
import org.wattwright.check.Figure;
import org.wattwright.internal.Require;

/**
 * A steepest grade and what limits it.
 *
 * @param grade tangent of the slope, 0.2 for 20 %; negative where the level is too much already
 * @param limit what limits it
 */
public record LimitedGrade(double grade, DriveLimit limit) implements Serializable {
  /**
   * Checks the value.
   *
   * @param grade tangent of the slope, finite
   * @param limit what limits it
   */
  public LimitedGrade {
    Require.finite("LimitedGrade.grade", grade);
    Objects.requireNonNull(limit, "limit");
  }

  /**
   * Grade and limit.
   *
   * @return for example {@code 28.4 %, limited by motor torque}
   */
  @Override
  public String toString() {
    return Figure.share(Math.rint(grade * 1e4) / 1e4) + ", limited by " + limit;
  }
}
