package org.wattwright.charging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wattwright.charging.ChargeSimulationTest.rejected;
import static org.wattwright.units.Measures.ampereHours;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.days;
import static org.wattwright.units.Measures.hours;
import static org.wattwright.units.Measures.milliamperes;
import static org.wattwright.units.Measures.minutes;
import static org.wattwright.units.Measures.volts;
import static org.wattwright.units.Measures.watts;

import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Checks;
import org.wattwright.check.Outcome;
import org.wattwright.units.Kind;

class LowVoltageBudgetTest {
  private static final Percentage ALGEBRA = Percentage.withPercentage(1e-10);
  private static final LowVoltageTargets TARGETS =
      new LowVoltageTargets(minutes(60), days(21), LowVoltageSupply.C);

  private static LowVoltageBudget of(LowVoltageBattery battery, LowVoltageLoad... loads) {
    return LowVoltageBudget.of(List.of(loads), battery, volts(13.8));
  }

  private static LowVoltageBattery battery() {
    return LowVoltageBattery.of(ampereHours(45)).usable(0.6);
  }

  private static Check check(List<Check> checks, String code) {
    return Checks.withCode(checks, code).get(0);
  }

  @Test
  void addsUpWhatIsOn() {
    LowVoltageBudget budget = TestParts.budget();
    assertThat(Kind.POWER.siValueOf(budget.continuousPower())).isCloseTo(8.5 * 13.8, ALGEBRA);
    assertThat(Kind.POWER.siValueOf(budget.meanPower()))
        .isCloseTo((8.5 + 2.25) * 13.8 + 30, ALGEBRA);
    assertThat(Kind.POWER.siValueOf(budget.allOnPower())).isCloseTo(13 * 13.8 + 50, ALGEBRA);
    assertThat(Kind.POWER.siValueOf(budget.peakPower())).isCloseTo(20.5 * 13.8 + 50, ALGEBRA);
    assertThat(Kind.POWER.siValueOf(budget.recharge(hours(2)).requiredPower()))
        .isCloseTo((8.5 + 2.25 + 13.5) * 13.8 + 30, ALGEBRA);
    assertThat(Kind.CURRENT.siValueOf(budget.essentialCurrent())).isCloseTo(10.75, ALGEBRA);
    assertThat(budget.keyOffCurrent()).isEqualTo(milliamperes(20));
  }

  @Test
  void batteryCarriesTheEssentialLoads() {
    double plainS = 0.6 * 45 * 3600 / 10.75;
    assertThat(Kind.TIME.siValueOf(TestParts.budget().holdUp().orElseThrow()))
        .isCloseTo(plainS, ALGEBRA);
    LowVoltageBattery peukert = battery().peukert(hours(20), 1.2);
    double shorterS = plainS * Math.pow(45.0 / 20 / 10.75, 0.2);
    assertThat(Kind.TIME.siValueOf(peukert.holds(amperes(10.75)))).isCloseTo(shorterS, ALGEBRA);
    assertThat(peukert.holds(amperes(1))).isEqualTo(battery().holds(amperes(1)));
    assertThat(of(battery(), LowVoltageLoad.of("radio", amperes(3))).holdUp()).isEmpty();
  }

  @Test
  void parkedUntilFlat() {
    LowVoltageLoad drain =
        LowVoltageLoad.keyOff("management", milliamperes(20)).awake(amperes(2), hours(1));
    assertThat(Kind.TIME.siValueOf(of(battery(), drain).parkedUntilFlat().orElseThrow()))
        .isCloseTo((27 - 2) / 0.02 * 3600, ALGEBRA);
    LowVoltageLoad greedy = LowVoltageLoad.keyOff("greedy", milliamperes(1));
    assertThat(of(battery(), greedy.awake(amperes(30), hours(1))).parkedUntilFlat())
        .hasValue(Kind.TIME.ofSi(0));
    assertThat(of(battery(), LowVoltageLoad.of("radio", amperes(3))).parkedUntilFlat()).isEmpty();
  }

  @Test
  void converterThatServes() {
    List<Check> checks =
        TestParts.budget().checks(TestParts.converter().build(), celsius(40), TARGETS);
    assertThat(checks).extracting(Check::outcome).containsOnly(Outcome.PASS);
    assertThat(checks)
        .extracting(Check::code)
        .containsExactly(
            "charging.converter-power",
            "charging.converter-peak",
            "charging.converter-voltage",
            "charging.hold-up",
            "charging.parked");
  }

