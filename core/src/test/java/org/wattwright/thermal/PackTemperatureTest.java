package org.wattwright.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.thermal.Packs.SERIES;
import static org.wattwright.thermal.Packs.hold;
import static org.wattwright.thermal.Packs.kelvin;
import static org.wattwright.thermal.Packs.state;
import static org.wattwright.units.Measures.ampereHours;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.cubicMetresPerHour;
import static org.wattwright.units.Measures.fahrenheit;
import static org.wattwright.units.Measures.hours;
import static org.wattwright.units.Measures.joulesPerKilogramKelvin;
import static org.wattwright.units.Measures.kelvins;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.kilojoulesPerKelvin;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.litresPerMinute;
import static org.wattwright.units.Measures.milliamperes;
import static org.wattwright.units.Measures.minutes;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.wattsPerKelvin;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Temperature;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.wattwright.battery.BandEnd;
import org.wattwright.battery.CellEstimates;
import org.wattwright.battery.Chemistry;
import org.wattwright.battery.Direction;
import org.wattwright.battery.Pack;
import org.wattwright.battery.PackState;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Outcome;
import org.wattwright.profile.Profile;
import org.wattwright.testing.Serialisation;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.SpecificHeatCapacity;
import org.wattwright.units.WorkshopUnits;

class PackTemperatureTest {
  private static final double AIR_W_PER_K = 12;
  private static final double AIR_K = 303.15;
  private static final double CAPACITY_J_PER_K = SERIES * Packs.MASS_KG * Packs.SPECIFIC_J_PER_KG_K;
  private static final PackCooling STREAM =
      PackCooling.coolant(
          Coolant.ethyleneGlycol(0.5), litresPerMinute(6), celsius(22), wattsPerKelvin(400));

  /** Ramp up, hold, brake through zero, rest. */
  private static final Profile<ElectricCurrent> DRIVE =
      Profile.ofPoints(
          WorkshopUnits.SECOND,
          new double[] {0, 300, 900, 1000, 1100, 1500},
          WorkshopUnits.AMPERE,
          new double[] {0, 250, 180, -90, 0, 0});

  private static PackTemperature model(boolean entropic, boolean cooled) {
    PackTemperature.Builder builder =
        PackTemperature.of(Packs.sloped(entropic))
            .surroundings(celsius(30), wattsPerKelvin(AIR_W_PER_K));
    return (cooled ? builder.cooledBy(STREAM) : builder).build();
  }

  /** The same equation written out anew, by an integrator of high order between the corners. */
  private static double oracleK(double startK, boolean entropic, boolean cooled) {
    double[] timesS = {0, 300, 900, 1000, 1100, 1500};
    double[] currentsA = {0, 250, 180, -90, 0, 0};
    double rateWPerK = 6 / 60000d * (1073.35 + 0.1 * (1063.66 - 1073.35)) * (3281 + 0.1 * 77);
    double streamWPerK = cooled ? rateWPerK * (1 - Math.exp(-400 / rateWPerK)) : 0;
    double[] temperatureK = {startK};
    for (int i = 0; i + 1 < timesS.length; i++) {
      double fromS = timesS[i];
      double fromA = currentsA[i];
      double slope = (currentsA[i + 1] - fromA) / (timesS[i + 1] - fromS);
      FirstOrderDifferentialEquations equation =
          new FirstOrderDifferentialEquations() {
            @Override
            public int getDimension() {
              return 1;
            }

            @Override
            public void computeDerivatives(double t, double[] y, double[] yDot) {
              double currentA = fromA + slope * (t - fromS);
              double heatW = SERIES * cellHeatW(currentA, y[0], entropic);
              double lossW = AIR_W_PER_K * (y[0] - AIR_K) + streamWPerK * (y[0] - 295.15);
              yDot[0] = (heatW - lossW) / CAPACITY_J_PER_K;
            }
          };
      new DormandPrince853Integrator(1e-6, 10, 1e-11, 1e-13)
          .integrate(equation, fromS, temperatureK, timesS[i + 1], temperatureK);
    }
    return temperatureK[0];
  }

  private static double cellHeatW(double currentA, double atK, boolean entropic) {
    double share = (atK - 253.15) / 80;
    double ohm = Packs.COLD_OHM + share * (Packs.WARM_OHM - Packs.COLD_OHM);
    double reversibleW = entropic ? -currentA * atK * Packs.ENTROPIC_V_PER_K : 0;
    return currentA * currentA * ohm + reversibleW;
  }

