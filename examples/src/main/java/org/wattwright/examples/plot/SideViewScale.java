package org.wattwright.examples.plot;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.wattwright.examples.plot.SideViewPlot.AxleLoad;
import org.wattwright.examples.plot.SideViewPlot.Mark;
import org.wattwright.examples.plot.SideViewPlot.Outline;
import org.wattwright.examples.plot.SideViewPlot.View;

/**
 * The scales that all views of a drawing share: pixels per metre, per kilogram of an arrow, and per
 * square root of a kilogram of a mark.
 */
record SideViewScale(double left, double perMetre, double perKilogram, double perRootKilogram) {
  static final int KEY_COLUMNS = 2;
  static final int LINE = 16;
  static final int TITLE = 24;
  static final int FOOTER = 44;
  private static final double SIDE = 76;
  private static final double LONGEST_ARROW = 70;
  private static final double LARGEST_RADIUS = 25;
  private static final double TALLEST = 240;

  static SideViewScale of(Outline outline, List<View> views) {
    Span along =
        Span.of(
            DoubleStream.concat(
                DoubleStream.of(
                    -outline.frontOverhang(), outline.wheelbase() + outline.rearOverhang()),
                marks(views).mapToDouble(Mark::behind)));
    double width = SvgChart.WIDTH - 2 * SIDE;
    double perMetre =
        Math.min(width / (along.most() - along.least()), TALLEST / top(outline, views));
    double drawn = (along.most() - along.least()) * perMetre;
    double left = (SvgChart.WIDTH - drawn) / 2 - along.least() * perMetre;
    double heaviest = marks(views).mapToDouble(Mark::kilograms).max().orElse(1);
    double load =
        views.stream()
            .flatMap(view -> Stream.of(view.light(), view.laden()))
            .flatMapToDouble(SideViewScale::loads)
            .max()
            .orElse(1);
    return new SideViewScale(
        left, perMetre, LONGEST_ARROW / Math.max(load, 1), LARGEST_RADIUS / Math.sqrt(heaviest));
  }

  private static Stream<Mark> marks(List<View> views) {
    return views.stream().flatMap(view -> view.marks().stream());
  }

  private static double top(Outline outline, List<View> views) {
    return Math.max(outline.height(), marks(views).mapToDouble(Mark::above).max().orElse(0));
  }

  private static DoubleStream loads(AxleLoad load) {
    return DoubleStream.of(Math.abs(load.front()), Math.abs(load.rear()));
  }

  double x(double behind) {
    return left + behind * perMetre;
  }

  double radius(double kilograms) {
    return perRootKilogram * Math.sqrt(kilograms);
  }

  double arrow(double kilograms) {
    return perKilogram * kilograms;
  }

  /** Of the ground below the upper edge of a view. */
  double ground(View view, Outline outline) {
    return TITLE + perMetre * top(outline, List.of(view)) + 8;
  }

  int keyLines(View view) {
    return (view.marks().size() + KEY_COLUMNS - 1) / KEY_COLUMNS;
  }

  double heightOf(View view, Outline outline) {
    return ground(view, outline) + LONGEST_ARROW + 14 + LINE * (keyLines(view) + 1.0);
  }
}
