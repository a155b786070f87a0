package org.wattwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.kilograms;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.Generator;
import org.wattwright.vehicle.MassItem;
import org.wattwright.vehicle.Position;

/** What must hold whatever the numbers are. */
class BayAllocatorPropertyTest {
  static Stream<Generator> cases() {
    return Generator.cases(150);
  }

  private static List<Allocation> all(AllocationResult result) {
    List<Allocation> all = new ArrayList<>();
    result.best().ifPresent(all::add);
    all.addAll(result.alternatives());
    return all;
  }

  @ParameterizedTest
  @MethodSource("cases")
  void orderOfBaysPacksAndCasesDoesNotMatter(Generator random) {
    BayAllocator allocator = new RandomBays(random).allocator();
    AllocationResult one = allocator.run();
    AllocationResult other = Restated.shuffled(allocator, random).run();
    assertThat(all(other)).isEqualTo(all(one));
    assertThat(other.whyNone()).isEqualTo(one.whyNone());
    assertThat(other.coverage()).isEqualTo(one.coverage());
    assertThat(other.best().map(best -> best.worksheet().toText()))
        .isEqualTo(one.best().map(best -> best.worksheet().toText()));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void anotherRequirementNeverBringsTheTargetNearer(Generator random) {
    BayAllocator allocator = new RandomBays(random).allocator();
    BayAllocator stricter =
        allocator.leftRightDifferenceAtMost(kilograms(random.between(0, 40))).equalStrings();
    if (allocator.draft().leftRight != null) {
      return;
    }
    double before = nearest(allocator);
    assertThat(nearest(stricter)).isGreaterThanOrEqualTo(before);
  }

  /** Least deviation of all, without a band. */
  private static double nearest(BayAllocator allocator) {
    AllocationDraft.ShareTarget target = allocator.draft().target;
    BayAllocator unbanded =
        target == null
            ? allocator
            : allocator.frontShareTarget(target.share(), 0, target.loadCase());
    return unbanded
        .run()
        .best()
        .map(best -> best.frontShareDeviation().orElse(0.0))
        .orElse(Double.POSITIVE_INFINITY);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void mirroredBaysOfASymmetricVehicleGiveTheSameAnswer(Generator random) {
    BayAllocator allocator = new RandomBays(random).allocator();
    AllocationDraft draft = allocator.draft();
    List<Bay> mirrored = new ArrayList<>();
    for (Bay bay : draft.bays) {
      mirrored.add(mirrored(bay, draft));
    }
    BayAllocator here = symmetric(Restated.over(allocator, draft.bays), draft.bays);
    BayAllocator there = symmetric(Restated.over(allocator, mirrored), mirrored);
    List<String> one = all(here.run()).stream().map(Allocation::toString).toList();
    assertThat(all(there.run()).stream().map(Allocation::toString).toList()).isEqualTo(one);
  }

  private static BayAllocator symmetric(BayAllocator allocator, List<Bay> bays) {
    AllocationDraft draft = allocator.draft();
    org.wattwright.vehicle.WeighedVehicle even =
        org.wattwright.vehicle.WeighedVehicle.withWheelbase(
                org.wattwright.units.Measures.metres(2.5))
            .frontLeft(kilograms(200))
            .frontRight(kilograms(200))
            .rearLeft(kilograms(200))
            .rearRight(kilograms(200))
            .frontTrack(org.wattwright.units.Measures.metres(1.25))
            .rearTrack(org.wattwright.units.Measures.metres(1.2))
            .frontRollStiffness(
                org.wattwright.check.Given.dataSheet(
                    org.wattwright.units.Measures.newtonMetresPerDegree(220), "springs"))
            .rearRollStiffness(
                org.wattwright.check.Given.dataSheet(
                    org.wattwright.units.Measures.newtonMetresPerDegree(140), "springs"))
            .build();
    AllocationDraft changed = new AllocationDraft(org.wattwright.vehicle.MassLedger.of(even), bays);
    BayAllocator same =
        BayAllocator.over(changed.ledger, bays)
            .limits(draft.limits)
            .alternatives(draft.alternatives);
    for (PackOption option : draft.options) {
      same = same.pack(option.groups(), option.parallel());
    }
    return same.leftRightDifferenceAtMost(kilograms(70))
        .frontShareTarget(0.5, 0.004, org.wattwright.vehicle.LoadCase.KERB);
  }

  private static Bay mirrored(Bay bay, AllocationDraft draft) {
    Bay mirror = Bay.at(bay.name(), mirrored(bay.first())).next(mirrored(bay.second()));
    for (PackOption option : draft.options) {
      if (bay.roomFor(option.module(0)) > 0) {
        mirror = mirror.holds(option.module(0), bay.roomFor(option.module(0)));
      }
    }
    if (bay.enclosure().isPresent()) {
      MassItem box = bay.enclosure().get();
      mirror = mirror.enclosure(MassItem.of(box.name(), box.mass(), mirrored(box.position())));
    }
    if (bay.massLimit().isPresent()) {
      mirror = mirror.massAtMost(bay.massLimit().get());
    }
    for (var link : bay.links().entrySet()) {
      mirror = mirror.linkedTo(link.getKey(), link.getValue());
    }
    return bay.isKeptFree() ? mirror.keptFree() : mirror;
  }

  private static Position mirrored(Position position) {
    return position.rightOfCentre(position.leftOfCentre().orElseThrow());
  }

  @ParameterizedTest
  @MethodSource("cases")
  void itemsWeighWhatTheAllocationSays(Generator random) {
    new RandomBays(random)
        .allocator()
        .run()
        .best()
        .ifPresent(
            best -> {
              double itemsKg =
                  best.items().stream()
                      .mapToDouble(item -> org.wattwright.units.Kind.MASS.siValueOf(item.mass()))
                      .sum();
              assertThat(org.wattwright.units.Kind.MASS.siValueOf(best.mass()))
                  .isCloseTo(itemsKg, within(1e-8));
            });
  }
}
