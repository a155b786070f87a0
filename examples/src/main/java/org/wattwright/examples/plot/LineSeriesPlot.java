package org.wattwright.examples.plot;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.jfree.chart.axis.ValueAxis;

/**
 * Lines over two axes: power against state of charge at several temperatures, or, with logarithmic
 * axes, time against current of fuses and cables.
 *
 * <p>Immutable; each method returns a plot with more in it.
 */
public final class LineSeriesPlot {
  private final Scale scale;
  private final String horizontalLabel;
  private final String verticalLabel;
  private final List<Series> series;
  private final Limits limits;

  private LineSeriesPlot(LineSeriesPlot like, List<Series> series, Limits limits) {
    this.scale = like.scale;
    this.horizontalLabel = like.horizontalLabel;
    this.verticalLabel = like.verticalLabel;
    this.series = List.copyOf(series);
    this.limits = limits;
  }

  private LineSeriesPlot(Scale scale, String horizontalLabel, String verticalLabel) {
    this.scale = scale;
    this.horizontalLabel = horizontalLabel;
    this.verticalLabel = verticalLabel;
    this.series = List.of();
    this.limits = Limits.NONE;
  }

  /**
   * An empty plot with linear axes; the vertical one starts at zero unless a value is below.
   *
   * @param horizontalLabel what runs along, with its unit
   * @param verticalLabel what runs up, with its unit
   * @return the plot
   */
  public static LineSeriesPlot of(String horizontalLabel, String verticalLabel) {
    return new LineSeriesPlot(Scale.LINEAR, horizontalLabel, verticalLabel);
  }

  /**
   * An empty plot with logarithmic axes; every value must be above zero.
   *
   * @param horizontalLabel what runs along, with its unit
   * @param verticalLabel what runs up, with its unit
   * @return the plot
   */
  public static LineSeriesPlot logarithmic(String horizontalLabel, String verticalLabel) {
    return new LineSeriesPlot(Scale.LOGARITHMIC, horizontalLabel, verticalLabel);
  }

  /**
   * One more line.
   *
   * @param line the line
   * @return a plot with it
   * @throws IllegalArgumentException if a value is not above zero and the axes are logarithmic
   */
  public LineSeriesPlot series(Series line) {
    line.points().forEach(scale::require);
    List<Series> all = new ArrayList<>(series);
    all.add(line);
    return new LineSeriesPlot(this, all, limits);
  }

  /**
   * A limit that runs along.
   *
   * @param label its name
   * @param y its height
   * @return a plot with it
   * @throws IllegalArgumentException if it is not above zero and the axes are logarithmic
   */
  public LineSeriesPlot horizontalLimit(String label, double y) {
    scale.require(new Point(1, y));
    return new LineSeriesPlot(this, series, limits.withHorizontal(label, y));
  }

  /**
   * A limit that runs up.
   *
   * @param label its name
   * @param x its place
   * @return a plot with it
   * @throws IllegalArgumentException if it is not above zero and the axes are logarithmic
   */
  public LineSeriesPlot verticalLimit(String label, double x) {
    scale.require(new Point(x, 1));
    return new LineSeriesPlot(this, series, limits.withVertical(label, x));
  }

  /**
   * A stretch of the horizontal axis that is left open.
   *
   * @param label its name
   * @param from lower end
   * @param to upper end
   * @return a plot with it
   * @throws IllegalArgumentException if an end is not above zero and the axes are logarithmic
   */
  public LineSeriesPlot gap(String label, double from, double to) {
    scale.require(new Point(from, 1));
    scale.require(new Point(to, 1));
    return new LineSeriesPlot(this, series, limits.withBand(label, from, to));
  }

  /**
   * A point that matters, such as a requirement.
   *
   * @param label its name
   * @param point its place
   * @return a plot with it
   * @throws IllegalArgumentException if a value is not above zero and the axes are logarithmic
   */
  public LineSeriesPlot mark(String label, Point point) {
    return new LineSeriesPlot(this, series, limits.withPoint(label, scale.require(point)));
  }

  /**
   * The drawing.
   *
   * @param id lower-case name of this plot, unique on its page
   * @return one {@code <svg>} element
   */
  public String svg(String id) {
    Span along =
        Span.of(
            DoubleStream.concat(
                points().mapToDouble(Point::x),
                limits.vertical().stream().mapToDouble(mark -> mark.point().x())));
    Span up =
        Span.of(
            DoubleStream.concat(
                points().mapToDouble(Point::y),
                limits.horizontal().stream().mapToDouble(mark -> mark.point().y())));
    ValueAxis vertical =
        scale == Scale.LINEAR && up.least() >= 0
            ? Scale.linear(verticalLabel, up.including(0).withAirAboveZero())
            : scale.axis(verticalLabel, up);
    return new LineChart(scale.axis(horizontalLabel, along), vertical, series, limits).svg(id);
  }

  private Stream<Point> points() {
    return Stream.concat(
        series.stream().flatMap(line -> line.points().stream()),
        limits.points().stream().map(Limits.Mark::point));
  }
}