  @Test
  void agreesWithAnotherIntegratorToAMillionth() {
    for (boolean entropic : new boolean[] {false, true}) {
      for (boolean cooled : new boolean[] {false, true}) {
        double ours = kelvin(model(entropic, cooled).course(state(90, 25), DRIVE).end());
        assertThat(ours).isCloseTo(oracleK(298.15, entropic, cooled), within(1e-6));
      }
    }
  }

  @Test
  void boundsItsOwnError() {
    PackTemperatureCourse course = model(true, true).course(state(90, 25), DRIVE);
    double boundK = Kind.TEMPERATURE_DIFFERENCE.siValueOf(course.errorBound());
    assertThat(boundK).isPositive().isLessThanOrEqualTo(1e-6);
  }

  @Test
  void energiesBalance() {
    for (boolean cooled : new boolean[] {false, true}) {
      HeatBalance heat = model(true, cooled).course(state(90, 10), DRIVE).heat();
      double into = joules(heat.generated());
      double out = joules(heat.stored()) + joules(heat.toSurroundings()) + joules(heat.toStream());
      double sizeJ = joules(heat.resistive()) + Math.abs(joules(heat.stored()));
      assertThat(into - out).isCloseTo(0, within(1e-9 * sizeJ));
      assertThat(heat.reversibleKnown()).isTrue();
      assertThat(joules(heat.toSurroundings())).isNegative();
      assertThat(joules(heat.toStream()) != 0).isEqualTo(cooled);
    }
  }

  private static double joules(Quantity<Energy> energy) {
    return Kind.ENERGY.siValueOf(energy);
  }

  @Test
  void constantHeatFollowsTheClosedForm() {
    PackTemperature model =
        PackTemperature.of(Packs.constant(0.35, SERIES))
            .surroundings(celsius(20), wattsPerKelvin(AIR_W_PER_K))
            .build();
    PackTemperatureCourse course = model.course(state(100, 20), hold(100, minutes(45)));
    double heatW = 100 * 100 * 0.35e-3 * SERIES;
    double steadyK = heatW / AIR_W_PER_K;
    double expectedK = steadyK * -Math.expm1(-2700 * AIR_W_PER_K / CAPACITY_J_PER_K);
    assertThat(kelvin(course.end()) - 293.15).isCloseTo(expectedK, within(1e-9));
    double quarterK = 293.15 + expectedK / 4;
    double reachedS = -CAPACITY_J_PER_K / AIR_W_PER_K * Math.log1p(-expectedK / 4 / steadyK);
    assertThat(Kind.TIME.siValueOf(course.reaches(kelvins(quarterK)).orElseThrow()))
        .isCloseTo(reachedS, within(1e-6));
    assertThat(course.heat().reversibleKnown()).isFalse();
    assertThat(course.heat().toString()).endsWith("(reversible part not known)");
  }

  @Test
  void withoutCurrentAPackAtItsSurroundingsStaysThere() {
    PackTemperatureCourse course = model(true, false).course(state(50, 30), hold(0, hours(1)));
    assertThat(kelvin(course.end())).isCloseTo(AIR_K, within(1e-9));
    assertThat(course.peakAt()).isEqualTo(seconds(0));
    assertThat(joules(course.heat().generated())).isZero();
  }

  @Test
  void hotSurroundingsWarmTheStandingPack() {
    PackTemperatureCourse course = model(false, false).course(state(50, 10), hold(0, hours(2)));
    double leftK = 20 * Math.exp(-7200 * AIR_W_PER_K / CAPACITY_J_PER_K);
    assertThat(kelvin(course.end())).isCloseTo(AIR_K - leftK, within(1e-9));
    assertThat(course.peak()).isEqualTo(course.end());
    assertThat(course.lowest()).isEqualTo(course.start());
  }

  @Test
  void aLimitThatIsPassedAtTheStartIsReachedAtOnce() {
    PackTemperatureCourse course = model(false, false).course(state(50, 60), hold(0, minutes(5)));
    assertThat(course.reaches(celsius(55))).contains(seconds(0));
    assertThat(course.peak()).isEqualTo(course.start());
    assertThat(course.reaches(celsius(61))).isEmpty();
  }

