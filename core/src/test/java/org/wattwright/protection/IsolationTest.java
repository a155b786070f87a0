package org.wattwright.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.check.Outcome.CAUTION;
import static org.wattwright.check.Outcome.FAIL;
import static org.wattwright.check.Outcome.PASS;
import static org.wattwright.units.Measures.kiloohms;
import static org.wattwright.units.Measures.megaohms;
import static org.wattwright.units.Measures.ohms;
import static org.wattwright.units.Measures.volts;

import java.util.List;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricResistance;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.wattwright.check.Basis;
import org.wattwright.check.Worksheet;
import org.wattwright.testing.Generator;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/** Leaks, their budget, and how they are measured. */
class IsolationTest {
  static Stream<Generator> cases() {
    return Generator.cases(20);
  }

  private static double ohm(Quantity<ElectricResistance> resistance) {
    return Kind.RESISTANCE.siValueOf(resistance);
  }

  private static IsolationMeasurement measured() {
    return new IsolationMeasurement(
        volts(400), volts(250), volts(150), volts(170.212766), kiloohms(200));
  }

  @Nested
  class Leaks {
    @Test
    void theLesserCountsWhicheverPoleItIs() {
      assertThat(new IsolationLeaks(ohms(1), ohms(2)).lesser()).isEqualTo(ohms(1));
      assertThat(new IsolationLeaks(ohms(3), ohms(2)).lesser()).isEqualTo(ohms(2));
      assertThat(IsolationLeaks.even(ohms(4)).monitorReading()).isEqualTo(ohms(2));
    }

    @ParameterizedTest
    @MethodSource("org.wattwright.protection.IsolationTest#cases")
    void everyDeviceMakesItWorse(Generator random) {
      IsolationLeaks first = random(random);
      IsolationLeaks second = random(random);
      IsolationLeaks both = IsolationLeaks.inParallel(List.of(first, second));
      assertThat(ohm(both.plus())).isLessThan(Math.min(ohm(first.plus()), ohm(second.plus())));
      assertThat(1 / ohm(both.minus()))
          .isCloseTo(1 / ohm(first.minus()) + 1 / ohm(second.minus()), within(1e-15));
      double lesserOhm = ohm(both.lesser());
      assertThat(ohm(both.monitorReading())).isBetween(lesserOhm / 2 * (1 - 1e-12), lesserOhm);
      IsolationLeaks turned = IsolationLeaks.inParallel(List.of(second, first));
      assertThat(ohm(turned.plus())).isCloseTo(ohm(both.plus()), within(1e-6));
    }

    private IsolationLeaks random(Generator random) {
      return new IsolationLeaks(
          ohms(random.betweenDecades(1e4, 1e7)), ohms(random.betweenDecades(1e4, 1e7)));
    }

    @Test
    void theRuleDecides() {
      IsolationLeaks leaks = new IsolationLeaks(kiloohms(150), kiloohms(250));
      assertThat(leaks.check(volts(400), IsolationRule.DC).outcome()).isEqualTo(PASS);
      assertThat(leaks.check(volts(400), IsolationRule.AC).outcome()).isEqualTo(FAIL);
      assertThat(leaks.check(volts(400), IsolationRule.DC).comparison())
          .isEqualTo("375 Ω/V ≥ 100 Ω/V");
      assertThat(Kind.CURRENT.siValueOf(leaks.faultCurrent(volts(400))))
          .isCloseTo(400 / 150e3, within(1e-15));
    }

    @Test
    void rejectsWhatCannotBe() {
      assertThatThrownBy(() -> new IsolationLeaks(ohms(0), ohms(1)))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageContaining("IsolationLeaks.plus");
      assertThatThrownBy(() -> new IsolationLeaks(ohms(1), ohms(-1)))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageContaining("IsolationLeaks.minus");
      assertThatThrownBy(() -> IsolationLeaks.inParallel(List.of()))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageContaining("IsolationLeaks.devices");
      assertThatThrownBy(() -> IsolationLeaks.even(ohms(1)).perVolt(volts(0)))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageContaining("IsolationLeaks.working");
      assertThatThrownBy(() -> IsolationLeaks.even(ohms(1)).faultCurrent(volts(-1)))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageContaining("IsolationLeaks.working");
    }
  }

  @Nested
  class Rules {
    @Test
    void anUnknownAcSideAsksForMost() {
      for (IsolationRule rule : IsolationRule.values()) {
        assertThat(ohm(rule.required(volts(400))))
            .isLessThanOrEqualTo(ohm(IsolationRule.JOINED.required(volts(400))));
      }
    }

    @Test
    void requiredGrowsWithVoltageUpTo1500() {
      assertThat(ohm(IsolationRule.DC.required(volts(1500)))).isEqualTo(150_000);
      assertThatThrownBy(() -> IsolationRule.DC.required(volts(1501)))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageContaining("IsolationRule.working");
      assertThatThrownBy(() -> IsolationRule.DC.required(volts(0)))
          .isInstanceOf(InvalidInputException.class);
    }
  }

