package org.wattwright.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.check.Outcome.FAIL;
import static org.wattwright.check.Outcome.NOT_CHECKED;
import static org.wattwright.check.Outcome.PASS;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.farads;
import static org.wattwright.units.Measures.grams;
import static org.wattwright.units.Measures.joules;
import static org.wattwright.units.Measures.kiloohms;
import static org.wattwright.units.Measures.microfarads;
import static org.wattwright.units.Measures.microhenries;
import static org.wattwright.units.Measures.millifarads;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.milliseconds;
import static org.wattwright.units.Measures.minutes;
import static org.wattwright.units.Measures.ohms;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;
import static org.wattwright.units.Measures.watts;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.check.Check;
import org.wattwright.check.Outcome;
import org.wattwright.check.Worksheet;
import org.wattwright.testing.Generator;
import org.wattwright.testing.ValueTypeContract;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Price;
import org.wattwright.voltage.Device;
import org.wattwright.voltage.DeviceRole;
import org.wattwright.voltage.VoltageRange;
import org.wattwright.voltage.VoltageWindow;

/** Pre-charge: corners, loads, choice of the resistor, faults; all parts are invented. */
class PrechargeTest {
  private static final Contactor CONTACTOR =
      Contactor.of("K", volts(450)).makeLimit(amperes(200)).build();

  private static PrechargeBuilder plain() {
    return Precharge.from(volts(400)).capacitance(microfarads(1000));
  }

  private static PrechargeResistor fortyOhm() {
    return PrechargeResistor.of("R", ohms(40));
  }

  private static double second(PrechargeCourse course) {
    return Kind.TIME.siValueOf(course.timeToTarget().orElseThrow());
  }

  private static Check check(PrechargeResult result, String code) {
    return result.checks().stream().filter(c -> c.code().equals(code)).findFirst().orElseThrow();
  }

  private static Outcome outcome(PrechargeResult result, String code) {
    return check(result, "precharge." + code).outcome();
  }

  @Nested
  class Target {
    @Test
    void theMakeLimitMayBeStricterThanTheUsualShare() {
      Precharge precharge = plain().supplyResistance(milliohms(60)).contactor(CONTACTOR).build();
      assertThat(Kind.VOLTAGE.siValueOf(precharge.targetDifference())).isCloseTo(12, within(1e-12));
      PrechargeResult result = precharge.with(fortyOhm());
      assertThat(second(result.nominal())).isCloseTo(0.04006 * Math.log(400 / 12.0), within(1e-12));
      assertThat(check(result, "contactor.make").comparison()).isEqualTo("200 A ≤ 200 A");
    }

    @Test
    void theShareMayBeStricterThanTheMakeLimit() {
      Precharge precharge = plain().supplyResistance(milliohms(200)).contactor(CONTACTOR).build();
      assertThat(Kind.VOLTAGE.siValueOf(precharge.targetDifference())).isCloseTo(20, within(1e-12));
      assertThat(check(precharge.with(fortyOhm()), "contactor.make").outcome()).isEqualTo(PASS);
    }

    @Test
    void inductanceHelpsAtTheHighestCapacitance() {
      // √(10 µH/1200 µF) = 91.29 mΩ against 60 mΩ
      Precharge precharge =
          plain()
              .capacitanceTolerance(0.2)
              .supplyResistance(milliohms(60))
              .loopInductance(microhenries(10))
              .contactor(CONTACTOR)
              .build();
      assertThat(Kind.VOLTAGE.siValueOf(precharge.targetDifference()))
          .isCloseTo(200 * Math.sqrt(10e-6 / 1.2e-3), within(1e-9));
    }

    @Test
    void withoutAnyResistanceTheInrushIsNotKnown() {
      Check check = check(plain().contactor(CONTACTOR).build().with(fortyOhm()), "contactor.make");
      assertThat(check.outcome()).isEqualTo(NOT_CHECKED);
      assertThat(check.missing()).containsExactly("precharge.supplyResistance");
      ClosingInrush open = new ClosingInrush(ohms(0), microhenries(0), microfarads(1));
      assertThatThrownBy(() -> open.peak(volts(1)))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageContaining("ClosingInrush.resistance");
    }

    @Test
    void admissibleDifferenceDrivesTheLimitItself() {
      ClosingInrush loop = new ClosingInrush(ohms(0.05), microhenries(4), microfarads(900));
      double volt = Kind.VOLTAGE.siValueOf(loop.admissible(amperes(300)));
      assertThat(Kind.CURRENT.siValueOf(loop.peak(volts(volt)))).isCloseTo(300, within(1e-9));
    }
  }

