package org.wattwright.examples.plot;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.function.Consumer;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jspecify.annotations.Nullable;

/** Something of ours drawn over the data of a chart, with the area and the axes at hand. */
final class Layer extends AbstractXYAnnotation {
  private static final long serialVersionUID = 1L;

  /** Charts are drawn at once and never stored. */
  private final transient Consumer<Canvas> painter;

  Layer(Consumer<Canvas> painter) {
    this.painter = painter;
  }

  @Override
  public void draw(
      Graphics2D graphics,
      XYPlot plot,
      Rectangle2D area,
      ValueAxis domain,
      ValueAxis range,
      int rendererIndex,
      @Nullable PlotRenderingInfo info) {
    painter.accept(new Canvas(graphics, area, plot, domain, range));
  }
}
