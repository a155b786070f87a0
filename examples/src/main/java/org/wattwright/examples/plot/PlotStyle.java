package org.wattwright.examples.plot;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Paint;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.text.NumberFormat;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItem;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.block.BlockBorder;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.title.LegendTitle;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;

/**
 * One look for all plots: dark lines that differ in colour, dash and mark, so that they can be told
 * apart in grey.
 */
final class PlotStyle {
  static final Font FONT = new Font(Font.SANS_SERIF, Font.PLAIN, 12);
  static final Font SMALL = new Font(Font.SANS_SERIF, Font.PLAIN, 11);
  static final Color INK = new Color(0x1c1f23);
  static final Color SOFT = new Color(0x5a626b);
  static final Color GRID = new Color(0xdde1e5);
  static final Color LIMIT = new Color(0x8a1f17);
  static final Color GAP = new Color(0x8a, 0x1f, 0x17, 50);
  static final Color BEHIND_TEXT = new Color(255, 255, 255, 215);
  static final Stroke THIN = new BasicStroke(0.8f);
  static final Stroke OUTLINE = new BasicStroke(1.3f);
  static final Stroke LIMIT_LINE = dashed(1.4f, 7, 3, 1.5f, 3);

  private static final List<Color> COLOURS =
      List.of(
          new Color(0x17456e),
          new Color(0xa8540a),
          new Color(0x1f6f54),
          new Color(0x6b3f7a),
          new Color(0x3b3f45));
  private static final List<Stroke> STROKES =
      List.of(
          new BasicStroke(1.8f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND),
          dashed(1.8f, 8, 4),
          dashed(1.8f, 2.5f, 3),
          dashed(1.8f, 10, 3, 2.5f, 3),
          dashed(1.8f, 5, 2));
  private static final double MARK = 3.6;

  private PlotStyle() {}

  private static Stroke dashed(float width, float... dashes) {
    return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, dashes, 0);
  }

  static Color colour(int index) {
    return COLOURS.get(index % COLOURS.size());
  }

  static Stroke stroke(int index) {
    return STROKES.get(index % STROKES.size());
  }

  /** Circle, square, triangle, diamond, triangle on its head; then again. */
  static Shape mark(int index) {
    return switch (index % COLOURS.size()) {
      case 0 -> new Ellipse2D.Double(-MARK, -MARK, 2 * MARK, 2 * MARK);
      case 1 -> new Rectangle2D.Double(-MARK, -MARK, 2 * MARK, 2 * MARK);
      case 2 -> polygon(0, -MARK - 1, MARK + 1, MARK, -MARK - 1, MARK);
      case 3 -> polygon(0, -MARK - 1.5, MARK + 1.5, 0, 0, MARK + 1.5, -MARK - 1.5, 0);
      default -> polygon(0, MARK + 1, MARK + 1, -MARK, -MARK - 1, -MARK);
    };
  }

  private static Shape polygon(double... coordinates) {
    Path2D path = new Path2D.Double();
    path.moveTo(coordinates[0], coordinates[1]);
    for (int i = 2; i < coordinates.length; i += 2) {
      path.lineTo(coordinates[i], coordinates[i + 1]);
    }
    path.closePath();
    return path;
  }

  static LegendItem legendShape(String label, Shape shape, Paint fill, Paint outline) {
    return new LegendItem(label, null, null, null, shape, fill, OUTLINE, outline);
  }

  /** Plain decimals, a point, no grouping, on every machine. */
  static NumberFormat numbers() {
    return new DecimalFormat("0.######", DecimalFormatSymbols.getInstance(Locale.ROOT));
  }

  static void axis(ValueAxis axis) {
    axis.setLabelFont(FONT);
    axis.setLabelPaint(INK);
    axis.setTickLabelFont(SMALL);
    axis.setTickLabelPaint(INK);
    axis.setAxisLinePaint(SOFT);
    axis.setTickMarkPaint(SOFT);
  }

  static void plot(XYPlot plot) {
    plot.setBackgroundPaint(Color.WHITE);
    plot.setOutlinePaint(SOFT);
    plot.setOutlineStroke(THIN);
    plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
    plot.setDomainGridlinePaint(GRID);
    plot.setRangeGridlinePaint(GRID);
    plot.setDomainGridlineStroke(THIN);
    plot.setRangeGridlineStroke(THIN);
  }

  static JFreeChart chart(XYPlot plot) {
    plot(plot);
    JFreeChart chart = new JFreeChart(null, FONT, plot, false);
    chart.setBackgroundPaint(Color.WHITE);
    chart.setPadding(new RectangleInsets(4, 4, 4, 10));
    LegendTitle legend = new LegendTitle(plot);
    legend.setPosition(RectangleEdge.BOTTOM);
    legend.setItemFont(SMALL);
    legend.setItemPaint(INK);
    legend.setFrame(BlockBorder.NONE);
    legend.setBackgroundPaint(Color.WHITE);
    legend.setItemLabelPadding(new RectangleInsets(2, 4, 2, 12));
    chart.addLegend(legend);
    return chart;
  }
}
