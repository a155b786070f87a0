package org.wattwright.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.Generator;

class TimeCurveTest {
  private static TimeCurve curve(double... pairs) {
    double[] currents = new double[pairs.length / 2];
    double[] times = new double[pairs.length / 2];
    for (int i = 0; i < currents.length; i++) {
      currents[i] = pairs[2 * i];
      times[i] = pairs[2 * i + 1];
    }
    return TimeCurve.of(currents, times);
  }

  @Test
  void isStraightOnLogLogPaper() {
    // t = 1e6/I² between 100 A and 10 kA.
    TimeCurve line = curve(100, 100, 10_000, 0.01);
    assertThat(line.at(1000)).isCloseTo(1, within(1e-12));
    assertThat(line.at(200)).isCloseTo(25, within(1e-10));
  }

  @Test
  void crossesExactlyWhereTwoStraightLinesCross() {
    TimeCurve fuse = curve(100, 1000, 10_000, 1e-5); // 1e11/I⁴
    TimeCurve cable = curve(100, 100, 10_000, 0.01); // 1e6/I²
    CurrentRanges below = fuse.notAbove(cable);
    assertThat(below.count()).isEqualTo(1);
    assertThat(below.fromA(0)).isCloseTo(Math.sqrt(1e5), within(1e-9));
    assertThat(below.toA(0)).isCloseTo(10_000, within(1e-8));
    assertThat(cable.notAbove(fuse).toA(0)).isCloseTo(Math.sqrt(1e5), within(1e-9));
  }

  @Test
  void takesTheShorterTimeAtAStep() {
    TimeCurve stepped = curve(100, 50, 200, 20, 200, 10, 400, 5);
    assertThat(stepped.at(200)).isCloseTo(10, within(1e-12));
    assertThat(stepped.atLeast(15).toA(0)).isCloseTo(200, within(1e-10));
    assertThat(stepped.atMost(15).fromA(0)).isCloseTo(200, within(1e-10));
  }

  static Stream<Generator> cases() {
    return Generator.cases(100);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void agreesWithAComparisonPointByPoint(Generator random) {
    TimeCurve first = some(random);
    TimeCurve second = some(random);
    CurrentRanges below = first.notAbove(second);
    for (int i = 0; i < 60; i++) {
      double atA = random.betweenDecades(100, 10_000);
      double difference = Math.log(first.at(atA) / second.at(atA));
      if (Math.abs(difference) > 1e-9) {
        assertThat(below.contains(atA)).isEqualTo(difference < 0);
      }
    }
  }

  private static TimeCurve some(Generator random) {
    double[] currents = new double[6];
    double[] times = new double[6];
    for (int i = 0; i < 6; i++) {
      currents[i] = random.betweenDecades(100, 10_000);
      times[i] = -random.betweenDecades(0.001, 1000);
    }
    currents[0] = 100;
    currents[5] = 10_000;
    Arrays.sort(currents);
    Arrays.sort(times);
    return TimeCurve.of(currents, Arrays.stream(times).map(t -> -t).toArray());
  }
}
