package org.wattwright.protection;

import java.util.Arrays;

/**
 * Time against current in A and s, straight between points on log–log paper, falling or level, with
 * steps where two points share a current. Immutable.
 *
 * <p>Nothing is said outside its currents. Where two curves cross is exact: each stretch between
 * the points of both is a crossing of two straight lines.
 */
final class TimeCurve {
  private final double[] currentsA;
  private final double[] logCurrents;
  private final double[] logTimes;

  private TimeCurve(double[] currentsA, double[] logCurrents, double[] logTimes) {
    this.currentsA = currentsA;
    this.logCurrents = logCurrents;
    this.logTimes = logTimes;
  }

  /** From points with currents that do not fall; at least two, all positive and finite. */
  static TimeCurve of(double[] currentsA, double[] timesS) {
    return new TimeCurve(
        currentsA.clone(),
        Arrays.stream(currentsA).map(Math::log).toArray(),
        Arrays.stream(timesS).map(Math::log).toArray());
  }

  double lowestA() {
    return currentsA[0];
  }

  double highestA() {
    return currentsA[currentsA.length - 1];
  }

  int size() {
    return currentsA.length;
  }

  double currentA(int i) {
    return currentsA[i];
  }

  double timeS(int i) {
    return Math.exp(logTimes[i]);
  }

  boolean covers(double currentA) {
    return currentA >= lowestA() && currentA <= highestA();
  }

  /** Time at a current within the curve; at a step the shorter one. */
  double at(double currentA) {
    int i = 0;
    while (i < currentsA.length - 2 && currentsA[i + 1] <= currentA) {
      i++;
    }
    return Math.exp(logTime(i, Math.log(currentA)));
  }

  private double logTime(int segment, double logCurrent) {
    double width = logCurrents[segment + 1] - logCurrents[segment];
    if (width <= 0) {
      return logTimes[segment + 1];
    }
    double share = (logCurrent - logCurrents[segment]) / width;
    return logTimes[segment] + share * (logTimes[segment + 1] - logTimes[segment]);
  }

  /** Currents, within both curves, at which this one is not above the other. */
  CurrentRanges notAbove(TimeCurve other) {
    double[] ends = new double[4 * (size() + other.size())];
    int count = 0;
    double fromLog = Math.max(logCurrents[0], other.logCurrents[0]);
    double endLog = Math.min(logCurrents[size() - 1], other.logCurrents[other.size() - 1]);
    int i = segmentFrom(fromLog);
    int j = other.segmentFrom(fromLog);
    while (fromLog < endLog) {
      double toLog = Math.min(endLog, Math.min(logCurrents[i + 1], other.logCurrents[j + 1]));
      double before = logTime(i, fromLog) - other.logTime(j, fromLog);
      double after = logTime(i, toLog) - other.logTime(j, toLog);
      if (before <= 0 || after <= 0) {
        double crossing = fromLog + (toLog - fromLog) * before / (before - after);
        ends[count++] = Math.exp(before <= 0 ? fromLog : crossing);
        ends[count++] = Math.exp(after <= 0 ? toLog : crossing);
      }
      i = advanced(i, toLog);
      j = other.advanced(j, toLog);
      fromLog = toLog;
    }
    return CurrentRanges.ofEnds(ends, count);
  }

  private int segmentFrom(double logCurrent) {
    return advanced(0, logCurrent);
  }

  /** The segment that goes on to the right of a current. */
  private int advanced(int segment, double logCurrent) {
    int i = segment;
    while (i < logCurrents.length - 2 && logCurrents[i + 1] <= logCurrent) {
      i++;
    }
    return i;
  }

  /** Currents within the curve at which its time is at most a given one. */
  CurrentRanges atMost(double timeS) {
    return notAbove(level(timeS));
  }

  /** Currents within the curve at which its time is at least a given one. */
  CurrentRanges atLeast(double timeS) {
    return level(timeS).notAbove(this);
  }

  private TimeCurve level(double timeS) {
    return of(new double[] {lowestA(), highestA()}, new double[] {timeS, timeS});
  }
}
