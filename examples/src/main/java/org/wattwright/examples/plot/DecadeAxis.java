package org.wattwright.examples.plot;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.axis.TickType;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;

/**
 * A logarithmic axis with round labels: decades, with 2 and 5 or all digits where there is room.
 */
final class DecadeAxis extends LogAxis {
  private static final long serialVersionUID = 1L;

  /** Over more decades than these, labels between the decades would crowd. */
  private static final double MOST_DECADES_WITH_ALL_DIGITS = 1.2;

  private static final double MOST_DECADES_WITH_2_AND_5 = 3.2;

  DecadeAxis(String label, double least, double most) {
    super(label);
    setMinorTickMarksVisible(true);
    setRange(least, most);
  }

  @Override
  @SuppressWarnings("rawtypes") // the library's signature
  public List refreshTicks(
      Graphics2D graphics, AxisState state, Rectangle2D area, RectangleEdge edge) {
    TextAnchor anchor =
        RectangleEdge.isTopOrBottom(edge) ? TextAnchor.TOP_CENTER : TextAnchor.CENTER_RIGHT;
    List<NumberTick> ticks = new ArrayList<>();
    int first = (int) Math.floor(Math.log10(getLowerBound()));
    int last = (int) Math.floor(Math.log10(getUpperBound()));
    for (int decade = first; decade <= last; decade++) {
      for (int digit = 1; digit <= 9; digit++) {
        double value = Double.parseDouble(digit + "e" + decade);
        if (getRange().contains(value)) {
          ticks.add(tick(digit, value, anchor));
        }
      }
    }
    return ticks;
  }

  private NumberTick tick(int digit, double value, TextAnchor anchor) {
    boolean isMajor = isLabelled(digit);
    String label = isMajor ? PlotStyle.numbers().format(value) : "";
    TickType type = isMajor ? TickType.MAJOR : TickType.MINOR;
    return new NumberTick(type, value, label, anchor, TextAnchor.CENTER, 0);
  }

  private boolean isLabelled(int digit) {
    double decades = Math.log10(getUpperBound() / getLowerBound());
    return digit == 1
        || decades <= MOST_DECADES_WITH_ALL_DIGITS
        || (decades <= MOST_DECADES_WITH_2_AND_5 && (digit == 2 || digit == 5));
  }
}
