package org.wattwright.examples.plot;

import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;

/**
 * A single-line diagram: sources above, a bus, what joins it to a second bus, and the branches
 * below. One line stands for both poles. Symbols are those of IEC 60617.
 *
 * <p>Immutable; each method returns a plot with more in it.
 */
public final class SingleLinePlot {
  private static final double MARGIN = 12;
  private static final double TITLE = 38;
  private static final double GAP = 14;
  private static final double LEGEND = 26;

  private final List<Column> sources;
  private final List<Column> mains;
  private final List<Column> branches;
  private final List<Column> apart;

  private SingleLinePlot(
      List<Column> sources, List<Column> mains, List<Column> branches, List<Column> apart) {
    this.sources = List.copyOf(sources);
    this.mains = List.copyOf(mains);
    this.branches = List.copyOf(branches);
    this.apart = List.copyOf(apart);
  }

  /**
   * A symbol with its label.
   *
   * @param symbol what it stands for
   * @param label beside it; may be empty
   */
  public record Element(LineSymbol symbol, String label) {}

  /**
   * Elements in series.
   *
   * @param title of the circuit
   * @param elements from the source to the load
   */
  public record Column(String title, List<Element> elements) {
    /**
     * Copies the list.
     *
     * @param title of the circuit
     * @param elements from the source to the load
     */
    public Column {
      elements = List.copyOf(elements);
    }

    double height() {
      return elements.stream().mapToDouble(e -> e.symbol().height()).sum();
    }
  }

  /**
   * A plot without circuits.
   *
   * @return the start
   */
  public static SingleLinePlot empty() {
    return new SingleLinePlot(List.of(), List.of(), List.of(), List.of());
  }

  /**
   * A source above the first bus.
   *
   * @param column its elements, the bus below them
   * @return a plot with it
   */
  public SingleLinePlot source(Column column) {
    return new SingleLinePlot(longer(sources, column), mains, branches, apart);
  }

  /**
   * What joins both buses.
   *
   * @param column its elements
   * @return a plot with it
   */
  public SingleLinePlot main(Column column) {
    return new SingleLinePlot(sources, longer(mains, column), branches, apart);
  }

  /**
   * A branch below the second bus.
   *
   * @param column its elements, the bus above them
   * @return a plot with it
   */
  public SingleLinePlot branch(Column column) {
    return new SingleLinePlot(sources, mains, longer(branches, column), apart);
  }

  /**
   * A circuit that hangs on neither bus, such as one of the low-voltage battery; drawn last among
   * the branches.
   *
   * @param column its elements, its own source first
   * @return a plot with it
   */
  public SingleLinePlot apart(Column column) {
    return new SingleLinePlot(sources, mains, branches, longer(apart, column));
  }

  private static List<Column> longer(List<Column> columns, Column column) {
    List<Column> all = new ArrayList<>(columns);
    all.add(column);
    return all;
  }

  private static double highest(List<Column> columns) {
    return columns.stream().mapToDouble(Column::height).max().orElse(0);
  }

  /** Branches, and after them what hangs on no bus. */
  private List<Column> lower() {
    List<Column> all = new ArrayList<>(branches);
    all.addAll(apart);
    return all;
  }

  private double firstBus() {
    return TITLE + highest(sources) + GAP;
  }

  private double secondBus() {
    return firstBus() + TITLE + highest(mains) + GAP;
  }

  /**
   * Draws it.
   *
   * @param id of the drawing, unique on its page: lower-case letters, digits and hyphens
   * @return one {@code <svg>} element
   * @throws IllegalArgumentException if the identifier has other characters
   */
  public String svg(String id) {
    double height = secondBus() + TITLE + highest(lower()) + GAP + LEGEND;
    return SvgChart.draw(this::paint, (int) Math.ceil(height), id);
  }

