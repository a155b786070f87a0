package org.wattwright.conversion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.kiloohms;
import static org.wattwright.units.Measures.megaohms;
import static org.wattwright.units.Measures.nanofarads;
import static org.wattwright.units.Measures.volts;

import org.junit.jupiter.api.Test;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Outcome;
import org.wattwright.check.Worksheet;
import org.wattwright.protection.IsolationLeaks;
import org.wattwright.protection.IsolationRule;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

class IsolationBudgetTest {
  private static final IsolationBudget EMPTY = IsolationBudget.at(volts(100), IsolationRule.JOINED);
  private static final IsolationBudget TWO =
      EMPTY
          .with("inverter", IsolationLeaks.even(megaohms(2)), nanofarads(470), Basis.DATA_SHEET)
          .with(
              "battery",
              new IsolationLeaks(megaohms(2), megaohms(6)),
              nanofarads(30),
              Basis.MEASURED);

  /** By hand: 2 MΩ and 2 MΩ in parallel are 1 MΩ, 2 MΩ and 6 MΩ are 1.5 MΩ. */
  @Test
  void devicesLieInParallelPoleByPole() {
    assertThat(Kind.RESISTANCE.siValueOf(TWO.together().plus())).isCloseTo(1e6, within(1e-6));
    assertThat(Kind.RESISTANCE.siValueOf(TWO.together().minus())).isCloseTo(1.5e6, within(1e-6));
    assertThat(Kind.CAPACITANCE.siValueOf(TWO.capacitors().total()))
        .isCloseTo(500e-9, within(1e-18));
    assertThat(TWO.basis()).isEqualTo(Basis.DATA_SHEET);
    assertThat(TWO.working()).isEqualTo(volts(100));
  }

  /** By hand: 1 MΩ / 100 V is 10 kΩ/V against 500 Ω/V; ½ · 500 nF · (100 V)² is 2.5 mJ. */
  @Test
  void bothChecksLookAtAllTogether() {
    assertThat(TWO.checks())
        .extracting(Check::code)
        .containsExactly("isolation.resistance", "isolation.touch-energy");
    assertThat(TWO.checks()).extracting(Check::outcome).containsOnly(Outcome.PASS);
    assertThat(TWO.checks().get(0).actual().orElseThrow()).hasToString("10000 Ω/V");
    assertThat(TWO.checks().get(1).actual().orElseThrow()).hasToString("0.0025 J");
  }

  @Test
  void oneLeakyDeviceFailsAll() {
    IsolationBudget leaky =
        TWO.with("heater", IsolationLeaks.even(kiloohms(40)), nanofarads(1), Basis.MEASURED);
    assertThat(leaky.checks().get(0).outcome()).isEqualTo(Outcome.FAIL);
  }

  @Test
  void withoutDevicesNothingIsClaimed() {
    assertThat(EMPTY.checks()).extracting(Check::outcome).containsExactly(Outcome.NOT_CHECKED);
    assertThat(EMPTY).hasToString("0 devices at 100 V: nothing known");
  }

  @Test
  void badInputIsNamed() {
    assertThatThrownBy(() -> IsolationBudget.at(volts(0), IsolationRule.DC))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("IsolationBudget.working");
    assertThatThrownBy(
            () -> EMPTY.with(" ", IsolationLeaks.even(megaohms(1)), nanofarads(1), Basis.MEASURED))
        .isInstanceOf(InvalidInputException.class);
    assertThatThrownBy(
            () -> EMPTY.with("x", IsolationLeaks.even(megaohms(1)), nanofarads(-1), Basis.MEASURED))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("capacitor of x");
  }

  /** By hand: 1 MΩ, 500 Ω/V · 100 V = 50 kΩ, 100 V / 1 MΩ = 100 µA, ½ · 500 nF · (100 V)². */
  @Test
  void theWorksheetShowsHowAllAddsUp() {
    Worksheet sheet = TWO.worksheet();
    assertThat(sheet.steps())
        .extracting(step -> step.symbol() + " = " + step.result())
        .containsExactly(
            "U = 100 V",
            "R_p = 1 MΩ",
            "R_n = 1.5 MΩ",
            "R = 1 MΩ",
            "r = 500 Ω/V",
            "R_min = 50 kΩ",
            "I = 100 µA",
            "C_Y = 500 nF",
            "E = 0.0025 J");
    assertThat(sheet.steps().get(1).substituted()).contains("2 MΩ");
    assertThat(sheet.steps().get(1).basis()).isEqualTo(Basis.DATA_SHEET);
    assertThatThrownBy(EMPTY::worksheet).isInstanceOf(InvalidInputException.class);
  }
}
