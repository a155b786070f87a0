package org.wattwright.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.battery.Fixtures.AT_ONCE;
import static org.wattwright.battery.Fixtures.HALF;
import static org.wattwright.battery.Fixtures.flatCell;
import static org.wattwright.battery.Fixtures.flatModule;
import static org.wattwright.battery.Fixtures.source;
import static org.wattwright.battery.Fixtures.string;
import static org.wattwright.units.Measures.ampereHours;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.joulesPerKilogramKelvin;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.millivoltsPerKelvin;
import static org.wattwright.units.Measures.ohms;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;
import static org.wattwright.units.Measures.watts;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Outcome;
import org.wattwright.check.Step;
import org.wattwright.check.Worksheet;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.StateOfCharge;

class PackTest {
  private static final Pack PACK = Pack.of(flatModule(), 5, 2).withLeadResistance(milliohms(1));
  private static final PackState EMPTY = PackState.of(StateOfCharge.EMPTY, celsius(25));
  private static final PackState FULL = PackState.of(StateOfCharge.FULL, celsius(25));

  @Test
  void noCurrentNoPowerNoHeat() {
    assertThat(PACK.terminalVoltage(HALF, amperes(0))).isEqualTo(PACK.openCircuitVoltage(HALF));
    assertThat(Kind.VOLTAGE.siValueOf(PACK.openCircuitVoltage(HALF))).isCloseTo(99, within(1e-12));
    PowerResult.OperatingPoint idle = PACK.currentAtPower(HALF, watts(0), AT_ONCE).orElseThrow();
    assertThat(idle.current()).isEqualTo(amperes(0));
    assertThat(idle.heat()).isEqualTo(watts(0));
    assertThat(idle.efficiency()).isEqualTo(1);
    assertThat(PACK.heat(HALF, amperes(0)).irreversible()).isEqualTo(watts(0));
  }

  @Test
  void ratedCurrentLimitsWarmAndByDuration() {
    PowerLimit pulse = PACK.maximumDischargePower(HALF, seconds(30));
    assertThat(pulse.governing()).isEqualTo(Limit.CURRENT);
    assertThat(pulse.current()).isEqualTo(amperes(4 * 315));
    PowerLimit longer = PACK.maximumDischargePower(HALF, seconds(30.001));
    assertThat(longer.current()).isEqualTo(amperes(4 * 105));
    assertThat(longer.voltage()).isEqualTo(PACK.terminalVoltage(HALF, amperes(420)));
  }

  @Test
  void voltageLimitsTheEmptyPackAndTheFullOne() {
    PowerLimit empty = PACK.maximumDischargePower(EMPTY, seconds(10));
    assertThat(empty.governing()).isEqualTo(Limit.VOLTAGE);
    // (2.6 V − 2.5 V)/1.2 mΩ a cell, four side by side.
    assertThat(Kind.CURRENT.siValueOf(empty.current())).isCloseTo(4 * 0.1 / 1.2e-3, within(1e-9));
    PowerLimit full = PACK.maximumChargePower(FULL, seconds(10));
    assertThat(full.governing()).isEqualTo(Limit.CURRENT);
    Pack tight =
        Pack.of(BatteryModule.of(flatCell().maximumVoltage(volts(3.45)).build()).build(), 1, 1);
    PowerLimit brimful = tight.maximumChargePower(FULL, seconds(10));
    assertThat(brimful.governing()).isEqualTo(Limit.VOLTAGE);
    assertThat(brimful.power()).isEqualTo(watts(0));
  }

