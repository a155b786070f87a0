package org.wattwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.newtonMetresPerDegree;
import static org.wattwright.units.Measures.ohmsPerKilometre;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wattwright.battery.BatteryModule;
import org.wattwright.check.Checks;
import org.wattwright.check.Given;
import org.wattwright.check.Outcome;
import org.wattwright.check.Source;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.vehicle.AxleLimits;
import org.wattwright.vehicle.LoadCase;
import org.wattwright.vehicle.MassItem;
import org.wattwright.vehicle.MassLedger;
import org.wattwright.vehicle.Position;
import org.wattwright.vehicle.WeighedVehicle;

/** Edges, messages and what an answer carries. */
class BayAllocatorTest {
  private static final BatteryModule MODULE = RandomBays.module("flat", 20);
  private static final MassLedger VAN = MassLedger.of(RandomBays.van());

  private static Bay front() {
    return Bay.at("front", RandomBays.at(0, 0, 0.6)).holds(MODULE, 6);
  }

  private static Bay rear() {
    return Bay.at("rear", RandomBays.at(2.5, 0, 0.5)).holds(MODULE, 6);
  }

  private static BayAllocator plain() {
    return BayAllocator.over(VAN, List.of(front(), rear())).modules(MODULE, 8);
  }

  @Test
  void equalLoadsOnEqualAxlesNeedEqualCounts() {
    Allocation best = plain().frontShareTarget(0.5, 0, LoadCase.KERB).run().best().orElseThrow();
    assertThat(best.counts())
        .containsExactly(java.util.Map.entry("front", 4), java.util.Map.entry("rear", 4));
    assertThat(best.frontShareDeviation()).contains(0.0);
    assertThat(best.frontShare(LoadCase.KERB)).isEqualTo(0.5);
    assertThat(best.toString()).isEqualTo("8s1p flat: front 4, rear 4; front share 0.5000 in kerb");
    assertThat(best.mass()).isEqualTo(kilograms(160));
    assertThat(best.linkLength()).isEmpty();
  }

  @Test
  void withoutATargetFewestEnclosuresThenLowestCentreCount() {
    Allocation best =
        BayAllocator.over(VAN, List.of(front(), rear()))
            .modules(MODULE, 5)
            .run()
            .best()
            .orElseThrow();
    assertThat(best.counts().get("rear")).isEqualTo(5);
    assertThat(best.centreOfGravityHeight().orElseThrow()).isEqualTo(metres(0.5));
    assertThat(best.frontShareDeviation()).isEmpty();
  }

  @Test
  void tiesAreBrokenByNameOfTheBay() {
    Bay twin = Bay.at("a twin", RandomBays.at(2.5, 0, 0.5)).holds(MODULE, 6);
    Allocation best =
        BayAllocator.over(VAN, List.of(rear(), twin)).modules(MODULE, 5).run().best().orElseThrow();
    assertThat(best.counts().get("rear")).isEqualTo(5);
  }

  @Test
  void enclosureCountsOnlyIfUsedAndBaysFillAlongTheirAxis() {
    Bay along =
        rear()
            .next(RandomBays.at(2.7, 0, 0.5))
            .enclosure(MassItem.of("box", kilograms(10), RandomBays.at(2.5, 0, 0.5)));
    Allocation best =
        BayAllocator.over(VAN, List.of(front().keptFree(), along))
            .modules(MODULE, 3)
            .run()
            .best()
            .orElseThrow();
    // 3 × 20 kg at 2.5, 2.7, 2.9 m and a box of 10 kg at 2.5 m: 60·2.7/2.5 + 10 kg on the rear.
    assertThat(Kind.MASS.siValueOf(best.after(LoadCase.KERB).axles().rear()))
        .isCloseTo(400 + 64.8 + 10, within(1e-9));
    assertThat(best.items()).hasSize(2);
    assertThat(along.middleOf(3)).isEqualTo(RandomBays.at(2.7, 0, 0.5));
  }

  @Test
  void aLimitThatIsJustReachedIsKept() {
    AxleLimits limits =
        AxleLimits.builder()
            .frontAxle(kilograms(460))
            .rearAxle(kilograms(500))
            .grossMass(kilograms(960))
            .frontTyre(RandomBays.TYRE)
            .rearTyre(RandomBays.TYRE)
            .build();
    Allocation best = plain().limits(limits).run().best().orElseThrow();
    assertThat(best.counts()).containsEntry("front", 3);
    assertThat(Checks.withCode(best.checks(), "layout.axle-rear").get(0).outcome())
        .isEqualTo(Outcome.CAUTION);
    assertThat(
            Checks.withCode(best.checks(), "layout.gross").get(0).margin().orElseThrow().toString())
        .isEqualTo("0 kg");
  }

