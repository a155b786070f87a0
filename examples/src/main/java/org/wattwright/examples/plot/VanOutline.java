package org.wattwright.examples.plot;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import org.wattwright.examples.plot.SideViewPlot.Outline;

/** A van of no make in particular, front to the left, filled out to the sizes stated. */
final class VanOutline {
  private static final Color BODY = new Color(0xf1f3f5);
  private static final Color GLASS = new Color(0xe1e7ec);
  private static final Color TYRE = new Color(0xc9ced3);

  private final Graphics2D graphics;
  private final Outline outline;
  private final SideViewScale scale;
  private final double ground;

  VanOutline(Graphics2D graphics, Outline outline, SideViewScale scale, double ground) {
    this.graphics = graphics;
    this.outline = outline;
    this.scale = scale;
    this.ground = ground;
  }

  void paint() {
    fillAndDraw(body(), BODY);
    fillAndDraw(window(), GLASS);
    wheel(0);
    wheel(outline.wheelbase());
    graphics.setPaint(PlotStyle.SOFT);
    graphics.setStroke(PlotStyle.OUTLINE);
    double from = x(0) - 30;
    graphics.draw(new Line2D.Double(from, ground, x(1) + 30, ground));
  }

  private Path2D body() {
    double sill = 0.75 * outline.wheelRadius() / outline.height();
    Path2D path = new Path2D.Double();
    path.moveTo(x(0), y(sill));
    path.lineTo(x(0), y(0.42));
    path.quadTo(x(0.005), y(0.52), x(0.06), y(0.53));
    path.lineTo(x(0.235), y(0.575));
    path.lineTo(x(0.305), y(0.90));
    path.quadTo(x(0.32), y(0.985), x(0.41), y(0.995));
    path.lineTo(x(0.93), y(1));
    path.quadTo(x(0.99), y(1), x(0.995), y(0.90));
    path.lineTo(x(1), y(sill));
    path.closePath();
    return path;
  }

  private Path2D window() {
    Path2D path = new Path2D.Double();
    path.moveTo(x(0.265), y(0.60));
    path.lineTo(x(0.325), y(0.89));
    path.lineTo(x(0.44), y(0.91));
    path.lineTo(x(0.44), y(0.60));
    path.closePath();
    return path;
  }

  private void wheel(double behind) {
    double radius = outline.wheelRadius() * scale.perMetre();
    double middle = scale.x(behind);
    arch(middle, radius * 1.18);
    circle(middle, radius, TYRE);
    circle(middle, radius * 0.58, Color.WHITE);
  }

  /** Cut into the body above the sill. */
  private void arch(double middle, double radius) {
    double centre = ground - outline.wheelRadius() * scale.perMetre();
    Arc2D arch =
        new Arc2D.Double(
            middle - radius, centre - radius, 2 * radius, 2 * radius, -15, 210, Arc2D.OPEN);
    graphics.setPaint(Color.WHITE);
    graphics.fill(arch);
    graphics.setPaint(PlotStyle.SOFT);
    graphics.setStroke(PlotStyle.THIN);
    graphics.draw(arch);
  }

  private void circle(double middle, double radius, Color fill) {
    double centre = ground - outline.wheelRadius() * scale.perMetre();
    Ellipse2D circle =
        new Ellipse2D.Double(middle - radius, centre - radius, 2 * radius, 2 * radius);
    graphics.setPaint(fill);
    graphics.fill(circle);
    graphics.setPaint(PlotStyle.SOFT);
    graphics.setStroke(PlotStyle.THIN);
    graphics.draw(circle);
  }

  private void fillAndDraw(Path2D path, Color fill) {
    graphics.setPaint(fill);
    graphics.fill(path);
    graphics.setPaint(PlotStyle.SOFT);
    graphics.setStroke(PlotStyle.OUTLINE);
    graphics.draw(path);
  }

  /** From shares of the whole length, 0 at the front. */
  private double x(double share) {
    return scale.x(share * outline.length() - outline.frontOverhang());
  }

  /** From shares of the height, 0 at the ground. */
  private double y(double share) {
    return ground - share * outline.height() * scale.perMetre();
  }
}
