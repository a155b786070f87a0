package org.wattwright.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.ampereHours;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kilometresPerHour;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.minutes;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.watts;
import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.AMPERE_SQUARED_SECOND;
import static org.wattwright.units.WorkshopUnits.CELSIUS;
import static org.wattwright.units.WorkshopUnits.KILOWATT_HOUR;
import static org.wattwright.units.WorkshopUnits.METRE;
import static org.wattwright.units.WorkshopUnits.MINUTE;
import static org.wattwright.units.WorkshopUnits.SECOND;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Power;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.junit.jupiter.api.Test;
import org.wattwright.units.Kind;

class ProfileTest {
  private static final double OWN_ALGEBRA = 1e-12;

  /** 400 A for 10 s, then 120 A for 50 s. */
  private static final Profile<ElectricCurrent> HILL =
      Profile.segments(Kind.CURRENT)
          .hold(amperes(400), seconds(10))
          .hold(amperes(120), seconds(50))
          .build();

  /** Up to 300 A in 10 s, there for 20 s, down to -100 A in 20 s. */
  private static final Profile<ElectricCurrent> TRAPEZOID =
      Profile.segments(Kind.CURRENT)
          .rampTo(amperes(300), seconds(10))
          .hold(amperes(300), seconds(20))
          .rampTo(amperes(-100), seconds(20))
          .build();

  @Test
  void valueFollowsTheLinesAndJumpsAfterward() {
    assertThat(HILL.at(seconds(0))).isEqualTo(amperes(400));
    assertThat(HILL.at(seconds(9.99))).isEqualTo(amperes(400));
    assertThat(HILL.at(seconds(10))).isEqualTo(amperes(120));
    assertThat(HILL.at(seconds(60))).isEqualTo(amperes(120));
    assertThat(TRAPEZOID.at(seconds(5))).isEqualTo(amperes(150));
    assertThat(TRAPEZOID.at(seconds(40))).isEqualTo(amperes(100));
    assertThat(TRAPEZOID.at(seconds(50))).isEqualTo(amperes(-100));
  }

  @Test
  void repeatingProfileStartsAnew() {
    Profile<ElectricCurrent> again = HILL.repeating();
    assertThat(again.isRepeating()).isTrue();
    assertThat(HILL.isRepeating()).isFalse();
    assertThat(again.at(seconds(60))).isEqualTo(amperes(400));
    assertThat(again.at(minutes(61))).isEqualTo(amperes(400));
    assertThat(again.at(seconds(135))).isEqualTo(amperes(120));
    assertThat(again.duration()).isEqualTo(seconds(60));
  }

  @Test
  void meanAndRmsOfTrapezoidAreTheHandFormulas() {
    // Areas: 1500 + 6000 + 2000 A·s over 50 s.
    assertA(TRAPEZOID.mean(), 190);
    // (b²/3)·10 + 300²·20 + (a² + a·b + b²)/3·20 with a = 300, b = -100.
    double squares = 300_000 + 1_800_000 + (90_000 - 30_000 + 10_000) / 3.0 * 20;
    assertA(TRAPEZOID.rms(), Math.sqrt(squares / 50));
    assertThat(AMPERE_SQUARED_SECOND.valueOf(TRAPEZOID.jouleIntegral()))
        .isCloseTo(squares, within(OWN_ALGEBRA * squares));
  }

  @Test
  void extremesKeepTheirSignAndPeakIsTheLargestSize() {
    assertThat(TRAPEZOID.highest()).isEqualTo(amperes(300));
    assertThat(TRAPEZOID.lowest()).isEqualTo(amperes(-100));
    assertThat(TRAPEZOID.peak()).isEqualTo(amperes(300));
    assertThat(TRAPEZOID.scaled(-1).peak()).isEqualTo(amperes(300));
    assertThat(TRAPEZOID.scaled(-1).highest()).isEqualTo(amperes(100));
  }

  @Test
  void percentilesFollowTheTimeSpent() {
    assertA(HILL.percentile(0), 120);
    assertA(HILL.percentile(0.5), 120);
    assertA(HILL.percentile(50.0 / 60), 120);
    assertA(HILL.percentile(0.84), 400);
    assertA(HILL.percentile(1), 400);
    // Below 0 A: 5 s; from 0 A to 100 A: 3.33 s up and 5 s down; 300 A held for 20 s.
    assertA(TRAPEZOID.percentile(0), -100);
    assertA(TRAPEZOID.percentile(0.1), 0);
    assertA(TRAPEZOID.percentile((5 + 10 / 3.0 + 5) / 50), 100);
    assertA(TRAPEZOID.percentile(0.6), 300);
    assertA(TRAPEZOID.percentile(0.7), 300);
  }

