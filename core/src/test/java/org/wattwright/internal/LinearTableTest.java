package org.wattwright.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.Generator;
import org.wattwright.testing.Serialisation;
import org.wattwright.units.InvalidInputException;

class LinearTableTest {
  /** Rises, stays, rises. */
  private static final LinearTable CURVE =
      LinearTable.of("t", new double[] {0, 1, 3, 4}, new double[] {2, 4, 4, 10});

  static Stream<Generator> cases() {
    return Generator.cases(200);
  }

  private static LinearTable risingTable(Generator random) {
    int size = random.count(1, 12);
    double[] ys = new double[size];
    double y = random.between(-5, 5);
    for (int i = 0; i < size; i++) {
      y += random.chance(0.2) ? 0 : random.betweenDecades(1e-6, 10);
      ys[i] = y;
    }
    return LinearTable.of("t", random.rising(size, -10, 10), ys);
  }

  @Test
  void isStraightBetweenPointsAndHeldBeyond() {
    assertThat(CURVE.at(0.5)).isEqualTo(3);
    assertThat(CURVE.at(3.5)).isEqualTo(7);
    assertThat(CURVE.at(2)).isEqualTo(4);
    assertThat(CURVE.at(-100)).isEqualTo(2);
    assertThat(CURVE.at(100)).isEqualTo(10);
    for (int i = 0; i < CURVE.size(); i++) {
      assertThat(CURVE.at(CURVE.x(i))).isEqualTo(CURVE.y(i));
    }
    assertThat(CURVE.firstX()).isZero();
    assertThat(CURVE.lastX()).isEqualTo(4);
    assertThat(CURVE.at(Double.NaN)).isNaN();
  }

  @Test
  void slopeIsThatToTheRight() {
    assertThat(CURVE.slopeAt(0)).isEqualTo(2);
    assertThat(CURVE.slopeAt(0.9)).isEqualTo(2);
    assertThat(CURVE.slopeAt(1)).isZero();
    assertThat(CURVE.slopeAt(3)).isEqualTo(6);
    assertThat(CURVE.slopeAt(4)).isZero();
    assertThat(CURVE.slopeAt(-0.1)).isZero();
    assertThat(single(7).slopeAt(0)).isZero();
  }

  @Test
  void integralIsTheAreaBelow() {
    assertThat(CURVE.integral(0, 4)).isEqualTo(3 + 8 + 7);
    assertThat(CURVE.integral(4, 0)).isEqualTo(-18);
    assertThat(CURVE.integral(-2, 0)).isEqualTo(4);
    assertThat(CURVE.integral(4, 6)).isEqualTo(20);
    assertThat(CURVE.integral(0.5, 2)).isEqualTo(1.75 + 4);
    assertThat(single(7).integral(-1, 2)).isEqualTo(21);
  }

  @Test
  void inverseIsTheFirstPlaceThatReachesTheValue() {
    assertThat(CURVE.inverseAt(2)).isZero();
    assertThat(CURVE.inverseAt(3)).isEqualTo(0.5);
    assertThat(CURVE.inverseAt(4)).isEqualTo(1);
    assertThat(CURVE.inverseAt(7)).isEqualTo(3.5);
    assertThat(CURVE.inverseAt(1)).isZero();
    assertThat(CURVE.inverseAt(11)).isEqualTo(4);
    assertThat(single(7).inverseAt(6)).isZero();
    assertThat(single(7).inverseAt(8)).isZero();
  }

  @Test
  void tableNeedNotStartAtZero() {
    LinearTable late = LinearTable.of("t", new double[] {2, 4, 8}, new double[] {-3, 5, 6});
    assertThat(late.firstX()).isEqualTo(2);
    assertThat(late.inverseAt(-3)).isEqualTo(2);
    assertThat(late.inverseAt(-9)).isEqualTo(2);
    assertThat(late.inverseAt(1)).isEqualTo(3);
    assertThat(late.inverseAt(7)).isEqualTo(8);
    assertThat(late.slopeAt(2)).isEqualTo(4);
    assertThat(late.slopeAt(5)).isEqualTo(0.25);
    assertThat(late.integral(2, 8)).isEqualTo(2 + 22);
    assertThat(late.integral(0, 2)).isEqualTo(-6);
  }