  @Test
  void temperatureLimitsAreInclusiveAndForbidBeyond() {
    PackState coldest = PackState.of(percentCharge(50), celsius(-20));
    PackState colder = PackState.of(percentCharge(50), celsius(-20.01));
    PackState hottest = PackState.of(percentCharge(50), celsius(55));
    PackState hotter = PackState.of(percentCharge(50), celsius(55.01));
    assertThat(powerW(coldest)).isPositive();
    assertThat(powerW(hottest)).isPositive();
    assertThat(powerW(colder)).isZero();
    assertThat(powerW(hotter)).isZero();
    assertThat(PACK.maximumDischargePower(hotter, seconds(10)).governing())
        .isEqualTo(Limit.TEMPERATURE);
    PowerLimit freezing =
        PACK.maximumChargePower(PackState.of(percentCharge(50), celsius(0)), seconds(10));
    assertThat(freezing.power()).isEqualTo(watts(0));
    assertThat(freezing.governing()).isEqualTo(Limit.TEMPERATURE);
    PowerLimit cool =
        PACK.maximumChargePower(PackState.of(percentCharge(50), celsius(5)), seconds(10));
    assertThat(cool.governing()).isEqualTo(Limit.TEMPERATURE);
    assertThat(Kind.CURRENT.siValueOf(cool.current())).isCloseTo(4 * 35, within(1e-9));
  }

  private static double powerW(PackState state) {
    return Kind.POWER.siValueOf(PACK.maximumDischargePower(state, seconds(10)).power());
  }

  @Test
  void powerAtTheVeryLimitIsAvailableAndAboveItIsAnAnswer() {
    PowerLimit most = PACK.maximumDischargePower(HALF, seconds(10));
    assertThat(PACK.currentAtPower(HALF, most.power(), seconds(10)).isAvailable()).isTrue();
    double aboveW = Kind.POWER.siValueOf(most.power()) * 1.001;
    PowerResult result = PACK.currentAtPower(HALF, watts(aboveW), seconds(10));
    assertThat(result)
        .isEqualTo(
            new PowerResult.AboveMaximum(org.wattwright.units.Kind.POWER.ofSi(aboveW), most));
    assertThat(result.isAvailable()).isFalse();
    assertThatIllegalStateException()
        .isThrownBy(result::orElseThrow)
        .withMessageContaining("limited by cell current");
    PowerResult charge = PACK.currentAtPower(HALF, kilowatts(-500), seconds(10));
    assertThat(((PowerResult.AboveMaximum) charge).maximum().direction())
        .isEqualTo(Direction.CHARGE);
  }

  @Test
  void theLargestTransferablePowerIsNoNaN() {
    Pack pack = Fixtures.pack(source(350, 0.1).build());
    PowerLimit most = pack.maximumDischargePower(HALF, AT_ONCE);
    assertThat(most.governing()).isEqualTo(Limit.POWER_TRANSFER);
    PowerResult.OperatingPoint point =
        pack.currentAtPower(HALF, most.power(), AT_ONCE).orElseThrow();
    assertThat(Kind.CURRENT.siValueOf(point.current())).isCloseTo(1750, within(1e-3));
    PowerResult.OperatingPoint aHairAbove =
        pack.currentAtPower(HALF, watts(Kind.POWER.siValueOf(most.power()) * (1 + 5e-13)), AT_ONCE)
            .orElseThrow();
    assertThat(Kind.VOLTAGE.siValueOf(aHairAbove.voltage())).isCloseTo(175, within(1e-3));
  }

  @Test
  void transferLimitOfUnlikeStringsIsTheTopOfTheCurve() {
    Pack pack = Fixtures.pack(string(352, 0.08), string(340, 0.2)).withLeadResistance(ohms(0.02));
    PowerLimit most = pack.maximumDischargePower(HALF, AT_ONCE);
    assertThat(most.governing()).isEqualTo(Limit.POWER_TRANSFER);
    double topA = Kind.CURRENT.siValueOf(most.current());
    double topW = Kind.POWER.siValueOf(most.power());
    for (double share : new double[] {0.5, 0.9, 0.99, 1.01, 1.1, 1.5}) {
      double currentA = share * topA;
      double voltageV = Kind.VOLTAGE.siValueOf(pack.terminalVoltage(HALF, amperes(currentA)));
      assertThat(currentA * voltageV).isLessThan(topW);
    }
  }

