package org.wattwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.metres;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.wattwright.battery.BatteryModule;
import org.wattwright.check.Checks;
import org.wattwright.check.Outcome;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.vehicle.LoadCase;
import org.wattwright.vehicle.MassItem;
import org.wattwright.vehicle.MassLedger;

/** Strings of several types of module, on cases that can be checked by hand. */
class MixedStringTest {
  private static final BatteryModule LONG = module("long", 12, 30);
  private static final BatteryModule SHORT = module("short", 6, 15);
  private static final List<SeriesGroup> STRING =
      List.of(SeriesGroup.of(SHORT, 2), SeriesGroup.of(LONG, 4));
  private static final MassLedger VAN = MassLedger.of(RandomBays.van());

  private static BatteryModule module(String name, int cells, double massKg) {
    return BatteryModule.of(InventedParts.flatCell())
        .name(name)
        .series(cells)
        .mass(kilograms(massKg))
        .build();
  }

  private static Bay bay(String name, double behindM) {
    return Bay.at(name, RandomBays.at(behindM, 0, 0.5)).holds(LONG, 4).holds(SHORT, 8);
  }

  private static BayAllocator over(Bay... bays) {
    return BayAllocator.over(VAN, List.of(bays)).frontShareTarget(0.5, 0, LoadCase.KERB);
  }

  /** 4 × 30 kg and 2 × 15 kg over two equal axles of 400 kg: 75 kg on each. */
  @Test
  void bothTypesAreSplitWhereThatBalances() {
    Allocation best = over(bay("front", 0), bay("rear", 2.5)).pack(STRING, 1).run().best().get();
    assertThat(best.counts()).isEqualTo(Map.of("front", 3, "rear", 3));
    assertThat(best.counts(LONG)).isEqualTo(Map.of("front", 2, "rear", 2));
    assertThat(best.counts(SHORT)).isEqualTo(Map.of("front", 1, "rear", 1));
    assertThat(best.frontShareDeviation()).contains(0.0);
    assertThat(best.pack().strings().get(0).cellsInSeries()).isEqualTo(60);
    assertThat(best)
        .hasToString(
            "6s1p (4 × long + 2 × short): front 2 + 1, rear 2 + 1; front share 0.5000 in kerb");
  }

  /** 3/4 + 2/8 is all of the room; one short more is too much, though each type alone would fit. */
  @Test
  void typesShareTheRoomOfABay() {
    assertThat(bay("front", 0).fits(Map.of(LONG, 3, SHORT, 2))).isTrue();
    assertThat(bay("front", 0).fits(Map.of(LONG, 3, SHORT, 3))).isFalse();
    assertThat(bay("front", 0).fits(Map.of(LONG, 4, SHORT, 0))).isTrue();
    assertThat(bay("front", 0).fits(Map.of(LONG, 4, SHORT, 1))).isFalse();
    assertThat(bay("front", 0).keptFree().fits(Map.of(LONG, 1))).isFalse();
    AllocationResult full =
        over(bay("front", 0))
            .pack(List.of(SeriesGroup.of(LONG, 3), SeriesGroup.of(SHORT, 2)), 1)
            .run();
    assertThat(full.best()).isPresent();
    AllocationResult over =
        over(bay("front", 0))
            .pack(List.of(SeriesGroup.of(LONG, 3), SeriesGroup.of(SHORT, 3)), 1)
            .run();
    assertThat(over.best()).isEmpty();
    assertThat(over.relaxations().get(0).toString())
        .endsWith("for 6s1p (3 × long + 3 × short): limit 5, needed 6");
  }

  /** Thirds and sevenths of a room are not rounded: 1/3 + 2/3 fits, 1/3 + 5/7 does not. */
  @Test
  void sharesAreExact() {
    Bay odd = Bay.at("odd", RandomBays.at(0, 0, 0.5)).holds(LONG, 3).holds(SHORT, 9_999);
    assertThat(odd.fits(Map.of(LONG, 1, SHORT, 6_666))).isTrue();
    assertThat(odd.fits(Map.of(LONG, 1, SHORT, 6_667))).isFalse();
  }

  /**
   * In a bay from 0 m on, 0.5 m each: long at 0 and 0.5 m, short at 1 m; on a wheelbase of 2.5 m
   * 30·(1 + 0.8) + 15·0.6 + 10·0.9 = 72 kg on the front axle.
   */
  @Test
  void heavyModulesSitFirstAndTheEnclosureCountsOnce() {
    Bay filled =
        Bay.at("bay", RandomBays.at(0, 0, 0.5))
            .next(RandomBays.at(0.5, 0, 0.5))
            .holds(LONG, 4)
            .holds(SHORT, 8)
            .enclosure(MassItem.of("box", kilograms(10), RandomBays.at(0.25, 0, 0.5)));
    Allocation best =
        over(filled)
            .pack(List.of(SeriesGroup.of(SHORT, 1), SeriesGroup.of(LONG, 2)), 1)
            .run()
            .best()
            .get();
    double frontKg = Kind.MASS.siValueOf(best.after(LoadCase.KERB).axles().front());
    assertThat(frontKg).isCloseTo(472, org.assertj.core.api.Assertions.within(1e-9));
    assertThat(Kind.MASS.siValueOf(best.mass())).isEqualTo(85);
    assertThat(best.items()).hasSize(3);
    assertThat(best.worksheet().toText()).contains("(long, short, in this order)", "72 kg");
  }

