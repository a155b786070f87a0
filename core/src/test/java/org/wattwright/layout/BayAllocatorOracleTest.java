package org.wattwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.check.Outcome;
import org.wattwright.layout.AllocationBruteForce.Found;
import org.wattwright.testing.Generator;
import org.wattwright.units.Kind;

/** The allocator against every allocation one by one, weighed through the mass ledger. */
class BayAllocatorOracleTest {
  static Stream<Generator> cases() {
    return Generator.cases(300);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void findsWhatSortingAllAllocationsFinds(Generator random) {
    BayAllocator allocator = new RandomBays(random).allocator();
    AllocationBruteForce force = new AllocationBruteForce(allocator);
    List<Found> expected = force.ranked();
    AllocationResult result = allocator.run();

    List<Allocation> found = new ArrayList<>();
    result.best().ifPresent(found::add);
    found.addAll(result.alternatives());
    int wanted = allocator.draft().alternatives + 1;
    assertThat(found).hasSize(Math.min(wanted, expected.size()));
    for (int i = 0; i < found.size(); i++) {
      assertAlike(found.get(i), expected.get(i));
    }
    assertThat(result.coverage()).isEqualTo(new Coverage(force.size(), force.size(), ""));
  }

  private static List<Integer> byBayAndType(Allocation allocation) {
    List<Integer> counts = new ArrayList<>();
    for (String bay : allocation.counts().keySet()) {
      for (SeriesGroup group : allocation.groups()) {
        counts.add(allocation.counts(group.module()).get(bay));
      }
    }
    return counts;
  }

  static void assertAlike(Allocation ours, Found expected) {
    assertThat(byBayAndType(ours)).isEqualTo(expected.counts());
    assertThat(ours.tables().option().toString()).isEqualTo(expected.pack());
    assertThat(ours.enclosureCount()).isEqualTo(expected.enclosures());
    assertThat(ours.frontShareDeviation().orElse(0.0))
        .isCloseTo(expected.deviation(), within(1e-11));
    assertThat(Kind.LENGTH.siValueOf(ours.linkLength().orElseThrow()))
        .isCloseTo(expected.linkM(), within(1e-8));
    assertThat(Kind.LENGTH.siValueOf(ours.centreOfGravityHeight().orElseThrow()))
        .isCloseTo(expected.heightM(), within(1e-9));
    assertThat(ours.outcome()).isIn(Outcome.PASS, Outcome.CAUTION);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void figuresAndWorksheetAgreeWithTheLedger(Generator random) {
    assertFigures(new RandomBays(random).allocator());
  }

  static void assertFigures(BayAllocator allocator) {
    allocator
        .run()
        .best()
        .ifPresent(
            best -> {
              var kerb = best.after(org.wattwright.vehicle.LoadCase.KERB);
              double frontKg =
                  best.worksheet().steps().stream()
                      .filter(step -> step.meaning().equals("front axle load, kerb"))
                      .mapToDouble(step -> Kind.MASS.siValueOf(step.result().quantity(Kind.MASS)))
                      .findFirst()
                      .orElseThrow();
              assertThat(frontKg)
                  .isCloseTo(Kind.MASS.siValueOf(kerb.axles().front()), within(1e-9));
              assertThat(best.pack().moduleCount()).isEqualTo(best.series() * best.parallel());
              assertThat(best.pack().strings()).hasSize(best.parallel());
            });
  }
}
