package org.wattwright.installation;

import java.util.Locale;

/** A state of an {@link InterlockSignal}. */
public enum SignalState {
  /** Plugged in. */
  IN,
  /** Not plugged in. */
  OUT,
  /** On. */
  ON,
  /** Off. */
  OFF,
  /** Pressed. */
  PRESSED,
  /** Not pressed. */
  RELEASED,
  /** Done. */
  COMPLETE,
  /** Not done, or not known to be done. */
  INCOMPLETE,
  /** Ready to drive. */
  READY,
  /** Not ready to drive. */
  NOT_READY,
  /** Closed loop. */
  CLOSED,
  /** Open loop. */
  OPEN,
  /** At rest. */
  STANDING,
  /** Moving, not above the threshold. */
  SLOW,
  /** Above the threshold. */
  FAST,
  /** Forward. */
  FORWARD,
  /** Neither. */
  NEUTRAL,
  /** Backward. */
  REVERSE;

  /**
   * The state as reports print it.
   *
   * @return for example {@code not ready}
   */
  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
