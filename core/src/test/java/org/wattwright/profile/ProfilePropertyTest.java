package org.wattwright.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.AMPERE_SQUARED_SECOND;
import static org.wattwright.units.WorkshopUnits.COULOMB;
import static org.wattwright.units.WorkshopUnits.MILLIAMPERE;
import static org.wattwright.units.WorkshopUnits.MINUTE;
import static org.wattwright.units.WorkshopUnits.SECOND;

import java.util.Arrays;
import java.util.stream.Stream;
import javax.measure.quantity.ElectricCurrent;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.Generator;
import org.wattwright.units.Kind;

/** What holds for every profile, and comparison with sums over fine steps. */
class ProfilePropertyTest {
  private static final int FINE_STEPS = 20_000;

  static Stream<Generator> cases() {
    return Generator.cases(100);
  }

  /** Holds, ramps and jumps between -300 A and 400 A. */
  private static Profile<ElectricCurrent> random(Generator random) {
    ProfileBuilder<ElectricCurrent> builder = Profile.segments(Kind.CURRENT);
    int count = random.count(1, 12);
    for (int i = 0; i < count; i++) {
      double durationS = random.betweenDecades(0.1, 30);
      double currentA = random.typed(-300, 400, 0);
      if (random.chance(0.3)) {
        builder.hold(amperes(currentA), seconds(0.01 + durationS / 100));
      }
      if (random.chance(0.5)) {
        builder.hold(amperes(currentA), seconds(durationS));
      } else {
        builder.rampTo(amperes(currentA), seconds(durationS));
      }
    }
    return builder.build();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void meanLiesBelowRmsAndRmsBelowPeak(Generator random) {
    Profile<ElectricCurrent> profile = random(random);
    double meanA = AMPERE.valueOf(profile.mean());
    double rmsA = AMPERE.valueOf(profile.rms());
    double peakA = AMPERE.valueOf(profile.peak());
    assertThat(Math.abs(meanA)).isLessThanOrEqualTo(rmsA * (1 + 1e-12));
    assertThat(rmsA).isLessThanOrEqualTo(peakA * (1 + 1e-12));
    assertThat(meanA)
        .isBetween(
            AMPERE.valueOf(profile.lowest()) - 1e-9, AMPERE.valueOf(profile.highest()) + 1e-9);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void jouleIntegralIsRmsSquaredTimesTime(Generator random) {
    Profile<ElectricCurrent> profile = random(random);
    double rmsA = AMPERE.valueOf(profile.rms());
    double jouleA2s = AMPERE_SQUARED_SECOND.valueOf(profile.jouleIntegral());
    assertThat(jouleA2s)
        .isCloseTo(rmsA * rmsA * SECOND.valueOf(profile.duration()), relative(jouleA2s));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void figuresAgreeWithSumsOverFineSteps(Generator random) {
    Profile<ElectricCurrent> profile = random(random);
    double durationS = SECOND.valueOf(profile.duration());
    double levelA = random.between(-300, 400);
    double sum = 0;
    double squares = 0;
    int above = 0;
    for (int i = 0; i < FINE_STEPS; i++) {
      double currentA = AMPERE.valueOf(profile.at(seconds((i + 0.5) * durationS / FINE_STEPS)));
      sum += currentA;
      squares += currentA * currentA;
      above += currentA >= levelA ? 1 : 0;
    }
    // Each jump, of at most 700 A, may fall anywhere within a step.
    double jumpsA = 700.0 * profile.segmentCount() / FINE_STEPS;
    assertThat(AMPERE.valueOf(profile.mean())).isCloseTo(sum / FINE_STEPS, within(jumpsA));
    double rmsA = AMPERE.valueOf(profile.rms());
    assertThat(rmsA * rmsA).isCloseTo(squares / FINE_STEPS, within(jumpsA * 400));
    double stepsS = (profile.segmentCount() + 1) * durationS / FINE_STEPS;
    assertThat(SECOND.valueOf(profile.timeAtOrAbove(amperes(levelA))))
        .isCloseTo(above * durationS / FINE_STEPS, within(stepsS));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void percentileIsTheInverseOfTimeAbove(Generator random) {
    Profile<ElectricCurrent> profile = random(random);
    double durationS = SECOND.valueOf(profile.duration());
    double before = Double.NEGATIVE_INFINITY;
    for (int i = 0; i <= 20; i++) {
      double share = i / 20.0;
      double valueA = AMPERE.valueOf(profile.percentile(share));
      double slackA = 1e-7;
      double belowS = durationS - SECOND.valueOf(profile.timeAtOrAbove(amperes(valueA + slackA)));
      double strictlyS =
          durationS - SECOND.valueOf(profile.timeAtOrAbove(amperes(valueA - slackA)));
      assertThat(belowS).isGreaterThanOrEqualTo((share - 1e-9) * durationS);
      assertThat(strictlyS).isLessThanOrEqualTo((share + 1e-9) * durationS);
      assertThat(valueA).isGreaterThanOrEqualTo(before);
      before = valueA;
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void highestWindowIsNeverBeatenByATriedOneAndAlmostReachedByOne(Generator random) {
    Profile<ElectricCurrent> profile = random(random);
    double durationS = SECOND.valueOf(profile.duration());
    double windowS = durationS * random.between(0.02, 1);
    Window<ElectricCurrent> rms = profile.highestRms(seconds(windowS));
    Window<ElectricCurrent> mean = profile.highestMean(seconds(windowS));
    double highestRmsA = 0;
    double highestMeanA = Double.NEGATIVE_INFINITY;
    int tries = 500;
    for (int i = 0; i <= tries; i++) {
      Profile<ElectricCurrent> part = part(profile, (durationS - windowS) * i / tries, windowS);
      highestRmsA = Math.max(highestRmsA, AMPERE.valueOf(part.rms()));
      highestMeanA = Math.max(highestMeanA, AMPERE.valueOf(part.mean()));
    }
    double missedA = 700 * (durationS / tries) / windowS;
    assertThat(AMPERE.valueOf(rms.value())).isBetween(highestRmsA - 1e-7, highestRmsA + missedA);
    assertThat(AMPERE.valueOf(mean.value())).isBetween(highestMeanA - 1e-7, highestMeanA + missedA);
    Profile<ElectricCurrent> there = part(profile, SECOND.valueOf(rms.start()), windowS);
    assertThat(AMPERE.valueOf(there.rms())).isCloseTo(AMPERE.valueOf(rms.value()), within(1e-6));
    there = part(profile, SECOND.valueOf(mean.start()), windowS);
    assertThat(AMPERE.valueOf(there.mean())).isCloseTo(AMPERE.valueOf(mean.value()), within(1e-6));
  }

  private static Profile<ElectricCurrent> part(
      Profile<ElectricCurrent> profile, double startS, double lengthS) {
    double durationS = SECOND.valueOf(profile.duration());
    Profile<ElectricCurrent> rest =
        startS > 0 ? profile.after(seconds(Math.min(startS, durationS - lengthS / 2))) : profile;
    double restS = SECOND.valueOf(rest.duration());
    return rest.until(seconds(Math.min(lengthS, restS)));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void windowOverARepeatingProfileIsTheHighestOverThreePeriods(Generator random) {
    Profile<ElectricCurrent> profile = random(random);
    double windowS = SECOND.valueOf(profile.duration()) * random.between(0.05, 1.9);
    double endlessA = AMPERE.valueOf(profile.repeating().highestRms(seconds(windowS)).value());
    double threeA = AMPERE.valueOf(profile.repeated(3).highestRms(seconds(windowS)).value());
    assertThat(endlessA).isCloseTo(threeA, relative(threeA));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void longestSpellIsNoLongerThanTheTimeAboveAndHoldsTheLevel(Generator random) {
    Profile<ElectricCurrent> profile = random(random);
    double levelA = random.between(-300, 400);
    double totalS = SECOND.valueOf(profile.timeAtOrAbove(amperes(levelA)));
    profile
        .longestAtOrAbove(amperes(levelA))
        .ifPresentOrElse(
            spell -> {
              double startS = SECOND.valueOf(spell.start());
              double lengthS = SECOND.valueOf(spell.length());
              assertThat(lengthS).isLessThanOrEqualTo(totalS + 1e-9);
              for (int i = 1; i < 50; i++) {
                double currentA = AMPERE.valueOf(profile.at(seconds(startS + lengthS * i / 50)));
                assertThat(currentA).isGreaterThanOrEqualTo(levelA - 1e-7);
              }
            },
            () -> assertThat(totalS).isZero());
  }

  @ParameterizedTest
  @MethodSource("cases")
  void integralsAddUpWhereAProfileIsCutOrJoined(Generator random) {
    Profile<ElectricCurrent> profile = random(random);
    Profile<ElectricCurrent> other = random(random);
    double cutS = SECOND.valueOf(profile.duration()) * random.between(0.01, 0.99);
    Profile<ElectricCurrent> joined = profile.then(other);
    assertThat(charge(profile.until(seconds(cutS))) + charge(profile.after(seconds(cutS))))
        .isCloseTo(charge(profile), within(1e-8));
    assertThat(charge(joined)).isCloseTo(charge(profile) + charge(other), within(1e-8));
    assertThat(charge(profile.repeated(3))).isCloseTo(3 * charge(profile), within(1e-7));
    assertThat(charge(profile.averagedOver(seconds(cutS / 7))))
        .isCloseTo(charge(profile), within(1e-8));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void plusIsSymmetricAndAddsMeans(Generator random) {
    Profile<ElectricCurrent> one = random(random);
    double durationS = SECOND.valueOf(one.duration());
    Profile<ElectricCurrent> other = random(random);
    double stretch = durationS / SECOND.valueOf(other.duration());
    Profile<ElectricCurrent> asLong =
        Profile.ofSteps(
            SECOND,
            Arrays.stream(other.durationsIn(SECOND)).map(lengthS -> lengthS * stretch).toArray(),
            AMPERE,
            other.startValuesIn(AMPERE));
    double sumA = AMPERE.valueOf(one.mean()) + AMPERE.valueOf(asLong.mean());
    assertThat(AMPERE.valueOf(one.plus(asLong).mean())).isCloseTo(sumA, within(1e-8));
    assertThat(AMPERE.valueOf(asLong.plus(one).mean())).isCloseTo(sumA, within(1e-8));
    assertThat(AMPERE.valueOf(one.plus(one.scaled(-1)).peak())).isZero();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void unitsOfTheInputDoNotMatter(Generator random) {
    double[] timesS = random.rising(8, 1, 100);
    timesS[0] = 0;
    double[] valuesA = new double[8];
    Arrays.setAll(valuesA, i -> random.typed(-300, 400, 1));
    Profile<ElectricCurrent> one = Profile.ofPoints(SECOND, timesS, AMPERE, valuesA);
    Profile<ElectricCurrent> other =
        Profile.ofPoints(
            MINUTE,
            Arrays.stream(timesS).map(timeS -> timeS / 60).toArray(),
            MILLIAMPERE,
            Arrays.stream(valuesA).map(a -> a * 1000).toArray());
    double rmsA = AMPERE.valueOf(one.rms());
    assertThat(AMPERE.valueOf(other.rms())).isCloseTo(rmsA, relative(rmsA));
    double windowA = AMPERE.valueOf(one.highestRms(seconds(20)).value());
    assertThat(AMPERE.valueOf(other.highestRms(seconds(20)).value()))
        .isCloseTo(windowA, relative(windowA));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void scalingScalesEveryFigure(Generator random) {
    Profile<ElectricCurrent> profile = random(random);
    double factor = random.between(0.1, 5);
    Profile<ElectricCurrent> scaled = profile.scaled(factor);
    double rmsA = AMPERE.valueOf(profile.rms());
    assertThat(AMPERE.valueOf(scaled.rms())).isCloseTo(factor * rmsA, relative(factor * rmsA));
    assertThat(AMPERE.valueOf(scaled.percentile(0.3)))
        .isCloseTo(factor * AMPERE.valueOf(profile.percentile(0.3)), within(1e-9));
  }

  private static double charge(Profile<ElectricCurrent> profile) {
    return COULOMB.valueOf(profile.integral(Kind.CHARGE));
  }

  private static Offset<Double> relative(double value) {
    return within(1e-12 * Math.max(1, Math.abs(value)));
  }
}
