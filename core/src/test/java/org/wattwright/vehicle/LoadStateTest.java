package org.wattwright.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.millimetres;

import java.util.List;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;
import org.wattwright.check.Basis;
import org.wattwright.check.Step;
import org.wattwright.check.Worksheet;
import org.wattwright.units.Kind;

/** Load cases, what is missing, spreads and worksheets of a ledger. */
class LoadStateTest {
  private static final Seating SEATS =
      Seating.driverAt(Vans.at(1.15, 0.33, 0.6))
          .row("front passenger", 1, Vans.at(1.15, -0.33, 0.6))
          .row("rear bench", 2, Vans.at(1.95, 0, 0.6));

  private static MassLedger van() {
    return MassLedger.of(Vans.full().build());
  }

  @Test
  void loadCasesCarryTheirPeople() {
    assertThat(van().after(LoadCase.KERB).total()).isEqualTo(kilograms(1030));
    assertThat(van().after(LoadCase.withDriver(SEATS)).total()).isEqualTo(kilograms(1105));
    assertThat(van().after(LoadCase.allSeats(SEATS)).total()).isEqualTo(kilograms(1330));
    assertThat(SEATS.occupants()).isEqualTo(4);
  }

  @Test
  void luggageGoesToTheLuggageSpace() {
    Seating seats =
        SEATS.luggageAt(Vans.at(2.6, 0, 0.6)).occupantsOf(OccupantMass.WITH_LUGGAGE_68_7_KG);
    LoadCase all = LoadCase.allSeats(seats);
    MassItem luggage = all.load().get(all.load().size() - 1);
    assertThat(luggage.mass()).isEqualTo(kilograms(28));
    assertThat(luggage.position()).isEqualTo(seats.luggagePlace().orElseThrow());
    assertThat(van().after(all).total()).isEqualTo(kilograms(1330));
    assertThat(van().after(LoadCase.withDriver(seats)).total()).isEqualTo(kilograms(1105));
  }

  @Test
  void goodsFillUpToTheGrossMass() {
    LoadCase laden =
        van().ladenTo(kilograms(1500), LoadCase.withDriver(SEATS), Vans.at(2.0, 0, 0.7));
    assertThat(laden.name()).isEqualTo("fully laden");
    assertThat(van().after(laden).total()).isEqualTo(kilograms(1500));
    LoadCase nothingLeft =
        van().ladenTo(kilograms(1100), LoadCase.withDriver(SEATS), Vans.at(2, 0, 1));
    assertThat(nothingLeft.load()).hasSize(1);
  }

  @Test
  void changeIsThatOfTheConversionInTheSameLoadCase() {
    MassLedger ledger =
        van().removing(Vans.item("engine", 165, 0.05, 0)).adding(Vans.item("box", 126, 2.62, 0));
    LoadState laden = ledger.after(LoadCase.allSeats(SEATS));
    LoadState kerb = ledger.after(LoadCase.KERB);
    assertThat(Kind.MASS.siValueOf(laden.change().total())).isCloseTo(-39, within(1e-9));
    assertThat(Kind.MASS.siValueOf(laden.change().front()))
        .isCloseTo(Kind.MASS.siValueOf(kerb.change().front()), within(1e-9));
    assertThat(laden.before().total()).isEqualTo(kilograms(1330));
  }

  @Test
  void wheelLoadsNeedCornerWeightsTracksRollStiffnessAndPlaces() {
    Position unknown = Position.behindFrontAxle(metres(1));
    LoadState state =
        MassLedger.of(Vans.plain())
            .adding(MassItem.of("box", kilograms(10), unknown))
            .after(LoadCase.KERB);
    assertThat(state.wheels()).isEmpty();
    assertThat(state.missingForWheels())
        .containsExactly(
            "WeighedVehicle.wheel readings",
            "WeighedVehicle.rollStiffness",
            "WeighedVehicle.frontTrack",
            "WeighedVehicle.rearTrack",
            "leftOfCentre of box");
    assertThat(state.centreOfGravity().leftOfCentre()).isEmpty();
    assertThat(van().after(LoadCase.KERB).missingForWheels()).isEmpty();
  }

  @Test
  void massesOnTheCentreLineNeedNoRollStiffness() {
    WeighedVehicle noSprings =
        WeighedVehicle.withWheelbase(metres(2.31))
            .frontLeft(kilograms(284))
            .frontRight(kilograms(276))
            .rearLeft(kilograms(240))
            .rearRight(kilograms(230))
            .build();
    LoadState middle =
        MassLedger.of(noSprings).adding(Vans.item("box", 20, 0, 0)).after(LoadCase.KERB);
    assertThat(middle.wheels().orElseThrow().frontLeft()).isEqualTo(kilograms(294));
    LoadState aside =
        MassLedger.of(noSprings).adding(Vans.item("box", 20, 0, 0.1)).after(LoadCase.KERB);
    assertThat(aside.wheels()).isEmpty();
  }

