package org.wattwright.profile;

import java.util.Arrays;
import java.util.stream.DoubleStream;

/**
 * The window of a given length in which a moment of the trace is highest, exactly.
 *
 * <p>As the window slides, its moment W changes at the rate g(v_right) − g(v_left), with g(v) = v
 * or v². Between the positions at which an edge of the window meets the end of a segment, both edge
 * values are straight lines, so that W has its extremes there, or where v_right = ±v_left.
 */
final class HighestWindow {
  private static final double ROUNDING = 1e-12;

  private final Trace trace;
  private final Moment moment;
  private final double windowS;
  private final double[] cumulative;
  private double bestStartS;
  private double best;

  /** Where it starts, and its moment. */
  record Found(double startS, double moment) {}

  private HighestWindow(Trace trace, Moment moment, double windowS) {
    this.trace = trace;
    this.moment = moment;
    this.windowS = windowS;
    this.cumulative = moment.cumulative(trace);
  }

  /** A window that lies wholly within the trace, 0 &lt; window ≤ duration. */
  static Found within(Trace trace, Moment moment, double windowS) {
    return new HighestWindow(trace, moment, windowS).slide(trace.durationS() - windowS);
  }

  /** A window of any length over a trace that repeats for ever. */
  static Found repeating(Trace trace, Moment moment, double windowS) {
    double periodS = trace.durationS();
    double periods = Math.floor(windowS / periodS);
    double restS = windowS - periods * periodS;
    double whole = periods * moment.of(trace);
    if (!(restS > 0)) {
      return new Found(0, whole);
    }
    Found found = new HighestWindow(trace.then(trace), moment, restS).slide(periodS);
    return new Found(found.startS() % periodS, whole + found.moment());
  }

  private Found slide(double lastStartS) {
    double[] events = events(lastStartS);
    int left = 0;
    int right = 0;
    best = momentAt(0, 0, trace.segmentAt(windowS));
    for (int i = 1; i < events.length; i++) {
      double middleS = events[i - 1] + (events[i] - events[i - 1]) / 2;
      left = advance(left, middleS);
      right = advance(right, middleS + windowS);
      considerAll(events[i - 1], events[i], left, right);
    }
    return new Found(bestStartS, best);
  }

  /** Starts at which an edge of the window meets the end of a segment. */
  private double[] events(double lastStartS) {
    double[] timesS = trace.times();
    DoubleStream lefts = Arrays.stream(timesS);
    DoubleStream rights = Arrays.stream(timesS).map(timeS -> timeS - windowS);
    return DoubleStream.concat(DoubleStream.concat(lefts, rights), DoubleStream.of(0, lastStartS))
        .filter(startS -> startS >= 0 && startS <= lastStartS)
        .sorted()
        .distinct()
        .toArray();
  }

  private int advance(int segment, double timeS) {
    int at = segment;
    while (at < trace.size() - 1 && trace.endS(at) <= timeS) {
      at++;
    }
    return at;
  }

  private void considerAll(double fromS, double toS, int left, int right) {
    consider(toS, left, right);
    double leftFrom = trace.valueAt(left, fromS);
    double leftTo = trace.valueAt(left, toS);
    double rightFrom = trace.valueAt(right, fromS + windowS);
    double rightTo = trace.valueAt(right, toS + windowS);
    considerZero(fromS, toS, rightFrom - leftFrom, rightTo - leftTo, left, right);
    if (moment == Moment.SECOND) {
      considerZero(fromS, toS, rightFrom + leftFrom, rightTo + leftTo, left, right);
    }
  }

  /** Where a straight line from one value to another crosses zero. */
  private void considerZero(
      double fromS, double toS, double atFrom, double atTo, int left, int right) {
    if (atFrom * atTo < 0) {
      consider(fromS + (toS - fromS) * (atFrom / (atFrom - atTo)), left, right);
    }
  }

  private void consider(double startS, int left, int right) {
    double value = momentAt(startS, left, right);
    // What differs by rounding only is equal: the first counts.
    if (value - best > ROUNDING * Math.abs(best)) {
      best = value;
      bestStartS = startS;
    }
  }

  private double momentAt(double startS, int left, int right) {
    double upToRight = cumulative[right] + moment.within(trace, right, startS + windowS);
    double upToLeft = cumulative[left] + moment.within(trace, left, startS);
    return upToRight - upToLeft;
  }
}
