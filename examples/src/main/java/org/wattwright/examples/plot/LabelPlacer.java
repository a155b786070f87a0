package org.wattwright.examples.plot;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Finds room for labels: each goes to the first of its candidate places that hits nothing, or to
 * the one that hits least.
 */
final class LabelPlacer {
  private static final int COST_OUTSIDE = 10_000_000;
  private static final int COST_ON_TAKEN = 500_000;
  private static final int COST_LEADER_OVER_LABEL = 10_000;
  private static final int COST_ON_LINE = 100;

  private final Rectangle2D area;
  private final List<Rectangle2D> labels = new ArrayList<>();
  private final List<Rectangle2D> taken = new ArrayList<>();
  private final List<Line2D> lines = new ArrayList<>();

  LabelPlacer(Rectangle2D area) {
    this.area = area;
  }

  /** Marks a rectangle as taken by a mark. */
  void avoid(Rectangle2D rectangle) {
    taken.add(rectangle);
  }

  /** Marks a line that had better not be covered. */
  void avoid(Line2D line) {
    lines.add(line);
  }

  /** Chooses among the candidates, best first, and takes the place. */
  Rectangle2D place(List<Rectangle2D> candidates) {
    return place(candidates, null);
  }

  /** As above, for a label whose leader to a point may not cross another label. */
  Rectangle2D place(List<Rectangle2D> candidates, @Nullable Point2D point) {
    Rectangle2D best = candidates.get(0);
    long bestCost = Long.MAX_VALUE;
    for (int i = 0; i < candidates.size() && bestCost > 0; i++) {
      Rectangle2D candidate = candidates.get(i);
      long cost = cost(candidate) + leaderCost(candidate, point) + i;
      if (cost < bestCost) {
        best = candidate;
        bestCost = cost;
      }
    }
    taken.add(best);
    labels.add(best);
    return best;
  }

  /** The line from a point to the nearest point of a box. */
  static Line2D leader(Point2D point, Rectangle2D box) {
    double x = Math.max(box.getMinX(), Math.min(point.getX(), box.getMaxX()));
    double y = Math.max(box.getMinY(), Math.min(point.getY(), box.getMaxY()));
    return new Line2D.Double(point.getX(), point.getY(), x, y);
  }

  private long leaderCost(Rectangle2D candidate, @Nullable Point2D point) {
    if (point == null) {
      return 0;
    }
    Line2D leader = leader(point, candidate);
    return COST_LEADER_OVER_LABEL * labels.stream().filter(leader::intersects).count();
  }

  private long cost(Rectangle2D candidate) {
    long cost = area.contains(candidate) ? 0 : COST_OUTSIDE;
    for (Rectangle2D rectangle : taken) {
      cost += rectangle.intersects(candidate) ? COST_ON_TAKEN : 0;
    }
    for (Line2D line : lines) {
      cost += line.intersects(candidate) ? COST_ON_LINE : 0;
    }
    return cost;
  }
}
