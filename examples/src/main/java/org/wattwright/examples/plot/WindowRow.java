package org.wattwright.examples.plot;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.text.NumberFormat;
import org.wattwright.examples.plot.VoltageWindowPlot.Band;
import org.wattwright.examples.plot.VoltageWindowPlot.Window;

/** One device's row of a voltage window plot: its bands, their ends in volts, what is outside. */
record WindowRow(Canvas canvas, double centre) {
  static final Color PACK_RANGE = new Color(0xeef1e6);
  static final Color OPERATING = new Color(0xb9cbdc);
  static final Color FULL = new Color(0x2f5f8a);
  static final Color EDGE = new Color(0x17456e);
  static final Color OUTSIDE = new Color(0xe8b4ae);

  private static final double HALF = 7;
  private static final double SMALLEST_GAP_V = 0.05;

  static String volts(double value) {
    NumberFormat format = PlotStyle.numbers();
    format.setMaximumFractionDigits(1);
    return format.format(value) + " V";
  }

  void paint(Window window, Span pack) {
    bar(window.operating(), OPERATING);
    bar(window.full(), FULL);
    outside(pack.least(), Math.min(pack.most(), window.operating().least()));
    outside(Math.max(pack.least(), window.operating().most()), pack.most());
    double right = limit(window.absoluteMaximum());
    below(window.operating(), right);
    inside(window.full());
  }

  private void bar(Band band, Color colour) {
    Graphics2D graphics = canvas.graphics();
    Rectangle2D bar = stretch(band.least(), band.most());
    graphics.setPaint(colour);
    graphics.fill(bar);
    graphics.setPaint(EDGE);
    graphics.setStroke(PlotStyle.THIN);
    graphics.draw(bar);
  }

  private Rectangle2D stretch(double least, double most) {
    double left = canvas.x(least);
    return new Rectangle2D.Double(left, centre - HALF, canvas.x(most) - left, 2 * HALF);
  }

  private void outside(double least, double most) {
    if (most - least < SMALLEST_GAP_V) {
      return;
    }
    Graphics2D graphics = canvas.graphics();
    Rectangle2D stretch = stretch(least, most);
    graphics.setPaint(OUTSIDE);
    graphics.fill(stretch);
    graphics.setPaint(PlotStyle.LIMIT);
    graphics.setStroke(PlotStyle.OUTLINE);
    graphics.draw(stretch);
    String text = volts(most - least) + " outside";
    Rectangle2D box = canvas.box(text);
    double left = within(stretch.getCenterX() - box.getWidth() / 2, box);
    canvas.writeBare(
        text, Surroundings.moved(box, left, centre - HALF - box.getHeight() - 1), PlotStyle.LIMIT);
  }

  private double within(double left, Rectangle2D box) {
    double most = canvas.area().getMaxX() - box.getWidth();
    return Math.max(canvas.area().getMinX(), Math.min(left, most));
  }

  /** Draws the absolute maximum and returns the left end of its label. */
  private double limit(double value) {
    double x = canvas.x(value);
    canvas.graphics().setPaint(PlotStyle.LIMIT);
    canvas.graphics().setStroke(PlotStyle.stroke(0));
    canvas.graphics().draw(new Line2D.Double(x, centre - HALF - 3, x, centre + HALF + 3));
    Rectangle2D box = canvas.box(volts(value));
    double left = within(x - box.getWidth() / 2, box);
    canvas.writeBare(
        volts(value), Surroundings.moved(box, left, centre + HALF + 1), PlotStyle.LIMIT);
    return left;
  }

  /**
   * Both ends of the operating band under the bar; the upper one gives way to the limit's label.
   */
  private void below(Band band, double limitLeft) {
    Rectangle2D low = canvas.box(volts(band.least()));
    Rectangle2D high = canvas.box(volts(band.most()));
    double top = centre + HALF + 1;
    double lowLeft = within(canvas.x(band.least()) - low.getWidth() / 2, low);
    double highLeft =
        Math.min(
            within(canvas.x(band.most()) - high.getWidth() / 2, high), limitLeft - high.getWidth());
    canvas.writeBare(volts(band.least()), Surroundings.moved(low, lowLeft, top), PlotStyle.INK);
    if (highLeft > lowLeft + low.getWidth()) {
      canvas.writeBare(volts(band.most()), Surroundings.moved(high, highLeft, top), PlotStyle.INK);
    }
  }

  /** Both ends of the full-performance band inside the bar, if there is room. */
  private void inside(Band band) {
    Rectangle2D bar = stretch(band.least(), band.most());
    Rectangle2D low = canvas.box(volts(band.least()));
    Rectangle2D high = canvas.box(volts(band.most()));
    if (low.getWidth() + high.getWidth() <= bar.getWidth()) {
      double top = centre - low.getHeight() / 2;
      canvas.writeBare(
          volts(band.least()), Surroundings.moved(low, bar.getMinX(), top), Color.WHITE);
      canvas.writeBare(
          volts(band.most()),
          Surroundings.moved(high, bar.getMaxX() - high.getWidth(), top),
          Color.WHITE);
    }
  }
}
