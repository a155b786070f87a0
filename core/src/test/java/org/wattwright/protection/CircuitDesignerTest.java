package org.wattwright.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.grams;
import static org.wattwright.units.Measures.joules;
import static org.wattwright.units.Measures.kiloamperes;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.microfarads;
import static org.wattwright.units.Measures.microhenries;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.milliseconds;
import static org.wattwright.units.Measures.millivolts;
import static org.wattwright.units.Measures.minutes;
import static org.wattwright.units.Measures.ohms;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;
import static org.wattwright.units.Measures.watts;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.wattwright.check.Check;
import org.wattwright.check.Checks;
import org.wattwright.check.Outcome;
import org.wattwright.conductor.Installation;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Price;

class CircuitDesignerTest {
  private static final Circuit TRACTION = CircuitParts.traction().build();

  private static DesignedCircuit one(CircuitDesigner designer) {
    CircuitDesign design = designer.run();
    assertThat(design.whyNone()).isBlank();
    return design.circuits().get(0);
  }

  private static Check check(List<Check> checks, String code) {
    return Checks.withCode(checks, code).get(0);
  }

  /**
   * By hand: from the 200 A of normal operation to the 230 A of the trip nothing opens, so that
   * cable and contactor must bear 230 A for ever: 35 mm² and K-250 are the least that do. 120 A in
   * air of 45 °C ask for a fuse of 120/(1 − 0.005·5) = 123.1 A: F-125.
   */
  @Test
  void findsTheOptimumWorkedByHand() {
    DesignedCircuit traction = one(CircuitParts.designer(List.of(TRACTION)));
    assertThat(traction).hasToString("traction: 35 mm² T, F-125, K-250");
    // 280 V over the battery's 130 mΩ and 6 m of 0.554 mΩ/m at 125 °C.
    double cableOhm = 6 * 0.554e-3 * (1 + 0.00393 * 105);
    assertThat(Kind.CURRENT.siValueOf(traction.lowestFault().orElseThrow()))
        .isCloseTo(280 / (0.130 + cableOhm), within(1e-6));
    assertThat(Kind.CURRENT.siValueOf(traction.highestFault())).isCloseTo(6720, within(1e-9));
    assertThat(traction.governing().code()).isEqualTo("fuse.continuous-current");
    assertThat(traction.governing().outcome()).isEqualTo(Outcome.FAIL);
    assertThat(traction.cover().isComplete()).isTrue();
  }

  @Test
  void saysOverHowManyCombinationsItIsProven() {
    CircuitDesign design =
        CircuitParts.designer(List.of(TRACTION, CircuitParts.heater(TRACTION).build()))
            .parallelRunsUpTo(2)
            .run();
    // 10 cables × 2 × 10 fuses × 5 contactors for the first, 10 × 2 × 10 for the second.
    assertThat(design.combinations()).isEqualTo(BigInteger.valueOf(1000 * 200));
    assertThat(design.isComplete()).isTrue();
    assertThat(design.circuit("heater")).isPresent();
    assertThat(design.circuit("nothing")).isEmpty();
    assertThat(design.checks()).anyMatch(c -> c.code().equals("fuse.selectivity"));
  }

  @Test
  void namesTheRunnerUp() {
    DesignedCircuit best = one(CircuitParts.designer(List.of(TRACTION)));
    DesignedCircuit next = best.runnerUp().orElseThrow();
    assertThat(next.toString()).isNotEqualTo(best.toString());
    assertThat(Verdict.of(next.checks())).isEqualTo(Verdict.PASSES);
    PartCost bestCost = cost(best);
    PartCost nextCost = cost(next);
    assertThat(nextCost).isGreaterThan(bestCost);
    // Without the best, the runner-up is the best.
    List<Contactor> others = new ArrayList<>(CircuitParts.contactors());
    others.removeIf(k -> k.name().equals(best.contactor().orElseThrow().name()));
    List<Fuse> fuses = new ArrayList<>(CircuitParts.fuses());
    fuses.removeIf(f -> f.name().equals(best.fuse().orElseThrow().name()));
    PartCost withoutContactor =
        cost(one(CircuitParts.designer(List.of(TRACTION)).contactors(others)));
    PartCost withoutFuse = cost(one(CircuitParts.designer(List.of(TRACTION)).fuses(fuses)));
    assertThat(nextCost).isLessThanOrEqualTo(withoutContactor).isLessThanOrEqualTo(withoutFuse);
  }

