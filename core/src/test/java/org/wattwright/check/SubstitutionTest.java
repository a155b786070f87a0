package org.wattwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.volts;
import static org.wattwright.units.Measures.watts;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import org.junit.jupiter.api.Test;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

class SubstitutionTest {
  private final List<Step.Input> inputs = new ArrayList<>();

  private <Q extends Quantity<Q>> SubstitutionTest with(
      String symbol, Quantity<Q> value, Kind<Q> kind) {
    inputs.add(new Step.Input(symbol, Figure.of(value, kind)));
    return this;
  }

  private SubstitutionTest with(String symbol, double number) {
    inputs.add(new Step.Input(symbol, Figure.number(number)));
    return this;
  }

  private String in(String formula) {
    return Substitution.of(formula, inputs);
  }

  @Test
  void replacesSymbolsBySpacedValues() {
    with("S", 30).with("u", volts(3.65), Kind.VOLTAGE);
    assertThat(in("S·u")).isEqualTo("30 · 3.65 V");
    assertThat(in("S × u")).isEqualTo("30 × 3.65 V");
  }

  @Test
  void symbolIsAWholeWord() {
    with("U", volts(1), Kind.VOLTAGE).with("U_min", volts(2.5), Kind.VOLTAGE).with("R₀", 7);
    assertThat(in("U + U_min − U_max")).isEqualTo("1 V + 2.5 V − U_max (R₀ = 7)");
    assertThat(in("R₀·U")).isEqualTo("7 · 1 V (U_min = 2.5 V)");
    assertThat(in("R·U + R₀₁ + U_min")).isEqualTo("R · 1 V + R₀₁ + 2.5 V (R₀ = 7)");
  }

  @Test
  void symbolsMayBeGreekPrimedSubscriptedOrMarked() {
    with("η", 0.9).with("Δu", volts(3), Kind.VOLTAGE).with("R′₂₀", 5).with("x̄", 8).with("αₐ", 6);
    assertThat(in("η·Δu·R′₂₀·x̄·αₐ")).isEqualTo("0.9 · 3 V · 5 · 8 · 6");
  }

  @Test
  void functionsStay() {
    with("a", 2).with("b", 3).with("x", 4);
    assertThat(in("min(a, b) + ln(x) + max(a; b)")).isEqualTo("min(2, 3) + ln(4) + max(2; 3)");
    assertThat(in("√(a² + b²) + x")).isEqualTo("√((2)² + (3)²) + 4");
  }

  @Test
  void rootsAndPowersGetBrackets() {
    with("R", milliohms(50), Kind.RESISTANCE).with("I", amperes(100), Kind.CURRENT);
    assertThat(in("I²·R")).isEqualTo("(100 A)² · 50 mΩ");
    assertThat(in("√R·I")).isEqualTo("√(50 mΩ) · 100 A");
    assertThat(in("R^2 + I")).isEqualTo("(50 mΩ)^2 + 100 A");
    assertThat(in("2^R + I")).isEqualTo("2^(50 mΩ) + 100 A");
  }

  @Test
  void negativeValuesGetBrackets() {
    with("T", celsius(-20), Kind.TEMPERATURE).with("U", 3);
    assertThat(in("U − T")).isEqualTo("3 − (-20 °C)");
  }

  @Test
  void divisorWithACompositeUnitGetsBrackets() {
    with("P", watts(10), Kind.POWER)
        .with("k", Measures.wattsPerKelvin(0.5), Kind.THERMAL_CONDUCTANCE)
        .with("U", volts(5), Kind.VOLTAGE);
    assertThat(in("P/k + U")).isEqualTo("10 W / (0.5 W/K) + 5 V");
    assertThat(in("P / k + U")).isEqualTo("10 W / (0.5 W/K) + 5 V");
    assertThat(in("P/U + k")).isEqualTo("10 W / 5 V + 0.5 W/K");
  }

  @Test
  void numberBesideASymbolIsAProduct() {
    with("R", milliohms(100), Kind.RESISTANCE).with("P", 7);
    assertThat(in("4R·P")).isEqualTo("4 · 100 mΩ · 7");
    assertThat(in("(1 + P)R")).isEqualTo("(1 + 7) · 100 mΩ");
    assertThat(in("P(1 + R)")).isEqualTo("7 · (1 + 100 mΩ)");
  }

  @Test
  void numbersAndTheirUnitsStay() {
    with("C", 5).with("s", 9).with("T", celsius(50), Kind.TEMPERATURE).with("e", 2);
    assertThat(in("C·(T − 20 °C) + e + s")).isEqualTo("5 · (50 °C − 20 °C) + 2 + 9");
    assertThat(in("1e-6·C + 3600 s + 0.5·e·T"))
        .isEqualTo("1e-6 · 5 + 3600 s + 0.5 · 2 · 50 °C (s = 9)");
    assertThat(in("2E+3·C + 10 s/s + e·T")).isEqualTo("2E+3 · 5 + 10 s / 9 + 2 · 50 °C");
    assertThat(in("C − 1 ")).startsWith("5 − 1 ");
  }

  @Test
  void spacesThatAreThereAreNotDoubled() {
    with("a", 1).with("b", 2);
    assertThat(in("a · b")).isEqualTo("1 · 2");
    assertThat(in("a / b")).isEqualTo("1 / 2");
    assertThat(in("a/ b")).isEqualTo("1 / 2");
  }

  @Test
  void longestSymbolWins() {
    with("U", 1).with("U(SoC, T)", 2).with("dU/dT", 3);
    assertThat(in("U(SoC, T) − U + dU/dT")).isEqualTo("2 − 1 + 3");
  }

  @Test
  void inputsTheFormulaDoesNotShowStandBehind() {
    with("a", 1).with("x", 2).with("y", 3);
    assertThat(in("a + 1")).isEqualTo("1 + 1 (x = 2; y = 3)");
    assertThat(in("")).isEqualTo("(a = 1; x = 2; y = 3)");
    assertThat(in("largest of all")).isEqualTo("largest of all (a = 1; x = 2; y = 3)");
  }

  @Test
  void valueIsNotReadAgainForSymbols() {
    with("V", volts(5), Kind.VOLTAGE).with("A", 3);
    assertThat(in("V·A")).isEqualTo("5 V · 3");
  }

  @Test
  void symbolMayStandMoreThanOnce() {
    with("I", amperes(2), Kind.CURRENT);
    assertThat(in("I + I·I")).isEqualTo("2 A + 2 A · 2 A");
  }

  @Test
  void digitsOfOtherScriptsAreCopiedAsTheyAre() {
    with("a", 1);
    assertThat(in("٣·a")).isEqualTo("٣ · 1");
  }

  @Test
  void cubeRootsAndDoublePrimesAreKnown() {
    with("R″", milliohms(2), Kind.RESISTANCE).with("V", 8);
    assertThat(in("∛V·R″")).isEqualTo("∛(8) · 2 mΩ");
    assertThat(in("V×R″ ")).isEqualTo("8 × 2 mΩ ");
    assertThat(in("V₍ₙ₎·R″ + V")).isEqualTo("V₍ₙ₎ · 2 mΩ + 8");
  }
}
