package org.wattwright.profile;

import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.CELSIUS;
import static org.wattwright.units.WorkshopUnits.MINUTE;
import static org.wattwright.units.WorkshopUnits.SECOND;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Temperature;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

class ProfileInputTest {
  private static final Profile<ElectricCurrent> MINUTE_LONG =
      Profile.constant(Kind.CURRENT, amperes(100), seconds(60));
  private static final Profile<Temperature> WARM =
      Profile.constant(Kind.TEMPERATURE, celsius(20), seconds(60));

  @Test
  void rejectsTooFewSamples() {
    rejects(
        () -> Profile.ofSamples(Kind.CURRENT, List.of()),
        "Profile.samples must be two or more, but was 0");
    rejects(
        () -> Profile.ofSamples(Kind.CURRENT, List.of(Sample.of(seconds(0), amperes(1)))),
        "Profile.samples must be two or more, but was 1");
  }

  @Test
  void rejectsTimeThatDoesNotStartAtZero() {
    rejects(
        () -> points(new double[] {5, 6}, new double[] {1, 2}),
        "Profile.times[0] must be 0 s, but was 5 s (count time from the first sample)");
  }

  @Test
  void rejectsTimeThatDoesNotIncrease() {
    rejects(
        () -> points(new double[] {0, 2, 2}, new double[] {1, 2, 3}),
        "Profile.times[2] must be > 2.0 s, but was 2.0 s");
    rejects(
        () -> points(new double[] {0, 2, 1}, new double[] {1, 2, 3}),
        "Profile.times[2] must be > 2.0 s, but was 1.0 s");
  }

  @Test
  void rejectsNumbersThatAreNotFinite() {
    rejects(
        () -> points(new double[] {0, 1}, new double[] {1, Double.NaN}),
        "Profile.values[1] must be finite, but was NaN A");
    rejects(
        () -> points(new double[] {0, Double.POSITIVE_INFINITY}, new double[] {1, 1}),
        "Profile.times[1] must be finite, but was Infinity s");
    rejects(
        () -> Profile.ofSteps(MINUTE, new double[] {Double.NaN}, AMPERE, new double[] {1}),
        "Profile.durations[0] must be finite, but was NaN min");
  }

  @Test
  void rejectsTemperatureBelowAbsoluteZero() {
    rejects(
        () -> Profile.ofPoints(SECOND, new double[] {0, 1}, CELSIUS, new double[] {20, -300}),
        "temperature must be ≥ absolute zero (0 K), but was -300 °C");
  }

  @Test
  void rejectsArraysOfDifferentLength() {
    rejects(
        () -> points(new double[] {0, 1}, new double[] {1}),
        "Profile.values must be as many as times (2), but was 1");
    rejects(
        () -> Profile.ofSteps(SECOND, new double[] {1}, AMPERE, new double[] {}),
        "Profile.values must be as many as times (1), but was 0");
  }

  @Test
  void rejectsStepsWithoutDuration() {
    rejects(
        () -> Profile.ofSteps(SECOND, new double[] {}, AMPERE, new double[] {}),
        "Profile.durations must be one or more, but was none");
    rejects(
        () -> Profile.ofSteps(SECOND, new double[] {1, 0}, AMPERE, new double[] {1, 1}),
        "Profile.durations[1] must be > 0 s, but was 0 s");
    rejects(
        () -> Profile.ofSteps(MINUTE, new double[] {-1}, AMPERE, new double[] {1}),
        "Profile.durations[0] must be > 0 s, but was -60 s");
  }

  @Test
  void rejectsDurationLostBesideTheTimeBeforeIt() {
    rejects(
        () -> Profile.ofSteps(SECOND, new double[] {1e9, 1e-9}, AMPERE, new double[] {1, 1}),
        "Profile.times[2] must be > 1.0E9 s, but was 1.0E9 s");
  }

  @Test
  void rejectsBuilderWithoutStretches() {
    rejects(
        () -> Profile.segments(Kind.CURRENT).build(),
        "Profile.segments must be a list with at least one element, but was empty");
    rejects(
        () ->
            Profile.segments(Kind.CURRENT)
                .hold(amperes(1), seconds(1))
                .hold(amperes(1), seconds(-2)),
        "Profile.segments[1].duration must be > 0 s, but was -2 s");
    rejects(
        () -> Profile.segments(Kind.TEMPERATURE).rampTo(celsius(20), seconds(1)),
        "Profile.segments[0] must be a hold, but was a ramp from no temperature");
    assertThatNullPointerException().isThrownBy(() -> Profile.segments(null)).withMessage("kind");
    assertThatNullPointerException()
        .isThrownBy(() -> Sample.of(seconds(1), null))
        .withMessage("value");
  }

  @Test
  @SuppressWarnings({"unchecked", "rawtypes"})
  void rejectsValueOfAnotherKind() {
    rejects(
        () -> Profile.segments(Kind.CURRENT).hold((Quantity) seconds(1), seconds(1)),
        "current must be a current, but was the time 1 s");
  }

