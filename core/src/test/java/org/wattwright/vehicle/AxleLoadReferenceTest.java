package org.wattwright.vehicle;

import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.kilometresPerHour;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.metresPerSecondSquared;
import static org.wattwright.units.Measures.seconds;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.ReferenceRows;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;

/** Axle loads, centre of gravity and load transfer against published and computed values. */
class AxleLoadReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("vehicle");

  private static final ReferenceRows ROWS = ReferenceRows.read("/vehicle/axle-loads.csv");
  private static final Quantity<Length> NOT_NEEDED = metres(0.5);

  private static ReferenceRow row(String number) {
    return ROWS.row("AXL-" + number);
  }

  private static Position at(double behindM, double heightM) {
    return Position.behindFrontAxle(metres(behindM)).aboveGround(metres(heightM));
  }

  /** Conditions m, L, a1 or a2 (a1=a2: the middle), h, g. */
  private static Stance stance(ReferenceRow row) {
    double wheelbaseM = row.has("L") ? Kind.LENGTH.siValueOf(row.given("L", Kind.LENGTH)) : 0;
    double behindM = wheelbaseM / 2;
    if (row.has("a1") && !row.given("a1").equals("a2")) {
      behindM = row.givenNumber("a1");
      wheelbaseM = row.has("L") ? wheelbaseM : behindM + row.givenNumber("a2");
    }
    Quantity<Length> height = row.has("h") ? row.given("h", Kind.LENGTH) : NOT_NEEDED;
    Quantity<Mass> mass = row.has("m") ? row.given("m", Kind.MASS) : kilograms(1000);
    Position centre = Position.behindFrontAxle(metres(behindM)).aboveGround(height);
    Stance stance = Stance.of(mass, metres(wheelbaseM), centre);
    return row.has("g") ? stance.withGravity(metresPerSecondSquared(row.givenNumber("g"))) : stance;
  }

  private static WeighedVehicle weighed(double frontKg, double rearKg, double wheelbaseM) {
    return WeighedVehicle.withWheelbase(metres(wheelbaseM))
        .frontAxle(kilograms(frontKg))
        .rearAxle(kilograms(rearKg))
        .build();
  }

  private static LoadState kerb(WeighedVehicle vehicle) {
    return MassLedger.of(vehicle).after(LoadCase.KERB);
  }

  @Test
  void centreOfGravityFromWheelForces() {
    ReferenceRow behind = row("001");
    LoadState state =
        kerb(
            weighed(
                2 * behind.givenNumber("wheel force front"),
                2 * behind.givenNumber("rear"),
                behind.givenNumber("L")));
    double behindM = Kind.LENGTH.siValueOf(state.centreOfGravity().behindFrontAxle());
    VALIDATION.computed(behind, behindM);
    VALIDATION.computed(row("002"), behind.givenNumber("L") - behindM);
  }

  static Stream<ReferenceRow> wheelForces() {
    return Stream.of(row("003"), row("004"), row("007"), row("008"));
  }

  @ParameterizedTest
  @MethodSource("wheelForces")
  void forceUnderEachWheelIsHalfTheAxleForce(ReferenceRow row) {
    double behindM = row.has("a1") ? row.givenNumber("a1") : 1.1;
    Stance stance =
        Stance.of(row.given("m", Kind.MASS), row.given("L", Kind.LENGTH), at(behindM, 0.5))
            .withGravity(metresPerSecondSquared(row.givenNumber("g")));
    Axle axle = row.quantity().contains("front") ? Axle.FRONT : Axle.REAR;
    VALIDATION.computed(row, Kind.FORCE.siValueOf(stance.axleForces().on(axle)) / 2);
  }

  @Test
  void staticAxleLoads() {
    VALIDATION.computed(row("005"), stance(row("005")).axleForces().front(), Kind.FORCE);
    VALIDATION.computed(row("006"), stance(row("006")).axleForces().rear(), Kind.FORCE);
  }

  @Test
  void centreOfGravityFromAxleLoadsInPoundsAndInches() {
    ReferenceRow row = row("009");
    WeighedVehicle vehicle =
        WeighedVehicle.withWheelbase(row.given("L", Kind.LENGTH))
            .frontAxle(row.given("front axle", Kind.MASS))
            .rearAxle(row.given("rear axle", Kind.MASS))
            .build();
    Quantity<Length> behind = kerb(vehicle).centreOfGravity().behindFrontAxle();
    VALIDATION.computed(row, behind, Kind.LENGTH);
    VALIDATION.computed(row("010"), behind, Kind.LENGTH);
    VALIDATION.computed(row("011"), kerb(vehicle).frontShare());
  }

  @Test
  void overhungMassesLightenTheAxleAtTheOtherEnd() {
    MassLedger ledger = MassLedger.of(weighed(520, 430, 2.30));
    MassItem behind = MassItem.of("box", kilograms(100), Position.behindFrontAxle(metres(2.60)));
    MassItem ahead = MassItem.of("bumper", kilograms(30), Position.aheadOfFrontAxle(metres(0.5)));
    AxleLoads added = ledger.adding(behind).after(LoadCase.KERB).axles();
    AxleLoads removed = ledger.removing(ahead).after(LoadCase.KERB).axles();
    VALIDATION.computed(row("012"), added.front(), Kind.MASS);
    VALIDATION.computed(row("013"), added.rear(), Kind.MASS);
    VALIDATION.computed(row("014"), removed.front(), Kind.MASS);
    VALIDATION.computed(row("015"), removed.rear(), Kind.MASS);
  }

  @Test
  void placeOfAMassForAWantedSplit() {
    LoadState state = kerb(weighed(520, 430, 2.30));
    VALIDATION.computed(row("016"), state.placeFor(kilograms(50), 0.5), Kind.LENGTH);
    VALIDATION.computed(row("017"), state.placeFor(kilograms(50), 0.54), Kind.LENGTH);
  }

  @Test
  void axleForcesUnderAcceleration() {
    AxleForces forces = stance(row("018")).axleForces(0, row("018").given("a", Kind.ACCELERATION));
    VALIDATION.computed(row("018"), forces.front(), Kind.FORCE);
    VALIDATION.computed(row("019"), forces.rear(), Kind.FORCE);
  }

  @Test
  void adhesionLimitsOfAcceleration() {
    Stance stance = stance(row("020"));
    double mu = row("020").givenNumber("mu");
    VALIDATION.computed(row("020"), stance.tractionLimit(Axle.REAR, mu), Kind.ACCELERATION);
    VALIDATION.computed(row("021"), stance.tractionLimit(Axle.FRONT, mu), Kind.ACCELERATION);
    VALIDATION.computed(row("022"), stance.tractionLimitAllWheels(mu), Kind.ACCELERATION);
    double limit = Kind.ACCELERATION.siValueOf(stance.tractionLimitAllWheels(1));
    VALIDATION.computed(row("023"), row("023").givenNumber("dv") / limit);
  }

  @Test
  void adhesionNeededForAnAcceleration() {
    double speedMs = Kind.SPEED.siValueOf(kilometresPerHour(100));
    double timeS = Kind.TIME.siValueOf(seconds(3.2));
    VALIDATION.computed(
        row("024"),
        stance(row("024")).adhesionNeeded(Axle.REAR, metresPerSecondSquared(speedMs / timeS)));
  }

  @Test
  void axleForcesOnAGrade() {
    AxleForces forces = stance(row("025")).axleForces(0.20, metresPerSecondSquared(0));
    VALIDATION.computed(row("025"), forces.front(), Kind.FORCE);
    VALIDATION.computed(row("026"), forces.rear(), Kind.FORCE);
    AxleForces both = stance(row("030")).axleForces(0.10, row("030").given("a", Kind.ACCELERATION));
    VALIDATION.computed(row("030"), both.front(), Kind.FORCE);
  }

  @Test
  void slopesHeldAndTilting() {
    Stance stance = stance(row("027"));
    VALIDATION.computed(row("027"), stance.uphillHoldingAngle(Axle.REAR, 0.8), Kind.ANGLE);
    VALIDATION.computed(row("028"), stance.uphillHoldingAngle(Axle.FRONT, 0.8), Kind.ANGLE);
    VALIDATION.computed(row("029"), stance.tiltingAngle(), Kind.ANGLE);
  }

  @Test
  void loadTransferWhenBraking() {
    ReferenceRow row = row("031");
    Stance stance = Stance.of(row.given("m", Kind.MASS), row.given("L", Kind.LENGTH), at(1, 0.55));
    VALIDATION.computed(
        row, stance.loadTransfer(metresPerSecondSquared(0.8 * 9.80665)), Kind.FORCE);
  }

  private static final Pattern MOVE =
      Pattern.compile("([a-z][a-z ]*?) ([+-]\\d+) @ (-?[\\d.]+), ([\\d.]+)");

  /** The ledger of the worked example, read from the row. */
  private static MassLedger exampleA() {
    MassLedger ledger =
        MassLedger.of(
            WeighedVehicle.withWheelbase(metres(2.31))
                .frontAxle(kilograms(560))
                .rearAxle(kilograms(470))
                .centreOfGravityHeight(metres(0.54))
                .build());
    Matcher matcher = MOVE.matcher(row("032").conditions().toString());
    while (matcher.find()) {
      double kg = Double.parseDouble(matcher.group(2));
      Position place =
          at(Double.parseDouble(matcher.group(3)), Double.parseDouble(matcher.group(4)));
      MassItem item = MassItem.of(matcher.group(1), kilograms(Math.abs(kg)), place);
      ledger = kg < 0 ? ledger.removing(item) : ledger.adding(item);
    }
    return ledger;
  }

  @Test
  void workedExampleA() {
    MassLedger ledger = exampleA();
    LoadState after = ledger.after(LoadCase.KERB);
    VALIDATION.computed(row("032"), after.total(), Kind.MASS);
    VALIDATION.computed(row("033"), after.axles().front(), Kind.MASS);
    VALIDATION.computed(row("034"), after.axles().rear(), Kind.MASS);
    VALIDATION.computed(row("035"), 100 * ledger.before(LoadCase.KERB).frontShare());
    VALIDATION.computed(row("036"), 100 * after.frontShare());
    CentreOfGravity centre = after.centreOfGravity();
    VALIDATION.computed(row("037"), centre.behindFrontAxle(), Kind.LENGTH);
    VALIDATION.computed(row("038"), centre.aboveGround().orElseThrow(), Kind.LENGTH);
  }

  @Test
  void wheelTorqueAtTheAdhesionLimit() {
    ReferenceRows rows = ReferenceRows.read("/vehicle/driveline.csv");
    Stance stance = Stance.of(kilograms(1000), metres(2.30), at(0.47 * 2.30, 0.55));
    AxleForces atRest = stance.axleForces();
    VALIDATION.computed(rows.row("DRV-009"), wheelTorqueNm(1.0, atRest, Axle.REAR));
    AxleForces rearDriven = stance.axleForces(0, stance.tractionLimit(Axle.REAR, 1.0));
    VALIDATION.computed(rows.row("DRV-010"), wheelTorqueNm(1.0, rearDriven, Axle.REAR));
    AxleForces frontDriven = stance.axleForces(0, stance.tractionLimit(Axle.FRONT, 0.9));
    VALIDATION.computed(rows.row("DRV-012"), wheelTorqueNm(0.9, frontDriven, Axle.FRONT));
  }

  /** Grip of one wheel times its radius, 0.29 m. */
  private static double wheelTorqueNm(double mu, AxleForces forces, Axle axle) {
    return mu * Kind.FORCE.siValueOf(forces.on(axle)) / 2 * 0.29;
  }
}
