package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.AMPERE_SQUARED_SECOND;

import java.util.Optional;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.units.Kind;

/**
 * A branch without a fuse of its own, fed by the fuse nearer to the source and by capacitors that
 * no fuse limits, since they stand behind that one.
 *
 * @param fuseA2S most that the fuse lets through at any fault that it clears in time
 * @param capacitorsA2S the capacitors emptied, Minkowski's sum
 */
record UnfusedInfeed(Circuit circuit, double fuseA2S, double capacitorsA2S) {
  /** Empty without capacitors. */
  static Optional<UnfusedInfeed> of(CircuitCase of, CircuitSupply supply, FuseLine line) {
    double capacitorsA2S = CapacitorInfeed.of(supply.faults().capacitors()).jouleA2S();
    if (!(capacitorsA2S > 0)) {
      return Optional.empty();
    }
    double highestA = Kind.CURRENT.siValueOf(supply.faults().highest().orElseThrow().prospective());
    double fuseA2S = worstA2S(line.clearing(), of.numbers().clearingS(), highestA);
    return Optional.of(new UnfusedInfeed(of.circuit(), fuseA2S, capacitorsA2S));
  }

  /** Straight between the points of the curve, so that those and both ends suffice. */
  private static double worstA2S(TimeCurve clearing, double withinS, double highestA) {
    double fromA = clearing.atMost(withinS).startOfTail(highestA);
    if (!(fromA <= highestA)) {
      return 0;
    }
    double worst = Math.max(withinS * fromA * fromA, clearing.at(highestA) * highestA * highestA);
    for (int i = 0; i < clearing.size(); i++) {
      double atA = clearing.currentA(i);
      if (atA >= fromA && atA <= highestA) {
        worst = Math.max(worst, clearing.timeS(i) * atA * atA);
      }
    }
    return worst;
  }

  Check check(CableWithstand withstand) {
    double root = Math.sqrt(fuseA2S) + Math.sqrt(capacitorsA2S);
    return Check.named(
            "protection.unfused-infeed",
            "cable of " + circuit.name() + " with capacitors that no fuse limits")
        .source(CableWithstand.SOURCE)
        .basis(withstand.basis())
        .safety()
        .atMost(
            Figure.ofSi(root * root, AMPERE_SQUARED_SECOND),
            Figure.ofSi(withstand.withstandA2S(), AMPERE_SQUARED_SECOND));
  }
}
