package org.wattwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.OptionalLong;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.Generator;

/** The allocator against a constraint solver and a mixed-integer solver. */
class GeneralSolverOracleTest {
  private static int solvable;
  private static int unsolvable;
  private static int banded;

  static Stream<Generator> cases() {
    return Generator.cases(200);
  }

  /** All instances were put to both solvers, and enough of them have an answer. */
  @AfterAll
  static void countsAreSaid() {
    String counts =
        String.format(
            Locale.ROOT,
            "%d instances, each put to a constraint and a mixed-integer solver: %d with an"
                + " allocation, %d without; %d also compared by fewest bays within the band",
            solvable + unsolvable,
            solvable,
            unsolvable,
            banded);
    System.out.println(counts);
    if (Long.getLong("wattwright.seed") == null) {
      assertThat(solvable + unsolvable).isEqualTo(200);
      assertThat(solvable).isGreaterThan(100);
      assertThat(banded).isEqualTo(solvable);
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void leastDeviationIsThatOfBothSolvers(Generator random) {
    GridInstance grid = new GridInstance(random);
    double best = Double.POSITIVE_INFINITY;
    for (int modules : grid.packs) {
      OptionalLong choco = GeneralSolvers.leastByChoco(grid, modules);
      assertThat(GeneralSolvers.leastByOjalgo(grid, modules)).isEqualTo(choco);
      if (choco.isPresent()) {
        best = Math.min(best, grid.share(choco.getAsLong(), modules));
      }
    }
    double ours =
        grid.allocator(0)
            .run()
            .best()
            .map(found -> found.frontShareDeviation().orElseThrow())
            .orElse(Double.POSITIVE_INFINITY);
    if (best < Double.POSITIVE_INFINITY) {
      assertThat(ours).isCloseTo(best, within(1e-12));
      solvable++;
    } else {
      assertThat(ours).isInfinite();
      unsolvable++;
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void fewestBaysWithinTheBandAreThoseOfBothSolvers(Generator random) {
    GridInstance grid = new GridInstance(random);
    grid.allocator(0)
        .run()
        .best()
        .ifPresent(
            nearest -> {
              double allowed = nearest.frontShareDeviation().orElseThrow() + grid.band;
              long fewest = Long.MAX_VALUE;
              for (int modules : grid.packs) {
                long excess = grid.doubleExcess(allowed, modules);
                OptionalLong choco = GeneralSolvers.fewestByChoco(grid, modules, excess);
                assertThat(GeneralSolvers.fewestByOjalgo(grid, modules, excess)).isEqualTo(choco);
                fewest = Math.min(fewest, choco.orElse(Long.MAX_VALUE));
              }
              assertThat(
                      (long) grid.allocator(grid.band).run().best().orElseThrow().enclosureCount())
                  .isEqualTo(fewest);
              banded++;
            });
  }
}
