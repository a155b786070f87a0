package org.wattwright.layout;

import org.wattwright.check.Check;

/** A limit in SI; NaN if it is not known. */
record Bound(Check.Relation relation, double limitSi) {
  static Bound atMost(double limitSi) {
    return new Bound(Check.Relation.AT_MOST, limitSi);
  }

  static Bound atLeast(double limitSi) {
    return new Bound(Check.Relation.AT_LEAST, limitSi);
  }

  boolean isAtMost() {
    return relation == Check.Relation.AT_MOST;
  }

  /** Positive on the good side; NaN if anything is not known. */
  double margin(double valueSi) {
    return isAtMost() ? limitSi - valueSi : valueSi - limitSi;
  }

  /** The margin at which a limit is just kept, a little below zero. */
  double leastMargin() {
    return -Levels.ROUNDING * Math.abs(limitSi);
  }

  boolean keeps(double valueSi) {
    return margin(valueSi) >= leastMargin();
  }
}
