package org.wattwright.charging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.hours;
import static org.wattwright.units.Measures.kilojoulesPerKelvin;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;
import static org.wattwright.units.Measures.watts;
import static org.wattwright.units.Measures.wattsPerKelvin;
import static org.wattwright.units.WorkshopUnits.HOUR;
import static org.wattwright.units.WorkshopUnits.KILOWATT_HOUR;

import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.wattwright.check.Checks;
import org.wattwright.check.Figure;
import org.wattwright.check.Outcome;
import org.wattwright.check.Source;
import org.wattwright.testing.ValueTypeContract;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.StateOfCharge;
import org.wattwright.voltage.VoltageRange;

class ChargeSimulationTest extends ValueTypeContract<ChargeResult> {
  @Override
  protected ChargeResult sample() {
    return TestParts.usual().run();
  }

  @Override
  protected List<ChargeResult> different() {
    return List.of(
        TestParts.usual().from(percentCharge(21)).run(),
        TestParts.usual().to(percentCharge(80)).run(),
        TestParts.usual().auxiliaryPower(watts(100)).run(),
        TestParts.usual().atMost(hours(1)).run());
  }

  private static void ends(ChargeResult charge, ChargeEnd end, ChargeLimit limit) {
    assertThat(charge.endedBy()).isEqualTo(end);
    assertThat(charge.lastLimit()).isEqualTo(limit);
    assertThat(Kind.TIME.siValueOf(charge.time())).isZero();
    assertThat(Kind.ENERGY.siValueOf(charge.packEnergy())).isZero();
    assertThat(charge.phases()).isEmpty();
    assertThat(charge.profile(Kind.CURRENT, ChargeMoment::current)).isEmpty();
    assertThat(charge.efficiency()).isEmpty();
  }

  /** Common practice: a 6.6 kW charger refills a pack of about 30 kW·h in around six hours. */
  @Test
  void refillTakesAboutSixHours() {
    ChargeResult charge = TestParts.usual().from(StateOfCharge.EMPTY).run();
    assertThat(Kind.ENERGY.siValueOf(charge.storedEnergy()) / 3.6e6).isBetween(27.0, 34.0);
    assertThat(Kind.TIME.siValueOf(charge.time()) / 3600).isBetween(4.5, 7.0);
    assertThat(charge.efficiency().orElseThrow()).isBetween(0.88, 0.94);
  }

  @Test
  void fullPackIsDoneAtOnce() {
    ends(
        TestParts.usual().from(StateOfCharge.FULL).run(),
        ChargeEnd.TARGET,
        ChargeLimit.CHARGER_POWER);
    ends(
        TestParts.usual().from(percentCharge(90)).to(percentCharge(80)).run(),
        ChargeEnd.TARGET,
        ChargeLimit.CHARGER_POWER);
    ends(
        TestParts.usual().from(percentCharge(80)).voltageAtMost(volts(300)).run(),
        ChargeEnd.END_CURRENT,
        ChargeLimit.CHARGE_VOLTAGE);
  }

  @Test
  void coldAndHotPackDoesNotStart() {
    ChargeResult cold = TestParts.usual().temperature(celsius(-5)).run();
    ends(cold, ChargeEnd.BLOCKED, ChargeLimit.CELL_TEMPERATURE);
    assertThat(cold)
        .hasToString("20 % … 20 % in 0 s, 0 kW·h from the mains; no current: cell temperature");
    assertThat(Checks.withCode(cold.checks(), "charging.completes").get(0).outcome())
        .isEqualTo(Outcome.FAIL);
    ends(
        TestParts.usual().temperature(celsius(46)).run(),
        ChargeEnd.BLOCKED,
        ChargeLimit.CELL_TEMPERATURE);
  }

  @Test
  void deadSupplyDoesNotStart() {
    Supply dead = Supply.singlePhase(volts(230), amperes(0));
    ends(TestParts.usual().at(ChargingPoint.of(dead)).run(), ChargeEnd.BLOCKED, ChargeLimit.SUPPLY);
    ends(
        TestParts.usual().at(TestParts.GARAGE.pilot(TestParts.pilot(5))).run(),
        ChargeEnd.BLOCKED,
        ChargeLimit.PILOT);
  }

  @Test
  void supplyThatOnlyFeedsTheAuxiliariesDoesNotCharge() {
    ends(
        TestParts.usual().auxiliaryPower(kilowatts(6.7)).run(),
        ChargeEnd.BLOCKED,
        ChargeLimit.CHARGER_POWER);
  }

  @Test
  void packBelowTheWindowDoesNotStart() {
    Charger high =
        Charger.of("high", TestParts.window(330, 420))
            .maximumPower(kilowatts(6.6))
            .maximumInputCurrent(amperes(32))
            .efficiency(EfficiencyByLoad.constant(0.9))
            .build();
    ends(
        ChargeSimulation.of(TestParts.flatPack())
            .charger(high)
            .at(TestParts.GARAGE)
            .from(percentCharge(20))
            .temperature(celsius(25))
            .run(),
        ChargeEnd.BLOCKED,
        ChargeLimit.CHARGER_START);
  }

