package org.wattwright.conversion;

/** The ten questions that the first page answers, in its order. */
public enum ExecutiveLine {
  /** Whether it can be built. */
  VERDICT("Verdict"),
  /** Battery, where it lies, and the devices. */
  WHAT_GOES_IN("What goes in"),
  /** Energy of the pack and what of it can be used. */
  ENERGY("Energy"),
  /** How far it goes: new, aged, in winter. */
  RANGE("Range"),
  /** How long a charge takes at the supply at hand. */
  CHARGE_TIME("Charging"),
  /** How it drives. */
  PERFORMANCE("Performance"),
  /** Kerb mass, axle loads and their change. */
  WEIGHT("Weight and axles"),
  /** What becomes of the load space. */
  LOAD_SPACE("Load space"),
  /** What nobody has answered yet. */
  MISSING("What is missing"),
  /** What to do before anything is ordered or cut. */
  NEXT("What to do next");

  private final String label;

  ExecutiveLine(String label) {
    this.label = label;
  }

  /**
   * The label as the page prints it.
   *
   * @return for example {@code Weight and axles}
   */
  @Override
  public String toString() {
    return label;
  }
}