  @Test
  void resistanceThatDiffersByDirectionIsTakenByTheCurrentOfEachString() {
    Cell strong = source(400, 0.10).chargeResistance(ResistanceTable.constant(ohms(0.3))).build();
    Cell weak = source(396, 0.12).chargeResistance(ResistanceTable.constant(ohms(0.5))).build();
    Pack pack = Fixtures.pack(string(strong), string(weak));
    // At rest the first discharges through 0.1 Ω into the second, charged through 0.5 Ω.
    assertThat(Kind.CURRENT.siValueOf(pack.stringCurrents(HALF, amperes(0)).currents().get(0)))
        .isCloseTo(4 / 0.6, within(1e-9));
    // A load of exactly 40 A holds the node at the voltage of the second.
    StringSharing sharing = pack.stringCurrents(HALF, amperes(40));
    assertThat(Kind.VOLTAGE.siValueOf(sharing.voltage())).isCloseTo(396, within(1e-9));
    assertThat(Kind.CURRENT.siValueOf(sharing.currents().get(1))).isCloseTo(0, within(1e-9));
    // Both charged.
    StringSharing charged = pack.stringCurrents(HALF, amperes(-1000));
    double nodeV = Kind.VOLTAGE.siValueOf(charged.voltage());
    assertThat((400 - nodeV) / 0.3 + (396 - nodeV) / 0.5).isCloseTo(-1000, within(1e-9));
    assertThat(Kind.RESISTANCE.siValueOf(pack.resistance(HALF, Direction.CHARGE)))
        .isCloseTo(1 / (1 / 0.3 + 1 / 0.5), within(1e-12));
  }

  @Test
  void stringsThatExchangeMoreThanTheyStandGiveNoPower() {
    Cell weak = source(396, 0.12).continuousDischargeCurrent(amperes(10)).build();
    Cell strong = source(400, 0.10).continuousDischargeCurrent(amperes(10)).build();
    Pack pack = Fixtures.pack(string(strong), string(weak));
    PowerLimit most = pack.maximumDischargePower(HALF, AT_ONCE);
    assertThat(most.power()).isEqualTo(watts(0));
    assertThat(most.governing()).isEqualTo(Limit.CURRENT);
  }

  @Test
  void energyEndsWhereALimitEndsIt() {
    EnergyResult hard =
        PACK.usableEnergyAtCurrent(amperes(420), percentCharge(100), percentCharge(0), celsius(0));
    assertThat(hard.endedBy()).contains(Limit.VOLTAGE);
    double end = hard.end().fraction();
    assertThat(end).isBetween(0.0, 0.2);
    Cell cell = flatCell().build();
    PackState state = PackState.of(hard.end(), celsius(0));
    assertThat(Kind.VOLTAGE.siValueOf(Fixtures.pack(cell).terminalVoltage(state, amperes(105))))
        .isCloseTo(2.5, within(1e-6));
    assertThat(hard.toString()).contains("ended by cell voltage");
    EnergyResult gentle =
        PACK.usableEnergyAtCurrent(amperes(20), percentCharge(100), percentCharge(10), celsius(25));
    assertThat(gentle.endedBy()).isEmpty();
    assertThat(gentle.end()).isEqualTo(percentCharge(10));
    assertThat(Kind.TIME.siValueOf(gentle.time())).isCloseTo(0.9 * 420 / 20 * 3600, within(1e-6));
  }

  @Test
  void energyAtTheRatedCurrentIsNotRefusedByRounding() {
    EnergyResult rated =
        PACK.usableEnergyAtCurrent(amperes(420), percentCharge(90), percentCharge(50), celsius(25));
    assertThat(rated.endedBy()).isEmpty();
    EnergyResult above =
        PACK.usableEnergyAtCurrent(
            amperes(420.1), percentCharge(90), percentCharge(50), celsius(25));
    assertThat(above.endedBy()).contains(Limit.CURRENT);
    assertThat(above.energy()).isEqualTo(Kind.ENERGY.ofSi(0));
    assertThat(above.end()).isEqualTo(percentCharge(90));
    assertThat(above.time()).isEqualTo(seconds(0));
  }

