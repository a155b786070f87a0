package org.wattwright.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.degrees;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.kilojoulesPerKelvin;
import static org.wattwright.units.Measures.kilometres;
import static org.wattwright.units.Measures.kilometresPerHour;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.newtons;
import static org.wattwright.units.Measures.newtonsPerMillimetre;
import static org.wattwright.units.Measures.wattsPerKelvin;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Outcome;
import org.wattwright.check.Source;
import org.wattwright.check.Worksheet;
import org.wattwright.units.Kind;

/**
 * Every check of this package: pass, caution, fail, not checked, and at most caution on estimates.
 */
class VehicleChecksTest {
  private static LoadState van(double addedKg) {
    return MassLedger.of(Vans.full().build())
        .adding(Vans.item("box", addedKg, 2.31, 0))
        .after(LoadCase.KERB);
  }

  private static Stance stance(double behindShare, double heightM) {
    return Stance.of(
        kilograms(1000),
        metres(2.5),
        Position.behindFrontAxle(metres(2.5 * behindShare)).aboveGround(metres(heightM)));
  }

  private static Stance guessedStance() {
    WeighedVehicle van =
        Vans.full().centreOfGravityHeight(RoofHeightRule.estimate(metres(1.6))).build();
    return MassLedger.of(van).after(LoadCase.KERB).stance().orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({"100, PASS", "180, CAUTION", "210, CAUTION", "211, FAIL", "900, FAIL"})
  void rearAxlePlate(double addedKg, Outcome expected) {
    AxleLimits limits = AxleLimits.builder().rearAxle(kilograms(680)).build();
    Check check = Vans.find(limits.check(van(addedKg)), "axle.rear");
    assertThat(check.outcome()).isEqualTo(expected);
    assertThat(Kind.MASS.siValueOf(check.margin().orElseThrow().quantity(Kind.MASS)))
        .isCloseTo(680 - 470 - addedKg, within(1e-9));
  }

  @Test
  void limitsNotGivenAreNamed() {
    List<Check> checks = AxleLimits.builder().build().check(van(0));
    assertThat(checks).hasSize(9);
    assertThat(Vans.find(checks, "axle.front").missing()).containsExactly("AxleLimits.frontAxle");
    assertThat(Vans.find(checks, "axle.rear").missing()).containsExactly("AxleLimits.rearAxle");
    assertThat(Vans.find(checks, "mass.gross").missing()).containsExactly("AxleLimits.grossMass");
    assertThat(Vans.find(checks, "tyre.rear").missing()).containsExactly("AxleLimits.rearTyre");
    assertThat(Vans.find(checks, "wheel.front").missing()).containsExactly("AxleLimits.frontTyre");
    assertThat(checks.stream().filter(c -> c.outcome() == Outcome.NOT_CHECKED)).hasSize(7);
  }

  @Test
  void tyreWithoutLoadIndexIsNotChecked() {
    AxleLimits limits = AxleLimits.builder().frontTyre(Tyre.parse("5.60-15")).build();
    Check check = Vans.find(limits.check(van(0)), "tyre.front");
    assertThat(check.outcome()).isEqualTo(Outcome.NOT_CHECKED);
    assertThat(check.missing())
        .containsExactly("AxleLimits.frontTyre load index (5.60-15 shows none for its use)");
  }

  @Test
  void pairsOfTyresUseTheirOwnIndex() {
    Tyre tyre = Tyre.parse("185R14C 102/100Q");
    AxleLimits single = AxleLimits.builder().rearTyre(tyre).build();
    AxleLimits twin = AxleLimits.builder().rearTyre(tyre).rearWheels(AxleWheels.TWIN).build();
    assertThat(single.tyreCapacity(Axle.REAR)).contains(kilograms(1700));
    assertThat(twin.tyreCapacity(Axle.REAR)).contains(kilograms(3200));
    assertThat(twin.tyreCapacity(Axle.FRONT)).isEmpty();
  }

  @Test
  void heavierWheelIsCheckedAlone() {
    AxleLimits limits =
        AxleLimits.builder()
            .frontTyre(Tyre.parse("135 R12 65T"))
            .rearTyre(Tyre.parse("135 R12 62T"))
            .build();
    Check front = Vans.find(limits.check(van(0)), "wheel.front");
    assertThat(front.outcome()).isEqualTo(Outcome.CAUTION);
    assertThat(front.actual().orElseThrow().quantity(Kind.MASS)).isEqualTo(kilograms(284));
    assertThat(front.limit().orElseThrow().quantity(Kind.MASS)).isEqualTo(kilograms(290));
  }

  @Test
  void toleranceThatReachesTheLimitIsACaution() {
    MassItem box = Vans.item("box", 100, 2.31, 0).withMassTolerance(kilograms(60));
    LoadState state = MassLedger.of(Vans.full().build()).adding(box).after(LoadCase.KERB);
    AxleLimits limits = AxleLimits.builder().rearAxle(kilograms(625)).build();
    Check check = Vans.find(limits.check(state), "axle.rear");
    assertThat(check.outcome()).isEqualTo(Outcome.CAUTION);
    assertThat(check.note()).isEqualTo("worst case over the tolerances 630 kg");
    assertThat(Vans.find(limits.check(van(100)), "axle.rear").outcome()).isEqualTo(Outcome.PASS);
  }

  @Test
  void estimatedMassGivesAtMostCaution() {
    MassItem box = Vans.item("box", 10, 1, 0).withBasis(Basis.ESTIMATED);
    LoadState state = MassLedger.of(Vans.full().build()).adding(box).after(LoadCase.KERB);
    AxleLimits limits = AxleLimits.builder().grossMass(kilograms(1400)).build();
    assertThat(Vans.find(limits.check(state), "mass.gross").outcome()).isEqualTo(Outcome.CAUTION);
  }

  @Test
  void liftingAxleIsAFailNotAnError() {
    LoadState state =
        MassLedger.of(Vans.plain()).adding(Vans.item("ballast", 2000, 4.0, 0)).after(LoadCase.KERB);
    List<Check> checks = AxleLimits.builder().build().check(state);
    assertThat(Vans.find(checks, "axle.front.grounded").outcome()).isEqualTo(Outcome.FAIL);
    assertThat(Vans.find(checks, "axle.rear.grounded").outcome()).isEqualTo(Outcome.PASS);
  }

  @Test
  void combinationAddsTheTrailer() {
    AxleLimits limits = AxleLimits.builder().grossCombination(kilograms(1600)).build();
    assertThat(limits.checkCombination(van(0), kilograms(400)).outcome()).isEqualTo(Outcome.PASS);
    assertThat(limits.checkCombination(van(0), kilograms(571)).outcome()).isEqualTo(Outcome.FAIL);
    assertThat(AxleLimits.builder().build().checkCombination(van(0), kilograms(1)).missing())
        .containsExactly("AxleLimits.grossCombination");
    assertThat(AxleLimits.builder().rearAxle(kilograms(1)).build().checkPlates().missing())
        .containsExactly("AxleLimits.frontAxle", "AxleLimits.grossMass");
  }

  @ParameterizedTest
  @CsvSource({
    "0.50, 0.25, PASS", // equal adhesion at (0.50 - 0.25)/0.24 = 1.04
    "0.45, 0.25, CAUTION", // 0.833
    "0.44, 0.30, FAIL" // 0.583
  })
  void lockOrder(double rearLoad, double rearBrake, Outcome expected) {
    BrakeBalance balance = BrakeBalance.of(stance(rearLoad, 0.6), rearBrake);
    assertThat(balance.checkLockOrder().outcome()).isEqualTo(expected);
  }

  @Test
  void lockOrderSaysWhenTheRearAlwaysLocksFirst() {
    BrakeBalance balance = BrakeBalance.of(stance(0.40, 0.6), 0.45);
    assertThat(balance.checkLockOrder().note()).contains("all ordinary braking");
    assertThat(balance.equalAdhesionRate()).isNegative();
  }

  @Test
  void estimatedHeightIsTakenAtItsWorseEndAndGivesAtMostCaution() {
    Stance guess = guessedStance();
    BrakeBalance balance = BrakeBalance.of(guess, 0.20);
    Check check = balance.checkLockOrder();
    double highest = 0.45 * 1.6;
    double expected = (470.0 / 1030 - 0.20) / (highest / 2.31);
    assertThat(check.actual().orElseThrow().number()).isCloseTo(expected, within(1e-12));
    assertThat(check.basis()).isEqualTo(Basis.ESTIMATED);
    BrakeBalance safe = BrakeBalance.of(guess, 0.05);
    assertThat(safe.checkLockOrder().outcome()).isEqualTo(Outcome.CAUTION);
    assertThat(BrakeBalance.of(stance(0.5, 0.5), 0.05).checkLockOrder().outcome())
        .isEqualTo(Outcome.PASS);
  }

  @Test
  void adhesionUseAgainstTheLine() {
    assertThat(BrakeBalance.of(stance(0.44, 0.6), 0.30).checkAdhesionUse(0.8).outcome())
        .isEqualTo(Outcome.PASS);
    assertThat(BrakeBalance.of(stance(0.44, 0.6), 0.75).checkAdhesionUse(0.8).outcome())
        .isEqualTo(Outcome.FAIL);
    assertThat(
            StoppingRule.R13H_SERVICE
                .check(BrakeBalance.of(stance(0.44, 0.6), 0.30), 0.8)
                .outcome())
        .isEqualTo(Outcome.PASS);
    assertThat(
            StoppingRule.R13H_SERVICE
                .check(BrakeBalance.of(stance(0.44, 0.6), 0.75), 0.8)
                .outcome())
        .isEqualTo(Outcome.FAIL);
  }

  @Test
  void idealCurveStartsAtRestAndEndsAtItsRate() {
    BrakeBalance balance = BrakeBalance.of(stance(0.44, 0.6), 0.30);
    List<BrakeBalance.IdealPoint> curve = balance.idealCurve(8, 0.8);
    assertThat(curve).hasSize(9);
    assertThat(curve.get(0)).isEqualTo(new BrakeBalance.IdealPoint(0, 0, 0));
    assertThat(curve.get(8).rate()).isEqualTo(0.8);
    assertThat(curve.get(8).front()).isCloseTo(0.6016, within(1e-12));
  }

  @Test
  void massMovedForwardMakesTheRearLockFirst() {
    Stance before = stance(0.50, 0.6);
    Stance after = stance(0.40, 0.6);
    BrakeComparison worse = BrakeComparison.ofUnchangedBrakes(before, after, 0.30);
    List<Check> checks = worse.check(0.8);
    assertThat(Vans.find(checks, "brake.lock.axle").outcome()).isEqualTo(Outcome.FAIL);
    assertThat(Vans.find(checks, "brake.lock.axle").note())
        .startsWith("before: front locks first at ")
        .contains("after: rear locks first at ");
    List<Check> back = BrakeComparison.ofUnchangedBrakes(after, before, 0.30).check(0.8);
    assertThat(Vans.find(back, "brake.lock.axle").outcome()).isEqualTo(Outcome.PASS);
    List<Check> same = BrakeComparison.ofUnchangedBrakes(before, before, 0.30).check(0.8);
    assertThat(Outcome.worstOf(same)).isEqualTo(Outcome.PASS);
    List<Check> lost =
        BrakeComparison.ofUnchangedBrakes(before, stance(0.60, 0.6), 0.30).check(0.8);
    assertThat(Vans.find(lost, "brake.efficiency.change").outcome()).isEqualTo(Outcome.FAIL);
  }

  @Test
  void parkingBrakeHoldsOrNot() {
    Stance laden = stance(0.55, 0.6);
    ParkingBrake rear = ParkingBrake.on(Axle.REAR);
    List<Check> unknown = rear.check(laden, ParkingBrake.USUAL_GRADE, 0.8);
    assertThat(Vans.find(unknown, "parking.force").missing()).containsExactly("ParkingBrake.force");
    assertThat(Vans.find(unknown, "parking.uphill").outcome()).isEqualTo(Outcome.PASS);
    assertThat(Vans.find(unknown, "parking.downhill").outcome()).isEqualTo(Outcome.PASS);
    double needed = Kind.FORCE.siValueOf(ParkingBrake.forceNeeded(laden, 0.2));
    assertThat(needed).isCloseTo(1000 * 9.80665 * 0.2 / Math.sqrt(1.04), within(1e-9));
    assertThat(force(rear, laden, needed * 1.2)).isEqualTo(Outcome.PASS);
    assertThat(force(rear, laden, needed * 1.01)).isEqualTo(Outcome.CAUTION);
    assertThat(force(rear, laden, needed * 0.99)).isEqualTo(Outcome.FAIL);
    List<Check> ice = rear.check(laden, 0.2, 0.2);
    assertThat(Vans.find(ice, "parking.downhill").outcome()).isEqualTo(Outcome.FAIL);
    Check guess = Vans.find(rear.check(guessedStance(), 0.2, 0.9), "parking.uphill");
    assertThat(guess.outcome()).isEqualTo(Outcome.CAUTION);
  }

  private static Outcome force(ParkingBrake brake, Stance stance, double forceN) {
    ParkingBrake known = brake.withForce(newtons(forceN), Basis.MEASURED);
    return Vans.find(known.check(stance, 0.2, 0.8), "parking.force").outcome();
  }

  @Test
  void stabilityAgainstALimitAndAgainstBefore() {
    StabilityFactor low = StabilityFactor.of(stance(0.5, 0.50), metres(1.25));
    StabilityFactor high = StabilityFactor.of(stance(0.5, 0.60), metres(1.25));
    Source asked = Source.requirement("workshop");
    assertThat(low.check(1.1, asked).outcome()).isEqualTo(Outcome.PASS);
    assertThat(low.check(1.24, asked).outcome()).isEqualTo(Outcome.CAUTION);
    assertThat(high.check(1.1, asked).outcome()).isEqualTo(Outcome.FAIL);
    assertThat(low.checkAgainst(high).outcome()).isEqualTo(Outcome.PASS);
    assertThat(high.checkAgainst(low).outcome()).isEqualTo(Outcome.FAIL);
    assertThat(low.checkAgainst(low).outcome()).isEqualTo(Outcome.PASS);
    StabilityFactor guess = StabilityFactor.of(guessedStance(), metres(1.25));
    Check check = guess.check(0.5, asked);
    assertThat(check.outcome()).isEqualTo(Outcome.CAUTION);
    assertThat(check.actual().orElseThrow().number()).isCloseTo(1.25 / (2 * 0.72), within(1e-12));
    assertThat(StabilityFactor.of(van(0)).orElseThrow().factor())
        .isCloseTo(1.245 / (2 * 0.54), within(1e-12));
    assertThat(StabilityFactor.of(MassLedger.of(Vans.plain()).after(LoadCase.KERB))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"0, PASS", "90, CAUTION", "120, FAIL"})
  void bumpTravel(double addedKg, Outcome expected) {
    AxleSpring rear = AxleSpring.of(Axle.REAR, newtonsPerMillimetre(18), millimetres(80));
    Check check = rear.check(van(addedKg), millimetres(54));
    assertThat(check.code()).isEqualTo("spring.rear");
    assertThat(check.outcome()).isEqualTo(expected);
    Check guess = rear.withBasis(Basis.ESTIMATED).check(van(0), millimetres(10));
    assertThat(guess.outcome()).isEqualTo(Outcome.CAUTION);
  }

  private static DescentBuilder descent() {
    return Descent.builder()
        .mass(kilograms(1200))
        .drop(metres(400))
        .distance(kilometres(6))
        .speed(kilometresPerHour(36));
  }

  @Test
  void heatOfADescentIsThePotentialEnergyLessWhatIsTakenElsewhere() {
    assertThat(kilojoules(descent().build())).isCloseTo(1.2 * 9.80665 * 400, within(1e-9));
    Descent held = descent().resistance(newtons(200)).regeneration(kilowatts(3)).build();
    assertThat(kilojoules(held)).isCloseTo(4707.192 - 1200 - 1800, within(1e-9));
    assertThat(kilojoules(held.withoutRegeneration())).isCloseTo(4707.192 - 1200, within(1e-9));
    assertThat(kilojoules(descent().regeneration(kilowatts(50)).build())).isZero();
    assertThat(held.duration()).isEqualTo(org.wattwright.units.Measures.seconds(600));
  }

  private static double kilojoules(Descent descent) {
    return Kind.ENERGY.siValueOf(descent.heat()) / 1000;
  }

  @Test
  void drumTemperatureFollowsItsHeatBalance() {
    Descent descent = descent().build();
    BrakeHeatSink bare = BrakeHeatSink.uncooled(Axle.FRONT, kilojoulesPerKelvin(8));
    double hotK = Kind.TEMPERATURE.siValueOf(descent.temperature(bare, 0.6));
    assertThat(hotK).isCloseTo(293.15 + 0.6 * 4707.192 / 8, within(1e-9));
    BrakeHeatSink cooled =
        new BrakeHeatSink(Axle.FRONT, kilojoulesPerKelvin(8), wattsPerKelvin(20));
    double cooledK = Kind.TEMPERATURE.siValueOf(descent.temperature(cooled, 0.6));
    assertThat(cooledK).isCloseTo(integratedK(0.6 * 4707192 / 600, 8000, 20, 600), within(1e-6));
    BrakeHeatSink hardly =
        new BrakeHeatSink(Axle.FRONT, kilojoulesPerKelvin(8), wattsPerKelvin(1e-9));
    assertThat(Kind.TEMPERATURE.siValueOf(descent.temperature(hardly, 0.6)))
        .isCloseTo(hotK, within(1e-6));
  }

  /** C·dT/dt = P − G·(T − 293.15 K) by the classic Runge-Kutta method. */
  private static double integratedK(double powerW, double c, double g, double timeS) {
    double t = 293.15;
    double h = timeS / 6000;
    for (int i = 0; i < 6000; i++) {
      double k1 = (powerW - g * (t - 293.15)) / c;
      double k2 = (powerW - g * (t + h / 2 * k1 - 293.15)) / c;
      double k3 = (powerW - g * (t + h / 2 * k2 - 293.15)) / c;
      double k4 = (powerW - g * (t + h * k3 - 293.15)) / c;
      t += h / 6 * (k1 + 2 * k2 + 2 * k3 + k4);
    }
    return t;
  }

  @Test
  void descentAgainstTheLining() {
    BrakeHeatSink front = BrakeHeatSink.uncooled(Axle.FRONT, kilojoulesPerKelvin(8));
    Descent descent = descent().air(celsius(30)).build();
    Check pass = descent.check(front, 0.6, celsius(450), Basis.DATA_SHEET);
    assertThat(pass.code()).isEqualTo("brake.descent.front");
    assertThat(pass.what()).contains("full or cold pack");
    assertThat(pass.outcome()).isEqualTo(Outcome.PASS);
    assertThat(descent.check(front, 0.6, celsius(385), Basis.DATA_SHEET).outcome())
        .isEqualTo(Outcome.CAUTION);
    assertThat(descent.check(front, 0.6, celsius(350), Basis.DATA_SHEET).outcome())
        .isEqualTo(Outcome.FAIL);
    assertThat(descent.check(front, 0.6, celsius(600), Basis.ESTIMATED).outcome())
        .isEqualTo(Outcome.CAUTION);
    Descent helped = descent().regeneration(kilowatts(5)).build();
    assertThat(helped.check(front, 0.6, celsius(450), Basis.DATA_SHEET).what())
        .contains("with regeneration");
  }

  private static Understeer handling(double frontN, double rearN, Basis basis) {
    return Understeer.of(
        stance(0.5, 0.5),
        CorneringStiffness.ofAxle(Axle.FRONT, newtons(frontN), degrees(1)).withBasis(basis),
        CorneringStiffness.ofAxle(Axle.REAR, newtons(rearN), degrees(1)));
  }

  @Test
  void criticalSpeedAgainstTopSpeed() {
    Understeer under = handling(1000, 1100, Basis.DATA_SHEET);
    assertThat(under.check(kilometresPerHour(120)).outcome()).isEqualTo(Outcome.PASS);
    assertThat(under.criticalSpeed()).isEmpty();
    Understeer over = handling(1200, 900, Basis.DATA_SHEET);
    assertThat(over.behaviour()).isEqualTo(Understeer.Behaviour.OVERSTEER);
    assertThat(over.characteristicSpeed()).isEmpty();
    assertThat(over.check(kilometresPerHour(200)).outcome()).isEqualTo(Outcome.FAIL);
    assertThat(over.check(kilometresPerHour(80)).outcome()).isEqualTo(Outcome.PASS);
    Understeer guess = handling(1000, 1100, Basis.ESTIMATED);
    assertThat(guess.check(kilometresPerHour(120)).outcome()).isEqualTo(Outcome.CAUTION);
    assertThat(guess.check(kilometresPerHour(120)).note()).contains("low confidence");
    assertThat(handling(1000, 1000, Basis.MEASURED).behaviour())
        .isEqualTo(Understeer.Behaviour.NEUTRAL);
  }

  @Test
  void inventedRuleSet() {
    RuleSet rules =
        RuleSet.of(
            "Isle of Example",
            Source.standard("Isle of Example, Conversion Order", "2020, invented"),
            new KerbMassRule(0.08, 0.20),
            new AxleShareRule("kerb", Axle.FRONT, 0.40, 0.60),
            new AxleShareRule("fully laden", Axle.FRONT, 0.30, 0.70),
            new AxleShareShiftRule(0.05),
            new AxleLoadRiseRule(Axle.REAR, 0.10));
    MassLedger heavier = MassLedger.of(Vans.plain()).adding(Vans.item("box", 90, 2.31, 0));
    List<Check> checks = rules.check(new RuleSubject(heavier, List.of(LoadCase.KERB)));
    assertThat(checks.stream().map(Check::outcome))
        .containsExactly(
            Outcome.FAIL, // 90 of 1030 is 8.7 %
            Outcome.PASS,
            Outcome.PASS, // 560 of 1120 is 50 %
            Outcome.PASS,
            Outcome.NOT_CHECKED,
            Outcome.NOT_CHECKED,
            Outcome.CAUTION, // 54.4 % to 50.0 %
            Outcome.FAIL); // 90 of 470 is 19 %
    assertThat(checks.get(4).missing()).containsExactly("load case 'fully laden'");
    MassLedger lighter = MassLedger.of(Vans.plain()).removing(Vans.item("engine", 250, 0, 0));
    List<Check> fall = rules.check(new RuleSubject(lighter, List.of(LoadCase.KERB)));
    assertThat(Vans.find(fall, "rule.mass.fall").outcome()).isEqualTo(Outcome.FAIL);
    assertThat(Vans.find(fall, "rule.mass.rise").outcome()).isEqualTo(Outcome.PASS);
    assertThat(Vans.find(fall, "rule.share.least").outcome()).isEqualTo(Outcome.FAIL);
  }

  @Test
  void worksheetsPrintTheFiguresThatWereComputed() {
    BrakeBalance balance = BrakeBalance.of(stance(0.44, 0.6), 0.30);
    assertThat(balance.worksheet(0.8).toText())
        .contains("z_f = (1 - ψ)·μ/(1 - φ - μ·h/L)")
        .contains("z = min(z_f, z_r) = min(")
        .contains("= 0.7154");
    Worksheet.Recording sheet = Worksheet.record("grades");
    stance(0.44, 0.6)
        .axleForces(0.2, org.wattwright.units.Measures.metresPerSecondSquared(0), sheet);
    stance(0.44, 0.6).singleAxleBrakingLimit(Axle.REAR, 0.3, sheet);
    stance(0.44, 0.6).singleAxleBrakingLimit(Axle.FRONT, 0.3, sheet);
    ParkingBrake.forceNeeded(stance(0.44, 0.6), 0.2, sheet);
    InflationLaw.of(kilograms(500), org.wattwright.units.Measures.kilopascals(250))
        .pressureFor(kilograms(400), sheet);
    assertThat(sheet.toWorksheet().toText())
        .contains("W_f = m·g·(a_2·cos(θ) - h·sin(θ))/L - m·a·h/L")
        .contains("z_max = μ·a_1/(L + μ·h)")
        .contains("z_max = min(μ·a_2/(L - μ·h), a_1/h)")
        .contains("F = m·g·sin(θ)")
        .contains("p = p_ref·(Q/Q_max)^1.25 = 250 kPa · (400 kg / 500 kg)^1.25 = 189.1 kPa");
    AxleSpring rear = AxleSpring.of(Axle.REAR, newtonsPerMillimetre(18), millimetres(80));
    assertThat(rear.worksheet(van(90)).toText())
        .contains("Δs = Δm·g/(2·k)")
        .contains("s = s_0 - Δs = 80 mm - 24.52 mm = 55.48 mm");
    BrakeHeatSink front = BrakeHeatSink.uncooled(Axle.FRONT, kilojoulesPerKelvin(8));
    assertThat(descent().build().worksheet(front, 0.6).toText())
        .contains("Q = max(0 J, m·g·H - F·s - P·t)")
        .contains("= 373 °C");
    assertThat(handling(1200, 900, Basis.MEASURED).worksheet().toText())
        .contains("K = W_f/C_f - W_r/C_r");
    assertThat(StabilityFactor.of(stance(0.5, 0.5), metres(1.25)).worksheet().toText())
        .contains("SSF = T/(2·h) = 1.25 m / (2 · 0.5 m) = 1.25");
    assertThat(Tyre.parse("5.60-15").worksheet().toText())
        .contains("H = S·A = 142.2 mm · 95 % = 135.1 mm")
        .contains("common practice");
    AxleLift lift =
        AxleLift.of(Vans.plain(), Axle.REAR)
            .reading(kilograms(582))
            .rise(metres(0.6))
            .frontLoadedRadius(metres(0.3))
            .rearLoadedRadius(metres(0.3))
            .build();
    assertThat(lift.worksheet().toText())
        .contains("h = r_l - (m_g2/m)·(r_l - r_g) + L·(m_g2 - m_g1)");
  }

  @Test
  void liftErrorsAddUpOrCombine() {
    AxleLiftBuilder lift =
        AxleLift.of(Vans.plain(), Axle.REAR)
            .reading(kilograms(582))
            .rise(metres(0.6))
            .frontLoadedRadius(metres(0.3))
            .rearLoadedRadius(metres(0.3));
    assertThat(lift.build().worstCase()).isEqualTo(metres(0));
    AxleLift scales = lift.scaleResolution(kilograms(1)).build();
    // h = r + L·(m_g2 − m_g1)/(m·tan θ): three readings within half a kilogram each.
    double slopeM = 2.31 / (1030 * Math.tan(Math.asin(0.6 / 2.31)));
    double gainM = 22 * slopeM / 1030;
    double worstM = 0.5 * (slopeM + (slopeM + gainM) + gainM);
    assertThat(Kind.LENGTH.siValueOf(scales.worstCase())).isCloseTo(worstM, within(1e-7));
    double rss =
        0.5 * Math.sqrt(slopeM * slopeM + (slopeM + gainM) * (slopeM + gainM) + gainM * gainM);
    assertThat(Kind.LENGTH.siValueOf(scales.rootSumSquare())).isCloseTo(rss, within(1e-7));
    AxleLift all = lift.lengthTolerance(millimetres(5)).build();
    assertThat(Kind.LENGTH.siValueOf(all.worstCase())).isGreaterThan(worstM + 0.005);
    assertThat(all.toGiven().basis()).isEqualTo(Basis.MEASURED);
    assertThat(all.toString()).startsWith("0.4834 m ± ");
    AxleLift byAngle =
        AxleLift.of(Vans.plain(), Axle.FRONT)
            .reading(kilograms(492))
            .angle(degrees(15))
            .angleTolerance(degrees(0.5))
            .frontLoadedRadius(metres(0.3))
            .rearLoadedRadius(metres(0.3))
            .build();
    assertThat(Kind.LENGTH.siValueOf(byAngle.worstCase())).isCloseTo(0.0064, within(2e-4));
  }
}