  @Test
  void aStreamThatStandsStillCoolsNothing() {
    PackCooling still = PackCooling.air(cubicMetresPerHour(0), celsius(-20), wattsPerKelvin(50));
    PackTemperature with =
        PackTemperature.of(Packs.sloped(false))
            .surroundings(celsius(30), wattsPerKelvin(AIR_W_PER_K))
            .cooledBy(still)
            .build();
    assertThat(kelvin(with.course(state(90, 25), DRIVE).end()))
        .isEqualTo(kelvin(model(false, false).course(state(90, 25), DRIVE).end()));
    assertThat(still.outletFrom(celsius(30))).isEmpty();
  }

  @Test
  void moreCurrentHeatsMoreAndMoreCoolingLess() {
    double lastK = 0;
    for (double currentA = 50; currentA <= 200; currentA += 25) {
      PackTemperatureCourse course =
          model(false, true).course(state(100, 25), hold(currentA, minutes(20)));
      assertThat(kelvin(course.end())).isGreaterThan(lastK);
      lastK = kelvin(course.end());
    }
    assertThat(kelvin(model(false, true).course(state(90, 35), DRIVE).peak()))
        .isLessThan(kelvin(model(false, false).course(state(90, 35), DRIVE).peak()));
  }

  @Test
  void unitsOfTheInputsDoNotMatter() {
    PackTemperature other =
        PackTemperature.of(Packs.sloped(false))
            .surroundings(fahrenheit(86), wattsPerKelvin(AIR_W_PER_K))
            .build();
    Profile<ElectricCurrent> milli =
        Profile.constant(Kind.CURRENT, milliamperes(150_000), seconds(1800));
    double ours =
        kelvin(other.course(PackState.of(percentCharge(90), kelvins(298.15)), milli).end());
    double theirs = kelvin(model(false, false).course(state(90, 25), hold(150, minutes(30))).end());
    assertThat(ours).isCloseTo(theirs, within(1e-9));
  }

  @Test
  void theContinuousCurrentHoldsItsTemperature() {
    for (Direction direction : Direction.values()) {
      PackTemperature model = model(true, true);
      Quantity<ElectricCurrent> size =
          model.continuousCurrent(state(50, 45), direction).orElseThrow();
      double signed = (direction == Direction.CHARGE ? -1 : 1) * Kind.CURRENT.siValueOf(size);
      double heatW =
          Kind.POWER.siValueOf(model.pack().heat(state(50, 45), amperes(signed)).total());
      double lossW = AIR_W_PER_K * 15 + Kind.POWER.siValueOf(STREAM.heatFrom(celsius(45)));
      assertThat(heatW).isCloseTo(lossW, within(1e-9 * lossW));
      assertThat(kelvin(model.steadyTemperature(amperes(signed), percentCharge(50)).orElseThrow()))
          .isCloseTo(318.15, within(1e-6));
    }
  }

  @Test
  void theContinuousCurrentRisesWithTheTemperatureToHold() {
    double lastA = -1;
    for (double celsius = 30; celsius <= 55; celsius += 2.5) {
      double currentA =
          Kind.CURRENT.siValueOf(
              model(false, false)
                  .continuousCurrent(state(50, celsius), Direction.DISCHARGE)
                  .orElseThrow());
      assertThat(currentA).isGreaterThan(lastA);
      lastA = currentA;
    }
  }

  @Test
  void noCurrentHoldsATemperatureBelowTheSurroundings() {
    PackTemperature model = model(false, false);
    assertThat(model.continuousCurrent(state(50, 25), Direction.DISCHARGE)).isEmpty();
    assertThat(model.continuousCurrent(state(50, 30), Direction.DISCHARGE))
        .hasValueSatisfying(zero -> assertThat(Kind.CURRENT.siValueOf(zero)).isZero());
    assertThat(model.continuousWorksheet(state(50, 25), Direction.DISCHARGE).step("q_0"))
        .isPresent();
  }

  @Test
  void withoutAnyLossThereIsNoSteadyTemperature() {
    PackTemperature closed =
        PackTemperature.of(Packs.sloped(false))
            .surroundings(celsius(20), wattsPerKelvin(0))
            .build();
    assertThat(closed.steadyTemperature(amperes(100), percentCharge(50))).isEmpty();
    assertThat(closed.steadyTemperature(amperes(0), percentCharge(50))).contains(celsius(20));
    assertThat(closed.body().timeConstant()).isEmpty();
  }

