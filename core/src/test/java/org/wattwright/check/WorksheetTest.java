package org.wattwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.volts;
import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.CELSIUS;
import static org.wattwright.units.WorkshopUnits.KILOWATT;
import static org.wattwright.units.WorkshopUnits.MILLIOHM;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.util.ArrayList;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.wattwright.testing.Locales;
import org.wattwright.units.InvalidInputException;

class WorksheetTest {
  private static Worksheet sheet() {
    Worksheet.Recording recording = Worksheet.record("Pack voltage");
    recording
        .step("U_full", "pack voltage, full at rest")
        .formula("S·u_max")
        .with("S", Figure.count(30))
        .with("u_max", Given.dataSheet(volts(3.65), "cell"), VOLT)
        .gives(109.5, VOLT);
    recording
        .step(
            "I",
            "current at a power that the pack must give without falling below its limit, cold and old")
        .formula("2·P/(U₀ + √(U₀² − 4·R₀·P))")
        .with("P", 20_000, KILOWATT)
        .with("U₀", 109.5, VOLT)
        .with("R₀", 0.035, MILLIOHM)
        .basis(Basis.ESTIMATED)
        .basis(Basis.MEASURED)
        .source(Source.literature("Invented handbook of traction batteries", "2nd edition, p. 12"))
        .gives(196, AMPERE);
    recording.step("T_a", "ambient temperature").gives(Figure.of(celsius(40), CELSIUS));
    return recording.toWorksheet();
  }

  @Test
  void keepsTheStepsInTheirOrder() {
    assertThat(sheet().steps()).extracting(Step::symbol).containsExactly("U_full", "I", "T_a");
    assertThat(sheet().step("I").orElseThrow().result()).isEqualTo(Figure.ofSi(196, AMPERE));
    assertThat(sheet().step("x")).isEmpty();
  }

  @Test
  void lastStepOfASymbolIsFound() {
    Worksheet.Recording twice = Worksheet.record("t");
    twice.step("a", "first").gives(Figure.number(1));
    twice.step("a", "second").gives(Figure.number(2));
    assertThat(twice.toWorksheet().step("a").orElseThrow().result()).isEqualTo(Figure.number(2));
  }

  @Test
  void textShowsFormulaNumbersResultBasisAndSource() {
    assertThat(sheet().toText())
        .isEqualTo(
            """
            Pack voltage
              1.  pack voltage, full at rest [data sheet]
                  U_full = S·u_max = 30 · 3.65 V = 109.5 V
                  Source: law of physics
              2.  current at a power that the pack must give without falling below its limit, cold and old
                  [estimated]
                  I = 2·P/(U₀ + √(U₀² − 4·R₀·P))
                    = 2 · 20 kW / (109.5 V + √((109.5 V)² − 4 · 35 mΩ · 20 kW))
                    = 196 A
                  Source: Invented handbook of traction batteries, 2nd edition, p. 12
              3.  ambient temperature [data sheet]
                  T_a = 40 °C
                  Source: as given
            """);
  }

  @Test
  void markdownIsATableUnderAHeading() {
    assertThat(sheet().toMarkdown())
        .startsWith("### Pack voltage\n\n| What ")
        .contains("| U_full = S·u_max               | 30 · 3.65 V ")
        .contains("| T_a                            |  ")
        .endsWith("|\n");
    assertThat(sheet().toMarkdown(1)).startsWith("# Pack voltage\n");
    assertThat(sheet().toMarkdown().lines()).hasSize(7);
  }

  @Test
  void textFromInputCannotBreakTheLayout() {
    Worksheet.Recording recording = Worksheet.record("A | B\n# C <b>");
    recording
        .step("x", "a | b\nsecond line")
        .source(Source.dataSheet("<script>\tx"))
        .gives(Figure.number(1));
    Worksheet sheet = recording.toWorksheet();
    assertThat(sheet.toText().lines()).hasSize(4);
    assertThat(sheet.toMarkdown().lines()).hasSize(5);
    assertThat(sheet.toMarkdown())
        .startsWith("### A \\| B \\# C &lt;b&gt;\n")
        .contains("a \\| b second line", "&lt;script&gt; x")
        .doesNotContain("<script>");
  }

  @Test
  void textIsTheSameUnderEveryLocale() {
    String text = sheet().toText() + sheet().toMarkdown();
    for (var locale : Locales.ALL) {
      Locales.with(
          locale, () -> assertThat(sheet().toText() + sheet().toMarkdown()).isEqualTo(text));
    }
  }

