package org.wattwright.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.check.Outcome.FAIL;
import static org.wattwright.check.Outcome.NOT_CHECKED;
import static org.wattwright.check.Outcome.PASS;
import static org.wattwright.units.Measures.farads;
import static org.wattwright.units.Measures.joules;
import static org.wattwright.units.Measures.kiloohms;
import static org.wattwright.units.Measures.microfarads;
import static org.wattwright.units.Measures.ohms;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;

import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.wattwright.check.Check;
import org.wattwright.check.Source;
import org.wattwright.check.Worksheet;
import org.wattwright.testing.Generator;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/** Discharge of a bus and the energy in it. */
class BusDischargeTest {
  private static final BusDischarge BLEED =
      new BusDischarge(microfarads(1000), volts(400), kiloohms(47));

  static Stream<Generator> cases() {
    return Generator.cases(20);
  }

  private static double second(javax.measure.Quantity<javax.measure.quantity.Time> time) {
    return Kind.TIME.siValueOf(time);
  }

  @Nested
  class Course {
    @Test
    void fallsToAThirdInATimeConstant() {
      assertThat(BLEED.voltageAt(seconds(0))).isEqualTo(volts(400));
      assertThat(Kind.VOLTAGE.siValueOf(BLEED.voltageAt(seconds(47))))
          .isCloseTo(400 / Math.E, within(1e-10));
      assertThat(second(BLEED.timeTo(volts(400 / Math.E)))).isCloseTo(47, within(1e-10));
    }

    @Test
    void aLowerStartTakesNoTime() {
      assertThat(BLEED.timeTo(volts(400))).isEqualTo(seconds(0));
      assertThat(BLEED.timeTo(volts(401))).isEqualTo(seconds(0));
    }

    @Test
    void allItsEnergyEndsInTheResistance() {
      assertThat(Kind.ENERGY.siValueOf(BLEED.energyTo(volts(0)))).isCloseTo(80, within(1e-10));
      assertThat(BLEED.energyTo(volts(400))).isEqualTo(joules(0));
      assertThat(Kind.POWER.siValueOf(BLEED.lossAtFullVoltage()))
          .isCloseTo(160_000.0 / 47_000, within(1e-12));
    }