  /** Two strings that are not equal: one crosses from front to rear, or none. */
  @Test
  void stringsAreLaidAlongTheRoute() {
    StringCut cut = new StringCut(new int[] {4, 2});
    assertThat(cut.crossing(new int[] {4, 2})).isZero();
    assertThat(cut.crossing(new int[] {4, 0})).isEqualTo(1);
    assertThat(cut.crossing(new int[] {5, 1})).isEqualTo(2);
    assertThat(cut.crossing(new int[] {8, 0})).isEqualTo(2);
    assertThat(cut.crossing(new int[] {8, 4})).isZero();
    assertThat(cut.passesBy(new int[] {5, 1}, new int[] {3, 0})).isTrue();
    assertThat(cut.passesBy(new int[] {5, 1}, new int[] {3, 1})).isFalse();
    assertThat(cut.passesBy(new int[] {5, 1}, new int[] {2, 2})).isFalse();
  }

  /** All long ones in front, all short ones at the back: both strings cross, 2 × 3 m. */
  @Test
  void everyStringThatCrossesNeedsItsCable() {
    Bay front =
        Bay.at("front", RandomBays.at(0, 0, 0.5)).holds(LONG, 8).linkedTo("rear", metres(3));
    Bay rear = Bay.at("rear", RandomBays.at(2.5, 0, 0.5)).holds(SHORT, 8);
    Allocation best = over(front, rear).pack(STRING, 2).run().best().get();
    assertThat(Kind.LENGTH.siValueOf(best.linkLength().get())).isEqualTo(6);
    assertThat(best.pack().strings()).allMatch(string -> string.cellsInSeries() == 60);
  }

  @Test
  void equalStringsTakeTheSameFromEachBay() {
    Bay front = Bay.at("front", RandomBays.at(0, 0, 0.5)).holds(LONG, 9).holds(SHORT, 9);
    Bay rear = Bay.at("rear", RandomBays.at(2.5, 0, 0.5)).holds(LONG, 9).holds(SHORT, 9);
    Allocation best = over(front, rear).pack(STRING, 2).equalStrings().run().best().get();
    assertThat(best.counts(LONG).values()).allMatch(count -> count % 2 == 0);
    assertThat(best.counts(SHORT).values()).allMatch(count -> count % 2 == 0);
    assertThat(best.pack().strings().get(0).groups())
        .isEqualTo(best.pack().strings().get(1).groups());
  }

  /**
   * Cells of another size in one string: a caution that names the smallest, never a silent pass.
   */
  @Test
  void unlikeCellsAreACaution() {
    BatteryModule paired =
        BatteryModule.of(InventedParts.flatCell())
            .name("paired")
            .series(6)
            .parallel(2)
            .mass(kilograms(30))
            .build();
    Bay holds = bay("front", 0).holds(paired, 8);
    List<SeriesGroup> unlike = List.of(SeriesGroup.of(LONG, 2), SeriesGroup.of(paired, 1));
    Allocation alike =
        over(bay("front", 0))
            .pack(List.of(SeriesGroup.of(LONG, 2), SeriesGroup.of(SHORT, 1)), 1)
            .run()
            .best()
            .get();
    Allocation other = over(holds).pack(unlike, 1).run().best().get();
    assertThat(Checks.withCode(alike.checks(), "layout.string-cells").get(0).outcome())
        .isEqualTo(Outcome.PASS);
    assertThat(Checks.withCode(other.checks(), "layout.string-cells").get(0).outcome())
        .isEqualTo(Outcome.CAUTION);
    assertThat(Checks.withCode(other.checks(), "layout.string-cells").get(0).note())
        .contains("usable capacity of a string is that of long");
    assertThat(other.pack().capacity()).isEqualTo(LONG.capacity());
  }

  @Test
  void onlyAPackOfOneTypeHasTheType() {
    Allocation mixed = over(bay("front", 0), bay("rear", 2)).pack(STRING, 1).run().best().get();
    message(mixed::module, "Allocation.module");
    Allocation plain =
        over(bay("front", 0)).pack(List.of(SeriesGroup.of(LONG, 2)), 1).run().best().get();
    assertThat(plain.module()).isEqualTo(LONG);
    assertThat(plain).isEqualTo(over(bay("front", 0)).pack(LONG, 2, 1).run().best().get());
  }

  @Test
  void badInputNamesFieldValueAndBound() {
    BayAllocator plain = over(bay("front", 0));
    message(() -> SeriesGroup.of(LONG, 0), "SeriesGroup.count of long must be from 1 to 10000");
    message(() -> plain.pack(List.of(), 1), "BayAllocator.pack.string");
    message(() -> plain.pack(STRING, 0), "BayAllocator.pack.parallel must be");
    message(
        () -> plain.pack(List.of(SeriesGroup.of(LONG, 1), SeriesGroup.of(LONG, 2)), 1),
        "each type once, but was two groups of long");
    message(
        () ->
            plain.pack(
                List.of(SeriesGroup.of(LONG, 1), SeriesGroup.of(module("long", 12, 31), 1)), 1),
        "two called \"long\"");
    message(
        () -> plain.pack(LONG, 1, 1).pack(List.of(SeriesGroup.of(module("long", 12, 31), 1)), 1),
        "two called \"long\"");
    message(
        () ->
            plain.pack(
                List.of("a", "b", "c", "d", "e").stream()
                    .map(name -> SeriesGroup.of(module(name, 12, 30), 1))
                    .toList(),
                1),
        "from 1 to 4, but was 5");
    message(
        () -> plain.pack(List.of(SeriesGroup.of(LONG, 300), SeriesGroup.of(SHORT, 300)), 1).run(),
        "at most 50000");
    message(
        () -> plain.pack(List.of(SeriesGroup.of(LONG, 6_000), SeriesGroup.of(SHORT, 6_000)), 1),
        "but was 12000");
  }

  private static void message(
      org.assertj.core.api.ThrowableAssert.ThrowingCallable call, String part) {
    assertThatThrownBy(call).isInstanceOf(InvalidInputException.class).hasMessageContaining(part);
  }
}
