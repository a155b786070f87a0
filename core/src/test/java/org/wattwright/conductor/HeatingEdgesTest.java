package org.wattwright.conductor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;
import static org.assertj.core.data.Percentage.withPercentage;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.joulesPerKelvin;
import static org.wattwright.units.Measures.kelvinsPerWatt;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.squareMillimetres;

import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.junit.jupiter.api.Test;
import org.wattwright.check.Worksheet;
import org.wattwright.profile.Profile;
import org.wattwright.units.Kind;

/** Heating at its edges: no current, runaway, hot surroundings, the end of the model. */
class HeatingEdgesTest {
  private static final Installation SHOP = Installation.freeAir(celsius(40));
  private static final Cable CABLE = Conditions.cable(35, 0.554, 7.9, 11.7);

  private static double celsiusOf(Quantity<Temperature> temperature) {
    return Kind.TEMPERATURE.siValueOf(temperature) - 273.15;
  }

  @Test
  void steadyStateTellsItsShares() {
    SteadyState state = SteadyHeating.of(CABLE, SHOP).at(amperes(120)).orElseThrow();
    assertThat(state.current()).isEqualTo(amperes(120));
    assertThat(state.isSteady()).isTrue();
    // 9.26 W/m by the reference rows; radiation of 11.7 mm at the surface found, emissivity 0.9.
    double surfaceK = Kind.TEMPERATURE.siValueOf(state.surface());
    double radiationW =
        0.9 * 5.670374419e-8 * Math.PI * 0.0117 * (Math.pow(surfaceK, 4) - Math.pow(313.15, 4));
    assertThat(state.radiationShare())
        .isCloseTo(radiationW / state.heatWPerM(), withPercentage(1e-8));
    assertThat(state).hasToString("120 A: conductor 61.0 °C, surface 58.1 °C");
    SteadyState none = SteadyHeating.of(CABLE, SHOP).at(amperes(0)).orElseThrow();
    assertThat(none.radiationShare()).isZero();
  }

  @Test
  void hotSurroundingsLeaveNoCurrent() {
    SteadyHeating heating =
        SteadyHeating.of(CABLE, Installation.overHotSurface(celsius(60), celsius(200)));
    assertThat(Kind.CURRENT.siValueOf(heating.ampacityAt(celsius(65)))).isZero();
    assertThat(SteadyHeating.of(CABLE, SHOP)).hasToString("144.7 A at 70 °C");
  }

  @Test
  void noSteadyStateCannotBeReadAsOne() {
    HeatingResult result = SteadyHeating.of(CABLE, SHOP).at(amperes(3000));
    assertThat(result.isSteady()).isFalse();
    assertThatIllegalStateException()
        .isThrownBy(result::orElseThrow)
        .withMessage("no steady temperature below 400 °C at 3000 A");
    HeatedConductor bare = HeatedConductor.of(CABLE, CABLE.geometries().get(0), SHOP);
    assertThat(bare.conductorK(3000)).isPositive().isInfinite();
  }

  @Test
  void neighboursStandInTheWorksheet() {
    Worksheet.Recording recording = Worksheet.record("bundle");
    SteadyHeating.of(CABLE, SHOP.bundled(2)).at(amperes(80), recording);
    assertThat(recording.toWorksheet().toText())
        .contains("current compared with one cable alone in free air")
        .contains("I_f = I/f = 80 A / 0.8 = 100 A");
  }

  @Test
  void courseEndsWhereTheModelDoes() {
    TransientHeating heating = TransientHeating.of(CABLE, SHOP);
    var burn =
        Profile.segments(Kind.CURRENT)
            .hold(amperes(100), seconds(10))
            .hold(amperes(3000), seconds(100))
            .hold(amperes(0), seconds(1000))
            .build();
    TransientResult result = heating.from(celsius(40), burn);
    assertThat(result.leavesModelAfter()).contains(seconds(110));
    assertThat(result.course().segmentCount()).isEqualTo(2);
    assertThat(result.peak()).isEqualTo(result.end());
    assertThat(celsiusOf(result.peak())).isGreaterThan(400);
    TransientResult calm =
        heating.from(celsius(60), Profile.constant(Kind.CURRENT, amperes(0), seconds(60)));
    assertThat(calm.leavesModelAfter()).isEmpty();
    assertThat(calm.peak()).isEqualTo(celsius(60));
    assertThat(calm.peakAt()).isEqualTo(seconds(0));
    assertThat(calm.toString())
        .startsWith("60.0 °C, peak 60.0 °C after 0 s, ")
        .endsWith(" at the end");
  }

  /** Colder than the coldest node, up to the hottest: the outer cells go on straight. */
  @Test
  void timeToReachSpansTheModel() {
    TransientHeating heating = TransientHeating.of(CABLE, SHOP);
    double whole = heatingTimeS(heating, -50, 400);
    assertThat(heatingTimeS(heating, -50, 100) + heatingTimeS(heating, 100, 400))
        .isCloseTo(whole, withPercentage(1e-9));
    assertThat(heatingTimeS(heating, 100, 100)).isZero();
    assertThatThrownBy(() -> heating.timeToReach(amperes(1), celsius(90), celsius(80)))
        .hasMessage("TransientHeating.limit must be ≥ start 90 °C, but was 80 °C");
  }