    @Test
    void rejectsWhatCannotBe() {
      assertThatThrownBy(() -> BLEED.voltageAt(seconds(-1)))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageContaining("BusDischarge.time");
      assertThatThrownBy(() -> BLEED.timeTo(volts(0)))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageContaining("BusDischarge.voltage");
      assertThatThrownBy(() -> BLEED.energyTo(volts(400.1)))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageContaining("BusDischarge.voltage");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1})
    void everyFieldMustBePositive(double bad) {
      assertThatThrownBy(() -> new BusDischarge(farads(bad), volts(400), ohms(1)))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageContaining("BusDischarge.capacitance");
      assertThatThrownBy(() -> new BusDischarge(farads(1), volts(bad), ohms(1)))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageContaining("BusDischarge.from");
      assertThatThrownBy(() -> new BusDischarge(farads(1), volts(400), ohms(bad)))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageContaining("BusDischarge.resistance");
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void courseAndItsInverseAgree(Generator random) {
    double startV = random.between(70, 900);
    BusDischarge bus =
        new BusDischarge(
            farads(random.betweenDecades(1e-5, 1e-2)),
            volts(startV),
            ohms(random.betweenDecades(10, 1e6)));
    double endV = startV * random.between(0.05, 0.95);
    double timeS = second(bus.timeTo(volts(endV)));
    assertThat(Kind.VOLTAGE.siValueOf(bus.voltageAt(seconds(timeS))))
        .isCloseTo(endV, within(1e-11 * endV));
    double halfJ = Kind.ENERGY.siValueOf(bus.energyTo(volts(endV)));
    double wholeJ = Kind.ENERGY.siValueOf(StoredEnergy.WHOLE.in(bus.capacitance(), volts(startV)));
    double leftJ = Kind.ENERGY.siValueOf(StoredEnergy.WHOLE.in(bus.capacitance(), volts(endV)));
    assertThat(halfJ + leftJ).isCloseTo(wholeJ, within(1e-12 * wholeJ));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void theLargestResistanceJustKeepsTheTime(Generator random) {
    double farad = random.betweenDecades(1e-5, 1e-2);
    double startV = random.between(70, 900);
    DischargeRule rule = DischargeRule.AFTER_CRASH;
    double ohm =
        Kind.RESISTANCE.siValueOf(
            BusDischarge.largestResistance(farads(farad), volts(startV), rule));
    BusDischarge bus = new BusDischarge(farads(farad), volts(startV), ohms(ohm));
    assertThat(second(bus.timeToHarmless(rule))).isCloseTo(10, within(1e-11));
    BusDischarge more = new BusDischarge(farads(farad), volts(startV), ohms(ohm * 1.001));
    assertThat(more.check(rule).outcome()).isEqualTo(FAIL);
    BusDischarge less = new BusDischarge(farads(farad), volts(startV), ohms(ohm * 0.8));
    assertThat(less.check(rule).outcome()).isEqualTo(PASS);
  }

  @Nested
  class Rules {
    @Test
    void lowEnergyCountsOnlyWhereTheRuleAdmitsIt() {
      // 10 µF hold 0.2 J at 200 V
      BusDischarge small = new BusDischarge(microfarads(10), volts(400), kiloohms(100));
      assertThat(second(small.timeToHarmless(DischargeRule.AFTER_CRASH)))
          .isCloseTo(Math.log(2), within(1e-12));
      assertThat(second(small.timeToHarmless(DischargeRule.BLEED)))
          .isCloseTo(Math.log(400 / 60.0), within(1e-12));
      Check crash = small.check(DischargeRule.AFTER_CRASH);
      assertThat(crash.note()).isEqualTo("by less than 0.2 J");
      assertThat(small.check(DischargeRule.BLEED).note()).isEqualTo("by 60 V");
    }

    @Test
    void aLargeBusIsHarmlessBy60VoltsEvenAfterACrash() {
      // 1 mF hold 0.2 J at 20 V: 60 V come first
      assertThat(BLEED.timeToHarmless(DischargeRule.AFTER_CRASH))
          .isEqualTo(BLEED.timeTo(volts(60)));
      assertThat(BLEED.check(DischargeRule.AFTER_CRASH).note()).isEqualTo("by 60 V");
    }

    @Test
    void eachCaseHasItsOwnTime() {
      Check bleed = BLEED.check(DischargeRule.BLEED);
      assertThat(bleed.outcome()).isEqualTo(PASS);
      assertThat(bleed.code()).isEqualTo("discharge.time");
      assertThat(BLEED.check(DischargeRule.ACTIVE_DISCHARGE).outcome()).isEqualTo(FAIL);
      assertThat(BLEED.check(DischargeRule.AFTER_CRASH_LATEST).outcome()).isEqualTo(FAIL);
      DischargeRule own =
          new DischargeRule("own rule", seconds(90), false, Source.requirement("workshop"));
      assertThat(BLEED.check(own).comparison()).isEqualTo("89.16 s ≤ 90 s");
    }

    @Test
    void aBusBelow60VoltsNeedsNoResistance() {
      assertThat(BusDischarge.largestResistance(microfarads(1000), volts(48), DischargeRule.BLEED))
          .isEqualTo(ohms(1e12));
      BusDischarge low = new BusDischarge(microfarads(1000), volts(48), ohms(1e9));
      assertThat(low.check(DischargeRule.SEPARATED_CONNECTOR).outcome()).isEqualTo(PASS);
    }

    @Test
    void saysItself() {
      assertThat(DischargeRule.BLEED).hasToString("bleed: 60 V in 120 s");
      assertThat(DischargeRule.AFTER_CRASH).hasToString("after a crash: 60 V or 0.2 J in 10 s");
    }

    @Test
    void needsANameAndATime() {
      Source source = Source.requirement("test");
      assertThatThrownBy(() -> new DischargeRule(" ", seconds(1), true, source))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageContaining("DischargeRule.name");
      assertThatThrownBy(() -> new DischargeRule("rule", seconds(0), true, source))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageContaining("DischargeRule.within");
    }
  }

  @Test
  void theWorksheetShowsTheCourse() {
    Worksheet sheet = BLEED.worksheet(DischargeRule.BLEED);
    assertThat(sheet.toText())
        .contains("τ = R·C = 47 kΩ · 1 mF = 47 s")
        .contains("t = τ·ln(U_0/U) = 47 s · ln(400 V / 60 V) = 89.16 s")
        .contains("P = U_0²/R = (400 V)² / 47 kΩ = 3.404 W");
    assertThat(sheet.step("t").orElseThrow().result().quantity(Kind.TIME))
        .isEqualTo(BLEED.timeToHarmless(DischargeRule.BLEED));
    BusDischarge small = new BusDischarge(microfarads(10), volts(400), kiloohms(100));
    assertThat(small.worksheet(DischargeRule.AFTER_CRASH).toText())
        .contains("harmless, by less than 0.2 J", "U = max(60 V, √(2·W/C)) =");
    assertThat(
            new BusDischarge(microfarads(1), volts(50), ohms(1))
                .worksheet(DischargeRule.BLEED)
                .step("t")
                .orElseThrow()
                .result()
                .quantity(Kind.TIME))
        .isEqualTo(seconds(0));
  }

  @Nested
  class Energy {
    @Test
    void thePartAbove60VoltsIsNothingBelow() {
      assertThat(StoredEnergy.ABOVE_60_V.in(farads(1), volts(60))).isEqualTo(joules(0));
      assertThat(StoredEnergy.ABOVE_60_V.in(farads(1), volts(12))).isEqualTo(joules(0));
      assertThat(StoredEnergy.WHOLE.in(farads(0), volts(400))).isEqualTo(joules(0));
    }

    @ParameterizedTest
    @ValueSource(doubles = {61, 120, 403.2, 800})
    void theLimitHoldsJustTheLimit(double volt) {
      for (StoredEnergy form : StoredEnergy.values()) {
        double joule =
            Kind.ENERGY.siValueOf(form.in(form.capacitanceAtLimit(volts(volt)), volts(volt)));
        assertThat(joule).isCloseTo(0.2, within(1e-13));
      }
    }

    @Test
    void rejectsWhatCannotBe() {
      assertThatThrownBy(() -> StoredEnergy.WHOLE.in(farads(-1), volts(1)))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageContaining("StoredEnergy.capacitance");
      assertThatThrownBy(() -> StoredEnergy.WHOLE.in(farads(1), volts(-1)))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageContaining("StoredEnergy.voltage");
      assertThatThrownBy(() -> StoredEnergy.WHOLE.capacitanceAtLimit(volts(0)))
          .isInstanceOf(InvalidInputException.class);
      assertThatThrownBy(() -> StoredEnergy.ABOVE_60_V.capacitanceAtLimit(volts(60)))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageContaining("above 60");
    }

    @Test
    void yCapacitorsMustStayStrictlyBelow() {
      RailCapacitance pole = new RailCapacitance(microfarads(2.5));
      assertThat(pole.check(volts(300)).outcome()).isEqualTo(PASS);
      assertThat(pole.check(volts(401)).outcome()).isEqualTo(FAIL);
      // 1 F at √0.4 V is not 0.2 J to the last digit; 0.4 F at 1 V is
      assertThat(new RailCapacitance(farads(0.4)).check(volts(1)).outcome()).isEqualTo(FAIL);
      assertThat(new RailCapacitance(farads(0.4)).check(volts(1)).note())
          .isEqualTo("must be less than 0.2 J");
      assertThat(new RailCapacitance(farads(0)).check(volts(800)).outcome())
          .isEqualTo(PASS)
          .isNotEqualTo(NOT_CHECKED);
    }

    @Test
    void yCapacitorsOfAllDevicesAddUp() {
      RailCapacitance sum =
          RailCapacitance.of(java.util.List.of(microfarads(0.1), microfarads(0.3), farads(0)));
      assertThat(Kind.CAPACITANCE.siValueOf(sum.total())).isCloseTo(0.4e-6, within(1e-18));
      assertThat(RailCapacitance.of(java.util.List.of()).total()).isEqualTo(farads(0));
      assertThatThrownBy(() -> RailCapacitance.of(java.util.List.of(farads(-1))))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageContaining("RailCapacitance.device");
      assertThatThrownBy(() -> new RailCapacitance(farads(-1)))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageContaining("RailCapacitance.total");
    }
  }
}