  private static PartCost cost(DesignedCircuit circuit) {
    return circuit.parts().stream()
        .map(CircuitObjective.massThenPrice()::cost)
        .reduce(PartCost.NOTHING, PartCost::plus);
  }

  @Test
  void blocksAFuseForAlternatingCurrent() {
    Fuse ac =
        Fuse.of("AC", amperes(160))
            .alternatingVoltage(volts(690))
            .breakingCapacity(amperes(20_000))
            .fullRange()
            .build();
    CircuitDesign design = CircuitParts.designer(List.of(TRACTION)).fuses(List.of(ac)).run();
    assertThat(design.blocked().orElseThrow().ruledOut()).containsEntry("fuse.voltage", 1);
    assertThat(design.circuits()).isEmpty();
    assertThat(design.isComplete()).isFalse();
    assertThat(design.whyNone()).startsWith("no parts for traction: ");
  }

  @Test
  void namesTheSmallestRelaxation() {
    Circuit circuit = CircuitParts.traction().voltageDropAtMost(volts(0.05)).build();
    BlockedCircuit blocked = CircuitParts.designer(List.of(circuit)).run().blocked().orElseThrow();
    assertThat(blocked.code()).isEqualTo("conductor.voltage-drop");
    Check nearest = blocked.smallestRelaxation().orElseThrow();
    assertThat(nearest.what()).contains("95 mm²");
    assertThat(nearest.outcome()).isEqualTo(Outcome.FAIL);
  }

  @Test
  void reportsTheGapWhereNoTripAndNoFuseAnswers() {
    Circuit noTrip =
        Circuit.of("link", CircuitRole.INTER_BAY_LINK)
            .continuousCurrent(amperes(120))
            .highestOperatingCurrent(amperes(300))
            .length(metres(3))
            .installation(Installation.freeAir(celsius(45)))
            .build();
    BlockedCircuit blocked =
        CircuitParts.designer(List.of(noTrip))
            .cables(CircuitParts.cables().subList(0, 6))
            .run()
            .blocked()
            .orElseThrow();
    assertThat(blocked.code()).isEqualTo("protection.current-cover");
    assertThat(blocked.smallestRelaxation().orElseThrow().note()).contains("no trip");
  }

  @Test
  void blocksAFuseThatCannotClearTheLowestFaultInTime() {
    CircuitSupply weak =
        CircuitSupply.of(
            "old battery",
            volts(403.2),
            FaultRange.of(
                FaultCurrent.of(volts(403.2), milliohms(60), microhenries(20)),
                FaultCurrent.of(volts(100), milliohms(400), microhenries(20))));
    Circuit circuit =
        Circuit.of("heater", CircuitRole.HEATER)
            .continuousCurrent(amperes(100))
            .length(metres(4))
            .installation(Installation.freeAir(celsius(45)))
            .build();
    CircuitDesign design =
        CircuitDesigner.fedBy(weak)
            .circuits(List.of(circuit))
            .cables(CircuitParts.cables())
            .fuses(CircuitParts.fuses())
            .run();
    BlockedCircuit blocked = design.blocked().orElseThrow();
    assertThat(blocked.code()).isIn("protection.lowest-fault", "fuse.clearing-time");
    assertThat(blocked.ruledOut()).containsKey("protection.lowest-fault");
  }