  @Test
  void energyOfUnlikeModulesEndsWithTheSmallest() {
    Cell small = source(3.2, 0.001).capacity(ampereHours(80)).build();
    Cell large =
        Fixtures.unlimited(Fixtures.linear(3, 0.5), ResistanceTable.constant(milliohms(1)))
            .capacity(ampereHours(100))
            .build();
    SeriesString mixed =
        SeriesString.of("mixed")
            .group("bay", BatteryModule.of(small).build(), 1)
            .group("bay", BatteryModule.of(large).build(), 1)
            .build();
    // 80 A·h at 3.2 V, and the large cell from full to 20 %: mean 3.3 V.
    assertThat(Kind.ENERGY.siValueOf(Fixtures.pack(mixed).nominalEnergy(celsius(25))) / 3600)
        .isCloseTo(80 * (3.2 + 3.3), within(1e-9));
    assertThat(Fixtures.pack(mixed).capacity()).isEqualTo(ampereHours(80));
  }

  @Test
  void reversibleHeatNeedsEveryCell() {
    Cell known = source(3.3, 0.001).entropicCoefficient(millivoltsPerKelvin(0.1)).build();
    Pack both = Fixtures.pack(string(known), string(source(3.3, 0.001).build()));
    assertThat(both.heat(HALF, amperes(10)).reversible()).isEmpty();
    assertThat(both.heat(HALF, amperes(10)).total())
        .isEqualTo(both.heat(HALF, amperes(10)).irreversible());
    Pack pair = Pack.of(BatteryModule.of(known).series(2).build(), 3, 2);
    Heat heat = pair.heat(HALF, amperes(100));
    assertThat(Kind.POWER.siValueOf(heat.reversible().orElseThrow()))
        .isCloseTo(-100 * 298.15 * 6 * 1e-4, within(1e-9));
    assertThat(heat.toString()).doesNotContain("not known");
  }

  @Test
  void steadyHeatIncludesPolarisation() {
    Cell cell = source(3.3, 0.001).rcPair(RcPair.of(milliohms(0.5), seconds(20))).build();
    assertThat(Kind.POWER.siValueOf(Fixtures.pack(cell).heat(HALF, amperes(100)).irreversible()))
        .isCloseTo(15, within(1e-9));
    assertThat(Kind.VOLTAGE.siValueOf(Fixtures.pack(cell).terminalVoltage(HALF, amperes(100))))
        .isCloseTo(3.2, within(1e-12));
    assertThat(
            Kind.VOLTAGE.siValueOf(
                Fixtures.pack(cell).terminalVoltage(HALF, amperes(100), seconds(1e6))))
        .isCloseTo(3.15, within(1e-12));
  }

  @Test
  void ohmicResistanceAddsLinksAndLeadsOrIsUnknown() {
    Pack pack =
        Fixtures.pack(SeriesString.of("A").group("bay", flatModule(), 5).link(milliohms(1)).build())
            .withLeadResistance(milliohms(2));
    // 30 cells of 0.4 mΩ two by two, five interconnects of 0.2 mΩ, the link, the leads.
    assertThat(Kind.RESISTANCE.siValueOf(pack.ohmicResistance().orElseThrow()))
        .isCloseTo((30 * 0.4 / 2 + 5 * 0.2 + 1 + 2) * 1e-3, within(1e-12));
    assertThat(Fixtures.pack(source(3.3, 0.001).build()).ohmicResistance()).isEmpty();
  }

  @Test
  void sizeAndHeatCapacityAreKnownOnlyIfEveryPartIs() {
    BatteryModule boxed =
        BatteryModule.of(flatCell().specificHeat(joulesPerKilogramKelvin(1100)).build())
            .series(6)
            .dimensions(Dimensions.of(millimetres(300), millimetres(200), millimetres(100)))
            .build();
    Pack pack = Pack.of(boxed, 4, 2);
    assertThat(Kind.VOLUME.siValueOf(pack.volume().orElseThrow())).isCloseTo(0.048, within(1e-12));
    assertThat(Kind.HEAT_CAPACITY.siValueOf(pack.heatCapacity().orElseThrow()))
        .isCloseTo(8 * 6 * 1.98 * 1100, within(1e-6));
    assertThat(PACK.volume()).isEmpty();
    assertThat(PACK.heatCapacity()).isEmpty();
    assertThat(pack.moduleCount()).isEqualTo(8);
  }