  @Test
  void warmsAColdPackAsTheClosedFormSays() {
    double expectedS =
        -CAPACITY_J_PER_K / AIR_W_PER_K * Math.log((3000 + 12 * 15) / (3000 + 12 * 40d));
    assertThat(
            Kind.TIME.siValueOf(
                model(false, false)
                    .timeToWarm(kilowatts(3), celsius(-10), celsius(15))
                    .orElseThrow()))
        .isCloseTo(expectedS, within(1e-6));
    assertThat(model(false, false).timeToWarm(kilowatts(-3), celsius(-10), celsius(15))).isEmpty();
  }

  private static Optional<Check> check(List<Check> checks, String code) {
    return checks.stream().filter(check -> check.code().equals(code)).findFirst();
  }

  @Test
  void checksEachLimitAgainstWhatThePackDoesThen() {
    List<Check> checks = model(false, false).checks(state(90, 25), DRIVE);
    assertThat(checks)
        .extracting(Check::code)
        .containsExactly(
            "thermal.pack-hottest-discharge",
            "thermal.pack-coldest-discharge",
            "thermal.pack-hottest-charge",
            "thermal.pack-coldest-charge",
            "thermal.pack-charge");
    assertThat(checks).extracting(Check::outcome).containsOnly(Outcome.PASS);
  }

  @Test
  void chargingTooColdFailsAndSaysWhy() {
    Check cold =
        check(
                model(false, false).checks(state(20, -5), hold(-40, minutes(5))),
                "thermal.pack-coldest-charge")
            .orElseThrow();
    assertThat(cold.outcome()).isEqualTo(Outcome.FAIL);
    assertThat(cold.note()).contains("plates");
  }

  @Test
  void tooHotFailsWithTheTime() {
    Check hot =
        check(
                model(false, false).checks(state(100, 50), hold(200, minutes(25))),
                "thermal.pack-hottest-discharge")
            .orElseThrow();
    assertThat(hot.outcome()).isEqualTo(Outcome.FAIL);
    assertThat(hot.note()).startsWith("reached after ");
  }

  @Test
  void aProfileBeyondTheChargeFails() {
    List<Check> checks = model(false, false).checks(state(10, 25), hold(105, minutes(30)));
    assertThat(check(checks, "thermal.pack-charge").orElseThrow().outcome())
        .isEqualTo(Outcome.FAIL);
    PackTemperatureCourse course =
        model(false, false).course(state(10, 25), hold(105, minutes(30)));
    assertThat(course.endCharge()).isEqualTo(percentCharge(0));
    assertThat(course.leavesChargeAfter()).isPresent();
  }

  @Test
  void anEstimatedSpecificHeatIsTakenAtBothEndsAndNeverPasses() {
    Pack silent = Packs.of(Packs.cell(Packs.sloped()).build(), SERIES);
    PackTemperature estimated =
        PackTemperature.of(silent)
            .surroundings(celsius(30), wattsPerKelvin(AIR_W_PER_K))
            .estimatedSpecificHeat()
            .build();
    assertThat(estimated.checks(state(90, 25), DRIVE).subList(0, 4))
        .allSatisfy(check -> assertThat(check.outcome()).isEqualTo(Outcome.CAUTION))
        .allSatisfy(check -> assertThat(check.basis()).isEqualTo(Basis.ESTIMATED));
    Quantity<SpecificHeatCapacity> low = CellEstimates.specificHeat(Chemistry.LFP).low();
    double factor = Kind.SPECIFIC_HEAT_CAPACITY.siValueOf(low) / Packs.SPECIFIC_J_PER_KG_K;
    double lowJPerK = CAPACITY_J_PER_K * factor;
    PackTemperature lowOne =
        PackTemperature.of(silent)
            .surroundings(celsius(30), wattsPerKelvin(AIR_W_PER_K))
            .heatCapacity(kilojoulesPerKelvin(lowJPerK / 1000), Basis.MEASURED)
            .build();
    assertThat(kelvin(estimated.bracket(state(90, 25), DRIVE, BandEnd.HIGH).get(0).peak()))
        .isCloseTo(kelvin(lowOne.course(state(90, 25), DRIVE).peak()), within(1e-9));
    assertThat(estimated.bracket(state(90, 25), DRIVE, BandEnd.HIGH)).hasSize(2);
    assertThat(lowOne.bracket(state(90, 25), DRIVE, BandEnd.HIGH)).hasSize(1);
  }