  @Test
  void ratesEveryDeviceForTheWholePackAndClearsEachSegmentToo() {
    CircuitSupply half =
        CircuitSupply.of(
            "front half",
            volts(201.6),
            FaultRange.of(
                FaultCurrent.of(volts(201.6), milliohms(20), microhenries(10)),
                FaultCurrent.of(volts(140), milliohms(65), microhenries(10))));
    Circuit link =
        Circuit.of("link", CircuitRole.INTER_BAY_LINK)
            .continuousCurrent(amperes(120))
            .length(metres(3))
            .installation(Installation.freeAir(celsius(45)))
            .segments(List.of(half))
            .withServiceDisconnect(volts(450))
            .build();
    DesignedCircuit designed = one(CircuitParts.designer(List.of(link)));
    assertThat(Kind.CURRENT.siValueOf(designed.highestFault())).isCloseTo(10_080, within(1e-6));
    assertThat(Checks.withCode(designed.checks(), "fuse.voltage"))
        .hasSize(2)
        .allMatch(c -> c.actual().orElseThrow().toString().equals("403.2 V"));
    assertThat(Checks.withCode(designed.checks(), "protection.lowest-fault").get(1).what())
        .endsWith(", front half");
    assertThat(check(designed.checks(), "protection.disconnect-voltage").outcome())
        .isEqualTo(Outcome.PASS);
    assertThat(designed.elements())
        .extracting(LineElement::type)
        .contains(LineElement.Type.DISCONNECT);
    // A fuse for half the voltage, or a disconnect, will not do.
    Circuit weak =
        Circuit.of("link", CircuitRole.INTER_BAY_LINK)
            .continuousCurrent(amperes(120))
            .length(metres(3))
            .installation(Installation.freeAir(celsius(45)))
            .withServiceDisconnect(volts(250))
            .build();
    assertThat(CircuitParts.designer(List.of(weak)).run().blocked().orElseThrow().code())
        .isEqualTo("protection.disconnect-voltage");
  }

  @Test
  void leavesABranchWithoutFuseToTheOneBeforeIt() {
    Circuit branch = CircuitParts.heater(TRACTION).withoutFuse().build();
    CircuitDesign design = CircuitParts.designer(List.of(TRACTION, branch)).run();
    DesignedCircuit tapped = design.circuit("heater").orElseThrow();
    DesignedCircuit fused =
        CircuitParts.designer(List.of(TRACTION, CircuitParts.heater(TRACTION).build()))
            .run()
            .circuit("heater")
            .orElseThrow();
    assertThat(tapped.fuse()).isEmpty();
    assertThat(tapped.protectingFuse()).isEqualTo(design.circuits().get(0).fuse());
    assertThat(check(tapped.checks(), "protection.branch-fuse").outcome())
        .isEqualTo(Outcome.CAUTION);
    // The cable must be as thick as the larger fuse asks.
    assertThat(Kind.AREA.siValueOf(tapped.cable().size().area()))
        .isGreaterThan(Kind.AREA.siValueOf(fused.cable().size().area()));
  }

  @Test
  void cautionsParallelCablesOfWhichOneMayFail() {
    DesignedCircuit pair =
        one(
            CircuitParts.designer(List.of(CircuitParts.traction().build()))
                .cables(CircuitParts.cables().subList(0, 5))
                .parallelRunsUpTo(3));
    assertThat(pair.parallelRuns()).isGreaterThan(1);
    assertThat(check(pair.checks(), "protection.parallel-run-lost").outcome())
        .isIn(Outcome.CAUTION, Outcome.PASS);
  }

  @Test
  void choosesThePrechargeResistorWithTheContactor() {
    Circuit circuit =
        CircuitParts.traction()
            .precharged()
            .loadCapacitance(microfarads(600))
            .prechargeTimes(seconds(1), seconds(3))
            .prechargeRepeats(3, minutes(1))
            .build();
    CircuitDesigner designer = CircuitParts.designer(List.of(circuit));
    assertThat(designer.run().blocked().orElseThrow().ruledOut())
        .containsKey("protection.precharge");
    DesignedCircuit found =
        one(designer.prechargeResistors(List.of(resistor(1000), resistor(220), resistor(100))));
    PrechargeResult precharge = found.precharge().orElseThrow();
    assertThat(Verdict.of(precharge.checks())).isEqualTo(Verdict.PASSES);
    assertThat(precharge.resistor().name()).isEqualTo("R-220");
    assertThat(found.parts())
        .extracting(CircuitPart::type)
        .contains(CircuitPart.Type.PRECHARGE_RESISTOR);
  }

