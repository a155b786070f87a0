package org.wattwright.installation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assumptions.assumeThat;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.bars;
import static org.wattwright.units.Measures.cubicCentimetres;
import static org.wattwright.units.Measures.kilopascals;
import static org.wattwright.units.Measures.litres;
import static org.wattwright.units.Measures.litresPerMinute;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.minutes;
import static org.wattwright.units.Measures.newtons;
import static org.wattwright.units.Measures.pascals;
import static org.wattwright.units.Measures.seconds;

import java.util.List;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Pressure;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Given;
import org.wattwright.check.Outcome;
import org.wattwright.check.Source;
import org.wattwright.testing.Generator;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

class VacuumSystemTest {
  private static final VacuumPump PUMP =
      VacuumPump.ofSpeed("vacuum pump", litresPerMinute(30), kilopascals(12));
  private static final VacuumReserve RESERVE = VacuumReserve.of(4, kilopascals(40));

  static Stream<Generator> cases() {
    return Generator.cases(100);
  }

  private static VacuumSystem system(Generator random) {
    double airL = random.between(0.2, 1.0);
    double restL = random.chance(0.3) ? 0 : random.between(0, airL);
    return VacuumSystem.of(
            BrakeServo.of(litres(airL), litres(airL + random.between(0, 3)))
                .restVolume(litres(restL)))
        .reservoir(litres(random.between(0, 8)))
        .ambient(kilopascals(random.between(70, 105)));
  }

  private static VacuumSystem van() {
    return VacuumSystem.of(BrakeServo.of(litres(0.5), litres(2.5)))
        .reservoir(litres(2.5))
        .pump(PUMP.current(amperes(9)).startingCurrent(amperes(25)))
        .pumpStopsAt(VacuumLevel.absolute(kilopascals(25)))
        .pumpRestartsAt(VacuumLevel.absolute(kilopascals(35)))
        .warnsAt(VacuumLevel.absolute(kilopascals(45)));
  }

  private static double pa(Quantity<Pressure> pressure) {
    return Kind.PRESSURE.siValueOf(pressure);
  }

