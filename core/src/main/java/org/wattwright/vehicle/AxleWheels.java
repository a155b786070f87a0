package org.wattwright.vehicle;

/** How the tyres of an axle are arranged. */
public enum AxleWheels {
  /** One tyre on each side. */
  SINGLE(2),
  /** Two tyres side by side on each side, of a lower load index each. */
  TWIN(4);

  private final int count;

  AxleWheels(int count) {
    this.count = count;
  }

  /**
   * Number of tyres on the axle.
   *
   * @return 2 or 4
   */
  public int count() {
    return count;
  }
}
