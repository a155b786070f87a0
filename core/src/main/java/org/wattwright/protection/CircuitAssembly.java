package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.CautionBand;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Figure;
import org.wattwright.check.Given;
import org.wattwright.check.Source;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/**
 * The parts of one circuit put together behind the circuits nearer to the source: every check of
 * every rule, each by the rule's own class.
 *
 * @param fuseInCharge its own fuse or that of a circuit nearer to the source
 * @param nearerOhm most resistance of the circuits nearer to the source
 * @param selectivity verdicts on its own fuse and the next one nearer to the source
 */
record CircuitAssembly(
    CircuitCase of,
    PartStage stage,
    CableCase cable,
    @Nullable FuseCase fuseInCharge,
    @Nullable SwitchCase contactor,
    double nearerOhm,
    List<Check> selectivity) {
  private static final Source PRACTICE =
      Source.commonPractice("a fault must be cleared before insulation suffers");

  private Circuit circuit() {
    return of.circuit();
  }

  CoverRules rules() {
    return of.rules(cable, fuseInCharge, contactor);
  }

  private Basis faultBasis() {
    Basis basis = cable.withstand().basis();
    for (CircuitSupply supply : of.supplies()) {
      basis = basis.and(supply.faults().basis());
    }
    return basis;
  }

  CurrentCover cover() {
    return CurrentCover.of(
            circuit().name(), of.numbers().operatingA(), of.numbers().highestA(), rules())
        .restingOn(faultBasis());
  }

  double neededA() {
    return of.neededA(rules(), fuseInCharge, contactor);
  }

  FaultCurrent lowestFault(CircuitSupply supply) {
    return of.lowestFault(supply, nearerOhm + cable.loopOhm());
  }

  /**
   * Lowest fault at its far end; of several supplies the lowest; empty if the source is limited.
   */
  Optional<Double> lowestFaultA() {
    return of.supplies().stream()
        .map(supply -> lowestFault(supply).prospectiveA())
        .min(Double::compare);
  }

  double clearingS(double currentA) {
    return of.kernel().clearingS(currentA, rules(), CircuitCase.lineOf(fuseInCharge));
  }

  /** Every check; where the cable fails by itself, only those of the parts. */
  List<Check> checks() {
    List<Check> checks = new ArrayList<>(cable.line().checks());
    cable.lostRun().ifPresent(checks::add);
    checks.addAll(contactor == null ? TripChecks.of(circuit()) : contactor.checks());
    if (!cable.passes() && !cable.isProvisional()) {
      return checks;
    }
    checks.addAll(of.madeWithoutPrecharge(cable, contactor));
    checks.addAll(of.fedBackwards(cable, fuseInCharge, contactor));
    addFuse(checks);
    checks.add(cover().check());
    for (CircuitSupply supply : of.supplies()) {
      checks.add(of.in(supply, lowestFaultCheck(supply)));
    }
    checks.addAll(selectivity);
    checks.addAll(whateverTheParts(circuit(), of.numbers().highestV()));
    return checks;
  }

  /** What holds or fails whatever the parts are: service disconnect and bleed resistor. */
  static List<Check> whateverTheParts(Circuit circuit, double highestV) {
    List<Check> checks = new ArrayList<>(disconnect(circuit, highestV));
    circuit
        .bus()
        .discharge(Kind.VOLTAGE.ofSi(highestV))
        .ifPresent(bus -> checks.add(bus.check(DischargeRule.BLEED)));
    return checks;
  }

  private static List<Check> disconnect(Circuit circuit, double highestV) {
    return circuit
        .serviceDisconnectVoltage()
        .map(
            rated ->
                Check.named(
                        "protection.disconnect-voltage",
                        "service disconnect of " + circuit.name() + " against the whole voltage")
                    .source(Source.commonPractice("whichever opens first sees the whole pack"))
                    .safety()
                    .cautionBand(CautionBand.NONE)
                    .atLeast(Figure.of(rated, VOLT), Figure.ofSi(highestV, VOLT)))
        .stream()
        .toList();
  }

  private void addFuse(List<Check> checks) {
    FuseCase fuse = fuseInCharge;
    if (fuse == null) {
      return;
    }
    if (contactor != null) {
      checks.addAll(of.letThrough(fuse, contactor));
      addFuseFirst(checks, fuse, contactor);
    }
    if (!circuit().isFused()) {
      checks.add(
          Check.named("protection.branch-fuse", "fuse where " + circuit().name() + " is tapped off")
              .source(Source.commonPractice("each branch has its own fuse"))
              .safety()
              .note("protected by " + fuse.fuse().name() + " nearer to the source")
              .recommends(false));
      return;
    }
    inOperation(fuse.fuse()).ifPresent(checks::add);
    for (CircuitSupply supply : of.supplies()) {
      for (Check check : fuse.fuse().checks(duty(fuse, supply))) {
        checks.add(of.in(supply, check));
      }
    }
  }

  /** Without a profile only the curve can say whether a peak of normal operation melts the link. */
  private Optional<Check> inOperation(Fuse fuse) {
    Quantity<ElectricCurrent> peak = Kind.CURRENT.ofSi(of.numbers().operatingA());
    if (circuit().profile().isPresent() || of.numbers().operatingA() <= circuit().continuousA()) {
      return Optional.empty();
    }
    return fuse.preArcingCurve()
        .map(
            curve ->
                Check.named(
                        "protection.fuse-in-operation",
                        "fuse of " + circuit().name() + " at the highest operating current")
                    .source(Source.commonPractice("a fuse does not melt in normal operation"))
                    .note(
                        curve
                            .fastestTimeAt(peak)
                            .map(t -> "the fastest link melts after " + format(t))
                            .orElse("below the fastest curve, or beyond its end"))
                    .recommends(of.numbers().operatingA() * curve.band() < curve.firstA()));
  }

  private static String format(Quantity<Time> time) {
    return Measures.format(time, Kind.TIME);
  }

  /** The faults that the fuse must clear: from the lowest, or from where the trip leaves off. */
  private FuseDuty duty(FuseCase fuse, CircuitSupply supply) {
    FaultCurrent highest = supply.faults().highest().orElseThrow();
    FaultCurrent lowest = lowestFault(supply);
    FuseLine line = fuse.line();
    double fromA = line == null ? 0 : clearedByFuseFromA(line);
    if (fromA > lowest.prospectiveA() && fromA <= highest.prospectiveA()) {
      lowest = highest.limitedTo(fromA);
    }
    FaultRange faults = supply.between(highest, lowest);
    FuseDuty.Builder duty =
        stage
            .duty(faults)
            .clearWithin(circuit().faultClearedWithin())
            .withstand(
                new Given<>(
                    cable.withstand().jouleIntegral(),
                    cable.withstand().basis(),
                    CableWithstand.SOURCE));
    if (line != null && of.isCovered(rules())) {
      // Whatever the fuse leaves, the cover has found another device or a cable that bears it.
      duty.otherDeviceUpTo(Kind.CURRENT.ofSi(Math.max(1, line.minimumBreakingA())));
    }
    return duty.build();
  }

  private double clearedByFuseFromA(FuseLine line) {
    CurrentRanges cleared =
        line.clearing()
            .atMost(of.numbers().clearingS() - of.numbers().riseS())
            .and(CoverRules.all(rules().fuse()));
    double fromA = cleared.startOfTail(of.numbers().highestA());
    return Double.isInfinite(fromA) ? 0 : fromA * (1 + 1e-12);
  }

  private void addFuseFirst(List<Check> checks, FuseCase fuse, SwitchCase switchCase) {
    OvercurrentTrip trip = circuit().quickestTrip();
    for (CircuitSupply supply : of.supplies()) {
      FaultCurrent highest = supply.faults().highest().orElseThrow();
      if (trip != null && fuse.clearing(highest) instanceof Clearing.Cleared cleared) {
        BreakRating fault =
            BreakRating.forward(highest.prospective(), Kind.VOLTAGE.ofSi(of.numbers().highestV()));
        checks.add(
            of.in(
                supply,
                switchCase.contactor().checks().fuseFirst(fault, cleared.time(), trip.delay())));
      }
    }
  }

  private Check lowestFaultCheck(CircuitSupply supply) {
    FaultCurrent lowest = lowestFault(supply);
    double neededA = neededA();
    CheckBuilder check =
        Check.named(
                "protection.lowest-fault",
                "lowest fault of "
                    + circuit().name()
                    + " against that cleared within "
                    + circuit().faultClearedWithin())
            .source(PRACTICE)
            .basis(lowest.basis())
            .estimated(lowest.estimates().toArray(String[]::new))
            .safety();
    Figure actual = Figure.of(lowest.prospective(), AMPERE);
    return Double.isInfinite(neededA)
        ? check.note("no fault is cleared that quickly").holds(false)
        : check.atLeast(actual, Figure.ofSi(neededA, AMPERE));
  }
}
