package org.wattwright.conversion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import org.junit.jupiter.api.Test;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.units.InvalidInputException;
import org.wattwright.vehicle.LoadCase;
import org.wattwright.voltage.DeviceRole;

class ExecutivePageTest {
  private static String answer(Conversion conversion, ExecutiveLine line) {
    return String.valueOf(ExecutivePage.of(conversion).answers().get(line));
  }

  private static Conversion.Builder weighed() {
    return InventedVan.conversion()
        .masses(WeighedVan.ledger(WeighedVan.full()))
        .loadCases(LoadCase.KERB, WeighedVan.driver())
        .axleLimits(WeighedVan.limits())
        .chassis(WeighedVan.chassis());
  }

  @Test
  void tenLinesInTheirOrder() {
    ExecutivePage page = ExecutivePage.of(InventedVan.conversion().build());
    assertThat(page.answers().keySet()).containsExactly(ExecutiveLine.values());
    assertThat(page.toText()).hasLineCount(10).startsWith("Verdict           Open: ");
    assertThat(page.toSection().blocks()).hasSize(2);
    DataTable table = (DataTable) page.toSection().blocks().get(0);
    assertThat(table.rows()).hasSize(10).allSatisfy(row -> assertThat(row).doesNotContain(""));
    assertThat(page.toSection().blocks().get(1)).isInstanceOf(Cautions.class);
  }

  /** Eight modules of 8 kg; 10.24 kW·h; 103 V in the middle between 10 % and 100 %. */
  @Test
  void itAnswersWhatTheConversionKnows() {
    Conversion van = InventedVan.conversion().build();
    assertThat(answer(van, ExecutiveLine.WHAT_GOES_IN))
        .isEqualTo("8 modules, 64 kg, in 1 string; inverter, charger.");
    assertThat(answer(van, ExecutiveLine.ENERGY))
        .isEqualTo(
            "10.24 kW·h from full to empty at rest and 25 °C; 103 V nominal. All devices work from"
                + " 10 % to 100 %.");
  }

  @Test
  void whatNobodyReckonedIsSaidToBeUnknown() {
    Conversion van = InventedVan.conversion().build();
    assertThat(answer(van, ExecutiveLine.RANGE)).startsWith("Not reckoned");
    assertThat(answer(van, ExecutiveLine.CHARGE_TIME)).startsWith("Not reckoned");
    assertThat(answer(van, ExecutiveLine.PERFORMANCE)).startsWith("Not reckoned");
    assertThat(answer(van, ExecutiveLine.WEIGHT)).startsWith("Not reckoned");
    assertThat(answer(van, ExecutiveLine.LOAD_SPACE)).startsWith("Not told");
  }

  /** 1000 kg become 1050 kg: front 600 − 200 + 50, rear 400 + 50 + 150. */
  @Test
  void weightSaysAxlesWithTheirChange() {
    assertThat(answer(weighed().build(), ExecutiveLine.WEIGHT))
        .startsWith("kerb 1050 kg (+50 kg): front 450 kg (-150 kg), rear 600 kg (+200 kg); ")
        .contains(", front share ")
        .endsWith(").");
  }

  @Test
  void everyVerdictHasItsWords() {
    Conversion open = InventedVan.conversion().build();
    assertThat(ExecutivePage.of(open)).asString().startsWith("Open: ").contains("4 NOT CHECKED");
    Conversion broken =
        InventedVan.conversion()
            .device(InventedVan.device("heater", DeviceRole.HEATER, 60, 110))
            .build();
    assertThat(answer(broken, ExecutiveLine.VERDICT)).startsWith("Not like this: ");
    assertThat(answer(broken, ExecutiveLine.NEXT))
        .isEqualTo(
            "Change what breaks a limit: full under charge against the upper end of heater.");
  }

  @Test
  void missingNamesTheFirstAndCountsTheRest() {
    Conversion.Builder builder = InventedVan.conversion();
    for (int i = 0; i < 4; i++) {
      builder.requirement(
          Check.named("own.a", "own " + i).source(Source.PHYSICS).notChecked("input " + i));
    }
    assertThat(answer(builder.build(), ExecutiveLine.MISSING))
        .isEqualTo(
            "8 inputs missing, 0 estimated: Conversion.lowVoltage; Conversion.masses; Conversion.charging; and 5 more.");
    assertThat(answer(builder.build(), ExecutiveLine.NEXT)).startsWith("Measure or ask");
  }

  @Test
  void manyBrokenLimitsAreCounted() {
    Conversion.Builder builder = InventedVan.conversion();
    for (int i = 0; i < 5; i++) {
      builder.requirement(
          Check.named("own.a", "own " + i)
              .source(Source.PHYSICS)
              .atMost(Figure.number(3), Figure.number(2)));
    }
    assertThat(answer(builder.build(), ExecutiveLine.NEXT))
        .isEqualTo("Change what breaks a limit: own 0; own 1; own 2; and 2 more.");
  }

  @Test
  void anAnswerReplacesTheOneBefore() {
    ExecutivePage page = ExecutivePage.of(InventedVan.conversion().build());
    ExecutivePage told = page.answer(ExecutiveLine.RANGE, "96 km new");
    assertThat(told.answers()).containsEntry(ExecutiveLine.RANGE, "96 km new");
    assertThat(page.answers().get(ExecutiveLine.RANGE)).startsWith("Not reckoned");
    assertThat(told.toText()).contains("Range             96 km new\n");
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> page.answer(ExecutiveLine.RANGE, " "));
    assertThatExceptionOfType(UnsupportedOperationException.class)
        .isThrownBy(() -> told.answers().clear());
  }
}
