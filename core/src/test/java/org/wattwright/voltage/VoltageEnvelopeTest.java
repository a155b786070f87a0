package org.wattwright.voltage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;
import static org.wattwright.voltage.TestParts.voltsOf;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import org.junit.jupiter.api.Test;
import org.wattwright.battery.BatteryModule;
import org.wattwright.battery.CellEstimates;
import org.wattwright.battery.CellProperty;
import org.wattwright.battery.Chemistry;
import org.wattwright.battery.Pack;
import org.wattwright.battery.RcPair;
import org.wattwright.battery.SeriesString;
import org.wattwright.check.Basis;
import org.wattwright.check.Figure;
import org.wattwright.check.Step;
import org.wattwright.check.Worksheet;
import org.wattwright.testing.ValueTypeContract;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

class VoltageEnvelopeTest extends ValueTypeContract<VoltageEnvelope> {
  private static final double REL = 1e-12;

  /** 30 cells: 1 mΩ each, 3.0 V to 3.4 V. */
  private static final Pack PACK = Pack.of(TestParts.module(6), 5, 1);

  @Override
  protected VoltageEnvelope sample() {
    return VoltageEnvelope.of(PACK, TestParts.conditions().build());
  }

  @Override
  protected List<VoltageEnvelope> different() {
    return List.of(
        VoltageEnvelope.of(PACK, TestParts.conditions().regenerationCurrent(amperes(900)).build()),
        VoltageEnvelope.of(
            PACK, TestParts.conditions().peakDischargePower(kilowatts(20), seconds(5)).build()),
        VoltageEnvelope.of(
            PACK,
            TestParts.conditions().stateOfCharge(percentCharge(20), percentCharge(100)).build()),
        VoltageEnvelope.of(Pack.of(TestParts.module(6), 6, 1), TestParts.conditions().build()));
  }

  private static void assertVolts(Quantity<ElectricPotential> actual, double expectedV) {
    assertThat(voltsOf(actual)).isCloseTo(expectedV, within(REL * expectedV));
  }

  @Test
  void everyPointByHand() {
    VoltageEnvelope envelope = sample();
    assertVolts(envelope.endOfCharge(), 30 * 3.65);
    // 30·3.4 V + 50 A·30 mΩ stays below 30·3.65 V.
    assertVolts(envelope.fullUnderCharge(), 30 * 3.65);
    assertVolts(envelope.fullAtRest(), 30 * 3.4);
    assertVolts(envelope.nominal(), 30 * 3.22);
    assertVolts(envelope.emptyAtRest(), 30 * 3.04);
    double openV = 30 * 3.04;
    double currentA = 2 * 30_000 / (openV + Math.sqrt(openV * openV - 4 * 0.03 * 30_000));
    assertVolts(envelope.emptyUnderLoad(), openV - currentA * 0.03);
    assertThat(Kind.CURRENT.siValueOf(envelope.peakCurrent()))
        .isCloseTo(currentA, within(REL * currentA));
  }

  @Test
  void peakCurrentIsTakenAsGiven() {
    VoltageEnvelope envelope =
        VoltageEnvelope.of(
            PACK, TestParts.conditions().peakDischargeCurrent(amperes(300), seconds(10)).build());
    assertVolts(envelope.emptyUnderLoad(), 30 * (3.04 - 0.3));
    assertThat(envelope.peakCurrent()).isEqualTo(amperes(300));
  }

  @Test
  void loadAboveWhatThePackCarriesIsReplacedByTheLargest() {
    VoltageEnvelope byCurrent =
        VoltageEnvelope.of(
            PACK, TestParts.conditions().peakDischargeCurrent(amperes(900), seconds(10)).build());
    VoltageEnvelope byPower =
        VoltageEnvelope.of(
            PACK, TestParts.conditions().peakDischargePower(kilowatts(90), seconds(10)).build());
    for (VoltageEnvelope envelope : List.of(byCurrent, byPower)) {
      assertThat(envelope.peakCurrent()).isEqualTo(amperes(400));
      assertVolts(envelope.emptyUnderLoad(), 30 * (3.04 - 0.4));
    }
  }