  @Test
  void scaledMultipliesEveryValue() {
    assertThat(CURVE.scaled(2).at(0.5)).isEqualTo(6);
    assertThat(CURVE.scaled(2).integral(0, 4)).isEqualTo(36);
    assertThat(CURVE.at(0.5)).isEqualTo(3);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void keepsARisingTableRisingAndWithinItsValues(Generator random) {
    LinearTable table = risingTable(random);
    double before = Double.NEGATIVE_INFINITY;
    for (int i = 0; i <= 400; i++) {
      double y = table.at(-12 + 24 * i / 400.0);
      assertThat(y).isGreaterThanOrEqualTo(before - 1e-14 * Math.abs(before));
      assertThat(y).isBetween(table.y(0), table.y(table.size() - 1));
      before = y;
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void isContinuousAtItsPoints(Generator random) {
    LinearTable table = risingTable(random);
    for (int i = 0; i < table.size(); i++) {
      double x = table.x(i);
      assertThat(table.at(x - 1e-12)).isCloseTo(table.y(i), within(1e-9));
      assertThat(table.at(x + 1e-12)).isCloseTo(table.y(i), within(1e-9));
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void integralAgreesWithASumOfFineStripsAndAddsUp(Generator random) {
    LinearTable table = risingTable(random);
    double a = random.between(-12, 12);
    double b = random.between(-12, 12);
    int strips = 20_000;
    double sum = 0;
    for (int i = 0; i < strips; i++) {
      sum += table.at(a + (b - a) * (i + 0.5) / strips);
    }
    double width = (b - a) / strips;
    // A strip errs only where it holds a bend, by less than its width times the rise of the table.
    double rise = table.y(table.size() - 1) - table.y(0);
    double error = table.size() * rise * Math.abs(width) + 1e-9;
    assertThat(table.integral(a, b)).isCloseTo(sum * width, within(error));
    double c = random.between(-12, 12);
    assertThat(table.integral(a, c) + table.integral(c, b))
        .isCloseTo(table.integral(a, b), within(1e-9));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void inverseUndoesTheTable(Generator random) {
    LinearTable table = risingTable(random);
    double y = random.between(table.y(0), table.y(table.size() - 1));
    double x = table.inverseAt(y);
    assertThat(table.at(x)).isCloseTo(y, within(1e-11));
    assertThat(table.at(x - 1e-6)).isLessThanOrEqualTo(y + 1e-11);
  }

  @Test
  void arraysAreCopied() {
    double[] xs = {0, 1};
    double[] ys = {5, 6};
    LinearTable table = LinearTable.of("t", xs, ys);
    xs[1] = -1;
    ys[1] = 99;
    assertThat(table.at(1)).isEqualTo(6);
  }

  @Test
  void equalityIsByContent() {
    LinearTable same = LinearTable.of("u", new double[] {0, 1, 3, 4}, new double[] {2, 4, 4, 10});
    assertThat(same).isEqualTo(CURVE).hasSameHashCodeAs(CURVE);
    assertThat(CURVE).isNotEqualTo(CURVE.scaled(2)).isNotEqualTo("t");
    assertThat(CURVE)
        .isNotEqualTo(LinearTable.of("t", new double[] {0, 1, 3, 5}, new double[] {2, 4, 4, 10}));
    assertThat(CURVE.scaled(2).hashCode()).isNotEqualTo(CURVE.hashCode());
    LinearTable copy = Serialisation.copy(CURVE);
    assertThat(copy).isEqualTo(CURVE);
    assertThat(copy.integral(0, 4)).isEqualTo(18);
  }

  @Test
  void namesThePointThatIsWrong() {
    rejects(() -> of(), "t must be at least one point, but was none");
    rejects(
        () -> LinearTable.of("t", new double[] {0, 1}, new double[] {1}),
        "t must be as many y as x (2), but was 1");
    rejects(
        () -> LinearTable.of("t", new double[] {0, 0}, new double[] {1, 2}),
        "t[1] must be > 0.0 (strictly increasing), but was 0.0");
    rejects(
        () -> LinearTable.of("t", new double[] {0, Double.NaN}, new double[] {1, 2}),
        "t[1] must be finite, but was NaN");
    rejects(
        () -> LinearTable.of("t", new double[] {0, 1}, new double[] {1, Double.POSITIVE_INFINITY}),
        "t[1] must be finite, but was Infinity");
  }

  private static LinearTable of(double... xs) {
    return LinearTable.of("t", xs, xs);
  }

  private static LinearTable single(double y) {
    return LinearTable.of("t", new double[] {0}, new double[] {y});
  }

  private static void rejects(ThrowingCallable call, String message) {
    assertThatExceptionOfType(InvalidInputException.class).isThrownBy(call).withMessage(message);
  }
}
