package org.wattwright.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.microhenries;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.conductor.Cable;
import org.wattwright.conductor.Installation;
import org.wattwright.testing.Generator;
import org.wattwright.units.Measures;

/** The designer against every combination, each judged by its full list of checks. */
class CircuitOracleTest {
  static Stream<Generator> cases() {
    return Generator.cases(200);
  }

  private static final class Job {
    final List<Circuit> circuits;
    final List<Cable> cables;
    final List<Fuse> fuses;
    final List<Contactor> contactors;
    final CircuitSupply supply;

    Job(Generator random) {
      circuits = circuits(random);
      cables = some(random, CircuitParts.cables(), 4);
      fuses = fuses(random);
      contactors = some(random, CircuitParts.contactors(), 2);
      double sourceMilliohm = random.between(20, 200);
      supply =
          CircuitSupply.of(
              "battery",
              volts(403.2),
              FaultRange.of(
                      FaultCurrent.of(volts(403.2), milliohms(sourceMilliohm), microhenries(20)),
                      FaultCurrent.of(
                          volts(random.between(60, 300)),
                          milliohms(2 * sourceMilliohm),
                          microhenries(20)))
                  .withCapacitors(capacitors(random)));
    }

    CircuitDesigner designer() {
      return CircuitDesigner.fedBy(supply)
          .circuits(circuits)
          .cables(cables)
          .fuses(fuses)
          .contactors(contactors)
          .parallelRunsUpTo(2);
    }
  }

  /** None in every other job, or a device's that brings little to much. */
  private static List<CapacitorDischarge> capacitors(Generator random) {
    return random.between(0, 1) < 0.5
        ? List.of()
        : List.of(
            CapacitorDischarge.of(
                    "devices", Measures.farads(random.betweenDecades(1e-5, 2e-3)), volts(403.2))
                .through(milliohms(random.between(40, 200)), microhenries(1)));
  }

  private static <T> List<T> some(Generator random, List<T> from, int count) {
    List<T> left = new ArrayList<>(from);
    while (left.size() > count) {
      left.remove((int) random.between(0, left.size()));
    }
    return left;
  }

  private static List<Fuse> fuses(Generator random) {
    List<Fuse> fuses = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      double ratedA = Math.rint(random.betweenDecades(20, 400));
      fuses.add(CircuitParts.fuse("F-" + i, ratedA, random.betweenDecades(0.1, 10)));
    }
    return fuses;
  }

  private static List<Circuit> circuits(Generator random) {
    double mainA = random.between(30, 200);
    CircuitBuilder main =
        Circuit.of("main", CircuitRole.TRACTION_MAIN)
            .continuousCurrent(amperes(mainA))
            .highestOperatingCurrent(amperes(mainA * random.between(1, 1.6)))
            .length(metres(random.between(1, 30)))
            .installation(Installation.freeAir(celsius(random.between(20, 70))))
            .faultClearedWithin(seconds(random.betweenDecades(0.05, 5)));
    if (random.between(0, 1) < 0.7) {
      main.switched();
      main.trip(
          OvercurrentTrip.at(amperes(mainA * 1.8), seconds(random.betweenDecades(0.02, 2)), "x"));
    }
    List<Circuit> circuits = new ArrayList<>(List.of(main.build()));
    int branches = (int) random.between(0, 3);
    for (int i = 0; i < branches; i++) {
      CircuitBuilder branch =
          Circuit.of("branch " + i, CircuitRole.HEATER)
              .fedFrom(circuits.get((int) random.between(0, circuits.size())))
              .continuousCurrent(amperes(random.between(5, 40)))
              .length(metres(random.between(1, 60)))
              .installation(Installation.freeAir(celsius(50)));
      circuits.add(random.between(0, 1) < 0.25 ? branch.withoutFuse().build() : branch.build());
    }
    return circuits;
  }

  static CircuitDesign randomDesign(Generator random) {
    return new Job(random).designer().run();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void findsTheSmallestOfAllCombinationsThatPassTheirChecks(Generator random) {
    Job job = new Job(random);
    DesignTree tree = job.designer().prepared().tree();
    CircuitDesign design = job.designer().run();
    @Nullable PartCost least = new EveryCombination(tree).least();
    assertThat(design.blocked().isPresent()).isEqualTo(least == null);
    if (least != null) {
      assertThat(EveryCombination.cost(design)).isEqualTo(least);
      assertThat(design.isComplete()).isTrue();
      assertThat(Verdict.of(design.checks())).isEqualTo(Verdict.PASSES);
    } else {
      assertThat(design.whyNone()).isNotBlank();
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void doesNotCareForTheOrderOfTheCatalogues(Generator random) {
    Job job = new Job(random);
    List<Cable> cables = new ArrayList<>(job.cables);
    List<Fuse> fuses = new ArrayList<>(job.fuses);
    List<Contactor> contactors = new ArrayList<>(job.contactors);
    Collections.reverse(cables);
    Collections.reverse(fuses);
    Collections.reverse(contactors);
    assertThat(job.designer().cables(cables).fuses(fuses).contactors(contactors).run())
        .hasToString(job.designer().run().toString());
  }

  @ParameterizedTest
  @MethodSource("cases")
  void neverGetsWorseWithMoreToChooseFrom(Generator random) {
    Job job = new Job(random);
    CircuitDesign few = job.designer().run();
    List<Fuse> more = new ArrayList<>(job.fuses);
    more.addAll(CircuitParts.fuses());
    CircuitDesign many = job.designer().fuses(more).cables(CircuitParts.cables()).run();
    if (few.blocked().isEmpty()) {
      assertThat(EveryCombination.cost(many)).isLessThanOrEqualTo(EveryCombination.cost(few));
    }
  }

  @Test
  void isNotBlockedInMostOfTheCases() {
    long found =
        cases().filter(random -> new Job(random).designer().run().blocked().isEmpty()).count();
    assertThat(found).isBetween(40L, 190L);
  }
}
