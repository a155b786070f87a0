package org.wattwright.conversion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.kilopascals;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.newtonsPerMillimetre;
import static org.wattwright.units.WorkshopUnits.KILOGRAM;
import static org.wattwright.units.WorkshopUnits.KILOPASCAL;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Given;
import org.wattwright.check.Outcome;
import org.wattwright.check.Source;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.vehicle.Axle;
import org.wattwright.vehicle.AxleLimits;
import org.wattwright.vehicle.AxleShareRule;
import org.wattwright.vehicle.AxleSpring;
import org.wattwright.vehicle.LoadCase;
import org.wattwright.vehicle.ParkingBrake;
import org.wattwright.vehicle.RuleSet;
import org.wattwright.vehicle.Tyre;

class VehicleReviewTest {
  private static final LoadCase LADEN =
      WeighedVan.driver().named("laden").plus(WeighedVan.item("goods", 200, 2));

  private static VehicleReview review(AxleLimits limits, Chassis chassis) {
    return VehicleReview.of(
        WeighedVan.ledger(WeighedVan.full()), List.of(LoadCase.KERB, LADEN), limits, chassis);
  }

  private static VehicleReview full() {
    return review(WeighedVan.limits(), WeighedVan.chassis());
  }

  private static Check check(VehicleReview review, String code, String loadCase) {
    List<Check> found =
        review.checks().stream()
            .filter(c -> c.code().equals(code) && c.what().endsWith(loadCase))
            .toList();
    assertThat(found).as(code).hasSize(1);
    return found.get(0);
  }

  /** 600 − 200 + 50 = 450 kg and 400 + 50 + 150 = 600 kg; the driver halves 75 kg. */
  @Test
  void everyLoadCaseIsCheckedAgainstPlatesGrossMassAndTyres() {
    VehicleReview review = full();
    assertThat(check(review, "axle.front", "kerb").actual().orElseThrow()).hasToString("450 kg");
    assertThat(check(review, "axle.rear", "kerb").actual().orElseThrow()).hasToString("600 kg");
    assertThat(check(review, "axle.rear", "laden").comparison()).isEqualTo("837.5 kg > 800 kg");
    assertThat(check(review, "axle.rear", "laden").outcome()).isEqualTo(Outcome.FAIL);
    assertThat(check(review, "mass.gross", "laden").comparison()).isEqualTo("1325 kg ≤ 1400 kg");
    assertThat(check(review, "tyre.rear", "laden").comparison()).isEqualTo("837.5 kg ≤ 974 kg");
    assertThat(check(review, "wheel.rear", "laden").comparison()).isEqualTo("418.8 kg ≤ 487 kg");
  }

  @Test
  void theSteeringAxleKeepsItsShare() {
    VehicleReview review = full();
    Check kerb = check(review, "axle.steering.share", "kerb");
    // 450 of 1050, and 487.5 of 1325.
    assertThat(kerb.comparison()).isEqualTo("42.86 % ≥ 40 %");
    assertThat(kerb.note()).isEqualTo("before: 60 %");
    assertThat(check(review, "axle.steering.share", "laden").outcome()).isEqualTo(Outcome.FAIL);
  }

  @Test
  void aShareNobodyAskedForIsShownAndNotChecked() {
    Check share =
        check(review(WeighedVan.limits(), Chassis.unknown()), "axle.steering.share", "kerb");
    assertThat(share.outcome()).isEqualTo(Outcome.NOT_CHECKED);
    assertThat(share.actual().orElseThrow()).hasToString("42.86 %");
    assertThat(share.missing()).containsExactly("Chassis.steeringShareAtLeast");
  }

  @Test
  void whatIsNotKnownIsNotCheckedAndNamed() {
    VehicleReview review =
        VehicleReview.of(
            WeighedVan.ledger(WeighedVan.axlesOnly()),
            List.of(LoadCase.KERB),
            AxleLimits.builder().build(),
            Chassis.unknown());
    assertThat(review.checks())
        .filteredOn(c -> !c.code().endsWith("grounded"))
        .extracting(Check::outcome)
        .containsOnly(Outcome.NOT_CHECKED);
    assertThat(check(review, "brake.balance", "kerb").missing())
        .containsExactly("WeighedVehicle.centreOfGravityHeight", "Chassis.brakes");
    assertThat(check(review, "parking.grade", "kerb").missing())
        .containsExactly("WeighedVehicle.centreOfGravityHeight", "Chassis.parkingBrake");
    assertThat(check(review, "stability.change", "kerb").missing())
        .containsExactly(
            "WeighedVehicle.centreOfGravityHeight",
            "WeighedVehicle.frontTrack",
            "WeighedVehicle.rearTrack");
    assertThat(check(review, "spring.rear", "kerb").missing())
        .containsExactly("Chassis.spring of the rear axle");
    assertThat(check(review, "tyre.pressure.front", "kerb").missing())
        .containsExactly("Chassis.tyrePressure of the front axle");
  }