  @Test
  void highRegenerationSetsTheTop() {
    VoltageEnvelope envelope =
        VoltageEnvelope.of(PACK, TestParts.conditions().regenerationCurrent(amperes(300)).build());
    assertVolts(envelope.endOfCharge(), 30 * 3.65);
    assertVolts(envelope.fullUnderCharge(), 30 * 3.7);
  }

  @Test
  void chargeEndsAtRestVoltageBelowFull() {
    VoltageEnvelope envelope =
        VoltageEnvelope.of(
            PACK,
            TestParts.conditions().stateOfCharge(percentCharge(10), percentCharge(90)).build());
    assertVolts(envelope.endOfCharge(), 30 * 3.36);
    assertVolts(envelope.fullUnderCharge(), 30 * (3.36 + 0.05));
  }

  @Test
  void parallelStringsShareTheCurrent() {
    Pack two = Pack.of(TestParts.module(6), 5, 2);
    VoltageEnvelope envelope =
        VoltageEnvelope.of(
            two,
            TestParts.conditions()
                .peakDischargeCurrent(amperes(300), seconds(10))
                .regenerationCurrent(amperes(600))
                .build());
    assertVolts(envelope.emptyUnderLoad(), 30 * (3.04 - 0.15));
    assertVolts(envelope.fullUnderCharge(), 30 * 3.7);
    assertVolts(envelope.nominal(), 30 * 3.22);
  }

  @Test
  void regenerationIsTakenAtTheColdestThatAllowsCharging() {
    BatteryModule module =
        TestParts.module(
            TestParts.cell()
                .resistance(
                    org.wattwright.battery.ResistanceTable.at(celsius(-10), celsius(0), celsius(25))
                        .row(percentCharge(50), milliohms(5), milliohms(3), milliohms(1))
                        .build())
                .build(),
            30);
    OperatingConditions.Builder conditions =
        TestParts.conditions().regenerationCurrent(amperes(200));
    // Charging is allowed from 0 °C.
    assertVolts(
        VoltageEnvelope.of(Pack.of(module, 1, 1), conditions.build()).fullUnderCharge(),
        30 * (3.4 + 0.2 * 3));
    // It never gets so cold.
    assertVolts(
        VoltageEnvelope.of(Pack.of(module, 1, 1), conditions.coldest(celsius(25)).build())
            .fullUnderCharge(),
        30 * 3.65);
  }

  @Test
  void loadedPointsTakeTheHighEndOfAnEstimate() {
    BatteryModule estimated =
        TestParts.module(
            TestParts.cell()
                .resistance(CellEstimates.resistance(Chemistry.LFP, Measures.ampereHours(100)))
                .build(),
            30);
    // 0.5 mΩ, at most twice that.
    assertThat(estimated.basis(CellProperty.RESISTANCE)).isEqualTo(Basis.ESTIMATED);
    VoltageEnvelope envelope =
        VoltageEnvelope.of(
            Pack.of(estimated, 1, 1),
            TestParts.conditions()
                .peakDischargeCurrent(amperes(300), seconds(10))
                .regenerationCurrent(amperes(400))
                .build());
    assertVolts(envelope.emptyUnderLoad(), 30 * (3.04 - 0.3));
    assertVolts(envelope.fullUnderCharge(), 30 * (3.4 + 0.4));
  }

  /** A string of 30 cells beside one of 31 cells with twice the capacity. */
  private static Pack unequal() {
    BatteryModule larger =
        BatteryModule.of(TestParts.cell().build()).name("larger").series(31).parallel(2).build();
    return Pack.of(
        List.of(
            SeriesString.of("A").group("left", TestParts.module(30), 1).build(),
            SeriesString.of("B").group("right", larger, 1).build()));
  }

  @Test
  void stringsThatDifferCountByTheirCapacity() {
    VoltageEnvelope envelope = VoltageEnvelope.of(unequal(), TestParts.conditions().build());
    assertVolts(envelope.nominal(), (100 * 30 * 3.22 + 200 * 31 * 3.22) / 300);
    assertVolts(envelope.endOfCharge(), 30 * 3.65);
    double firstS = 1 / 0.030;
    double secondS = 2 / 0.031;
    assertVolts(
        envelope.fullAtRest(), (30 * 3.4 * firstS + 31 * 3.4 * secondS) / (firstS + secondS));
  }

