package org.wattwright.profile;

/** A trace at equal steps; the last step is shorter where the duration is no multiple of it. */
final class Resampling {
  /** A last step shorter than this share of a step is rounding. */
  private static final double ROUNDING = 1e-9;

  private Resampling() {}

  static Trace points(Trace trace, double stepS) {
    double[] timesS = times(trace, stepS);
    double[] values = new double[timesS.length];
    for (int i = 0; i < values.length; i++) {
      values[i] = trace.at(timesS[i]);
    }
    return Trace.ofPoints(timesS, values);
  }

  static Trace means(Trace trace, double stepS) {
    double[] timesS = times(trace, stepS);
    double[] cumulative = Moment.FIRST.cumulative(trace);
    double[] means = new double[timesS.length - 1];
    double before = 0;
    for (int i = 0; i < means.length; i++) {
      int segment = trace.segmentAt(timesS[i + 1]);
      double upTo = cumulative[segment] + Moment.FIRST.within(trace, segment, timesS[i + 1]);
      means[i] = (upTo - before) / (timesS[i + 1] - timesS[i]);
      before = upTo;
    }
    return new Trace(timesS, means, means);
  }

  private static double[] times(Trace trace, double stepS) {
    int steps = (int) Math.max(1, Math.ceil(trace.durationS() / stepS - ROUNDING));
    double[] timesS = new double[steps + 1];
    for (int i = 1; i < steps; i++) {
      timesS[i] = i * stepS;
    }
    timesS[steps] = trace.durationS();
    return timesS;
  }
}
