package org.wattwright.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.inches;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.pounds;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.Generator;
import org.wattwright.units.Kind;
import org.wattwright.units.WorkshopUnits;

/** What holds for every ledger. */
class LoadPropertyTest {
  /** Relative rounding of our own algebra, on totals near 1000 kg. */
  private static final double KG = 1e-9;

  static Stream<Generator> cases() {
    return Generator.cases(150);
  }

  private static double kg(Quantity<Mass> mass) {
    return Kind.MASS.siValueOf(mass);
  }

  private static double m(Quantity<Length> length) {
    return Kind.LENGTH.siValueOf(length);
  }

  private static LoadState kerb(MassLedger ledger) {
    return ledger.after(LoadCase.KERB);
  }

  private static double signedSum(
      MassLedger ledger, java.util.function.ToDoubleFunction<MassItem> of) {
    return ledger.added().stream().mapToDouble(of).sum()
        - ledger.removed().stream().mapToDouble(of).sum();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void massesAndMomentsBalance(Generator random) {
    MassLedger ledger = Vans.ledger(random);
    LoadState state = kerb(ledger);
    double total = 1030 + signedSum(ledger, MassItem::massKg);
    double moment =
        2.31 * 470 + signedSum(ledger, i -> i.massKg() * m(i.position().behindFrontAxle()));
    double height =
        1030 * 0.54
            + signedSum(ledger, i -> i.massKg() * m(i.position().aboveGround().orElseThrow()));
    assertThat(kg(state.total())).isCloseTo(total, within(KG));
    assertThat(kg(state.axles().rear()) * 2.31).isCloseTo(moment, within(KG));
    CentreOfGravity centre = state.centreOfGravity();
    assertThat(m(centre.behindFrontAxle()) * total).isCloseTo(moment, within(KG));
    assertThat(m(centre.aboveGround().orElseThrow()) * total).isCloseTo(height, within(KG));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void wheelLoadsSumToAxlesAndCarryTheLateralMoment(Generator random) {
    MassLedger ledger = Vans.ledger(random);
    LoadState state = kerb(ledger);
    WheelLoads wheels = state.wheels().orElseThrow();
    assertThat(kg(wheels.axles().front())).isCloseTo(kg(state.axles().front()), within(KG));
    assertThat(kg(wheels.axles().rear())).isCloseTo(kg(state.axles().rear()), within(KG));
    assertThat(kg(wheels.total())).isCloseTo(kg(state.total()), within(KG));
    double left = (284 - 276) * 1.25 / 2 + (240 - 230) * 1.24 / 2;
    double moment =
        left + signedSum(ledger, i -> i.massKg() * m(i.position().leftOfCentre().orElseThrow()));
    assertThat(m(state.centreOfGravity().leftOfCentre().orElseThrow()) * kg(state.total()))
        .isCloseTo(moment, within(KG));
    double[] w = wheels.kg();
    assertThat((w[0] - w[1]) * 1.25 / 2 + (w[2] - w[3]) * 1.24 / 2).isCloseTo(moment, within(KG));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void rollStiffnessSplitsTheMomentOfSprungMass(Generator random) {
    double leftM = random.between(-0.6, 0.6);
    MassItem item = Vans.item("box", 50, 1.0, leftM);
    double[] before = kerb(MassLedger.of(Vans.full().build())).wheels().orElseThrow().kg();
    double[] after =
        kerb(MassLedger.of(Vans.full().build()).adding(item)).wheels().orElseThrow().kg();
    double lean = (after[0] - after[1] - before[0] + before[1]) * 1.25 / 2;
    assertThat(lean).isCloseTo(220.0 / 360 * 50 * leftM, within(KG));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void mirrorSymmetry(Generator random) {
    MassLedger ledger = Vans.ledger(random);
    MassLedger mirrored =
        MassLedger.of(
                Vans.full()
                    .frontLeft(kilograms(276))
                    .frontRight(kilograms(284))
                    .rearLeft(kilograms(230))
                    .rearRight(kilograms(240))
                    .build())
            .removing(ledger.removed().stream().map(LoadPropertyTest::mirror).toList())
            .adding(ledger.added().stream().map(LoadPropertyTest::mirror).toList());
    double[] w = kerb(ledger).wheels().orElseThrow().kg();
    double[] v = kerb(mirrored).wheels().orElseThrow().kg();
    assertThat(v).containsExactly(new double[] {w[1], w[0], w[3], w[2]}, within(KG));
    assertThat(m(kerb(mirrored).centreOfGravity().leftOfCentre().orElseThrow()))
        .isCloseTo(-m(kerb(ledger).centreOfGravity().leftOfCentre().orElseThrow()), within(1e-12));
  }

  private static MassItem mirror(MassItem item) {
    Position place = item.position();
    MassItem mirrored =
        MassItem.of(
            item.name(),
            item.mass(),
            Position.behindFrontAxle(place.behindFrontAxle())
                .rightOfCentre(place.leftOfCentre().orElseThrow())
                .aboveGround(place.aboveGround().orElseThrow()));
    return item.isUnsprung() ? mirrored.onAxle() : mirrored;
  }

  @ParameterizedTest
  @MethodSource("cases")
  void massAtAnAxleChangesOnlyThatAxle(Generator random) {
    MassLedger ledger = Vans.ledger(random);
    AxleLoads before = kerb(ledger).axles();
    double addedKg = random.between(0, 200);
    AxleLoads front = kerb(ledger.adding(Vans.item("front", addedKg, 0, 0.1))).axles();
    assertThat(kg(front.rear())).isCloseTo(kg(before.rear()), within(KG));
    assertThat(kg(front.front())).isCloseTo(kg(before.front()) + addedKg, within(KG));
    AxleLoads rear = kerb(ledger.adding(Vans.item("rear", addedKg, 2.31, 0.1))).axles();
    assertThat(kg(rear.front())).isCloseTo(kg(before.front()), within(KG));
    assertThat(kg(rear.rear())).isCloseTo(kg(before.rear()) + addedKg, within(KG));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void orderOfItemsDoesNotMatter(Generator random) {
    MassLedger ledger = Vans.ledger(random);
    List<MassItem> reversed = new ArrayList<>(ledger.added());
    Collections.reverse(reversed);
    MassLedger other = MassLedger.of(ledger.vehicle()).adding(reversed).removing(ledger.removed());
    assertThat(kerb(other).wheels().orElseThrow().kg())
        .containsExactly(kerb(ledger).wheels().orElseThrow().kg(), within(KG));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void unitsDoNotMatter(Generator random) {
    double kg = random.between(1, 200);
    double behindM = random.between(-1, 4);
    double lb = kg / 0.45359237;
    MassItem metric = MassItem.of("box", kilograms(kg), Position.behindFrontAxle(metres(behindM)));
    MassItem imperial =
        MassItem.of("box", pounds(lb), Position.behindFrontAxle(inches(behindM / 0.0254)));
    WeighedVehicle inImperial =
        WeighedVehicle.withWheelbase(inches(2.31 / 0.0254))
            .frontAxle(pounds(560 / 0.45359237))
            .rearAxle(pounds(470 / 0.45359237))
            .build();
    AxleLoads ours = kerb(MassLedger.of(Vans.plain()).adding(metric)).axles();
    AxleLoads theirs = kerb(MassLedger.of(inImperial).adding(imperial)).axles();
    assertThat(kg(theirs.front()) / kg(ours.front())).isCloseTo(1, within(1e-12));
    assertThat(kg(theirs.rear()) / kg(ours.rear())).isCloseTo(1, within(1e-12));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void loadsAreLinearInTheInfluence(Generator random) {
    MassLedger ledger = Vans.ledger(random);
    Position place = Vans.at(random.between(-0.8, 3.2), random.between(-0.6, 0.6), 0.4);
    double addedKg = random.between(0, 150);
    LoadInfluence influence = ledger.influenceOf(place);
    WheelLoads before = kerb(ledger).wheels().orElseThrow();
    WheelLoads after =
        kerb(ledger.adding(MassItem.of("box", kilograms(addedKg), place))).wheels().orElseThrow();
    for (Axle axle : Axle.values()) {
      for (Side side : Side.values()) {
        assertThat(kg(after.on(axle, side)))
            .isCloseTo(kg(before.on(axle, side)) + addedKg * influence.on(axle, side), within(KG));
      }
      assertThat(influence.on(axle, Side.LEFT) + influence.on(axle, Side.RIGHT))
          .isCloseTo(influence.on(axle), within(1e-12));
    }
    assertThat(influence.on(Axle.FRONT) + influence.on(Axle.REAR)).isCloseTo(1, within(1e-12));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void removingWhatWasAddedRestoresTheVehicle(Generator random) {
    List<MassItem> items = Vans.items(random, 4);
    AxleLoads axles =
        kerb(MassLedger.of(Vans.full().build()).adding(items).removing(items)).axles();
    assertThat(kg(axles.front())).isCloseTo(560, within(KG));
    assertThat(kg(axles.rear())).isCloseTo(470, within(KG));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void everyVehicleWithinItsTolerancesLiesWithinTheWorstCase(Generator random) {
    MassLedger ledger = Vans.ledger(random);
    LoadSpread spread = kerb(ledger).spread();
    MassLedger shaken =
        MassLedger.of(ledger.vehicle())
            .removing(ledger.removed().stream().map(i -> shake(i, random)).toList())
            .adding(ledger.added().stream().map(i -> shake(i, random)).toList());
    AxleLoads axles = kerb(shaken).axles();
    for (Axle axle : Axle.values()) {
      Spread<Mass> load = spread.on(axle);
      assertThat(kg(axles.on(axle))).isBetween(kg(load.lowest()) - KG, kg(load.highest()) + KG);
      assertThat(kg(load.nominal())).isCloseTo(kg(kerb(ledger).axles().on(axle)), within(KG));
      double halfKg = (kg(load.highest()) - kg(load.lowest())) / 2;
      assertThat(kg(load.rootSumSquare())).isLessThanOrEqualTo(halfKg + KG);
    }
    assertThat(kg(axles.total()))
        .isBetween(kg(spread.total().lowest()) - KG, kg(spread.total().highest()) + KG);
  }

  /** Mostly at an end of its tolerance, where a wrong interval shows. */
  private static MassItem shake(MassItem item, Generator random) {
    double kg = item.massKg() + end(random) * item.massToleranceKg();
    double behindM = item.position().behindM() + end(random) * item.positionToleranceM();
    Position place = Vans.at(behindM, 0, 0.5);
    return MassItem.of(item.name(), kilograms(Math.max(0, kg)), place);
  }

  private static double end(Generator random) {
    return random.chance(0.8) ? (random.chance(0.5) ? 1 : -1) : random.between(-1, 1);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void springsFeelOnlySprungMass(Generator random) {
    MassLedger ledger = Vans.ledger(random);
    double sprungKg =
        signedSum(ledger, i -> i.isUnsprung() ? 0 : i.massKg() * i.position().behindM() / 2.31);
    assertThat(kg(kerb(ledger).sprungChange(Axle.REAR))).isCloseTo(sprungKg, within(KG));
    AxleSpring spring =
        AxleSpring.of(Axle.REAR, WorkshopUnits.NEWTON_PER_MILLIMETRE.of(18), metres(0.075));
    double deflectionM = m(spring.deflection(kerb(ledger)));
    assertThat(deflectionM).isCloseTo(sprungKg * 9.80665 / 36000, within(1e-12));
    assertThat(m(spring.remainingTravel(kerb(ledger))))
        .isCloseTo(0.075 - deflectionM, within(1e-12));
  }
}
