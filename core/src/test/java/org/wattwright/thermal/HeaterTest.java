package org.wattwright.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.cubicMetresPerHour;
import static org.wattwright.units.Measures.joulesPerKilogramKelvin;
import static org.wattwright.units.Measures.kelvinsOfRise;
import static org.wattwright.units.Measures.kilogramsPerCubicMetre;
import static org.wattwright.units.Measures.kilojoulesPerKelvin;
import static org.wattwright.units.Measures.kilometresPerHour;
import static org.wattwright.units.Measures.kilowattHours;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.litresPerMinute;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.minutes;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.wattHoursPerKilometre;
import static org.wattwright.units.Measures.watts;
import static org.wattwright.units.Measures.wattsPerKelvin;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Outcome;
import org.wattwright.testing.Serialisation;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/** Coolants, cabins and heaters: edges, checks, bad input, worksheets. */
class HeaterTest {
  private static final Coolant HALF = Coolant.ethyleneGlycol(0.5);
  private static final CoolantLoad LOAD = CoolantLoad.of(HALF, kilowatts(3), celsius(20));

  private static Cabin.Builder cabin() {
    return Cabin.builder()
        .body(wattsPerKelvin(60))
        .fan(cubicMetresPerHour(60))
        .interior(kilojoulesPerKelvin(70));
  }

  @Test
  void glycolBetweenTheColumnsIsAnEstimate() {
    assertThat(HALF.basis()).isEqualTo(Basis.DATA_SHEET);
    Coolant weak = Coolant.ethyleneGlycol(0.35);
    assertThat(weak.basis()).isEqualTo(Basis.ESTIMATED);
    assertThat(weak).hasToString("ethylene glycol 35 % (estimated)");
    assertThat(Kind.DENSITY.siValueOf(weak.density(celsius(20))))
        .isCloseTo((1045.25 + 1059.68) / 2, within(1e-9));
    assertThat(weak.viscosity(celsius(20))).isEmpty();
    assertThat(weak.prandtlNumber(celsius(20))).isEmpty();
  }

  @Test
  void heatPerVolumeFallsWithTheShareOfGlycol() {
    double last = Double.POSITIVE_INFINITY;
    for (int percent = 30; percent <= 60; percent++) {
      Coolant coolant = Coolant.ethyleneGlycol(percent / 100d);
      double next = Kind.SPECIFIC_HEAT_CAPACITY.siValueOf(coolant.specificHeat(celsius(40)));
      assertThat(next).isLessThan(last);
      last = next;
    }
  }

