package org.wattwright.charging;

/** What a duty cycle of the control pilot says. */
public enum PilotMeaning {
  /** Below 3 %: nothing may be drawn. */
  NO_CHARGING("no charging"),
  /** Around 5 %: the current is agreed by digital communication. */
  DIGITAL("digital communication required"),
  /** Between the bands: a fault; nothing may be drawn. */
  ERROR("error: no charging"),
  /** A current is offered. */
  CURRENT("current offered"),
  /** 100 %: the pilot stands at a steady voltage. */
  NOT_MODULATED("no charging (pilot not modulating)");

  private final String label;

  PilotMeaning(String label) {
    this.label = label;
  }

  /**
   * The meaning in words.
   *
   * @return for example {@code current offered}
   */
  @Override
  public String toString() {
    return label;
  }
}
