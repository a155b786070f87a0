package org.wattwright.protection;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.wattwright.check.Check;
import org.wattwright.conductor.Cable;

/** Finds the parts that are no candidates of a circuit although nothing that is known fails. */
final class PassedOverSearch {
  private final boolean provisionalToo;
  private final CircuitCase of;
  private final List<PassedOver> found = new ArrayList<>();

  private PassedOverSearch(CircuitCase of, boolean provisionalToo) {
    this.of = of;
    this.provisionalToo = provisionalToo;
  }

  static List<PassedOver> of(DesignTree tree) {
    List<PassedOver> all = new ArrayList<>();
    for (CircuitCase each : tree.cases()) {
      PassedOverSearch search = new PassedOverSearch(each, tree.spec().isProvisionalAllowed());
      search.cables();
      search.fuses();
      search.contactors();
      all.addAll(search.found);
    }
    return all;
  }

  private void cables() {
    Set<Cable> all = new LinkedHashSet<>();
    Set<Cable> passed = new LinkedHashSet<>();
    Set<String> missing = new TreeSet<>();
    for (CableCase cable : of.cables()) {
      all.add(cable.cable());
      boolean isCandidate = cable.passes() || (provisionalToo && cable.isProvisional());
      if (!isCandidate && Verdict.of(cable.line().checks()) == Verdict.PROVISIONAL) {
        passed.add(cable.cable());
        missing.addAll(missing(cable.line().checks()));
      }
    }
    add(CircuitPart.Type.CABLE, passed, all.size(), missing);
  }

  private void fuses() {
    List<FuseCase> passed = new ArrayList<>();
    Set<String> missing = new TreeSet<>();
    for (FuseCase fuse : of.fuses()) {
      boolean isUnknown = fuse.verdict() == Verdict.PROVISIONAL && !provisionalToo;
      if (fuse.verdict() != Verdict.FAILS && (isUnknown || fuse.line() == null)) {
        passed.add(fuse);
        missing.addAll(missing(fuse.checks()));
        if (fuse.line() == null) {
          missing.add("fuse.preArcingCurve");
        }
      }
    }
    add(CircuitPart.Type.FUSE, passed, of.fuses().size(), missing);
  }

  private void contactors() {
    List<SwitchCase> passed = new ArrayList<>();
    Set<String> missing = new TreeSet<>();
    for (SwitchCase contactor : of.switches()) {
      if (contactor.verdict() == Verdict.PROVISIONAL && !provisionalToo) {
        passed.add(contactor);
        missing.addAll(missing(contactor.checks()));
      }
    }
    add(CircuitPart.Type.CONTACTOR, passed, of.switches().size(), missing);
  }

  private static Set<String> missing(List<Check> checks) {
    Set<String> missing = new TreeSet<>();
    checks.forEach(check -> missing.addAll(check.missing()));
    return missing;
  }

  private void add(
      CircuitPart.Type type, Collection<?> passed, int all, Collection<String> missing) {
    if (!passed.isEmpty()) {
      found.add(
          new PassedOver(of.circuit().name(), type, passed.size(), all, List.copyOf(missing)));
    }
  }
}
