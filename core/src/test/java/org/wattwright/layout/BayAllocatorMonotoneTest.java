package org.wattwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wattwright.units.Measures.kilograms;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.Generator;
import org.wattwright.units.Kind;
import org.wattwright.vehicle.Axle;
import org.wattwright.vehicle.AxleLimits;
import org.wattwright.vehicle.LoadCase;

/** More freedom never worsens the optimum. */
class BayAllocatorMonotoneTest {
  static Stream<Generator> cases() {
    return Generator.cases(150);
  }

  /** What decides first: deviation from the target, else bays in use; infinite if nothing fits. */
  private static double cost(BayAllocator allocator) {
    AllocationDraft.ShareTarget target = allocator.draft().target;
    BayAllocator unbanded =
        target == null
            ? allocator
            : allocator.frontShareTarget(target.share(), 0, target.loadCase());
    return unbanded
        .run()
        .best()
        .map(best -> best.frontShareDeviation().orElse((double) best.enclosureCount()))
        .orElse(Double.POSITIVE_INFINITY);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void aWiderLimitNeverWorsensTheOptimum(Generator random) {
    BayAllocator allocator = new RandomBays(random).allocator();
    double before = cost(allocator);
    AllocationDraft draft = allocator.draft();
    double moreKg = random.between(0, 60);
    assertThat(cost(allocator.limits(wider(draft.limits, moreKg)))).isLessThanOrEqualTo(before);
    if (draft.leftRight != null) {
      double differenceKg = Kind.MASS.siValueOf(draft.leftRight) + moreKg;
      assertThat(cost(allocator.leftRightDifferenceAtMost(kilograms(differenceKg))))
          .isLessThanOrEqualTo(before);
    }
    if (!Double.isNaN(draft.lowestFrontShare)) {
      double more = random.between(0, 0.1);
      assertThat(
              cost(
                  allocator.frontShareBetween(
                      draft.lowestFrontShare - more, draft.highestFrontShare + more)))
          .isLessThanOrEqualTo(before);
    }
  }

  private static AxleLimits wider(AxleLimits limits, double moreKg) {
    return AxleLimits.builder()
        .frontAxle(more(Kind.MASS.siValueOf(limits.plate(Axle.FRONT).orElseThrow()), moreKg))
        .rearAxle(more(Kind.MASS.siValueOf(limits.plate(Axle.REAR).orElseThrow()), moreKg))
        .grossMass(more(Kind.MASS.siValueOf(limits.grossMass().orElseThrow()), moreKg))
        .frontTyre(RandomBays.TYRE)
        .rearTyre(RandomBays.TYRE)
        .build();
  }

  private static javax.measure.Quantity<javax.measure.quantity.Mass> more(double kg, double more) {
    return kilograms(kg + more);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void oneRequirementLessNeverWorsensTheOptimum(Generator random) {
    BayAllocator allocator = new RandomBays(random).allocator();
    double before = cost(allocator);
    assertThat(cost(Restated.changed(allocator, d -> d.contiguous = false)))
        .isLessThanOrEqualTo(before);
    assertThat(cost(Restated.changed(allocator, d -> d.equalStrings = false)))
        .isLessThanOrEqualTo(before);
    assertThat(cost(Restated.changed(allocator, d -> d.loadCases = List.of(LoadCase.KERB))))
        .isLessThanOrEqualTo(before);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void moreRoomNeverWorsensTheOptimum(Generator random) {
    BayAllocator allocator = new RandomBays(random).allocator();
    double before = cost(allocator);
    AllocationDraft draft = allocator.draft();
    List<Bay> roomier = new ArrayList<>();
    for (Bay bay : draft.bays) {
      Bay more = bay;
      for (PackOption option : draft.options) {
        int room = bay.roomFor(option.module(0));
        more = room > 0 ? more.holds(option.module(0), room + random.count(0, 2)) : more;
      }
      roomier.add(
          bay.massLimit().isPresent()
              ? more.massAtMost(more(Kind.MASS.siValueOf(bay.massLimit().get()), 15))
              : more);
    }
    assertThat(cost(Restated.over(allocator, roomier))).isLessThanOrEqualTo(before);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void oneMoreBayNeverWorsensTheOptimum(Generator random) {
    BayAllocator allocator = new RandomBays(random).allocator();
    AllocationDraft draft = allocator.draft();
    Bay another =
        Bay.at("another", RandomBays.at(random.typed(-0.4, 3, 3), random.typed(-0.4, 0.4, 3), 0.5))
            .linkedTo("bay 1", org.wattwright.units.Measures.metres(random.typed(0.5, 3, 1)));
    for (PackOption option : draft.options) {
      another = another.holds(option.module(0), random.count(1, 5));
    }
    List<Bay> more = new ArrayList<>(draft.bays);
    more.add(another);
    assertThat(cost(Restated.over(allocator, more))).isLessThanOrEqualTo(cost(allocator));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void oneMorePackNeverWorsensTheOptimum(Generator random) {
    BayAllocator allocator = new RandomBays(random).allocator();
    PackOption first = allocator.draft().options.get(0);
    BayAllocator more =
        allocator.pack(first.module(0), first.series() + random.count(1, 2), first.parallel());
    assertThat(cost(more)).isLessThanOrEqualTo(cost(allocator));
  }

  /** A bay kept free is no bay, unless cables pass through it. */
  @ParameterizedTest
  @MethodSource("cases")
  void aBayKeptFreeTakesNothing(Generator random) {
    BayAllocator allocator = new RandomBays(random).allocator();
    List<Bay> bays = new ArrayList<>(allocator.draft().bays);
    int free = random.count(0, bays.size() - 1);
    bays.set(free, bays.get(free).keptFree());
    String name = bays.get(free).name();
    AllocationResult found = Restated.over(allocator, bays).run();
    found.best().ifPresent(best -> assertThat(best.counts()).containsEntry(name, 0));
    assertThat(cost(Restated.over(allocator, bays))).isGreaterThanOrEqualTo(cost(allocator));
  }
}
