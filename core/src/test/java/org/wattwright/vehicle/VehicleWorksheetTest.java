package org.wattwright.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.degrees;
import static org.wattwright.units.Measures.joulesPerKelvin;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.kilometresPerHour;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.metresPerSecondSquared;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.newtons;
import static org.wattwright.units.Measures.newtonsPerMillimetre;

import java.util.List;
import javax.measure.Quantity;
import org.junit.jupiter.api.Test;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.check.Step;
import org.wattwright.check.Worksheet;
import org.wattwright.units.Kind;

/** Every figure has its working, and the working ends with the figure. */
class VehicleWorksheetTest {
  private static final Stance STANCE =
      Stance.of(
          kilograms(1200),
          metres(2.4),
          Position.behindFrontAxle(metres(1.08)).aboveGround(metres(0.6)));

  private static Step step(Worksheet sheet, String symbol) {
    return sheet.step(symbol).orElseThrow();
  }

  private static <Q extends Quantity<Q>> void assertResult(
      Worksheet sheet, String symbol, Quantity<Q> expected, Kind<Q> kind) {
    assertThat(step(sheet, symbol).result().quantity(kind)).isEqualTo(expected);
  }

  @Test
  void gripOfTheRearAxle() {
    Worksheet sheet = STANCE.gripWorksheet(Axle.REAR, 0.6);
    // By hand: 0.6·1.08/(2.4 − 0.6·0.6) = 0.3176 and 0.6·1.08/(2.4 + 0.36) = 0.2348.
    assertThat(step(sheet, "a_max/g").result()).hasToString("0.3176");
    assertThat(step(sheet, "z_max").result()).hasToString("0.2348");
    assertResult(sheet, "a_max", STANCE.tractionLimit(Axle.REAR, 0.6), Kind.ACCELERATION);
    assertResult(sheet, "θ_up", STANCE.uphillHoldingAngle(Axle.REAR, 0.6), Kind.ANGLE);
    assertResult(sheet, "θ_down", STANCE.downhillHoldingAngle(Axle.REAR, 0.6), Kind.ANGLE);
    assertResult(sheet, "θ_tilt", STANCE.tiltingAngle(), Kind.ANGLE);
    assertThat(sheet.steps()).hasSize(6);
  }

  @Test
  void gripOfTheFrontAxle() {
    Worksheet sheet = STANCE.gripWorksheet(Axle.FRONT, 0.6);
    // By hand: 0.6·1.32/(2.4 + 0.36) = 0.2870 and 0.6·1.32/(2.4 − 0.36) = 0.3882.
    assertThat(step(sheet, "a_max/g").result()).hasToString("0.287");
    assertThat(step(sheet, "z_max").result()).hasToString("0.3882");
  }

  @Test
  void loadTransfer() {
    Worksheet.Recording sheet = Worksheet.record("transfer");
    STANCE.loadTransfer(metresPerSecondSquared(6), sheet);
    assertThat(step(sheet.toWorksheet(), "ΔW").toString())
        .isEqualTo("ΔW = m·a·h/L = 1200 kg · 6 m/s² · 0.6 m / 2.4 m = 1.8 kN");
  }

  @Test
  void brakeBalanceShowsTheIdealDistributionAndTheEqualRate() {
    BrakeBalance balance = BrakeBalance.of(STANCE, 0.3);
    Worksheet sheet = balance.worksheet(0.8);
    FirstLock first = balance.firstLock(0.8);
    assertResult(sheet, "a", first.deceleration(), Kind.ACCELERATION);
    assertThat(step(sheet, "η").result()).isEqualTo(Figure.share(first.efficiency()));
    assertThat(step(sheet, "z_0").toString())
        .isEqualTo("z_0 = (ψ - φ)·L/h = (0.45 - 0.3) · 2.4 m / 0.6 m = 0.6");
    assertThat(step(sheet, "φ_ideal").result().number())
        .isEqualTo(balance.idealShare(Axle.REAR, first.rate()));
    Worksheet point = balance.rateWorksheet(0.5);
    assertThat(step(point, "B_r/W").result().number())
        .isEqualTo(balance.idealForce(Axle.REAR, 0.5));
    assertThat(step(point, "μ_f").result().number())
        .isEqualTo(balance.adhesionUsed(Axle.FRONT, 0.5));
    assertThat(step(point, "μ_r").toString())
        .startsWith("μ_r = φ·z/(ψ - z·h/L) = 0.3 · 0.5 / (0.45 - 0.5 · 0.6 m / 2.4 m) = ");
  }

  @Test
  void worksheetOfBrakesThatNeverLockInFront() {
    BrakeBalance rearOnly = BrakeBalance.of(STANCE, 1);
    assertThat(step(rearOnly.worksheet(0.8), "z").toString()).startsWith("z = z_r = ");
  }

  @Test
  void stabilityFactorAndTipping() {
    StabilityFactor factor = StabilityFactor.of(STANCE, metres(1.3));
    assertResult(factor.worksheet(), "a_y", factor.tippingAcceleration(), Kind.ACCELERATION);
  }

