package org.wattwright.protection;

import java.util.List;
import org.wattwright.check.Check;
import org.wattwright.check.Outcome;

/** Whether a candidate may be part of an answer. */
enum Verdict {
  PASSES,
  /** Nothing fails, but something could not be checked. */
  PROVISIONAL,
  FAILS;

  static Verdict of(List<Check> checks) {
    Verdict worst = PASSES;
    for (Check check : checks) {
      if (check.outcome() == Outcome.FAIL) {
        return FAILS;
      }
      if (check.outcome() == Outcome.NOT_CHECKED) {
        worst = PROVISIONAL;
      }
    }
    return worst;
  }

  boolean isAllowed(boolean provisionalToo) {
    return this == PASSES || (this == PROVISIONAL && provisionalToo);
  }
}