  @Test
  void basisIsTheWeakestAndBandsBracketIt() {
    BatteryModule guessed =
        BatteryModule.of(
                flatCell()
                    .resistance(CellEstimates.resistance(Chemistry.LFP, ampereHours(105)))
                    .build())
            .build();
    Pack mixed =
        Fixtures.pack(
            SeriesString.of("A").group("bay", flatModule(), 1).group("bay", guessed, 1).build());
    assertThat(mixed.basis(CellProperty.RESISTANCE)).isEqualTo(Basis.ESTIMATED);
    assertThat(mixed.basis(CellProperty.CAPACITY)).isEqualTo(Basis.DATA_SHEET);
    assertThat(ohm(mixed.atBandEnd(BandEnd.LOW))).isLessThan(ohm(mixed));
    assertThat(ohm(mixed.atBandEnd(BandEnd.HIGH))).isGreaterThan(ohm(mixed));
    assertThat(PACK.atBandEnd(BandEnd.HIGH)).isEqualTo(PACK);
  }

  private static double ohm(Pack pack) {
    return Kind.RESISTANCE.siValueOf(pack.resistance(HALF, Direction.DISCHARGE));
  }

  @Test
  void connectingStringsIsCheckedOnePerString() {
    PackState high = PackState.of(percentCharge(100), celsius(25));
    PackState low = PackState.of(percentCharge(0), celsius(25));
    Pack pack = Pack.of(flatModule(), 5, 2);
    List<Check> checks = pack.connectionChecks(List.of(high, low));
    assertThat(checks).hasSize(2);
    assertThat(checks).extracting(Check::code).containsOnly("battery.equalising-current");
    assertThat(Outcome.worstOf(checks)).isEqualTo(Outcome.FAIL);
    assertThat(checks.get(0).note()).startsWith("discharge");
    assertThat(checks.get(1).note()).startsWith("charge");
    assertThat(Outcome.worstOf(pack.connectionChecks(List.of(HALF, HALF)))).isEqualTo(Outcome.PASS);
  }

  /** Beyond, numbers of cells would no longer fit a whole number and turn negative. */
  @Test
  void rejectsCountsBeyondAllVehicles() {
    assertInvalid(
        () -> Pack.of(flatModule(), 10_001, 1),
        "SeriesString.count must be from 1 to 10000, but was 10001");
    assertInvalid(
        () -> Pack.of(flatModule(), 1, 2_000_000_000),
        "Pack.parallel must be from 1 to 10000, but was 2000000000");
  }

  @Test
  void theLargestCountsStillAdd() {
    BatteryModule module =
        BatteryModule.of(flatCell().specificHeat(joulesPerKilogramKelvin(1000)).build())
            .series(1000)
            .parallel(1000)
            .build();
    Pack pack = Pack.of(module, 10_000, 1);
    // 3.65 V, 1.98 kg and 1.98 kJ/K a cell.
    assertThat(Kind.VOLTAGE.siValueOf(pack.maximumVoltage())).isCloseTo(3.65e7, within(1e-3));
    assertThat(Kind.MASS.siValueOf(pack.mass())).isCloseTo(1.98e10, within(1.0));
    assertThat(Kind.HEAT_CAPACITY.siValueOf(pack.heatCapacity().orElseThrow()))
        .isCloseTo(1.98e13, within(1e3));
  }

