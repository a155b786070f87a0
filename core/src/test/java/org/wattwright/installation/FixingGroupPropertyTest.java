package org.wattwright.installation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.inches;
import static org.wattwright.units.Measures.kilonewtons;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.newtons;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.Generator;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/** What every bolt group keeps: balance, contact that only presses, symmetry, least energy. */
class FixingGroupPropertyTest {
  private static final Bolt M8 = Bolt.of("M8", PropertyClass.CLASS_8_8);
  private static final Bolt M10 = Bolt.of("M10", PropertyClass.CLASS_8_8);
  private static final Footprint BASE = Footprint.of(metres(0.6), metres(0.4));

  static Stream<Generator> cases() {
    return Generator.cases(300);
  }

  private static FixingGroup random(Generator random, int count) {
    List<Fixing> fixings = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      fixings.add(
          Fixing.at(
              "f" + i,
              metres(random.between(0, 0.6)),
              metres(random.between(0, 0.4)),
              random.oneOf(List.of(M8, M10))));
    }
    return FixingGroup.of(BASE, fixings);
  }

  private static GroupLoad load(Generator random) {
    return new GroupLoad(
        newtons(random.between(-30000, 30000)),
        newtons(random.between(-30000, 30000)),
        newtons(random.between(-20000, 20000)),
        metres(random.between(0.1, 0.5)),
        metres(random.between(0.1, 0.3)),
        metres(random.between(0, 0.4)));
  }

  private static double n(javax.measure.Quantity<javax.measure.quantity.Force> force) {
    return Kind.FORCE.siValueOf(force);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void forcesAndMomentsBalance(Generator random) {
    FixingGroup group = random(random, random.count(3, 9));
    GroupLoad load = load(random);
    GroupReactions held = group.reactions(load).orElseThrow();
    double[] f = load.forceN();
    double[] p = load.pointM();
    double[] sum = {f[0], f[1], f[2], p[0] * f[1] - p[1] * f[0], 0, 0};
    sum[4] = f[2] * p[0] - f[0] * p[2];
    sum[5] = f[2] * p[1] - f[1] * p[2];
    for (int i = 0; i < group.fixings().size(); i++) {
      FixingReaction each = held.fixings().get(i);
      double u = Kind.LENGTH.siValueOf(group.fixings().get(i).u());
      double v = Kind.LENGTH.siValueOf(group.fixings().get(i).v());
      sum[0] -= n(each.shearU());
      sum[1] -= n(each.shearV());
      sum[3] -= u * n(each.shearV()) - v * n(each.shearU());
      sum[2] -= n(each.tension());
      sum[4] -= u * n(each.tension());
      sum[5] -= v * n(each.tension());
    }
    double[] cornerU = {0, 0.6, 0.6, 0};
    double[] cornerV = {0, 0, 0.4, 0.4};
    for (int j = 0; j < 4; j++) {
      double press = n(held.corners().get(j));
      sum[2] += press;
      sum[4] += cornerU[j] * press;
      sum[5] += cornerV[j] * press;
    }
    double scaleN = Math.abs(f[0]) + Math.abs(f[1]) + Math.abs(f[2]);
    for (double each : sum) {
      assertThat(each / scaleN).isCloseTo(0, within(1e-12));
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void faceOnlyPressesAndBoltsOnlyPull(Generator random) {
    GroupLoad load = load(random);
    GroupReactions held = random(random, random.count(3, 9)).reactions(load).orElseThrow();
    double rounding = 1e-9 * 1e5;
    assertThat(held.corners()).allSatisfy(c -> assertThat(n(c)).isGreaterThan(-rounding));
    assertThat(held.fixings())
        .allSatisfy(each -> assertThat(n(each.tension())).isGreaterThan(-rounding));
  }

  /** Least energy: Σf²/k never rises with a further bolt, whatever its place. */
  @ParameterizedTest
  @MethodSource("cases")
  void oneMoreBoltNeverRaisesTheEnergy(Generator random) {
    FixingGroup group = random(random, random.count(3, 7));
    GroupLoad load = load(random);
    List<Fixing> more = new ArrayList<>(group.fixings());
    more.add(Fixing.at("more", metres(random.between(0, 0.6)), metres(random.between(0, 0.4)), M8));
    double before = energy(group, load);
    assertThat(energy(FixingGroup.of(BASE, more), load)).isLessThanOrEqualTo(before * (1 + 1e-9));
  }

  private static double energy(FixingGroup group, GroupLoad load) {
    GroupReactions held = group.reactions(load).orElseThrow();
    double sum = 0;
    for (int i = 0; i < held.fixings().size(); i++) {
      double stiffness =
          Kind.AREA.siValueOf(group.fixings().get(i).bolt().thread().nominalStressArea());
      FixingReaction each = held.fixings().get(i);
      sum +=
          (n(each.shear()) * n(each.shear()) + n(each.tension()) * n(each.tension())) / stiffness;
    }
    return sum;
  }

  /** A second bolt at every place halves the forces. */
  @ParameterizedTest
  @MethodSource("cases")
  void moreBoltsOfTheSamePatternNeverLoadTheWorstMore(Generator random) {
    GroupLoad load = load(random);
    FixingGroup single = random(random, random.count(3, 6));
    List<Fixing> doubled = new ArrayList<>(single.fixings());
    for (Fixing each : single.fixings()) {
      doubled.add(Fixing.at(each.name() + " again", each.u(), each.v(), each.bolt()));
    }
    GroupReactions one = single.reactions(load).orElseThrow();
    GroupReactions two = FixingGroup.of(BASE, doubled).reactions(load).orElseThrow();
    assertThat(n(two.highestShear())).isCloseTo(n(one.highestShear()) / 2, within(1e-6));
    assertThat(n(two.highestTension())).isCloseTo(n(one.highestTension()) / 2, within(1e-6));
  }

  /** Bolts spread in rows of more and more over the same rectangle, ends kept. */
  @ParameterizedTest
  @MethodSource("cases")
  void anotherSymmetricRowNeverLoadsTheWorstMore(Generator random) {
    double shearN = random.between(1000, 30000);
    double heightM = random.between(0.02, 0.5);
    double last = Double.POSITIVE_INFINITY;
    double lastTension = Double.POSITIVE_INFINITY;
    for (int rows = 2; rows <= 6; rows++) {
      List<Fixing> fixings = new ArrayList<>();
      for (int row = 0; row < rows; row++) {
        for (double vM : new double[] {0.05, 0.35}) {
          fixings.add(
              Fixing.at(row + "/" + vM, metres(0.05 + 0.5 * row / (rows - 1)), metres(vM), M8));
        }
      }
      GroupReactions held =
          FixingGroup.of(BASE, fixings)
              .reactions(
                  new GroupLoad(
                      newtons(shearN),
                      newtons(0),
                      newtons(0),
                      metres(0.3),
                      metres(0.3),
                      metres(heightM)))
              .orElseThrow();
      assertThat(n(held.highestShear())).isLessThan(last);
      assertThat(n(held.highestTension())).isLessThan(lastTension);
      last = n(held.highestShear());
      lastTension = n(held.highestTension());
    }
  }

  /** A bolt further out than a tight ring takes more than any of the ring did. */
  @Test
  void aBoltFurtherOutMayCarryMoreThanTheWorstBefore() {
    List<Fixing> ring = new ArrayList<>();
    for (int i = 0; i < 16; i++) {
      double angle = i * Math.PI / 8;
      ring.add(
          Fixing.at(
              "r" + i,
              metres(0.3 + 0.02 * Math.cos(angle)),
              metres(0.2 + 0.02 * Math.sin(angle)),
              M8));
    }
    GroupLoad twist =
        new GroupLoad(newtons(1e-3), newtons(0), newtons(0), metres(0.3), metres(1e6), metres(0));
    double before = n(FixingGroup.of(BASE, ring).reactions(twist).orElseThrow().highestShear());
    ring.add(Fixing.at("out", metres(0.36), metres(0.2), M8));
    ring.add(Fixing.at("out too", metres(0.24), metres(0.2), M8));
    assertThat(n(FixingGroup.of(BASE, ring).reactions(twist).orElseThrow().highestShear()))
        .isGreaterThan(before);
  }

  @Test
  void symmetricPatternCarriesSymmetricForces() {
    List<Fixing> fixings = new ArrayList<>();
    for (double uM : new double[] {0.1, 0.5}) {
      for (double vM : new double[] {0.1, 0.3}) {
        fixings.add(Fixing.at(uM + "/" + vM, metres(uM), metres(vM), M8));
      }
    }
    GroupReactions held =
        FixingGroup.of(BASE, fixings)
            .reactions(
                new GroupLoad(
                    newtons(-9000),
                    newtons(0),
                    newtons(2000),
                    metres(0.3),
                    metres(0.2),
                    metres(0.2)))
            .orElseThrow();
    assertThat(n(held.of("0.1/0.1").tension()))
        .isCloseTo(n(held.of("0.1/0.3").tension()), within(1e-9));
    assertThat(n(held.of("0.5/0.1").tension()))
        .isCloseTo(n(held.of("0.5/0.3").tension()), within(1e-9))
        .isGreaterThan(n(held.of("0.1/0.1").tension()));
    assertThat(held.fixings())
        .allSatisfy(each -> assertThat(n(each.shear())).isCloseTo(2250, within(1e-9)));
  }

  @Test
  void unitsDoNotMatter() {
    Footprint inInches = Footprint.of(inches(20), inches(10));
    Footprint inMillimetres = Footprint.of(millimetres(508), millimetres(254));
    FixingGroup a =
        FixingGroup.of(
            inInches,
            List.of(
                Fixing.at("a", inches(1), inches(1), M8),
                Fixing.at("b", inches(19), inches(1), M8),
                Fixing.at("c", inches(10), inches(9), M8)));
    FixingGroup b =
        FixingGroup.of(
            inMillimetres,
            List.of(
                Fixing.at("a", millimetres(25.4), millimetres(25.4), M8),
                Fixing.at("b", millimetres(482.6), millimetres(25.4), M8),
                Fixing.at("c", millimetres(254), millimetres(228.6), M8)));
    GroupLoad inN =
        new GroupLoad(newtons(4000), newtons(-3000), newtons(0), inches(9), inches(4), inches(5));
    GroupLoad inKn =
        new GroupLoad(
            kilonewtons(4),
            kilonewtons(-3),
            kilonewtons(0),
            millimetres(228.6),
            millimetres(101.6),
            millimetres(127));
    GroupReactions first = a.reactions(inN).orElseThrow();
    GroupReactions second = b.reactions(inKn).orElseThrow();
    assertThat(n(first.highestTension())).isCloseTo(n(second.highestTension()), within(1e-8));
    assertThat(n(first.highestShear())).isCloseTo(n(second.highestShear()), within(1e-8));
  }

  @Test
  void pressedOnPullsNoBolt() {
    GroupReactions held =
        random(Generator.ofSeed(7), 4)
            .reactions(
                new GroupLoad(
                    newtons(0), newtons(0), newtons(-5000), metres(0.3), metres(0.1), metres(0.2)))
            .orElseThrow();
    assertThat(n(held.highestTension())).isZero();
    assertThat(held.corners().stream().mapToDouble(FixingGroupPropertyTest::n).sum())
        .isCloseTo(5000, within(1e-9));
  }

  @Test
  void noLoadNoForce() {
    GroupReactions held =
        random(Generator.ofSeed(8), 4)
            .reactions(
                new GroupLoad(
                    newtons(0), newtons(0), newtons(0), metres(0.3), metres(0.1), metres(0.2)))
            .orElseThrow();
    assertThat(n(held.highestTension())).isZero();
    assertThat(n(held.highestShear())).isZero();
  }

  @Test
  void oneBoltDoesNotHoldAgainstTurning() {
    FixingGroup one = FixingGroup.of(BASE, List.of(Fixing.at("a", metres(0.3), metres(0.2), M8)));
    GroupLoad aside =
        new GroupLoad(newtons(100), newtons(0), newtons(0), metres(0.3), metres(0.25), metres(0));
    GroupLoad centred =
        new GroupLoad(newtons(100), newtons(0), newtons(0), metres(0.3), metres(0.2), metres(0.1));
    assertThat(one.reactions(aside)).isEmpty();
    assertThat(n(one.reactions(centred).orElseThrow().highestTension()))
        .isCloseTo(100 * 0.1 / 0.3, within(1e-9));
  }

  @Test
  void aRowAtTheEdgeDoesNotHoldAgainstTippingOverIt() {
    FixingGroup row =
        FixingGroup.of(
            BASE,
            List.of(
                Fixing.at("a", metres(0.6), metres(0.1), M8),
                Fixing.at("b", metres(0.6), metres(0.3), M8)));
    GroupLoad forward =
        new GroupLoad(newtons(1000), newtons(0), newtons(0), metres(0.3), metres(0.2), metres(0.2));
    GroupLoad rearward =
        new GroupLoad(
            newtons(-1000), newtons(0), newtons(0), metres(0.3), metres(0.2), metres(0.2));
    assertThat(row.reactions(forward)).isEmpty();
    assertThat(n(row.reactions(rearward).orElseThrow().highestTension()))
        .isCloseTo(1000 * 0.2 / 0.6 / 2, within(1e-9));
  }

  @Test
  void badInput() {
    Fixing inside = Fixing.at("a", metres(0.3), metres(0.2), M8);
    assertThatThrownBy(() -> FixingGroup.of(BASE, List.of()))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("FixingGroup.fixings");
    assertThatThrownBy(() -> FixingGroup.of(BASE, List.of(inside, inside)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("different names");
    assertThatThrownBy(
            () -> FixingGroup.of(BASE, List.of(Fixing.at("b", metres(0.61), metres(0.2), M8))))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("within the footprint");
    assertThatThrownBy(() -> Footprint.of(metres(0), metres(1)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("Footprint.highU");
  }
}
