package org.wattwright.profile;

import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.seconds;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Time;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.ReferenceRows;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;
import org.wattwright.units.WorkshopUnits;

class ProfileReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("profile");

  private static final ReferenceRows PULSES = ReferenceRows.read("/profile/pulses.csv");
  private static final ReferenceRows DUTY = ReferenceRows.read("/profile/duty.csv");

  /**
   * Chords lie off a curve by h²/8 of its second derivative: the joule integral of a half sine errs
   * by (π/n)²/6, that of an exponential over 15 time constants by (15/n)²/6, here 9e-8.
   */
  private static final int STEPS = 20_000;

  /** The rest of an exponential after so many time constants is 1e-13 of its joule integral. */
  private static final double TIME_CONSTANTS = 15;

  static Stream<ReferenceRow> publishedDutyCurrents() {
    return DUTY.stream().filter(row -> row.has("I100"));
  }

  @ParameterizedTest
  @MethodSource("publishedDutyCurrents")
  void currentAtDutyHasTheRmsOfTheContinuousCurrent(ReferenceRow row) {
    double dutyPercent = Double.parseDouble(row.quantity().replaceAll("\\D", ""));
    double rmsOfOneAmpere =
        WorkshopUnits.AMPERE.valueOf(onOff(1, dutyPercent, 100 - dutyPercent).rms());
    VALIDATION.computed(row, row.givenNumber("I100") / rmsOfOneAmpere);
  }

  @Test
  void continuousCurrentIsTheRmsOfTheDutyCurrent() {
    VALIDATION.computed(DUTY.row("D-024"), onOff(160, 60, 40).rms(), Kind.CURRENT);
  }

  @Test
  void rmsOfTwoLevelsIsAsDefined() {
    Profile<ElectricCurrent> hill =
        Profile.segments(Kind.CURRENT)
            .hold(amperes(400), seconds(10))
            .hold(amperes(120), seconds(50))
            .build();
    VALIDATION.computed(DUTY.row("D-026"), hill.rms(), Kind.CURRENT);
    VALIDATION.computed(DUTY.row("D-027"), onOff(300, 30, 90).rms(), Kind.CURRENT);
  }

  @Test
  void jouleIntegralOfSquarePulse() {
    ReferenceRow row = PULSES.row("FUS-075");
    joule(
        row,
        Profile.constant(Kind.CURRENT, row.given("ip", Kind.CURRENT), row.given("t", Kind.TIME)));
    joule(PULSES.row("FUS-081"), Profile.constant(Kind.CURRENT, amperes(2000), seconds(0.008)));
  }

  @Test
  void jouleIntegralOfTriangularPulse() {
    ReferenceRow row = PULSES.row("FUS-076");
    joule(
        row,
        Profile.ofSamples(
            Kind.CURRENT,
            List.of(
                Sample.of(seconds(0), row.given("ip", Kind.CURRENT)),
                Sample.of(row.given("t", Kind.TIME), amperes(0)))));
  }

  @Test
  void jouleIntegralOfHalfSine() {
    ReferenceRow row = PULSES.row("FUS-077");
    double peakA = row.givenNumber("ip");
    double lengthS = row.givenNumber("t");
    joule(row, sampled(lengthS, timeS -> peakA * Math.sin(Math.PI * timeS / lengthS)));
  }

  @Test
  void jouleIntegralOfExponentialDecay() {
    ReferenceRow row = PULSES.row("FUS-078");
    double peakA = row.givenNumber("ip");
    double constantS = row.givenNumber("tau");
    joule(row, decay(peakA, constantS));
  }

  @Test
  void jouleIntegralOfPreCharge() {
    ReferenceRow row = PULSES.row("PRE-029");
    double peakA = row.givenNumber("U") / row.givenNumber("R");
    double constantS = row.givenNumber("R") * row.givenNumber("C") * 1e-6;
    joule(row, decay(peakA, constantS));
  }

  private static void joule(ReferenceRow row, Profile<ElectricCurrent> pulse) {
    VALIDATION.computed(row, WorkshopUnits.AMPERE_SQUARED_SECOND.valueOf(pulse.jouleIntegral()));
  }

  private static Profile<ElectricCurrent> onOff(double currentA, double onS, double offS) {
    return Profile.segments(Kind.CURRENT)
        .hold(amperes(currentA), seconds(onS))
        .hold(amperes(0), seconds(offS))
        .build()
        .repeating();
  }

  private static Profile<ElectricCurrent> decay(double peakA, double constantS) {
    return sampled(constantS * TIME_CONSTANTS, timeS -> peakA * Math.exp(-timeS / constantS));
  }

  private static Profile<ElectricCurrent> sampled(double lengthS, DoubleUnaryOperator lawA) {
    return Profile.sampled(
        Kind.CURRENT,
        seconds(lengthS),
        STEPS,
        (javax.measure.Quantity<Time> time) ->
            amperes(lawA.applyAsDouble(WorkshopUnits.SECOND.valueOf(time))));
  }
}