  @Test
  void converterThatIsTooSmallOrTooHot() {
    DcDcConverter hot =
        TestParts.converter()
            .maximumOutputPower(watts(300))
            .derating(DeratingByTemperature.from(celsius(40), 1).and(celsius(60), 0.5))
            .build();
    List<Check> checks = TestParts.budget().checks(hot, celsius(60), TARGETS);
    assertThat(check(checks, "charging.converter-power").outcome()).isEqualTo(Outcome.FAIL);
    Check peak = check(checks, "charging.converter-peak");
    assertThat(peak.outcome()).isEqualTo(Outcome.NOT_CHECKED);
    assertThat(peak.missing()).containsExactly("lowVoltageBattery.peakCurrent");
    LowVoltageBudget strong =
        LowVoltageBudget.of(
            TestParts.budget().loads(), battery().peakCurrent(amperes(100)), volts(13.8));
    assertThat(check(strong.checks(hot, celsius(60), TARGETS), "charging.converter-peak").outcome())
        .isEqualTo(Outcome.PASS);
    DcDcConverter high = TestParts.converter().outputVoltage(volts(16.5)).build();
    assertThat(
            check(
                    TestParts.budget().checks(high, celsius(20), TARGETS),
                    "charging.converter-voltage")
                .outcome())
        .isEqualTo(Outcome.FAIL);
  }

  @Test
  void missingLoadsAreSaid() {
    LowVoltageBudget bare = of(battery(), LowVoltageLoad.of("radio", amperes(3)));
    List<Check> checks = bare.checks(TestParts.converter().build(), celsius(20), TARGETS);
    assertThat(check(checks, "charging.hold-up").outcome()).isEqualTo(Outcome.NOT_CHECKED);
    assertThat(check(checks, "charging.parked").outcome()).isEqualTo(Outcome.NOT_CHECKED);
  }

  @Test
  void estimatedLoadIsAtMostACaution() {
    LowVoltageBudget budget = of(battery(), TypicalLoad.DIPPED_BEAM.load().essential());
    assertThat(budget.loads().get(0).basis()).isEqualTo(Basis.ESTIMATED);
    Check holdUp =
        check(
            budget.checks(TestParts.converter().build(), celsius(20), TARGETS), "charging.hold-up");
    assertThat(holdUp.outcome()).isEqualTo(Outcome.CAUTION);
    assertThat(holdUp.estimates()).containsExactly("load headlights, low beam");
    LowVoltageBudget drained =
        of(battery(), budget.loads().get(0), LowVoltageLoad.keyOff("alarm", milliamperes(20)));
    Check parked =
        check(
            drained.checks(TestParts.converter().build(), celsius(20), TARGETS), "charging.parked");
    assertThat(parked.estimates()).isEmpty();
  }

  @Test
  void smallestConverterThatGivesWhatIsRequired() {
    DcDcConverter small = TestParts.converter().maximumOutputPower(watts(150)).build();
    DcDcConverter medium = TestParts.converter().maximumOutputPower(watts(400)).build();
    DcDcConverter large = TestParts.converter().build();
    LowVoltageBudget budget = TestParts.budget();
    assertThat(budget.smallestOf(List.of(large, small, medium), celsius(20))).hasValue(medium);
    assertThat(budget.smallestOf(List.of(small), celsius(20))).isEmpty();
  }

  @Test
  void worksheetShowsEveryLoad() {
    String text = TestParts.budget().recharge(hours(2)).worksheet().toText();
    assertThat(text)
        .contains("P_load = U·I·duty = 13.8 V · 4.5 A · 50 % = 31.05 W")
        .contains("P_req = P_mean + U·I_recharge")
        .contains("t_hold = k·Q(I)/I = 60 % · 45 A·h / 10.75 A = 150.7 min");
  }

  @Test
  void rejectsBadInput() {
    rejected(
        () -> LowVoltageLoad.of("a", amperes(-1)),
        "LowVoltageLoad.current must be ≥ 0 A, but was -1 A");
    rejected(
        () -> LowVoltageLoad.of("a", amperes(1)).duty(1.5),
        "LowVoltageLoad.duty must be from 0 to 1, but was 1.5");
    rejected(
        () -> LowVoltageBattery.of(ampereHours(0)),
        "LowVoltageBattery.capacity must be > 0 A·h, but was 0 A·h");
    rejected(
        () -> battery().usable(0), "LowVoltageBattery.usable must be > 0 and ≤ 1, but was 0.0");
    rejected(
        () -> LowVoltageBudget.of(List.of(), battery(), volts(12)),
        "LowVoltageBudget.loads must be a list with at least one element, but was empty");
    rejected(
        () -> new LowVoltageTargets(minutes(0), days(1), LowVoltageSupply.A),
        "LowVoltageTargets.holdUp must be > 0 min, but was 0 min");
  }
}
