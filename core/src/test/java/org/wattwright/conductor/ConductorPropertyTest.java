package org.wattwright.conductor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static org.assertj.core.data.Percentage.withPercentage;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.fahrenheit;
import static org.wattwright.units.Measures.feet;
import static org.wattwright.units.Measures.inches;
import static org.wattwright.units.Measures.kiloamperes;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.milliamperes;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;

import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.wattwright.check.Basis;
import org.wattwright.check.Outcome;
import org.wattwright.profile.Profile;
import org.wattwright.units.Kind;

class ConductorPropertyTest {
  /** 1e-12 of the value: two ways to the same number differ by rounding only. */
  private static final Percentage ROUNDING = withPercentage(1e-10);

  private static final List<Cable> CATALOGUE =
      ConductorSize.metricSizes(StrandClass.FLEXIBLE, WireSurface.PLAIN, ConductorMaterial.COPPER)
          .stream()
          .map(s -> Cable.of("G", s, InsulationMaterial.XLPE).build().withGenericGeometry())
          .toList();

  private static final Installation SHOP = Installation.freeAir(celsius(40));

  private static double temperatureK(Cable cable, Installation installation, double currentA) {
    return SteadyHeating.of(cable, installation)
        .at(amperes(currentA))
        .fold(SteadyState::conductorK, none -> Double.POSITIVE_INFINITY);
  }

  @ParameterizedTest
  @ValueSource(doubles = {1, 10, 60, 200, 500})
  void biggerSectionIsNeverHotter(double currentA) {
    for (int i = 1; i < CATALOGUE.size(); i++) {
      assertThat(temperatureK(CATALOGUE.get(i), SHOP, currentA))
          .isLessThanOrEqualTo(temperatureK(CATALOGUE.get(i - 1), SHOP, currentA));
    }
  }

  @Test
  void hotterWithMoreCurrentWarmerAirHotterSurfaceAndMoreNeighbours() {
    Cable cable = CATALOGUE.get(11);
    for (double currentA = 0; currentA < 200; currentA += 10) {
      double baseK = temperatureK(cable, SHOP, currentA);
      assertThat(temperatureK(cable, SHOP, currentA + 10)).isGreaterThan(baseK);
      assertThat(temperatureK(cable, Installation.freeAir(celsius(41)), currentA))
          .isGreaterThan(baseK);
      Installation hot = Installation.overHotSurface(celsius(40), celsius(90));
      assertThat(temperatureK(cable, hot, currentA)).isGreaterThan(baseK);
      assertThat(temperatureK(cable, SHOP.bundled(3), currentA)).isGreaterThanOrEqualTo(baseK);
    }
  }

  @Test
  void withoutCurrentTheConductorIsAsWarmAsTheAir() {
    assertThat(temperatureK(CATALOGUE.get(5), SHOP, 0)).isEqualTo(313.15);
  }