  @Test
  void wheelsAreAtMostCautionOnAnEstimatedRollStiffness() {
    WeighedVehicle guessed =
        WeighedVehicle.withWheelbase(metres(2.5))
            .frontLeft(kilograms(200))
            .frontRight(kilograms(200))
            .rearLeft(kilograms(200))
            .rearRight(kilograms(200))
            .frontTrack(metres(1.25))
            .rearTrack(metres(1.2))
            .frontRollStiffness(
                Given.estimated(newtonMetresPerDegree(220), Source.commonPractice("like vans")))
            .rearRollStiffness(
                Given.estimated(newtonMetresPerDegree(140), Source.commonPractice("like vans")))
            .build();
    AxleLimits wide =
        AxleLimits.builder()
            .frontAxle(kilograms(900))
            .rearAxle(kilograms(900))
            .grossMass(kilograms(1800))
            .frontTyre(RandomBays.TYRE)
            .rearTyre(RandomBays.TYRE)
            .build();
    Allocation best =
        BayAllocator.over(MassLedger.of(guessed), List.of(front(), rear()))
            .modules(MODULE, 2)
            .limits(wide)
            .run()
            .best()
            .orElseThrow();
    assertThat(Checks.withCode(best.checks(), "layout.wheel-rear-left").get(0).outcome())
        .isEqualTo(Outcome.CAUTION);
    assertThat(Checks.withCode(best.checks(), "layout.axle-rear").get(0).outcome())
        .isEqualTo(Outcome.PASS);
  }

  @Test
  void overloadIsAnAnswerThatNamesTheLimitAndWhatItWouldTake() {
    AxleLimits limits =
        AxleLimits.builder()
            .frontAxle(kilograms(700))
            .rearAxle(kilograms(700))
            .grossMass(kilograms(900))
            .frontTyre(RandomBays.TYRE)
            .rearTyre(RandomBays.TYRE)
            .build();
    AllocationResult none = plain().limits(limits).run();
    assertThat(none.best()).isEmpty();
    assertThat(none.alternatives()).isEmpty();
    BayRelaxation binding = none.relaxations().get(0);
    assertThat(binding.code()).isEqualTo("layout.gross");
    assertThat(binding)
        .hasToString("mass of the vehicle against its gross mass: limit 900 kg, needed 960 kg");
    assertThat(binding.allocation().orElseThrow().moduleCount()).isEqualTo(8);
    assertThat(none.whyNone()).contains("PROVEN over 5 candidates").contains("needed 960 kg");
  }

  @Test
  void shortOfRoomIsAnAnswer() {
    AllocationResult none =
        BayAllocator.over(VAN, List.of(front(), rear())).modules(MODULE, 13).run();
    assertThat(none.relaxations().get(0))
        .hasToString(
            "room of all bays by count and mass limit, for 13s1p flat: limit 12, needed 13");
    assertThat(none.relaxations().get(0).allocation()).isEmpty();
    assertThat(none.coverage().total()).isZero();
  }

  @Test
  void aBaysOwnMassLimitCanBind() {
    AllocationResult none =
        BayAllocator.over(VAN, List.of(rear().massAtMost(kilograms(90)))).modules(MODULE, 5).run();
    assertThat(none.relaxations())
        .extracting(BayRelaxation::toString)
        .contains("rear: modules and enclosure against its limit: limit 90 kg, needed 100 kg");
  }

  @Test
  void bothTwoRequirementsThatMustGiveAreSaid() {
    AxleLimits limits =
        AxleLimits.builder()
            .frontAxle(kilograms(401))
            .rearAxle(kilograms(401))
            .grossMass(kilograms(810))
            .frontTyre(RandomBays.TYRE)
            .rearTyre(RandomBays.TYRE)
            .build();
    assertThat(plain().limits(limits).run().whyNone()).contains("at least two must give");
  }

  @Test
  void missingDataIsNamedAndNeverPasses() {
    AxleLimits plates = AxleLimits.builder().frontAxle(kilograms(700)).build();
    AllocationResult none = plain().limits(plates).run();
    assertThat(none.best()).isEmpty();
    assertThat(none.isProvisional()).isTrue();
    assertThat(none.missing()).contains("AxleLimits.rearAxle", "AxleLimits.grossMass");
    assertThat(none.whyNone()).startsWith("Not searched: missing data");
    AllocationResult some = plain().limits(plates).allowProvisional().run();
    assertThat(some.best().orElseThrow().outcome()).isEqualTo(Outcome.NOT_CHECKED);
  }

