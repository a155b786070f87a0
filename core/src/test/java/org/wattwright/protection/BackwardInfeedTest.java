package org.wattwright.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;
import static org.wattwright.units.Measures.ampereSquaredSeconds;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.microfarads;
import static org.wattwright.units.Measures.microhenries;
import static org.wattwright.units.Measures.milliohms;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wattwright.check.Check;
import org.wattwright.check.Outcome;
import org.wattwright.conductor.Installation;
import org.wattwright.units.Kind;

/** Capacitors at the far end of a circuit, fed backwards into faults on it and on others. */
class BackwardInfeedTest {
  private static final double OWN_ALGEBRA = 1e-9;

  /**
   * Way out and back of 2 m of 95 mm²: 0.206 Ω/km at 20 °C (IEC 60228, class 5), at −20 °C by
   * 0.00393 a kelvin, a tenth below the standard's limit.
   */
  private static final double LEAST_OHM = 4 * 0.206e-3 * (1 - 40 * 0.00393) * 0.9;

  /** The smallest of D/d over the catalogue is 1.414…, of 2.5 mm² it is 2. */
  private static final double LEAST_HENRY = 2 * 4e-7 * arcosh(leastRatio());

  private static double arcosh(double x) {
    return Math.log(x + Math.sqrt(x * x - 1));
  }

  private static double leastRatio() {
    return CircuitParts.cables().stream()
        .mapToDouble(
            cable ->
                Kind.LENGTH.siValueOf(cable.outerDiameter().orElseThrow())
                    / Kind.LENGTH.siValueOf(cable.conductorDiameter().orElseThrow()))
        .min()
        .orElseThrow();
  }

  private static CircuitBuilder charger() {
    return Circuit.of("charger", CircuitRole.CHARGER)
        .continuousCurrent(amperes(20))
        .length(metres(2))
        .installation(Installation.freeAir(celsius(45)))
        .loadCapacitance(microfarads(100))
        .loadCapacitanceTolerance(0)
        .fedBackwards();
  }

  private static CircuitBuilder main() {
    return Circuit.of("traction", CircuitRole.TRACTION_MAIN)
        .continuousCurrent(amperes(60))
        .length(metres(3))
        .installation(Installation.freeAir(celsius(45)));
  }

  private static CircuitBuilder heater() {
    return Circuit.of("heater", CircuitRole.HEATER)
        .continuousCurrent(amperes(15))
        .length(metres(2))
        .installation(Installation.freeAir(celsius(60)));
  }

  private static CircuitCase of(List<Circuit> circuits, int index) {
    return CircuitParts.designer(circuits).prepared().tree().cases().get(index);
  }

  private static List<CapacitorDischarge> infeed(List<Circuit> circuits, int index) {
    return of(circuits, index).supplies().get(0).faults().capacitors();
  }

  private static double si(CapacitorDischarge discharge) {
    return Kind.JOULE_INTEGRAL.siValueOf(discharge.jouleIntegral());
  }

  @Test
  void aCircuitBesideIsFedThroughTheLeastCable() {
    List<Circuit> circuits = List.of(charger().build(), heater().build());
    assertThat(infeed(circuits, 0)).isEmpty();
    CapacitorDischarge into = infeed(circuits, 1).get(0);
    assertThat(si(into)).isCloseTo(0.5e-4 * 403.2 * 403.2 / LEAST_OHM, withPercentage(0.05));
    double peakA =
        new SeriesDamping(403.2, LEAST_OHM, LEAST_HENRY, 1e-4)
            .currentA(new SeriesDamping(403.2, LEAST_OHM, LEAST_HENRY, 1e-4).peakS());
    assertThat(Kind.CURRENT.siValueOf(into.peak())).isCloseTo(peakA, withPercentage(0.05));
    assertThat(of(circuits, 1).numbers().highestA())
        .isCloseTo(403.2 / 0.06 + peakA, withPercentage(0.05));
    // Two runs: half of each.
    CapacitorDischarge two =
        CircuitParts.designer(circuits)
            .parallelRunsUpTo(2)
            .prepared()
            .tree()
            .cases()
            .get(1)
            .supplies()
            .get(0)
            .faults()
            .capacitors()
            .get(0);
    assertThat(si(two)).isCloseTo(2 * si(into), withPercentage(OWN_ALGEBRA));
    assertThat(Kind.TIME.siValueOf(two.timeOfPeak()))
        .isCloseTo(Kind.TIME.siValueOf(into.timeOfPeak()) / Math.sqrt(2), withPercentage(1));
  }

