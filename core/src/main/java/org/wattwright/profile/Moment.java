package org.wattwright.profile;

/**
 * Integral over time of the value, or of its square, exact for straight segments.
 *
 * <p>∫v·dt = (a + b)/2·Δt and ∫v²·dt = (a² + a·b + b²)/3·Δt for a segment from a to b.
 */
enum Moment {
  /** ∫v·dt. */
  FIRST {
    @Override
    double ofSegment(double a, double b, double lengthS) {
      return (a + b) / 2 * lengthS;
    }
  },
  /** ∫v²·dt. */
  SECOND {
    @Override
    double ofSegment(double a, double b, double lengthS) {
      return (a * a + a * b + b * b) / 3 * lengthS;
    }
  };

  abstract double ofSegment(double a, double b, double lengthS);

  /** From the start of a segment to a time within it. */
  double within(Trace trace, int segment, double timeS) {
    return ofSegment(
        trace.from(segment), trace.valueAt(segment, timeS), timeS - trace.startS(segment));
  }

  /** Over the whole trace. */
  double of(Trace trace) {
    double sum = 0;
    for (int i = 0; i < trace.size(); i++) {
      sum += ofSegment(trace.from(i), trace.to(i), trace.lengthS(i));
    }
    return sum;
  }

  /** From the start of the trace to the start of each segment, and to the end. */
  double[] cumulative(Trace trace) {
    double[] sums = new double[trace.size() + 1];
    for (int i = 0; i < trace.size(); i++) {
      sums[i + 1] = sums[i] + ofSegment(trace.from(i), trace.to(i), trace.lengthS(i));
    }
    return sums;
  }
}
