package org.wattwright.examples.plot;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.util.Locale;
import org.wattwright.examples.plot.SideViewPlot.View;

/** The scales below the views. */
final class SideViewLegend {
  private static final Font FONT = PlotStyle.SMALL;
  private static final double GAP = 18;

  private final Graphics2D graphics;
  private final SideViewScale scale;

  SideViewLegend(Graphics2D graphics, SideViewScale scale) {
    this.graphics = graphics;
    this.scale = scale;
  }

  void paint(double y, View view) {
    double x = bar(12, y, scale.perMetre(), "1 m");
    x = bar(x, y, scale.arrow(500), "arrow of 500 kg");
    for (double kilograms : new double[] {10, 50}) {
      x = circle(x, y, kilograms);
    }
    if (view.centre().isKnown()) {
      paintCentre(graphics, x + 8, y);
      write("centre of gravity, " + view.light().label(), x + 22, y);
    }
  }

  private double bar(double x, double y, double length, String text) {
    outline();
    graphics.draw(new Line2D.Double(x, y, x + length, y));
    graphics.draw(new Line2D.Double(x, y - 4, x, y + 4));
    graphics.draw(new Line2D.Double(x + length, y - 4, x + length, y + 4));
    return write(text, x + length + 5, y);
  }

  private double circle(double x, double y, double kilograms) {
    double radius = scale.radius(kilograms);
    outline();
    graphics.draw(new Ellipse2D.Double(x, y - radius, 2 * radius, 2 * radius));
    return write(String.format(Locale.ROOT, "%.0f kg", kilograms), x + 2 * radius + 4, y);
  }

  private void outline() {
    graphics.setPaint(PlotStyle.SOFT);
    graphics.setStroke(PlotStyle.OUTLINE);
  }

  /** Returns where the next thing may begin. */
  private double write(String text, double x, double y) {
    graphics.setFont(FONT);
    graphics.setPaint(PlotStyle.INK);
    graphics.drawString(text, (float) x, (float) y + 4);
    return x + graphics.getFontMetrics(FONT).stringWidth(text) + GAP;
  }

  /** A circle in quarters, as drawings mark a centre of gravity. */
  static void paintCentre(Graphics2D graphics, double x, double y) {
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
}
