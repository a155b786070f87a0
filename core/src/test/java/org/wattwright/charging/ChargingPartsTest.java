package org.wattwright.charging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wattwright.charging.ChargeSimulationTest.rejected;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.ohms;
import static org.wattwright.units.Measures.percent;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.volts;
import static org.wattwright.units.Measures.watts;

import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.wattwright.battery.PackState;
import org.wattwright.check.Check;
import org.wattwright.check.Checks;
import org.wattwright.check.Outcome;
import org.wattwright.check.Source;
import org.wattwright.units.Kind;
import org.wattwright.voltage.Device;
import org.wattwright.voltage.DeviceRole;
import org.wattwright.voltage.OperatingConditions;
import org.wattwright.voltage.VoltageRange;
import org.wattwright.voltage.WindowMatcher;

/** Supplies, pilots, cables, chargers and stations: edges and bad input. */
class ChargingPartsTest {
  @Test
  void pilotBandsEndWhereTheTableSays() {
    assertThat(TestParts.pilot(2.99).meaning()).isEqualTo(PilotMeaning.NO_CHARGING);
    assertThat(TestParts.pilot(3).meaning()).isEqualTo(PilotMeaning.ERROR);
    assertThat(TestParts.pilot(4.5).meaning()).isEqualTo(PilotMeaning.DIGITAL);
    assertThat(TestParts.pilot(5.5).meaning()).isEqualTo(PilotMeaning.DIGITAL);
    assertThat(TestParts.pilot(5.51).meaning()).isEqualTo(PilotMeaning.ERROR);
    assertThat(TestParts.pilot(7.99).meaning()).isEqualTo(PilotMeaning.ERROR);
    assertThat(TestParts.pilot(97.01).meaning()).isEqualTo(PilotMeaning.ERROR);
    assertThat(TestParts.pilot(97.01).current()).isEmpty();
    assertThat(ControlPilot.of(percent(85)).current()).hasValue(amperes(51));
  }

  @Test
  void leastNamesTheFirstOfEquals() {
    ChargingPoint point = TestParts.GARAGE.pilot(ControlPilot.offering(amperes(32)).orElseThrow());
    AcCurrent allowed =
        point.cable(CableCoding.ofResistor(ohms(220))).allows(TestParts.charger().build());
    assertThat(allowed.limits()).hasSize(4);
    assertThat(allowed.governing()).isEqualTo(AcLimit.PILOT);
    assertThat(TestParts.GARAGE.allows(TestParts.charger().build()).governing())
        .isEqualTo(AcLimit.SUPPLY);
  }

  @Test
  void pilotThatOffersNothingIsAnAnswer() {
    AcCurrent none =
        TestParts.GARAGE.pilot(TestParts.pilot(7.5)).allows(TestParts.charger().build());
    assertThat(none.isAllowed()).isFalse();
    assertThat(none).hasToString("0 A, 0 kW, limited by control pilot");
    List<Check> checks =
        TestParts.GARAGE.pilot(TestParts.pilot(7.5)).checks(TestParts.charger().build());
    assertThat(checks).extracting(Check::code).containsExactly("charging.current-allowed");
    assertThat(checks.get(0).outcome()).isEqualTo(Outcome.FAIL);
  }

  @Test
  void withoutPilotTheCircuitMustBearTheCharger() {
    ChargingPoint weak = ChargingPoint.of(Supply.singlePhase(volts(230), amperes(16)));
    Check check =
        Checks.withCode(weak.checks(TestParts.charger().build()), "charging.circuit-current")
            .get(0);
    assertThat(check.outcome()).isEqualTo(Outcome.FAIL);
    assertThat(check.isSafety()).isTrue();
    Check kept =
        Checks.withCode(
                TestParts.GARAGE.checks(TestParts.charger().build()), "charging.circuit-current")
            .get(0);
    assertThat(kept.outcome()).isEqualTo(Outcome.PASS);
  }

  @Test
  void inputPowerCapsThePower() {
    Charger capped = TestParts.charger().maximumInputPower(kilowatts(5)).build();
    AcCurrent allowed = TestParts.GARAGE.allows(capped);
    assertThat(allowed.power()).isEqualTo(kilowatts(5));
    assertThat(allowed.worksheet().toText()).contains("the charger's largest input power");
    ChargeResult charge =
        ChargeSimulation.of(TestParts.flatPack())
            .charger(capped)
            .at(TestParts.GARAGE)
            .from(percentCharge(20))
            .to(percentCharge(30))
            .temperature(celsius(25))
            .run();
    assertThat(charge.lastLimit()).isEqualTo(ChargeLimit.CHARGER_INPUT);
  }

  @Test
  void powerFactorLowersThePower() {
    Charger reactive = TestParts.charger().powerFactor(0.9).build();
    assertThat(Kind.POWER.siValueOf(TestParts.GARAGE.allows(reactive).power()))
        .isCloseTo(0.9 * 7360, Percentage.withPercentage(1e-10));
  }

  @Test
  void worksheetOfTheCurrent() {
    String text =
        TestParts.GARAGE
            .pilot(TestParts.pilot(50))
            .cable(CableCoding.ofResistor(ohms(680)))
            .allows(TestParts.charger().build())
            .worksheet()
            .toText();
    assertThat(text)
        .contains("I_pilot = 0.6·D = 0.6 · 50 % = 30 A")
        .contains("I_cable = 20 A")
        .contains("P_AC = n·U·I_AC·cos φ = 1 · 230 V · 20 A · 1 = 4.6 kW");
  }

