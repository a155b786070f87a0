package org.wattwright.charging;

/** Spells durations the way a clock is read. */
final class Clock {
  private static final long S_PER_MIN = 60;
  private static final long MIN_PER_H = 60;

  private Clock() {}

  /** Such as {@code 5 h 7 min}, {@code 12 min} or {@code 40 s}; rounded to the last of them. */
  static String text(double timeS) {
    long wholeS = Math.round(timeS);
    if (wholeS < S_PER_MIN) {
      return wholeS + " s";
    }
    long minutes = Math.round(timeS / S_PER_MIN);
    return minutes < MIN_PER_H
        ? minutes + " min"
        : minutes / MIN_PER_H + " h " + minutes % MIN_PER_H + " min";
  }
}