  @Test
  void linesFitATerminalAndEndWithoutSpace() {
    Worksheet.Recording recording = Worksheet.record("long");
    String many = "word ".repeat(60).strip();
    recording
        .step("x", many)
        .formula(many)
        .with("x", Figure.number(1))
        .source(Source.dataSheet(many))
        .gives(Figure.number(1));
    assertThat(recording.toWorksheet().toText().lines())
        .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100).doesNotEndWith(" "));
  }

  @Test
  void numbersKeepTheirUnitsWhereALineBreaks() {
    for (int length = 60; length < 100; length++) {
      Worksheet.Recording recording = Worksheet.record("t");
      recording.step("x", "w".repeat(length) + " at 10 % and -5 °C").gives(Figure.number(1));
      assertThat(recording.toWorksheet().toText()).contains("10 %", "-5 °C");
    }
  }

  @Test
  void readsWellInOneLine() {
    assertThat(sheet()).hasToString("Pack voltage (3 steps; toText() prints them)");
    assertThat(sheet().steps().get(0)).hasToString("U_full = S·u_max = 30 · 3.65 V = 109.5 V");
    assertThat(sheet().steps().get(2)).hasToString("T_a = 40 °C");
    assertThat(sheet().steps().get(0).inputs().get(1)).hasToString("u_max = 3.65 V");
    assertThat(sheet().steps().get(2).substituted()).isEmpty();
  }

  @Test
  void formulaWithoutInputsIsShownOnce() {
    Worksheet.Recording recording = Worksheet.record("t");
    recording.step("g", "standard gravity").formula("9.80665 m/s²").gives(Figure.number(9.80665));
    assertThat(recording.toWorksheet().steps().get(0)).hasToString("g = 9.80665 m/s² = 9.807");
    assertThat(recording.toWorksheet().steps().get(0).source()).isEqualTo(Source.PHYSICS);
  }

  @Test
  void recordingGoesOnWithoutChangingTheSheet() {
    Worksheet.Recording recording = Worksheet.record("t");
    recording.step("a", "first").gives(Figure.number(1));
    Worksheet before = recording.toWorksheet();
    recording.step("b", "second").gives(Figure.number(2));
    assertThat(before.steps()).hasSize(1).isUnmodifiable();
    assertThat(recording.isOn()).isTrue();
    assertThat(recording).hasToString("t (2 steps so far)");
  }

  @Test
  void listsAreCopied() {
    List<Step> steps = new ArrayList<>(sheet().steps());
    Worksheet made = new Worksheet("t", steps);
    steps.clear();
    assertThat(made.steps()).hasSize(3);
    List<Step.Input> inputs = new ArrayList<>(List.of(new Step.Input("a", Figure.number(1))));
    Step step = new Step("x", "m", " f ", inputs, Figure.number(1), Basis.MEASURED, Source.PHYSICS);
    inputs.clear();
    assertThat(step.inputs()).hasSize(1).isUnmodifiable();
    assertThat(step.formula()).isEqualTo("f");
  }

  @Test
  void recorderThatIsOffRefusesSteps() {
    assertThat(Recorder.OFF.isOn()).isFalse();
    StepBuilder step = Recorder.OFF.step("x", "nobody asked");
    assertThatIllegalStateException()
        .isThrownBy(() -> step.gives(Figure.number(1)))
        .withMessage("recorder is off: ask isOn() first");
  }

  @Test
  void rejectsBlankTexts() {
    rejects(() -> Worksheet.record(" "), "Worksheet.title must be a text, but was \" \"");
    rejects(() -> new Worksheet("", List.of()), "Worksheet.title must be a text, but was \"\"");
    rejects(() -> Worksheet.record("t").step("", "m"), "Step.symbol must be a text, but was \"\"");
    rejects(() -> Worksheet.record("t").step("x", ""), "Step.meaning must be a text, but was \"\"");
    rejects(
        () -> new Step.Input(" ", Figure.number(1)), "Step.input must be a text, but was \" \"");
    rejects(() -> sheet().toMarkdown(7), "Worksheet.headingLevel must be from 1 to 6, but was 7");
    rejects(() -> sheet().toMarkdown(0), "Worksheet.headingLevel must be from 1 to 6, but was 0");
  }

  private static void rejects(ThrowingCallable call, String message) {
    assertThatExceptionOfType(InvalidInputException.class).isThrownBy(call).withMessage(message);
  }
}
