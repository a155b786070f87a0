package org.wattwright.examples.plot;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Lines over two axes, with limits; the axes may be of any scale. */
record LineChart(ValueAxis horizontal, ValueAxis vertical, List<Series> series, Limits limits) {
  private static final int HEIGHT = 400;

  /** Above this many points marks would hide the line. */
  private static final int MOST_MARKS = 30;

  String svg(String id) {
    PlotStyle.axis(horizontal);
    PlotStyle.axis(vertical);
    XYSeriesCollection data = new XYSeriesCollection();
    XYPlot plot = new XYPlot(data, horizontal, vertical, renderer());
    for (int i = 0; i < series.size(); i++) {
      // The library tells series apart by their key, and two may bear the same name.
      XYSeries line = new XYSeries(i, false, true);
      line.setDescription(series.get(i).name());
      series.get(i).points().forEach(p -> line.add(p.x(), p.y(), false));
      data.addSeries(line);
    }
    plot.addAnnotation(new Layer(this::paintLimits));
    JFreeChart chart = PlotStyle.chart(plot);
    return SvgChart.draw(chart, HEIGHT, id);
  }

  private XYLineAndShapeRenderer renderer() {
    XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, true);
    renderer.setLegendLine(new Line2D.Double(-16, 0, 16, 0));
    renderer.setLegendItemLabelGenerator((data, index) -> series.get(index).name());
    renderer.setDrawSeriesLineAsPath(true);
    for (int i = 0; i < series.size(); i++) {
      renderer.setSeriesPaint(i, PlotStyle.colour(i));
      renderer.setSeriesStroke(i, PlotStyle.stroke(i));
      renderer.setSeriesShape(i, PlotStyle.mark(i));
      renderer.setSeriesShapesVisible(i, series.get(i).points().size() <= MOST_MARKS);
    }
    return renderer;
  }

  private void paintLimits(Canvas canvas) {
    LabelPlacer placer = new LabelPlacer(canvas.area());
    for (Series line : series) {
      for (int i = 1; i < line.points().size(); i++) {
        Point2D from = canvas.at(line.points().get(i - 1));
        placer.avoid(new Line2D.Double(from, canvas.at(line.points().get(i))));
      }
    }
    limits.paint(canvas, placer);
  }
}
