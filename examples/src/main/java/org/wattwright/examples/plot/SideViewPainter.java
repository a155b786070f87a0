package org.wattwright.examples.plot;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.Ellipse2D;
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

  void paint(View view, View base) {
    double ground = top + scale.ground(view, outline);
    write(view.title(), TITLE, 10, top + 16, PlotStyle.INK);
    new VanOutline(graphics, outline, scale, ground).paint();
    arrows(view, base, ground);
    List<Mark> bySize = new ArrayList<>(view.marks());
    bySize.sort(Comparator.comparingDouble(Mark::kilograms).reversed());
    bySize.forEach(mark -> paintMark(mark, ground));
    if (view.centre().isKnown()) {
      SideViewLegend.paintCentre(
          graphics,
          scale.x(view.centre().behind()),
          ground - view.centre().above() * scale.perMetre());
    }
    numbers(view, ground);
    double below =
        top + scale.heightOf(view, outline) - SideViewScale.LINE * (scale.keyLines(view) + 1.0);
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

  /**
   * Numbers find room beside each other; a thin line leads to a mark that is too small for its own.
   */
  private void numbers(View view, double ground) {
    LabelPlacer placer =
        new LabelPlacer(
            new Rectangle2D.Double(
                2,
                top + SideViewScale.TITLE,
                SvgChart.WIDTH - 4.0,
                ground - top - SideViewScale.TITLE));
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
        candidates.add(box(x + distance * Math.cos(angle), y - distance * Math.sin(angle), width));
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
  private void arrows(View view, View base, double ground) {
    double front = scale.x(0);
    arrow(front - 9, ground, view.light().front(), true);
    arrow(front + 9, ground, view.laden().front(), false);
    label(frontOf(view.light(), base.light()), front - 22, ground, true);
    label(frontOf(view.laden(), base.laden()), front + 22, ground, false);
    double rear = scale.x(outline.wheelbase());
    arrow(rear - 9, ground, view.light().rear(), true);
    arrow(rear + 9, ground, view.laden().rear(), false);
    label(rearOf(view.light(), base.light()), rear - 22, ground, true);
    label(rearOf(view.laden(), base.laden()), rear + 22, ground, false);
  }

  private static List<String> frontOf(AxleLoad load, AxleLoad base) {
    return lines(load.label(), load.front(), load, load.front() - base.front());
  }

  private static List<String> rearOf(AxleLoad load, AxleLoad base) {
    return lines(load.label(), load.rear(), load, load.rear() - base.rear());
  }

  private static List<String> lines(String name, double kilograms, AxleLoad load, double change) {
    double share = 100 * kilograms / (load.front() + load.rear());
    String percent = String.format(Locale.ROOT, "%.1f %%", share);
    return change == 0
        ? List.of(name, kilograms(kilograms), percent)
        : List.of(
            name,
            kilograms(kilograms),
            percent,
            String.format(Locale.ROOT, "%+.0f kg", change).replace('-', '\u2212'));
  }

  private void label(List<String> lines, double x, double ground, boolean toLeft) {
    double y = ground + 20;
    for (int i = 0; i < lines.size(); i++) {
      Font font = i == 1 ? BOLD : PlotStyle.SMALL;
      double width = graphics.getFontMetrics(font).stringWidth(lines.get(i));
      write(lines.get(i), font, toLeft ? x - width : x, y, PlotStyle.INK);
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

  private void key(View view, double firstLine) {
    int lines = scale.keyLines(view);
    double column = (SvgChart.WIDTH - 20.0) / SideViewScale.KEY_COLUMNS;
    for (int i = 0; i < view.marks().size(); i++) {
      Mark mark = view.marks().get(i);
      int columnIndex = i / lines;
      double x = 12 + columnIndex * column;
      double y = firstLine + 12 + SideViewScale.LINE * (i % lines);
      write(Integer.toString(i + 1), BOLD, x, y, colour(mark.sort()).darker());
      String mass = PlotStyle.numbers().format(Math.rint(mark.kilograms() * 10) / 10) + " kg";
      String text = fitted(mark.label(), column - 112);
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
