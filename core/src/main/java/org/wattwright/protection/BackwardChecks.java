package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.AMPERE_SQUARED_SECOND;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.units.Kind;

/**
 * The capacitors at the far end of a circuit emptied backwards: into a fault in its cable, which is
 * worst at the far end; and into one at its near end, past contactor and fuse. No fuse limits them:
 * the fault may lie in front of it.
 */
final class BackwardChecks {
  private static final String BACKWARDS = "fed backwards";

  private final Circuit circuit;
  private final CapacitorInfeed nearEnd;
  private final CapacitorInfeed farEnd;
  private final String[] estimates;

  BackwardChecks(Circuit circuit, List<LoadCapacitors> behind, CableCase cable) {
    this.circuit = circuit;
    this.estimates =
        behind.stream()
            .map(LoadCapacitors::circuit)
            .filter(each -> each.bus().tolerance().basis() == Basis.ESTIMATED)
            .map(each -> "capacitanceTolerance of " + each.name())
            .toArray(String[]::new);
    this.nearEnd = CapacitorInfeed.of(behind.stream().map(each -> each.through(cable)).toList());
    this.farEnd = CapacitorInfeed.of(behind.stream().map(each -> each.atFarEnd(cable)).toList());
  }

  List<Check> of(CableCase cable, @Nullable Fuse fuse, @Nullable SwitchCase switchCase) {
    List<Check> checks = new ArrayList<>(List.of(cable(cable)));
    if (switchCase != null) {
      ContactorChecks contactor = switchCase.contactor().checks();
      checks.add(contactor.withstand(Kind.JOULE_INTEGRAL.ofSi(nearEnd.jouleA2S())).in(BACKWARDS));
      checks.add(contactor.withstandPeak(Kind.CURRENT.ofSi(nearEnd.peakA())).in(BACKWARDS));
    }
    if (fuse != null && fuse.data().breakingCapacityA() != null) {
      checks.add(fuse(fuse, fuse.data().breakingCapacityA()));
    }
    return checks;
  }

  private Check cable(CableCase cable) {
    return Check.named(
            "protection.fed-backwards",
            "capacitors of " + circuit.name() + " emptied into a fault on its cable")
        .source(CableWithstand.SOURCE)
        .basis(cable.withstand().basis())
        .estimated(estimates)
        .safety()
        .atMost(
            Figure.ofSi(farEnd.jouleA2S(), AMPERE_SQUARED_SECOND),
            Figure.ofSi(cable.withstand().withstandA2S(), AMPERE_SQUARED_SECOND));
  }

  private Check fuse(Fuse fuse, double capacityA) {
    return Check.named(
            "protection.fed-backwards-breaking",
            "peak of the capacitors of "
                + circuit.name()
                + " backwards against breaking capacity of "
                + fuse.name())
        .source(Source.standard("IEC 60269-1", "ratings of fuse-links"))
        .basis(fuse.basis())
        .estimated(estimates)
        .safety()
        .atMost(Figure.ofSi(nearEnd.peakA(), AMPERE), Figure.ofSi(capacityA, AMPERE));
  }
}
