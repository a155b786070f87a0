package org.wattwright.examples.plot;

import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Limit lines and marked points of an x-y plot, with labels that look for room. */
record Limits(List<Mark> horizontal, List<Mark> vertical, List<Mark> points, List<Band> bands) {
  /** Fractions of the axis at which the label of a line may stand, best first. */
  private static final double[] ALONG = {0.01, 0.99, 0.5, 0.25, 0.75, 0.12, 0.88, 0.37, 0.63};

  private static final double[] DISTANCES = {7, 16, 28, 44, 64};
  private static final double RADIUS = 4.5;

  static final Limits NONE = new Limits(List.of(), List.of(), List.of(), List.of());

  /** A stretch of the horizontal axis. */
  record Band(String label, double from, double to) {}

  /** A labelled value or point; a line uses one of its coordinates. */
  record Mark(String label, Point point) {}

  Limits withHorizontal(String label, double y) {
    return new Limits(
        longer(horizontal, new Mark(label, new Point(0, y))), vertical, points, bands);
  }

  Limits withVertical(String label, double x) {
    return new Limits(
        horizontal, longer(vertical, new Mark(label, new Point(x, 0))), points, bands);
  }

  Limits withPoint(String label, Point point) {
    return new Limits(horizontal, vertical, longer(points, new Mark(label, point)), bands);
  }

  Limits withBand(String label, double from, double to) {
    return new Limits(horizontal, vertical, points, longer(bands, new Band(label, from, to)));
  }

  private static <T> List<T> longer(List<T> marks, T mark) {
    List<T> all = new ArrayList<>(marks);
    all.add(mark);
    return List.copyOf(all);
  }

  void paint(Canvas canvas, LabelPlacer placer) {
    Rectangle2D area = canvas.area();
    bands.forEach(band -> band(canvas, placer, band));
    for (Mark mark : horizontal) {
      double y = canvas.y(mark.point().y());
      line(canvas, placer, new Line2D.Double(area.getMinX(), y, area.getMaxX(), y));
    }
    for (Mark mark : vertical) {
      double x = canvas.x(mark.point().x());
      line(canvas, placer, new Line2D.Double(x, area.getMinY(), x, area.getMaxY()));
    }
    points.forEach(mark -> ring(canvas, placer, canvas.at(mark.point())));
    points.forEach(mark -> label(canvas, placer, mark, around(canvas, mark)));
    horizontal.forEach(mark -> label(canvas, placer, mark, alongHorizontal(canvas, mark)));
    vertical.forEach(mark -> label(canvas, placer, mark, alongVertical(canvas, mark)));
  }

  /** Hatched, so that it also shows in grey. */
  private static void band(Canvas canvas, LabelPlacer placer, Band band) {
    double left = canvas.x(band.from());
    double right = Math.max(canvas.x(band.to()), left + 2);
    Rectangle2D area = canvas.area();
    Rectangle2D box = new Rectangle2D.Double(left, area.getMinY(), right - left, area.getHeight());
    canvas.graphics().setPaint(PlotStyle.GAP);
    canvas.graphics().fill(box);
    Mark mark = new Mark(band.label(), new Point(band.to(), 0));
    label(canvas, placer, mark, alongVertical(canvas, mark));
  }

  private static void line(Canvas canvas, LabelPlacer placer, Line2D line) {
    Graphics2D graphics = canvas.graphics();
    graphics.setPaint(PlotStyle.LIMIT);
    graphics.setStroke(PlotStyle.LIMIT_LINE);
    graphics.draw(line);
    placer.avoid(line);
  }

  private static void ring(Canvas canvas, LabelPlacer placer, Point2D at) {
    Graphics2D graphics = canvas.graphics();
    graphics.setPaint(PlotStyle.LIMIT);
    graphics.setStroke(PlotStyle.stroke(0));
    Ellipse2D ring =
        new Ellipse2D.Double(at.getX() - RADIUS, at.getY() - RADIUS, 2 * RADIUS, 2 * RADIUS);
    graphics.draw(ring);
    placer.avoid(ring.getBounds2D());
  }

  private static void label(
      Canvas canvas, LabelPlacer placer, Mark mark, List<Rectangle2D> candidates) {
    canvas.write(mark.label(), placer.place(candidates), PlotStyle.LIMIT);
  }

  private static List<Rectangle2D> around(Canvas canvas, Mark mark) {
    return Surroundings.of(canvas.at(mark.point()), canvas.box(mark.label()), DISTANCES);
  }

  private static List<Rectangle2D> alongHorizontal(Canvas canvas, Mark mark) {
    Rectangle2D box = canvas.box(mark.label());
    double y = canvas.y(mark.point().y());
    double room = canvas.area().getWidth() - box.getWidth();
    List<Rectangle2D> candidates = new ArrayList<>();
    for (double share : ALONG) {
      double x = canvas.area().getMinX() + share * room;
      candidates.add(Surroundings.moved(box, x, y - box.getHeight() - 1));
      candidates.add(Surroundings.moved(box, x, y + 1));
    }
    return candidates;
  }

  private static List<Rectangle2D> alongVertical(Canvas canvas, Mark mark) {
    Rectangle2D box = canvas.box(mark.label());
    double x = canvas.x(mark.point().x());
    double room = canvas.area().getHeight() - box.getHeight();
    List<Rectangle2D> candidates = new ArrayList<>();
    for (double share : ALONG) {
      double y = canvas.area().getMinY() + share * room;
      candidates.add(Surroundings.moved(box, x + 2, y));
      candidates.add(Surroundings.moved(box, x - box.getWidth() - 2, y));
    }
    return candidates;
  }
}