  @Test
  void estimatedResistancesCountHighForTheHottestAndLowForTheColdest() {
    Pack estimated =
        Packs.of(
            Packs.cell(Packs.sloped())
                .resistance(CellEstimates.resistance(Chemistry.LFP, ampereHours(105)))
                .specificHeat(joulesPerKilogramKelvin(Packs.SPECIFIC_J_PER_KG_K))
                .build(),
            SERIES);
    PackTemperature model =
        PackTemperature.of(estimated).surroundings(celsius(0), wattsPerKelvin(50)).build();
    List<Check> checks = model.checks(state(90, 25), DRIVE);
    double hottest = actualK(checks, "thermal.pack-hottest-discharge");
    double coldest = actualK(checks, "thermal.pack-coldest-charge");
    PackTemperatureCourse typical = model.course(state(90, 25), DRIVE);
    assertThat(hottest).isGreaterThan(kelvin(typical.peak()));
    assertThat(coldest).isLessThan(kelvin(typical.lowestWhile(Direction.CHARGE).orElseThrow()));
  }

  private static double actualK(List<Check> checks, String code) {
    return kelvin(
        check(checks, code).orElseThrow().actual().orElseThrow().quantity(Kind.TEMPERATURE));
  }

  @Test
  void theHousingWarmsUpToo() {
    PackTemperature heavier =
        PackTemperature.of(Packs.sloped(false))
            .surroundings(celsius(30), wattsPerKelvin(AIR_W_PER_K))
            .housing(kilograms(40), joulesPerKilogramKelvin(897))
            .build();
    assertThat(Kind.HEAT_CAPACITY.siValueOf(heavier.body().heatCapacity()))
        .isCloseTo(CAPACITY_J_PER_K + 40 * 897, within(1e-6));
  }

  @Test
  void listsWhatIsMissingAndRejectsNonsense() {
    Pack silent = Packs.of(Packs.cell(Packs.sloped()).build(), 4);
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> PackTemperature.of(silent).build())
        .withMessageContaining("surroundings")
        .withMessageContaining("heatCapacity");
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> PackTemperature.of(silent).surroundings(kelvins(25), wattsPerKelvin(1)))
        .withMessageContaining("PackTemperature.surroundings must be from -60 to 100 °C");
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> PackTemperature.of(silent).surroundings(celsius(25), wattsPerKelvin(-1)));
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> model(false, false).course(state(50, 150), DRIVE));
  }

  @Test
  void theWorksheetShowsTheResult() {
    PackTemperature model = model(true, true);
    String text = model.worksheet(state(90, 25), DRIVE).toText();
    assertThat(text).contains("G_c", "E_r", "T_peak", "Bernardi");
    assertThat(
            model
                .worksheet(state(90, 25), DRIVE)
                .step("T_end")
                .orElseThrow()
                .result()
                .quantity(Kind.TEMPERATURE))
        .isEqualTo(
            Figure.of(model.course(state(90, 25), DRIVE).end(), WorkshopUnits.CELSIUS)
                .quantity(Kind.TEMPERATURE));
    assertThat(model.continuousWorksheet(state(50, 45), Direction.DISCHARGE).step("I")).isPresent();
  }

  @Test
  void curveEndsWhereTheCourseEnds() {
    PackTemperatureCourse course = model(true, true).course(state(90, 25), DRIVE);
    Profile<Temperature> curve = course.curve();
    assertThat(kelvin(curve.at(seconds(1500)))).isEqualTo(kelvin(course.end()));
    assertThat(kelvin(curve.highest())).isEqualTo(kelvin(course.peak()));
  }

  @Test
  void serialisesAndComparesByContent() {
    PackTemperature model = model(true, true);
    PackTemperatureCourse course = model.course(state(90, 25), DRIVE);
    assertThat(Serialisation.copy(model)).isEqualTo(model).hasSameHashCodeAs(model);
    assertThat(Serialisation.copy(course))
        .isEqualTo(course)
        .hasSameHashCodeAs(course)
        .hasToString(course.toString());
    assertThat(model).isNotEqualTo(model(true, false));
    assertThat(course).isNotEqualTo(model.course(state(90, 26), DRIVE));
    assertThat(course.heat()).isEqualTo(model.course(state(90, 25), DRIVE).heat());
  }
}
