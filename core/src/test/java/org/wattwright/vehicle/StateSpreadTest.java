package org.wattwright.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.millimetres;

import java.util.List;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.check.Worksheet;
import org.wattwright.testing.Generator;
import org.wattwright.units.Kind;

/** What tolerances do to wheel loads, to the centre of gravity and to the change. */
class StateSpreadTest {
  private static final double TOLERANCE = 1e-9;

  static Stream<Generator> cases() {
    return Generator.cases(200);
  }

  private static double kg(Quantity<Mass> mass) {
    return Kind.MASS.siValueOf(mass);
  }

  private static double m(Quantity<Length> length) {
    return Kind.LENGTH.siValueOf(length);
  }

  private static LoadState kerb(WeighedVehicleBuilder van, MassItem... items) {
    return MassLedger.of(van.build()).adding(items).after(LoadCase.KERB);
  }

  private static MassItem box() {
    return Vans.item("box", 100, 1.155, 0.3)
        .withMassTolerance(kilograms(5))
        .withPositionTolerance(millimetres(50));
  }

  /**
   * By hand: c = d/(2·L) ± λ·y/T with λ = 220/360 in front, all corners of ±50 mm, 95 to 105 kg.
   */
  @Test
  void wheelsOfOneItem() {
    LoadState state = kerb(Vans.full().readingTolerance(kilograms(0.5)), box());
    Spread<Mass> left = state.wheelSpread().orElseThrow().frontLeft();
    double lambda = 220.0 / 360;
    double low = (1 - 1.205 / 2.31) / 2 + lambda * 0.25 / 1.25;
    double high = (1 - 1.105 / 2.31) / 2 + lambda * 0.35 / 1.25;
    double c = (1 - 1.155 / 2.31) / 2 + lambda * 0.3 / 1.25;
    assertThat(kg(left.lowest())).isCloseTo(284 - 0.5 + 95 * low, within(TOLERANCE));
    assertThat(kg(left.nominal())).isCloseTo(284 + 100 * c, within(TOLERANCE));
    assertThat(kg(left.highest())).isCloseTo(284 + 0.5 + 105 * high, within(TOLERANCE));
    double along = 100 * 0.05 / 2.31 / 2;
    double across = 100 * lambda * 0.05 / 1.25;
    double likely = Math.sqrt(0.25 + 25 * c * c + along * along + across * across);
    assertThat(kg(left.rootSumSquare())).isCloseTo(likely, within(TOLERANCE));
  }

  @Test
  void wheelsAreUnknownWhereTheirLoadsAre() {
    assertThat(MassLedger.of(Vans.plain()).after(LoadCase.KERB).wheelSpread()).isEmpty();
  }

  /** By hand: (470·2.31 + 100·1.155)/1130 at the middle; ends with all corners tried. */
  @Test
  void centreOfOneItem() {
    WeighedVehicle van =
        WeighedVehicle.withWheelbase(metres(2.31))
            .frontAxle(kilograms(560))
            .rearAxle(kilograms(470))
            .build();
    Spread<Length> along =
        MassLedger.of(van).adding(box()).after(LoadCase.KERB).centreSpread().behindFrontAxle();
    // Nominal centre 1.063 m: the box lies behind it, so light and forward is the lowest.
    assertThat(m(along.lowest())).isCloseTo((470 * 2.31 + 95 * 1.105) / 1125, within(TOLERANCE));
    assertThat(m(along.highest())).isCloseTo((470 * 2.31 + 105 * 1.205) / 1135, within(TOLERANCE));
    double centre = (470 * 2.31 + 100 * 1.155) / 1130;
    assertThat(m(along.nominal())).isCloseTo(centre, within(TOLERANCE));
    double likely = Math.hypot((1.155 - centre) * 5 / 1130, 100 * 0.05 / 1130);
    assertThat(m(along.rootSumSquare())).isCloseTo(likely, within(TOLERANCE));
  }

  @Test
  void heightHasTheBandOfAnAxleLift() {
    AxleLift lift =
        AxleLift.of(Vans.full().build(), Axle.REAR)
            .reading(kilograms(590))
            .rise(metres(0.6))
            .frontLoadedRadius(metres(0.3))
            .rearLoadedRadius(metres(0.3))
            .scaleResolution(kilograms(1))
            .build();
    LoadState state = kerb(Vans.full().centreOfGravityHeight(lift));
    Spread<Length> height = state.centreSpread().aboveGround().orElseThrow();
    assertThat(m(height.nominal())).isCloseTo(m(lift.height()), within(TOLERANCE));
    assertThat(m(height.lowest()))
        .isCloseTo(m(lift.height()) - m(lift.worstCase()), within(TOLERANCE));
    assertThat(m(height.highest()))
        .isCloseTo(m(lift.height()) + m(lift.worstCase()), within(TOLERANCE));
    assertThat(state.stance().orElseThrow().extremes()).hasSize(2);
  }

