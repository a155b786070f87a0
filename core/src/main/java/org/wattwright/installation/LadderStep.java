package org.wattwright.installation;

/** The steps of cell voltage, from the top down. */
public enum LadderStep {
  /** What the cell stands. */
  CELL_MAXIMUM("cell maximum"),
  /** The battery management opens the contactors. */
  HIGH_TRIP("high trip"),
  /** It warns and asks the charger to stop. */
  HIGH_WARNING("high warning"),
  /** The charger holds this. */
  CHARGER_END("charger end"),
  /** The inverter has cut back to nothing. */
  CUT_BACK("drive cut-back"),
  /** The battery management warns. */
  LOW_WARNING("low warning"),
  /** It opens the contactors. */
  LOW_TRIP("low trip"),
  /** Below this the cell is damaged. */
  CELL_MINIMUM("cell minimum");

  private final String label;

  LadderStep(String label) {
    this.label = label;
  }

  /**
   * The label as reports print it.
   *
   * @return for example {@code charger end}
   */
  @Override
  public String toString() {
    return label;
  }
}
