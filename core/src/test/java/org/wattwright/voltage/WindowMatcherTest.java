package org.wattwright.voltage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;
import static org.wattwright.voltage.TestParts.voltsOf;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wattwright.battery.BatteryModule;
import org.wattwright.check.Outcome;
import org.wattwright.testing.Serialisation;
import org.wattwright.units.InvalidInputException;

class WindowMatcherTest {
  /** One cell each: 3.65 V when full; 200 A for 10 s. */
  private static final BatteryModule CELL = TestParts.module(1);

  private static OperatingConditions at200A() {
    return TestParts.conditions().peakDischargeCurrent(amperes(200), seconds(10)).build();
  }

  private static WindowMatch match(Device... devices) {
    return match(CELL, at200A(), devices);
  }

  private static WindowMatch match(
      BatteryModule module, OperatingConditions conditions, Device... devices) {
    WindowMatcher matcher = WindowMatcher.of(module, 1).under(conditions);
    for (Device device : devices) {
      matcher = matcher.device(device);
    }
    return matcher.match();
  }

  @Test
  void numbersBetweenBothEndsFit() {
    // Loaded: 3.04 V − 0.2 V = 2.84 V a cell. 72 V needs 25.4 cells; 118.8 V allows 32.5.
    WindowMatch match = match(TestParts.inverter(72, 140), TestParts.charger(60, 118.8));
    assertThat(match.isPossible()).isTrue();
    assertThat(match.orElseThrow()).containsExactly(26, 27, 28, 29, 30, 31, 32);
    assertThat(match).hasToString("26, 27, 28, 29, 30, 31, 32 modules in series fit");
  }

  @Test
  void thirtySixCellsAgainstAChargerThatEndsBelow() {
    // 36 cells × 2.84 V = 102.24 V under load; 35 cells reach only 99.4 V.
    WindowMatch match = match(TestParts.inverter(102, 140), TestParts.charger(60, 118.8));
    assertThat(match.isPossible()).isFalse();
    assertThat(match.toString())
        .startsWith(
            "charger ends at 118.8 V, pack full is 131.4 V: 12.6 V apart; at most 32 in series")
        .endsWith(", but inverter needs 36: with 32 the pack falls 11.12 V below its 102 V");
    WindowMatch.Conflict conflict = (WindowMatch.Conflict) match;
    assertThat(conflict.upper()).isEqualTo("charger");
    assertThat(conflict.upperEnd()).isEqualTo(volts(118.8));
    assertThat(conflict.most()).isEqualTo(32);
    assertThat(conflict.lower()).isEqualTo("inverter");
    assertThat(conflict.fewest()).hasValue(36);
    assertThat(voltsOf(conflict.apart().orElseThrow())).isCloseTo(12.6, within(1e-12 * 131.4));
    assertThatIllegalStateException().isThrownBy(match::orElseThrow).withMessage(match.toString());
  }

  @Test
  void conflictNamesTheTightestPairWhateverTheOrder() {
    Device low = Device.of("heater", DeviceRole.HEATER, TestParts.window(95, 400)).build();
    Device lowest = Device.of("pump", DeviceRole.OTHER, TestParts.window(40, 125)).build();
    Device inverter = TestParts.inverter(102, 140);
    Device charger = TestParts.charger(60, 118.8);
    List<List<Device>> orders =
        List.of(
            List.of(low, lowest, inverter, charger),
            List.of(charger, inverter, lowest, low),
            List.of(inverter, low, charger, lowest));
    for (List<Device> order : orders) {
      WindowMatch.Conflict conflict = (WindowMatch.Conflict) match(order.toArray(new Device[0]));
      assertThat(conflict.upper()).isEqualTo("charger");
      assertThat(conflict.lower()).isEqualTo("inverter");
    }
  }

  @Test
  void theHighestOfTwoChargersDoesNotCount() {
    Device fast = Device.of("fast charger", DeviceRole.CHARGER, TestParts.window(50, 500)).build();
    WindowMatch match = match(TestParts.inverter(72, 140), TestParts.charger(60, 118.8), fast);
    assertThat(match.orElseThrow()).last().isEqualTo(32);
  }

  @Test
  void onlyThePeakLoadIsInTheWay() {
    // 100 kW at 400 A at most needs 250 V: 95 cells at 2.64 V.
    OperatingConditions conditions =
        TestParts.conditions().peakDischargePower(kilowatts(100), seconds(10)).build();
    WindowMatch.Conflict conflict =
        (WindowMatch.Conflict)
            match(CELL, conditions, TestParts.inverter(60, 140), TestParts.charger(60, 160));
    assertThat(conflict.lower()).isEqualTo("the peak load");
    assertThat(conflict.upper()).isEqualTo("inverter");
    assertThat(conflict.most()).isEqualTo(38);
    assertThat(conflict.fewest()).hasValue(95);
    assertThat(conflict.toString())
        .isEqualTo(
            "inverter ends at 140 V, pack full is 346.8 V: 206.8 V apart; at most 38 in series,"
                + " but the peak load needs 95");
  }