  @Test
  void rejectsWrongInput() {
    assertInvalid(
        () -> Pack.of(List.of()),
        "Pack.strings must be a list with at least one element, but was empty");
    assertInvalid(
        () -> Pack.of(flatModule(), 0, 1), "SeriesString.count must be from 1 to 10000, but was 0");
    assertInvalid(
        () -> Pack.of(flatModule(), 1, 0), "Pack.parallel must be from 1 to 10000, but was 0");
    assertInvalid(
        () -> PACK.withLeadResistance(milliohms(-1)),
        "Pack.leadResistance must be ≥ 0 mΩ, but was -1 mΩ");
    assertInvalid(
        () -> PACK.maximumDischargePower(HALF, seconds(-1)),
        "duration must be ≥ 0 s, but was -1 s");
    assertInvalid(
        () ->
            PACK.usableEnergyAtPower(
                kilowatts(0), percentCharge(90), percentCharge(10), celsius(20)),
        "power must be > 0 W, but was 0 kW");
    assertInvalid(
        () ->
            PACK.usableEnergyAtPower(
                kilowatts(1), percentCharge(10), percentCharge(90), celsius(20)),
        "to must be < from 10 %, but was 90 %");
    assertInvalid(
        () ->
            PACK.usableEnergyAtCurrent(
                amperes(-1), percentCharge(90), percentCharge(10), celsius(20)),
        "current must be > 0 A, but was -1 A");
    assertInvalid(
        () -> PACK.stringCurrents(List.of(HALF), amperes(0)),
        "states must be 2 states, one per string, but was 1 states");
    Pack mixed = Fixtures.pack(string(400, 0.1), string(396, 0.1));
    assertInvalid(
        () -> mixed.pulseResponse(HALF, amperes(1), seconds(1)),
        "Pack.strings must be alike, of one module type, for a pulse response, but was mixed");
    Pack mixedModules =
        Fixtures.pack(
            SeriesString.of("A")
                .group("bay", flatModule(), 1)
                .group("bay", BatteryModule.of(flatCell().build()).build(), 1)
                .build());
    assertInvalid(
        () -> mixedModules.pulseResponse(HALF, amperes(1), seconds(1)),
        "Pack.strings must be alike, of one module type, for a pulse response, but was mixed");
  }

  static void assertInvalid(
      org.assertj.core.api.ThrowableAssert.ThrowingCallable call, String message) {
    assertThatExceptionOfType(InvalidInputException.class).isThrownBy(call).withMessage(message);
  }

  @Test
  void powerWorksheetCanBeRecomputedByHand() {
    PackState cold = PackState.of(percentCharge(20), celsius(0));
    Worksheet sheet = PACK.powerWorksheet(cold, Direction.DISCHARGE, seconds(10));
    Map<String, Step> steps = bySymbol(sheet);
    double cellV = voltage(steps.get("u_cell").result());
    double cellOhm = resistance(steps.get("R_cell").result());
    assertThat(voltage(steps.get("OCV").result())).isCloseTo(30 * cellV, within(1e-9));
    double stringOhm = 30 * cellOhm / 2 + 5 * 0.2e-3;
    assertThat(resistance(steps.get("R_string").result())).isCloseTo(stringOhm, within(1e-12));
    double packOhm = stringOhm / 2 + 1e-3;
    assertThat(resistance(steps.get("R").result())).isCloseTo(packOhm, within(1e-12));
    double byVoltageA = (cellV - 2.5) / cellOhm;
    assertThat(current(steps.get("I_U").result())).isCloseTo(byVoltageA, within(1e-9));
    double cellA = Math.min(byVoltageA, 315);
    assertThat(current(steps.get("I_max").result())).isCloseTo(4 * cellA, within(1e-9));
    double voltageV = 30 * cellV - 4 * cellA * packOhm;
    assertThat(voltage(steps.get("U").result())).isCloseTo(voltageV, within(1e-9));
    assertThat(Kind.POWER.siValueOf(steps.get("P_max").result().quantity(Kind.POWER)))
        .isCloseTo(
            Kind.POWER.siValueOf(PACK.maximumDischargePower(cold, seconds(10)).power()),
            within(1e-9));
    assertThat(steps.get("OCV").substituted()).startsWith("30 · 3.195 V");
    assertThat(sheet.toText()).contains("S·R_cell/p").contains("0 °C");
  }