  @Test
  void heightNeedsTheBaseAndEveryItem() {
    LoadState noBase =
        MassLedger.of(Vans.plain())
            .adding(MassItem.of("box", kilograms(10), Position.behindFrontAxle(metres(1))))
            .after(LoadCase.KERB);
    assertThat(noBase.stance()).isEmpty();
    assertThat(noBase.missingForHeight())
        .containsExactly("WeighedVehicle.centreOfGravityHeight", "aboveGround of box");
    assertThat(van().after(LoadCase.KERB).stance()).isPresent();
    assertThat(van().after(LoadCase.KERB).missingForHeight()).isEmpty();
  }

  @Test
  void anEstimatedHeightKeepsItsBand() {
    WeighedVehicle van =
        Vans.full().centreOfGravityHeight(RoofHeightRule.estimate(metres(1.5))).build();
    Stance stance = MassLedger.of(van).after(LoadCase.KERB).stance().orElseThrow();
    assertThat(stance.basis()).isEqualTo(Basis.ESTIMATED);
    assertThat(stance.extremes()).hasSize(2);
    assertThat(stance.extremes().get(0).heightM()).isCloseTo(0.35 * 1.5, within(1e-12));
    assertThat(stance.extremes().get(1).heightM()).isCloseTo(0.45 * 1.5, within(1e-12));
    assertThat(stance.heightM()).isCloseTo(0.39 * 1.5, within(1e-12));
  }

  @Test
  void basisIsTheWeakestOfTheItems() {
    assertThat(van().after(LoadCase.KERB).basis()).isEqualTo(Basis.MEASURED);
    MassItem box = Vans.item("box", 1, 1, 0);
    assertThat(van().adding(box).after(LoadCase.KERB).basis()).isEqualTo(Basis.DATA_SHEET);
    MassItem guess = box.withBasis(Basis.ESTIMATED);
    assertThat(van().adding(box, guess).after(LoadCase.KERB).basis()).isEqualTo(Basis.ESTIMATED);
  }

  @Test
  void spreadOfReadingsAlone() {
    WeighedVehicle axles =
        WeighedVehicle.withWheelbase(metres(2))
            .frontAxle(kilograms(500))
            .rearAxle(kilograms(400))
            .readingTolerance(kilograms(3))
            .build();
    LoadSpread spread = MassLedger.of(axles).after(LoadCase.KERB).spread();
    assertThat(spread.front().lowest()).isEqualTo(kilograms(497));
    assertThat(spread.front().highest()).isEqualTo(kilograms(503));
    assertThat(spread.front().rootSumSquare()).isEqualTo(kilograms(3));
    assertThat(spread.total().highest()).isEqualTo(kilograms(906));
    WeighedVehicle wheels = Vans.full().readingTolerance(kilograms(3)).build();
    LoadSpread four = MassLedger.of(wheels).after(LoadCase.KERB).spread();
    assertThat(four.rear().highest()).isEqualTo(kilograms(476));
    assertThat(four.total().lowest()).isEqualTo(kilograms(1018));
    assertThat(Kind.MASS.siValueOf(four.rear().rootSumSquare()))
        .isCloseTo(3 * Math.sqrt(2), within(1e-12));
  }

  @Test
  void spreadOfOneItem() {
    MassItem box =
        MassItem.of("box", kilograms(100), Position.behindFrontAxle(metres(0.5)))
            .withMassTolerance(kilograms(4))
            .withPositionTolerance(millimetres(60));
    WeighedVehicle van =
        WeighedVehicle.withWheelbase(metres(2))
            .frontAxle(kilograms(500))
            .rearAxle(kilograms(400))
            .build();
    Spread<Mass> rear = MassLedger.of(van).adding(box).after(LoadCase.KERB).spread().rear();
    assertThat(Kind.MASS.siValueOf(rear.nominal())).isCloseTo(425, within(1e-9));
    assertThat(Kind.MASS.siValueOf(rear.lowest())).isCloseTo(400 + 96 * 0.22, within(1e-9));
    assertThat(Kind.MASS.siValueOf(rear.highest())).isCloseTo(400 + 104 * 0.28, within(1e-9));
    assertThat(Kind.MASS.siValueOf(rear.rootSumSquare())).isCloseTo(Math.sqrt(1 + 9), within(1e-9));
  }

