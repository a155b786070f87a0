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

class BilinearTableTest {
  /** Rows 0, 1; columns 10, 20, 40. */
  private static final BilinearTable GRID =
      BilinearTable.of(
          "g",
          new double[] {0, 1},
          new double[] {10, 20, 40},
          new double[][] {{1, 2, 4}, {3, 6, 12}});

  static Stream<Generator> cases() {
    return Generator.cases(100);
  }

  private static BilinearTable random(Generator random) {
    double[] rows = random.rising(random.count(1, 6), 0, 1);
    double[] columns = random.rising(random.count(1, 6), 250, 330);
    double[][] values = new double[rows.length][columns.length];
    for (double[] row : values) {
      for (int j = 0; j < row.length; j++) {
        row[j] = random.between(-1, 3);
      }
    }
    return BilinearTable.of("g", rows, columns, values);
  }

  @Test
  void holdsTheGridPointsAndIsLinearBetween() {
    assertThat(GRID.at(0, 10)).isEqualTo(1);
    assertThat(GRID.at(1, 40)).isEqualTo(12);
    assertThat(GRID.at(1, 20)).isEqualTo(6);
    assertThat(GRID.at(0.5, 10)).isEqualTo(2);
    assertThat(GRID.at(0, 30)).isEqualTo(3);
    assertThat(GRID.at(0.5, 15)).isEqualTo((1 + 2 + 3 + 6) / 4.0);
  }

  @Test
  void isHeldBeyondTheEdges() {
    assertThat(GRID.at(-5, 5)).isEqualTo(1);
    assertThat(GRID.at(9, 99)).isEqualTo(12);
    assertThat(GRID.at(0.5, 99)).isEqualTo(8);
    assertThat(GRID.at(9, 15)).isEqualTo(4.5);
  }

  @Test
  void singleRowColumnOrValueIsConstantAlongTheOtherAxis() {
    BilinearTable value = BilinearTable.constant(7);
    assertThat(value.at(-1, 1e9)).isEqualTo(7);
    assertThat(value.size()).isEqualTo(1);
    BilinearTable row =
        BilinearTable.of("g", new double[] {0}, new double[] {0, 1}, new double[][] {{1, 3}});
    assertThat(row.at(99, 0.5)).isEqualTo(2);
    BilinearTable column =
        BilinearTable.of("g", new double[] {0, 1}, new double[] {0}, new double[][] {{1}, {3}});
    assertThat(column.at(0.5, 99)).isEqualTo(2);
  }

  @Test
  void columnCutIsTheTableAlongItsRows() {
    LinearTable cut = GRID.atColumn(15);
    assertThat(cut.at(0)).isEqualTo(1.5);
    assertThat(cut.at(0.5)).isEqualTo(GRID.at(0.5, 15));
    assertThat(cut.at(1)).isEqualTo(4.5);
  }

  @Test
  void knowsItsSizeAxesAndSmallestValue() {
    assertThat(GRID.size()).isEqualTo(6);
    assertThat(GRID.rowAxis()).containsExactly(0, 1);
    assertThat(GRID.columnAxis()).containsExactly(10, 20, 40);
    assertThat(GRID.smallest()).isEqualTo(1);
    assertThat(GRID.scaled(-1).smallest()).isEqualTo(-12);
    assertThat(GRID.scaled(3).at(0.5, 15)).isEqualTo(9);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void staysWithinTheValuesOfTheGrid(Generator random) {
    BilinearTable table = random(random);
    double largest = -table.scaled(-1).smallest();
    for (int i = 0; i < 50; i++) {
      assertThat(table.at(random.between(-0.5, 1.5), random.between(240, 340)))
          .isBetween(table.smallest() - 1e-12, largest + 1e-12);
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void isContinuous(Generator random) {
    BilinearTable table = random(random);
    for (double row : table.rowAxis()) {
      for (double column : table.columnAxis()) {
        double here = table.at(row, column);
        assertThat(table.at(row - 1e-12, column - 1e-12)).isCloseTo(here, within(1e-7));
        assertThat(table.at(row + 1e-12, column + 1e-12)).isCloseTo(here, within(1e-7));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void agreesWithTheColumnCutEverywhere(Generator random) {
    BilinearTable table = random(random);
    double column = random.between(240, 340);
    double row = random.between(-0.5, 1.5);
    assertThat(table.atColumn(column).at(row)).isCloseTo(table.at(row, column), within(1e-12));
  }

  @Test
  void arraysAreCopiedInAndOut() {
    double[] rows = {0, 1};
    double[] columns = {0, 1};
    double[][] values = {{1, 2}, {3, 4}};
    BilinearTable table = BilinearTable.of("g", rows, columns, values);
    rows[0] = -9;
    columns[0] = -9;
    values[0][0] = 99;
    table.rowAxis()[0] = 99;
    table.columnAxis()[0] = 99;
    assertThat(table.at(0, 0)).isEqualTo(1);
    assertThat(table.rowAxis()).containsExactly(0, 1);
  }

  @Test
  void equalityIsByContent() {
    assertThat(GRID.scaled(1)).isEqualTo(GRID).hasSameHashCodeAs(GRID);
    assertThat(GRID).isNotEqualTo(GRID.scaled(2)).isNotEqualTo("g");
    assertThat(Serialisation.copy(GRID)).isEqualTo(GRID);
    double[][] values = {{1, 2, 4}, {3, 6, 12}};
    assertThat(GRID)
        .isNotEqualTo(BilinearTable.of("g", new double[] {0, 2}, new double[] {10, 20, 40}, values))
        .isNotEqualTo(
            BilinearTable.of("g", new double[] {0, 1}, new double[] {10, 20, 41}, values));
  }

  @Test
  void namesRowAndColumnThatIsWrong() {
    double[] two = {0, 1};
    rejects(
        () -> BilinearTable.of("g", new double[] {1, 1}, two, new double[2][2]),
        "g.rows[1] must be > 1.0 (strictly increasing), but was 1.0");
    rejects(
        () -> BilinearTable.of("g", two, new double[] {}, new double[2][2]),
        "g.columns must be at least one point, but was none");
    rejects(
        () -> BilinearTable.of("g", two, two, new double[1][2]),
        "g must be 2 rows, but was 1 rows");
    rejects(
        () -> BilinearTable.of("g", two, two, new double[][] {{1, 2}, {3}}),
        "g[1] must be 2 columns, but was 1 columns");
    rejects(
        () -> BilinearTable.of("g", two, two, new double[][] {{1, 2}, {3, Double.NaN}}),
        "g[1][1] must be finite, but was NaN");
  }

  private static void rejects(ThrowingCallable call, String message) {
    assertThatExceptionOfType(InvalidInputException.class).isThrownBy(call).withMessage(message);
  }
}