  @Test
  void noNumberCarriesAPeakCurrentAboveThatOfTheCells() {
    OperatingConditions conditions =
        TestParts.conditions().peakDischargeCurrent(amperes(500), seconds(10)).build();
    WindowMatch.Conflict conflict =
        (WindowMatch.Conflict) match(CELL, conditions, TestParts.inverter(60, 140));
    assertThat(conflict.lower()).isEqualTo("the peak load");
    assertThat(conflict.fewest()).isEmpty();
    assertThat(conflict.apart()).isEmpty();
    assertThat(conflict.toString())
        .isEqualTo(
            "the peak load is met by no number of modules in series up to 400: with 38 the pack"
                + " gives 40.13 kW discharge at 400 A and 100.3 V, limited by cell current;"
                + " inverter allows at most 38 in series");
    assertThat(
            WindowMatcher.of(CELL, 2)
                .device(TestParts.inverter(60, 140))
                .under(conditions)
                .match()
                .isPossible())
        .isTrue();
  }

  @Test
  void oneDeviceAloneAdmitsNoNumber() {
    // Twelve cells a module: 43.8 V full, 34.08 V loaded. One is too low, two are too high.
    WindowMatch.Conflict conflict =
        (WindowMatch.Conflict) match(TestParts.module(12), at200A(), TestParts.inverter(40, 80));
    assertThat(conflict.upper()).isEqualTo("inverter");
    assertThat(conflict.lower()).isEqualTo("inverter");
    assertThat(conflict.toString())
        .isEqualTo(
            "inverter ends at 80 V, pack full is 87.6 V: 7.6 V apart; at most 1 in series, but it"
                + " needs 2: with 1 the pack falls 5.92 V below its 40 V");
  }

  @Test
  void evenOneModuleIsTooHigh() {
    WindowMatch.Conflict conflict =
        (WindowMatch.Conflict) match(TestParts.module(12), at200A(), TestParts.inverter(20, 40));
    assertThat(conflict.most()).isZero();
    assertThat(conflict.toString())
        .isEqualTo(
            "inverter ends at 40 V, pack full is 43.8 V: 3.8 V apart; at most 0 in series, but it"
                + " needs 1");
  }

  @Test
  void aDeviceThatStartsAboveEveryPack() {
    WindowMatch.Conflict conflict =
        (WindowMatch.Conflict)
            match(CELL, at200A(), TestParts.inverter(1500, 2000), TestParts.charger(60, 118.8));
    assertThat(conflict.fewest()).isEmpty();
    assertThat(conflict.toString())
        .isEqualTo(
            "inverter starts at 1.5 kV, 400 modules in series, the most considered, reach 1.136 kV;"
                + " charger allows at most 32 in series");
    assertThat(match(CELL, at200A(), TestParts.inverter(1500, 2000)).toString())
        .endsWith("reach 1.136 kV");
  }

  @Test
  void peakLoadThatNoPackCarriesWithoutAnUpperEnd() {
    OperatingConditions conditions =
        TestParts.conditions().peakDischargeCurrent(amperes(500), seconds(10)).build();
    assertThat(match(CELL, conditions, TestParts.inverter(60, 2000)).toString())
        .endsWith("limited by cell current");
  }

  @Test
  void regenerationIsNamedWhereItSetsTheTop() {
    OperatingConditions conditions =
        TestParts.conditions()
            .peakDischargeCurrent(amperes(200), seconds(10))
            .regenerationCurrent(amperes(400))
            .build();
    // 3.4 V + 0.4 V = 3.8 V a cell.
    assertThat(match(CELL, conditions, TestParts.inverter(102, 120)).toString())
        .startsWith(
            "inverter ends at 120 V, pack full under regeneration is 136.8 V: 16.8 V apart; at"
                + " most 31 in series");
  }

  @Test
  void aChargerMustStandRegenerationThoughItNeedNotWorkThen() {
    OperatingConditions conditions =
        TestParts.conditions()
            .peakDischargeCurrent(amperes(200), seconds(10))
            .regenerationCurrent(amperes(400))
            .build();
    Device charger =
        Device.of(
                "charger",
                DeviceRole.CHARGER,
                TestParts.window(60, 118.8).absoluteMaximum(volts(119)))
            .build();
    assertThat(match(CELL, conditions, charger).orElseThrow()).last().isEqualTo(31);
    Device inverter = TestParts.inverter(90, 140);
    assertThat(match(CELL, conditions, inverter, charger).toString())
        .startsWith("charger stands 119 V, pack full under regeneration is 121.6 V: 2.6 V apart");
  }

