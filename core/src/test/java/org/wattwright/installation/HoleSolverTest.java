package org.wattwright.installation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.megapascals;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.millimetres;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.check.Given;
import org.wattwright.check.Source;
import org.wattwright.testing.Generator;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;

/** Existing holes only, against every combination. */
class HoleSolverTest {
  private static final Footprint BASE = Footprint.of(metres(0.6), metres(0.4));
  private static final List<Bolt> BOLTS =
      List.of(
          Bolt.of("M8", PropertyClass.CLASS_8_8),
          Bolt.of("M10", PropertyClass.CLASS_8_8),
          Bolt.of("M10", PropertyClass.CLASS_10_9));
  private static final AccelerationRules RULES = AccelerationRules.published("ncop14");

  static Stream<Generator> cases() {
    return Generator.cases(60);
  }

  private static Panel panel(double thicknessMm, double holeMm) {
    return Panel.of(
            Given.measured(millimetres(thicknessMm), "gauge"),
            Given.dataSheet(megapascals(270), "sheet"),
            millimetres(holeMm),
            millimetres(30))
        .withEdgeDistance(millimetres(25));
  }

  private static List<MountingHole> holes(Generator random, int count) {
    List<MountingHole> holes = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      holes.add(
          new MountingHole(
              "h" + i,
              metres(random.typed(0, 0.6, 2)),
              metres(random.typed(0, 0.4, 2)),
              panel(random.typed(1, 4, 1), random.oneOf(List.of(9.0, 10.5, 11.0)))));
    }
    return holes;
  }

  private static HoleSolver solver(double massKg, List<MountingHole> holes) {
    return HoleSolver.holding("box", Given.measured(kilograms(massKg), "scales"))
        .on(MountingFace.FLOOR, BASE, holes)
        .centre(metres(0.3), metres(0.2), metres(0.12))
        .bolts(BOLTS);
  }

  private static Retention retention(double massKg, List<Fixing> fixings) {
    return Retention.of("box", Given.measured(kilograms(massKg), "scales"))
        .on(MountingFace.FLOOR, FixingGroup.of(BASE, fixings))
        .centre(metres(0.3), metres(0.2), metres(0.12))
        .under(RULES)
        .build();
  }

  /** Every choice, counted in base (bolts + 1), judged by the public answer alone. */
  private static Optional<double[]> brute(double massKg, List<MountingHole> holes) {
    int base = BOLTS.size() + 1;
    double[] best = null;
    for (int code = 1; code < Math.pow(base, holes.size()); code++) {
      List<Fixing> fixings = decode(code, holes);
      if (fixings.isEmpty()) {
        continue;
      }
      Optional<Double> carried = retention(massKg, fixings).carriedMass().map(Kind.MASS::siValueOf);
      double area =
          fixings.stream()
              .mapToDouble(f -> Kind.AREA.siValueOf(f.bolt().thread().nominalStressArea()) * 1e6)
              .sum();
      double[] score = {fixings.size(), Math.rint(area * 1e6), -carried.orElse(0.0)};
      if (carried.isPresent() && carried.get() >= massKg && (best == null || less(score, best))) {
        best = score;
      }
    }
    return Optional.ofNullable(best);
  }

  private static boolean less(double[] a, double[] b) {
    for (int i = 0; i < a.length; i++) {
      if (a[i] != b[i]) {
        return a[i] < b[i];
      }
    }
    return false;
  }

  /** Empty if a bolt does not fit its hole. */
  private static List<Fixing> decode(int code, List<MountingHole> holes) {
    int base = BOLTS.size() + 1;
    List<Fixing> fixings = new ArrayList<>();
    int rest = code;
    for (MountingHole hole : holes) {
      int digit = rest % base;
      rest /= base;
      if (digit > 0 && !hole.takes(BOLTS.get(digit - 1))) {
        return List.of();
      }
      if (digit > 0) {
        fixings.add(hole.with(BOLTS.get(digit - 1)));
      }
    }
    return fixings;
  }

  @ParameterizedTest
  @MethodSource("cases")
  void agreesWithEveryCombination(Generator random) {
    List<MountingHole> holes = holes(random, random.count(2, 5));
    double massKg = random.typed(5, 60, 1);
    HoleChoice choice = solver(massKg, holes).under(RULES);
    Optional<double[]> brute = brute(massKg, holes);
    assertThat(choice.holds()).isEqualTo(brute.isPresent());
    if (brute.isPresent()) {
      double carriedKg = Kind.MASS.siValueOf(choice.carriedMass().orElseThrow());
      double area =
          choice.fixings().stream()
              .mapToDouble(f -> Kind.AREA.siValueOf(f.bolt().thread().nominalStressArea()) * 1e6)
              .sum();
      assertThat(choice.fixings()).hasSize((int) brute.get()[0]);
      assertThat(Math.rint(area * 1e6)).isEqualTo(brute.get()[1]);
      assertThat(carriedKg).isCloseTo(-brute.get()[2], within(1e-9 * carriedKg));
    }
  }

  /** Lightened to what the nearest choice carries, the holes suffice. */
  @ParameterizedTest
  @MethodSource("cases")
  void theRelaxationIsTheLeast(Generator random) {
    List<MountingHole> holes = holes(random, 4);
    HoleChoice choice = solver(400, holes).under(RULES);
    assertThat(choice.holds()).isFalse();
    double carriedKg = Kind.MASS.siValueOf(choice.carriedMass().orElseThrow());
    assertThat(solver(carriedKg * (1 - 1e-9), holes).under(RULES).holds()).isTrue();
    assertThat(solver(carriedKg * (1 + 1e-9), holes).under(RULES).holds()).isFalse();
    assertThat(choice.whyNone()).contains(choice.governing().orElseThrow().fixing());
  }

  @Test
  void boltsThatDoNotFitAreNotUsed() {
    MountingHole hole = new MountingHole("h", metres(0.1), metres(0.1), panel(2, 9));
    assertThat(hole.takes(Bolt.of("M8", PropertyClass.CLASS_8_8))).isTrue();
    assertThat(hole.takes(Bolt.of("M6", PropertyClass.CLASS_8_8))).isFalse();
    assertThat(hole.takes(Bolt.of("M10", PropertyClass.CLASS_8_8))).isFalse();
  }

  @Test
  void asManyHolesAsAskedFor() {
    List<MountingHole> four = new ArrayList<>();
    for (double uM : new double[] {0.05, 0.55}) {
      for (double vM : new double[] {0.05, 0.35}) {
        four.add(new MountingHole(uM + "/" + vM, metres(uM), metres(vM), panel(4, 9)));
      }
    }
    assertThat(solver(5, four)).hasToString("box, 5 kg, 4 holes");
    assertThat(solver(5, four).under(RULES).fixings()).hasSize(2);
    assertThat(solver(5, four).atLeast(3).under(RULES).fixings()).hasSize(3);
    assertThat(solver(5, four).atLeast(5).under(RULES).holds()).isFalse();
  }

  @Test
  void oneHoleIsNoPattern() {
    HoleChoice choice =
        solver(5, List.of(new MountingHole("h", metres(0.1), metres(0.1), panel(2, 9))))
            .under(RULES);
    assertThat(choice.holds()).isFalse();
    assertThat(choice.retention()).isEmpty();
    assertThat(choice.whyNone()).contains("one more hole");
    assertThat(choice.toString()).isEqualTo(choice.whyNone());
  }

  @Test
  void badInput() {
    List<MountingHole> holes = holes(Generator.ofSeed(3), 3);
    assertThatThrownBy(() -> solver(5, holes).under(AccelerationRules.of("none", Source.AS_GIVEN)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("HoleSolver.rules");
    assertThatThrownBy(
            () ->
                HoleSolver.holding("box", Given.measured(Measures.kilograms(5), "scales"))
                    .under(RULES))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("HoleSolver.holes");
    assertThatThrownBy(() -> solver(5, holes).on(MountingFace.FLOOR, BASE, List.of()))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("HoleSolver.holes");
    List<MountingHole> many = holes(Generator.ofSeed(3), 30);
    assertThatThrownBy(() -> solver(5, many).under(RULES))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("a million choices");
  }
}
