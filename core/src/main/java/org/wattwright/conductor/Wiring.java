package org.wattwright.conductor;

/** How many conductors a circuit has, and how its current comes back. */
public enum Wiring {
  /** Out and back, direct current or one phase. */
  PAIR("pair", 2),
  /** Three phases of equal length; joints and loop are those of two phases. */
  THREE_PHASE("three phases", 3),
  /** Out alone; the current comes back through the body, whose resistance is not counted. */
  CHASSIS_RETURN("chassis return", 1);

  /** Voltage between two phases over that along one of them. */
  private static final double SQRT_3 = Math.sqrt(3);

  private final String label;
  private final int conductors;

  Wiring(String label, int conductors) {
    this.label = label;
    this.conductors = conductors;
  }

  /**
   * Number of conductors, without a protective one.
   *
   * @return 1 to 3, each of as many parallel runs as there are
   */
  public int conductors() {
    return conductors;
  }

  /** Voltage lost, as a share of current times loop resistance: of two phases √3·R of 2·R. */
  double dropShare() {
    return this == THREE_PHASE ? SQRT_3 / 2 : 1;
  }

  /** Metal, and heat at equal current, as a multiple of that of the loop: three phases of two. */
  double loopsOfMetal() {
    return this == THREE_PHASE ? 1.5 : 1;
  }

  /**
   * The label as reports print it.
   *
   * @return for example {@code three phases}
   */
  @Override
  public String toString() {
    return label;
  }
}