  private static double heatingTimeS(TransientHeating heating, double fromC, double toC) {
    return Kind.TIME.siValueOf(
        heating.timeToReach(amperes(2000), celsius(fromC), celsius(toC)).orElseThrow());
  }

  @Test
  void aConductorInBalanceStaysThere() {
    TransientHeating heating = TransientHeating.of(CABLE, SHOP);
    var idle =
        Profile.segments(Kind.CURRENT)
            .hold(amperes(0), seconds(1e4))
            .hold(amperes(0), seconds(1e6))
            .build();
    assertThat(celsiusOf(heating.from(celsius(40), idle).end())).isCloseTo(40, offset(1e-9));
    assertThat(celsiusOf(heating.from(celsius(-50), idle).end())).isCloseTo(40, offset(1e-6));
    assertThat(celsiusOf(heating.from(celsius(90), idle).end())).isCloseTo(40, offset(1e-6));
  }

  private static FirstOrderHeating part() {
    return FirstOrderHeating.of(
            milliohms(0.5), ConductorMaterial.COPPER, kelvinsPerWatt(2), joulesPerKelvin(100))
        .inAir(celsius(20));
  }

  @Test
  void firstOrderRunsAwayAboveItsCurrent() {
    double runawayA = Kind.CURRENT.siValueOf(part().runawayCurrent());
    assertThat(runawayA).isCloseTo(Math.sqrt(1 / (2 * 0.5e-3 * 0.00393)), withPercentage(1e-10));
    assertThat(part().finalTemperature(amperes(runawayA * 1.01))).isEmpty();
    assertThat(part().timeConstant(amperes(runawayA * 1.01))).isEmpty();
    assertThat(part().timeToReach(celsius(20), amperes(runawayA * 1.01), celsius(399))).isPresent();
  }

  @Test
  void firstOrderReachesOnlyWhatLiesOnItsWay() {
    assertThat(part().timeToReach(celsius(30), amperes(100), celsius(30))).contains(seconds(0));
    // 5 W through 2 K/W: settles at about 30 °C.
    assertThat(part().timeToReach(celsius(20), amperes(100), celsius(90))).isEmpty();
    assertThat(part().timeToReach(celsius(25), amperes(100), celsius(22))).isEmpty();
    assertThat(part().timeToReach(celsius(90), amperes(100), celsius(40))).isPresent();
    assertThat(part().temperatureAfter(celsius(25), amperes(100), seconds(0)))
        .isEqualTo(celsius(25));
  }

  @Test
  void dutiesThatContradictThemselves() {
    assertThatThrownBy(
            () -> DutyRating.shortTimeCurrent(amperes(100), amperes(101), seconds(1), seconds(10)))
        .hasMessage("DutyRating.preload must be ≤ continuous current 100 A, but was 101 A");
    assertThatThrownBy(
            () -> DutyRating.periodicOnCurrent(amperes(100), seconds(11), seconds(10), seconds(60)))
        .hasMessage("DutyRating.on must be ≤ period 10 s, but was 11 s");
  }

  @Test
  void genericDiametersFollowTheStranding() {
    ConductorSize solid = ConductorSize.awg(8);
    assertThat(Kind.LENGTH.siValueOf(GenericGeometry.conductorDiameter(solid).typical()))
        .isCloseTo(Kind.LENGTH.siValueOf(solid.solidDiameter()), withPercentage(1e-10));
    ConductorSize stranded = ConductorSize.metric(squareMillimetres(4), StrandClass.STRANDED);
    assertThat(Kind.LENGTH.siValueOf(GenericGeometry.conductorDiameter(stranded).typical()))
        .isCloseTo(1.29 * 2e-3, withPercentage(1e-10));
  }

  @Test
  void loopsOfConductorsThatOverlapAreRefused() {
    double slow =
        Kind.INDUCTANCE_PER_LENGTH.siValueOf(
            LoopInductance.ofRoundPair(millimetres(8), millimetres(12)));
    double fast =
        Kind.INDUCTANCE_PER_LENGTH.siValueOf(
            LoopInductance.ofRoundPairForFastFronts(millimetres(8), millimetres(12)));
    // The flux inside the metal: μ₀/(4π).
    assertThat(slow - fast).isCloseTo(1e-7, withPercentage(1e-6));
    assertThatThrownBy(() -> LoopInductance.ofRoundPair(millimetres(8), millimetres(7)))
        .hasMessage("LoopInductance.axisSpacing must be ≥ conductor diameter 8 mm, but was 7 mm");
    assertThatThrownBy(() -> LoopInductance.ofFlatPair(millimetres(20), millimetres(11)))
        .hasMessage("LoopInductance.spacing must be ≤ half the width 20 mm, but was 11 mm");
    assertThatThrownBy(() -> Busbar.of(ConductorMaterial.COPPER, millimetres(5), millimetres(6)))
        .hasMessage("Busbar.thickness must be ≤ width 5 mm, but was 6 mm");
  }
}
