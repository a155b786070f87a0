package org.wattwright.examples.plot;

/**
 * A point of a plot, in the units of its axes.
 *
 * @param x along the horizontal axis
 * @param y along the vertical axis
 */
public record Point(double x, double y) {
  /**
   * Checks the numbers.
   *
   * @param x along the horizontal axis
   * @param y along the vertical axis
   * @throws IllegalArgumentException if one is NaN or infinite
   */
  public Point {
    requireFinite(x);
    requireFinite(y);
  }

  static double requireFinite(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("Point must be finite, but was " + value);
    }
    return value;
  }
}