  @Test
  void chargerAndConverterAreDevicesOfTheBus() {
    Charger charger = TestParts.charger().build();
    DcDcConverter converter = TestParts.converter().build();
    assertThat(charger.role()).isEqualTo(DeviceRole.CHARGER);
    assertThat(converter.role()).isEqualTo(DeviceRole.CONVERTER);
    assertThat(Kind.POWER.siValueOf(converter.maximumPower().orElseThrow()))
        .isCloseTo(1000, Percentage.withPercentage(1e-10));
    assertThat(Kind.CURRENT.siValueOf(converter.maximumCurrent().orElseThrow()))
        .isCloseTo(5, Percentage.withPercentage(1e-10));
    OperatingConditions conditions =
        OperatingConditions.builder()
            .stateOfCharge(percentCharge(10), percentCharge(100))
            .coldest(celsius(0))
            .regenerationCurrent(amperes(0))
            .peakDischargePower(kilowatts(10), org.wattwright.units.Measures.seconds(10))
            .build();
    List<Device> devices = List.of(charger, converter);
    WindowMatcher matcher =
        WindowMatcher.of(TestParts.flatPack().strings().get(0).groups().get(0).module(), 1)
            .device(devices.get(0))
            .device(devices.get(1))
            .under(conditions);
    assertThat(matcher.review(8).checks())
        .extracting(Check::code)
        .contains("voltage.charger-reach", "voltage.charger-start");
  }

  @Test
  void efficiencyIsReadAndHeld() {
    EfficiencyByLoad table = EfficiencyByLoad.from(0.1, 0.86).and(0.5, 0.94);
    assertThat(table.at(0)).isEqualTo(0.86);
    assertThat(table.at(0.3)).isCloseTo(0.9, Percentage.withPercentage(1e-10));
    assertThat(table.at(1)).isEqualTo(0.94);
    Charger charger = TestParts.charger().build();
    assertThat(charger.outputAt(kilowatts(10))).isEqualTo(kilowatts(6.6));
  }

  @Test
  void stationIsCheckedAgainstThePack() {
    PackState cold = PackState.of(percentCharge(5), celsius(5));
    DcStation station =
        DcStation.of(
            "station", VoltageRange.between(volts(150), volts(500)), amperes(125), kilowatts(50));
    assertThat(station.checks(TestParts.flatPack(), cold))
        .extracting(Check::outcome)
        .containsExactly(Outcome.PASS, Outcome.PASS, Outcome.CAUTION);
    DcStation high =
        DcStation.of(
            "high", VoltageRange.between(volts(300), volts(350)), amperes(30), kilowatts(50));
    assertThat(high.checks(TestParts.flatPack(), cold))
        .extracting(Check::outcome)
        .containsExactly(Outcome.FAIL, Outcome.FAIL, Outcome.PASS);
  }

  @Test
  void rejectsBadInput() {
    rejected(
        () -> Supply.singlePhase(volts(0), amperes(16)),
        "Supply.voltage must be > 0 and ≤ 1000 V, but was 0 V");
    rejected(
        () -> Supply.singlePhase(volts(230), amperes(-1)),
        "Supply.circuitRating must be ≥ 0 A, but was -1 A");
    rejected(
        () -> new ContinuousLoadRule(Double.NaN, Source.AS_GIVEN),
        "ContinuousLoadRule.share must be > 0 and ≤ 1, but was NaN");
    rejected(
        () -> TestParts.pilot(101),
        "ControlPilot.dutyCycle must be from 0 to 100 %, but was 101 %");
    rejected(
        () -> CableCoding.ofResistor(ohms(-1)),
        "CableCoding.resistance must be ≥ 0 Ω, but was -1 Ω");
    rejected(
        () -> Charger.of("charger", TestParts.window(1, 2)).build(),
        "Charger is missing 3 of 3 required fields: maximumPower, maximumInputCurrent, efficiency");
    rejected(
        () -> TestParts.charger().powerFactor(0),
        "Charger.powerFactor must be > 0 and ≤ 1, but was 0.0");
    rejected(
        () -> TestParts.charger().maximumInputCurrent(amperes(0)),
        "Charger.maximumInputCurrent must be > 0 A, but was 0 A");
    rejected(
        () -> EfficiencyByLoad.constant(92),
        "EfficiencyByLoad.efficiency must be > 0 and ≤ 1, but was 92.0");
    rejected(
        () -> EfficiencyByLoad.from(0.1, 0.1).and(0.2, 0.9),
        "EfficiencyByLoad[1].efficiency must be so low that input power rises with output power,"
            + " but was 0.9");
    rejected(
        () -> DeratingByTemperature.from(celsius(40), 1.1),
        "DeratingByTemperature.share must be from 0 to 1, but was 1.1");
    rejected(
        () -> TestParts.bench(10).withEfficiency(0),
        "DcStation.efficiency must be > 0 and ≤ 1, but was 0.0");
    rejected(
        () -> PilotCircuit.of(ohms(-1)), "PilotCircuit.resistance must be ≥ 0 Ω, but was -1 Ω");
    rejected(
        () -> TestParts.converter().build().inputPower(watts(901)),
        "DcDcConverter.output must be from 0 to 0.9 kW, but was 901 W");
    rejected(
        () -> DcDcConverter.of("converter", TestParts.window(1, 2)).build(),
        "DcDcConverter is missing 3 of 3 required fields: outputVoltage, maximumOutputPower,"
            + " efficiency");
  }
}
