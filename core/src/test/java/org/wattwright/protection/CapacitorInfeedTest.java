package org.wattwright.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;
import static org.wattwright.units.Measures.ampereSquaredSeconds;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.henries;
import static org.wattwright.units.Measures.millifarads;
import static org.wattwright.units.Measures.ohms;
import static org.wattwright.units.Measures.volts;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wattwright.check.Check;
import org.wattwright.check.Given;
import org.wattwright.check.Outcome;
import org.wattwright.units.Kind;

/** What capacitors add to the let-through of a fuse. */
class CapacitorInfeedTest {
  private static final double OWN_ALGEBRA = 1e-10;

  /** 1 mF at a voltage: 80 J at 400 V. */
  private static CapacitorDischarge capacitor(double voltageV, double ohm) {
    return CapacitorDischarge.of("inverter", millifarads(1), volts(voltageV))
        .through(ohms(ohm), henries(0));
  }

  private static Clearing clearing(FaultCurrent battery, CapacitorDischarge... capacitors) {
    return FaultParts.fuse()
        .build()
        .clearing(CombinedFault.of(battery, List.of(capacitors)), volts(400));
  }

  @Test
  void addsTheRootsOfTheJouleIntegralsAndThePeaks() {
    // 90 000 A²s of the fuse, 80 J through 0.2 Ω; (300 + 20)².
    Clearing.Cleared both = clearing(FaultParts.fault(8000), capacitor(400, 0.2)).orElseThrow();
    assertThat(Kind.JOULE_INTEGRAL.siValueOf(both.letThrough()))
        .isCloseTo(102_400, withPercentage(OWN_ALGEBRA));
    assertThat(Kind.CURRENT.siValueOf(both.peak())).isCloseTo(10_000, withPercentage(OWN_ALGEBRA));
    assertThat(Kind.TIME.siValueOf(both.time()))
        .isCloseTo(102_400 / 64e6, withPercentage(OWN_ALGEBRA));
    // A second one: (300 + 20 + 10)².
    Clearing.Cleared three =
        clearing(FaultParts.fault(8000), capacitor(400, 0.2), capacitor(400, 0.8)).orElseThrow();
    assertThat(Kind.JOULE_INTEGRAL.siValueOf(three.letThrough()))
        .isCloseTo(108_900, withPercentage(OWN_ALGEBRA));
  }

  @Test
  void withoutCapacitorsItIsTheFaultOfTheBatteryAlone() {
    assertThat(clearing(FaultParts.fault(8000)))
        .isEqualTo(FaultParts.fuse().build().clearing(FaultParts.fault(8000), volts(400)));
  }

  @Test
  void aLinkLetsNoMoreOfTheCapacitorsThroughThanItsStatedTotal() {
    // 4 F at 400 V would bring 320 kJ through 0.2 Ω; (300 + 300)².
    CapacitorDischarge large =
        CapacitorDischarge.of("large", org.wattwright.units.Measures.farads(4), volts(400))
            .through(ohms(0.2), henries(0));
    Clearing.Cleared both = clearing(FaultParts.fault(8000), large).orElseThrow();
    assertThat(Kind.JOULE_INTEGRAL.siValueOf(both.letThrough()))
        .isCloseTo(360_000, withPercentage(OWN_ALGEBRA));
    // A capacitor above every voltage for which a total is stated is not held by it.
    CapacitorDischarge high =
        CapacitorDischarge.of("high", org.wattwright.units.Measures.farads(4), volts(501))
            .through(ohms(0.2), henries(0));
    double wholeA2S = 2 * 501.0 * 501 / 0.2;
    Clearing.Cleared more = clearing(FaultParts.fault(8000), high).orElseThrow();
    assertThat(Kind.JOULE_INTEGRAL.siValueOf(more.letThrough()))
        .isCloseTo(Math.pow(300 + Math.sqrt(wholeA2S), 2), withPercentage(OWN_ALGEBRA));
  }