  @Test
  void worksheetEndsWithTheFiguresOfTheState() {
    LoadState state = van().adding(Vans.item("box", 126, 2.62, 0.1)).after(LoadCase.KERB);
    Worksheet sheet = state.worksheet();
    assertThat(result(sheet, "m_f")).isEqualTo(state.axles().front());
    assertThat(result(sheet, "m_r")).isEqualTo(state.axles().rear());
    assertThat(sheet.toText())
        .contains("Δm_f = m·(1 - d/L) = 126 kg · (1 - 2.62 m / 2.31 m) = -16.91 kg")
        .contains("Δm_r = m·d/L = 126 kg · 2.62 m / 2.31 m = 142.9 kg")
        .contains("d_cg = L·m_r/m_t");
    List<String> symbols = sheet.steps().stream().map(Step::symbol).toList();
    assertThat(symbols)
        .containsExactly(
            "Δm_f", "Δm_r", "m_f", "m_r", "m_t", "s_f", "d_cg", "y", "h", "m_fl", "m_fr", "m_rl",
            "m_rr");
    WheelLoads wheels = state.wheels().orElseThrow();
    assertThat(result(sheet, "m_fl")).isEqualTo(wheels.frontLeft());
    assertThat(result(sheet, "m_rr")).isEqualTo(wheels.rearRight());
    assertThat(sheet.step("m_rr").orElseThrow().toString())
        .isEqualTo(
            "m_rr = m_rr0 + ΣΔm_r/2 - (λ·S_s + S_a)/T"
                + " = 230 kg + 142.9 kg / 2 - (0.3889 · 12.6 + 0) / 1.24 m = 297.5 kg");
  }

  @Test
  void worksheetOfALoadCaseStartsFromKerb() {
    MassLedger ledger = van().adding(Vans.item("box", 126, 2.62, 0.1));
    LoadState driver = ledger.after(LoadCase.withDriver(SEATS));
    Worksheet sheet = driver.worksheetFromKerb();
    assertThat(sheet.steps().stream().map(Step::meaning).filter(what -> what.contains("box")))
        .isEmpty();
    assertThat(sheet.step("m_f").orElseThrow().toString())
        .startsWith("m_f = m_fk + ΣΔm_f = 543.1 kg");
    for (String symbol : List.of("m_f", "m_r", "m_t", "d_cg", "y", "h", "m_fl", "m_rr")) {
      assertThat(sheet.step(symbol).orElseThrow().result().toString())
          .isEqualTo(driver.worksheet().step(symbol).orElseThrow().result().toString());
    }
  }

  @Test
  void worksheetOfTheSumsLeavesTheItemsOut() {
    LoadState state = van().adding(Vans.item("box", 126, 2.62, 0.1)).after(LoadCase.KERB);
    List<Step> all = state.worksheet().steps();
    assertThat(state.sumWorksheet().steps()).isEqualTo(all.subList(2, all.size()));
  }

  @Test
  void placeForShowsItsWorking() {
    Worksheet.Recording sheet = Worksheet.record("place");
    LoadState state = van().after(LoadCase.KERB);
    assertThat(state.placeFor(kilograms(100), 0.5, sheet))
        .isEqualTo(state.placeFor(kilograms(100), 0.5));
    assertThat(sheet.toWorksheet().step("d").orElseThrow().toString())
        .isEqualTo(
            "d = L·((1 - s)·(m_t + m) - m_r)/m"
                + " = 2.31 m · ((1 - 50 %) · (1030 kg + 100 kg) - 470 kg) / 100 kg = 2.195 m");
  }

  private static javax.measure.Quantity<javax.measure.quantity.Mass> result(
      Worksheet sheet, String symbol) {
    return sheet.steps().stream()
        .filter(step -> step.symbol().equals(symbol))
        .findFirst()
        .orElseThrow()
        .result()
        .quantity(Kind.MASS);
  }

  @Test
  void worksheetLeavesOutWhatIsNotDetermined() {
    Worksheet sheet =
        MassLedger.of(Vans.plain())
            .removing(MassItem.of("tank", kilograms(9), Position.behindFrontAxle(metres(2.75))))
            .after(LoadCase.KERB)
            .worksheet();
    assertThat(sheet.steps().stream().map(Step::symbol))
        .containsExactly("Δm_f", "Δm_r", "m_f", "m_r", "m_t", "s_f", "d_cg");
    assertThat(sheet.toText()).contains("Δm_r = -m·d/L").contains("without tank: rear axle");
  }

  @Test
  void textsReadWell() {
    MassLedger ledger = van().adding(Vans.item("box", 126, 2.62, 0.1));
    LoadState state = ledger.after(LoadCase.KERB);
    assertThat(state).hasToString("kerb: front 543.1 kg, rear 612.9 kg");
    assertThat(ledger)
        .hasToString("front 560 kg, rear 470 kg, wheelbase 2.31 m; 0 removed, 1 added");
    assertThat(state.wheels().orElseThrow().toString()).startsWith("FL 281.7 kg, FR 261.4 kg");
    assertThat(state.centreOfGravity())
        .hasToString("1.225 m behind front axle, 0.02059 m left, 0.5356 m up");
    assertThat(Position.aheadOfFrontAxle(millimetres(450)).rightOfCentre(millimetres(80)))
        .hasToString("-450 mm behind front axle, -80 mm left");
    assertThat(SEATS).hasToString("4 occupants of 75 kg");
    assertThat(state.stance().orElseThrow())
        .hasToString("1156 kg, centre of gravity 1.225 m behind front axle, 0.5356 m up");
    assertThat(ledger.influenceOf(Position.behindFrontAxle(metres(0))))
        .hasToString("front 1.0, rear 0.0 kg per kg");
  }
}
