package org.wattwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.battery.BatteryModule;
import org.wattwright.testing.Generator;
import org.wattwright.vehicle.LoadCase;
import org.wattwright.vehicle.MassLedger;

/** The bound never exceeds what an allocation reaches, and is no mere zero. */
class LatticeBoundTest {
  private static final BatteryModule MODULE = RandomBays.module("flat", 20);
  private static final int ANY = Integer.MAX_VALUE;

  static Stream<Generator> cases() {
    return Generator.cases(300);
  }

  private static double bound(BayAllocator allocator, PackOption option, int mostUsed) {
    AllocationSpec spec = new AllocationSpec(allocator.withOnly(option).draft());
    UnitTables tables = new UnitTables(spec, option, BayTables.NONE_LIFTED);
    LoadRule target = spec.target();
    return LatticeBound.of(tables, tables.of(target), target, mostUsed);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void neverAboveTheLeastDeviation(Generator random) {
    BayAllocator allocator = new RandomBays(random).allocator();
    allocator = allocator.frontShareTarget(random.typed(0.4, 0.6, 2), 0, LoadCase.KERB);
    for (PackOption option : allocator.draft().options) {
      List<AllocationBruteForce.Found> all =
          new AllocationBruteForce(allocator.withOnly(option)).ranked();
      for (AllocationBruteForce.Found found : all) {
        assertThat(bound(allocator, option, found.enclosures()))
            .isLessThanOrEqualTo(found.deviation() + 1e-12);
      }
    }
  }

  private static BayAllocator overBothAxles() {
    Bay front = Bay.at("front", RandomBays.at(0, 0, 0.6)).holds(MODULE, 6);
    Bay rear = Bay.at("rear", RandomBays.at(2.5, 0, 0.5)).holds(MODULE, 6);
    return BayAllocator.over(MassLedger.of(RandomBays.van()), List.of(front, rear))
        .frontShareTarget(0.5, 0, LoadCase.KERB);
  }

  /**
   * 20 kg over one axle or the other: five of them leave 20 kg more on one, 10 of 900 kg too many.
   */
  @Test
  void anOddNumberOverTwoAxlesLeavesHalfAModule() {
    PackOption five = new PackOption(MODULE, 5, 1);
    assertThat(bound(overBothAxles(), five, ANY)).isCloseTo(10.0 / 900, within(1e-9));
    assertThat(bound(overBothAxles(), new PackOption(MODULE, 4, 1), ANY)).isZero();
  }

  /** All five over one axle: 50 of 900 kg. */
  @Test
  void oneBayLeavesNoChoice() {
    assertThat(bound(overBothAxles(), new PackOption(MODULE, 5, 1), 1))
        .isCloseTo(50.0 / 900, within(1e-9));
  }

  @Test
  void noRoomIsBoundedByNothing() {
    assertThat(bound(overBothAxles(), new PackOption(MODULE, 13, 1), ANY)).isInfinite();
    assertThat(bound(overBothAxles(), new PackOption(MODULE, 7, 1), 1)).isInfinite();
  }
}