  @Test
  void changeKnowsNeitherScalesNorPeople() {
    WeighedVehicle van = Vans.full().readingTolerance(kilograms(3)).build();
    MassLedger ledger = MassLedger.of(van).removing(Vans.item("engine", 120, 0, 0)).adding(box());
    LoadCase laden = LoadCase.KERB.plus(box());
    LoadSpread change = ledger.after(laden).changeSpread();
    assertThat(change).isEqualTo(ledger.after(LoadCase.KERB).changeSpread());
    assertThat(kg(change.total().lowest())).isCloseTo(-120 + 95, within(TOLERANCE));
    assertThat(kg(change.total().highest())).isCloseTo(-120 + 105, within(TOLERANCE));
    assertThat(kg(change.rear().lowest())).isCloseTo(95 * 1.105 / 2.31, within(TOLERANCE));
    assertThat(kg(change.front().nominal())).isCloseTo(-120 + 50, within(TOLERANCE));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void everyVehicleWithinItsTolerancesLiesWithinTheWorstCase(Generator random) {
    MassLedger ledger = Vans.ledger(random);
    LoadState state = ledger.after(LoadCase.KERB);
    LoadState shaken =
        MassLedger.of(ledger.vehicle())
            .removing(ledger.removed().stream().map(i -> shake(i, random)).toList())
            .adding(ledger.added().stream().map(i -> shake(i, random)).toList())
            .after(LoadCase.KERB);
    CentreOfGravity centre = shaken.centreOfGravity();
    CentreSpread spread = state.centreSpread();
    assertInside(centre.behindFrontAxle(), spread.behindFrontAxle());
    assertInside(centre.leftOfCentre().orElseThrow(), spread.leftOfCentre().orElseThrow());
    assertInside(centre.aboveGround().orElseThrow(), spread.aboveGround().orElseThrow());
    WheelSpread wheels = state.wheelSpread().orElseThrow();
    for (Axle axle : Axle.values()) {
      for (Side side : Side.values()) {
        Spread<Mass> wheel = wheels.on(axle, side);
        assertThat(kg(shaken.wheels().orElseThrow().on(axle, side)))
            .isBetween(kg(wheel.lowest()) - TOLERANCE, kg(wheel.highest()) + TOLERANCE);
        assertThat(kg(wheel.nominal()))
            .isCloseTo(kg(state.wheels().orElseThrow().on(axle, side)), within(TOLERANCE));
      }
    }
  }

  private static void assertInside(Quantity<Length> length, Spread<Length> spread) {
    assertThat(m(length))
        .isBetween(m(spread.lowest()) - TOLERANCE, m(spread.highest()) + TOLERANCE);
    double half = (m(spread.highest()) - m(spread.lowest())) / 2;
    assertThat(m(spread.rootSumSquare())).isLessThanOrEqualTo(half * 1.001);
  }

  /** The end that repetition finds is the best of all corners. */
  @ParameterizedTest
  @MethodSource("cases")
  void worstCaseOfTheCentreIsReachedAtACorner(Generator random) {
    List<MassItem> items = Vans.items(random, 3);
    LoadState state = MassLedger.of(Vans.full().build()).adding(items).after(LoadCase.KERB);
    double highest = Double.NEGATIVE_INFINITY;
    for (int corner = 0; corner < 64; corner++) {
      double moment = 470 * 2.31;
      double mass = 1030;
      for (int i = 0; i < 3; i++) {
        MassItem item = items.get(i);
        double kg = item.massKg() + sign(corner, 2 * i) * item.massToleranceKg();
        double d = item.position().behindM() + sign(corner, 2 * i + 1) * item.positionToleranceM();
        moment += Math.max(0, kg) * d;
        mass += Math.max(0, kg);
      }
      highest = Math.max(highest, moment / mass);
    }
    assertThat(m(state.centreSpread().behindFrontAxle().highest()))
        .isCloseTo(highest, within(TOLERANCE));
  }

  private static int sign(int corner, int bit) {
    return (corner >> bit & 1) == 0 ? -1 : 1;
  }

  private static MassItem shake(MassItem item, Generator random) {
    Position p = item.position();
    double t = item.positionToleranceM();
    Position place =
        Vans.at(
            p.behindM() + end(random) * t,
            p.leftM() + end(random) * t,
            p.heightM() + end(random) * t);
    double kg = Math.max(0, item.massKg() + end(random) * item.massToleranceKg());
    MassItem shaken = MassItem.of(item.name(), kilograms(kg), place);
    return item.isUnsprung() ? shaken.onAxle() : shaken;
  }

  private static double end(Generator random) {
    return random.chance(0.8) ? (random.chance(0.5) ? 1 : -1) : random.between(-1, 1);
  }

  @Test
  void worksheetEndsWithTheFiguresOfTheSpreads() {
    LoadState state = kerb(Vans.full().readingTolerance(kilograms(0.5)), box());
    Worksheet sheet = state.spreadWorksheet();
    assertThat(mass(sheet, "m_f_max")).isEqualTo(state.spread().front().highest());
    assertThat(mass(sheet, "Δm_r_min")).isEqualTo(state.changeSpread().rear().lowest());
    assertThat(mass(sheet, "σ(m_t)")).isEqualTo(state.spread().total().rootSumSquare());
    assertThat(mass(sheet, "m_rl_max"))
        .isEqualTo(state.wheelSpread().orElseThrow().rearLeft().highest());
    assertThat(sheet.step("h_max").orElseThrow().result().quantity(Kind.LENGTH))
        .isEqualTo(state.centreSpread().aboveGround().orElseThrow().highest());
  }

  private static Quantity<Mass> mass(Worksheet sheet, String symbol) {
    return sheet.step(symbol).orElseThrow().result().quantity(Kind.MASS);
  }
}