  @Test
  void aKnownParkingBrakeWithoutAHeightIsNotChecked() {
    VehicleReview review =
        VehicleReview.of(
            WeighedVan.ledger(WeighedVan.axlesOnly()),
            List.of(LoadCase.KERB),
            WeighedVan.limits(),
            WeighedVan.chassis());
    assertThat(check(review, "parking.grade", "kerb").missing())
        .containsExactly("WeighedVehicle.centreOfGravityHeight");
    assertThat(check(review, "brake.balance", "kerb").missing())
        .containsExactly("WeighedVehicle.centreOfGravityHeight");
    assertThat(review.brakes(review.states().get(0))).isEmpty();
  }

  /** Height unchanged at 0.5 m: ψ = 600/1050, (ψ − 0.3)/0.25; before (0.4 − 0.3)/0.25. */
  @Test
  void theBrakesAreComparedInEveryLoadCase() {
    VehicleReview review = full();
    Check order = check(review, "brake.lock.order", "kerb");
    assertThat(order.actual().orElseThrow().number()).isCloseTo(1.085714, within(1e-6));
    assertThat(review.brakes(review.states().get(0)).orElseThrow().before().equalAdhesionRate())
        .isCloseTo(0.4, within(1e-12));
    assertThat(check(review, "brake.lock.axle", "kerb").outcome()).isEqualTo(Outcome.PASS);
    assertThat(check(review, "brake.adhesion.use", "laden").outcome()).isEqualTo(Outcome.PASS);
    assertThat(review.checks()).extracting(Check::code).doesNotContain("brake.efficiency.change");
  }

  @Test
  void theParkingBrakeIsCheckedAtTheHeaviestLoad() {
    VehicleReview review = full();
    assertThat(review.heaviest().loadCase()).isEqualTo(LADEN);
    assertThat(check(review, "parking.force", "laden").outcome()).isEqualTo(Outcome.PASS);
    assertThat(review.checks())
        .filteredOn(c -> c.code().startsWith("parking"))
        .hasSize(3)
        .allMatch(c -> c.what().endsWith(", laden"));
  }

  @Test
  void stabilityIsComparedWithThatBefore() {
    Check kerb = check(full(), "stability.change", "kerb");
    assertThat(kerb.comparison()).isEqualTo("1.2 ≥ 1.2");
    assertThat(kerb.outcome()).isEqualTo(Outcome.PASS);
  }

  /** Rear springs: 837.5 − 400 − 150 kg on the axle itself = 287.5 kg over two of 25 N/mm. */
  @Test
  void theSpringsOfBothAxlesAreChecked() {
    VehicleReview review = full();
    double leftMm =
        Kind.LENGTH.siValueOf(
                check(review, "spring.rear", "laden").actual().orElseThrow().quantity(Kind.LENGTH))
            * 1000;
    assertThat(leftMm).isCloseTo(90 - 287.5 * 9.80665 / 50, within(1e-9));
    assertThat(check(review, "spring.front", "kerb").outcome()).isEqualTo(Outcome.PASS);
  }

  /** 250 kPa·(418.75/487)^1.25 at the rear, from half of 837.5 kg. */
  @Test
  void theTyrePressureIsCheckedWhereTheAxleIsLoadedMost() {
    Check rear = check(full(), "tyre.pressure.rear", "laden");
    assertThat(KILOPASCAL.valueOf(rear.limit().orElseThrow().quantity(Kind.PRESSURE)))
        .isCloseTo(250 * Math.pow(418.75 / 487, 1.25), within(1e-9));
    assertThat(rear.outcome()).isEqualTo(Outcome.PASS);
    assertThat(rear.basis()).isEqualTo(Basis.DATA_SHEET);
  }

  @Test
  void withoutWheelLoadsHalfTheAxleCounts() {
    VehicleReview review =
        VehicleReview.of(
            WeighedVan.ledger(WeighedVan.axlesOnly()),
            List.of(LADEN),
            WeighedVan.limits(),
            WeighedVan.chassis());
    Check rear = check(review, "tyre.pressure.rear", "laden");
    assertThat(KILOPASCAL.valueOf(rear.limit().orElseThrow().quantity(Kind.PRESSURE)))
        .isCloseTo(250 * Math.pow(418.75 / 487, 1.25), within(1e-9));
  }

  @Test
  void aTyreWithoutALoadLawIsNotChecked() {
    Chassis crossPly =
        WeighedVan.chassis()
            .tyrePressure(
                Axle.FRONT, Tyre.parse("5.60-15"), Given.measured(kilopascals(180), "gauge"));
    assertThat(
            check(review(WeighedVan.limits(), crossPly), "tyre.pressure.front", "laden").missing())
        .containsExactly("load table of " + Tyre.parse("5.60-15"));
  }

