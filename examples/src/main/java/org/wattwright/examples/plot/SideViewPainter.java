package org.wattwright.examples.plot;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.wattwright.examples.plot.SideViewPlot.AxleLoad;
import org.wattwright.examples.plot.SideViewPlot.Mark;
import org.wattwright.examples.plot.SideViewPlot.Outline;
import org.wattwright.examples.plot.SideViewPlot.Sort;
import org.wattwright.examples.plot.SideViewPlot.View;

/** Paints one view: outline, marks with numbers, axle arrows, scale, key. */
final class SideViewPainter {
  private static final Font BOLD = new Font(Font.SANS_SERIF, Font.BOLD, 11);
  private static final Font TITLE = new Font(Font.SANS_SERIF, Font.BOLD, 13);
  private static final Color HALO = new Color(255, 255, 255, 225);
  private static final Stroke LEAVES =
      new BasicStroke(1.6f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {4, 3}, 0);
  private static final double HALF_SHAFT = 4;

  private final Graphics2D graphics;
  private final Outline outline;
  private final SideViewScale scale;
  private final double top;

  SideViewPainter(Graphics2D graphics, Outline outline, SideViewScale scale, double top) {
    this.graphics = graphics;
    this.outline = outline;
    this.scale = scale;
    this.top = top;
  }

  void paint(View view) {
    double ground = top + scale.ground(view, outline);
    write(view.title(), TITLE, 10, top + 16, PlotStyle.INK);
    new VanOutline(graphics, outline, scale, ground).paint();
    arrows(view, ground);
    List<Mark> bySize = new ArrayList<>(view.marks());
    bySize.sort(Comparator.comparingDouble(Mark::kilograms).reversed());
    bySize.forEach(mark -> paintMark(mark, ground));
    if (view.centre().isKnown()) {
      centre(scale.x(view.centre().behind()), ground - view.centre().above() * scale.perMetre());
    }
    numbers(view, ground);
    double below = top + scale.heightOf(view, outline) - SideViewScale.LINE * (scale.keyLines(view) + 1.0);
    scaleBars(view, below - 12);
    key(view, below);
  }

  private Shape shape(Mark mark, double ground) {
    double radius = scale.radius(mark.kilograms());
    double x = scale.x(mark.behind());
    double y = ground - mark.above() * scale.perMetre();
    if (mark.sort() == Sort.BATTERY) {
      double half = radius * Math.sqrt(Math.PI) / 2;
      return new Rectangle2D.Double(x - half, y - half, 2 * half, 2 * half);
    }
    return new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
  }

  private void paintMark(Mark mark, double ground) {
    Shape shape = shape(mark, ground);
    Color colour = colour(mark.sort());
    graphics.setPaint(new Color(colour.getRed(), colour.getGreen(), colour.getBlue(), 60));
    graphics.fill(shape);
    graphics.setPaint(colour);
    graphics.setStroke(mark.sort() == Sort.REMOVED ? LEAVES : PlotStyle.OUTLINE);
    graphics.draw(shape);
  }

  private static Color colour(Sort sort) {
    return switch (sort) {
      case REMOVED -> PlotStyle.colour(1);
      case ADDED -> PlotStyle.colour(0);
      case BATTERY -> PlotStyle.colour(2);
    };
  }

  /** A circle in quarters, as drawings mark a centre of gravity. */
  private void centre(double x, double y) {
    double radius = 8;
    Ellipse2D circle = new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
    graphics.setPaint(Color.WHITE);
    graphics.fill(circle);
    graphics.setPaint(Color.BLACK);
    for (int start : new int[] {0, 180}) {
      graphics.fill(
          new Arc2D.Double(x - radius, y - radius, 2 * radius, 2 * radius, start, 90, Arc2D.PIE));
    }
    graphics.setStroke(PlotStyle.OUTLINE);
    graphics.draw(circle);
  }