  @Test
  void packThatGetsTooHotStops() {
    ChargeResult charge =
        TestParts.usual()
            .temperature(celsius(44))
            .cooling(AmbientCooling.of(kilojoulesPerKelvin(50), wattsPerKelvin(0), celsius(20)))
            .run();
    assertThat(charge.endedBy()).isEqualTo(ChargeEnd.BLOCKED);
    assertThat(charge.lastLimit()).isEqualTo(ChargeLimit.CELL_TEMPERATURE);
    ChargeMoment last = charge.curve().get(charge.curve().size() - 1);
    assertThat(Kind.TEMPERATURE.siValueOf(last.temperature()))
        .isCloseTo(273.15 + 45, Percentage.withPercentage(1e-9));
    assertThat(Checks.withCode(charge.checks(), "charging.temperature")).hasSize(1);
  }

  @Test
  void feebleSupplyIsCutByTheClock() {
    Supply feeble = Supply.singlePhase(volts(230), amperes(0.01));
    ChargeResult charge = TestParts.usual().at(ChargingPoint.of(feeble)).run();
    assertThat(charge.endedBy()).isEqualTo(ChargeEnd.TIME);
    assertThat(Kind.TIME.siValueOf(charge.time()))
        .isCloseTo(7 * 86_400, Percentage.withPercentage(1e-7));
    assertThat(charge.timeCheck(hours(8), Source.requirement("night")).outcome())
        .isEqualTo(Outcome.FAIL);
  }

  @Test
  void chargersInParallelAddUp() {
    Supply strong = Supply.threePhase(volts(230), amperes(32));
    ChargeSimulation one = TestParts.usual().at(ChargingPoint.of(strong)).to(percentCharge(60));
    ChargeResult single = one.run();
    ChargeResult twin = one.charger(TestParts.charger().build()).run();
    assertThat(Kind.POWER.siValueOf(twin.curve().get(0).power()))
        .isCloseTo(
            2 * Kind.POWER.siValueOf(single.curve().get(0).power()),
            Percentage.withPercentage(1e-9));
    ChargeResult onOnePhase = one.at(TestParts.GARAGE).charger(TestParts.charger().build()).run();
    assertThat(onOnePhase.phases().get(0).limit()).isEqualTo(ChargeLimit.SUPPLY);
    double eachW = TestParts.charger().build().outputW(230 * 16);
    assertThat(Kind.POWER.siValueOf(onOnePhase.curve().get(0).power()))
        .isCloseTo(2 * eachW, Percentage.withPercentage(1e-9));
  }

  @Test
  void threePhaseChargerDrawsFromEveryPhaseThereIs() {
    Charger three =
        TestParts.charger()
            .threePhase()
            .maximumInputCurrent(amperes(16))
            .maximumPower(kilowatts(11))
            .maximumCurrent(amperes(40))
            .efficiency(EfficiencyByLoad.constant(0.95))
            .build();
    ChargingPoint wall = ChargingPoint.of(Supply.threePhase(volts(230), amperes(16)));
    assertThat(wall.allows(three)).hasToString("16 A, 11.04 kW, limited by supply circuit");
    assertThat(TestParts.GARAGE.allows(three))
        .hasToString("16 A, 3.68 kW, limited by charger input current");
  }

  @Test
  void chargerDeratesByTemperatureAndVoltage() {
    Charger derated =
        Charger.of(
                "derated",
                TestParts.window(200, 420)
                    .fullPerformance(VoltageRange.between(volts(200), volts(318))))
            .maximumPower(kilowatts(6.6))
            .maximumInputCurrent(amperes(32))
            .efficiency(EfficiencyByLoad.constant(0.95))
            .derating(DeratingByTemperature.from(celsius(40), 1).and(celsius(60), 0.5))
            .build();
    ChargeSimulation simulation =
        ChargeSimulation.of(TestParts.flatPack())
            .charger(derated)
            .at(TestParts.GARAGE)
            .from(percentCharge(20))
            .temperature(celsius(25));
    assertThat(Kind.POWER.siValueOf(simulation.run().curve().get(0).power()))
        .isCloseTo(6600, Percentage.withPercentage(1e-9));
    assertThat(
            Kind.POWER.siValueOf(
                simulation.chargerTemperature(celsius(60)).run().curve().get(0).power()))
        .isCloseTo(3300, Percentage.withPercentage(1e-9));
    ChargeMoment high = simulation.from(percentCharge(80)).run().curve().get(0);
    double voltageV = Kind.VOLTAGE.siValueOf(high.voltage());
    assertThat(voltageV).isGreaterThan(318);
    assertThat(Kind.POWER.siValueOf(high.power()))
        .isCloseTo(6600 * (420 - voltageV) / (420 - 318), Percentage.withPercentage(1e-9));
  }

  @Test
  void auxiliariesTakeTheirShareOfTheOutputCurrent() {
    ChargeSimulation simulation =
        ChargeSimulation.of(TestParts.flatPack())
            .station(TestParts.bench(20))
            .from(percentCharge(50))
            .temperature(celsius(25))
            .auxiliaryPower(watts(640));
    ChargeMoment first = simulation.run().curve().get(0);
    double auxiliaryA = 640 / Kind.VOLTAGE.siValueOf(first.voltage());
    assertThat(Kind.CURRENT.siValueOf(first.current()) + auxiliaryA)
        .isCloseTo(20, Percentage.withPercentage(1e-10));
  }