  @Test
  void percentileJumpsOverValuesThatAreNeverTaken() {
    Profile<ElectricCurrent> jump =
        Profile.segments(Kind.CURRENT)
            .hold(amperes(1), seconds(1))
            .hold(amperes(5), seconds(1))
            .build();
    assertA(jump.percentile(0.5), 1);
    assertA(jump.percentile(0.5000001), 5);
  }

  @Test
  void timeAtOrAboveCountsTheLevelItself() {
    assertS(HILL.timeAtOrAbove(amperes(400)), 10);
    assertS(HILL.timeAtOrAbove(amperes(400.1)), 0);
    assertS(HILL.timeAtOrAbove(amperes(120)), 60);
    assertS(TRAPEZOID.timeAtOrAbove(amperes(100)), 10 * 2 / 3.0 + 20 + 10);
    assertS(TRAPEZOID.timeAtOrAbove(amperes(-100)), 50);
  }

  @Test
  void longestSpellSaysWhereItStarts() {
    Spell spell = TRAPEZOID.longestAtOrAbove(amperes(150)).orElseThrow();
    assertS(spell.start(), 5);
    assertS(spell.length(), 5 + 20 + 7.5);
    assertThat(spell.endless()).isFalse();
    assertThat(spell.lastsAtLeast(seconds(32.5))).isTrue();
    assertThat(spell.lastsAtLeast(seconds(32.6))).isFalse();
    assertThat(TRAPEZOID.longestAtOrAbove(amperes(301))).isEmpty();
  }

  @Test
  void firstOfEqualSpellsAndWindowsCounts() {
    Profile<ElectricCurrent> twice = HILL.then(HILL);
    assertS(twice.longestAtOrAbove(amperes(400)).orElseThrow().start(), 0);
    assertS(twice.longestAtOrAbove(amperes(400)).orElseThrow().length(), 10);
    assertS(twice.highestRms(seconds(5)).start(), 0);
    assertS(HILL.scaled(0).highestRms(seconds(5)).start(), 0);
    assertS(HILL.scaled(0).highestMean(seconds(5)).start(), 0);
  }

  @Test
  void spellsRunOverTheEndOfARepeatingProfile() {
    Profile<ElectricCurrent> endsHigh =
        Profile.segments(Kind.CURRENT)
            .hold(amperes(200), seconds(5))
            .hold(amperes(0), seconds(10))
            .hold(amperes(200), seconds(8))
            .build();
    assertS(endsHigh.longestAtOrAbove(amperes(100)).orElseThrow().length(), 8);
    Spell over = endsHigh.repeating().longestAtOrAbove(amperes(100)).orElseThrow();
    assertS(over.start(), 15);
    assertS(over.length(), 13);
    assertThat(over.endless()).isFalse();
  }

  @Test
  void spellOfARepeatingProfileThatNeverFallsIsEndless() {
    Spell spell = HILL.repeating().longestAtOrAbove(amperes(100)).orElseThrow();
    assertThat(spell.endless()).isTrue();
    assertThat(spell.lastsAtLeast(minutes(1000))).isTrue();
    assertThat(spell).hasToString("endless");
    assertThat(HILL.longestAtOrAbove(amperes(100)).orElseThrow().endless()).isFalse();
    assertS(HILL.longestAtOrAbove(amperes(100)).orElseThrow().length(), 60);
  }

  @Test
  void repeatingProfileThatEndsLowHasNoSpellOverItsEnd() {
    assertS(HILL.repeating().longestAtOrAbove(amperes(200)).orElseThrow().length(), 10);
    Profile<ElectricCurrent> startsLow = HILL.scaled(-1).repeating();
    assertS(startsLow.longestAtOrAbove(amperes(-200)).orElseThrow().length(), 50);
    assertThat(startsLow.longestAtOrAbove(amperes(1))).isEmpty();
  }

  @Test
  void peakThatTouchesTheLevelIsASpellOfNoLength() {
    Profile<ElectricCurrent> tooth =
        Profile.segments(Kind.CURRENT)
            .rampTo(amperes(10), seconds(1))
            .rampTo(amperes(0), seconds(1))
            .build();
    Spell touched = tooth.longestAtOrAbove(amperes(10)).orElseThrow();
    assertS(touched.start(), 1);
    assertS(touched.length(), 0);
  }