  @Test
  void refusesASumOfPeaksAboveTheBreakingCapacity() {
    // 8 kA and 400 V through 0.02 Ω.
    assertThat(clearing(FaultParts.fault(8000), capacitor(400, 0.02)))
        .isInstanceOf(Clearing.NotCleared.class)
        .asString()
        .contains("28 kA with capacitors", "20 kA");
    assertThat(clearing(FaultParts.fault(8000), capacitor(400, 400.0 / 12_001)))
        .isInstanceOf(Clearing.NotCleared.class);
    assertThat(clearing(FaultParts.fault(8000), capacitor(400, 400.0 / 11_999)))
        .isInstanceOf(Clearing.Cleared.class);
  }

  private static Check letThrough(FaultRange faults, double withstandA2S) {
    FuseDuty duty =
        FuseDuty.of(faults)
            .highestVoltage(volts(403))
            .continuousCurrent(amperes(60))
            .air(celsius(60))
            .withstand(Given.measured(ampereSquaredSeconds(withstandA2S), "test"))
            .build();
    return FaultParts.fuse().build().checks(duty).stream()
        .filter(check -> check.code().equals("fuse.let-through"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void countsInTheLetThroughOfTheChecks() {
    FaultRange alone = FaultRange.of(FaultParts.fault(8000), FaultParts.fault(8000));
    FaultRange fed = alone.withCapacitors(List.of(capacitor(400, 0.2)));
    assertThat(letThrough(alone, 102_000).outcome()).isEqualTo(Outcome.PASS);
    assertThat(letThrough(fed, 102_000).outcome()).isEqualTo(Outcome.FAIL);
    assertThat(letThrough(fed, 130_000).outcome()).isEqualTo(Outcome.PASS);
    FaultRange above = alone.withCapacitors(List.of(capacitor(400, 0.02)));
    assertThat(letThrough(above, 1e9).outcome()).isEqualTo(Outcome.FAIL);
  }

  @Test
  void theDesignerTakesMoreCableAndContactorForCapacitorsAtTheBattery() {
    Circuit traction = CircuitParts.traction().build();
    CircuitSupply fed =
        CircuitSupply.of(
            "battery",
            volts(403.2),
            CircuitParts.battery().faults().withCapacitors(List.of(capacitor(403.2, 0.05))));
    DesignedCircuit without = one(CircuitParts.designer(List.of(traction)));
    DesignedCircuit with =
        one(
            CircuitDesigner.fedBy(fed)
                .circuits(List.of(traction))
                .cables(CircuitParts.cables())
                .fuses(CircuitParts.fuses())
                .contactors(CircuitParts.contactors()));
    double wholeA2S = 0.5e-3 * 403.2 * 403.2 / 0.05;
    double aloneA2S = integralA2S(without);
    assertThat(with.fuse()).isEqualTo(without.fuse());
    assertThat(integralA2S(with))
        .isCloseTo(
            Math.pow(Math.sqrt(aloneA2S) + Math.sqrt(wholeA2S), 2), withPercentage(OWN_ALGEBRA));
    assertThat(peakA(with)).isGreaterThan(peakA(without) + 8000);
    assertThat(Verdict.of(with.checks())).isEqualTo(Verdict.PASSES);
  }

  private static DesignedCircuit one(CircuitDesigner designer) {
    CircuitDesign design = designer.run();
    assertThat(design.whyNone()).isBlank();
    return design.circuits().get(0);
  }

  private static double integralA2S(DesignedCircuit circuit) {
    return figureSi(circuit, "contactor.withstand", Kind.JOULE_INTEGRAL);
  }

  private static double peakA(DesignedCircuit circuit) {
    return figureSi(circuit, "contactor.withstand-peak", Kind.CURRENT);
  }

  private static <Q extends javax.measure.Quantity<Q>> double figureSi(
      DesignedCircuit circuit, String code, Kind<Q> kind) {
    return circuit.checks().stream()
        .filter(check -> check.code().equals(code))
        .findFirst()
        .flatMap(Check::actual)
        .map(figure -> kind.siValueOf(figure.quantity(kind)))
        .orElseThrow();
  }
}
