package org.wattwright.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.microhenries;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.volts;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.check.Check;
import org.wattwright.check.Outcome;
import org.wattwright.conductor.Installation;
import org.wattwright.testing.Generator;
import org.wattwright.units.Kind;

/** Why a tree of circuits has no parts: counts and relaxations, requirement by requirement. */
class BlockedTreeTest {
  private static final Circuit TRACTION = CircuitParts.traction().build();

  private static RuledOut requirement(BlockedCircuit blocked, String code) {
    return blocked.requirements().stream()
        .filter(each -> each.code().equals(code))
        .findFirst()
        .orElseThrow();
  }

  /** The branch needs F-125 or more for its 100 A, behind a main fuse that is F-125 alone. */
  @Test
  void namesSelectivityWithCountAndRelaxation() {
    Circuit branch =
        Circuit.of("branch", CircuitRole.HEATER)
            .fedFrom(TRACTION)
            .continuousCurrent(amperes(100))
            .length(metres(2))
            .installation(Installation.freeAir(celsius(45)))
            .build();
    Fuse only = CircuitParts.fuses().get(4);
    CircuitDesign design =
        CircuitParts.designer(List.of(TRACTION, branch)).fuses(List.of(only)).run();
    BlockedCircuit blocked = design.blocked().orElseThrow();
    assertThat(blocked.circuit().name()).isEqualTo("branch");
    assertThat(blocked.code()).isEqualTo("fuse.selectivity");
    RuledOut selectivity = requirement(blocked, "fuse.selectivity");
    assertThat(selectivity.count()).isEqualTo(blocked.candidates()).isPositive();
    Check relaxation = selectivity.smallestRelaxation().orElseThrow();
    assertThat(relaxation.outcome()).isEqualTo(Outcome.FAIL);
    assertThat(relaxation.code()).isEqualTo("fuse.selectivity");
    assertThat(blocked.smallestRelaxation()).contains(relaxation);
    assertThat(design.whyNone())
        .startsWith(
            "no parts for branch: fuse.selectivity blocks; "
                + blocked.candidates()
                + " combinations, ruled out by ")
        .contains("fuse.selectivity: " + selectivity.count() + ", alone FAIL fuse.selectivity");
  }

  /**
   * A weak battery and a long main: at the end of the branch too little current flows. The
   * relaxation says how much would have to be enough: 60 V over battery, main and branch.
   */
  @Test
  void namesTheLowestFaultWithItsRelaxation() {
    CircuitSupply weak =
        CircuitSupply.of(
            "weak",
            volts(403.2),
            FaultRange.of(
                FaultCurrent.of(volts(403.2), milliohms(60), microhenries(20)),
                FaultCurrent.of(volts(60), milliohms(130), microhenries(20))));
    Circuit main =
        Circuit.of("main", CircuitRole.TRACTION_MAIN)
            .continuousCurrent(amperes(30))
            .length(metres(35))
            .installation(Installation.freeAir(celsius(45)))
            .build();
    Circuit branch =
        Circuit.of("branch", CircuitRole.HEATER)
            .fedFrom(main)
            .continuousCurrent(amperes(15))
            .length(metres(35))
            .installation(Installation.freeAir(celsius(45)))
            .withoutFuse()
            .build();
    CircuitDesigner designer =
        CircuitDesigner.fedBy(weak)
            .circuits(List.of(main, branch))
            .cables(CircuitParts.cables().subList(4, 6))
            .fuses(List.of(CircuitParts.fuse("F-50", 50, 1), CircuitParts.fuse("F-52", 52, 1)));
    BlockedCircuit blocked = designer.run().blocked().orElseThrow();
    assertThat(blocked.circuit().name()).isEqualTo("branch");
    RuledOut lowest = requirement(blocked, "protection.lowest-fault");
    assertThat(lowest.count()).isBetween(1, blocked.candidates());
    assertThat(blocked.candidates()).isGreaterThan(1);
    double nearest =
        Kind.CURRENT.siValueOf(lowest.nearest().actual().orElseThrow().quantity(Kind.CURRENT));
    // 25 mm² main and branch at 125 °C: 0.78 mΩ/m at 20 °C, IEC 60228.
    double ohm = 0.130 + (70 + 70) * 0.78e-3 * (1 + 0.00393 * 105);
    assertThat(nearest).isCloseTo(60 / ohm, within(1e-6 * nearest));
  }

