package org.wattwright.installation;

import java.util.List;

/** What the interlocks of a vehicle look at, with its states. */
public enum InterlockSignal {
  /** The charging connector in the inlet. */
  CHARGE_PLUG("charging plug"),
  /** The key or main switch. */
  KEY("key"),
  /** The service brake. */
  BRAKE("brake"),
  /** The start button or start position of the key. */
  START("start"),
  /** The accelerator. */
  ACCELERATOR("accelerator"),
  /** Pre-charge of the bus. */
  PRECHARGE("pre-charge"),
  /** The drive-ready state until now. */
  DRIVE("drive"),
  /** The high-voltage interlock loop. */
  INTERLOCK_LOOP("interlock loop"),
  /** The crash signal. */
  CRASH("crash signal"),
  /** A trip of the battery management. */
  BATTERY_TRIP("battery trip"),
  /** Speed against the threshold of a change of direction. */
  SPEED("speed"),
  /** Direction of motion or, standing, the direction engaged. */
  DIRECTION("direction"),
  /** The direction selector. */
  SELECTOR("selector");

  private final String label;

  InterlockSignal(String label) {
    this.label = label;
  }

  /**
   * Every state that it can have.
   *
   * @return at least two
   */
  public List<SignalState> states() {
    return switch (this) {
      case CHARGE_PLUG -> List.of(SignalState.IN, SignalState.OUT);
      case KEY -> List.of(SignalState.ON, SignalState.OFF);
      case BRAKE -> List.of(SignalState.PRESSED, SignalState.RELEASED);
      case START -> List.of(SignalState.PRESSED, SignalState.RELEASED);
      case ACCELERATOR -> List.of(SignalState.PRESSED, SignalState.RELEASED);
      case PRECHARGE -> List.of(SignalState.COMPLETE, SignalState.INCOMPLETE);
      case DRIVE -> List.of(SignalState.READY, SignalState.NOT_READY);
      case INTERLOCK_LOOP -> List.of(SignalState.CLOSED, SignalState.OPEN);
      case CRASH -> List.of(SignalState.ON, SignalState.OFF);
      case BATTERY_TRIP -> List.of(SignalState.ON, SignalState.OFF);
      case SPEED -> List.of(SignalState.STANDING, SignalState.SLOW, SignalState.FAST);
      case DIRECTION -> List.of(SignalState.FORWARD, SignalState.NEUTRAL, SignalState.REVERSE);
      case SELECTOR -> List.of(SignalState.FORWARD, SignalState.NEUTRAL, SignalState.REVERSE);
    };
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