  private static Check check(VacuumSystem system, VacuumReserve reserve, String code) {
    return system.checks(reserve).stream()
        .filter(c -> c.code().equals("installation." + code))
        .findFirst()
        .orElseThrow();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void pressureRisesTowardsTheAirAndNeverPastIt(Generator random) {
    VacuumSystem system = system(random);
    double before = 20_000;
    for (int n = 1; n < 30; n++) {
      double now = pa(system.pressureAfter(n, kilopascals(20)));
      assertThat(now).isGreaterThanOrEqualTo(before).isLessThanOrEqualTo(pa(system.ambient()));
      before = now;
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void aServoOfUnknownRestVolumeCountsWorst(Generator random) {
    double restL = random.between(0.1, 0.5);
    BrakeServo servo = BrakeServo.of(litres(0.5), litres(2));
    VacuumSystem unknown = VacuumSystem.of(servo).reservoir(litres(4));
    VacuumSystem known = VacuumSystem.of(servo.restVolume(litres(restL))).reservoir(litres(4));
    assertThat(pa(known.pressureAfter(3, kilopascals(30))))
        .isLessThan(pa(unknown.pressureAfter(3, kilopascals(30))));
    assertThat(known.stops(kilopascals(30), RESERVE))
        .isGreaterThanOrEqualTo(unknown.stops(kilopascals(30), RESERVE));
  }

  @Test
  void airLetInByOneStrokeFromNothingIsTheWholeStroke() {
    VacuumSystem system = VacuumSystem.of(BrakeServo.of(litres(0.5), litres(5)));
    assertThat(pa(system.pressureAfter(1, kilopascals(30))))
        .isCloseTo(30_000 + 101_325 * 0.5 / 5, within(1e-6));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void theVolumeAskedForGivesJustThatManyStops(Generator random) {
    VacuumSystem system = system(random).reservoir(litres(0));
    VacuumReserve reserve = VacuumReserve.of(random.count(2, 12), kilopascals(30));
    double needed =
        Kind.VOLUME.siValueOf(system.volumeFor(kilopascals(20), reserve).orElseThrow()) * 1000;
    double heldL = Kind.VOLUME.siValueOf(system.totalVolume()) * 1000;
    assumeThat(needed).isGreaterThan(heldL);
    VacuumSystem enough = system.reservoir(litres((needed - heldL) * (1 + 1e-9)));
    VacuumSystem short1 = system.reservoir(litres(Math.max(0, needed * 0.999 - heldL)));
    assertThat(enough.stops(kilopascals(20), reserve)).isEqualTo(reserve.stops());
    assertThat(short1.stops(kilopascals(20), reserve)).isLessThan(reserve.stops());
  }

  @ParameterizedTest
  @MethodSource("cases")
  void moreReservoirNeverMeansFewerStops(Generator random) {
    VacuumSystem system = system(random);
    double small = random.between(0, 5);
    assertThat(system.reservoir(litres(small + 1)).stops(kilopascals(20), RESERVE))
        .isGreaterThanOrEqualTo(system.reservoir(litres(small)).stops(kilopascals(20), RESERVE));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void pumpTimesAddUp(Generator random) {
    double middle = random.between(25, 100);
    double whole = curveSeconds(101, 20);
    assertThat(curveSeconds(101, middle) + curveSeconds(middle, 20))
        .isCloseTo(whole, within(1e-9 * whole));
  }

  private static double curveSeconds(double fromKpa, double toKpa) {
    return Kind.TIME.siValueOf(
        curve()
            .evacuationTime(litres(5), new PressureFall(kilopascals(fromKpa), kilopascals(toKpa)))
            .orElseThrow());
  }

  private static VacuumPump curve() {
    return VacuumPump.ofCurve(
        "pump",
        List.of(point(10, 0), point(30, 6), point(50, 14), point(70, 14), point(101.325, 30)));
  }

  private static VacuumPump.FlowPoint point(double kpa, double litresPerMinute) {
    return new VacuumPump.FlowPoint(kilopascals(kpa), litresPerMinute(litresPerMinute));
  }

  @Test
  void closedFormOfTheCurveIsItsIntegral() {
    double sum = 0;
    int steps = 200_000;
    for (int i = 0; i < steps; i++) {
      double pressure = 20_000 + (i + 0.5) * 80_000 / steps;
      sum += 80_000.0 / steps / flowPa(pressure);
    }
    assertThat(curveSeconds(100, 20)).isCloseTo(0.005 * sum, within(1e-6 * sum * 0.005));
  }

  /** Pa·m³/s of the curve, written out a second time. */
  private static double flowPa(double pressurePa) {
    double[] x = {10_000, 30_000, 50_000, 70_000, 101_325};
    double[] y = {0, 6, 14, 14, 30};
    int i = 0;
    while (pressurePa > x[i + 1]) {
      i++;
    }
    double flow = y[i] + (y[i + 1] - y[i]) * (pressurePa - x[i]) / (x[i + 1] - x[i]);
    return flow / 60_000 * 101_325;
  }

  @Test
  void aPumpDoesNotPassItsEndPressure() {
    assertThat(PUMP.evacuationTime(litres(5), fall(12))).isEmpty();
    assertThat(PUMP.evacuationTime(litres(5), fall(11))).isEmpty();
    assertThat(PUMP.evacuationTime(litres(5), fall(12.001))).isPresent();
    assertThat(curve().evacuationTime(litres(5), fall(9))).isEmpty();
    assertThat(PUMP.endPressure()).isEqualTo(kilopascals(12));
  }

  private static PressureFall fall(double toKpa) {
    return new PressureFall(kilopascals(101.325), kilopascals(toKpa));
  }

  @Test
  void inputsInOtherUnitsGiveTheSame() {
    VacuumSystem one = VacuumSystem.of(BrakeServo.of(litres(0.5), litres(2.5)));
    VacuumSystem other =
        VacuumSystem.of(BrakeServo.of(cubicCentimetres(500), cubicCentimetres(2500)));
    assertThat(one).isEqualTo(other);
    assertThat(pa(one.pressureAfter(3, bars(0.3))))
        .isCloseTo(pa(one.pressureAfter(3, pascals(30_000))), within(1e-6));
  }

  @Test
  void gaugeSettingsMoveWithHeightAndAbsoluteOnesDoNot() {
    Quantity<Pressure> high = AirPressure.atAltitude(metres(1500));
    assertThat(pa(VacuumLevel.gauge(kilopascals(60)).absoluteAt(high)))
        .isCloseTo(pa(high) - 60_000, within(1e-6));
    assertThat(VacuumLevel.absolute(kilopascals(30)).absoluteAt(high)).isEqualTo(kilopascals(30));
  }

  @Test
  void everyVerdictHasItsFigures() {
    VacuumSystem van = van();
    // 35 kPa, then + 10.1325 kPa a stroke: 45.1, 55.3, 65.4 > 61.325
    assertThat(check(van, RESERVE, "vacuum-stops").comparison()).isEqualTo("2 < 4");
    assertThat(check(van, VacuumReserve.of(2, kilopascals(40)), "vacuum-stops").outcome())
        .isEqualTo(Outcome.PASS);
    assertThat(check(van, RESERVE, "vacuum-pump-reach").comparison()).isEqualTo("12 kPa ≤ 25 kPa");
    assertThat(check(van, RESERVE, "vacuum-build-up").outcome()).isEqualTo(Outcome.PASS);
    assertThat(check(van, RESERVE, "vacuum-warning").comparison()).isEqualTo("1 < 4");
  }

  @Test
  void aPumpThatNeverGetsThereFails() {
    VacuumSystem high =
        van().pumpStopsAt(VacuumLevel.gauge(kilopascals(75))).altitude(metres(1500));
    assertThat(check(high, RESERVE, "vacuum-pump-reach").outcome()).isEqualTo(Outcome.FAIL);
    assertThat(check(high, RESERVE, "vacuum-build-up").outcome()).isEqualTo(Outcome.FAIL);
    VacuumSystem more = van().pumpStopsAt(VacuumLevel.gauge(kilopascals(110)));
    assertThat(check(more, RESERVE, "vacuum-build-up").outcome()).isEqualTo(Outcome.FAIL);
    assertThat(more.recoveryTime()).isEmpty();
  }

  @Test
  void whatIsNotKnownIsNotChecked() {
    VacuumSystem bare = VacuumSystem.of(BrakeServo.of(litres(0.5), litres(2.5)));
    assertThat(bare.checks(RESERVE)).extracting(Check::outcome).containsOnly(Outcome.NOT_CHECKED);
    assertThat(bare.load(minutes(1))).isEmpty();
    assertThat(van().pump(PUMP).load(minutes(1))).isEmpty();
    assertThat(bare.volumeFor(kilopascals(70), RESERVE)).isEmpty();
    assertThat(bare.reservoirFor(kilopascals(70), RESERVE)).isEmpty();
  }

  @Test
  void theLoadIsOnForTheRecoveryInEachInterval() {
    double recoveryS = Kind.TIME.siValueOf(van().recoveryTime().orElseThrow());
    assertThat(recoveryS)
        .isCloseTo(5.0 / 0.5 * Math.log((35_132.5 - 12_000) / 13_000), within(1e-9));
    assertThat(van().load(seconds(60)).orElseThrow().duty())
        .isCloseTo(recoveryS / 60, within(1e-12));
    assertThat(van().load(seconds(1)).orElseThrow().duty()).isEqualTo(1);
    assertThat(van().load(seconds(60)).orElseThrow().isEssential()).isTrue();
    assertThat(van().load(seconds(60)).orElseThrow().peak()).contains(amperes(25));
  }

  @Test
  void theWorkingShowsWhatTheResultUses() {
    var sheet = van().worksheet(RESERVE);
    assertThat(sheet.step("V").orElseThrow().result()).hasToString("5 L");
    assertThat(sheet.step("p_lim").orElseThrow().result()).hasToString("61.33 kPa");
    assertThat(sheet.step("p_3").orElseThrow().result()).hasToString("65.4 kPa");
    assertThat(sheet.step("p_4")).isEmpty();
    assertThat(sheet.step("V_needed").orElseThrow().result()).hasToString("5.198 L");
    assertThat(sheet.step("t_1")).isPresent();
    assertThat(sheet.step("t_up")).isPresent();
    assertThat(VacuumSystem.of(BrakeServo.of(litres(0.5), litres(2))).worksheet(RESERVE).steps())
        .hasSize(2);
  }

  @Test
  void deadServoNeedsTheLinePressure() {
    PedalGear pedal = new PedalGear(4, millimetres(22.22));
    assertThat(pedal.checkServoDead(PedalGear.Category.M1, needed(4000)).outcome())
        .isEqualTo(Outcome.PASS);
    assertThat(pedal.checkServoDead(PedalGear.Category.M1, needed(6000)).outcome())
        .isEqualTo(Outcome.FAIL);
    assertThat(pedal.checkServoDead(PedalGear.Category.OTHER, needed(6000)).outcome())
        .isEqualTo(Outcome.PASS);
    assertThat(pedal.checkServoDead(PedalGear.Category.M1).outcome())
        .isEqualTo(Outcome.NOT_CHECKED);
    assertThat(
            pedal.linePressure(newtons(200), BrakeServo.of(litres(1), litres(1)), kilopascals(60)))
        .isEmpty();
  }

  private static Given<Quantity<Pressure>> needed(double kpa) {
    return Given.measured(kilopascals(kpa), "trial stop");
  }

  @Test
  void anEstimateIsAtMostACaution() {
    VacuumReserve two = VacuumReserve.of(2, kilopascals(40));
    assertThat(van().withBasis(Basis.ESTIMATED).checks(two))
        .filteredOn(c -> !c.code().endsWith("warning"))
        .extracting(Check::outcome)
        .containsOnly(Outcome.CAUTION);
    assertThat(
            new PedalGear(4, millimetres(22.22))
                .checkServoDead(
                    PedalGear.Category.M1,
                    Given.estimated(kilopascals(2000), Source.commonPractice("guess")))
                .outcome())
        .isEqualTo(Outcome.CAUTION);
    assertThat(van().withBasis(Basis.ESTIMATED).worksheet(two).steps())
        .allMatch(step -> step.basis() == Basis.ESTIMATED);
  }

  @Test
  void rejectsWhatCannotBe() {
    rejects(() -> BrakeServo.of(litres(0), litres(1)), "BrakeServo.airSide");
    rejects(() -> BrakeServo.of(litres(1), litres(0.9)), "BrakeServo.held");
    rejects(
        () -> BrakeServo.of(litres(1), litres(1)).restVolume(litres(1.1)), "BrakeServo.restVolume");
    rejects(
        () -> BrakeServo.of(litres(1), litres(1)).diaphragms(millimetres(200), 0),
        "BrakeServo.diaphragms");
    rejects(() -> van().reservoir(litres(-1)), "VacuumSystem.reservoir");
    rejects(() -> van().ambient(kilopascals(10)), "VacuumSystem.ambient");
    rejects(() -> van().pressureAfter(-1, kilopascals(30)), "VacuumSystem.applications");
    rejects(() -> van().pressureAfter(1, kilopascals(0)), "VacuumSystem.start");
    rejects(() -> van().load(seconds(0)), "VacuumSystem.interval");
    rejects(
        () -> VacuumPump.ofCurve("pump", List.of(point(10, 5), point(20, 4))),
        "VacuumPump.curve[1].freeAir");
    rejects(() -> VacuumPump.ofCurve("pump", List.of(point(10, 5))), "VacuumPump.points");
    rejects(
        () -> VacuumPump.ofSpeed("pump", litresPerMinute(0), kilopascals(1)), "VacuumPump.speed");
    rejects(() -> new PressureFall(kilopascals(20), kilopascals(30)), "PressureFall.to");
    rejects(() -> VacuumReserve.of(0, kilopascals(40)), "VacuumReserve.stops");
    rejects(() -> VacuumLevel.gauge(kilopascals(-1)), "VacuumLevel.value");
    rejects(() -> AirPressure.atAltitude(metres(12_000)), "AirPressure.altitude");
    rejects(() -> new PedalGear(Double.NaN, millimetres(20)), "PedalGear.leverRatio");
  }

  private static void rejects(ThrowingCallable call, String field) {
    assertThatThrownBy(call)
        .isInstanceOf(InvalidInputException.class)
        .hasMessageStartingWith(field + " must be");
  }
}
