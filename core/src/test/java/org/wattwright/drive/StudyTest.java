package org.wattwright.drive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kelvinsOfRise;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.kilometresPerHour;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.seconds;

import java.util.List;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.Test;
import org.wattwright.battery.PackState;
import org.wattwright.units.Kind;

/** Limits, abilities, steady speeds, sensitivities and scatter. */
class StudyTest {
  private static final RoadLoad LADEN = InventedDrive.load().withMass(kilograms(1600));

  private static PowerLimitStudy study() {
    return PowerLimitStudy.of(
        InventedDrive.van(), StandardCycle.ECE_15.cycle(), percentCharge(80), LADEN);
  }

  @Test
  void lessCurrentIsSlowerNeverUsesMoreByDemandAndClimbsLess() {
    List<LimitedDrive> rows =
        study().byCurrent(List.of(amperes(100), amperes(200), amperes(300), amperes(450)));
    for (int i = 1; i < rows.size(); i++) {
      LimitedDrive less = rows.get(i - 1);
      LimitedDrive more = rows.get(i);
      assertThat(s(less)).isGreaterThanOrEqualTo(s(more));
      assertThat(less.ladenGrade().grade()).isLessThanOrEqualTo(more.ladenGrade().grade());
      assertThat(whPerKm(less.demand())).isLessThanOrEqualTo(whPerKm(more.demand()) + 1e-9);
      assertThat(Kind.TIME.siValueOf(less.demand().time()))
          .isGreaterThanOrEqualTo(Kind.TIME.siValueOf(more.demand().time()));
      assertThat(less.once().following().shareBehind())
          .isGreaterThanOrEqualTo(more.once().following().shareBehind());
    }
    assertThat(whPerKm(rows.get(0).demand())).isLessThan(whPerKm(rows.get(3).demand()));
    assertThat(PowerLimitStudy.toMarkdown(rows)).contains("| limit").contains("450 A");
  }

  private static double s(LimitedDrive row) {
    return Kind.TIME.siValueOf(row.zeroToFifty().time().orElseThrow());
  }

  private static double whPerKm(DemandResult result) {
    return Kind.ENERGY_PER_DISTANCE.siValueOf(result.consumption().orElseThrow());
  }

  /** Terminal power to hold 80 km/h on 5 %, in closed form. */
  @Test
  void smallestPowerToHoldASpeedIsTheRoadLoadOverTheEfficiencies() {
    SmallestLimit<javax.measure.quantity.Power> found =
        study().smallestPower(List.of(Ability.hold(kilometresPerHour(80), 0.05)));
    double wheelW = Kind.POWER.siValueOf(InventedDrive.load().powerAt(kilometresPerHour(80), 0.05));
    double expectedW = wheelW / 0.96 / 0.88 + 300;
    assertThat(Kind.POWER.siValueOf(found.limit().orElseThrow()))
        .isCloseTo(expectedW, within(2e-9 * expectedW));
  }

  @Test
  void smallestCurrentIsTheGreatestOfWhatEachAbilityNeeds() {
    Ability hold = Ability.hold(kilometresPerHour(80), 0.03);
    Ability start = Ability.startOn(0.20).with(LADEN);
    Ability reach = Ability.reach(kilometresPerHour(50), seconds(12));
    var found = study().smallestCurrent(List.of(hold, start, reach));
    assertThat(found.isPossible()).isTrue();
    double limitA = Kind.CURRENT.siValueOf(found.limit().orElseThrow());
    double mostA =
        found.needs().values().stream().mapToDouble(Kind.CURRENT::siValueOf).max().orElseThrow();
    assertThat(limitA).isEqualTo(mostA);
    ElectricVehicle van = InventedDrive.van();
    for (Ability ability : found.needs().keySet()) {
      assertThat(ability.isMetBy(van.withCurrentLimit(amperes(limitA * (1 + 1e-9))))).isTrue();
    }
    assertThat(found.governing().isMetBy(van.withCurrentLimit(amperes(limitA * (1 - 1e-6)))))
        .isFalse();
  }

  @Test
  void lackingAbilityIsNamedNotThrown() {
    Ability wall = Ability.startOn(0.9);
    var found = study().smallestCurrent(List.of(Ability.hold(kilometresPerHour(50), 0), wall));
    assertThat(found.isPossible()).isFalse();
    assertThat(found.limit()).isEmpty();
    assertThat(found.governing()).isEqualTo(wall);
    assertThat(found).hasToString("none: even without a limit it does not start on 90 %");
  }

  @Test
  void followingACycleIsAnAbility() {
    var found = study().smallestPower(List.of(Ability.follow(StandardCycle.ECE_15.cycle())));
    double limitW = Kind.POWER.siValueOf(found.limit().orElseThrow());
    assertThat(limitW).isBetween(8_000.0, 25_000.0);
    assertThatThrownBy(() -> study().byPower(List.of()))
        .hasMessageContaining("PowerLimitStudy.limits");
  }

