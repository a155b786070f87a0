package org.wattwright.installation;

import java.util.List;

/** What the interlocks of a vehicle look at, with its states. */
public enum InterlockSignal {
  /** The charging connector in the inlet. */
  CHARGE_PLUG("charging plug", SignalState.IN, SignalState.OUT),
  /** The key or main switch. */
  KEY("key", SignalState.ON, SignalState.OFF),
  /** The service brake. */
  BRAKE("brake", SignalState.PRESSED, SignalState.RELEASED),
  /** The start button or start position of the key. */
  START("start", SignalState.PRESSED, SignalState.RELEASED),
  /** The accelerator. */
  ACCELERATOR("accelerator", SignalState.PRESSED, SignalState.RELEASED),
  /** Pre-charge of the bus. */
  PRECHARGE("pre-charge", SignalState.COMPLETE, SignalState.INCOMPLETE),
  /** The drive-ready state until now. */
  DRIVE("drive", SignalState.READY, SignalState.NOT_READY),
  /** The high-voltage interlock loop. */
  INTERLOCK_LOOP("interlock loop", SignalState.CLOSED, SignalState.OPEN),
  /** The crash signal. */
  CRASH("crash signal", SignalState.ON, SignalState.OFF),
  /** A trip of the battery management. */
  BATTERY_TRIP("battery trip", SignalState.ON, SignalState.OFF),
  /** Speed against the threshold of a change of direction. */
  SPEED("speed", SignalState.STANDING, SignalState.SLOW, SignalState.FAST),
  /** Direction of motion or, standing, the direction engaged. */
  DIRECTION("direction", SignalState.FORWARD, SignalState.NEUTRAL, SignalState.REVERSE),
  /** The direction selector. */
  SELECTOR("selector", SignalState.FORWARD, SignalState.NEUTRAL, SignalState.REVERSE);

  private final String label;
  private final List<SignalState> states;

  InterlockSignal(String label, SignalState... states) {
    this.label = label;
    this.states = List.of(states);
  }

  /**
   * Every state that it can have.
   *
   * @return at least two
   */
  public List<SignalState> states() {
    return states;
  }

  /**
   * The label as reports print it.
   *
   * @return for example {@code charging plug}
   */
  @Override
  public String toString() {
    return label;
  }
}
