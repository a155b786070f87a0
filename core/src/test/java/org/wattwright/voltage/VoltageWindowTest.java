package org.wattwright.voltage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.volts;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.Generator;
import org.wattwright.testing.ValueTypeContract;
import org.wattwright.units.InvalidInputException;

class VoltageWindowTest extends ValueTypeContract<VoltageWindow> {
  @Override
  protected VoltageWindow sample() {
    return TestParts.window(70, 126)
        .fullPerformance(TestParts.range(84, 120))
        .absoluteMaximum(volts(140));
  }

  @Override
  protected List<VoltageWindow> different() {
    return List.of(
        TestParts.window(70, 126),
        TestParts.window(70, 126).absoluteMaximum(volts(140)),
        sample().absoluteMaximum(volts(141)),
        sample().fullPerformance(TestParts.range(85, 120)));
  }

  static Stream<Generator> cases() {
    return Generator.cases(100);
  }

  @ParameterizedTest
  @CsvSource({
    "69.999, 0",
    "70, 0",
    "77, 0.5",
    "80.5, 0.75",
    "84, 1",
    "100, 1",
    "120, 1",
    "123, 0.5",
    "126, 0",
    "126.001, 0"
  })
  void deratesOnStraightLines(double voltageV, double share) {
    assertThat(sample().deratingAt(volts(voltageV))).isCloseTo(share, within(1e-12));
  }

  @Test
  void worksFullyWhereNoFullPerformanceBandIsKnown() {
    VoltageWindow plain = TestParts.window(70, 126);
    assertThat(plain.deratingAt(volts(70))).isEqualTo(1);
    assertThat(plain.deratingAt(volts(126))).isEqualTo(1);
    assertThat(plain.deratingAt(volts(69.9))).isZero();
    assertThat(plain.deratingAt(volts(126.1))).isZero();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  void deratingIsContinuousAndBetweenZeroAndOne(Generator random) {
    double[] endsV = random.rising(4, 20, 500);
    VoltageWindow window =
        TestParts.window(endsV[0], endsV[3]).fullPerformance(TestParts.range(endsV[1], endsV[2]));
    double steepestPerV = Math.max(1 / (endsV[1] - endsV[0]), 1 / (endsV[3] - endsV[2]));
    double stepV = (endsV[3] - endsV[0] + 20) / 2000;
    double before = 0;
    for (double voltageV = endsV[0] - 10; voltageV <= endsV[3] + 10; voltageV += stepV) {
      double share = window.deratingAt(volts(voltageV));
      assertThat(share).isBetween(0.0, 1.0);
      assertThat(Math.abs(share - before)).isLessThanOrEqualTo(steepestPerV * stepV * (1 + 1e-9));
      before = share;
    }
    for (double endV : endsV) {
      assertThat(window.deratingAt(volts(Math.nextDown(endV))))
          .isCloseTo(window.deratingAt(volts(Math.nextUp(endV))), within(1e-9));
    }
  }

  @Test
  void aFullBandThatIsTheWholeBandDeratesNowhere() {
    VoltageWindow window = TestParts.window(70, 126).fullPerformance(TestParts.range(70, 126));
    assertThat(window.deratingAt(volts(70))).isEqualTo(1);
    assertThat(window.deratingAt(volts(126))).isEqualTo(1);
  }

  @Test
  void printsWhatIsKnown() {
    assertThat(sample())
        .hasToString("operating 70 V … 126 V, full 84 V … 120 V, absolute maximum 140 V");
    assertThat(TestParts.window(70, 126)).hasToString("operating 70 V … 126 V");
    assertThat(TestParts.window(70, 126).absoluteMaximum()).isEmpty();
    assertThat(TestParts.window(70, 126).fullPerformance()).isEmpty();
  }

  @Test
  void absoluteMaximumMayBeTheTopOfTheBand() {
    assertThat(TestParts.window(70, 126).absoluteMaximum(volts(126)).absoluteMaximum())
        .hasValue(volts(126));
  }

  @Test
  void rejectsBandsThatDoNotNest() {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> TestParts.window(70, 126).fullPerformance(TestParts.range(60, 120)))
        .withMessage(
            "VoltageWindow.fullPerformance must be inside the operating band 70 V … 126 V, but"
                + " was 60 V … 120 V");
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> TestParts.window(70, 126).fullPerformance(TestParts.range(80, 127)));
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> TestParts.window(70, 126).absoluteMaximum(volts(125)))
        .withMessage(
            "VoltageWindow.absoluteMaximum must be ≥ the top of the operating band 126 V, but was"
                + " 125 V");
    assertThatNullPointerException()
        .isThrownBy(() -> VoltageWindow.operating(null))
        .withMessage("operating");
  }
}