  @Test
  void withoutTheMarkNothingIsFedBackwards() {
    Circuit blocked =
        Circuit.of("charger", CircuitRole.CHARGER)
            .continuousCurrent(amperes(20))
            .length(metres(2))
            .installation(Installation.freeAir(celsius(45)))
            .loadCapacitance(microfarads(100))
            .loadCapacitanceTolerance(0)
            .build();
    assertThat(infeed(List.of(blocked, heater().build()), 1)).isEmpty();
    assertThat(of(List.of(blocked, heater().build()), 0).numbers().behind()).isEmpty();
  }

  @Test
  void aCircuitBehindIsFedByWhatStandsAtItsBeginning() {
    Circuit main =
        main().loadCapacitance(microfarads(600)).loadCapacitanceTolerance(0).fedBackwards().build();
    Circuit branch = heater().fedFrom(main).build();
    CircuitDesign unknown = CircuitParts.designer(List.of(main, branch)).run();
    assertThat(unknown.isComplete()).isFalse();
    assertThat(unknown.open())
        .hasSize(2)
        .extracting(Check::code)
        .containsOnly("protection.capacitor-infeed");
    assertThat(unknown.open())
        .first()
        .satisfies(check -> assertThat(check.note()).endsWith("stand where traction ends"));
    assertThat(unknown.open())
        .last()
        .satisfies(check -> assertThat(check.note()).endsWith("stand where heater begins"))
        .satisfies(check -> assertThat(check.isSafety()).isTrue())
        .satisfies(check -> assertThat(check.outcome()).isEqualTo(Outcome.NOT_CHECKED))
        .satisfies(
            check ->
                assertThat(check.missing())
                    .containsExactly("Circuit.capacitorResistance of traction"));
    Circuit known =
        main()
            .loadCapacitance(microfarads(600))
            .loadCapacitanceTolerance(0)
            .fedBackwards(milliohms(80), microhenries(1))
            .build();
    List<Circuit> circuits = List.of(known, heater().fedFrom(known).build());
    CapacitorDischarge into = infeed(circuits, 1).get(0);
    // 0.6 mF and 403.2 V through 80 mΩ.
    assertThat(si(into)).isCloseTo(0.3e-3 * 403.2 * 403.2 / 0.08, withPercentage(OWN_ALGEBRA));
    assertThat(infeed(circuits, 0)).isEmpty();
    CircuitDesign design = CircuitParts.designer(circuits).run();
    assertThat(design.whyNone()).isBlank();
    assertThat(design.isComplete()).isTrue();
  }

  @Test
  void theNearestToTheSourceCountsForAllBehindIt() {
    Circuit main =
        main()
            .loadCapacitance(microfarads(600))
            .loadCapacitanceTolerance(0)
            .fedBackwards(milliohms(80), microhenries(1))
            .build();
    Circuit behind = charger().fedFrom(main).build();
    Circuit beside = heater().fedFrom(main).build();
    List<Circuit> circuits = List.of(main, behind, beside);
    assertThat(infeed(circuits, 2))
        .extracting(CapacitorDischarge::name)
        .containsExactly("traction");
    assertThat(infeed(circuits, 1))
        .extracting(CapacitorDischarge::name)
        .containsExactly("traction");
    assertThat(of(circuits, 0).numbers().behind())
        .extracting(each -> each.circuit().name())
        .containsExactly("traction");
    assertThat(of(circuits, 1).numbers().behind())
        .extracting(each -> each.circuit().name())
        .containsExactly("charger");
    // Where the main states none, those behind it feed it backwards.
    Circuit bare = main().build();
    List<Circuit> other = List.of(bare, charger().fedFrom(bare).build());
    assertThat(of(other, 0).numbers().behind())
        .extracting(each -> each.circuit().name())
        .containsExactly("charger");
  }