  @Test
  void highestWindowsAreFoundWhereTheyAre() {
    assertThat(HILL.highestRms(seconds(10)).value()).isEqualTo(amperes(400));
    assertS(HILL.highestRms(seconds(10)).start(), 0);
    double squares = 400 * 400 * 10 + 120 * 120 * 20;
    assertA(HILL.highestRms(seconds(30)).value(), Math.sqrt(squares / 30));
    assertA(HILL.highestRms(seconds(60)).value(), 196.63841605);
    assertA(HILL.highestMean(seconds(20)).value(), 260);
    // The window of 40 s over the trapezoid balances its edges: 30·s = 300 − 20·(s + 10), s = 2 s.
    Window<ElectricCurrent> best = TRAPEZOID.highestMean(seconds(40));
    assertS(best.start(), 2);
    assertS(best.length(), 40);
    assertA(best.value(), (8 * 180 + 20 * 300 + 12 * 180) / 40.0);
  }

  @Test
  void highestRmsMayHaveEdgesOfOppositeSign() {
    // From -100 A up to 100 A in 20 s: every window of 10 s but the ends holds smaller values.
    Profile<ElectricCurrent> cross =
        Profile.segments(Kind.CURRENT)
            .hold(amperes(-100), seconds(1))
            .rampTo(amperes(100), seconds(20))
            .hold(amperes(100), seconds(1))
            .build();
    Window<ElectricCurrent> worst = cross.highestRms(seconds(10));
    assertS(worst.start(), 0);
    double squares = 10_000 + (10_000 + 1000 + 100) / 3.0 * 9;
    assertA(worst.value(), Math.sqrt(squares / 10));
    // A tooth down and up again: the window that holds it evenly has edges of equal size.
    Profile<ElectricCurrent> slope =
        Profile.segments(Kind.CURRENT)
            .rampTo(amperes(-10), seconds(10))
            .hold(amperes(6), seconds(10))
            .build();
    assertS(slope.highestRms(seconds(8)).start(), 6);
  }

  @Test
  void windowOverARepeatingProfileWraps() {
    Profile<ElectricCurrent> split =
        Profile.segments(Kind.CURRENT)
            .hold(amperes(100), seconds(5))
            .hold(amperes(0), seconds(20))
            .hold(amperes(100), seconds(5))
            .build()
            .repeating();
    Window<ElectricCurrent> best = split.highestRms(seconds(10));
    assertA(best.value(), 100);
    assertS(best.start(), 25);
    // Two periods and 10 s more.
    double squares = 100 * 100 * (10 + 10 + 10);
    assertA(split.highestRms(seconds(70)).value(), Math.sqrt(squares / 70));
    // A whole number of periods: the RMS of one.
    assertA(split.highestRms(seconds(60)).value(), AMPERE.valueOf(split.rms()));
    assertS(split.highestRms(seconds(60)).start(), 0);
  }

  @Test
  void integralsHaveTheirNames() {
    assertThat(HILL.integral(Kind.CHARGE)).isEqualTo(ampereHours(10000 / 3600.0));
    Profile<Power> charge = Profile.constant(Kind.POWER, kilowatts(6.6), minutes(30));
    assertThat(KILOWATT_HOUR.valueOf(charge.integral(Kind.ENERGY)))
        .isCloseTo(3.3, within(OWN_ALGEBRA));
    Profile<Speed> start =
        Profile.segments(Kind.SPEED).rampTo(kilometresPerHour(36), seconds(10)).build();
    assertThat(METRE.valueOf(start.integral(Kind.LENGTH))).isCloseTo(50, within(OWN_ALGEBRA));
  }

  @Test
  void temperaturesHaveAMeanButNoRms() {
    Profile<Temperature> warming =
        Profile.segments(Kind.TEMPERATURE)
            .hold(celsius(20), seconds(60))
            .rampTo(celsius(40), seconds(60))
            .build();
    assertThat(CELSIUS.valueOf(warming.mean())).isCloseTo(25, within(1e-9));
    assertThat(CELSIUS.valueOf(warming.highestMean(seconds(60)).value()))
        .isCloseTo(30, within(1e-9));
    assertThat(warming).hasToString("temperature over 120 s: 20 °C … 40 °C, mean 25 °C");
  }

  @Test
  void thenPutsOneBehindTheOther() {
    Profile<ElectricCurrent> both = HILL.then(TRAPEZOID);
    assertThat(both.duration()).isEqualTo(seconds(110));
    assertThat(both.at(seconds(59.9))).isEqualTo(amperes(120));
    assertThat(both.at(seconds(60))).isEqualTo(amperes(0));
    assertThat(both.at(seconds(65))).isEqualTo(amperes(150));
    assertThat(both.segmentCount()).isEqualTo(5);
  }

