package org.wattwright.examples.plot;

import java.awt.Color;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeriesCollection;

/**
 * The voltages of a pack, from full and regenerating to empty, cold and under load, against the
 * window of each device: operating band, full-performance band, absolute maximum.
 *
 * <p>Where the pack leaves an operating band, the stretch is marked with the number of volts.
 * Immutable; each method returns a plot with more in it.
 */
public final class VoltageWindowPlot {
  private static final int ROW_HEIGHT = 43;
  private static final int REST_HEIGHT = 104;
  private static final int LONGEST_LABEL = 34;

  private final List<State> states;
  private final List<Window> windows;

  private VoltageWindowPlot(List<State> states, List<Window> windows) {
    this.states = List.copyOf(states);
    this.windows = List.copyOf(windows);
  }

  /**
   * A voltage of the pack.
   *
   * @param label the state, such as {@code empty, at rest}
   * @param volts the voltage in V
   */
  record State(String label, double volts) {}

  /**
   * A range of voltages in V.
   *
   * @param least lower end
   * @param most upper end, at least the lower
   */
  public record Band(double least, double most) {
    /**
     * Checks the order.
     *
     * @param least lower end
     * @param most upper end
     * @throws IllegalArgumentException if the ends are in the wrong order or not finite
     */
    public Band {
      Point.requireFinite(least);
      Point.requireFinite(most);
      if (!(most >= least)) {
        throw new IllegalArgumentException("Band.most must be ≥ least: " + least + ", " + most);
      }
    }
  }

  /**
   * The window of a device.
   *
   * @param label the device
   * @param operating where it works
   * @param full where it gives its full performance, inside the operating band
   * @param absoluteMaximum in V, above which it is damaged
   */
  public record Window(String label, Band operating, Band full, double absoluteMaximum) {}

  /**
   * An empty plot.
   *
   * @return the plot
   */
  public static VoltageWindowPlot empty() {
    return new VoltageWindowPlot(List.of(), List.of());
  }

  /**
   * One more voltage of the pack.
   *
   * @param label the state, such as {@code empty, at rest}
   * @param volts the voltage in V
   * @return a plot with it
   */
  public VoltageWindowPlot packVoltage(String label, double volts) {
    List<State> all = new ArrayList<>(states);
    all.add(new State(shortened(label), Point.requireFinite(volts)));
    return new VoltageWindowPlot(all, windows);
  }

  /**
   * One more device.
   *
   * @param window its window
   * @return a plot with it
   */
  public VoltageWindowPlot device(Window window) {
    List<Window> all = new ArrayList<>(windows);
    all.add(window);
    return new VoltageWindowPlot(states, all);
  }

  private static String shortened(String label) {
    return label.length() <= LONGEST_LABEL ? label : label.substring(0, LONGEST_LABEL - 1) + "…";
  }

  /**
   * The drawing.
   *
   * @param id lower-case name of this plot, unique on its page
   * @return one {@code <svg>} element
   * @throws IllegalStateException if there is no pack voltage
   */
  public String svg(String id) {
    if (states.isEmpty()) {
      throw new IllegalStateException("a voltage window plot needs a pack voltage");
    }
    ValueAxis voltage = Scale.LINEAR.axis("Voltage [V]", span());
    PlotStyle.axis(voltage);
    ValueAxis rows = rows();
    XYPlot plot = new XYPlot(new XYSeriesCollection(), voltage, rows, new XYLineAndShapeRenderer());
    plot.setFixedLegendItems(legend());
    plot.addAnnotation(new Layer(this::paint));
    int height = REST_HEIGHT + ROW_HEIGHT * (states.size() + windows.size());
    var chart = PlotStyle.chart(plot);
    plot.setRangeGridlinesVisible(false);
    return SvgChart.draw(chart, height, id);
  }

  private Span span() {
    return Span.of(
        DoubleStream.concat(
            states.stream().mapToDouble(State::volts),
            windows.stream()
                .flatMapToDouble(
                    w -> DoubleStream.of(w.operating().least(), w.absoluteMaximum()))));
  }

  private ValueAxis rows() {
    String[] labels =
        Stream.concat(
                states.stream().map(state -> "pack " + state.label()),
                windows.stream().map(window -> shortened(window.label())))
            .toArray(String[]::new);
    SymbolAxis axis = new SymbolAxis("", labels);
    axis.setGridBandsVisible(false);
    axis.setInverted(true);
    axis.setRange(-0.5, labels.length - 0.3);
    PlotStyle.axis(axis);
    axis.setTickMarksVisible(false);
    return axis;
  }

  private static LegendItemCollection legend() {
    LegendItemCollection items = new LegendItemCollection();
    Rectangle2D box = new Rectangle2D.Double(-8, -5, 16, 10);
    items.add(
        PlotStyle.legendShape("pack voltage", PlotStyle.mark(0), PlotStyle.INK, PlotStyle.INK));
    items.add(PlotStyle.legendShape("full performance", box, WindowRow.FULL, WindowRow.EDGE));
    items.add(PlotStyle.legendShape("operating", box, WindowRow.OPERATING, WindowRow.EDGE));
    items.add(
        PlotStyle.legendShape(
            "absolute maximum",
            new Rectangle2D.Double(-1.2, -7, 2.4, 14),
            PlotStyle.LIMIT,
            PlotStyle.LIMIT));
    items.add(
        PlotStyle.legendShape("pack outside the window", box, WindowRow.OUTSIDE, PlotStyle.LIMIT));
    return items;
  }

  private void paint(Canvas canvas) {
    Span pack = Span.of(states.stream().mapToDouble(State::volts));
    double left = canvas.x(pack.least());
    double right = canvas.x(pack.most());
    canvas.graphics().setPaint(WindowRow.PACK_RANGE);
    canvas
        .graphics()
        .fill(
            new Rectangle2D.Double(
                left, canvas.area().getMinY(), right - left, canvas.area().getHeight()));
    for (int i = 0; i < states.size(); i++) {
      paintState(canvas, states.get(i).volts(), i);
    }
    for (int i = 0; i < windows.size(); i++) {
      new WindowRow(canvas, canvas.y(states.size() + i)).paint(windows.get(i), pack);
    }
  }

  private static void paintState(Canvas canvas, double volts, int row) {
    double x = canvas.x(volts);
    double y = canvas.y(row);
    canvas.graphics().setPaint(PlotStyle.INK);
    canvas.graphics().fill(new Ellipse2D.Double(x - 4, y - 4, 8, 8));
    String text = WindowRow.volts(volts);
    Rectangle2D box = canvas.box(text);
    boolean fitsRight = x + 6 + box.getWidth() <= canvas.area().getMaxX();
    double left = fitsRight ? x + 6 : x - 6 - box.getWidth();
    canvas.writeBare(text, Surroundings.moved(box, left, y - box.getHeight() / 2), Color.BLACK);
  }
}