  @Test
  void aWindowThatTouchesTheEnvelopeFits() {
    // 32 × 3.65 V and 32 × 2.84 V, both off by rounding alone.
    double topV = 32 * 3.65;
    double bottomV = 32 * (3.04 - 0.2);
    for (double factor : new double[] {1, 1 + 5e-13, 1 - 5e-13}) {
      WindowMatch match = match(TestParts.inverter(bottomV / factor, topV * factor));
      assertThat(match.isPossible()).as("factor %s", factor).isTrue();
      assertThat(match.orElseThrow()).containsExactly(32);
    }
    assertThat(match(TestParts.inverter(bottomV, topV * (1 - 1e-11))).isPossible()).isFalse();
    assertThat(match(TestParts.inverter(bottomV * (1 + 1e-11), topV)).isPossible()).isFalse();
  }

  @Test
  void unknownAbsoluteMaximumBreaksNothingButIsNotChecked() {
    Device inverter = Device.of("inverter", DeviceRole.INVERTER, TestParts.window(72, 140)).build();
    WindowMatcher matcher = WindowMatcher.of(CELL, 1).device(inverter).under(at200A());
    assertThat(matcher.match().orElseThrow()).contains(30);
    assertThat(matcher.review(30).outcome()).isEqualTo(Outcome.NOT_CHECKED);
  }

  @Test
  void matchesOfLargeModulesStopAtFourHundredCells() {
    Device wide = Device.of("load", DeviceRole.OTHER, TestParts.window(0, 5000)).build();
    assertThat(match(TestParts.module(12), at200A(), wide).orElseThrow()).last().isEqualTo(33);
    assertThat(match(TestParts.module(500), at200A(), wide).orElseThrow()).containsExactly(1);
  }

  @Test
  void matcherNeverChanges() {
    WindowMatcher empty = WindowMatcher.of(CELL, 1).under(at200A());
    WindowMatcher withInverter = empty.device(TestParts.inverter(72, 140));
    assertThat(withInverter.device(TestParts.charger(60, 118.8)).match().orElseThrow())
        .last()
        .isEqualTo(32);
    assertThat(withInverter.match().orElseThrow()).last().isEqualTo(38);
    assertThatExceptionOfType(InvalidInputException.class).isThrownBy(empty::match);
  }

  @Test
  void matcherSaysWhatItHolds() {
    assertThat(WindowMatcher.of(CELL, 1))
        .hasToString("plain module, 1 string, no devices; no conditions");
    assertThat(
            WindowMatcher.of(CELL, 2)
                .device(TestParts.inverter(72, 140))
                .device(TestParts.charger(60, 118.8))
                .under(at200A()))
        .hasToString("plain module, 2 strings, with inverter, charger; " + at200A());
  }

  @Test
  void answersSerialise() {
    WindowMatch fits = match(TestParts.inverter(72, 140));
    WindowMatch conflict = match(TestParts.inverter(102, 140), TestParts.charger(60, 118.8));
    assertThat(Serialisation.copy(fits)).isEqualTo(fits);
    assertThat(Serialisation.copy(conflict)).isEqualTo(conflict);
  }

  @Test
  void countsCannotBeChanged() {
    List<Integer> counts = new java.util.ArrayList<>(List.of(1, 2));
    WindowMatch.Fits fits = new WindowMatch.Fits(counts);
    counts.add(3);
    assertThat(fits.counts()).containsExactly(1, 2);
    assertThatExceptionOfType(UnsupportedOperationException.class)
        .isThrownBy(() -> fits.counts().add(3));
  }

  @Test
  void rejectsWhatIsMissingOrBad() {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> WindowMatcher.of(CELL, 1).device(TestParts.inverter(1, 2)).match())
        .withMessage("WindowMatcher.conditions must be given by under(…), but was missing");
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> WindowMatcher.of(CELL, 1).under(at200A()).match())
        .withMessage(
            "WindowMatcher.devices must be a list with at least one element, but was empty");
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> WindowMatcher.of(CELL, 0))
        .withMessage("WindowMatcher.parallel must be ≥ 1, but was 0");
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(
            () ->
                WindowMatcher.of(CELL, 1)
                    .device(TestParts.inverter(72, 140))
                    .under(at200A())
                    .review(0));
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> WindowMatcher.of(CELL, 1).under(at200A()).review(30));
    assertThatNullPointerException()
        .isThrownBy(() -> WindowMatcher.of(null, 1))
        .withMessage("module");
    assertThatNullPointerException()
        .isThrownBy(() -> WindowMatcher.of(CELL, 1).device(null))
        .withMessage("device");
    assertThatNullPointerException()
        .isThrownBy(() -> WindowMatcher.of(CELL, 1).under(null))
        .withMessage("conditions");
  }

  @Test
  void chargeBelowFullAllowsMoreModules() {
    OperatingConditions ninety =
        TestParts.conditions()
            .stateOfCharge(percentCharge(10), percentCharge(90))
            .peakDischargeCurrent(amperes(200), seconds(10))
            .build();
    // 3.36 V a cell at rest instead of 3.65 V.
    assertThat(match(CELL, ninety, TestParts.charger(60, 118.8)).orElseThrow())
        .last()
        .isEqualTo(35);
  }
}
