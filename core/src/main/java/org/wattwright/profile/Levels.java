package org.wattwright.profile;

/** How long a trace stays below or above a level, exactly for straight segments. */
final class Levels {
  private Levels() {}

  /** Time at or below a level. */
  static double timeUpToS(Trace trace, double level) {
    double sumS = 0;
    for (int i = 0; i < trace.size(); i++) {
      boolean below = trace.from(i) <= level;
      sumS += trace.isConstant(i) ? (below ? trace.lengthS(i) : 0) : slopeBelowS(trace, i, level);
    }
    return sumS;
  }

  /** Time below a level. */
  static double timeBelowS(Trace trace, double level) {
    double sumS = 0;
    for (int i = 0; i < trace.size(); i++) {
      boolean below = trace.from(i) < level;
      sumS += trace.isConstant(i) ? (below ? trace.lengthS(i) : 0) : slopeBelowS(trace, i, level);
    }
    return sumS;
  }

  /** Time at or above a level. */
  static double timeFromS(Trace trace, double level) {
    return timeUpToS(trace.scaled(-1), -level);
  }

  private static double slopeBelowS(Trace trace, int segment, double level) {
    double low = Math.min(trace.from(segment), trace.to(segment));
    double high = Math.max(trace.from(segment), trace.to(segment));
    double share = (level - low) / (high - low);
    return Math.max(0, Math.min(1, share)) * trace.lengthS(segment);
  }

  /** Smallest value that the trace does not exceed for a share of its time. */
  static double percentile(Trace trace, double share) {
    double[] levels = trace.sortedLevels();
    double wantedS = share * trace.durationS();
    int low = 0;
    int high = levels.length - 1;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (timeUpToS(trace, levels[middle]) >= wantedS) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low == 0 ? levels[0] : between(trace, levels[low - 1], levels[low], wantedS);
  }

  /** The share of time grows in a straight line between two neighbouring levels. */
  private static double between(Trace trace, double below, double above, double wantedS) {
    double startS = timeUpToS(trace, below);
    double endS = timeBelowS(trace, above);
    boolean jumps = !(endS > startS) || wantedS >= endS;
    return jumps ? above : below + (wantedS - startS) / (endS - startS) * (above - below);
  }
}
