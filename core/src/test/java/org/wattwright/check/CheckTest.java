package org.wattwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.millivolts;
import static org.wattwright.units.Measures.volts;
import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.CELSIUS;
import static org.wattwright.units.WorkshopUnits.KILOGRAM;
import static org.wattwright.units.WorkshopUnits.VOLT;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;
import org.wattwright.units.Price;

class CheckTest {
  private static final Source INVERTER = Source.dataSheet("inverter");

  private static CheckBuilder voltage() {
    return Check.named("voltage.maximum", "pack full against inverter maximum").source(INVERTER);
  }

  private static Figure v(double volts) {
    return Figure.of(volts(volts), VOLT);
  }

  @Test
  void upperLimitPassesBelowTheBandCautionsWithinItAndFailsAbove() {
    assertThat(voltage().atMost(v(95), v(100)).outcome()).isEqualTo(Outcome.PASS);
    assertThat(voltage().atMost(v(95.01), v(100)).outcome()).isEqualTo(Outcome.CAUTION);
    assertThat(voltage().atMost(v(100), v(100)).outcome()).isEqualTo(Outcome.CAUTION);
    assertThat(voltage().atMost(v(100.01), v(100)).outcome()).isEqualTo(Outcome.FAIL);
  }

  @Test
  void lowerLimitPassesAboveTheBandCautionsWithinItAndFailsBelow() {
    assertThat(voltage().atLeast(v(105), v(100)).outcome()).isEqualTo(Outcome.PASS);
    assertThat(voltage().atLeast(v(104.99), v(100)).outcome()).isEqualTo(Outcome.CAUTION);
    assertThat(voltage().atLeast(v(100), v(100)).outcome()).isEqualTo(Outcome.CAUTION);
    assertThat(voltage().atLeast(v(99.99), v(100)).outcome()).isEqualTo(Outcome.FAIL);
  }

