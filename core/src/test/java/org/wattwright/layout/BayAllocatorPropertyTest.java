package org.wattwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.kilograms;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.Generator;
import org.wattwright.vehicle.AxleLimits;
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
    List<Bay> bays = new ArrayList<>(allocator.draft().bays);
    Collections.reverse(bays);
    BayAllocator reversed = copy(allocator, bays);
    assertThat(all(reversed.run())).isEqualTo(all(allocator.run()));
    assertThat(reversed.run().whyNone()).isEqualTo(allocator.run().whyNone());
  }

  /** The same requirements on other bays, packs stated in reverse. */
  private static BayAllocator copy(BayAllocator allocator, List<Bay> bays) {
    AllocationDraft draft = allocator.draft();
    BayAllocator copy = BayAllocator.over(draft.ledger, bays).alternatives(draft.alternatives);
    List<PackOption> options = new ArrayList<>(draft.options);
    Collections.reverse(options);
    for (PackOption option : options) {
      copy = copy.pack(option.module(), option.series(), option.parallel());
    }
    for (int i = draft.loadCases.size() - 1; i >= 0; i--) {
      copy = copy.loadCase(draft.loadCases.get(i));
    }
    copy = draft.equalStrings ? copy.equalStrings() : copy;
    copy = draft.contiguous ? copy.contiguousStrings() : copy;
    copy = draft.limits == null ? copy : copy.limits(draft.limits);
    copy = draft.leftRight == null ? copy : copy.leftRightDifferenceAtMost(draft.leftRight);
    copy =
        Double.isNaN(draft.lowestFrontShare)
            ? copy
            : copy.frontShareBetween(draft.lowestFrontShare, draft.highestFrontShare);
    return draft.target == null
        ? copy
        : copy.frontShareTarget(draft.target.share(), draft.target.band(), draft.target.loadCase());
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
    BayAllocator here = symmetric(copy(allocator, draft.bays), draft.bays);
    BayAllocator there = symmetric(copy(allocator, mirrored), mirrored);
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
      same = same.pack(option.module(), option.series(), option.parallel());
    }
    return same.leftRightDifferenceAtMost(kilograms(70))
        .frontShareTarget(0.5, 0.004, org.wattwright.vehicle.LoadCase.KERB);
  }

  private static Bay mirrored(Bay bay, AllocationDraft draft) {
    Bay mirror = Bay.at(bay.name(), mirrored(bay.first())).next(mirrored(bay.second()));
    for (PackOption option : draft.options) {
      if (bay.roomFor(option.module()) > 0) {
        mirror = mirror.holds(option.module(), bay.roomFor(option.module()));
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
  void theRelaxedLimitAdmitsAnAllocationAndNoLessDoes(Generator random) {
    BayAllocator allocator = new RandomBays(random).allocator();
    AllocationDraft draft = allocator.draft();
    double plateKg = random.between(380, 480);
    AllocationResult result = allocator.limits(withFrontPlate(draft.limits, plateKg)).run();
    for (BayRelaxation relaxation : result.relaxations()) {
      if (relaxation.code().equals("layout.axle-front")) {
        double neededKg =
            org.wattwright.units.Kind.MASS.siValueOf(
                relaxation.needed().orElseThrow().quantity(org.wattwright.units.Kind.MASS));
        AllocationResult enough =
            allocator.limits(withFrontPlate(draft.limits, neededKg + 1e-8)).run();
        AllocationResult tooLittle =
            allocator.limits(withFrontPlate(draft.limits, neededKg - 1e-6)).run();
        assertThat(enough.best()).isPresent();
        assertThat(tooLittle.best()).isEmpty();
        assertThat(relaxation.limit().orElseThrow().toString()).isNotEmpty();
        assertThat(neededKg).isGreaterThan(plateKg);
      }
    }
    assertThat(result.best().isPresent()).isEqualTo(result.whyNone().startsWith("an alloc"));
  }

  private static AxleLimits withFrontPlate(AxleLimits limits, double plateKg) {
    return AxleLimits.builder()
        .frontAxle(kilograms(plateKg))
        .rearAxle(limits.plate(org.wattwright.vehicle.Axle.REAR).orElseThrow())
        .grossMass(limits.grossMass().orElseThrow())
        .frontTyre(RandomBays.TYRE)
        .rearTyre(RandomBays.TYRE)
        .build();
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