  @Test
  void countsEachCandidateOncePerRequirement() {
    Check one =
        Check.named("a.limit", "first").source(org.wattwright.check.Source.PHYSICS).holds(false);
    Check again = one.in("front");
    Check other =
        Check.named("b.limit", "second")
            .source(org.wattwright.check.Source.PHYSICS)
            .note("why")
            .holds(false);
    BlockedCircuit blocked =
        BlockedTally.of(TRACTION, "fuses", List.of(List.of(one, again), List.of(one, other)));
    assertThat(blocked.candidates()).isEqualTo(2);
    assertThat(blocked.ruledOut()).containsEntry("a.limit", 2).containsEntry("b.limit", 1);
    assertThat(requirement(blocked, "a.limit").smallestRelaxation()).contains(one);
    assertThat(requirement(blocked, "b.limit").smallestRelaxation()).isEmpty();
    assertThat(requirement(blocked, "b.limit").nearest()).isEqualTo(other);
    assertThat(blocked.requirements())
        .extracting(RuledOut::code)
        .containsExactly("a.limit", "b.limit");
    assertThat(blocked.toString())
        .startsWith("no parts for traction: a.limit blocks; 2 fuses, ruled out by a.limit: 2")
        .endsWith("b.limit: 1, with others FAIL b.limit: second (why)");
  }

  @Test
  void saysThatACatalogueIsEmpty() {
    BlockedCircuit blocked =
        CircuitParts.designer(List.of(TRACTION)).fuses(List.of()).run().blocked().orElseThrow();
    assertThat(blocked.candidates()).isZero();
    assertThat(blocked.code()).isEqualTo("no fuses to choose from");
    assertThat(blocked.smallestRelaxation()).isEmpty();
  }

  private static Check over(String code, double volt) {
    return Check.named(code, "voltage")
        .source(org.wattwright.check.Source.PHYSICS)
        .atMost(
            org.wattwright.check.Figure.of(volts(volt), org.wattwright.units.WorkshopUnits.VOLT),
            org.wattwright.check.Figure.of(volts(100), org.wattwright.units.WorkshopUnits.VOLT));
  }

  @Test
  void namesTheLeastExceededOfAllRelaxations() {
    Check least = over("b.limit", 110);
    BlockedCircuit blocked =
        BlockedTally.of(
            TRACTION,
            "fuses",
            List.of(List.of(over("a.limit", 150)), List.of(over("a.limit", 140)), List.of(least)));
    assertThat(blocked.code()).isEqualTo("b.limit");
    assertThat(blocked.smallestRelaxation()).contains(least);
    assertThat(requirement(blocked, "a.limit").smallestRelaxation()).contains(over("a.limit", 140));
  }

  @Test
  void saysThatNoFuseHasACurve() {
    Fuse bare = Fuse.of("F", amperes(160)).build();
    CircuitDesign design =
        CircuitParts.designer(List.of(TRACTION)).fuses(List.of(bare)).allowProvisional().run();
    BlockedCircuit blocked = design.blocked().orElseThrow();
    assertThat(blocked.ruledOut()).containsEntry("fuse.curve", 1);
    assertThat(design.whyNone())
        .contains("; 1 fuses, ruled out by ")
        .contains("traction: 1 of 1 fuses not looked at: ");
  }

  @Test
  void saysThatThereAreNoContactors() {
    CircuitDesign design = CircuitParts.designer(List.of(TRACTION)).contactors(List.of()).run();
    assertThat(design.whyNone()).isEqualTo("no parts for traction: no contactors to choose from");
  }

  static Stream<Generator> cases() {
    return Generator.cases(300);
  }

  /**
   * Whatever blocks, every candidate is counted somewhere and each relaxation is a failed check.
   */
  @ParameterizedTest
  @MethodSource("cases")
  void givesCountsWheneverItIsBlocked(Generator random) {
    CircuitDesign design = CircuitOracleTest.randomDesign(random);
    if (design.blocked().isEmpty()) {
      return;
    }
    BlockedCircuit blocked = design.blocked().get();
    int most = blocked.requirements().stream().mapToInt(RuledOut::count).max().orElse(0);
    int sum = blocked.requirements().stream().mapToInt(RuledOut::count).sum();
    assertThat(blocked.candidates()).isPositive();
    assertThat(most).isPositive().isLessThanOrEqualTo(blocked.candidates());
    assertThat(sum).isGreaterThanOrEqualTo(blocked.candidates());
    for (RuledOut each : blocked.requirements()) {
      assertThat(each.nearest().outcome()).isIn(Outcome.FAIL, Outcome.NOT_CHECKED);
      each.smallestRelaxation()
          .ifPresent(
              alone ->
                  assertThat(RuledOut.excess(alone))
                      .isGreaterThanOrEqualTo(RuledOut.excess(each.nearest())));
    }
  }
}