  @Test
  void anotherSupplyIsNotFed() {
    Circuit low =
        heater()
            .suppliedBy(
                CircuitSupply.of(
                    "low",
                    org.wattwright.units.Measures.volts(16),
                    FaultRange.of(FaultParts.fault(14, 0.01, 0), FaultParts.fault(12, 0.02, 0))))
            .build();
    assertThat(infeed(List.of(charger().build(), low), 1)).isEmpty();
    // Nor does it feed back into another one.
    Circuit bare = main().build();
    Circuit behind = charger().fedFrom(bare).suppliedBy(low.supply().orElseThrow()).build();
    assertThat(of(List.of(bare, behind), 0).numbers().behind()).isEmpty();
  }

  private static List<Check> backwards(Contactor contactor, Fuse fuse) {
    Circuit circuit = charger().switched().build();
    CircuitCase of = of(List.of(circuit), 0);
    CableCase cable =
        of.cables().stream()
            .filter(each -> each.label().startsWith("25 mm²"))
            .findFirst()
            .orElseThrow();
    return of.fedBackwards(
        cable,
        new FuseCase(fuse, 403.2, List.of(), List.of()),
        new SwitchCase(contactor, null, List.of(), 403.2));
  }

  /** ½·C·U² grows with the capacitance; both usual bounds of ±20 % are an estimate. */
  @Test
  void countsTheUpperToleranceOfTheCapacitors() {
    Circuit stated = charger().loadCapacitanceTolerance(0.1).build();
    Circuit usual =
        Circuit.of("usual", CircuitRole.CHARGER).loadCapacitance(microfarads(100)).build();
    assertThat(stated.bus().highestF()).isCloseTo(1.1e-4, withPercentage(1e-9));
    assertThat(usual.bus().highestF()).isCloseTo(1.2e-4, withPercentage(1e-9));
  }

  @Test
  void cableContactorAndFuseBearTheDischarge() {
    Fuse fuse = CircuitParts.fuse("F-32", 32, 1);
    List<Check> checks = backwards(CircuitParts.contactor("K", 50), fuse);
    // 4 m of 0.78 Ω/km (IEC 60228, class 5, 25 mm²).
    double ohm = 4 * 0.78e-3 * (1 - 40 * 0.00393) * 0.9;
    double a2s = 0.5e-4 * 403.2 * 403.2 / ohm;
    double henry = 2 * 4e-7 * arcosh(10.2 / 6.7);
    SeriesDamping damping = new SeriesDamping(403.2, ohm, henry, 1e-4);
    double peakA = damping.currentA(damping.peakS());
    assertThat(checks)
        .extracting(Check::code)
        .containsExactly(
            "protection.fed-backwards",
            "contactor.withstand",
            "contactor.withstand-peak",
            "protection.fed-backwards-breaking");
    assertThat(actual(checks, 0)).isCloseTo(a2s, withPercentage(0.05));
    assertThat(actual(checks, 1)).isCloseTo(a2s, withPercentage(0.05));
    assertThat(actual(checks, 2)).isCloseTo(peakA, withPercentage(0.05));
    assertThat(actual(checks, 3)).isCloseTo(peakA, withPercentage(0.05));
    // A weak contactor and a weak fuse do not.
    Contactor weak =
        Contactor.of("weak", org.wattwright.units.Measures.volts(450))
            .withstand(ampereSquaredSeconds(a2s / 1.01))
            .peakWithstand(amperes(peakA / 1.01))
            .build();
    Fuse small = fuse.toBuilder().breakingCapacity(amperes(peakA / 1.01)).build();
    assertThat(backwards(weak, small).subList(1, 4))
        .allSatisfy(check -> assertThat(check.outcome()).isEqualTo(Outcome.FAIL));
  }