  @Nested
  class Measurement {
    @ParameterizedTest
    @MethodSource("org.wattwright.protection.IsolationTest#cases")
    void findsTheLesserLeakOfAnyCircuit(Generator random) {
      double packV = random.between(60, 1000);
      double lesserOhm = random.betweenDecades(1e4, 1e7);
      double otherOhm = lesserOhm * random.between(1, 20);
      double knownOhm = random.betweenDecades(1e4, 1e6);
      double againOhm = otherOhm * knownOhm / (otherOhm + knownOhm);
      IsolationMeasurement measurement =
          new IsolationMeasurement(
              volts(packV),
              volts(packV * otherOhm / (otherOhm + lesserOhm)),
              volts(packV * lesserOhm / (otherOhm + lesserOhm)),
              volts(packV * againOhm / (againOhm + lesserOhm)),
              ohms(knownOhm));
      assertThat(ohm(measurement.resistance())).isCloseTo(lesserOhm, within(1e-8 * lesserOhm));
      assertThat(ohm(measurement.resistanceBySum())).isCloseTo(lesserOhm, within(1e-8 * lesserOhm));
    }

    @Test
    void theHighestWorkingVoltageDecides() {
      assertThat(measured().check(volts(400), IsolationRule.DC).outcome()).isEqualTo(PASS);
      assertThat(measured().check(volts(400), IsolationRule.DC).basis()).isEqualTo(Basis.MEASURED);
      // 150 kΩ do for 300 V at 500 Ω/V, not for 400 V
      assertThat(measured().check(volts(250), IsolationRule.JOINED).outcome()).isEqualTo(PASS);
      assertThat(measured().check(volts(400), IsolationRule.JOINED).outcome()).isEqualTo(FAIL);
    }

    @Test
    void theKnownResistanceShouldLieNearTheLimit() {
      assertThat(measured().checkKnown(IsolationRule.JOINED).outcome()).isEqualTo(PASS);
      assertThat(measured().checkKnown(IsolationRule.DC).outcome()).isEqualTo(CAUTION);
      assertThat(known(160).checkKnown(IsolationRule.JOINED).outcome()).isEqualTo(PASS);
      assertThat(known(159).checkKnown(IsolationRule.JOINED).outcome()).isEqualTo(CAUTION);
      assertThat(known(240).checkKnown(IsolationRule.JOINED).outcome()).isEqualTo(PASS);
      assertThat(known(241).checkKnown(IsolationRule.JOINED).outcome()).isEqualTo(CAUTION);
    }

    private IsolationMeasurement known(double kiloohm) {
      return new IsolationMeasurement(
          volts(400), volts(250), volts(150), volts(170), kiloohms(kiloohm));
    }

    @Test
    void theVoltmeterMustNotLoadTheCircuit() {
      assertThat(IsolationMeasurement.checkVoltmeter(megaohms(10)).outcome()).isEqualTo(PASS);
      assertThat(IsolationMeasurement.checkVoltmeter(megaohms(9.9)).outcome()).isEqualTo(FAIL);
      assertThatThrownBy(() -> IsolationMeasurement.checkVoltmeter(ohms(0)))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageContaining("IsolationMeasurement.voltmeter");
    }

    @Test
    void rejectsReadingsThatCannotBe() {
      rejects("pack", 0, 250, 150, 170);
      rejects("higher", 400, 401, 150, 170);
      rejects("higher", 400, 0, 0, 170);
      rejects("lower", 400, 250, 251, 170);
      rejects("lower", 400, 250, -1, 170);
      rejects("withKnown", 400, 250, 150, 0);
      rejects("withKnown", 400, 250, 150, 250);
      assertThatThrownBy(
              () ->
                  new IsolationMeasurement(volts(400), volts(250), volts(150), volts(170), ohms(0)))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageContaining("IsolationMeasurement.known");
    }

    private void rejects(String field, double pack, double higher, double lower, double again) {
      assertThatThrownBy(
              () ->
                  new IsolationMeasurement(
                      volts(pack), volts(higher), volts(lower), volts(again), kiloohms(200)))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageContaining("IsolationMeasurement." + field);
    }

    @Test
    void theWorksheetShowsTheFormula() {
      Worksheet sheet = measured().worksheet(volts(403.2), IsolationRule.JOINED);
      assertThat(sheet.toText())
          .contains("R_i = R_0·U_b·(1/U′ − 1/U_1) = ")
          .contains("= 150 kΩ")
          .contains("R_min = r·U_max = 500 Ω/V · 403.2 V = 201.6 kΩ")
          .contains("[measured]");
      assertThat(sheet.step("R_i").orElseThrow().result().quantity(Kind.RESISTANCE))
          .isEqualTo(measured().resistance());
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, 1001})
  void withstandTestsNeedAMainsVoltage(double bad) {
    assertThatThrownBy(() -> WithstandTest.alternating(volts(bad)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("WithstandTest.supply");
  }
}
