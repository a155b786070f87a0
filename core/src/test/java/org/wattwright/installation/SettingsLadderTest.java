package org.wattwright.installation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.ampereHours;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.hours;
import static org.wattwright.units.Measures.kelvinsOfRise;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.millivolts;
import static org.wattwright.units.Measures.volts;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Outcome;
import org.wattwright.check.Source;
import org.wattwright.testing.Generator;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.WorkshopUnits;

class SettingsLadderTest {
  static Stream<Generator> cases() {
    return Generator.cases(100);
  }

  private static SettingsLadderBuilder sound() {
    return SettingsLadder.of(30)
        .step(LadderStep.CELL_MAXIMUM, volts(3.65))
        .step(LadderStep.HIGH_TRIP, volts(3.63))
        .step(LadderStep.HIGH_WARNING, volts(3.60))
        .step(LadderStep.CHARGER_END, volts(3.50))
        .step(LadderStep.CUT_BACK, volts(2.90))
        .step(LadderStep.LOW_WARNING, volts(2.75))
        .step(LadderStep.LOW_TRIP, volts(2.55))
        .step(LadderStep.CELL_MINIMUM, volts(2.50))
        .measuringTolerance(millivolts(10))
        .imbalance(millivolts(30))
        .chargerTolerance(0.005)
        .inverterTolerance(0.01)
        .temperature(TemperatureStep.COLDEST_CHARGE, celsius(0))
        .temperature(TemperatureStep.CHARGE_INHIBIT, celsius(3))
        .temperature(TemperatureStep.HOT_TRIP, celsius(57))
        .temperature(TemperatureStep.HOTTEST_CELL, celsius(60))
        .temperatureTolerance(kelvinsOfRise(2))
        .load(new CellLoad(volts(3.1), milliohms(1.5), amperes(300)));
  }

  private static Check check(SettingsLadder ladder, String code) {
    return ladder.checks().stream()
        .filter(c -> c.code().equals("installation." + code))
        .findFirst()
        .orElseThrow();
  }

  private static Outcome outcome(SettingsLadderBuilder ladder, String code) {
    return check(ladder.build(), code).outcome();
  }

  @Test
  void aSoundLadderPassesThroughout() {
    assertThat(sound().build().checks())
        .hasSize(9)
        .filteredOn(c -> !c.code().endsWith("-inhibit") && !c.code().endsWith("hot-trip"))
        .extracting(Check::outcome)
        .containsOnly(Outcome.PASS);
    assertThat(sound().build().checks()).extracting(Check::outcome).containsOnly(Outcome.PASS);
  }

  @Test
  void eachStepThatCrossesItsNeighbourFailsItsOwnCheck() {
    fails(LadderStep.HIGH_TRIP, 3.645, "high-trip-cell");
    fails(LadderStep.HIGH_WARNING, 3.63, "high-warning-trip");
    fails(LadderStep.HIGH_WARNING, 3.64, "high-warning-trip");
    fails(LadderStep.CHARGER_END, 3.55, "charge-end-warning");
    fails(LadderStep.CUT_BACK, 2.80, "cut-back-warning");
    fails(LadderStep.LOW_WARNING, 2.55, "low-warning-trip");
    fails(LadderStep.LOW_TRIP, 2.505, "low-trip-cell");
    fails(LadderStep.LOW_TRIP, 2.70, "low-trip-load");
  }

  private static void fails(LadderStep step, double volts, String code) {
    assertThat(outcome(sound().step(step, volts(volts)), code)).as(code).isEqualTo(Outcome.FAIL);
  }

  @Test
  void temperaturesKeepTheirTolerance() {
    assertThat(
            outcome(
                sound().temperature(TemperatureStep.CHARGE_INHIBIT, celsius(1.9)),
                "cold-charge-inhibit"))
        .isEqualTo(Outcome.FAIL);
    assertThat(outcome(sound().temperature(TemperatureStep.HOT_TRIP, celsius(58.1)), "hot-trip"))
        .isEqualTo(Outcome.FAIL);
    assertThat(outcome(sound().temperature(TemperatureStep.HOT_TRIP, celsius(58)), "hot-trip"))
        .isEqualTo(Outcome.PASS);
  }