  @Test
  void steadyRangeFallsWithSpeedAndAgreesWithTheCycleRun() {
    SteadyRange ranges = SteadyRange.of(InventedDrive.van());
    List<SteadyRangePoint> curve =
        ranges.curve(
            List.of(kilometresPerHour(50), kilometresPerHour(70), kilometresPerHour(90)),
            percentCharge(10));
    for (int i = 1; i < curve.size(); i++) {
      assertThat(Kind.LENGTH.siValueOf(curve.get(i).range()))
          .isLessThan(Kind.LENGTH.siValueOf(curve.get(i - 1).range()));
    }
    assertThat(curve.get(0).endedBy()).isEqualTo(RangeEnd.RESERVE);
    assertThat(ranges.worksheet(kilometresPerHour(50)).step("e")).isPresent();
    DriveCycle steady =
        DriveCycle.of(
            "70",
            org.wattwright.check.Source.AS_GIVEN,
            org.wattwright.profile.Profile.sampled(
                Kind.SPEED, seconds(60), 60, t -> kilometresPerHour(70)));
    double runM =
        Kind.LENGTH.siValueOf(
            CycleRun.of(InventedDrive.van()).range(steady, percentCharge(10)).distance());
    assertThat(Kind.LENGTH.siValueOf(curve.get(1).range())).isCloseTo(runM, within(1e-6 * runM));
  }

  @Test
  void speedThatCannotBeHeldHasNoRange() {
    SteadyRangePoint point =
        SteadyRange.of(InventedDrive.van()).at(kilometresPerHour(160), percentCharge(10));
    assertThat(Kind.LENGTH.siValueOf(point.range())).isZero();
    assertThat(point.endedBy()).isEqualTo(RangeEnd.LEFT_BEHIND);
  }

  private static RangeUncertainty uncertainty() {
    ElectricVehicle van =
        InventedDrive.builder().at(PackState.of(percentCharge(90), celsius(10))).build();
    return RangeUncertainty.of(van, StandardCycle.ECE_15.cycle(), percentCharge(70))
        .tolerance(DriveFactor.MASS, 0.03)
        .tolerance(DriveFactor.ROLLING_RESISTANCE, 0.15)
        .tolerance(DriveFactor.DRAG_AREA, 0.10)
        .temperatureTolerance(kelvinsOfRise(8));
  }

  @Test
  void moreMassAndDragShortenTheRangeAndWarmthLengthensIt() {
    for (DriveSensitivity line : uncertainty().sensitivities()) {
      double changeM = Kind.LENGTH.siValueOf(line.rangeChange());
      if (line.factor() == DriveFactor.TEMPERATURE) {
        assertThat(changeM).isPositive();
      } else {
        assertThat(changeM).isNegative();
      }
      assertThat(line.timeChange()).isPresent();
    }
  }

  /** Time 0–50 km/h is nearly in proportion to mass: 1 % more mass, about 1 % more time. */
  @Test
  void timeGrowsWithMass() {
    DriveSensitivity mass = uncertainty().sensitivities().get(0);
    double zeroS =
        Kind.TIME.siValueOf(
            Performance.of(InventedDrive.van())
                .time(kilometresPerHour(0), kilometresPerHour(50))
                .time()
                .orElseThrow());
    assertThat(Kind.TIME.siValueOf(mass.timeChange().orElseThrow()) / zeroS)
        .isBetween(0.0099, 0.0125);
  }

  @Test
  void spreadIsTheSameOnAnyNumberOfThreads() throws Exception {
    RangeSpread here = uncertainty().spread(200, 7);
    ForkJoinPool one = new ForkJoinPool(1);
    ForkJoinPool four = new ForkJoinPool(4);
    try {
      assertThat(one.submit(() -> uncertainty().spread(200, 7)).get()).isEqualTo(here);
      assertThat(four.submit(() -> uncertainty().spread(200, 7)).get()).isEqualTo(here);
    } finally {
      one.shutdown();
      four.shutdown();
    }
    assertThat(uncertainty().spread(200, 8)).isNotEqualTo(here);
    double low = Kind.LENGTH.siValueOf(here.percentile(0.05));
    double middle = Kind.LENGTH.siValueOf(here.percentile(0.5));
    double high = Kind.LENGTH.siValueOf(here.percentile(0.95));
    assertThat(low).isLessThan(middle * 0.98);
    assertThat(high).isGreaterThan(middle * 1.02);
  }

  @Test
  void withoutTolerancesNothingScatters() {
    RangeSpread spread =
        RangeUncertainty.of(InventedDrive.van(), StandardCycle.ECE_15.cycle(), percentCharge(90))
            .spread(20, 1);
    assertThat(spread.percentile(0)).isEqualTo(spread.percentile(1));
    assertThatThrownBy(() -> uncertainty().spread(1, 1))
        .hasMessageContaining("RangeUncertainty.samples must be from 20 to 1000000");
  }

  @Test
  void weakCarIsDownscaledAndMeetsTheTraceAgain() {
    StandardCycle standard = StandardCycle.WLTC_CLASS_3A;
    double factor = Wltc.downscalingFactor(standard, InventedDrive.load(), kilowatts(21));
    assertThat(factor).isBetween(0.1, 0.6);
    assertThat(Wltc.downscalingFactor(standard, InventedDrive.load(), kilowatts(100))).isZero();
    DriveCycle slower = Wltc.downscaled(standard, factor);
    DriveCycle original = standard.cycle();
    for (int i = 0; i <= original.steps(); i++) {
      if (i <= 1533 || i >= 1763) {
        assertThat(slower.speedMs(i)).isEqualTo(original.speedMs(i));
      } else {
        assertThat(slower.speedMs(i)).isLessThanOrEqualTo(original.speedMs(i) + 1e-9);
      }
    }
    assertThat(slower.speedMs(1566) * 3.6)
        .isCloseTo(60.0 + (111.9 - 60.0) * (1 - factor), within(1e-9));
    assertThatThrownBy(() -> Wltc.downscaled(StandardCycle.NEDC, 0.1))
        .hasMessageContaining("Wltc.cycle must be a WLTC");
  }
}
