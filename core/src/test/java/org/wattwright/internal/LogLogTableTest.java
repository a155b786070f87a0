package org.wattwright.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.Generator;
import org.wattwright.testing.ReferenceRows;
import org.wattwright.testing.Serialisation;
import org.wattwright.testing.Validation;
import org.wattwright.units.InvalidInputException;

class LogLogTableTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("internal");

  private static final ReferenceRows ROWS = ReferenceRows.read("/internal/log-log.csv");

  /** The invented curve of the reference rows. */
  private static final LogLogTable FUSE =
      LogLogTable.of(
          "curve",
          new double[] {150, 200, 400, 800, 2000},
          new double[] {1000, 100, 2, 0.1, 0.008});

  static Stream<Generator> cases() {
    return Generator.cases(200);
  }

  @Test
  void agreesWithTheWorkedExample() {
    VALIDATION.computed(ROWS.row("FUS-079"), FUSE.at(300));
    VALIDATION.computed(ROWS.row("FUS-080"), FUSE.inverseAt(10));
  }

  @Test
  void goesExactlyThroughItsPoints() {
    assertThat(FUSE.size()).isEqualTo(5);
    for (int i = 0; i < FUSE.size(); i++) {
      assertThat(FUSE.at(FUSE.x(i))).isEqualTo(FUSE.y(i));
      assertThat(FUSE.inverseAt(FUSE.y(i))).isEqualTo(FUSE.x(i));
    }
  }

  @Test
  void powerLawIsStraight() {
    LogLogTable cube = LogLogTable.of("t", new double[] {1, 100}, new double[] {2, 2e6});
    assertThat(cube.at(7)).isCloseTo(2 * 343, within(1e-10));
    assertThat(cube.inverseAt(2 * 343)).isCloseTo(7, within(1e-12));
  }

  @Test
  void neverExtrapolates() {
    assertThat(FUSE.covers(150)).isTrue();
    assertThat(FUSE.covers(2000)).isTrue();
    assertThat(FUSE.covers(149.9)).isFalse();
    assertThat(FUSE.covers(2000.1)).isFalse();
    assertThat(FUSE.covers(Double.NaN)).isFalse();
    assertThat(FUSE.coversInverse(0.008)).isTrue();
    assertThat(FUSE.coversInverse(1000)).isTrue();
    assertThat(FUSE.coversInverse(0.007)).isFalse();
    assertThat(FUSE.coversInverse(1001)).isFalse();
    rejects(
        () -> FUSE.at(5000),
        "LogLogTable.x must be within the curve, from 150.0 to 2000.0, but was 5000.0");
    rejects(
        () -> FUSE.at(Double.NaN),
        "LogLogTable.x must be within the curve, from 150.0 to 2000.0, but was NaN");
    rejects(
        () -> FUSE.inverseAt(0.001),
        "LogLogTable.y must be within the curve, from 0.008 to 1000.0, but was 0.001");
  }

  @ParameterizedTest
  @MethodSource("cases")
  void inverseUndoesTheCurveAndTheCurveStaysMonotone(Generator random) {
    boolean rising = random.chance(0.5);
    int size = random.count(2, 9);
    double[] xs = random.rising(size, 1, 5000);
    double[] ys = new double[size];
    double y = random.betweenDecades(1e-3, 1e3);
    for (int i = 0; i < size; i++) {
      y *= rising ? random.between(1.1, 20) : random.between(0.05, 0.9);
      ys[i] = y;
    }
    LogLogTable table = LogLogTable.of("t", xs, ys);
    double before = ys[0];
    for (int i = 0; i <= 100; i++) {
      double x = xs[0] + (xs[size - 1] - xs[0]) * i / 100;
      double at = table.at(Math.min(x, xs[size - 1]));
      assertThat(rising ? at - before : before - at).isGreaterThanOrEqualTo(-1e-12 * before);
      assertThat(table.inverseAt(Math.min(Math.max(at, Math.min(ys[0], y)), Math.max(ys[0], y))))
          .isCloseTo(x, within(1e-8 * x));
      before = at;
    }
  }

  @Test
  void equalityIsByContent() {
    LogLogTable same =
        LogLogTable.of(
            "x", new double[] {150, 200, 400, 800, 2000}, new double[] {1000, 100, 2, 0.1, 0.008});
    assertThat(same).isEqualTo(FUSE).hasSameHashCodeAs(FUSE);
    LogLogTable other = LogLogTable.of("x", new double[] {1, 2}, new double[] {1, 2});
    assertThat(FUSE).isNotEqualTo(other).isNotEqualTo("x");
    assertThat(other)
        .isNotEqualTo(LogLogTable.of("x", new double[] {1, 2}, new double[] {1, 3}))
        .isNotEqualTo(LogLogTable.of("x", new double[] {1, 3}, new double[] {1, 2}));
    assertThat(Serialisation.copy(FUSE)).isEqualTo(FUSE);
    assertThat(Serialisation.copy(FUSE).at(300)).isEqualTo(FUSE.at(300));
  }

  @Test
  void namesThePointThatIsWrong() {
    rejects(
        () -> LogLogTable.of("c", new double[] {1}, new double[] {1}),
        "c must be at least two points, but was one");
    rejects(
        () -> LogLogTable.of("c", new double[] {0, 1}, new double[] {2, 1}),
        "c.x[0] must be > 0 and finite, but was 0.0");
    rejects(
        () -> LogLogTable.of("c", new double[] {2, 1}, new double[] {2, 1}),
        "c.x[1] must be > 2.0 (strictly increasing), but was 1.0");
    rejects(
        () -> LogLogTable.of("c", new double[] {1, 2, 3}, new double[] {5, 4, 4}),
        "c.y[2] must be < 4.0 (strictly monotone), but was 4.0");
    rejects(
        () -> LogLogTable.of("c", new double[] {1, 2, 3}, new double[] {5, 6, 4}),
        "c.y[2] must be > 6.0 (strictly monotone), but was 4.0");
    rejects(
        () -> LogLogTable.of("c", new double[] {1, 2}, new double[] {5, 0}),
        "c.y[1] must be > 0 and finite, but was 0.0");
    rejects(
        () -> LogLogTable.of("c", new double[] {1, 2}, new double[] {5}),
        "c must be as many y as x (2), but was 1");
  }

  private static void rejects(ThrowingCallable call, String message) {
    assertThatExceptionOfType(InvalidInputException.class).isThrownBy(call).withMessage(message);
  }
}