  @Test
  void worksheetsTellChargePolarisationTransferAndUnlikeStrings() {
    Worksheet charge =
        PACK.powerWorksheet(
            PackState.of(percentCharge(50), celsius(5)), Direction.CHARGE, seconds(10));
    assertThat(charge.toText())
        .contains("I_T")
        .contains("(u_max − u_cell)/R_cell")
        .contains("OCV + I·R");
    Cell polarised = flatCell().rcPair(RcPair.of(milliohms(0.5), seconds(20))).build();
    Worksheet slow =
        Fixtures.pack(polarised).powerWorksheet(HALF, Direction.DISCHARGE, seconds(10));
    assertThat(slow.toText()).contains("R₀ + R₁·(1 − e^(−t/τ))").contains("20 s");
    Worksheet transfer =
        Fixtures.pack(source(350, 0.1).build()).powerWorksheet(HALF, Direction.DISCHARGE, AT_ONCE);
    assertThat(transfer.toText()).contains("power falls").contains("175 V");
    Pack unlike = Fixtures.pack(string(400, 0.1), string(396, 0.12));
    Worksheet both = unlike.powerWorksheet(HALF, Direction.DISCHARGE, AT_ONCE);
    assertThat(bySymbol(both)).containsKeys("E1", "R1", "I1", "E2", "R2", "I2", "U", "P_max");
    Cell limited = source(400, 0.1).continuousDischargeCurrent(amperes(50)).build();
    Worksheet byCurrent =
        Fixtures.pack(string(limited), string(396, 0.12))
            .powerWorksheet(HALF, Direction.DISCHARGE, AT_ONCE);
    assertThat(byCurrent.toText()).contains("when the tightest is at its limit");
  }

  @Test
  void voltageWorksheetEndsWithTheTerminalVoltage() {
    Worksheet sheet = PACK.voltageWorksheet(HALF, amperes(-100), seconds(10));
    Step last = sheet.steps().get(sheet.steps().size() - 1);
    assertThat(voltage(last.result()))
        .isEqualTo(Kind.VOLTAGE.siValueOf(PACK.terminalVoltage(HALF, amperes(-100), seconds(10))));
    assertThat(last.formula()).isEqualTo("OCV + I·R");
    assertThat(sheet.title()).contains("-100 A");
  }

  @Test
  void energyWorksheetBalances() {
    Worksheet sheet =
        PACK.energyWorksheet(kilowatts(20), percentCharge(90), percentCharge(10), celsius(20));
    Map<String, Step> steps = bySymbol(sheet);
    double chargeC = Kind.CHARGE.siValueOf(steps.get("q").result().quantity(Kind.CHARGE));
    assertThat(chargeC).isCloseTo(0.8 * 420 * 3600, within(1e-6));
    double energyJ = Kind.ENERGY.siValueOf(steps.get("E").result().quantity(Kind.ENERGY));
    assertThat(energyJ)
        .isCloseTo(chargeC * voltage(steps.get("U_mean").result()), within(1e-6 * energyJ));
    double lossJ = Kind.ENERGY.siValueOf(steps.get("E_loss").result().quantity(Kind.ENERGY));
    assertThat(energyJ + lossJ)
        .isCloseTo(chargeC * voltage(steps.get("OCV_mean").result()), within(1e-6 * energyJ));
    Worksheet none =
        PACK.energyWorksheet(kilowatts(500), percentCharge(90), percentCharge(10), celsius(20));
    assertThat(none.toText()).contains("ended by");
    assertThat(bySymbol(none)).doesNotContainKey("U_mean");
  }

  private static Map<String, Step> bySymbol(Worksheet sheet) {
    return sheet.steps().stream().collect(Collectors.toMap(Step::symbol, s -> s, (a, b) -> b));
  }

  private static double voltage(Figure figure) {
    return Kind.VOLTAGE.siValueOf(figure.quantity(Kind.VOLTAGE));
  }

  private static double resistance(Figure figure) {
    return Kind.RESISTANCE.siValueOf(figure.quantity(Kind.RESISTANCE));
  }

  private static double current(Figure figure) {
    return Kind.CURRENT.siValueOf(figure.quantity(Kind.CURRENT));
  }
}