  @Test
  void repeatedIsThenOverAndOver() {
    assertThat(HILL.repeated(1)).isEqualTo(HILL);
    assertThat(HILL.repeated(3)).isEqualTo(HILL.then(HILL).then(HILL));
    assertThat(HILL.repeating().repeated(2)).isEqualTo(HILL.then(HILL));
  }

  @Test
  void untilAndAfterCutInTwo() {
    assertThat(HILL.until(seconds(10)))
        .isEqualTo(Profile.constant(Kind.CURRENT, amperes(400), seconds(10)));
    assertThat(HILL.after(seconds(10)))
        .isEqualTo(Profile.constant(Kind.CURRENT, amperes(120), seconds(50)));
    Profile<ElectricCurrent> head = TRAPEZOID.until(seconds(5));
    assertThat(head.segmentCount()).isEqualTo(1);
    assertThat(head.highest()).isEqualTo(amperes(150));
    Profile<ElectricCurrent> middle = TRAPEZOID.after(seconds(5)).until(seconds(35));
    assertThat(middle.duration()).isEqualTo(seconds(35));
    assertThat(middle.segmentCount()).isEqualTo(3);
    assertThat(middle.at(seconds(0))).isEqualTo(amperes(150));
    assertThat(middle.at(seconds(35))).isEqualTo(amperes(100));
    assertThat(TRAPEZOID.until(seconds(50))).isEqualTo(TRAPEZOID);
    assertThat(TRAPEZOID.after(seconds(0))).isEqualTo(TRAPEZOID);
  }

  @Test
  void plusAddsValuesWhereverEitherBends() {
    Profile<ElectricCurrent> sum =
        HILL.plus(
            Profile.segments(Kind.CURRENT)
                .hold(amperes(5), seconds(30))
                .hold(amperes(50), seconds(30))
                .build());
    assertThat(sum.segmentCount()).isEqualTo(3);
    assertThat(sum.at(seconds(5))).isEqualTo(amperes(405));
    assertThat(sum.at(seconds(20))).isEqualTo(amperes(125));
    assertThat(sum.at(seconds(40))).isEqualTo(amperes(170));
    assertThat(HILL.repeating().plus(HILL.repeating())).isEqualTo(HILL.scaled(2).repeating());
  }

  @Test
  void plusForgivesTheRoundingOfDurations() {
    Profile<ElectricCurrent> thirds =
        Profile.ofSteps(SECOND, new double[] {0.1, 0.1, 0.1}, AMPERE, new double[] {1, 1, 1});
    Profile<ElectricCurrent> whole = Profile.constant(Kind.CURRENT, amperes(2), seconds(0.3));
    assertThat(thirds.duration()).isNotEqualTo(whole.duration());
    assertThat(thirds.plus(whole).mean()).isEqualTo(amperes(3));
    assertThat(whole.plus(thirds).mean()).isEqualTo(amperes(3));
    assertThat(whole.plus(thirds).duration()).isEqualTo(seconds(0.3));
    assertThat(thirds.plus(whole).segmentCount()).isEqualTo(3);
    Profile<ElectricCurrent> bendsLate =
        Profile.ofSteps(SECOND, new double[] {0.3 + 5e-14, 5e-14}, AMPERE, new double[] {1, 1});
    assertThat(whole.plus(bendsLate).duration()).isEqualTo(seconds(0.3));
  }

  @Test
  void averagesKeepTheIntegralAndSamplesKeepTheValues() {
    Profile<ElectricCurrent> means = TRAPEZOID.averagedOver(seconds(20));
    assertThat(means.segmentCount()).isEqualTo(3);
    assertA(means.at(seconds(0)), (10 * 150 + 10 * 300) / 20.0);
    assertA(means.at(seconds(45)), -0.0);
    assertA(means.mean(), 190);
    Profile<ElectricCurrent> points = TRAPEZOID.sampledEvery(seconds(20));
    assertThat(points.segmentCount()).isEqualTo(3);
    assertThat(points.at(seconds(20))).isEqualTo(amperes(300));
    assertThat(points.at(seconds(10))).isEqualTo(amperes(150));
    assertThat(points.at(seconds(50))).isEqualTo(amperes(-100));
    assertThat(HILL.repeating().averagedOver(seconds(10)).isRepeating()).isTrue();
    assertThat(HILL.averagedOver(seconds(10)).segmentCount()).isEqualTo(6);
    assertThat(HILL.averagedOver(seconds(100)).mean()).isEqualTo(HILL.mean());
  }

