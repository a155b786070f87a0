package org.wattwright.examples.job;

/** By what the customer ranks packs that meet every requirement. */
public enum Objective {
  /** The lightest first. */
  LOWEST_MASS("lowest mass"),
  /** The most usable energy first. */
  MOST_USABLE_ENERGY("most usable energy"),
  /** The highest peak power first. */
  HIGHEST_PEAK_POWER("highest peak power"),
  /** The smallest volume first. */
  SMALLEST_VOLUME("smallest volume"),
  /** The cheapest first. */
  LOWEST_PRICE("lowest price");

  private final String label;

  Objective(String label) {
    this.label = label;
  }

  /**
   * The words of the job file.
   *
   * @return for example {@code lowest mass}
   */
  @Override
  public String toString() {
    return label;
  }
}