  @Test
  void stationWithoutEfficiencyKnowsNoMains() {
    DcStation station =
        DcStation.of(
            "station", VoltageRange.between(volts(200), volts(500)), amperes(125), kilowatts(50));
    ChargeResult charge = TestParts.usual().station(station).to(percentCharge(80)).run();
    assertThat(charge.wallEnergy()).isEmpty();
    assertThat(charge.chargerLoss()).isEmpty();
    assertThat(charge.lastLimit()).isEqualTo(ChargeLimit.CELL_CURRENT);
    assertThat(charge.toString()).contains("into the pack");
    assertThat(charge.worksheet().step("E_mains")).isEmpty();
    assertThat(Checks.withCode(charge.checks(), "charging.unthrottled-current").get(0).outcome())
        .isEqualTo(Outcome.CAUTION);
  }

  @Test
  void profilesFollowTheCurve() {
    ChargeResult charge = TestParts.usual().run();
    var power = charge.profile(Kind.POWER, ChargeMoment::power).orElseThrow();
    assertThat(Kind.TIME.siValueOf(power.duration()))
        .isCloseTo(Kind.TIME.siValueOf(charge.time()), Percentage.withPercentage(1e-4));
    assertThat(Kind.ENERGY.siValueOf(power.integral(Kind.ENERGY)))
        .isCloseTo(Kind.ENERGY.siValueOf(charge.packEnergy()), Percentage.withPercentage(0.05));
  }

  @Test
  void worksheetEndsInWhatTheResultSays() {
    ChargeResult charge = TestParts.usual().auxiliaryPower(watts(100)).run();
    assertThat(charge.worksheet().step("t").orElseThrow().result())
        .hasToString(Figure.of(charge.time(), HOUR).toString());
    assertThat(charge.worksheet().step("E_mains").orElseThrow().result())
        .hasToString(Figure.of(charge.wallEnergy().orElseThrow(), KILOWATT_HOUR).toString());
    assertThat(charge.worksheet().toText())
        .contains("t_1 = ∫Q/I ds from s₀ to s₁")
        .contains("E_aux = P_aux·t = 100 W ·")
        .contains("limited by charger output power");
  }

  @Test
  void timeIsCheckedAgainstTheNight() {
    ChargeResult charge = TestParts.usual().run();
    Source night = Source.requirement("one night");
    assertThat(charge.timeCheck(hours(10), night).outcome()).isEqualTo(Outcome.PASS);
    assertThat(charge.timeCheck(hours(3), night).outcome()).isEqualTo(Outcome.FAIL);
    assertThat(Checks.withCode(charge.checks(), "charging.set-voltage")).isEmpty();
    assertThat(
            Checks.withCode(
                    TestParts.usual().voltageAtMost(volts(350)).run().checks(),
                    "charging.set-voltage")
                .get(0)
                .outcome())
        .isEqualTo(Outcome.PASS);
    assertThat(
            Checks.withCode(
                    TestParts.usual().voltageAtMost(volts(351)).run().checks(),
                    "charging.set-voltage")
                .get(0)
                .outcome())
        .isEqualTo(Outcome.FAIL);
  }

  @Test
  void rejectsBadInput() {
    rejected(
        () -> ChargeSimulation.of(TestParts.flatPack()).run(),
        "ChargeSimulation is missing 4 of 4 required fields: charger, at, from, temperature");
    rejected(
        () -> TestParts.usual().currentAtMost(amperes(-1)),
        "ChargeSimulation.currentAtMost must be ≥ 0 A, but was -1 A");
    rejected(
        () -> TestParts.usual().powerAtMost(kilowatts(-1)),
        "ChargeSimulation.powerAtMost must be ≥ 0 kW, but was -1 kW");
    rejected(
        () -> TestParts.usual().voltageAtMost(volts(0)),
        "ChargeSimulation.voltageAtMost must be > 0 V, but was 0 V");
    rejected(
        () -> TestParts.usual().endCurrent(amperes(0)),
        "ChargeSimulation.endCurrent must be > 0 A, but was 0 A");
    rejected(
        () -> TestParts.usual().auxiliaryPower(watts(-1)),
        "ChargeSimulation.auxiliaryPower must be ≥ 0 W, but was -1 W");
    rejected(
        () -> TestParts.usual().atMost(seconds(0)),
        "ChargeSimulation.atMost must be > 0 s, but was 0 s");
    rejected(
        () -> AmbientCooling.of(kilojoulesPerKelvin(0), wattsPerKelvin(1), celsius(20)),
        "AmbientCooling.heatCapacity must be > 0 kJ/K, but was 0 kJ/K");
  }

  static void rejected(ThrowingCallable call, String message) {
    assertThatExceptionOfType(InvalidInputException.class).isThrownBy(call).withMessage(message);
  }
}