  @Test
  void ampacityIsTheInverseOfTheTemperature() {
    for (Cable cable : CATALOGUE) {
      SteadyHeating heating = SteadyHeating.of(cable, SHOP.bundled(2));
      for (double limitC : new double[] {50, 90, 140}) {
        var current = heating.ampacityAt(celsius(limitC));
        assertThat(heating.at(current).orElseThrow().conductorK())
            .isCloseTo(limitC + 273.15, offset(1e-6));
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Busbar.Orientation.class)
  void busbarHeatBalanceCloses(Busbar.Orientation orientation) {
    Busbar bar =
        Busbar.of(ConductorMaterial.COPPER, millimetres(30), millimetres(5))
            .sleeved(InsulationMaterial.PVC, millimetres(0.8))
            .withOrientation(orientation);
    HeatedConductor heated = bar.heated(SHOP);
    double surfaceK = heated.surfaceK(300);
    assertThat(heated.kernel().loss().lossWPerM(surfaceK))
        .isCloseTo(heated.inflowWPerM(300, surfaceK), withPercentage(1e-7));
  }

  @Test
  void barOnEdgeCarriesMoreThanFlatAndPaintedMoreThanBare() {
    Busbar bar = Busbar.of(ConductorMaterial.COPPER, millimetres(40), millimetres(5));
    double edgeA = ampere(bar);
    assertThat(edgeA).isGreaterThan(ampere(bar.withOrientation(Busbar.Orientation.FLAT)));
    assertThat(ampere(bar.painted())).isGreaterThan(edgeA);
    assertThat(ampere(bar.withEmissivity(0.1))).isLessThan(edgeA);
    assertThat(SteadyHeating.of(bar, SHOP).basis()).isEqualTo(Basis.DATA_SHEET);
    assertThat(SteadyHeating.of(bar.withOrientation(Busbar.Orientation.FLAT), SHOP).basis())
        .isEqualTo(Basis.ESTIMATED);
  }

  private static double ampere(Busbar bar) {
    return Kind.CURRENT.siValueOf(SteadyHeating.of(bar, SHOP).ampacityAt(celsius(70)));
  }

  @Test
  void unitsDoNotMatter() {
    Cable metric = Conditions.cable(35, 0.554, 7.9, 11.7);
    Cable inches =
        metric.toBuilder()
            .conductorDiameter(inches(7.9 / 25.4))
            .outerDiameter(inches(11.7 / 25.4))
            .build();
    double first = SteadyHeating.of(metric, SHOP).at(amperes(150)).orElseThrow().conductorK();
    Installation warm = Installation.freeAir(fahrenheit(104));
    assertThat(SteadyHeating.of(inches, warm).at(kiloamperes(0.15)).orElseThrow().conductorK())
        .isCloseTo(first, ROUNDING);
    double drop =
        Kind.VOLTAGE.siValueOf(
            ConductorRun.of(metric, metres(3.048)).dropAt(amperes(150), celsius(60)));
    assertThat(
            Kind.VOLTAGE.siValueOf(
                ConductorRun.of(inches, feet(10)).dropAt(milliamperes(150_000), fahrenheit(140))))
        .isCloseTo(drop, ROUNDING);
  }

  @Test
  void longerCableNeverDropsLess() {
    Cable cable = CATALOGUE.get(8);
    double lastV = 0;
    for (double lengthM = 0.5; lengthM < 12; lengthM += 0.5) {
      double dropV =
          Kind.VOLTAGE.siValueOf(
              ConductorRun.of(cable, metres(lengthM)).dropAt(amperes(80), celsius(70)));
      assertThat(dropV).isGreaterThan(lastV);
      lastV = dropV;
    }
  }

  @Test
  void constantCurrentNeverOvershootsAndEndsAtTheSteadyTemperature() {
    Cable cable = Conditions.cable(35, 0.554, 7.9, 11.7);
    TransientHeating heating = TransientHeating.of(cable, SHOP);
    double steadyK = temperatureK(cable, SHOP, 160);
    for (double stepS : new double[] {0.1, 10, 300, 5000, 100_000}) {
      double[] durationsS = new double[20];
      double[] currentsA = new double[20];
      java.util.Arrays.fill(durationsS, stepS);
      java.util.Arrays.fill(currentsA, 160);
      TransientResult result =
          heating.from(
              celsius(40),
              Profile.ofSteps(
                  org.wattwright.units.WorkshopUnits.SECOND,
                  durationsS,
                  org.wattwright.units.WorkshopUnits.AMPERE,
                  currentsA));
      assertThat(result.peakK()).isLessThan(steadyK + 0.01);
      if (stepS > 1000) {
        assertThat(result.peakK()).isCloseTo(steadyK, offset(0.01));
      }
    }
  }

  @Test
  void cuttingASegmentDoesNotMoveTheTemperature() {
    TransientHeating heating = TransientHeating.of(CATALOGUE.get(10), SHOP);
    var whole = Profile.segments(Kind.CURRENT).hold(amperes(250), seconds(600)).build();
    var cut =
        Profile.segments(Kind.CURRENT)
            .hold(amperes(250), seconds(123.4))
            .hold(amperes(-250), seconds(476.6))
            .build();
    assertThat(Kind.TEMPERATURE.siValueOf(heating.from(celsius(10), cut).end()))
        .isCloseTo(
            Kind.TEMPERATURE.siValueOf(heating.from(celsius(10), whole).end()), offset(1e-9));
  }

  @Test
  void settledProfileEndsWhereItStartsAndPeaksBetweenRmsAndPeakCurrent() {
    Cable cable = Conditions.cable(35, 0.554, 7.9, 11.7);
    var duty =
        Profile.segments(Kind.CURRENT)
            .hold(amperes(300), seconds(60))
            .rampTo(amperes(20), seconds(200))
            .hold(amperes(60), seconds(300))
            .build();
    TransientResult result = TransientHeating.of(cable, SHOP).settled(duty);
    assertThat(Kind.TEMPERATURE.siValueOf(result.end()))
        .isCloseTo(Kind.TEMPERATURE.siValueOf(result.start()), offset(2e-3));
    double rmsA = Kind.CURRENT.siValueOf(duty.rms());
    assertThat(result.peakK()).isGreaterThan(temperatureK(cable, SHOP, rmsA));
    assertThat(result.peakK()).isLessThan(temperatureK(cable, SHOP, 300));
  }

  @Test
  void fastRepetitionSettlesAtTheRmsTemperature() {
    Cable cable = Conditions.cable(35, 0.554, 7.9, 11.7);
    var duty =
        Profile.segments(Kind.CURRENT)
            .hold(amperes(250), seconds(0.4))
            .hold(amperes(50), seconds(0.6))
            .build();
    TransientResult result = TransientHeating.of(cable, SHOP).settled(duty);
    assertThat(result.peakK())
        .isCloseTo(temperatureK(cable, SHOP, Kind.CURRENT.siValueOf(duty.rms())), offset(0.1));
  }

  @Test
  void timeToReachAgreesWithTheCourse() {
    TransientHeating heating = TransientHeating.of(CATALOGUE.get(10), SHOP);
    var time = heating.timeToReach(amperes(300), celsius(40), celsius(90)).orElseThrow();
    var course = heating.from(celsius(40), Profile.constant(Kind.CURRENT, amperes(300), time));
    assertThat(Kind.TEMPERATURE.siValueOf(course.end())).isCloseTo(363.15, offset(0.01));
    assertThat(heating.timeToReach(amperes(20), celsius(40), celsius(90))).isEmpty();
  }

  @Test
  void runawayIsSaidNotComputed() {
    HeatingResult result = SteadyHeating.of(CATALOGUE.get(0), SHOP).at(amperes(500));
    assertThat(result.isSteady()).isFalse();
    assertThat(result).hasToString("no steady temperature below 400 °C at 500 A");
    TransientResult course =
        TransientHeating.of(CATALOGUE.get(0), SHOP)
            .from(celsius(40), Profile.constant(Kind.CURRENT, amperes(500), seconds(60)));
    assertThat(course.leavesModelAfter()).isPresent();
    assertThat(course.course().segmentCount()).isEqualTo(1);
  }

  @Test
  void shortCircuitInvertsItself() {
    ShortCircuit copper = ShortCircuit.of(ConductorMaterial.COPPER);
    var area = CATALOGUE.get(9).size().area();
    FaultDuty duty = FaultDuty.of(amperes(4000), seconds(0.3));
    var end = copper.finalTemperature(area, duty, celsius(60)).orElseThrow();
    assertThat(Kind.JOULE_INTEGRAL.siValueOf(copper.withstand(area, celsius(60), end)))
        .isCloseTo(16e6 * 0.3, ROUNDING);
    assertThat(Kind.AREA.siValueOf(copper.minimumArea(duty, celsius(60), end)))
        .isCloseTo(Kind.AREA.siValueOf(area), ROUNDING);
  }

  @ParameterizedTest
  @ValueSource(doubles = {5, 40, 90, 180, 300, 420})
  void whatTheSizerPicksPassesAndTheNextSmallerDoesNot(double currentA) {
    SizingResult result =
        ConductorSizer.over(CATALOGUE)
            .installation(SHOP)
            .continuousCurrent(amperes(currentA))
            .length(metres(4))
            .voltageDropAtMost(volts(2))
            .fault(FaultDuty.of(amperes(5000), seconds(0.02)))
            .run();
    SizingResult.Sized sized = result.orElseThrow();
    assertThat(sized.checks())
        .allSatisfy(c -> assertThat(c.outcome()).isIn(Outcome.PASS, Outcome.CAUTION));
    for (SizingLine line : result.table().lines()) {
      if (Kind.AREA.siValueOf(line.cable().size().area())
          < Kind.AREA.siValueOf(sized.cable().size().area())) {
        assertThat(line.passes()).isFalse();
      }
    }
  }
}
