package org.wattwright.charging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.ohms;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.volts;
import static org.wattwright.units.Measures.watts;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.ReferenceRows;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;
import org.wattwright.units.StateOfCharge;

/** Supplies, the least of all currents, and charge times that have a closed form. */
class SupplyReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("charging");

  private static final ReferenceRows ROWS = PilotReferenceTest.ROWS;

  static Stream<ReferenceRow> singlePhase() {
    return ROWS.quantity("supply power, single-phase");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("singlePhase")
  void powerOfOnePhase(ReferenceRow row) {
    Quantity<ElectricCurrent> current = row.given("I", Kind.CURRENT);
    Supply supply = Supply.singlePhase(row.given("U", Kind.VOLTAGE), current);
    VALIDATION.computed(row, supply.powerAt(current), Kind.POWER);
  }

  @Test
  void powerOfThreePhases() {
    VALIDATION.computed(
        ROWS.row("CHG-131"),
        Supply.threePhase(volts(230), amperes(16)).powerAt(amperes(16)),
        Kind.POWER);
    VALIDATION.computed(
        ROWS.row("CHG-132"),
        Supply.threePhaseLineToLine(volts(400), amperes(16)).powerAt(amperes(16)),
        Kind.POWER);
    VALIDATION.computed(
        ROWS.row("CHG-133"),
        Supply.threePhase(volts(230), amperes(32)).powerAt(amperes(32)),
        Kind.POWER);
    VALIDATION.computed(
        ROWS.row("CHG-166"),
        Supply.threePhase(volts(230), amperes(32))
            .powerAt(TestParts.pilot(8).current().orElseThrow()),
        Kind.POWER);
  }

  static Stream<ReferenceRow> circuits() {
    return ROWS.quantity("largest continuous current of a circuit");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("circuits")
  void currentOfACircuitForHours(ReferenceRow row) {
    double ratedA = PilotReferenceTest.numberIn(row.conditions().keySet().iterator().next());
    Supply supply =
        Supply.singlePhase(volts(240), amperes(ratedA)).withRule(ContinuousLoadRule.NEC_2023);
    VALIDATION.computed(row, supply.continuousCurrent(), Kind.CURRENT);
  }

  static Stream<ReferenceRow> devices() {
    return ROWS.quantity("smallest overcurrent device");
  }

  /** The sizes in the row, with the next ones below and above. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("devices")
  void smallestDevice(ReferenceRow row) {
    double loadA = PilotReferenceTest.numberIn(row.conditions().keySet().iterator().next());
    List<Quantity<ElectricCurrent>> sizes =
        DoubleStream.of(50, 45, 40, 35, 30).mapToObj(Measures::amperes).toList();
    VALIDATION.computed(
        row,
        ContinuousLoadRule.NEC_2023.smallestDevice(amperes(loadA), sizes).orElseThrow(),
        Kind.CURRENT);
  }

  @Test
  void deviceOverContinuousLoad() {
    VALIDATION.computed(
        ROWS.row("CHG-135"),
        Kind.CURRENT.siValueOf(ContinuousLoadRule.NEC_2023.leastRating(amperes(1))));
  }

  private static AcCurrent allowed(double dutyPercent, double cableOhm) {
    Charger charger = TestParts.charger().maximumInputCurrent(amperes(16)).build();
    return TestParts.GARAGE
        .pilot(TestParts.pilot(dutyPercent))
        .cable(CableCoding.ofResistor(ohms(cableOhm)))
        .allows(charger);
  }

  @Test
  void leastOfAll() {
    VALIDATION.computed(ROWS.row("CHG-160"), allowed(50, 680).current(), Kind.CURRENT);
    VALIDATION.computed(ROWS.row("CHG-161"), allowed(25, 220).current(), Kind.CURRENT);
    assertThat(allowed(50, 680).governing()).isEqualTo(AcLimit.CHARGER);
    assertThat(allowed(25, 220).governing()).isEqualTo(AcLimit.PILOT);
  }

  @Test
  void powerAndCurrentOfTheCharger() {
    ReferenceRow power = ROWS.row("CHG-162");
    Charger charger =
        TestParts.charger()
            .maximumInputCurrent(amperes(16))
            .efficiency(EfficiencyByLoad.constant(0.92))
            .build();
    VALIDATION.computed(
        power, charger.outputAt(TestParts.GARAGE.allows(charger).power()), Kind.POWER);
    ChargeResult charge =
        ChargeSimulation.of(TestParts.linear(350, 1e-9, 0.1, 80))
            .charger(charger)
            .at(TestParts.GARAGE)
            .from(StateOfCharge.EMPTY)
            .temperature(celsius(25))
            .to(percentCharge(1))
            .run();
    VALIDATION.computed(ROWS.row("CHG-163"), charge.curve().get(0).current(), Kind.CURRENT);
  }

  /** 28 kW·h at 350 V without resistance to speak of is the bound the row states. */
  @Test
  void timeAtConstantPower() {
    ChargeResult charge =
        ChargeSimulation.of(TestParts.linear(350, 1e-9, 1e-9, 80))
            .station(TestParts.bench(1e6))
            .powerAtMost(watts(3385.6))
            .from(percentCharge(20))
            .to(percentCharge(80))
            .temperature(celsius(25))
            .run();
    VALIDATION.computed(ROWS.row("CHG-165"), charge.time(), Kind.TIME);
  }

  @Test
  void chargeOfAnInventedCell() {
    ChargeResult charge =
        ChargeSimulation.of(TestParts.linear(3.2, 1.0, 0.002, 60))
            .station(TestParts.bench(30))
            .voltageAtMost(volts(4.2))
            .endCurrent(amperes(3))
            .from(percentCharge(20))
            .temperature(celsius(25))
            .run();
    List<ChargePhase> phases = charge.phases();
    assertThat(phases)
        .extracting(ChargePhase::limit)
        .containsExactly(ChargeLimit.CHARGER_CURRENT, ChargeLimit.CHARGE_VOLTAGE);
    VALIDATION.computed(ROWS.row("CHG-170"), phases.get(0).to().fraction());
    VALIDATION.computed(ROWS.row("CHG-171"), phases.get(0).duration(), Kind.TIME);
    VALIDATION.computed(ROWS.row("CHG-173"), phases.get(1).duration(), Kind.TIME);
    double taperShare = phases.get(1).to().fraction() - phases.get(1).from().fraction();
    VALIDATION.computed(ROWS.row("CHG-174"), 60 * taperShare);
    VALIDATION.computed(ROWS.row("CHG-175"), charge.end().fraction());
    VALIDATION.computed(ROWS.row("CHG-176"), charge.time(), Kind.TIME);
    double tauS = Kind.TIME.siValueOf(phases.get(1).duration()) / Math.log(10);
    VALIDATION.computed(ROWS.row("CHG-172"), tauS);
  }

  static Stream<ReferenceRow> minima() {
    return Stream.concat(
        ROWS.quantity("supply range minimum, 12 V system"),
        ROWS.quantity("supply range minimum, 24 V system"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("minima")
  void lowestSupplyVoltage(ReferenceRow row) {
    String code = row.conditions().keySet().iterator().next().replace("code ", "");
    LowVoltageSupply supply = LowVoltageSupply.valueOf(code);
    VALIDATION.transcribed(row, supply.range().lowest(), Kind.VOLTAGE);
    assertThat(row.note()).isEqualTo("maximum " + supply.range().highest());
  }

  @Test
  void otherSupplyVoltages() {
    for (LowVoltageSupply code :
        List.of(LowVoltageSupply.A, LowVoltageSupply.B, LowVoltageSupply.C, LowVoltageSupply.D)) {
      VALIDATION.transcribed(ROWS.row("LVS-005"), code.range().highest(), Kind.VOLTAGE);
    }
    VALIDATION.transcribed(ROWS.row("LVS-010"), LowVoltageSupply.A.runningVoltage(), Kind.VOLTAGE);
    VALIDATION.transcribed(ROWS.row("LVS-011"), LowVoltageSupply.E.runningVoltage(), Kind.VOLTAGE);
    VALIDATION.transcribed(
        ROWS.row("LVS-016"), LowVoltageSupply.UNLIMITED_48.range().lowest(), Kind.VOLTAGE);
    VALIDATION.transcribed(
        ROWS.row("LVS-017"), LowVoltageSupply.UNLIMITED_48.range().highest(), Kind.VOLTAGE);
    VALIDATION.transcribed(
        ROWS.row("LVS-018"), LowVoltageSupply.LIMITED_48.range().highest(), Kind.VOLTAGE);
    VALIDATION.transcribed(
        ROWS.row("LVS-019"), LowVoltageSupply.LIMITED_48.range().lowest(), Kind.VOLTAGE);
  }

  @Test
  void converterCurrents() {
    DcDcConverter converter =
        TestParts.converter()
            .outputVoltage(volts(14))
            .maximumOutputPower(kilowatts(1.2))
            .efficiency(EfficiencyByLoad.constant(0.93))
            .build();
    VALIDATION.computed(ROWS.row("LVS-022"), converter.maximumOutputCurrent(), Kind.CURRENT);
    VALIDATION.computed(
        ROWS.row("LVS-023"), converter.inputCurrent(kilowatts(1.2), volts(350)), Kind.CURRENT);
  }

  @Test
  void whatTheLibraryDoesNotWorkOut() {
    VALIDATION.notCovered(
        ROWS.row("CHG-120"), "the voltage of a supply is told, never taken for granted");
    VALIDATION.notCovered(
        ROWS.row("CHG-121"), "the voltage of a supply is told: run its lowest to see the longest");
    VALIDATION.notCovered(
        ROWS.row("CHG-134"), "a rule is passed by the user where it holds; NEC_2023 carries it");
    VALIDATION.notCovered(
        ROWS.row("CHG-164"),
        "a quotient of two efficiencies told; the loss in the pack is worked out here");
    for (String id : List.of("LVS-012", "LVS-013", "LVS-014", "LVS-015", "LVS-021")) {
      VALIDATION.notCovered(ROWS.row(id), "a test of components, for their makers");
    }
    VALIDATION.notCovered(ROWS.row("LVS-020"), "range of protection, in which nothing has to work");
  }

  @Test
  void everyRowOfChargingIsAccountedFor() {
    List<String> ids =
        ROWS.stream()
            .map(ReferenceRow::id)
            .filter(id -> id.startsWith("CHG") || id.startsWith("LVS"))
            .toList();
    assertThat(ids).hasSize(122);
  }
}