  @Test
  void stackedFigures() {
    SettingsLadder ladder = sound().build();
    assertThat(Kind.VOLTAGE.siValueOf(ladder.highestReadingAtChargeEnd().orElseThrow()))
        .isCloseTo(3.50 * 1.005 + 0.03 + 0.01, within(1e-12));
    assertThat(Kind.VOLTAGE.siValueOf(ladder.lowestReadingAtCutBack().orElseThrow()))
        .isCloseTo(2.90 * 0.99 - 0.03 - 0.01, within(1e-12));
    SettingsLadder quadratic = sound().method(ToleranceMethod.ROOT_SUM_SQUARE).build();
    assertThat(Kind.VOLTAGE.siValueOf(quadratic.highestReadingAtChargeEnd().orElseThrow()))
        .isCloseTo(3.50 + 0.03 + Math.hypot(0.0175, 0.01), within(1e-12));
    assertThat(Kind.VOLTAGE.siValueOf(quadratic.lowestReadingAtCutBack().orElseThrow()))
        .isCloseTo(2.90 - 0.03 - Math.hypot(0.029, 0.01), within(1e-12));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void worstCaseIsNeverBelowTheRootOfSquaresAndWiderTolerancesNeverHelp(Generator random) {
    double tolerance = random.between(0, 0.05);
    SettingsLadderBuilder one = sound().measuringTolerance(volts(tolerance));
    double worst = margin(one);
    double squares = margin(one.method(ToleranceMethod.ROOT_SUM_SQUARE));
    assertThat(worst).isLessThanOrEqualTo(squares + 1e-12);
    assertThat(margin(sound().measuringTolerance(volts(tolerance + 0.01)))).isLessThan(worst);
  }

  private static double margin(SettingsLadderBuilder ladder) {
    return Kind.VOLTAGE.siValueOf(
        check(ladder.build(), "charge-end-warning").margin().orElseThrow().quantity(Kind.VOLTAGE));
  }

  @Test
  void anEstimateIsAtMostACaution() {
    assertThat(sound().basis(Basis.ESTIMATED).build().checks())
        .filteredOn(Check::isSafety)
        .hasSize(8)
        .extracting(Check::outcome)
        .containsOnly(Outcome.CAUTION);
    assertThat(sound().basis(Basis.ESTIMATED).build().worksheet().steps())
        .allMatch(step -> step.basis() == Basis.ESTIMATED);
  }

  @Test
  void whatIsMissingIsNamed() {
    assertThat(SettingsLadder.of(30).build().checks())
        .extracting(Check::outcome)
        .containsOnly(Outcome.NOT_CHECKED);
    SettingsLadder noTolerance =
        SettingsLadder.of(30)
            .step(LadderStep.HIGH_TRIP, volts(3.6))
            .step(LadderStep.CELL_MAXIMUM, volts(3.65))
            .build();
    assertThat(check(noTolerance, "high-trip-cell").missing())
        .containsExactly("SettingsLadder.measuringTolerance");
    assertThat(check(noTolerance, "charge-end-warning").missing())
        .containsExactly("SettingsLadder.charger end", "SettingsLadder.high warning");
    SettingsLadder loaded =
        SettingsLadder.of(30)
            .step(LadderStep.LOW_TRIP, volts(2.6))
            .load(new CellLoad(volts(3.1), milliohms(1), amperes(100)))
            .build();
    assertThat(check(loaded, "low-trip-load").missing())
        .containsExactly("SettingsLadder.measuringTolerance");
    assertThat(noTolerance.highestReadingAtChargeEnd()).isEmpty();
    assertThat(noTolerance.lowestReadingAtCutBack()).isEmpty();
    assertThat(noTolerance.highestChargerOutput()).isEmpty();
    assertThat(noTolerance.worksheet().steps()).isEmpty();
  }

  @Test
  void theSheetNamesEveryDevice() {
    SettingsSheet sheet = sound().build().toSheet();
    assertThat(sheet.settings()).hasSize(8);
    assertThat(sheet.forDevice("charger"))
        .extracting(Object::toString)
        .containsExactly("charger: charger end, pack 105 V ± 0.5 %");
    assertThat(sheet.forDevice("inverter"))
        .extracting(Object::toString)
        .containsExactly("inverter: drive cut-back, pack 87 V ± 1 %");
    assertThat(sheet.forDevice("battery management")).hasSize(6);
    assertThat(sheet.toMarkdown()).contains("cold-charge inhibit").contains("± 2 K");
    Setting more =
        Setting.of("DC-DC converter", "output", Figure.of(volts(14.2), WorkshopUnits.VOLT))
            .because("charges the auxiliary battery", Source.dataSheet("battery"));
    assertThat(sheet.and(more).settings()).hasSize(9).last().isEqualTo(more);
    assertThat(more.tolerance()).isEmpty();
  }

  @Test
  void theWorkingShowsWhatTheChecksUse() {
    SettingsLadder ladder = sound().build();
    var sheet = ladder.worksheet();
    assertThat(sheet.step("U_read").orElseThrow().result())
        .isEqualTo(Figure.of(ladder.highestReadingAtChargeEnd().orElseThrow(), WorkshopUnits.VOLT));
    assertThat(sheet.step("U_max").orElseThrow().result()).hasToString("3.64 V");
    assertThat(sheet.step("U_low").orElseThrow().result()).hasToString("2.831 V");
    assertThat(sheet.step("U_min").orElseThrow().result()).hasToString("2.54 V");
  }

  @Test
  void balancingTakesItsTime() {
    BleedBalancing bleed = new BleedBalancing(amperes(0.1), 0.5);
    assertThat(bleed.check(ampereHours(3), hours(60)).outcome()).isEqualTo(Outcome.CAUTION);
    assertThat(bleed.check(ampereHours(3), hours(59)).outcome()).isEqualTo(Outcome.FAIL);
    assertThat(bleed.worksheet(ampereHours(3)).step("t").orElseThrow().result())
        .hasToString("60 h");
  }

  @Test
  void rejectsWhatCannotBe() {
    assertThatThrownBy(() -> SettingsLadder.of(0))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageStartingWith("SettingsLadder.seriesCells");
    assertThatThrownBy(() -> sound().step(LadderStep.LOW_TRIP, volts(0)))
        .hasMessage("SettingsLadder.low trip must be > 0 V, but was 0 V");
    assertThatThrownBy(() -> sound().chargerTolerance(-0.1))
        .hasMessageStartingWith("SettingsLadder.chargerTolerance");
    assertThatThrownBy(() -> sound().imbalance(millivolts(-1)))
        .hasMessageStartingWith("SettingsLadder.imbalance");
    assertThatThrownBy(() -> new BleedBalancing(amperes(0.1), 0))
        .hasMessageStartingWith("BleedBalancing.duty");
    assertThatThrownBy(() -> new BleedBalancing(amperes(0), 1))
        .hasMessageStartingWith("BleedBalancing.current");
  }
}
