package org.wattwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.check.Outcome;
import org.wattwright.testing.Generator;

/** The search against a plain double loop over the public API of packs and windows. */
class PackSearchOracleTest {
  private static final int CASES = 60;

  static Stream<Generator> cases() {
    return Generator.cases(CASES);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void findsTheSameSetAsADoubleLoop(Generator random) {
    RandomSearch asked = RandomSearch.of(random);
    PackSearch.Result found = asked.search().run();
    assertThat(BruteForce.keys(found.ranked())).isEqualTo(new BruteForce(asked).passing());
    assertThat(found.coverage().status()).isEqualTo(Coverage.Status.PROVEN);
    assertThat(found.feasibleCount()).isEqualTo(found.ranked().size());
  }

  @ParameterizedTest
  @MethodSource("cases")
  void noCandidateReturnedFailsOrLeavesACheckOpen(Generator random) {
    for (Candidate candidate : RandomSearch.of(random).search().run().ranked()) {
      assertThat(candidate.outcome()).as("%s", candidate).isLessThan(Outcome.NOT_CHECKED);
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void provisionalCandidatesFailNothingAndLackSomething(Generator random) {
    PackSearch search = RandomSearch.of(random).search();
    PackSearch.Result strict = search.run();
    PackSearch.Result found = search.allowProvisional().run();
    List<Candidate> ranked = found.ranked();
    assertThat(found.feasibleCount()).isEqualTo(strict.feasibleCount());
    assertThat(ranked).hasSize((int) (found.feasibleCount() + found.provisionalCount()));
    for (Candidate candidate : ranked.subList((int) found.feasibleCount(), ranked.size())) {
      assertThat(candidate.outcome()).as("%s", candidate).isEqualTo(Outcome.NOT_CHECKED);
    }
  }

  @Test
  void theCasesAreNeitherAllEmptyNorAllFull() {
    TreeSet<String> kinds = new TreeSet<>();
    cases()
        .map(RandomSearch::of)
        .map(asked -> asked.search().run())
        .forEach(
            found ->
                kinds.add(
                    found.feasibleCount() == 0
                        ? "none"
                        : found.feasibleCount() == found.candidateCount() ? "all" : "some"));
    assertThat(kinds).contains("none", "some");
  }
}