  @Test
  void linksAreMeasuredAlongTheShortestRoute() {
    Bay middle =
        Bay.at("middle", RandomBays.at(1.2, 0, 0.4)).holds(MODULE, 1).linkedTo("front", metres(1));
    Bay back = rear().linkedTo("middle", metres(1.5));
    BayAllocator allocator =
        BayAllocator.over(VAN, List.of(front(), middle, back))
            .pack(MODULE, 4, 2)
            .frontShareTarget(0.5, 0, LoadCase.KERB);
    Allocation one = allocator.run().best().orElseThrow();
    assertThat(one.counts().values()).containsExactly(4, 0, 4);
    // Two strings of four: one in each bay, no cable between.
    assertThat(one.linkLength().orElseThrow()).isEqualTo(metres(0));
    Allocation equal = allocator.equalStrings().run().best().orElseThrow();
    assertThat(equal.linkLength().orElseThrow()).isEqualTo(metres(5));
    assertThat(equal.pack(ohmsPerKilometre(0.5)).strings().get(1).linkResistance())
        .isEqualTo(org.wattwright.units.Measures.milliohms(1.25));
    assertThat(equal.pack().strings().get(0).groups()).hasSize(2);
    AllocationResult apart = allocator.equalStrings().contiguousStrings().run();
    assertThat(apart.best()).isEmpty();
    assertThat(apart.relaxations().get(0).code()).isEqualTo("layout.links");
    assertThat(apart.whyNone()).contains("would have to be dropped");
  }

  @Test
  void stopsWhenToldAndSaysSo() {
    AllocationResult stopped = plain().cancelWhen(() -> true).run();
    assertThat(stopped.best()).isEmpty();
    assertThat(stopped.coverage().status()).isEqualTo(Coverage.Status.STOPPED);
    assertThat(stopped.whyNone()).startsWith("Nothing found before the run was stopped");
    long[] told = {-1};
    AllocationResult partly =
        plain()
            .allocationBudget(2)
            .frontShareTarget(0.5, 0, LoadCase.KERB)
            .progress(n -> told[0] = n)
            .run();
    assertThat(partly.coverage().covered()).isEqualTo(told[0]).isEqualTo(2);
    assertThat(partly.gap())
        .isPositive()
        .isEqualTo(partly.best().orElseThrow().frontShareDeviation().orElseThrow());
  }

  @Test
  void jointSearchPairsEveryPackWithItsBestAllocation() {
    PackSearch search = PackSearch.over(List.of(MODULE)).seriesAtMost(7).parallelAtMost(2);
    JointSearch.Result found =
        JointSearch.of(search, plain().frontShareTarget(0.5, 0, LoadCase.KERB)).run();
    assertThat(found.ranked()).hasSize(13);
    assertThat(found.notAllocated()).hasSize(1);
    assertThat(found.status()).isEqualTo(Coverage.Status.PROVEN);
    assertThat(found.best().orElseThrow().pack().moduleCount()).isEqualTo(1);
    List<JointSearch.Pair> front = found.paretoFront(Criterion.MODULE_COUNT);
    assertThat(front).extracting(pair -> pair.pack().moduleCount()).containsExactly(1, 2, 2);
    assertThat(found).hasToString("13 of 14 packs can be allocated");
  }

