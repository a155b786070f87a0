package org.wattwright.protection;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.wattwright.check.Check;
import org.wattwright.units.Kind;

/** Whether two fuses in series are selective in a circuit; each pair is asked once. */
final class CircuitSelectivity {
  private final boolean provisionalToo;
  private final Map<Asked, Boolean> known = new HashMap<>();

  /** Candidates are one object each. */
  private record Asked(int circuit, FuseCase nearer, FuseCase own) {}

  CircuitSelectivity(boolean provisionalToo) {
    this.provisionalToo = provisionalToo;
  }

  boolean isSelective(int circuit, CircuitCase of, FuseCase nearer, FuseCase own) {
    return known.computeIfAbsent(
        new Asked(circuit, nearer, own),
        asked -> Verdict.of(checks(of, nearer, own)).isAllowed(provisionalToo));
  }

  /**
   * The verdicts on two fuses in series, over the faults that the nearer to the load must clear.
   */
  List<Check> checks(CircuitCase of, FuseCase nearer, FuseCase own) {
    List<Check> checks = new ArrayList<>();
    if (own.line() == null) {
      return checks;
    }
    for (CircuitSupply supply : of.supplies()) {
      checks.add(
          of.in(
              supply,
              Selectivity.of(nearer.fuse())
                  .over(own.fuse())
                  .check(of.clearedBy(own, supply), Kind.VOLTAGE.ofSi(of.numbers().highestV()))));
    }
    return checks;
  }
}