  @Test
  void polarisationAddsToTheSag() {
    Pack polarising =
        Pack.of(
            TestParts.module(
                TestParts.cell().rcPair(RcPair.of(milliohms(0.5), seconds(10))).build(), 30),
            1,
            1);
    OperatingConditions conditions =
        TestParts.conditions().peakDischargeCurrent(amperes(200), seconds(10)).build();
    double milliohm = 1 + 0.5 * (1 - Math.exp(-1));
    VoltageEnvelope envelope = VoltageEnvelope.of(polarising, conditions);
    assertVolts(envelope.emptyUnderLoad(), 30 * (3.04 - 0.2 * milliohm));
    assertThat(si(step(VoltageEnvelope.worksheet(polarising, conditions), "R_min")))
        .isCloseTo(30e-3 * milliohm, within(1e-12));
  }

  private static Step step(Worksheet worksheet, String symbol) {
    return worksheet.steps().stream()
        .filter(step -> step.symbol().equals(symbol))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void worksheetEndsWithTheNumbersOfTheEnvelope() {
    OperatingConditions conditions =
        TestParts.conditions().regenerationCurrent(amperes(300)).build();
    Worksheet worksheet = VoltageEnvelope.worksheet(PACK, conditions);
    VoltageEnvelope envelope = VoltageEnvelope.of(PACK, conditions);
    assertThat(worksheet.steps())
        .extracting(Step::symbol)
        .containsExactly(
            "U_end", "E_reg", "R_reg", "U_reg", "U_max", "U_full", "U_nom", "U_empty", "E_min",
            "R_min", "I_min", "U_min");
    assertVolts(envelope.endOfCharge(), si(step(worksheet, "U_end")));
    assertVolts(envelope.fullUnderCharge(), si(step(worksheet, "U_max")));
    assertVolts(envelope.fullAtRest(), si(step(worksheet, "U_full")));
    assertVolts(envelope.nominal(), si(step(worksheet, "U_nom")));
    assertVolts(envelope.emptyAtRest(), si(step(worksheet, "U_empty")));
    assertVolts(envelope.emptyUnderLoad(), si(step(worksheet, "U_min")));
    double currentA = si(step(worksheet, "I_min"));
    assertThat(Kind.CURRENT.siValueOf(envelope.peakCurrent()))
        .isCloseTo(currentA, within(REL * currentA));
  }

  @Test
  void worksheetCarriesEveryInput() {
    OperatingConditions conditions =
        TestParts.conditions()
            .peakDischargeCurrent(amperes(300), seconds(10))
            .regenerationCurrent(amperes(120))
            .build();
    Worksheet worksheet = VoltageEnvelope.worksheet(Pack.of(TestParts.module(6), 5, 2), conditions);
    assertThat(step(worksheet, "U_end").formula()).isEqualTo("n·s·u_max");
    assertThat(inputs(step(worksheet, "U_end"))).containsExactly("n=5", "s=6", "u_max=3.65 V");
    assertThat(inputs(step(worksheet, "U_empty"))).containsExactly("n=5", "s=6", "u=3.04 V");
    assertThat(inputs(step(worksheet, "R_min")))
        .containsExactly("n=5", "s=6", "p=1", "r=1 mΩ", "N=2");
    assertThat(step(worksheet, "R_min").formula()).isEqualTo("(n·s·r/p)/N");
    assertThat(step(worksheet, "U_min").formula()).isEqualTo("E_min − I_min·R_min");
    assertThat(inputs(step(worksheet, "U_min"))).contains("I_min=300 A");
    assertThat(step(worksheet, "U_reg").formula()).isEqualTo("E_reg + I_reg·R_reg");
    assertThat(inputs(step(worksheet, "U_reg"))).contains("I_reg=120 A");
  }

  private static List<String> inputs(Step step) {
    return step.inputs().stream().map(input -> input.symbol() + "=" + input.value()).toList();
  }

  @Test
  void worksheetSaysWhenTheLoadIsTooHigh() {
    OperatingConditions conditions =
        TestParts.conditions().peakDischargePower(kilowatts(90), seconds(10)).build();
    Worksheet worksheet = VoltageEnvelope.worksheet(PACK, conditions);
    assertThat(step(worksheet, "I_min").meaning()).contains("limited by cell current");
    assertThat(step(worksheet, "U_min").meaning()).contains("the largest load it carries");
  }

  @Test
  void worksheetWithoutRegenerationDoesNotMentionIt() {
    OperatingConditions conditions =
        OperatingConditions.builder()
            .stateOfCharge(percentCharge(10), percentCharge(90))
            .coldest(celsius(-10))
            .peakDischargeCurrent(amperes(300), seconds(10))
            .build();
    Worksheet worksheet = VoltageEnvelope.worksheet(PACK, conditions);
    assertThat(worksheet.steps()).extracting(Step::symbol).doesNotContain("U_reg", "U_max");
    assertThat(si(step(worksheet, "U_end"))).isCloseTo(30 * 3.36, within(REL * 30 * 3.36));
  }

  @Test
  void worksheetOfMixedStringsShowsEachGroupLinkAndLead() {
    BatteryModule tied =
        BatteryModule.of(TestParts.cell().build())
            .name("tied")
            .series(4)
            .interconnectResistance(milliohms(0.5))
            .build();
    BatteryModule polarising =
        TestParts.module(
            TestParts.cell().rcPair(RcPair.of(milliohms(0.5), seconds(10))).build(), 6);
    Pack pack =
        Pack.of(
                List.of(
                    SeriesString.of("A")
                        .group("front", tied, 3)
                        .link(milliohms(0.7))
                        .group("rear", polarising, 3)
                        .build()))
            .withLeadResistance(milliohms(0.2));
    OperatingConditions conditions =
        TestParts.conditions().peakDischargeCurrent(amperes(200), seconds(10)).build();
    Worksheet worksheet = VoltageEnvelope.worksheet(pack, conditions);
    Step resistance = step(worksheet, "R_min");
    assertThat(resistance.formula())
        .isEqualTo(
            "n_a·(s_a·r_a/p_a + r_i_a) + n_b·s_b·(r_b + r_1_b·(1 − e^(−t/τ_b)))/p_b + r_links +"
                + " r_leads");
    assertThat(si(resistance))
        .isCloseTo(
            (3 * (4 + 0.5) + 3 * 6 * (1 + 0.5 * (1 - Math.exp(-1))) + 0.7 + 0.2) / 1000,
            within(1e-14));
    assertThat(step(worksheet, "U_empty").formula()).isEqualTo("n_a·s_a·u_a + n_b·s_b·u_b");
    assertThat(inputs(resistance)).contains("r_i_a=500 µΩ", "r_links=700 µΩ", "r_leads=200 µΩ");
  }

  @Test
  void worksheetOfStringsThatDifferIsRecomputedFromItsInputs() {
    OperatingConditions conditions =
        TestParts.conditions()
            .peakDischargeCurrent(amperes(200), seconds(10))
            .regenerationCurrent(amperes(300))
            .build();
    Pack pack = unequal().withLeadResistance(milliohms(0.5));
    Worksheet worksheet = VoltageEnvelope.worksheet(pack, conditions);
    for (String symbol : List.of("U_reg", "U_full", "U_empty", "U_min")) {
      Step step = step(worksheet, symbol);
      double currents = 0;
      double conductances = 0;
      for (int k = 1; k <= 2; k++) {
        currents += input(step, "E" + k) / input(step, "R" + k);
        conductances += 1 / input(step, "R" + k);
      }
      double currentA = step.formula().contains("I") ? input(step, "I") : 0;
      double leadOhm = step.formula().contains("r_leads") ? input(step, "r_leads") : 0;
      double expectedV = (currents - currentA) / conductances - currentA * leadOhm;
      assertThat(si(step)).isCloseTo(expectedV, within(REL * expectedV));
    }
    assertThat(si(step(worksheet, "U_nom")))
        .isCloseTo((100 * 30 * 3.22 + 200 * 31 * 3.22) / 300, within(1e-10));
    assertThat(step(worksheet, "U_end").meaning()).endsWith(", A");
    assertThat(step(worksheet, "U_reg").formula())
        .isEqualTo("(E1/R1 + E2/R2 − I)/(1/R1 + 1/R2) − I·r_leads");
  }

  @Test
  void currentAtPowerOfStringsThatDifferIsPowerOverVoltage() {
    Worksheet worksheet = VoltageEnvelope.worksheet(unequal(), TestParts.conditions().build());
    Step step = step(worksheet, "I_min");
    assertThat(step.formula()).isEqualTo("P/U_min");
    double expectedA = input(step, "P") / input(step, "U_min");
    assertThat(si(step)).isCloseTo(expectedA, within(1e-9 * expectedA));
  }

  private static double input(Step step, String symbol) {
    return step.inputs().stream()
        .filter(input -> input.symbol().equals(symbol))
        .mapToDouble(input -> si(symbol, input.value()))
        .findFirst()
        .orElseThrow();
  }

  private static double si(Step step) {
    return si(step.symbol(), step.result());
  }

  private static double si(String symbol, Figure figure) {
    return switch (symbol.charAt(0)) {
      case 'R', 'r' -> Kind.RESISTANCE.siValueOf(figure.quantity(Kind.RESISTANCE));
      case 'I' -> Kind.CURRENT.siValueOf(figure.quantity(Kind.CURRENT));
      case 'P' -> Kind.POWER.siValueOf(figure.quantity(Kind.POWER));
      default -> voltsOf(figure.quantity(Kind.VOLTAGE));
    };
  }

  @Test
  void estimatesMarkTheLoadedSteps() {
    BatteryModule estimated =
        TestParts.module(
            TestParts.cell()
                .resistance(CellEstimates.resistance(Chemistry.LFP, Measures.ampereHours(100)))
                .build(),
            30);
    Worksheet worksheet =
        VoltageEnvelope.worksheet(Pack.of(estimated, 1, 1), TestParts.conditions().build());
    assertThat(step(worksheet, "U_min").basis()).isEqualTo(Basis.ESTIMATED);
    assertThat(step(worksheet, "U_end").basis()).isEqualTo(Basis.DATA_SHEET);
  }

  @Test
  void printsFromTopToBottom() {
    assertThat(sample())
        .hasToString("109.5 V charging, 102 V full, 96.6 V nominal, 91.2 V empty, 79.94 V loaded");
  }

  @Test
  void samePhysicsInOtherUnitsGivesTheSame() {
    OperatingConditions other =
        OperatingConditions.builder()
            .stateOfCharge(
                org.wattwright.units.StateOfCharge.of(0.1), org.wattwright.units.StateOfCharge.FULL)
            .coldest(Measures.fahrenheit(14))
            .peakDischargePower(Measures.watts(30_000), Measures.milliseconds(10_000))
            .regenerationCurrent(Measures.milliamperes(50_000))
            .build();
    BatteryModule module =
        TestParts.module(
            TestParts.cell()
                .resistance(
                    org.wattwright.battery.ResistanceTable.constant(Measures.microohms(1000)))
                .maximumVoltage(Measures.millivolts(3650))
                .build(),
            6);
    VoltageEnvelope converted = VoltageEnvelope.of(Pack.of(module, 5, 1), other);
    VoltageEnvelope plain = sample();
    assertVolts(converted.endOfCharge(), voltsOf(plain.endOfCharge()));
    assertVolts(converted.fullUnderCharge(), voltsOf(plain.fullUnderCharge()));
    assertVolts(converted.nominal(), voltsOf(plain.nominal()));
    assertVolts(converted.emptyUnderLoad(), voltsOf(plain.emptyUnderLoad()));
  }

  @Test
  void pointsTakeAnyQuantity() {
    VoltageEnvelope envelope =
        new VoltageEnvelope(
            Measures.millivolts(100_000),
            volts(101),
            volts(99),
            volts(95),
            volts(90),
            volts(80),
            amperes(1));
    assertThat(envelope.endOfCharge()).isEqualTo(volts(100));
  }
}