  @Test
  void rulesAreAppliedToAllLoadCases() {
    RuleSet rules =
        RuleSet.of(
            "Isle of Example",
            Source.standard("Isle of Example, Conversion Order", "2020, invented"),
            new AxleShareRule("laden", Axle.FRONT, 0.5, 0.7));
    VehicleReview review = review(WeighedVan.limits(), WeighedVan.chassis().rules(rules));
    assertThat(check(review, "rule.share.least", "laden").outcome()).isEqualTo(Outcome.FAIL);
  }

  @Test
  void everyCaseHasTheSameChecksInTheSameOrder() {
    VehicleReview review = full();
    assertThat(review.checksInCase(0))
        .extracting(Check::code)
        .isEqualTo(review.checksInCase(1).stream().map(Check::code).toList());
    assertThat(review.checks())
        .hasSize(2 * review.checksInCase(0).size() + review.overallChecks().size())
        .doesNotHaveDuplicates();
  }

  @Test
  void holdsWhatItWasGiven() {
    VehicleReview review = full();
    assertThat(review.ledger()).isEqualTo(WeighedVan.ledger(WeighedVan.full()));
    assertThat(review.limits()).isEqualTo(WeighedVan.limits());
    assertThat(review.chassis().rearBrakeShare().orElseThrow().value()).isEqualTo(0.3);
    assertThat(KILOGRAM.valueOf(review.states().get(1).total())).isCloseTo(1325, within(1e-9));
    assertThat(review)
        .hasToString("front 600 kg, rear 400 kg, wheelbase 2 m; 1 removed, 2 added; load cases: 2");
    assertThat(review.chassis())
        .hasToString(
            "brakes, parking brake, springs of 2, tyre pressures of 2 axles, rule sets: 0");
    assertThat(Chassis.unknown())
        .hasToString("brakes not known, springs of 0, tyre pressures of 0 axles, rule sets: 0");
  }

  @Test
  void rejectsNoLoadCaseAndTwoOfOneName() {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(
            () ->
                VehicleReview.of(
                    WeighedVan.ledger(WeighedVan.full()),
                    List.of(),
                    WeighedVan.limits(),
                    Chassis.unknown()))
        .withMessageStartingWith("VehicleReview.loadCases must be");
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(
            () ->
                VehicleReview.of(
                    WeighedVan.ledger(WeighedVan.full()),
                    List.of(LADEN, WeighedVan.driver().named("laden")),
                    WeighedVan.limits(),
                    Chassis.unknown()))
        .withMessage("VehicleReview.loadCases must be of different names, but was \"laden\" twice");
  }

  @Test
  void aChassisRejectsWhatIsOutOfRange() {
    Chassis chassis = Chassis.unknown();
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> chassis.brakes(Given.measured(1.2, "tester")))
        .withMessageContaining("Chassis.brakes");
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> chassis.steeringShareAtLeast(Double.NaN, Source.AS_GIVEN))
        .withMessageContaining("Chassis.steeringShareAtLeast");
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(
            () ->
                chassis.spring(
                    AxleSpring.of(Axle.FRONT, newtonsPerMillimetre(20), millimetres(70)),
                    millimetres(-1)))
        .withMessage("Chassis.leastTravel must be ≥ 0 mm, but was -1 mm");
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(
            () ->
                chassis.tyrePressure(
                    Axle.REAR, WeighedVan.TYRE, Given.measured(kilopascals(0), "gauge")))
        .withMessage("Chassis.rearTyrePressure must be > 0 kPa, but was 0 kPa");
  }

  @Test
  void aParkingBrakeWithoutForceLeavesTheForceOpen() {
    Chassis chassis = WeighedVan.chassis().parkingBrake(ParkingBrake.on(Axle.REAR));
    assertThat(check(review(WeighedVan.limits(), chassis), "parking.force", "laden").outcome())
        .isEqualTo(Outcome.NOT_CHECKED);
  }

  @Test
  void aConversionTakesTheVehicleIn() {
    Conversion van =
        InventedVan.conversion()
            .masses(WeighedVan.ledger(WeighedVan.full()))
            .loadCases(LoadCase.KERB, LADEN)
            .axleLimits(WeighedVan.limits())
            .chassis(WeighedVan.chassis())
            .build();
    assertThat(van.review()).containsAll(full().checks());
    assertThat(van.masses().orElseThrow().checks()).isEqualTo(full().checks());
    assertThat(van.review()).extracting(Check::code).doesNotContain("vehicle.load-cases");
    assertThat(van.outcome()).isEqualTo(Outcome.FAIL);
  }

  @Test
  void withoutLoadCasesTheLadenVehicleIsNotChecked() {
    Conversion van = InventedVan.conversion().masses(WeighedVan.ledger(WeighedVan.full())).build();
    assertThat(van.masses().orElseThrow().states()).hasSize(1);
    assertThat(van.review())
        .filteredOn(c -> c.code().equals("vehicle.load-cases"))
        .extracting(Check::outcome)
        .containsExactly(Outcome.NOT_CHECKED);
  }
}