  @Nested
  class Working {
    @Test
    void showsCourseCornersPeakAndEnergy() {
      Precharge precharge =
          plain()
              .capacitanceTolerance(0.2)
              .supplyResistance(milliohms(60))
              .contactor(CONTACTOR)
              .build();
      PrechargeResult result = precharge.with(fortyOhm().tolerance(0.05));
      Worksheet sheet = result.worksheet();
      assertThat(sheet.toText())
          .contains("ΔU = I_make·Z = 200 A · 60 mΩ = 12 V")
          .contains("U_c = U − ΔU = 400 V − 12 V = 388 V")
          .contains("τ = (R + R_s)·C = (40 Ω + 60 mΩ) · 1 mF = 40.06 ms")
          .contains("t = τ·ln(U_end/(U_end − U_c)) =")
          .contains("I_0 = U/(R·(1 − r) + R_s) = ");
      assertThat(step(sheet, "t", Kind.TIME)).isEqualTo(second(result.nominal()));
      assertThat(step(sheet, "t_max", Kind.TIME)).isEqualTo(second(result.slowest()));
      assertThat(step(sheet, "I_0", Kind.CURRENT)).isCloseTo(400 / 38.06, within(1e-12));
      assertThat(step(sheet, "P_0", Kind.POWER))
          .isCloseTo(400 / 38.06 * (400 / 38.06) * 38, within(1e-9));
      assertThat(step(sheet, "W", Kind.ENERGY))
          .isEqualTo(Kind.ENERGY.siValueOf(result.energyPerShot().orElseThrow()));
    }

    @Test
    void showsLoads() {
      PrechargeBuilder resistive = plain().load(PrechargeLoad.resistance("bleed", ohms(2000)));
      assertThat(resistive.build().with(fortyOhm()).worksheet().toText())
          .contains("ΔU = (1 − s)·U = (1 − 95 %) · 400 V = 20 V")
          .contains("U_end = U/(1 + (R + R_s)/R_L) = 400 V / (1 + (40 Ω + 0 Ω) / 2 kΩ) = 392.2 V")
          .contains("τ = C/(1/(R + R_s) + 1/R_L) =");
      PrechargeResult stuck =
          resistive.load(PrechargeLoad.current("pump", amperes(1))).build().with(fortyOhm());
      assertThat(stuck.worksheet().toText())
          .contains("U_end = (U − (R + R_s)·I_L)/(1 + (R + R_s)/R_L)")
          .contains("= 352.9 V");
      assertThat(stuck.worksheet().step("t")).isEmpty();
      assertThat(stuck.worksheet().step("t_max")).isEmpty();
      assertThat(stuck.worksheet().step("W")).isEmpty();
    }

    private <Q extends javax.measure.Quantity<Q>> double step(
        Worksheet sheet, String symbol, Kind<Q> kind) {
      return kind.siValueOf(sheet.step(symbol).orElseThrow().result().quantity(kind));
    }
  }

  @Nested
  class Corners {
    private final PrechargeResult result =
        plain().capacitanceTolerance(0.2).build().with(fortyOhm().tolerance(0.05));

    @Test
    void bothAreWorkedOut() {
      assertThat(second(result.slowest())).isCloseTo(0.04 * 1.26 * Math.log(20), within(1e-12));
      assertThat(second(result.quickest())).isCloseTo(0.04 * 0.76 * Math.log(20), within(1e-12));
      assertThat(Kind.CURRENT.siValueOf(result.quickest().peakCurrent()))
          .isCloseTo(400 / 38.0, within(1e-12));
    }

    @Test
    void energyCountsTheHighestCapacitance() {
      double joule = Kind.ENERGY.siValueOf(result.energyPerShot().orElseThrow());
      assertThat(joule).isCloseTo(96 * (1 - 0.05 * 0.05), within(1e-9));
      assertThat(Kind.ENERGY.siValueOf(plain().capacitanceTolerance(0.2).build().energyPerShot()))
          .isCloseTo(96, within(1e-9));
    }
  }

  @Nested
  class Loads {
    @Test
    void aLoadLeavesAResidualAndIsAnAnswer() {
      PrechargeResult result =
          plain()
              .load(PrechargeLoad.resistance("heater", ohms(400)))
              .within(seconds(1))
              .timeOut(seconds(2))
              .build()
              .with(fortyOhm());
      assertThat(result.nominal().completes()).isFalse();
      assertThat(result.nominal().timeToTarget()).isEmpty();
      assertThat(result.nominal()).hasToString("never closes: stays at 363.6 V");
      assertThat(outcome(result, "completes")).isEqualTo(FAIL);
      assertThat(outcome(result, "time")).isEqualTo(FAIL);
      assertThat(outcome(result, "time-out")).isEqualTo(FAIL);
    }

