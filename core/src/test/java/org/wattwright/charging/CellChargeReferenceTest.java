package org.wattwright.charging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kilometresPerHour;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.minutes;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;
import static org.wattwright.units.Measures.wattHoursPerKilometre;
import static org.wattwright.units.Measures.watts;

import java.util.EnumSet;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.battery.Pack;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.ReferenceRows;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/** Charge and low-voltage loads: the values kept with cells and packs. */
class CellChargeReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("charging.cells");

  private static final ReferenceRows CHARGE = ReferenceRows.read("/charging/charge.csv");
  private static final ReferenceRows LOADS = ReferenceRows.read("/charging/low-voltage-loads.csv");

  private static Pack pack() {
    return TestParts.linear(345, 55, 0.15, 100);
  }

  private static ChargeSimulation exampleG() {
    return ChargeSimulation.of(pack())
        .station(TestParts.bench(50))
        .voltageAtMost(volts(396))
        .endCurrent(amperes(5))
        .from(percentCharge(20))
        .temperature(celsius(25));
  }

  @Test
  void constantCurrentThenConstantVoltage() {
    ChargeResult charge = exampleG().run();
    List<ChargePhase> phases = charge.phases();
    VALIDATION.computed(CHARGE.row("CHG-001"), phases.get(0).to().fraction());
    VALIDATION.computed(CHARGE.row("CHG-002"), phases.get(0).duration(), Kind.TIME);
    VALIDATION.computed(
        CHARGE.row("CHG-003"), Kind.TIME.siValueOf(phases.get(1).duration()) / Math.log(10));
    VALIDATION.computed(CHARGE.row("CHG-004"), phases.get(1).duration(), Kind.TIME);
    VALIDATION.computed(CHARGE.row("CHG-005"), charge.end().fraction());
    VALIDATION.computed(CHARGE.row("CHG-006"), charge.packEnergy(), Kind.ENERGY);
    VALIDATION.computed(CHARGE.row("CHG-007"), charge.packLoss(), Kind.ENERGY);
    VALIDATION.computed(CHARGE.row("CHG-008"), charge.wallEnergy().orElseThrow(), Kind.ENERGY);
    assertThat(charge.endedBy()).isEqualTo(ChargeEnd.END_CURRENT);
  }

  @Test
  void currentInTheTaper() {
    double constantS = Kind.TIME.siValueOf(exampleG().run().phases().get(0).duration());
    ChargeResult charge = exampleG().atMost(seconds(constantS + 60)).run();
    assertThat(charge.endedBy()).isEqualTo(ChargeEnd.TIME);
    List<ChargeMoment> curve = charge.curve();
    VALIDATION.computed(CHARGE.row("CHG-009"), curve.get(curve.size() - 1).current(), Kind.CURRENT);
  }

  @Test
  void startInTheTaper() {
    ChargeResult charge = exampleG().from(percentCharge(85)).run();
    VALIDATION.computed(CHARGE.row("CHG-010"), charge.curve().get(0).current(), Kind.CURRENT);
    assertThat(charge.phases()).hasSize(1);
  }

  private static ChargeResult constantPower() {
    return ChargeSimulation.of(pack())
        .station(TestParts.bench(1e6))
        .powerAtMost(kilowatts(6.6))
        .voltageAtMost(volts(500))
        .from(percentCharge(20))
        .to(percentCharge(80))
        .temperature(celsius(25))
        .run();
  }

  @Test
  void constantPowerFromTheMains() {
    VALIDATION.computed(CHARGE.row("CHG-011"), constantPower().time(), Kind.TIME);
    VALIDATION.computed(
        CHARGE.row("CHG-012"), constantPower().wallEnergy().orElseThrow(), Kind.ENERGY);
  }

  @Test
  void rangeGainedPerHour() {
    ChargeResult charge =
        ChargeSimulation.of(TestParts.linear(350, 1e-9, 1e-9, 80))
            .station(TestParts.bench(1e6))
            .powerAtMost(kilowatts(3))
            .from(percentCharge(20))
            .to(percentCharge(80))
            .temperature(celsius(25))
            .run();
    VALIDATION.computed(
        CHARGE.row("CHG-014"),
        charge.distanceGainedPerTime(wattHoursPerKilometre(160)),
        Kind.SPEED);
  }

  @Test
  void whatTheLibraryDoesNotWorkOut() {
    VALIDATION.notCovered(
        CHARGE.row("CHG-013"), "a product of efficiencies told; here they are worked out");
    VALIDATION.notCovered(CHARGE.row("CHG-015"), "share of a fleet; each charge is worked out");
    VALIDATION.notCovered(CHARGE.row("CHG-016"), "share of a fleet; each charge is worked out");
    IntStream.rangeClosed(13, 22)
        .mapToObj(i -> "AUX-0" + i)
        .forEach(
            id ->
                VALIDATION.notCovered(
                    LOADS.row(id),
                    "a second table, from memory; the one that was seen is carried"));
    VALIDATION.notCovered(LOADS.row("AUX-024"), "an average of a fleet; a budget is added up");
    for (String id : List.of("AUX-031", "AUX-032", "AUX-033")) {
      VALIDATION.notCovered(LOADS.row(id), "nothing is cranked in an electric vehicle");
    }
  }

  static Stream<ReferenceRow> typicalLoads() {
    return LOADS.quantity("typical current");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("typicalLoads")
  void typicalCurrent(ReferenceRow row) {
    TypicalLoad load =
        EnumSet.allOf(TypicalLoad.class).stream()
            .filter(each -> each.toString().equals(row.given("load")))
            .findFirst()
            .orElseThrow();
    VALIDATION.transcribed(row, load.current().typical(), Kind.CURRENT);
    double halfBandA = row.tolerance().bound().doubleValue();
    assertThat(Kind.CURRENT.siValueOf(load.current().high()))
        .isCloseTo(row.number() + halfBandA, org.assertj.core.data.Offset.offset(1e-9));
    assertThat(Kind.CURRENT.siValueOf(load.current().low()))
        .isCloseTo(row.number() - halfBandA, org.assertj.core.data.Offset.offset(1e-9));
  }

  @Test
  void averageOfIntermittentLoads() {
    LowVoltageLoad load = LowVoltageLoad.ofPower("all twenty", watts(1690)).duty(0.1);
    VALIDATION.computed(LOADS.row("AUX-023"), budget(13.5, load).meanPower(), Kind.POWER);
  }

  private static LowVoltageBudget budget(double systemV, LowVoltageLoad... loads) {
    return LowVoltageBudget.of(
        List.of(loads), LowVoltageBattery.of(Measures.ampereHours(70)), volts(systemV));
  }

  @Test
  void powerOfTwoLoads() {
    LowVoltageBudget budget =
        budget(13.5, TypicalLoad.DIPPED_BEAM.load(), TypicalLoad.REAR_WINDOW.load());
    VALIDATION.computed(LOADS.row("AUX-025"), budget.meanPower(), Kind.POWER);
  }

  @Test
  void converter() {
    DcDcConverter converter = TestParts.converter().build();
    LowVoltageBudget budget = budget(13.8, LowVoltageLoad.of("all", amperes(31)));
    VALIDATION.computed(
        LOADS.row("AUX-026"), converter.inputCurrent(budget.meanPower(), volts(350)), Kind.CURRENT);
    VALIDATION.computed(
        LOADS.row("AUX-027"),
        converter.consumption(watts(250), kilometresPerHour(50)),
        Kind.ENERGY_PER_DISTANCE);
  }

  @Test
  void reserveCapacity() {
    VALIDATION.transcribed(LOADS.row("AUX-028"), LowVoltageBattery.RESERVE_CURRENT, Kind.CURRENT);
    VALIDATION.transcribed(
        LOADS.row("AUX-029"), LowVoltageBattery.RESERVE_END_VOLTAGE, Kind.VOLTAGE);
    VALIDATION.transcribed(
        LOADS.row("AUX-030"), LowVoltageBattery.RESERVE_TEMPERATURE, Kind.TEMPERATURE);
    VALIDATION.computed(
        LOADS.row("AUX-034"),
        LowVoltageBattery.ofReserveCapacity(minutes(120)).capacity(),
        Kind.CHARGE);
  }

  @Test
  void parkedAndHeldUp() {
    LowVoltageBudget parked = budget(12, LowVoltageLoad.keyOff("drain", Measures.milliamperes(30)));
    VALIDATION.computed(LOADS.row("AUX-035"), parked.parkedUntilFlat().orElseThrow(), Kind.TIME);
    LowVoltageBattery battery = LowVoltageBattery.of(Measures.ampereHours(45)).usable(0.6);
    VALIDATION.computed(LOADS.row("AUX-036"), battery.holds(amperes(28)), Kind.TIME);
  }
}
