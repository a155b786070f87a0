package org.wattwright.layout;

import org.wattwright.check.Recorder;

/** Computes the value and compares it. */
final class PlainGate implements Gate {
  private final Term term;
  private final Bound bound;

  /** Negative: how far beyond the limit still counts as rounding. */
  private final double leastMargin;

  private final double sign;

  PlainGate(Term term, Bound bound) {
    this.term = term;
    this.bound = bound;
    this.sign = bound.isAtMost() ? -1 : 1;
    this.leastMargin = bound.leastMargin();
  }

  @Override
  public Verdict judge(int series, int parallel) {
    double margin = sign * (term.valueAt(series, parallel, Recorder.OFF) - bound.limitSi());
    if (margin >= leastMargin) {
      return Verdict.KEPT;
    }
    return margin < leastMargin ? Verdict.BROKEN : Verdict.UNKNOWN;
  }

  @Override
  public double shortfallAt(int series, int parallel) {
    return -bound.margin(term.valueAt(series, parallel, Recorder.OFF));
  }

  @Override
  public double rounding() {
    return -leastMargin;
  }
}
