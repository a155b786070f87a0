package org.wattwright.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class GeneratorTest {
  @Test
  void sameSeedGivesSameNumbers() {
    assertThat(numbers(Generator.ofSeed(7))).isEqualTo(numbers(Generator.ofSeed(7)));
    assertThat(numbers(Generator.ofSeed(7))).isNotEqualTo(numbers(Generator.ofSeed(8)));
  }

  @Test
  void casesShowTheirSeeds() {
    assertThat(Generator.cases(3)).hasSize(3).extracting(Object::toString).doesNotHaveDuplicates();
    assertThat(Generator.ofSeed(1017)).hasToString("seed 1017");
  }

  @Test
  void numbersStayWithinTheirBounds() {
    Generator random = Generator.ofSeed(1);
    for (int i = 0; i < 1000; i++) {
      assertThat(random.between(-2, 3)).isBetween(-2.0, 3.0);
      assertThat(random.betweenDecades(1e-6, 1e6)).isBetween(1e-6, 1e6);
      assertThat(Math.abs(random.signed(1e-3, 10))).isBetween(1e-3, 10.0);
      assertThat(random.count(1, 4)).isBetween(1, 4);
      assertThat(random.anyFinite()).isFinite();
      assertThat(Double.toString(random.typed(0, 100, 2))).matches("\\d{1,3}\\.\\d{1,2}");
    }
  }

  @Test
  void risingNumbersRise() {
    double[] rising = Generator.ofSeed(3).rising(50, 0, 1);
    assertThat(rising).hasSize(50).isSorted().doesNotHaveDuplicates();
    assertThat(rising[0]).isPositive();
    assertThat(rising[49]).isLessThan(1);
  }

  private static List<Object> numbers(Generator random) {
    return Stream.<Object>of(
            random.between(0, 1),
            random.count(0, 99),
            random.signed(1, 9),
            random.oneOf(List.of("a", "b", "c")),
            random.chance(0.5))
        .toList();
  }
}
