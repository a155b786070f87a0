package org.wattwright.installation;

/** Which way a mass is thrown, as the driver sees it; each direction is a load case of its own. */
public enum LoadDirection {
  /** Thrown forward: a frontal crash, or braking. */
  FORWARD("forward", 1, 0, 0),
  /** Thrown rearward: struck from behind, or starting. */
  REARWARD("rearward", -1, 0, 0),
  /** Thrown to the left. */
  LEFT("left", 0, 1, 0),
  /** Thrown to the right. */
  RIGHT("right", 0, -1, 0),
  /** Thrown up: rolling over. */
  UP("up", 0, 0, 1),
  /** Pressed down. */
  DOWN("down", 0, 0, -1);

  private final String label;
  private final int x;
  private final int y;
  private final int z;

  LoadDirection(String label, int x, int y, int z) {
    this.label = label;
    this.x = x;
    this.y = y;
    this.z = z;
  }

  /** Unit vector: x forward, y left, z up (ISO 8855). */
  double[] unit() {
    return new double[] {x, y, z};
  }

  /**
   * The label as reports print it.
   *
   * @return for example {@code forward}
   */
  @Override
  public String toString() {
    return label;
  }
}