  @Test
  void badInputNamesFieldValueAndBound() {
    message(
        () -> BayAllocator.over(VAN, List.of(Bay.at("boot", RandomBays.at(1, 0, 1)))),
        "Bay.room of boot must be stated for at least one type of module, but was none");
    message(
        () -> front().holds(MODULE, 0),
        "Bay.room of front for flat must be from 1 to 10000, but was 0");
    message(
        () -> front().massAtMost(kilograms(-3)),
        "Bay.massLimit of front must be > 0 kg, but was -3 kg");
    message(() -> MassItem.of("box", kilograms(-1), RandomBays.at(1, 0, 1)), "-1 kg");
    message(() -> front().linkedTo("front", metres(1)), "to itself");
    message(() -> front().linkedTo("rear", metres(-1)), "but was -1 m");
    message(() -> front().next(Position.behindFrontAxle(metres(1))), "leftOfCentre must be given");
    message(() -> plain().frontShareTarget(Double.NaN, 0, LoadCase.KERB), "NaN");
    message(() -> plain().frontShareTarget(0.5, -0.1, LoadCase.KERB), "-0.1");
    message(
        () -> plain().frontShareBetween(0.6, 0.4), "BayAllocator.frontShareBetween.most must be");
    message(() -> plain().leftRightDifferenceAtMost(kilograms(-1)), "but was -1 kg");
    message(() -> plain().pack(MODULE, 0, 1), "BayAllocator.pack.series must be ≥ 1, but was 0");
    message(() -> plain().pack(MODULE, 100, 101), "from 1 to 100, but was 101");
    message(() -> plain().pack(RandomBays.module("flat", 21), 1, 1), "two called \"flat\"");
    message(() -> plain().alternatives(-1), "from 0 to 1000, but was -1");
    message(() -> plain().allocationBudget(0), "≥ 1, but was 0");
    message(() -> BayAllocator.over(VAN, List.of(front())).run(), "BayAllocator.pack");
    message(() -> plain().contiguousStrings().run(), "Bay.links must be stated");
    message(
        () ->
            BayAllocator.over(VAN, List.of(front().linkedTo("loft", metres(1))))
                .modules(MODULE, 1)
                .run(),
        "Bay.link of front must be to a bay of the list, but was to \"loft\"");
    message(
        () ->
            BayAllocator.over(
                    VAN,
                    List.of(
                        front().linkedTo("rear", metres(1)), rear().linkedTo("front", metres(2))))
                .modules(MODULE, 1)
                .run(),
        "the same both ways: 1 m, but was 2 m");
    message(
        () -> BayAllocator.over(VAN, List.of(front(), front().massAtMost(kilograms(9)))),
        "two called \"front\"");
    message(
        () ->
            JointSearch.of(
                PackSearch.over(List.of(MODULE)).enclosure(Enclosure.of("box", 2, kilograms(1))),
                plain()),
        "without enclosures");
  }

  @Test
  void whatIsNoNumberOrNoRoomIsNamed() {
    message(() -> RandomBays.module("flat", -20), "but was -20 kg");
    message(() -> kilograms(Double.NaN), "NaN");
    message(() -> metres(Double.POSITIVE_INFINITY), "Infinity");
    message(() -> front().massAtMost(kilograms(0)), "must be > 0 kg, but was 0 kg");
    message(() -> front().holds(MODULE, -2), "from 1 to 10000, but was -2");
    message(() -> plain().modules(MODULE, 0), "BayAllocator.pack.series must be ≥ 1, but was 0");
    message(() -> plain().pack(MODULE, 3, 0), "BayAllocator.pack.parallel must be");
    message(() -> plain().pack(MODULE, 10_001, 1), "but was 1");
    message(() -> plain().frontShareTarget(1.01, 0, LoadCase.KERB), "1.01");
    message(() -> plain().frontShareTarget(0.5, Double.NaN, LoadCase.KERB), "NaN");
    message(() -> plain().frontShareBetween(-0.1, 0.4), "-0.1");
    message(() -> plain().frontShareBetween(0.1, Double.NaN), "NaN");
    message(() -> BayAllocator.over(VAN, List.of()), "BayAllocator.bays");
    message(() -> Bay.at(" ", RandomBays.at(0, 0, 1)), "Bay.name");
    List<Bay> many =
        java.util.stream.IntStream.range(0, 13)
            .mapToObj(i -> Bay.at("bay " + i, RandomBays.at(i, 0, 1)).holds(MODULE, 1))
            .toList();
    message(() -> BayAllocator.over(VAN, many), "from 1 to 12, but was 13");
  }

  /** Bays kept free, or for another type only: an answer that names the room, never an error. */
  @Test
  void bayWithoutRoomForThisTypeIsAnAnswer() {
    AllocationResult free =
        BayAllocator.over(VAN, List.of(front().keptFree(), rear().keptFree()))
            .modules(MODULE, 2)
            .run();
    AllocationResult other =
        BayAllocator.over(VAN, List.of(front(), rear()))
            .modules(RandomBays.module("tall", 25), 2)
            .run();
    assertThat(free.best()).isEmpty();
    assertThat(other.best()).isEmpty();
    assertThat(free.relaxations().get(0).toString()).endsWith("for 2s1p flat: limit 0, needed 2");
    assertThat(other.relaxations().get(0).toString()).endsWith("for 2s1p tall: limit 0, needed 2");
  }

  private static void message(
      org.assertj.core.api.ThrowableAssert.ThrowingCallable call, String part) {
    assertThatThrownBy(call).isInstanceOf(InvalidInputException.class).hasMessageContaining(part);
  }
}