  private void paint(Graphics2D graphics) {
    LineSymbolPainter painter = new LineSymbolPainter(graphics);
    paintColumns(graphics, sources, TITLE, firstBus());
    painter.wire(MARGIN, firstBus(), SvgChart.WIDTH - MARGIN, firstBus());
    painter.wire(MARGIN, firstBus() + 1, SvgChart.WIDTH - MARGIN, firstBus() + 1);
    paintColumns(graphics, mains, firstBus() + TITLE, secondBus());
    painter.wire(MARGIN, secondBus(), SvgChart.WIDTH - MARGIN, secondBus());
    painter.wire(MARGIN, secondBus() + 1, SvgChart.WIDTH - MARGIN, secondBus() + 1);
    paintColumns(graphics, lower(), secondBus() + TITLE, -1);
    joinTops(painter);
    legend(graphics, painter);
  }

  /** Mains and branches hang on the bus above them. */
  private void joinTops(LineSymbolPainter painter) {
    for (int i = 0; i < mains.size(); i++) {
      double x = x(mains, i);
      painter.wire(x, firstBus(), x, firstBus() + TITLE);
    }
    for (int i = 0; i < branches.size(); i++) {
      double x = x(lower(), i);
      painter.wire(x, secondBus(), x, secondBus() + TITLE);
    }
  }

  private static double x(List<Column> columns, int index) {
    double width = (SvgChart.WIDTH - 2 * MARGIN) / columns.size();
    return MARGIN + width * index + Math.min(width / 2, 34);
  }

  private static double room(List<Column> columns) {
    return (SvgChart.WIDTH - 2 * MARGIN) / columns.size();
  }

  private void paintColumns(Graphics2D graphics, List<Column> columns, double top, double bus) {
    LineSymbolPainter painter = new LineSymbolPainter(graphics);
    for (int i = 0; i < columns.size(); i++) {
      double x = x(columns, i);
      boolean hangs = columns != sources;
      double y = bus < 0 || hangs ? top : bus - GAP - columns.get(i).height();
      double textX = x + 12;
      text(graphics, columns.get(i).title(), textX, y - 16, room(columns) - 50, true);
      for (Element element : columns.get(i).elements()) {
        painter.paint(element.symbol(), x, y);
        double labelX =
            textX
                + switch (element.symbol()) {
                  case PRECHARGED_CONTACTOR -> 24;
                  case INVERTER, DC_CONVERTER, CHARGER, MOTOR -> 7;
                  case BATTERY -> 4;
                  default -> 0;
                };
        text(
            graphics,
            element.label(),
            labelX,
            y + element.symbol().height() / 2 + 4,
            room(columns) - (labelX - x) - 36,
            false);
        y += element.symbol().height();
      }
      if (bus > 0) {
        painter.wire(x, y, x, bus);
      }
    }
  }

  /** On two lines if it does not fit on one. */
  private static void text(
      Graphics2D graphics, String text, double x, double y, double room, boolean bold) {
    graphics.setFont(bold ? PlotStyle.SMALL.deriveFont(java.awt.Font.BOLD) : PlotStyle.SMALL);
    graphics.setPaint(bold ? PlotStyle.INK : PlotStyle.SOFT);
    FontMetrics metrics = graphics.getFontMetrics();
    int cut = metrics.stringWidth(text) <= room ? -1 : middleSpace(text);
    if (cut < 0) {
      graphics.drawString(text, (float) x, (float) y);
      return;
    }
    graphics.drawString(text.substring(0, cut), (float) x, (float) y - 6);
    graphics.drawString(text.substring(cut + 1), (float) x, (float) y + 6);
  }

  private static int middleSpace(String text) {
    int best = -1;
    for (int i = text.indexOf(' '); i >= 0; i = text.indexOf(' ', i + 1)) {
      if (best < 0 || Math.abs(2 * i - text.length()) < Math.abs(2 * best - text.length())) {
        best = i;
      }
    }
    return best;
  }

  private void legend(Graphics2D graphics, LineSymbolPainter painter) {
    double y = secondBus() + TITLE + highest(lower()) + GAP + 6;
    painter.bond(MARGIN + 30, y);
    text(
        graphics,
        "case bonded to the chassis; no pole of the traction circuit is; one line stands for both"
            + " poles",
        MARGIN + 40,
        y + 9,
        SvgChart.WIDTH,
        false);
  }
}