  private static PrechargeResistor resistor(double ohm) {
    return PrechargeResistor.of("R-" + (int) ohm, ohms(ohm))
        .tolerance(0.05)
        .continuousPower(watts(50))
        .pulseEnergy(joules(ohm == 100 ? 1000 : 6000))
        .voltage(volts(1000))
        .mass(grams(ohm == 100 ? 50 : 100))
        .price(Price.of("10", "EUR"));
  }

  @Test
  void refusesToCloseOnEmptyCapacitorsWithoutPrecharge() {
    Circuit charger =
        Circuit.of("charger", CircuitRole.CHARGER)
            .continuousCurrent(amperes(20))
            .length(metres(2))
            .installation(Installation.freeAir(celsius(45)))
            .switched()
            .loadCapacitance(microfarads(40))
            .fedBackwards()
            .build();
    BlockedCircuit blocked = CircuitParts.designer(List.of(charger)).run().blocked().orElseThrow();
    assertThat(blocked.ruledOut()).containsKey("contactor.make");
    Circuit precharged =
        Circuit.of("charger", CircuitRole.CHARGER)
            .continuousCurrent(amperes(20))
            .length(metres(2))
            .installation(Installation.freeAir(celsius(45)))
            .precharged()
            .prechargeTimes(seconds(1), seconds(3))
            .prechargeRepeats(3, minutes(1))
            .loadCapacitance(microfarads(40))
            .fedBackwards()
            .build();
    DesignedCircuit found =
        one(CircuitParts.designer(List.of(precharged)).prechargeResistors(List.of(resistor(220))));
    Check backwards = check(found.checks(), "protection.fed-backwards");
    // The capacitance's usual tolerance is an estimate.
    assertThat(backwards.outcome()).isEqualTo(Outcome.CAUTION);
    assertThat(backwards.margin()).isPresent();
  }

  @Test
  void takesALimitedSourceAtItsLimit() {
    Circuit phase =
        Circuit.of("phase", CircuitRole.MOTOR_PHASE)
            .continuousCurrent(amperes(150))
            .highestOperatingCurrent(amperes(180))
            .length(metres(1))
            .installation(Installation.freeAir(celsius(60)))
            .currentLimitedTo(amperes(220), "inverter")
            .build();
    DesignedCircuit found = one(CircuitParts.designer(List.of(phase)));
    assertThat(found.fuse()).isEmpty();
    assertThat(found.lowestFault()).isEmpty();
    assertThat(found.clearingTime()).isEmpty();
    assertThat(found.cover().bands())
        .singleElement()
        .extracting(CoverBand::by)
        .isEqualTo(CoverBand.By.BORNE);
  }

  @Test
  void judgesAFuseByItsSupplyEvenIfTheDeviceLimitsItsCurrent() {
    Circuit charger =
        Circuit.of("charger", CircuitRole.CHARGER)
            .continuousCurrent(amperes(20))
            .length(metres(2))
            .installation(Installation.freeAir(celsius(45)))
            .currentLimitedTo(amperes(25), "charger")
            .build();
    DesignedCircuit found = one(CircuitParts.designer(List.of(charger)));
    assertThat(check(found.checks(), "fuse.breaking-capacity").actual().orElseThrow())
        .hasToString("6.72 kA");
    assertThat(check(found.checks(), "fuse.voltage").outcome()).isEqualTo(Outcome.PASS);
  }