  @Test
  void numbersComeInTheUnitAskedFor() {
    assertThat(HILL.durationsIn(SECOND)).containsExactly(10, 50);
    assertThat(HILL.durationsIn(MINUTE))
        .containsExactly(new double[] {10 / 60.0, 50 / 60.0}, within(OWN_ALGEBRA));
    assertThat(TRAPEZOID.startValuesIn(AMPERE)).containsExactly(0, 300, 300);
    assertThat(TRAPEZOID.endValuesIn(AMPERE)).containsExactly(300, 300, -100);
    Profile<Temperature> cold = Profile.constant(Kind.TEMPERATURE, celsius(-10), minutes(1));
    assertThat(cold.startValuesIn(CELSIUS)[0]).isCloseTo(-10, within(1e-12));
  }

  @Test
  void numbersHandedOutAreCopies() {
    HILL.startValuesIn(AMPERE)[0] = 1e9;
    HILL.endValuesIn(AMPERE)[0] = 1e9;
    HILL.durationsIn(SECOND)[0] = 1e9;
    assertThat(HILL.peak()).isEqualTo(amperes(400));
    assertThat(HILL.duration()).isEqualTo(seconds(60));
  }

  @Test
  void arraysHandedInAreCopied() {
    double[] times = {0, 10};
    double[] values = {1, 2};
    Profile<ElectricCurrent> points = Profile.ofPoints(SECOND, times, AMPERE, values);
    Profile<ElectricCurrent> steps = Profile.ofSteps(MINUTE, times(1, 1), AMPERE, values);
    times[1] = 99;
    values[1] = 99;
    assertThat(points.duration()).isEqualTo(seconds(10));
    assertThat(points.highest()).isEqualTo(amperes(2));
    assertThat(steps.highest()).isEqualTo(amperes(2));
    assertThat(steps.duration()).isEqualTo(minutes(2));
  }

  private static double[] times(double... values) {
    return values;
  }

  @Test
  void segmentsAreListedWithTheirTimes() {
    List<Segment<ElectricCurrent>> segments = TRAPEZOID.segments();
    assertThat(segments)
        .containsExactly(
            new Segment<>(seconds(0), seconds(10), amperes(0), amperes(300)),
            new Segment<>(seconds(10), seconds(20), amperes(300), amperes(300)),
            new Segment<>(seconds(30), seconds(20), amperes(300), amperes(-100)));
    assertThat(segments.get(1)).hasToString("from 10 s for 20 s: 300 A");
    assertThat(segments.get(2)).hasToString("from 30 s for 20 s: 300 A to -100 A");
  }

  @Test
  void samplesMakeStraightLines() {
    Profile<ElectricCurrent> line =
        Profile.ofSamples(
            Kind.CURRENT,
            List.of(Sample.of(seconds(0), amperes(0)), Sample.of(minutes(1), amperes(60))));
    assertThat(line.at(seconds(15))).isEqualTo(amperes(15));
    assertThat(Sample.of(seconds(10), amperes(200))).hasToString("200 A at 10 s");
  }

  @Test
  void lawIsTakenAtEqualStepsFromStartToEnd() {
    List<Quantity<Time>> asked = new java.util.ArrayList<>();
    Profile<ElectricCurrent> ramp =
        Profile.sampled(
            Kind.CURRENT,
            seconds(8),
            4,
            time -> {
              asked.add(time);
              return amperes(3 * SECOND.valueOf(time));
            });
    assertThat(asked).containsExactly(seconds(0), seconds(2), seconds(4), seconds(6), seconds(8));
    assertThat(ramp.mean()).isEqualTo(amperes(12));
  }

  @Test
  void readsWellInOneLine() {
    assertThat(HILL).hasToString("current over 60 s: 120 A … 400 A, mean 166.7 A, rms 196.6 A");
    assertThat(HILL.repeating().toString()).startsWith("current repeating every 60 s: ");
    assertThat(Profile.constant(Kind.POWER, watts(50), seconds(1)))
        .hasToString("power over 1 s: 50 W … 50 W, mean 50 W, rms 50 W");
    assertThat(HILL.highestMean(seconds(10))).hasToString("400 A over 10 s from 0 s on");
    assertThat(HILL.longestAtOrAbove(amperes(200)).orElseThrow()).hasToString("10 s from 0 s on");
  }

  private static void assertA(Quantity<ElectricCurrent> current, double expectedA) {
    assertThat(AMPERE.valueOf(current))
        .isCloseTo(expectedA, within(1e-10 * Math.max(1, Math.abs(expectedA))));
  }

  private static void assertS(Quantity<Time> time, double expectedS) {
    assertThat(SECOND.valueOf(time)).isCloseTo(expectedS, within(1e-11 * Math.max(1, expectedS)));
  }
}