  @Test
  void coolantRejectsWhatTheTableDoesNotHold() {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> HALF.density(celsius(81)))
        .withMessageContaining("Coolant.temperature must be from -30 to 80 °C, but was 81 °C");
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> Coolant.ethyleneGlycol(0.29));
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> Coolant.ethyleneGlycol(Double.NaN));
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(
            () -> Coolant.of("oil", kilogramsPerCubicMetre(0), joulesPerKilogramKelvin(2000)));
    assertThat(HALF.viscosity(celsius(-25))).isEmpty();
  }

  @Test
  void freezingIsCheckedAgainstTheColdestDay() {
    assertThat(HALF.freezingCheck(celsius(-20)).outcome()).isEqualTo(Outcome.PASS);
    assertThat(HALF.freezingCheck(celsius(-35)).outcome()).isEqualTo(Outcome.CAUTION);
    Check frozen = HALF.freezingCheck(celsius(-40));
    assertThat(frozen.outcome()).isEqualTo(Outcome.FAIL);
    assertThat(frozen.code()).isEqualTo("thermal.coolant-freezing");
    assertThat(Coolant.water().freezingCheck(celsius(-5)).outcome()).isEqualTo(Outcome.NOT_CHECKED);
  }

  @Test
  void riseAndFlowUndoEachOther() {
    assertThat(
            Kind.TEMPERATURE_DIFFERENCE.siValueOf(
                LOAD.riseAt(LOAD.volumeFlowFor(kelvinsOfRise(7))).orElseThrow()))
        .isCloseTo(7, within(7e-12));
    assertThat(LOAD.riseAt(litresPerMinute(0))).isEmpty();
    assertThat(LOAD.worksheet(kelvinsOfRise(5)).step("V̇")).isPresent();
    assertThat(
            CoolantLoad.of(Coolant.water(), kilowatts(1), celsius(20))
                .reynoldsNumber(litresPerMinute(1), millimetres(10)))
        .isEmpty();
  }

  @Test
  void thePumpIsCheckedAgainstTheFlow() {
    assertThat(LOAD.flowCheck(litresPerMinute(12), kelvinsOfRise(5)).outcome())
        .isEqualTo(Outcome.PASS);
    assertThat(LOAD.flowCheck(litresPerMinute(10), kelvinsOfRise(5)).outcome())
        .isEqualTo(Outcome.FAIL);
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> LOAD.volumeFlowFor(kelvinsOfRise(0)));
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> CoolantLoad.of(HALF, watts(0), celsius(20)));
  }

  @Test
  void aStreamNeverTakesMoreThanItsCapacityOrTheWallAllows() {
    double lastWPerK = 0;
    for (double litres = 0.5; litres < 40; litres *= 2) {
      PackCooling stream =
          PackCooling.coolant(HALF, litresPerMinute(litres), celsius(20), wattsPerKelvin(400));
      double nextWPerK = Kind.THERMAL_CONDUCTANCE.siValueOf(stream.conductance());
      assertThat(nextWPerK).isGreaterThan(lastWPerK).isLessThan(400);
      assertThat(stream.effectiveness()).isBetween(0.0, 1.0);
      lastWPerK = nextWPerK;
    }
    PackCooling warm = PackCooling.air(cubicMetresPerHour(100), celsius(40), wattsPerKelvin(20));
    assertThat(Kind.POWER.siValueOf(warm.heatFrom(celsius(30)))).isNegative();
    assertThat(Serialisation.copy(warm)).isEqualTo(warm).hasToString(warm.toString());
  }

  @Test
  void aWarmDayNeedsNoHeat() {
    Cabin cabin = cabin().creditOccupants(2).build();
    assertThat(cabin.steadyLoad(celsius(25), celsius(22))).isEqualTo(watts(0));
    assertThat(cabin.steadyLoad(celsius(22), celsius(22))).isEqualTo(watts(0));
    assertThat(cabin.worksheet(celsius(-10), celsius(22)).steps()).hasSize(4);
  }

  @Test
  void theLoadIsHeldByItself() {
    Cabin cabin = cabin().freshShare(0.5).creditOccupants(1).build();
    double heldK =
        Packs.kelvin(
            cabin
                .temperatureHeldBy(cabin.steadyLoad(celsius(-10), celsius(22)), celsius(-10))
                .orElseThrow());
    assertThat(heldK).isCloseTo(295.15, within(1e-9));
  }

  @Test
  void aWeakHeaterNeverGetsThere() {
    Cabin cabin = cabin().build();
    assertThat(cabin.warmUp(kilowatts(2), celsius(-10), celsius(22))).isEmpty();
    assertThat(
            Cabin.warmUpCheck(cabin.warmUp(kilowatts(2), celsius(-10), celsius(22)), minutes(10)))
        .satisfies(check -> assertThat(check.outcome()).isEqualTo(Outcome.FAIL))
        .satisfies(check -> assertThat(check.code()).isEqualTo("thermal.cabin-warm-up"));
    assertThat(
            Cabin.warmUpCheck(cabin.warmUp(kilowatts(5), celsius(-10), celsius(20)), minutes(15))
                .outcome())
        .isEqualTo(Outcome.PASS);
  }

  @Test
  void aShortTripSpendsFullPowerThroughout() {
    WarmUp warmUp = WarmUp.of(seconds(600), kilowatts(5), kilowatts(2));
    assertThat(Kind.ENERGY.siValueOf(warmUp.energyOver(seconds(60)))).isEqualTo(300_000);
    assertThat(Kind.ENERGY.siValueOf(warmUp.energyOver(seconds(700)))).isEqualTo(3_200_000);
    assertThat(warmUp.worksheet(minutes(40)).step("E")).isPresent();
    assertThat(warmUp).hasToString("10.0 min at 5 kW (0.83 kW·h), then 2000 W");
  }

  @Test
  void recirculationIsACautionThatGivesTheLoadOfFreshAir() {
    List<Check> fresh = cabin().build().checks(kilowatts(3), celsius(-10), celsius(22));
    assertThat(fresh).extracting(Check::outcome).containsOnly(Outcome.PASS);
    List<Check> mixed =
        cabin().freshShare(0.4).build().checks(kilowatts(2), celsius(-10), celsius(22));
    assertThat(mixed).extracting(Check::outcome).containsExactly(Outcome.FAIL, Outcome.CAUTION);
    assertThat(mixed.get(1).note()).contains("2.64 kW");
  }

  @Test
  void cabinRejectsBadInput() {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> Cabin.builder().build())
        .withMessageContaining("body, fan, interior");
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> cabin().freshShare(1.1));
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> cabin().creditOccupants(-1));
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> cabin().build().steadyLoad(celsius(-10), celsius(295)));
    assertThat(Serialisation.copy(cabin().build())).isEqualTo(cabin().build());
    assertThat(cabin().build()).isNotEqualTo(cabin().creditOccupants(1).build());
  }

  @Test
  void stepsHoldALoadInTheMean() {
    HeaterSteps steps = HeaterSteps.ofElements(List.of(kilowatts(1), kilowatts(2)));
    assertThat(steps.powers()).hasSize(4);
    for (double loadW = 0; loadW <= 3000; loadW += 125) {
      HeaterDuty duty = steps.holding(watts(loadW)).orElseThrow();
      assertThat(Kind.POWER.siValueOf(duty.mean())).isCloseTo(loadW, within(1e-9));
      assertThat(duty.upperShare()).isBetween(0.0, 1.0);
    }
    assertThat(steps.holding(watts(3001))).isEmpty();
    HeaterDuty duty = steps.holding(watts(2430)).orElseThrow();
    assertThat(Kind.POWER.siValueOf(duty.lower())).isEqualTo(2000);
    assertThat(duty.upperShare()).isCloseTo(0.43, within(1e-12));
    assertThat(duty.worksheet().step("d")).isPresent();
    assertThat(Serialisation.copy(steps)).isEqualTo(steps);
    assertThat(Serialisation.copy(duty)).isEqualTo(duty);
  }

  @Test
  void stepsRejectBadInput() {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> HeaterSteps.of(List.of(watts(0))));
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> HeaterSteps.of(List.of(watts(-1))));
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> HeaterSteps.ofElements(List.of()));
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> new HeaterDuty(watts(5), watts(5), 0.5));
  }

  @Test
  void theHeaterTakesItsShareOfTheRange() {
    HeaterRange range =
        HeaterRange.of(
            kilowattHours(20), wattHoursPerKilometre(140), kilowatts(2.4), kilometresPerHour(40));
    double ratio = Kind.LENGTH.siValueOf(range.with()) / Kind.LENGTH.siValueOf(range.without());
    assertThat(range.share()).isCloseTo(0.3, within(1e-12));
    assertThat(ratio).isCloseTo(1 - range.share(), within(1e-12));
    assertThat(range.worksheet().step("s")).isPresent();
    assertThat(Serialisation.copy(range)).isEqualTo(range);
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(
            () ->
                HeaterRange.of(
                    kilowattHours(20),
                    wattHoursPerKilometre(140),
                    kilowatts(1),
                    kilometresPerHour(0)))
        .withMessageContaining("HeaterRange.meanSpeed");
  }

  @Test
  void aBodyIsRejectedWithoutHeatCapacity() {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> LumpedBody.of(kilojoulesPerKelvin(0), wattsPerKelvin(1)))
        .withMessageContaining("LumpedBody.heatCapacity");
    LumpedBody body = LumpedBody.of(kilojoulesPerKelvin(10), wattsPerKelvin(2));
    assertThat(body.timeTo(celsius(20), celsius(20), celsius(0), watts(0))).contains(seconds(0));
    assertThat(body.timeTo(celsius(-1), celsius(20), celsius(0), watts(0))).isEmpty();
    assertThat(
            HeaterCore.of(0.75, cubicMetresPerHour(200))
                .worksheet(celsius(65), celsius(-10))
                .steps())
        .hasSize(1);
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> HeaterCore.of(1.2, cubicMetresPerHour(200)));
  }
}
