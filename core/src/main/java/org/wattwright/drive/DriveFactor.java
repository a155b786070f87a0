package org.wattwright.drive;

import java.util.Locale;

/** What range and acceleration depend on. */
public enum DriveFactor {
  /** Mass of the vehicle with its load. */
  MASS,
  /** Coefficient of rolling resistance. */
  ROLLING_RESISTANCE,
  /** Drag coefficient times frontal area. */
  DRAG_AREA,
  /** Temperature of the cells. */
  TEMPERATURE;

  /**
   * In words.
   *
   * @return for example {@code rolling resistance}
   */
  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