  @Test
  void rejectsTimeOutsideTheProfile() {
    rejects(() -> MINUTE_LONG.at(seconds(61)), "Profile.at must be ≤ 60 s, but was 61 s");
    rejects(() -> MINUTE_LONG.at(seconds(-1)), "Profile.at must be ≥ 0 s, but was -1 s");
    rejects(
        () -> MINUTE_LONG.repeating().at(seconds(-1)), "Profile.at must be ≥ 0 s, but was -1 s");
    rejects(() -> MINUTE_LONG.until(seconds(61)), "Profile.until must be ≤ 60 s, but was 61 s");
    rejects(() -> MINUTE_LONG.until(seconds(0)), "Profile.until must be > 0 s, but was 0 s");
    rejects(() -> MINUTE_LONG.after(seconds(60)), "Profile.after must be < 60 s, but was 60 s");
  }

  @Test
  void rejectsWindowLongerThanAnEndingProfile() {
    rejects(
        () -> MINUTE_LONG.highestRms(seconds(61)), "Profile.window must be ≤ 60 s, but was 61 s");
    rejects(() -> MINUTE_LONG.highestMean(seconds(0)), "Profile.window must be > 0 s, but was 0 s");
  }

  @Test
  void rejectsShareOutsideItsRange() {
    rejects(
        () -> MINUTE_LONG.percentile(95), "Profile.percentile must be from 0 to 1, but was 95.0");
    rejects(
        () -> MINUTE_LONG.percentile(Double.NaN),
        "Profile.percentile must be from 0 to 1, but was NaN");
  }

  @Test
  void rejectsIntegralOfAnotherKind() {
    rejects(
        () -> MINUTE_LONG.integral(Kind.ENERGY),
        "Profile.integral of current must be charge, but was energy");
    rejects(
        () -> WARM.integral(Kind.ENERGY),
        "Profile.integral of temperature must be one that has a name, but was energy");
    rejects(
        () -> WARM.jouleIntegral(),
        "Profile.jouleIntegral must be of a current, but was of a temperature");
  }

  @Test
  void rejectsArithmeticOnTemperatures() {
    String bound = " must be of a kind with a true zero, but was of a temperature";
    rejects(WARM::rms, "Profile.rms" + bound);
    rejects(WARM::peak, "Profile.peak" + bound);
    rejects(() -> WARM.scaled(2), "Profile.scaled" + bound);
    rejects(() -> WARM.plus(WARM), "Profile.plus" + bound);
    rejects(() -> WARM.highestRms(seconds(1)), "Profile.highestRms" + bound);
  }

  @Test
  void rejectsJoiningWhatDoesNotEnd() {
    Profile<ElectricCurrent> endless = MINUTE_LONG.repeating();
    String bound = " must be ending, but was repeating (repeated(n) makes one that ends)";
    rejects(() -> endless.then(MINUTE_LONG), "Profile.then" + bound);
    rejects(() -> MINUTE_LONG.then(endless), "Profile.then" + bound);
    rejects(() -> endless.until(seconds(1)), "Profile.until" + bound);
    rejects(() -> endless.after(seconds(1)), "Profile.after" + bound);
    rejects(() -> endless.plus(MINUTE_LONG), "Profile.plus must be repeating, but was ending");
  }

  @Test
  void rejectsSumOfDifferentDurations() {
    rejects(
        () -> MINUTE_LONG.plus(Profile.constant(Kind.CURRENT, amperes(1), seconds(61))),
        "Profile.plus.duration must be 60 s, but was 61 s");
  }

  @Test
  void rejectsWhatWouldFillTheMemory() {
    rejects(
        () -> MINUTE_LONG.repeated(10_000_001),
        "Profile.segments must be ≤ 10000000, but was 10000001");
    rejects(() -> MINUTE_LONG.repeated(0), "Profile.repeated must be ≥ 1, but was 0");
    rejects(
        () -> MINUTE_LONG.averagedOver(seconds(1e-9)),
        "Profile.step must be ≥ the duration / 10000000, but was 1E-9 s");
    rejects(() -> MINUTE_LONG.sampledEvery(seconds(0)), "Profile.step must be > 0 s, but was 0 s");
    rejects(
        () -> Profile.sampled(Kind.CURRENT, seconds(1), 0, time -> amperes(1)),
        "Profile.steps must be from 1 to 10000000, but was 0");
    rejects(
        () -> Profile.sampled(Kind.CURRENT, seconds(0), 10, time -> amperes(1)),
        "Profile.duration must be > 0 s, but was 0 s");
    rejects(() -> MINUTE_LONG.scaled(Double.NaN), "Profile.factor must be finite, but was NaN");
  }

  private static Profile<ElectricCurrent> points(double[] times, double[] values) {
    return Profile.ofPoints(SECOND, times, AMPERE, values);
  }

  private static void rejects(ThrowingCallable call, String message) {
    assertThatExceptionOfType(InvalidInputException.class).isThrownBy(call).withMessage(message);
  }
}