    @Test
    void energyOfOneThatNeverCompletesRunsToTheTimeOut() {
      PrechargeBuilder loaded = plain().load(PrechargeLoad.resistance("heater", ohms(400)));
      assertThat(loaded.build().with(fortyOhm()).energyPerShot()).isEmpty();
      PrechargeResult result = loaded.timeOut(seconds(100)).build().with(fortyOhm());
      // steady (400/440)² · 40 for 100 s, and what charging adds
      double steadyJ = 40.0 * 400 / 440 * 400 / 440 * 100;
      assertThat(Kind.ENERGY.siValueOf(result.energyPerShot().orElseThrow()))
          .isBetween(steadyJ, steadyJ + 200);
    }

    @Test
    void theLoadThatJustPreventsIt() {
      // G·u = (U − u)/R at u = 0.95·U
      double limitOhm = 40 * 0.95 / 0.05;
      assertThat(withLoad(limitOhm * (1 + 1e-9)).completes()).isTrue();
      assertThat(withLoad(limitOhm * (1 - 1e-9)).completes()).isFalse();
    }

    private PrechargeCourse withLoad(double ohm) {
      return plain()
          .load(PrechargeLoad.resistance("load", ohms(ohm)))
          .build()
          .with(fortyOhm())
          .nominal();
    }

    @Test
    void aCurrentBeyondTheSourceKeepsTheBusEmpty() {
      PrechargeCourse course =
          plain()
              .load(PrechargeLoad.current("pump", amperes(11)))
              .build()
              .with(fortyOhm())
              .nominal();
      assertThat(course.finalVoltage()).isEqualTo(volts(0));
      assertThat(course.voltageAt(seconds(1))).isEqualTo(volts(0));
      assertThat(course.completes()).isFalse();
    }

    @Test
    void aPowerCountsAsItsCurrentWhereItStarts() {
      PrechargeLoad power = PrechargeLoad.power("DC-DC", watts(100), volts(200));
      assertThat(power.currentA()).isEqualTo(0.5);
      PrechargeCourse course = plain().load(power).build().with(fortyOhm()).nominal();
      assertThat(course.finalVoltage()).isEqualTo(volts(380));
    }

    @Test
    void energyFromThePackIsAccountedFor() {
      PrechargeCourse course = withLoad(2000);
      double timeS = 0.1;
      double packJ = Kind.ENERGY.siValueOf(course.packEnergy(seconds(timeS)));
      double resistorJ = Kind.ENERGY.siValueOf(course.resistorEnergy(seconds(timeS)));
      double busV = Kind.VOLTAGE.siValueOf(course.voltageAt(seconds(timeS)));
      double loadJ = 0;
      int steps = 20_000;
      for (int i = 0; i < steps; i++) {
        double u = Kind.VOLTAGE.siValueOf(course.voltageAt(seconds(timeS * (i + 0.5) / steps)));
        loadJ += u * u / 2000 * timeS / steps;
      }
      assertThat(resistorJ + loadJ + 0.5e-3 * busV * busV).isCloseTo(packJ, within(1e-6 * packJ));
    }
  }

  @Nested
  class Choice {
    @Test
    void largestValueThatClosesInTime() {
      // 161.26 Ω for 2070 µF in 1 s, so 150 Ω; a 5 % resistor must lie below 153.6 Ω
      Precharge precharge = Precharge.from(volts(400)).capacitance(microfarads(2070)).build();
      assertThat(precharge.largestResistance(seconds(1), PreferredValues.E24, 0))
          .hasValue(ohms(160));
      assertThat(precharge.largestResistance(seconds(1), PreferredValues.E24, 0.05))
          .hasValue(ohms(150));
    }

    @Test
    void valueOnTheBoundCounts() {
      double exactS = 47 * 1e-3 * Math.log(20);
      assertThat(plain().build().largestResistance(seconds(exactS), PreferredValues.E12, 0))
          .hasValue(ohms(47));
    }

    @Test
    void noneIfTheLoadIsTooStrong() {
      Precharge precharge =
          Precharge.from(volts(400))
              .capacitance(microfarads(1000))
              .supplyResistance(ohms(1))
              .load(PrechargeLoad.current("fault", amperes(50)))
              .build();
      assertThat(precharge.largestResistance(seconds(9), PreferredValues.E12, 0)).isEmpty();
    }

