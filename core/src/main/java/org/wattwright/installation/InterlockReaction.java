package org.wattwright.installation;

import java.util.Locale;

/** What the interlocks answer. */
public enum InterlockReaction {
  /** Ready to drive, contactors closed, torque allowed. */
  READY,
  /** Not ready to drive, no torque. */
  NOT_READY,
  /** Drive forward. */
  FORWARD,
  /** No torque in either direction. */
  NEUTRAL,
  /** Drive backward. */
  REVERSE,
  /** Refuse the change; stay forward. */
  STAY_FORWARD,
  /** Refuse the change; stay in reverse. */
  STAY_REVERSE,
  /** Warn, take torque back, then open the contactors at low current. */
  WARN_THEN_DERATE,
  /** Open the contactors at once. */
  OPEN_CONTACTORS,
  /** Go on. */
  NO_ACTION;

  /**
   * The reaction as reports print it.
   *
   * @return for example {@code warn then derate}
   */
  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