  @Test
  void cautionsAFuseThatAPeakOfNormalOperationMayMelt() {
    Circuit peaky =
        Circuit.of("peaky", CircuitRole.HEATER)
            .continuousCurrent(amperes(30))
            .highestOperatingCurrent(amperes(90))
            .length(metres(2))
            .installation(Installation.freeAir(celsius(45)))
            .build();
    DesignedCircuit small =
        one(CircuitParts.designer(List.of(peaky)).fuses(List.of(CircuitParts.fuses().get(2))));
    Check caution = check(small.checks(), "protection.fuse-in-operation");
    assertThat(caution.outcome()).isEqualTo(Outcome.CAUTION);
    assertThat(caution.note()).startsWith("the fastest link melts after ");
    DesignedCircuit large =
        one(CircuitParts.designer(List.of(peaky)).fuses(List.of(CircuitParts.fuses().get(3))));
    assertThat(check(large.checks(), "protection.fuse-in-operation").outcome())
        .isEqualTo(Outcome.PASS);
  }

  @Test
  void listsCircuitsThatLackDataAndThoseBehindThem() {
    Circuit bare = Circuit.of("box", CircuitRole.AUXILIARY).build();
    Circuit behind = CircuitParts.heater(bare).build();
    CircuitDesign design = CircuitParts.designer(List.of(TRACTION, bare, behind)).run();
    assertThat(design.circuits()).hasSize(1);
    assertThat(design.open()).hasSize(2).allMatch(c -> c.outcome() == Outcome.NOT_CHECKED);
    assertThat(design.open().get(0).missing()).contains("Circuit.length of box");
    assertThat(design.open().get(1).missing()).containsExactly("design of box, which feeds heater");
    assertThat(design.isComplete()).isFalse();
    assertThat(design.isProvisional()).isFalse();
  }

  @Test
  void givesProvisionalPartsOnlyIfAskedAndOnlyWithoutCompleteOnes() {
    List<Fuse> noDerating =
        CircuitParts.fuses().stream().map(CircuitDesignerTest::withoutDerating).toList();
    CircuitDesigner designer = CircuitParts.designer(List.of(TRACTION)).fuses(noDerating);
    assertThat(designer.run().blocked().orElseThrow().code()).isEqualTo("fuse.continuous-current");
    CircuitDesign provisional = designer.allowProvisional().run();
    assertThat(provisional.isProvisional()).isTrue();
    assertThat(provisional.isComplete()).isFalse();
    assertThat(provisional.checks()).noneMatch(c -> c.outcome() == Outcome.FAIL);
    List<Fuse> mixed = new ArrayList<>(noDerating);
    mixed.add(CircuitParts.fuses().get(5));
    CircuitDesign complete = designer.fuses(mixed).allowProvisional().run();
    assertThat(complete.isProvisional()).isFalse();
    assertThat(complete.circuits().get(0).fuse().orElseThrow().name()).isEqualTo("F-160");
  }

  private static Fuse withoutDerating(Fuse fuse) {
    return Fuse.of(fuse.name(), fuse.ratedCurrent())
        .directVoltage(volts(500))
        .testTimeConstant(milliseconds(5))
        .breakingCapacity(amperes(20_000))
        .fullRange()
        .preArcingCurve(fuse.preArcingCurve().orElseThrow())
        .preArcingJouleIntegral(fuse.preArcingJouleIntegral().orElseThrow())
        .totalJouleIntegral(fuse.totalJouleIntegralAt(volts(403)).orElseThrow(), volts(500))
        .peakLetThrough(fuse.peakLetThrough().orElseThrow())
        .mass(fuse.mass().orElseThrow())
        .build();
  }

  @Test
  void followsTheObjective() {
    DesignedCircuit cheap =
        one(CircuitParts.designer(List.of(TRACTION)).smallestBy(CircuitObjective.priceThenMass()));
    DesignedCircuit light = one(CircuitParts.designer(List.of(TRACTION)));
    assertThat(cheap.parts()).hasSameSizeAs(light.parts());
    DesignedCircuit thick =
        one(
            CircuitParts.designer(List.of(TRACTION))
                .smallestBy(
                    CircuitObjective.own(
                        "least resistance",
                        part ->
                            part.type() == CircuitPart.Type.CABLE
                                ? 100 - part.mass().map(Kind.MASS::siValueOf).orElseThrow()
                                : 0)));
    assertThat(thick.cable().size().name()).isEqualTo("95 mm²");
  }