    @Test
    void smallestValueThatSurvivesAShort() {
      // 160000 V²·0.5 s/2000 J = 40 Ω; at −5 % 42.1 Ω
      Precharge precharge = plain().build();
      assertThat(
              precharge.smallestResistance(joules(2000), milliseconds(500), PreferredValues.E24, 0))
          .isEqualTo(ohms(43));
      assertThat(
              precharge.smallestResistance(
                  joules(2000), milliseconds(500), PreferredValues.E24, 0.05))
          .isEqualTo(ohms(43));
      assertThat(
              precharge.smallestResistance(
                  joules(2000), milliseconds(500), PreferredValues.E24, 0.1))
          .isEqualTo(ohms(47));
    }
  }

  @Nested
  class Verdicts {
    private PrechargeResistor rated() {
      return fortyOhm()
          .tolerance(0.05)
          .continuousPower(watts(25))
          .pulseEnergy(joules(600))
          .overload(
              new PrechargeResistor.Overload(watts(250), seconds(5)),
              new PrechargeResistor.Overload(watts(2500), seconds(0.4)))
          .voltage(volts(900))
          .mass(grams(80))
          .price(Price.of("9.50", "EUR"));
    }

    private PrechargeBuilder asked() {
      return plain().within(milliseconds(200)).timeOut(milliseconds(135)).repeats(3, minutes(1));
    }

    @Test
    void soundDesignPassesAll() {
      PrechargeResult result = asked().build().with(rated());
      // shorted: 400²/38 = 4211 W, beyond the curve, so 600 J/4211 W = 0.1425 s
      assertThat(Kind.TIME.siValueOf(result.survivesShortedBus().orElseThrow()))
          .isCloseTo(600 * 38 / 160_000.0, within(1e-12));
      for (String code :
          List.of("completes", "time", "pulse-energy", "mean-power", "resistor-voltage")) {
        assertThat(outcome(result, code)).as(code).isEqualTo(PASS);
      }
      assertThat(outcome(result, "shorted-bus")).isNotIn(FAIL, NOT_CHECKED);
      assertThat(outcome(result, "time-out")).isEqualTo(PASS);
    }

    @Test
    void timeOutTooLongBurnsTooShortStops() {
      assertThat(outcome(asked().timeOut(milliseconds(143)).build().with(rated()), "shorted-bus"))
          .isEqualTo(FAIL);
      assertThat(outcome(asked().timeOut(milliseconds(120)).build().with(rated()), "time-out"))
          .isEqualTo(FAIL);
    }

    @Test
    void overloadCurveDecidesWhereItReaches() {
      PrechargeResistor resistor = rated();
      assertThat(resistor.bears(watts(250))).hasValue(seconds(5));
      assertThat(resistor.bears(watts(25))).isEmpty();
      assertThat(resistor.bearsS(25)).isInfinite();
      assertThat(resistor.bears(watts(100))).hasValue(seconds(6));
      assertThat(fortyOhm().bears(watts(100))).isEmpty();
    }

    @Test
    void manyShotsHeatTheResistor() {
      PrechargeResult result = asked().repeats(30, minutes(1)).build().with(rated());
      assertThat(outcome(result, "mean-power")).isEqualTo(FAIL);
      assertThat(Kind.POWER.siValueOf(result.meanPower().orElseThrow()))
          .isCloseTo(40 * (1 - 0.0025), within(1e-9));
    }

    @Test
    void missingFieldsAreNamed() {
      PrechargeResult result = plain().build().with(fortyOhm());
      assertThat(check(result, "precharge.pulse-energy").missing())
          .containsExactly("resistor.pulseEnergy");
      assertThat(check(result, "precharge.mean-power").missing())
          .containsExactly("precharge.repeats");
      assertThat(check(result, "precharge.resistor-voltage").missing())
          .containsExactly("resistor.voltage");
      assertThat(check(result, "precharge.shorted-bus").missing())
          .containsExactly("precharge.timeOut", "resistor.pulseEnergy");
      assertThat(check(result, "precharge.time-out").missing())
          .containsExactly("precharge.timeOut");
      assertThat(check(result, "contactor.make").missing()).containsExactly("precharge.contactor");
    }

    @Test
    void aDeviceOfUnknownCapacitanceLeavesTimesOpen() {
      Device heater =
          Device.of(
                  "heater",
                  DeviceRole.HEATER,
                  VoltageWindow.operating(VoltageRange.between(volts(250), volts(450))))
              .build();
      PrechargeResult result = asked().device(heater).build().with(rated());
      for (String code : List.of("time", "pulse-energy", "mean-power", "time-out")) {
        Check check = check(result, "precharge." + code);
        assertThat(check.outcome()).as(code).isEqualTo(NOT_CHECKED);
        assertThat(check.missing()).containsExactly("heater.capacitance");
      }
    }

