package org.wattwright.examples.plot;

import java.util.List;

/**
 * A named line of a plot.
 *
 * @param name as the legend prints it
 * @param points from left to right, at least one
 */
public record Series(String name, List<Point> points) {
  /**
   * Copies the list.
   *
   * @param name as the legend prints it
   * @param points from left to right, at least one
   * @throws IllegalArgumentException if there is no point
   */
  public Series {
    points = List.copyOf(points);
    if (points.isEmpty()) {
      throw new IllegalArgumentException("Series " + name + " must have a point");
    }
  }

  /**
   * A series.
   *
   * @param name as the legend prints it
   * @param points from left to right, at least one
   * @return the series
   */
  public static Series of(String name, List<Point> points) {
    return new Series(name, points);
  }
}