  /** A cable of 2.5 mm² behind the main's fuse, at whose beginning 0.6 mF stand. */
  @Test
  void aBranchWithoutAFuseBearsCapacitorsThatNoFuseLimits() {
    Circuit main =
        main()
            .loadCapacitance(microfarads(600))
            .loadCapacitanceTolerance(0)
            .fedBackwards(milliohms(80), microhenries(1))
            .build();
    List<Circuit> circuits = List.of(main, heater().fedFrom(main).withoutFuse().build());
    CircuitCase of = of(circuits, 1);
    Fuse fuse = CircuitParts.fuse("F-80", 80, 1);
    FuseCase inCharge = new FuseCase(fuse, 403.2, List.of(), List.of());
    CableCase cable = of.cables().get(0);
    List<Check> checks = of.fedBackwards(cable, inCharge, null);
    assertThat(checks).extracting(Check::code).containsExactly("protection.unfused-infeed");
    // The slowest link bears most where it takes 5 s; its curve is straight on log-log paper.
    double band = 1.1 * 1.05;
    double slope = Math.log(60.0 / 1) / Math.log(200.0 / 400);
    double fiveA = 200 * band * Math.pow(5 / 60.0, 1 / slope);
    double fuseA2S = 5 * fiveA * fiveA;
    double capacitorsA2S = 0.3e-3 * 403.2 * 403.2 / 0.08;
    assertThat(actual(checks, 0))
        .isCloseTo(
            Math.pow(Math.sqrt(fuseA2S) + Math.sqrt(capacitorsA2S), 2),
            withPercentage(OWN_ALGEBRA));
    assertThat(
            Kind.JOULE_INTEGRAL.siValueOf(
                checks.get(0).limit().orElseThrow().quantity(Kind.JOULE_INTEGRAL)))
        .isEqualTo(cable.withstand().withstandA2S());
    Circuit fused = heater().fedFrom(main).build();
    assertThat(of(List.of(main, fused), 1).fedBackwards(cable, inCharge, null)).isEmpty();
  }

  @Test
  void theCableIsWorstAtItsFarEndIfTheWayOfTheCapacitorsIsKnown() {
    Circuit circuit = charger().fedBackwards(milliohms(5), microhenries(0.1)).build();
    CircuitCase of = of(List.of(circuit), 0);
    for (CableCase cable : of.cables().stream().filter(CableCase::passes).toList()) {
      double a2s = actual(of.fedBackwards(cable, null, null), 0);
      assertThat(a2s).isCloseTo(0.5e-4 * 403.2 * 403.2 / 0.005, withPercentage(OWN_ALGEBRA));
    }
    // Behind another one, through its own cable besides.
    Circuit bare = main().build();
    CircuitCase before =
        of(
            List.of(
                bare,
                charger().fedFrom(bare).fedBackwards(milliohms(5), microhenries(0.1)).build()),
            0);
    double a2s = actual(before.fedBackwards(before.cables().get(9), null, null), 0);
    assertThat(a2s).isCloseTo(0.5e-4 * 403.2 * 403.2 / (0.005 + LEAST_OHM), withPercentage(0.05));
    // Past the contactor of the first one, through its cable too: 6 m of 0.206 Ω/km.
    List<Check> past =
        before.fedBackwards(
            before.cables().get(9),
            null,
            new SwitchCase(CircuitParts.contactor("K", 50), null, List.of(), 403.2));
    double ohm = 0.005 + 2.5 * LEAST_OHM;
    double henry = 0.1e-6 + LEAST_HENRY + 3 * 4e-7 * arcosh(18.5 / 13);
    SeriesDamping damping = new SeriesDamping(403.2, ohm, henry, 1e-4);
    assertThat(actual(past, 1)).isCloseTo(0.5e-4 * 403.2 * 403.2 / ohm, withPercentage(0.05));
    assertThat(actual(past, 2)).isCloseTo(damping.currentA(damping.peakS()), withPercentage(0.05));
  }

  private static double actual(List<Check> checks, int index) {
    Kind<?> kind = index < 2 ? Kind.JOULE_INTEGRAL : Kind.CURRENT;
    return si(checks.get(index), kind);
  }

  private static <Q extends javax.measure.Quantity<Q>> double si(Check check, Kind<Q> kind) {
    return kind.siValueOf(check.actual().orElseThrow().quantity(kind));
  }
}
