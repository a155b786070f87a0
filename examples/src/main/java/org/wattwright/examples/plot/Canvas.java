package org.wattwright.examples.plot;

import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.XYPlot;

/**
 * The data area of a plot while it is drawn: from data to drawing coordinates, and text in boxes.
 */
record Canvas(
    Graphics2D graphics, Rectangle2D area, XYPlot plot, ValueAxis horizontal, ValueAxis vertical) {
  double x(double value) {
    return horizontal.valueToJava2D(value, area, plot.getDomainAxisEdge());
  }

  double y(double value) {
    return vertical.valueToJava2D(value, area, plot.getRangeAxisEdge());
  }

  Point2D at(Point point) {
    return new Point2D.Double(x(point.x()), y(point.y()));
  }

  /** A box around a text, its left upper corner at the origin. */
  Rectangle2D box(String text) {
    FontMetrics metrics = graphics.getFontMetrics(PlotStyle.SMALL);
    return new Rectangle2D.Double(0, 0, metrics.stringWidth(text) + 6.0, metrics.getHeight());
  }

  /** Writes a text into its box, on a ground that hides what is behind. */
  void write(String text, Rectangle2D box, Color colour) {
    graphics.setPaint(PlotStyle.BEHIND_TEXT);
    graphics.fill(box);
    writeBare(text, box, colour);
  }

  void writeBare(String text, Rectangle2D box, Color colour) {
    FontMetrics metrics = graphics.getFontMetrics(PlotStyle.SMALL);
    graphics.setFont(PlotStyle.SMALL);
    graphics.setPaint(colour);
    graphics.drawString(text, (float) box.getX() + 3, (float) (box.getY() + metrics.getAscent()));
  }
}
