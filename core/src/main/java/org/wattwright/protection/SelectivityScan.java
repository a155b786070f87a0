package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.AMPERE_SQUARED_SECOND;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Figure;
import org.wattwright.units.Kind;

/** Compares two fuses at both ends of a range of faults and at every bend of their curves. */
final class SelectivityScan {
  private final Melting upstream;
  private final double share;
  private final ClearingSolver downstream;

  /**
   * A scan.
   *
   * @param share of the downstream fuse's current that flows in the upstream one
   */
  SelectivityScan(Fuse upstream, double share, ClearingSolver downstream) {
    this.upstream = new Melting(upstream.data());
    this.share = share;
    this.downstream = downstream;
  }

  Check check(CheckBuilder check, FaultCurrent lowest, FaultCurrent highest) {
    check.estimated(highest.estimates().toArray(String[]::new));
    check.estimated(lowest.estimates().toArray(String[]::new));
    Spare worst = null;
    for (FaultCurrent fault : faults(lowest, highest)) {
      Clearing clearing = downstream.solve(fault);
      if (!(clearing instanceof Clearing.Cleared cleared)) {
        return unclear(check, clearing);
      }
      Double leastA2S = upstream.leastA2S(fault.prospectiveA() * share);
      if (leastA2S == null) {
        return check
            .note("beyond the end of the upstream curve")
            .notChecked("upstream fuse.preArcingJouleIntegral");
      }
      double totalA2S = Kind.JOULE_INTEGRAL.siValueOf(cleared.letThrough()) * share * share;
      worst = Spare.worse(worst, new Spare(fault.prospectiveA(), totalA2S, leastA2S));
    }
    return worst == null ? check.notChecked("faults") : worst.check(check);
  }

  private static Check unclear(CheckBuilder check, Clearing clearing) {
    return clearing.fold(
        cleared -> check.holds(true),
        not -> check.note("downstream: " + not.reason()).holds(false),
        unknown ->
            check
                .note("downstream: " + unknown.reason())
                .notChecked(unknown.missing().toArray(String[]::new)));
  }

  private List<FaultCurrent> faults(FaultCurrent lowest, FaultCurrent highest) {
    double lowA = lowest.prospectiveA();
    double highA = highest.prospectiveA();
    List<FaultCurrent> faults = new ArrayList<>(List.of(lowest, highest));
    for (double currentA : downstream.bendsBetween(lowA, highA)) {
      faults.add(highest.limitedTo(currentA));
    }
    for (double upstreamA : upstream.fastestBendsA()) {
      double bendA = upstreamA / share;
      if (bendA > lowA && bendA < highA) {
        faults.add(highest.limitedTo(bendA * (1 - ClearingSolver.BESIDE)));
        faults.add(highest.limitedTo(bendA));
        faults.add(highest.limitedTo(bendA * (1 + ClearingSolver.BESIDE)));
      }
    }
    return faults;
  }

  /** What passes downstream against what hurts upstream, at one fault. */
  private record Spare(double prospectiveA, double totalA2S, double leastA2S) {
    static Spare worse(@Nullable Spare one, Spare other) {
      return one == null || other.share() > one.share() ? other : one;
    }

    double share() {
      return totalA2S / leastA2S;
    }

    Check check(CheckBuilder check) {
      return check
          .note("least to spare at " + AMPERE.of(Math.rint(prospectiveA)))
          .atMost(
              Figure.ofSi(totalA2S, AMPERE_SQUARED_SECOND),
              Figure.ofSi(leastA2S, AMPERE_SQUARED_SECOND));
    }
  }
}