  /** Numbers find room beside each other; a thin line leads to a mark that is too small for its own. */
  private void numbers(View view, double ground) {
    LabelPlacer placer =
        new LabelPlacer(
            new Rectangle2D.Double(2, top + SideViewScale.TITLE, SvgChart.WIDTH - 4.0, ground - top - SideViewScale.TITLE));
    if (view.centre().isKnown()) {
      double x = scale.x(view.centre().behind());
      double y = ground - view.centre().above() * scale.perMetre();
      placer.avoid(new Rectangle2D.Double(x - 9, y - 9, 18, 18));
    }
    view.marks().stream()
        .filter(mark -> scale.radius(mark.kilograms()) < 9)
        .forEach(mark -> placer.avoid(shape(mark, ground).getBounds2D()));
    for (int i = 0; i < view.marks().size(); i++) {
      number(Integer.toString(i + 1), view.marks().get(i), ground, placer);
    }
  }

  private void number(String text, Mark mark, double ground, LabelPlacer placer) {
    FontMetrics metrics = graphics.getFontMetrics(BOLD);
    double width = metrics.stringWidth(text) + 4.0;
    double x = scale.x(mark.behind());
    double y = ground - mark.above() * scale.perMetre();
    double radius = scale.radius(mark.kilograms());
    List<Rectangle2D> candidates = new ArrayList<>();
    if (radius >= 9) {
      candidates.add(box(x, y, width));
    }
    for (double distance = radius + 9; distance < radius + 60; distance += 6) {
      for (int step = 0; step < 16; step++) {
        double angle = Math.PI / 2 + (step % 2 == 0 ? step : -step - 1) * Math.PI / 16;
        candidates.add(
            box(x + distance * Math.cos(angle), y - distance * Math.sin(angle), width));
      }
    }
    Rectangle2D box = placer.place(candidates, new Point2D.Double(x, y));
    if (!box.contains(x, y)) {
      graphics.setPaint(colour(mark.sort()));
      graphics.setStroke(PlotStyle.THIN);
      graphics.draw(LabelPlacer.leader(new Point2D.Double(x, y), box));
    }
    graphics.setPaint(HALO);
    graphics.fill(new Ellipse2D.Double(box.getX(), box.getY(), box.getWidth(), box.getHeight()));
    write(text, BOLD, box.getX() + 2, box.getY() + 11, colour(mark.sort()).darker());
  }

  private static Rectangle2D box(double x, double y, double width) {
    double wide = Math.max(width, 14);
    return new Rectangle2D.Double(x - wide / 2, y - 7, wide, 14);
  }

  /** The filled arrow is the empty vehicle, the hollow one the laden; both end at the ground. */
  private void arrows(View view, double ground) {
    axle(0, ground, view.light().front(), view.laden().front(), view);
    axle(outline.wheelbase(), ground, view.light().rear(), view.laden().rear(), view);
  }

  private void axle(double behind, double ground, double light, double laden, View view) {
    double x = scale.x(behind);
    arrow(x - 9, ground, light, true);
    arrow(x + 9, ground, laden, false);
    label(view.light(), light, x - 22, ground, true);
    label(view.laden(), laden, x + 22, ground, false);
  }

  private void label(AxleLoad load, double kilograms, double x, double ground, boolean toLeft) {
    double share = 100 * kilograms / (load.front() + load.rear());
    List<String> lines =
        List.of(load.label(), kilograms(kilograms), String.format(Locale.ROOT, "%.1f %%", share));
    double y = ground + 20;
    for (String line : lines) {
      Font font = line.endsWith("kg") ? BOLD : PlotStyle.SMALL;
      double width = graphics.getFontMetrics(font).stringWidth(line);
      write(line, font, toLeft ? x - width : x, y, PlotStyle.INK);
      y += 14;
    }
  }

  private static String kilograms(double kilograms) {
    return String.format(Locale.ROOT, "%.0f kg", kilograms);
  }