    @Nested
    class ResistorAsValue extends ValueTypeContract<PrechargeResistor> {
      @Override
      protected PrechargeResistor sample() {
        return rated();
      }

      @Override
      protected List<PrechargeResistor> different() {
        return List.of(
            fortyOhm(),
            rated().tolerance(0.1),
            rated().continuousPower(watts(30)),
            rated().pulseEnergy(joules(1)),
            rated().voltage(volts(1)),
            rated().mass(grams(1)),
            rated().price(Price.of("1.00", "EUR")));
      }

      @Test
      void handsOutWhatItWasGiven() {
        assertThat(rated().continuousPower()).hasValue(watts(25));
        assertThat(rated().pulseEnergy()).hasValue(joules(600));
        assertThat(rated().voltage()).hasValue(volts(900));
        assertThat(rated().mass()).hasValue(grams(80));
        assertThat(rated().price()).hasValue(Price.of("9.50", "EUR"));
        assertThat(rated().resistance()).isEqualTo(ohms(40));
      }
    }
  }

  @Nested
  class Edges {
    @Test
    void anEmptyBusIsFullAtOnce() {
      PrechargeCourse course = Precharge.from(volts(400)).build().with(fortyOhm()).nominal();
      assertThat(course.timeToTarget()).hasValue(seconds(0));
      assertThat(course.voltageAt(seconds(1e-9))).isEqualTo(volts(400));
      assertThat(course.resistorEnergy(seconds(5))).isEqualTo(joules(0));
    }

    @Test
    void atTheStartNothingHasHappened() {
      PrechargeCourse course = plain().build().with(fortyOhm()).nominal();
      assertThat(course.voltageAt(seconds(0))).isEqualTo(volts(0));
      assertThat(course.timeTo(volts(0))).hasValue(seconds(0));
      assertThat(course.timeTo(volts(400))).isEmpty();
    }

    @Test
    void plotFollowsTheCourse() {
      PrechargeCourse course = plain().build().with(fortyOhm()).nominal();
      assertThat(course.voltage(seconds(0.2)).at(seconds(0.1)))
          .isEqualTo(course.voltageAt(seconds(0.1)));
    }

    @Test
    void unitsDoNotMatter() {
      Precharge other = Precharge.from(volts(400)).capacitance(millifarads(1)).build();
      assertThat(second(other.with(PrechargeResistor.of("R", kiloohms(0.04))).nominal()))
          .isCloseTo(second(plain().build().with(fortyOhm()).nominal()), within(1e-15));
    }

    @Test
    void badInputNamesTheField() {
      assertThatThrownBy(() -> Precharge.from(volts(0)))
          .hasMessage("Precharge.supply must be > 0 V, but was 0 V");
      assertThatThrownBy(() -> plain().capacitance(farads(-1)))
          .hasMessageContaining("Precharge.capacitance must be ≥ 0 µF");
      assertThatThrownBy(() -> plain().closingShare(Double.NaN))
          .hasMessageContaining("Precharge.closingShare");
      assertThatThrownBy(() -> fortyOhm().tolerance(0.6))
          .hasMessageContaining("PrechargeResistor.tolerance");
      assertThatThrownBy(() -> PrechargeLoad.power("x", watts(1), volts(0)))
          .hasMessageContaining("PrechargeLoad.startsAt");
    }
  }

  static Stream<Generator> cases() {
    return Generator.cases(100);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void moreResistanceCapacitanceOrLoadIsNeverQuicker(Generator random) {
    double ohm = random.betweenDecades(1, 500);
    double farad = random.betweenDecades(1e-5, 1e-2);
    double loadA = random.between(0, 0.02) * 400 / ohm;
    double timeS = timeS(ohm, farad, loadA);
    assertThat(timeS(ohm * 1.1, farad, loadA)).isGreaterThan(timeS);
    assertThat(timeS(ohm, farad * 1.1, loadA)).isGreaterThan(timeS);
    assertThat(timeS(ohm, farad, loadA * 1.1)).isGreaterThanOrEqualTo(timeS);
  }

  private static double timeS(double ohm, double farad, double loadA) {
    PrechargeCourse course =
        Precharge.from(volts(400))
            .capacitance(farads(farad))
            .load(PrechargeLoad.current("load", amperes(loadA)))
            .build()
            .with(PrechargeResistor.of("R", ohms(ohm)))
            .nominal();
    return second(course);
  }
}
