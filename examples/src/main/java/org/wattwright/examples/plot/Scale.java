package org.wattwright.examples.plot;

import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnitSource;
import org.jfree.chart.axis.ValueAxis;

/** How values are spread along an axis. */
enum Scale {
  LINEAR {
    @Override
    ValueAxis axis(String label, Span span) {
      return linear(label, span.withAir());
    }

    @Override
    boolean holds(double value) {
      return true;
    }
  },
  LOGARITHMIC {
    @Override
    ValueAxis axis(String label, Span span) {
      Span wide =
          new Span(Math.log10(span.least()), Math.log10(span.most())).atLeast(LEAST_DECADES);
      Span air = wide.withAir();
      return new DecadeAxis(label, Math.pow(10, air.least()), Math.pow(10, air.most()));
    }

    @Override
    boolean holds(double value) {
      return value > 0;
    }
  };

  /** Narrower, an axis might show no round number at all. */
  private static final double LEAST_DECADES = 0.6;

  /** An axis that shows the whole span, with some air. */
  abstract ValueAxis axis(String label, Span span);

  /** A linear axis that shows just this span. */
  static ValueAxis linear(String label, Span span) {
    NumberAxis axis = new NumberAxis(label);
    axis.setStandardTickUnits(new NumberTickUnitSource(false, PlotStyle.numbers()));
    axis.setRange(span.least(), span.most());
    return axis;
  }

  /** Whether a value has a place on such an axis. */
  abstract boolean holds(double value);

  Point require(Point point) {
    if (!(holds(point.x()) && holds(point.y()))) {
      throw new IllegalArgumentException("logarithmic axes need values > 0, but was " + point);
    }
    return point;
  }
}
