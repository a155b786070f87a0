package org.wattwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.layout.AllocationBruteForce.Found;
import org.wattwright.testing.Generator;

/**
 * Strings of several types of module against every allocation one by one, laid module by module.
 */
class MixedStringOracleTest {
  private static int solvable;
  private static int severalStrings;

  static Stream<Generator> cases() {
    return Generator.cases(600);
  }

  static Stream<Generator> fewer() {
    return Generator.cases(150);
  }

  /** Enough of the cases have an answer that holds several types, and several strings. */
  @AfterAll
  static void enoughCasesHaveAnAnswer() {
    if (Long.getLong("wattwright.seed") == null) {
      assertThat(solvable).isGreaterThan(200);
      assertThat(severalStrings).isGreaterThan(40);
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void findsWhatSortingAllAllocationsFinds(Generator random) {
    BayAllocator allocator = new RandomBays(random).mixedAllocator();
    AllocationBruteForce force = new AllocationBruteForce(allocator);
    List<Found> expected = force.ranked();
    AllocationResult result = allocator.run();

    List<Allocation> found = new ArrayList<>();
    result.best().ifPresent(found::add);
    found.addAll(result.alternatives());
    int wanted = allocator.draft().alternatives + 1;
    assertThat(found).hasSize(Math.min(wanted, expected.size()));
    for (int i = 0; i < found.size(); i++) {
      BayAllocatorOracleTest.assertAlike(found.get(i), expected.get(i));
    }
    assertThat(result.coverage()).isEqualTo(new Coverage(force.size(), force.size(), ""));
    boolean mixed = !found.isEmpty() && found.get(0).groups().size() > 1;
    solvable += mixed ? 1 : 0;
    severalStrings += mixed && found.get(0).parallel() > 1 ? 1 : 0;
  }

  @ParameterizedTest
  @MethodSource("fewer")
  void figuresItemsAndPackAgree(Generator random) {
    BayAllocatorOracleTest.assertFigures(new RandomBays(random).mixedAllocator());
  }

  @ParameterizedTest
  @MethodSource("fewer")
  void everyStringHoldsWhatWasAsked(Generator random) {
    new RandomBays(random)
        .mixedAllocator()
        .run()
        .best()
        .ifPresent(
            best ->
                best.pack()
                    .strings()
                    .forEach(
                        string ->
                            best.groups()
                                .forEach(
                                    asked ->
                                        assertThat(
                                                string.groups().stream()
                                                    .filter(g -> g.module().equals(asked.module()))
                                                    .mapToInt(g -> g.count())
                                                    .sum())
                                            .isEqualTo(asked.count()))));
  }

  @ParameterizedTest
  @MethodSource("fewer")
  void orderOfInputsDoesNotMatter(Generator random) {
    BayAllocator allocator = new RandomBays(random).mixedAllocator();
    AllocationResult one = allocator.run();
    AllocationResult other = Restated.shuffled(allocator, random).run();
    assertThat(other.best()).isEqualTo(one.best());
    assertThat(other.alternatives()).isEqualTo(one.alternatives());
    assertThat(other.whyNone()).isEqualTo(one.whyNone());
    assertThat(other.best().map(best -> best.worksheet().toText()))
        .isEqualTo(one.best().map(best -> best.worksheet().toText()));
  }
}
