package org.wattwright.vehicle;

/** One of the two axles of a vehicle. */
public enum Axle {
  /** The axle in front, the steering one; the origin of distances along the vehicle. */
  FRONT("front"),
  /** The axle behind, one wheelbase behind the front axle. */
  REAR("rear");

  private final String label;

  Axle(String label) {
    this.label = label;
  }

  /**
   * The axle at the other end.
   *
   * @return rear for front, front for rear
   */
  public Axle other() {
    return this == FRONT ? REAR : FRONT;
  }

  /**
   * The word as reports and check codes print it.
   *
   * @return {@code front} or {@code rear}
   */
  @Override
  public String toString() {
    return label;
  }
}