  @Test
  void aCheckOfOneCaseDiffersInItsWordsAlone() {
    Check check = voltage().basis(Basis.ESTIMATED).safety().note("cold").atMost(v(95), v(100));
    Check cold = check.in("at -10 °C");
    assertThat(cold.what()).isEqualTo("pack full against inverter maximum, at -10 °C");
    assertThat(cold).isNotEqualTo(check).isEqualTo(check.in(" at -10 °C "));
    assertThat(cold.toString().replace(", at -10 °C", "")).isEqualTo(check.toString());
    assertThat(cold.outcome()).isEqualTo(check.outcome());
    assertThat(cold.margin()).isEqualTo(check.margin());
    assertThat(cold.source()).isEqualTo(check.source());
    assertThat(cold.isSafety()).isTrue();
    assertThat(cold.note()).isEqualTo("cold");
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> check.in(" "))
        .withMessageContaining("Check.in");
  }

  @Test
  void marginIsPositiveOnTheGoodSide() {
    assertThat(voltage().atMost(v(108), v(116)).margin()).contains(v(8));
    assertThat(voltage().atMost(v(118), v(116)).margin()).contains(v(-2));
    assertThat(voltage().atLeast(v(108), v(116)).margin()).contains(v(-8));
    assertThat(voltage().atLeast(v(118), v(116)).margin()).contains(v(2));
  }

  @Test
  void marginOfATemperatureIsADifference() {
    Check check =
        Check.named("thermal.conductor", "conductor temperature")
            .source(INVERTER)
            .atMost(Figure.of(celsius(81), CELSIUS), Figure.of(celsius(90), CELSIUS));
    assertThat(check.outcome()).isEqualTo(Outcome.PASS);
    assertThat(check.margin().orElseThrow().quantity(Kind.TEMPERATURE_DIFFERENCE))
        .isEqualTo(Measures.kelvinsOfRise(9));
    assertThat(check).hasToString("PASS thermal.conductor: 81 °C ≤ 90 °C, margin 9 K");
  }

  @Test
  void unitsOfActualAndLimitMayDiffer() {
    Check check = voltage().atMost(Figure.of(millivolts(108_000), Kind.VOLTAGE), v(108));
    assertThat(check.outcome()).isEqualTo(Outcome.CAUTION);
    assertThat(check.margin()).contains(v(0));
  }

  @Test
  void roundingOfASumNeitherFailsNorShows() {
    double sum = 0;
    for (int i = 0; i < 30; i++) {
      sum += 3.65;
    }
    assertThat(sum).isGreaterThan(109.5);
    Check check = voltage().cautionBand(CautionBand.NONE).atMost(v(sum), v(109.5));
    assertThat(check.outcome()).isEqualTo(Outcome.PASS);
    assertThat(check.margin()).contains(v(0));
    assertThat(voltage().atMost(v(109.5 * (1 + 1e-11)), v(109.5)).outcome())
        .isEqualTo(Outcome.FAIL);
  }

  @Test
  void edgeOfTheBandIsRoundedToo() {
    // 5 % of 116 V is 5.8 V; 116 - 5.8 is not exact in doubles.
    assertThat(voltage().atMost(v(110.2), v(116)).outcome()).isEqualTo(Outcome.PASS);
  }

  @Test
  void estimateHoldsASafetyCheckBackToCaution() {
    Check held = voltage().safety().basis(Basis.ESTIMATED).atMost(v(50), v(100));
    assertThat(held.outcome()).isEqualTo(Outcome.CAUTION);
    assertThat(held.isSafety()).isTrue();
    assertThat(held.remark()).isEqualTo("an estimate gives at most a caution");
    assertThat(voltage().safety().basis(Basis.ESTIMATED).atMost(v(150), v(100)).outcome())
        .isEqualTo(Outcome.FAIL);
    assertThat(voltage().safety().basis(Basis.ESTIMATED).holds(true).outcome())
        .isEqualTo(Outcome.CAUTION);
    assertThat(voltage().safety().basis(Basis.MEASURED).atMost(v(50), v(100)).outcome())
        .isEqualTo(Outcome.PASS);
    Check comfort = voltage().basis(Basis.ESTIMATED).atMost(v(50), v(100));
    assertThat(comfort.outcome()).isEqualTo(Outcome.PASS);
    assertThat(comfort.isSafety()).isFalse();
    assertThat(comfort.remark()).isEmpty();
  }

  @Test
  void weakestBasisCounts() {
    assertThat(voltage().atMost(v(1), v(2)).basis()).isEqualTo(Basis.DATA_SHEET);
    assertThat(voltage().basis(Basis.MEASURED).atMost(v(1), v(2)).basis())
        .isEqualTo(Basis.MEASURED);
    assertThat(voltage().basis(Basis.ESTIMATED).basis(Basis.MEASURED).atMost(v(1), v(2)).basis())
        .isEqualTo(Basis.ESTIMATED);
    Given<String> measured = Given.measured("x", "meter");
    Given<String> stated = Given.dataSheet("y", "cell");
    assertThat(voltage().basisOf(measured, stated).atMost(v(1), v(2)).basis())
        .isEqualTo(Basis.DATA_SHEET);
    assertThat(voltage().basisOf(measured).atMost(v(1), v(2)).basis()).isEqualTo(Basis.MEASURED);
  }

  @Test
  void estimatedInputsAreNamedOnce() {
    Check check =
        voltage().estimated("cell.resistance", "joint", "joint").safety().atMost(v(1), v(2));
    assertThat(check.basis()).isEqualTo(Basis.ESTIMATED);
    assertThat(check.estimates()).containsExactly("cell.resistance", "joint");
    assertThat(check.remark())
        .isEqualTo("estimated: cell.resistance, joint; an estimate gives at most a caution");
  }

  @Test
  void missingInputIsNeverAPass() {
    Check check = voltage().answeredBy(Party.PARTS_SUPPLIER).notChecked("inverter.maximumVoltage");
    assertThat(check.outcome()).isEqualTo(Outcome.NOT_CHECKED);
    assertThat(check.missing()).containsExactly("inverter.maximumVoltage");
    assertThat(check.answeredBy()).isEqualTo(Party.PARTS_SUPPLIER);
    assertThat(check.actual()).isEmpty();
    assertThat(check.limit()).isEmpty();
    assertThat(check.margin()).isEmpty();
    assertThat(check).hasToString("NOT CHECKED voltage.maximum: missing inverter.maximumVoltage");
  }

  @Test
  void valueIsKeptWhereOnlyTheLimitIsMissing() {
    Check check = voltage().note("ask again").notChecked(v(108), "inverter.maximumVoltage");
    assertThat(check.outcome()).isEqualTo(Outcome.NOT_CHECKED);
    assertThat(check.actual()).contains(v(108));
    assertThat(check.comparison()).isEqualTo("108 V");
    assertThat(check.remark()).isEqualTo("missing: inverter.maximumVoltage; ask again");
  }

  @Test
  void statementHoldsOrNot() {
    assertThat(voltage().holds(true).outcome()).isEqualTo(Outcome.PASS);
    Check broken = voltage().holds(false);
    assertThat(broken.outcome()).isEqualTo(Outcome.FAIL);
    assertThat(broken.relation()).isEqualTo(Check.Relation.HOLDS);
    assertThat(broken.relation().sign()).isEmpty();
    assertThat(broken).hasToString("FAIL voltage.maximum: pack full against inverter maximum");
    assertThat(broken.comparison()).isEmpty();
  }

  @Test
  void recommendationNeverFails() {
    assertThat(voltage().recommends(true).outcome()).isEqualTo(Outcome.PASS);
    assertThat(voltage().recommends(false).outcome()).isEqualTo(Outcome.CAUTION);
    assertThat(voltage().safety().basis(Basis.ESTIMATED).recommends(true).outcome())
        .isEqualTo(Outcome.CAUTION);
    assertThat(voltage().recommends(false))
        .hasToString("CAUTION voltage.maximum: pack full against inverter maximum");
  }

  @Test
  void textShowsTheSignThatIsTrue() {
    assertThat(voltage().atMost(v(108), v(116)))
        .hasToString("PASS voltage.maximum: 108 V ≤ 116 V, margin 8 V");
    assertThat(voltage().atMost(v(118), v(116)))
        .hasToString("FAIL voltage.maximum: 118 V > 116 V, margin -2 V");
    assertThat(voltage().atLeast(v(115), v(116)))
        .hasToString("FAIL voltage.maximum: 115 V < 116 V, margin -1 V");
    assertThat(voltage().atLeast(v(130), v(116)))
        .hasToString("PASS voltage.maximum: 130 V ≥ 116 V, margin 14 V");
  }

  @Test
  void limitMissedByAHairDoesNotReadAsKept() {
    assertThat(voltage().atMost(v(116.004), v(116)))
        .hasToString("FAIL voltage.maximum: 116.004 V > 116.000 V, margin -4 mV");
    assertThat(voltage().atMost(Figure.of(millivolts(116_004), Kind.VOLTAGE), v(116)).comparison())
        .contains(">");
  }

  @Test
  void tellsWhatItWasMadeOf() {
    Check check =
        Check.named("mass.pack", " pack mass ")
            .source(Source.requirement("customer"))
            .note(" weighed twice ")
            .basis(Basis.MEASURED)
            .atMost(Figure.of(kilograms(280), KILOGRAM), Figure.of(kilograms(290), KILOGRAM));
    assertThat(check.code()).isEqualTo("mass.pack");
    assertThat(check.what()).isEqualTo("pack mass");
    assertThat(check.relation()).isEqualTo(Check.Relation.AT_MOST);
    assertThat(check.actual()).contains(Figure.of(kilograms(280), KILOGRAM));
    assertThat(check.limit()).contains(Figure.of(kilograms(290), KILOGRAM));
    assertThat(check.source()).isEqualTo(Source.requirement("customer"));
    assertThat(check.note()).isEqualTo("weighed twice");
    assertThat(check.answeredBy()).isEqualTo(Party.WORKSHOP);
    assertThat(check.missing()).isEmpty();
    assertThat(check.estimates()).isEmpty();
  }

  @Test
  void builderMayGoOnWithoutChangingWhatItMade() {
    CheckBuilder builder = voltage().estimated("a");
    Check first = builder.atMost(v(1), v(2));
    builder.estimated("b").note("later").safety();
    assertThat(first.estimates()).containsExactly("a");
    assertThat(first.note()).isEmpty();
    assertThat(first.isSafety()).isFalse();
  }

  @Test
  void rejectsWhatCannotBeCompared() {
    rejects(
        () -> voltage().atMost(v(1), Figure.of(amperes(1), AMPERE)),
        "Check.limit must be comparable with the actual value 1 V, but was 1 A");
    rejects(
        () -> voltage().atMost(Figure.count(3), Figure.number(3)),
        "Check.limit must be comparable with the actual value 3, but was 3");
    rejects(
        () -> voltage().atMost(Figure.of(Price.of("5", "EUR")), Figure.of(Price.of("5", "USD"))),
        "Check.limit must be comparable with the actual value 5.00 EUR, but was 5.00 USD");
  }

  @Test
  void rejectsBandOfAnotherKind() {
    CautionBand amperes = CautionBand.absolute(amperes(5), Kind.CURRENT);
    rejects(
        () -> voltage().cautionBand(amperes).atMost(v(1), v(2)),
        "Check.cautionBand must be a voltage like the margin, but was a current");
    rejects(
        () -> voltage().cautionBand(amperes).atMost(v(3), v(2)),
        "Check.cautionBand must be a voltage like the margin, but was a current");
  }

  @Test
  void rejectsCheckWithoutSource() {
    CheckBuilder sourceless = Check.named("a.b", "what");
    String message = "Check a.b needs the source of its limit";
    rejects(() -> sourceless.atMost(v(1), v(2)), message);
    rejects(() -> sourceless.holds(true), message);
    rejects(() -> sourceless.notChecked("x"), message);
  }

  @Test
  void rejectsBadTexts() {
    String bound = "Check.code must be in lower case with dots, such as voltage.maximum, but was ";
    rejects(() -> Check.named("Voltage", "x"), bound + "\"Voltage\"");
    rejects(() -> Check.named("voltage maximum", "x"), bound + "\"voltage maximum\"");
    rejects(() -> Check.named("voltage.", "x"), bound + "\"voltage.\"");
    rejects(() -> Check.named("", "x"), bound + "\"\"");
    assertThat(Check.named("emf.over-speed.2", "x").code()).isEqualTo("emf.over-speed.2");
    rejects(() -> Check.named("a", " "), "Check.what must be a text, but was \" \"");
    rejects(() -> voltage().estimated(""), "Check.estimated must be a text, but was \"\"");
    rejects(
        () -> voltage().notChecked(),
        "Check.missing must be a list with at least one element, but was empty");
    rejects(() -> voltage().notChecked(" "), "Check.missing must be a text, but was \" \"");
  }

  @Test
  void rejectsNullByName() {
    assertThatNullPointerException().isThrownBy(() -> voltage().source(null)).withMessage("source");
    assertThatNullPointerException().isThrownBy(() -> voltage().basis(null)).withMessage("basis");
    assertThatNullPointerException().isThrownBy(() -> voltage().note(null)).withMessage("note");
    assertThatNullPointerException()
        .isThrownBy(() -> voltage().cautionBand(null))
        .withMessage("band");
    assertThatNullPointerException()
        .isThrownBy(() -> voltage().answeredBy(null))
        .withMessage("answeredBy");
  }

  @Test
  void saysWhichShareOfItsLimitIsUsed() {
    Figure three = Figure.ofSi(3, VOLT);
    Figure four = Figure.ofSi(4, VOLT);
    assertThat(voltage().atMost(three, four).use()).contains(0.75);
    assertThat(voltage().atLeast(three, four).use()).contains(4.0 / 3);
    assertThat(voltage().holds(true).use()).isEmpty();
    assertThat(voltage().notChecked(three, "limit").use()).isEmpty();
    Figure warm = Figure.ofSi(300, CELSIUS);
    assertThat(voltage().atMost(warm, warm).use()).isEmpty();
    Figure none = Figure.ofSi(0, VOLT);
    assertThat(voltage().atMost(none, none).use()).isEmpty();
  }

  private static void rejects(ThrowingCallable call, String message) {
    assertThatExceptionOfType(InvalidInputException.class).isThrownBy(call).withMessage(message);
  }

  /** 1500.0000000000002 ≤ 1500 would be a false statement; the rounding of a sum is let pass. */
  @Test
  void valuesThatOnlyRoundingTellsApartReadAlike() {
    Check check =
        Check.named("mass.gross", "gross mass")
            .source(Source.PHYSICS)
            .atMost(Figure.number(Math.nextUp(1500.0)), Figure.number(1500));
    assertThat(check.outcome()).isEqualTo(Outcome.CAUTION);
    assertThat(check.comparison()).isEqualTo("1500 ≤ 1500");
  }
}