  @Test
  void givesTheSameForOtherUnits() {
    Circuit inOtherUnits =
        Circuit.of("traction", CircuitRole.TRACTION_MAIN)
            .continuousCurrent(kiloamperes(0.12))
            .highestOperatingCurrent(kiloamperes(0.2))
            .length(millimetres(3000))
            .installation(Installation.freeAir(celsius(45)))
            .voltageDropAtMost(millivolts(4000))
            .switched()
            .trip(OvercurrentTrip.at(amperes(230), milliseconds(300), "battery management"))
            .build();
    assertThat(CircuitParts.designer(List.of(inOtherUnits)).run())
        .hasToString(CircuitParts.designer(List.of(TRACTION)).run().toString());
  }

  @Test
  void showsItsWorkingAndItsPlot() {
    DesignedCircuit traction = one(CircuitParts.designer(List.of(TRACTION)));
    assertThat(traction.worksheet().step("I_min")).isPresent();
    assertThat(traction.worksheet().step("θ_c")).isPresent();
    assertThat(traction.curves())
        .extracting(CoverCurve::label)
        .containsExactly(
            "fuse F-125",
            "cable 35 mm² T",
            "closed contacts of K-250, I²t",
            "K-250 carries, by time");
    for (CoverCurve curve : traction.curves()) {
      double lastA = 0;
      for (CoverCurve.Point point : curve.points()) {
        double currentA = Kind.CURRENT.siValueOf(point.current());
        assertThat(currentA).isBetween(lastA, 6720.0 + 1e-6);
        lastA = currentA;
      }
    }
    assertThat(traction.marks())
        .extracting(CoverMark::label)
        .containsExactly(
            "highest operating current",
            "trip",
            "contactor may break",
            "lowest fault",
            "highest fault");
    assertThat(traction.elements())
        .extracting(LineElement::label)
        .containsExactly("F-125", "K-250", "35 mm² T", "traction");
    assertThat(Kind.VOLTAGE.siValueOf(traction.voltageDrop())).isCloseTo(0.4695, within(5e-5));
    assertThat(Kind.TIME.siValueOf(traction.clearingTime().orElseThrow())).isLessThan(0.02);
  }

  @Test
  void rejectsWhatMakesNoSense() {
    CircuitDesigner empty = CircuitDesigner.fedBy(CircuitParts.battery());
    assertThatThrownBy(empty::run)
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("CircuitDesigner.circuits");
    assertThatThrownBy(() -> empty.circuits(List.of(TRACTION)).run())
        .hasMessageContaining("CircuitDesigner.cables");
    assertThatThrownBy(() -> empty.circuits(List.of(TRACTION, TRACTION)))
        .hasMessageContaining("names that occur once");
    assertThatThrownBy(() -> empty.circuits(List.of(CircuitParts.heater(TRACTION).build())))
        .hasMessageContaining("each after the one that feeds it");
    assertThatThrownBy(() -> empty.parallelRunsUpTo(0))
        .hasMessageContaining("CircuitDesigner.parallelRuns");
    Fuse dollars = CircuitParts.fuses().get(0).toBuilder().price(Price.of("1", "USD")).build();
    assertThatThrownBy(() -> CircuitParts.designer(List.of(TRACTION)).fuses(List.of(dollars)).run())
        .hasMessageContaining("in EUR as the others");
    assertThatThrownBy(
            () ->
                CircuitSupply.of(
                    "x",
                    volts(200),
                    FaultRange.of(
                        FaultCurrent.of(volts(403.2), milliohms(60), microhenries(20)),
                        FaultCurrent.of(volts(280), milliohms(130), microhenries(20)))))
        .hasMessageContaining("CircuitSupply.highestVoltage");
  }
}
