package org.wattwright.examples.plot;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jfree.chart.LegendItem;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeriesCollection;

/**
 * Candidates over two criteria, such as usable energy over mass, with those that no other beats.
 *
 * <p>Those on the front are filled and joined by a line, the rest is hollow; one may be ringed as
 * the one chosen. Labels look for room. Immutable; each method returns a plot with more in it.
 */
public final class ScatterFrontPlot {
  private static final int HEIGHT = 430;
  private static final double[] DISTANCES = {7, 14, 24, 36, 50, 66, 84, 104};
  private static final double RING = 8;
  private static final double LEADER_FROM = 11;

  private final String horizontalLabel;
  private final String verticalLabel;
  private final List<Candidate> candidates;

  private ScatterFrontPlot(
      String horizontalLabel, String verticalLabel, List<Candidate> candidates) {
    this.horizontalLabel = horizontalLabel;
    this.verticalLabel = verticalLabel;
    this.candidates = List.copyOf(candidates);
  }

  /** How a candidate stands among the others. */
  public enum Standing {
    /** Another candidate is at least as good in both criteria. */
    BEATEN,
    /** No other beats it. */
    ON_FRONT,
    /** No other beats it, and it was chosen. */
    CHOSEN
  }

  /**
   * One candidate.
   *
   * @param label beside its mark; may be empty
   * @param group what its legend says, such as the type of module
   * @param point its two criteria
   * @param standing how it stands among the others
   */
  public record Candidate(String label, String group, Point point, Standing standing) {}

  /**
   * An empty plot.
   *
   * @param horizontalLabel what runs along, with its unit
   * @param verticalLabel what runs up, with its unit
   * @return the plot
   */
  public static ScatterFrontPlot of(String horizontalLabel, String verticalLabel) {
    return new ScatterFrontPlot(horizontalLabel, verticalLabel, List.of());
  }

  /**
   * One more candidate.
   *
   * @param candidate the candidate
   * @return a plot with it
   */
  public ScatterFrontPlot candidate(Candidate candidate) {
    List<Candidate> all = new ArrayList<>(candidates);
    all.add(candidate);
    return new ScatterFrontPlot(horizontalLabel, verticalLabel, all);
  }

  /**
   * The drawing.
   *
   * @param id lower-case name of this plot, unique on its page
   * @return one {@code <svg>} element
   */
  public String svg(String id) {
    ValueAxis along =
        Scale.LINEAR.axis(
            horizontalLabel, Span.of(candidates.stream().mapToDouble(c -> c.point().x())));
    ValueAxis up =
        Scale.LINEAR.axis(
            verticalLabel, Span.of(candidates.stream().mapToDouble(c -> c.point().y())));
    PlotStyle.axis(along);
    PlotStyle.axis(up);
    XYPlot plot = new XYPlot(new XYSeriesCollection(), along, up, new XYLineAndShapeRenderer());
    plot.setFixedLegendItems(legend());
    plot.addAnnotation(new Layer(this::paint));
    return SvgChart.draw(PlotStyle.chart(plot), HEIGHT, id);
  }

  private List<String> groups() {
    return candidates.stream().map(Candidate::group).distinct().toList();
  }

  private LegendItemCollection legend() {
    LegendItemCollection items = new LegendItemCollection();
    List<String> groups = groups();
    for (int i = 0; i < groups.size(); i++) {
      Color colour = PlotStyle.colour(i);
      items.add(new LegendItem(groups.get(i), null, null, null, PlotStyle.mark(i), colour));
    }
    if (candidates.stream().anyMatch(c -> c.standing() == Standing.BEATEN)) {
      items.add(
          PlotStyle.legendShape("beaten (hollow)", PlotStyle.mark(0), Color.WHITE, PlotStyle.SOFT));
    }
    if (candidates.stream().anyMatch(c -> c.standing() == Standing.CHOSEN)) {
      items.add(PlotStyle.legendShape("chosen", circle(0, 0, 6), Color.WHITE, PlotStyle.LIMIT));
    }
    return items;
  }

  private static Shape circle(double x, double y, double radius) {
    return new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
  }

  private void paint(Canvas canvas) {
    LabelPlacer placer = new LabelPlacer(canvas.area());
    paintFront(canvas, placer);
    List<String> groups = groups();
    for (Candidate candidate : candidates) {
      paintMark(canvas, candidate, groups.indexOf(candidate.group()));
      Point2D at = canvas.at(candidate.point());
      double room = candidate.standing() == Standing.CHOSEN ? RING : RING / 2;
      placer.avoid(circle(at.getX(), at.getY(), room + 1).getBounds2D());
    }
    candidates.stream()
        .filter(candidate -> !candidate.label().isEmpty())
        .forEach(candidate -> paintLabel(canvas, placer, candidate));
  }

  private void paintFront(Canvas canvas, LabelPlacer placer) {
    List<Point> front =
        candidates.stream()
            .filter(candidate -> candidate.standing() != Standing.BEATEN)
            .map(Candidate::point)
            .sorted(Comparator.comparingDouble(Point::x).thenComparingDouble(Point::y))
            .toList();
    Path2D path = new Path2D.Double();
    for (int i = 0; i < front.size(); i++) {
      Point2D to = canvas.at(front.get(i));
      if (i == 0) {
        path.moveTo(to.getX(), to.getY());
      } else {
        placer.avoid(new Line2D.Double(path.getCurrentPoint(), to));
        path.lineTo(to.getX(), to.getY());
      }
    }
    canvas.graphics().setPaint(PlotStyle.SOFT);
    canvas.graphics().setStroke(PlotStyle.stroke(2));
    canvas.graphics().draw(path);
  }

  private static void paintMark(Canvas canvas, Candidate candidate, int group) {
    Graphics2D graphics = canvas.graphics();
    Point2D at = canvas.at(candidate.point());
    Shape mark =
        AffineTransform.getTranslateInstance(at.getX(), at.getY())
            .createTransformedShape(PlotStyle.mark(group));
    boolean isBeaten = candidate.standing() == Standing.BEATEN;
    graphics.setPaint(isBeaten ? Color.WHITE : PlotStyle.colour(group));
    graphics.fill(mark);
    graphics.setPaint(PlotStyle.colour(group));
    graphics.setStroke(PlotStyle.OUTLINE);
    graphics.draw(mark);
    if (candidate.standing() == Standing.CHOSEN) {
      graphics.setPaint(PlotStyle.LIMIT);
      graphics.draw(circle(at.getX(), at.getY(), RING));
    }
  }

  private static void paintLabel(Canvas canvas, LabelPlacer placer, Candidate candidate) {
    Point2D at = canvas.at(candidate.point());
    Rectangle2D box =
        placer.place(Surroundings.of(at, canvas.box(candidate.label()), DISTANCES), at);
    Line2D leader = LabelPlacer.leader(at, box);
    if (leader.getP1().distance(leader.getP2()) > LEADER_FROM) {
      canvas.graphics().setPaint(PlotStyle.SOFT);
      canvas.graphics().setStroke(PlotStyle.THIN);
      canvas.graphics().draw(leader);
      placer.avoid(leader);
    }
    canvas.write(candidate.label(), box, PlotStyle.INK);
  }
}