  private void arrow(double x, double ground, double kilograms, boolean filled) {
    double tip = ground + 4;
    double length = scale.arrow(Math.max(kilograms, 0));
    double head = Math.min(10, length);
    Path2D path = new Path2D.Double();
    path.moveTo(x, tip);
    path.lineTo(x + 2 * HALF_SHAFT, tip + head);
    path.lineTo(x + HALF_SHAFT, tip + head);
    path.lineTo(x + HALF_SHAFT, tip + length);
    path.lineTo(x - HALF_SHAFT, tip + length);
    path.lineTo(x - HALF_SHAFT, tip + head);
    path.lineTo(x - 2 * HALF_SHAFT, tip + head);
    path.closePath();
    graphics.setPaint(filled ? PlotStyle.SOFT : Color.WHITE);
    graphics.fill(path);
    graphics.setPaint(PlotStyle.SOFT);
    graphics.setStroke(PlotStyle.OUTLINE);
    graphics.draw(path);
  }

  private void scaleBars(View view, double y) {
    double x = 12;
    x = bar(x, y, scale.perMetre(), "1 m");
    x = bar(x, y, scale.arrow(500), "arrows: 500 kg");
    for (double kilograms : new double[] {10, 50, 100}) {
      double radius = scale.radius(kilograms);
      graphics.setPaint(PlotStyle.SOFT);
      graphics.setStroke(PlotStyle.OUTLINE);
      graphics.draw(new Ellipse2D.Double(x, y - radius - 4, 2 * radius, 2 * radius));
      write(kilograms(kilograms), PlotStyle.SMALL, x + 2 * radius + 4, y, PlotStyle.INK);
      x += 2 * radius + 54;
    }
    if (view.centre().isKnown()) {
      centre(x + 8, y - 4);
      write("centre of gravity, " + view.light().label(), PlotStyle.SMALL, x + 22, y, PlotStyle.INK);
    }
  }

  private double bar(double x, double y, double length, String text) {
    graphics.setPaint(PlotStyle.SOFT);
    graphics.setStroke(PlotStyle.OUTLINE);
    graphics.draw(new Line2D.Double(x, y - 4, x + length, y - 4));
    graphics.draw(new Line2D.Double(x, y - 8, x, y));
    graphics.draw(new Line2D.Double(x + length, y - 8, x + length, y));
    write(text, PlotStyle.SMALL, x + length + 5, y, PlotStyle.INK);
    return x + length + 5 + graphics.getFontMetrics(PlotStyle.SMALL).stringWidth(text) + 16;
  }

  private void key(View view, double firstLine) {
    int lines = scale.keyLines(view);
    double column = (SvgChart.WIDTH - 20.0) / SideViewScale.KEY_COLUMNS;
    for (int i = 0; i < view.marks().size(); i++) {
      Mark mark = view.marks().get(i);
      double x = 12 + i / lines * column;
      double y = firstLine + 12 + SideViewScale.LINE * (i % lines);
      write(Integer.toString(i + 1), BOLD, x, y, colour(mark.sort()).darker());
      String mass = String.format(Locale.ROOT, "%.4g kg", mark.kilograms());
      String text = fitted(mark.label(), column - 100);
      write(text, PlotStyle.SMALL, x + 20, y, PlotStyle.INK);
      double width = graphics.getFontMetrics(PlotStyle.SMALL).stringWidth(mass);
      write(mass, PlotStyle.SMALL, x + column - 34 - width, y, PlotStyle.INK);
    }
  }

  private String fitted(String text, double width) {
    FontMetrics metrics = graphics.getFontMetrics(PlotStyle.SMALL);
    if (metrics.stringWidth(text) <= width) {
      return text;
    }
    int length = text.length();
    while (length > 1 && metrics.stringWidth(text.substring(0, length) + "…") > width) {
      length--;
    }
    return text.substring(0, length) + "…";
  }

  private void write(String text, Font font, double x, double y, Color colour) {
    graphics.setFont(font);
    graphics.setPaint(colour);
    graphics.drawString(text, (float) x, (float) y);
  }
}