  @Test
  void understeerHasItsSpeedAndMargin() {
    CorneringStiffness front = CorneringStiffness.ofAxle(Axle.FRONT, newtons(900), degrees(1));
    CorneringStiffness rear = CorneringStiffness.ofAxle(Axle.REAR, newtons(900), degrees(1));
    Understeer under = Understeer.of(STANCE, front, rear);
    assertResult(under.worksheet(), "V_ch", under.characteristicSpeed().orElseThrow(), Kind.SPEED);
    assertThat(step(under.worksheet(), "s_m").result()).hasToString("5 %");
    CorneringStiffness soft = CorneringStiffness.ofAxle(Axle.REAR, newtons(600), degrees(1));
    Understeer over = Understeer.of(STANCE, front, soft);
    assertResult(over.worksheet(), "V_cr", over.criticalSpeed().orElseThrow(), Kind.SPEED);
  }

  @Test
  void springsOfAnAxle() {
    AxleSpring spring = AxleSpring.of(Axle.REAR, newtonsPerMillimetre(20), millimetres(80));
    LoadState state =
        MassLedger.of(Vans.plain()).adding(Vans.item("box", 100, 2.31, 0)).after(LoadCase.KERB);
    assertResult(spring.worksheet(state), "Δs", spring.deflection(state), Kind.LENGTH);
    assertResult(spring.worksheet(state), "s", spring.remainingTravel(state), Kind.LENGTH);
  }

  @Test
  void descentIntoTheDrums() {
    Descent descent =
        Descent.builder()
            .mass(kilograms(1500))
            .drop(metres(200))
            .distance(metres(3000))
            .speed(kilometresPerHour(40))
            .air(celsius(20))
            .build();
    BrakeHeatSink sink = BrakeHeatSink.uncooled(Axle.FRONT, joulesPerKelvin(9000));
    Worksheet sheet = descent.worksheet(sink, 0.7);
    assertResult(sheet, "Q", descent.heat(), Kind.ENERGY);
    assertResult(sheet, "T", descent.temperature(sink, 0.7), Kind.TEMPERATURE);
  }

  @Test
  void rulesShowWhereTheirFiguresComeFrom() {
    RuleSet rules =
        RuleSet.of(
            "Isle of Example",
            Source.standard("Isle of Example, Conversion Order", "invented"),
            new KerbMassRule(0.08, 0.20),
            new AxleShareRule("kerb", Axle.FRONT, 0.45, 0.60),
            new AxleShareShiftRule(0.05),
            new AxleLoadRiseRule(Axle.REAR, 0.10));
    MassLedger heavier = MassLedger.of(Vans.plain()).adding(Vans.item("box", 90, 2.31, 0));
    Worksheet sheet = rules.worksheet(new RuleSubject(heavier, List.of(LoadCase.KERB)));
    assertThat(step(sheet, "δm").toString())
        .isEqualTo("δm = m_t/m_t0 - 1 = 1120 kg / 1030 kg - 1 = 8.738 %");
    assertThat(step(sheet, "s").result()).hasToString("50 %");
    assertThat(step(sheet, "Δs").toString())
        .isEqualTo("Δs = |s_f - s_f0| = |50 % - 54.37 %| = 4.369 %");
    assertThat(step(sheet, "δm_a").toString())
        .isEqualTo("δm_a = m_a/m_a0 - 1 = 560 kg / 470 kg - 1 = 19.15 %");
  }

  @Test
  void axleLiftShowsRadiiAndErrors() {
    AxleLift lift =
        AxleLift.of(Vans.plain(), Axle.REAR)
            .reading(kilograms(600))
            .rise(metres(0.6))
            .frontLoadedRadius(metres(0.29))
            .rearLoadedRadius(metres(0.31))
            .groundRadiusRaised(metres(0.285))
            .scaleResolution(kilograms(1))
            .lengthTolerance(millimetres(3))
            .build();
    Worksheet sheet = lift.worksheet();
    assertThat(step(sheet, "θ").toString())
        .startsWith("θ = asin((H + s + Δr)/√(L² + Δr²)) - atan(Δr/L) = ");
    assertResult(sheet, "θ", lift.angle(), Kind.ANGLE);
    assertResult(sheet, "h", lift.height(), Kind.LENGTH);
    assertResult(sheet, "Δh", lift.worstCase(), Kind.LENGTH);
    assertResult(sheet, "σ(h)", lift.rootSumSquare(), Kind.LENGTH);
    assertResult(sheet, "Δh(m_g2)", lift.errorFrom(kilograms(0.5)), Kind.LENGTH);
    assertThat(sheet.steps().stream().map(Step::symbol).filter(s -> s.startsWith("Δh(")))
        .containsExactly(
            "Δh(m_g1)", "Δh(m_l1)", "Δh(m_g2)", "Δh(L)", "Δh(r_g)", "Δh(r_l)", "Δh(s)", "Δh(H)");
  }

  /** Two scales below an axle, each with its tolerance, unless the step of the scales is told. */
  @Test
  void axleLiftTakesTheToleranceOfTheLevelWeighing() {
    WeighedVehicle van = Vans.full().readingTolerance(kilograms(0.5)).build();
    AxleLiftBuilder unless =
        AxleLift.of(van, Axle.REAR)
            .reading(kilograms(600))
            .rise(metres(0.6))
            .frontLoadedRadius(metres(0.3))
            .rearLoadedRadius(metres(0.3));
    Quantity<javax.measure.quantity.Length> worst = unless.build().worstCase();
    assertThat(worst).isEqualTo(unless.scaleResolution(kilograms(2)).build().worstCase());
    assertThat(Kind.LENGTH.siValueOf(worst)).isGreaterThan(0.015);
  }
}
