package org.wattwright.examples.plot;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Stroke;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** Draws the symbols of IEC 60617, each centred on a vertical conductor, from top to bottom. */
final class LineSymbolPainter {
  private static final Stroke WIRE = new BasicStroke(1.4f);
  private static final Stroke PLATE = new BasicStroke(3.2f);
  private static final double BLADE = 8;

  private final Graphics2D graphics;

  LineSymbolPainter(Graphics2D graphics) {
    this.graphics = graphics;
  }

  /** A conductor. */
  void wire(double x1, double y1, double x2, double y2) {
    graphics.setPaint(PlotStyle.INK);
    graphics.setStroke(WIRE);
    graphics.draw(new Line2D.Double(x1, y1, x2, y2));
  }

  /** A symbol, its upper lead at y. */
  void paint(LineSymbol symbol, double x, double y) {
    graphics.setPaint(PlotStyle.INK);
    graphics.setStroke(WIRE);
    double h = symbol.height();
    switch (symbol) {
      case BATTERY -> battery(x, y, h);
      case FUSE -> fuse(x, y, h);
      case DISCONNECTOR -> {
        blade(x, y, h);
        wire(x - 5, y + 8, x + 5, y + 8);
      }
      case CONTACTOR -> contactor(x, y, h);
      case PRECHARGED_CONTACTOR -> precharged(x, y, h);
      case CABLE -> {
        wire(x, y, x, y + h);
        wire(x - 5, y + h / 2 + 4, x + 5, y + h / 2 - 4);
      }
      case INVERTER -> box(x, y, h, "=", "~");
      case DC_CONVERTER -> box(x, y, h, "=", "=");
      case CHARGER -> box(x, y, h, "=", "~");
      case MOTOR -> motor(x, y, h);
      case HEATER -> heater(x, y, h);
      case INLET -> inlet(x, y, h);
      case LOAD -> load(x, y, h);
    }
    if (symbol.hasCase()) {
      bond(x - symbol.halfWidth(), y + h / 2);
    }
  }

  private void battery(double x, double y, double h) {
    double top = y + h / 2 - 7.5;
    wire(x, y, x, top);
    for (int i = 0; i < 2; i++) {
      double at = top + 10 * i;
      wire(x - 10, at, x + 10, at);
      graphics.setStroke(PLATE);
      graphics.draw(new Line2D.Double(x - 5, at + 5, x + 5, at + 5));
      graphics.setStroke(WIRE);
    }
    wire(x, top + 15, x, y + h);
  }

  private void fuse(double x, double y, double h) {
    graphics.draw(new Rectangle2D.Double(x - 4.5, y + 7, 9, h - 14));
    wire(x, y, x, y + h);
  }

  private void blade(double x, double y, double h) {
    wire(x, y, x, y + 8);
    wire(x, y + h - 8, x - BLADE, y + 9);
    wire(x, y + h - 8, x, y + h);
  }

  private void contactor(double x, double y, double h) {
    blade(x, y, h);
    graphics.draw(new Arc2D.Double(x - 3.5, y + 1, 7, 7, 90, 180, Arc2D.OPEN));
  }

  private void precharged(double x, double y, double h) {
    double right = x + 26;
    wire(x, y, x, y + 12);
    contactor(x, y + 12, h - 24);
    wire(x, y + h - 12, x, y + h);
    wire(x, y + 4, right, y + 4);
    contactor(right, y + 4, 28);
    graphics.draw(new Rectangle2D.Double(right - 4, y + 32, 8, 16));
    wire(right, y + 48, right, y + h - 4);
    wire(x, y + h - 4, right, y + h - 4);
  }

  private void box(double x, double y, double h, String above, String below) {
    double side = h - 12;
    double left = x - side / 2;
    double top = y + 6;
    wire(x, y, x, top);
    wire(x, top + side, x, y + h);
    graphics.draw(new Rectangle2D.Double(left, top, side, side));
    wire(left, top + side, left + side, top);
    graphics.setFont(PlotStyle.SMALL);
    graphics.drawString(above, (float) left + 3, (float) top + 11);
    graphics.drawString(below, (float) (left + side - 10), (float) (top + side - 3));
  }

  private void motor(double x, double y, double h) {
    double side = h - 12;
    wire(x, y, x, y + 6);
    graphics.draw(new Ellipse2D.Double(x - side / 2, y + 6, side, side));
    graphics.setFont(PlotStyle.SMALL);
    graphics.drawString("M", (float) x - 4.5f, (float) (y + 18));
    graphics.drawString("3~", (float) x - 6, (float) (y + 29));
  }

  private void heater(double x, double y, double h) {
    double top = y + 6;
    double high = h - 12;
    wire(x, y, x, top);
    graphics.draw(new Rectangle2D.Double(x - 6, top, 12, high));
    for (int i = 1; i < 4; i++) {
      wire(x - 6, top + i * high / 4, x + 6, top + i * high / 4);
    }
    wire(x, top + high, x, y + h);
  }

  private void inlet(double x, double y, double h) {
    double middle = y + h / 2;
    wire(x, y, x, middle - 6);
    graphics.draw(new Rectangle2D.Double(x - 3, middle - 6, 6, 8));
    graphics.draw(new Arc2D.Double(x - 6, middle - 4, 12, 12, 180, 180, Arc2D.OPEN));
    wire(x, middle + 8, x, y + h);
  }

  private void load(double x, double y, double h) {
    wire(x, y, x, y + h - 10);
    Path2D arrow = new Path2D.Double();
    arrow.moveTo(x - 5, y + h - 10);
    arrow.lineTo(x + 5, y + h - 10);
    arrow.lineTo(x, y + h);
    arrow.closePath();
    graphics.fill(arrow);
  }

  /** Case joined to the chassis. */
  void bond(double right, double y) {
    double x = right - 8;
    wire(right, y, x, y);
    wire(x, y, x, y + 7);
    for (int i = 0; i < 3; i++) {
      wire(x - 6 + 2 * i, y + 7 + 3 * i, x + 6 - 2 * i, y + 7 + 3 * i);
    }
  }
}
