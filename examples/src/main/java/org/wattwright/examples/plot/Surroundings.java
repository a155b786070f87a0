package org.wattwright.examples.plot;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Places for a label around a point: near before far, right and left before above and below. */
final class Surroundings {
  /** Direction of the box's centre from the point. */
  private static final int[][] DIRECTIONS = {
    {1, 0}, {-1, 0}, {1, -1}, {-1, -1}, {1, 1}, {-1, 1}, {0, -1}, {0, 1}
  };

  private Surroundings() {}

  static List<Rectangle2D> of(Point2D point, Rectangle2D box, double[] distances) {
    List<Rectangle2D> places = new ArrayList<>();
    for (double distance : distances) {
      for (int[] direction : DIRECTIONS) {
        places.add(
            moved(
                box,
                corner(point.getX(), box.getWidth(), direction[0], distance),
                corner(point.getY(), box.getHeight(), direction[1], distance)));
      }
    }
    return places;
  }

  private static double corner(double centre, double size, int direction, double distance) {
    return centre + direction * (distance + size / 2) - size / 2;
  }

  static Rectangle2D moved(Rectangle2D box, double x, double y) {
    return new Rectangle2D.Double(x, y, box.getWidth(), box.getHeight());
  }
}
