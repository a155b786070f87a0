package org.wattwright.drive;

import java.util.Locale;

/** What keeps a vehicle from more force or speed. */
public enum DriveLimit {
  /** Torque of the motor at that speed and voltage. */
  MOTOR_TORQUE,
  /** Highest speed of the motor. */
  MOTOR_SPEED,
  /** Torque that the gear stands. */
  GEAR_TORQUE,
  /** Current or power that the inverter takes from the bus. */
  INVERTER,
  /** Current that the pack gives in that state. */
  PACK,
  /** The limit on current set in the controller. */
  CURRENT_LIMIT,
  /** The limit on power set in the controller. */
  POWER_LIMIT,
  /** Grip of the driven tyres. */
  ADHESION;

  /**
   * In words.
   *
   * @return for example {@code motor torque}
   */
  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
