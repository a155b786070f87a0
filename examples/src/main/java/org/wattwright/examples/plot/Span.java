package org.wattwright.examples.plot;

import java.util.stream.DoubleStream;

/** Smallest and largest of many values, with some air around. */
record Span(double least, double most) {
  private static final double AIR = 0.04;

  static Span of(DoubleStream values) {
    double[] all = values.toArray();
    return new Span(DoubleStream.of(all).min().orElse(0), DoubleStream.of(all).max().orElse(1));
  }

  Span including(double value) {
    return new Span(Math.min(least, value), Math.max(most, value));
  }

  /** Wider by a share of its width; a single value gets a width of its own. */
  Span withAir() {
    double width = most > least ? most - least : Math.max(Math.abs(most), 1);
    return new Span(least - AIR * width, most + AIR * width);
  }

  /** Air above only; zero stays at the foot. */
  Span withAirAboveZero() {
    return new Span(0, Math.max(withAir().most(), 0));
  }

  /** Widened about its middle to a least width. */
  Span atLeast(double width) {
    double missing = Math.max(0, width - (most - least));
    return new Span(least - missing / 2, most + missing / 2);
  }
}
