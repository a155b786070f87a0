package org.wattwright.examples.job;

/** Whether a module is new or has been used before. */
public enum ModuleState {
  /** Bought new. */
  NEW("new"),
  /** Taken out of another vehicle; measured, not rated, data count. */
  SALVAGED("salvaged");

  private final String label;

  ModuleState(String label) {
    this.label = label;
  }

  /**
   * The words of the job file.
   *
   * @return {@code new} or {@code salvaged}
   */
  @Override
  public String toString() {
    return label;
  }
}
