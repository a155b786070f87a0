package org.wattwright.vehicle;

/** Left or right, as the driver sees it. */
public enum Side {
  /** The driver's left; positive y. */
  LEFT("left"),
  /** The driver's right; negative y. */
  RIGHT("right");

  private final String label;

  Side(String label) {
    this.label = label;
  }

  /** The sign of y on this side. */
  int sign() {
    return this == LEFT ? 1 : -1;
  }

  /**
   * The word as reports print it.
   *
   * @return {@code left} or {@code right}
   */
  @Override
  public String toString() {
    return label;
  }
}
