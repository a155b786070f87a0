package org.wattwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wattwright.units.Measures.kilograms;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.Generator;
import org.wattwright.units.Kind;
import org.wattwright.vehicle.Axle;
import org.wattwright.vehicle.AxleLimits;

/** The change that is said to help does help, and a smaller one does not. */
class BayRelaxationTest {
  private static final double LESS_KG = 1e-6;
  private static final double LESS_SHARE = 1e-8;

  static Stream<Generator> cases() {
    return Generator.cases(250);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void exactlyTheRelaxationAdmitsAnAllocationAndLessDoesNot(Generator random) {
    BayAllocator allocator = tight(random);
    for (BayRelaxation relaxation : allocator.run().relaxations()) {
      apply(allocator, relaxation, 0)
          .ifPresent(
              enough -> {
                AllocationResult found = enough.run();
                assertThat(found.best()).as(relaxation.toString()).isPresent();
                assertThat(found.best().orElseThrow().outcome().name()).isIn("PASS", "CAUTION");
              });
      if (!relaxation.code().equals("layout.links")) {
        apply(allocator, relaxation, 1)
            .ifPresent(less -> assertThat(less.run().best()).as(relaxation.toString()).isEmpty());
      }
    }
  }

  /** Every kind of limit must have been relaxed somewhere, else the property says little. */
  @Test
  void everyKindOfLimitOccurs() {
    Map<String, Integer> seen = new TreeMap<>();
    cases()
        .flatMap(random -> tight(random).run().relaxations().stream())
        .forEach(relaxation -> seen.merge(relaxation.code(), 1, Integer::sum));
    assertThat(seen.keySet())
        .contains(
            "layout.axle-front",
            "layout.axle-rear",
            "layout.bay-mass",
            "layout.front-share-least",
            "layout.front-share-most",
            "layout.gross",
            "layout.left-heavier",
            "layout.right-heavier",
            "layout.links");
  }

  /** A random problem with one or two limits that bite. */
  private static BayAllocator tight(Generator random) {
    BayAllocator allocator = new RandomBays(random).allocator();
    for (int i = random.count(1, 2); i > 0; i--) {
      allocator = tightened(allocator, random);
    }
    return allocator;
  }

  private static BayAllocator tightened(BayAllocator allocator, Generator random) {
    AxleLimits limits = allocator.draft().limits;
    return switch (random.count(0, 5)) {
      case 0 -> allocator.limits(withPlate(limits, Axle.FRONT, random.typed(330, 480, 1)));
      case 1 -> allocator.limits(withPlate(limits, Axle.REAR, random.typed(560, 640, 1)));
      case 2 -> allocator.limits(withGross(limits, random.typed(1150, 1240, 1)));
      case 3 -> allocator.leftRightDifferenceAtMost(kilograms(random.typed(0, 15, 1)));
      case 4 -> {
        double least = random.typed(0.3, 0.6, 3);
        yield allocator.frontShareBetween(least, least + 0.002);
      }
      default -> {
        List<Bay> bays =
            allocator.draft().bays.stream()
                .map(bay -> bay.massAtMost(kilograms(random.typed(20, 60, 1))))
                .toList();
        yield Restated.over(allocator, bays);
      }
    };
  }

  /**
   * The allocator with the limit as needed, or that much short of it; empty where a part has it.
   */
  private static Optional<BayAllocator> apply(
      BayAllocator allocator, BayRelaxation relaxation, int tooLittle) {
    AllocationDraft draft = allocator.draft();
    return switch (relaxation.code()) {
      case "layout.axle-front" ->
          Optional.of(
              allocator.limits(
                  withPlate(draft.limits, Axle.FRONT, kg(relaxation) - tooLittle * LESS_KG)));
      case "layout.axle-rear" ->
          Optional.of(
              allocator.limits(
                  withPlate(draft.limits, Axle.REAR, kg(relaxation) - tooLittle * LESS_KG)));
      case "layout.gross" ->
          Optional.of(
              allocator.limits(withGross(draft.limits, kg(relaxation) - tooLittle * LESS_KG)));
      case "layout.left-heavier", "layout.right-heavier" ->
          Optional.of(
              allocator.leftRightDifferenceAtMost(kilograms(kg(relaxation) - tooLittle * LESS_KG)));
      case "layout.front-share-least" ->
          Optional.of(
              allocator.frontShareBetween(
                  share(relaxation) + tooLittle * LESS_SHARE, draft.highestFrontShare));
      case "layout.front-share-most" ->
          Optional.of(
              allocator.frontShareBetween(
                  draft.lowestFrontShare, share(relaxation) - tooLittle * LESS_SHARE));
      case "layout.bay-mass" ->
          Optional.of(withBayLimit(allocator, relaxation, kg(relaxation) - tooLittle * LESS_KG));
      case "layout.links" -> Optional.of(Restated.changed(allocator, d -> d.contiguous = false));
      default -> Optional.empty();
    };
  }

  private static double kg(BayRelaxation relaxation) {
    return Kind.MASS.siValueOf(relaxation.needed().orElseThrow().quantity(Kind.MASS));
  }

  private static double share(BayRelaxation relaxation) {
    return relaxation.needed().orElseThrow().number();
  }

  private static BayAllocator withBayLimit(
      BayAllocator allocator, BayRelaxation relaxation, double limitKg) {
    List<Bay> bays =
        allocator.draft().bays.stream()
            .map(
                bay ->
                    relaxation.requirement().startsWith(bay.name() + ":")
                        ? bay.massAtMost(kilograms(limitKg))
                        : bay)
            .toList();
    return Restated.over(allocator, bays);
  }

  private static AxleLimits withPlate(AxleLimits limits, Axle axle, double plateKg) {
    return limits(
        axle == Axle.FRONT ? plateKg : kg(limits, Axle.FRONT),
        axle == Axle.REAR ? plateKg : kg(limits, Axle.REAR),
        Kind.MASS.siValueOf(limits.grossMass().orElseThrow()));
  }

  private static double kg(AxleLimits limits, Axle axle) {
    return Kind.MASS.siValueOf(limits.plate(axle).orElseThrow());
  }

  private static AxleLimits withGross(AxleLimits limits, double grossKg) {
    return limits(kg(limits, Axle.FRONT), kg(limits, Axle.REAR), grossKg);
  }

  private static AxleLimits limits(double frontKg, double rearKg, double grossKg) {
    return AxleLimits.builder()
        .frontAxle(kilograms(frontKg))
        .rearAxle(kilograms(rearKg))
        .grossMass(kilograms(grossKg))
        .frontTyre(RandomBays.TYRE)
        .rearTyre(RandomBays.TYRE)
        .build();
  }
}
