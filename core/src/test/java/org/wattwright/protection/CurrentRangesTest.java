package org.wattwright.protection;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.Generator;

class CurrentRangesTest {
  private static CurrentRanges ranges(double... ends) {
    return CurrentRanges.ofEnds(ends, ends.length);
  }

  @Test
  void joinsRangesThatTouch() {
    assertThat(ranges(1, 2, 2, 5, 7, 8)).hasToString("[1.0, 5.0, 7.0, 8.0]");
    assertThat(CurrentRanges.of(2, 1).count()).isZero();
    assertThat(CurrentRanges.of(2, 2).contains(2)).isTrue();
  }

  @Test
  void saysWhatIsMissingFromARange() {
    CurrentRanges set = ranges(10, 20, 30, 40);
    assertThat(set.missingFrom(5, 50)).hasToString("[5.0, 10.0, 20.0, 30.0, 40.0, 50.0]");
    assertThat(set.missingFrom(12, 18).count()).isZero();
    assertThat(set.covers(30, 40)).isTrue();
    assertThat(set.covers(29, 40)).isFalse();
    assertThat(CurrentRanges.NONE.missingFrom(1, 2)).hasToString("[1.0, 2.0]");
  }

  @Test
  void findsTheStartOfTheTail() {
    CurrentRanges set = ranges(10, 20, 30, 40);
    assertThat(set.startOfTail(40)).isEqualTo(30);
    assertThat(set.startOfTail(15)).isEqualTo(10);
    assertThat(set.startOfTail(25)).isInfinite();
    assertThat(set.startOfTail(41)).isInfinite();
    assertThat(set.startOfTail(5)).isInfinite();
  }

  static Stream<Generator> cases() {
    return Generator.cases(200);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void holdsWhatItsPartsHold(Generator random) {
    CurrentRanges first = some(random);
    CurrentRanges second = some(random);
    for (int i = 0; i < 40; i++) {
      double atA = random.between(0, 100);
      boolean inFirst = first.contains(atA);
      boolean inSecond = second.contains(atA);
      assertThat(first.and(second).contains(atA)).isEqualTo(inFirst && inSecond);
      assertThat(first.or(second).contains(atA)).isEqualTo(inFirst || inSecond);
      assertThat(first.missingFrom(0, 100).contains(atA)).isEqualTo(!inFirst);
    }
  }

  private static CurrentRanges some(Generator random) {
    CurrentRanges set = CurrentRanges.NONE;
    for (int i = 0; i < 4; i++) {
      double fromA = random.between(0, 100);
      set = set.or(CurrentRanges.of(fromA, fromA + random.between(0, 20)));
    }
    return set;
  }
}
