package org.wattwright.layout;

/** A requirement on one variant, asked for every series and parallel. Not thread-safe. */
interface Gate {
  /** What a gate says of a candidate. */
  enum Verdict {
    KEPT,
    BROKEN,
    /** An input is missing. */
    UNKNOWN
  }

  Verdict judge(int series, int parallel);

  /** How far the requirement is missed, ≥ 0; infinite where that is not a number. */
  double shortfallAt(int series, int parallel);

  /** How much of a shortfall may be rounding. */
  default double rounding() {
    return 0;
  }
}
