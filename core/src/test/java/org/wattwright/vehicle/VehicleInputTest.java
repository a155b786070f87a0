package org.wattwright.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.junit.jupiter.params.provider.Arguments.arguments;
import static org.wattwright.units.Measures.degrees;
import static org.wattwright.units.Measures.joulesPerKelvin;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.kilometresPerHour;
import static org.wattwright.units.Measures.kilopascals;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.metresPerSecondSquared;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.newtonMetresPerDegree;
import static org.wattwright.units.Measures.newtons;
import static org.wattwright.units.Measures.newtonsPerMillimetre;
import static org.wattwright.units.Measures.pounds;
import static org.wattwright.units.Measures.wattsPerKelvin;

import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.check.Basis;
import org.wattwright.check.Given;
import org.wattwright.units.InvalidInputException;

/** Bad input: one clear error each, naming field, value and bound. */
class VehicleInputTest {
  private static final Position PLACE = Position.behindFrontAxle(metres(1));
  private static final Stance STANCE =
      Stance.of(kilograms(1000), metres(2.3), PLACE.aboveGround(metres(0.5)));
  private static final BrakeBalance BALANCE = BrakeBalance.of(STANCE, 0.3);

  private static WeighedVehicleBuilder base() {
    return WeighedVehicle.withWheelbase(metres(2.3));
  }

  private static AxleLiftBuilder lift() {
    return AxleLift.of(Vans.plain(), Axle.REAR)
        .frontLoadedRadius(metres(0.3))
        .rearLoadedRadius(metres(0.3));
  }

  private static Arguments bad(ThrowingCallable call, String message) {
    return arguments(message, call);
  }

  static Stream<Arguments> masses() {
    return Stream.of(
        bad(
            () -> MassItem.of("box", kilograms(-12), PLACE),
            "MassItem.mass of box must be ≥ 0 kg, but was -12 kg"),
        bad(
            () -> MassItem.of("box", kilograms(Double.NaN), PLACE),
            "mass must be finite, but was NaN kg"),
        bad(
            () -> MassItem.of("  ", kilograms(1), PLACE),
            "MassItem.name must be a text, but was \"  \""),
        bad(
            () -> Vans.item("box", 1, 0, 0).withMassTolerance(kilograms(-1)),
            "MassItem.massTolerance of box must be ≥ 0 kg, but was -1 kg"),
        bad(
            () -> Vans.item("box", 1, 0, 0).withPositionTolerance(millimetres(-1)),
            "MassItem.positionTolerance of box must be ≥ 0 m, but was -1 mm"),
        bad(
            () -> PLACE.aboveGround(metres(-0.1)),
            "Position.aboveGround must be ≥ 0 m, but was -0.1 m"),
        bad(
            () -> WeighedVehicle.withWheelbase(metres(0)),
            "WeighedVehicle.wheelbase must be > 0 m, but was 0 m"),
        bad(
            () -> base().frontAxle(pounds(-1)),
            "WeighedVehicle.frontAxle must be ≥ 0 kg, but was -1 lb"),
        bad(
            () -> base().frontAxle(kilograms(500)).build(),
            "WeighedVehicle is missing 1 of 2 required fields: rearAxle"),
        bad(
            () -> base().frontLeft(kilograms(250)).rearRight(kilograms(200)).build(),
            "WeighedVehicle is missing 2 of 4 required fields: frontRight, rearLeft"),
        bad(
            () -> base().frontAxle(kilograms(0)).rearAxle(kilograms(10)).build(),
            "WeighedVehicle.frontAxle must be > 0 kg, but was 0 kg"),
        bad(
            () -> base().frontAxle(kilograms(10)).rearAxle(kilograms(0)).build(),
            "WeighedVehicle.rearAxle must be > 0 kg, but was 0 kg"),
        bad(
            () -> Vans.full().frontAxle(kilograms(562)).build(),
            "WeighedVehicle.frontAxle must be within 1.5 kg of the sum of its parts, 560 kg, but was 562 kg"),
        bad(
            () -> Vans.full().rearAxle(kilograms(468)).build(),
            "WeighedVehicle.rearAxle must be within 1.5 kg of the sum of its parts, 470 kg, but was 468 kg"),
        bad(
            () -> Vans.full().total(kilograms(1033)).build(),
            "WeighedVehicle.total must be within 2.5 kg of the sum of its parts, 1030 kg, but was 1033 kg"),
        bad(
            () -> MassLedger.of(Vans.plain()).removing(Vans.item("all", 1200, 1, 0)),
            "MassLedger.removed must be < 1030 kg, the weighed vehicle, but was 1200 kg"),
        bad(
            () -> Vans.full().frontTrack(metres(0)),
            "WeighedVehicle.frontTrack must be > 0 m, but was 0 m"),
        bad(
            () -> Vans.full().rearTrack(metres(-1)),
            "WeighedVehicle.rearTrack must be > 0 m, but was -1 m"),
        bad(
            () -> Vans.full().centreOfGravityHeight(metres(0)),
            "WeighedVehicle.centreOfGravityHeight must be > 0 m, but was 0 m"),
        bad(
            () ->
                base()
                    .frontAxle(kilograms(1))
                    .rearAxle(kilograms(1))
                    .frontRollStiffness(Given.measured(newtonMetresPerDegree(0), "test"))
                    .rearRollStiffness(Given.measured(newtonMetresPerDegree(0), "test"))
                    .build(),
            "WeighedVehicle.frontRollStiffness + rearRollStiffness must be > 0 N·m/rad, but was 0 N·m/rad"),
        bad(
            () -> Seating.driverAt(PLACE).row("bench", 0, PLACE),
            "Seating.row bench.passengers must be ≥ 1, but was 0"),
        bad(
            () ->
                LoadCase.withDriver(
                    Seating.driverAt(PLACE).occupantsOf(OccupantMass.WITH_LUGGAGE_68_7_KG)),
            "Seating.luggageAt must be given, since each occupant has 7 kg of luggage, but was missing"),
        bad(
            () -> MassLedger.of(Vans.plain()).ladenTo(kilograms(0), LoadCase.KERB, PLACE),
            "MassLedger.grossMass must be > 0 kg, but was 0 kg"),
        bad(
            () -> MassLedger.of(Vans.plain()).influenceOf(PLACE).on(Axle.FRONT, Side.LEFT),
            "LoadInfluence must be determined for wheels (sideways place, tracks, roll stiffness known), but was not determined"),
        bad(
            () -> MassLedger.of(Vans.plain()).after(LoadCase.KERB).placeFor(kilograms(0), 0.5),
            "LoadState.placeFor.mass must be > 0 kg, but was 0 kg"),
        bad(
            () -> MassLedger.of(Vans.plain()).after(LoadCase.KERB).placeFor(kilograms(1), 50),
            "LoadState.placeFor.frontShare must be from 0 to 1, but was 50.0"));
  }

  static Stream<Arguments> estimates() {
    return Stream.of(
        bad(
            () ->
                CorneringStiffness.ofAxle(Axle.FRONT, newtons(900), degrees(1)).estimatedWithin(1),
            "CorneringStiffness.mostOff must be ≥ 0 and < 1, but was 1.0"),
        bad(
            () ->
                BrakeHeat.of(
                        BrakeHeatSink.uncooled(Axle.FRONT, joulesPerKelvin(9000)),
                        org.wattwright.units.Measures.celsius(300))
                    .estimatedWithin(Double.NaN),
            "BrakeHeat.mostOff must be ≥ 0 and < 1, but was NaN"),
        bad(
            () -> lift().reading(kilograms(100)).rise(metres(0.6)).build(),
            "AxleLift.reading must be such that the centre of gravity is above the ground, but was"
                + " 100 kg, which puts it at -3.536 m"),
        bad(
            () -> Tyre.parse("round and black"),
            "Tyre must be a designation such as 175/70 R14 84T, 185R14C 102/100Q or 5.60-15, but was"
                + " \"round and black\""));
  }

  static Stream<Arguments> lifts() {
    return Stream.of(
        bad(
            () -> lift().build(),
            "AxleLift is missing 2 of 4 required fields: reading, rise or angle"),
        bad(() -> lift().rise(metres(1.7)), "AxleLift.rise must be ≤ 1.633 m (45°), but was 1.7 m"),
        bad(() -> lift().angle(degrees(50)), "AxleLift.angle must be > 0 and ≤ 45 °, but was 50 °"),
        bad(
            () -> lift().reading(kilograms(580)).rise(metres(0.6)).angle(degrees(15)).build(),
            "AxleLift.angle must be left out where the rise is given, but was 15 °"),
        bad(
            () -> AxleLift.expectedGain(Vans.plain(), metres(0.3), metres(0.6)),
            "WeighedVehicle.centreOfGravityHeight must be given, but was missing"),
        bad(
            () -> AxleLift.expectedGain(Vans.full().build(), metres(0.3), metres(2.31)),
            "AxleLift.rise must be < wheelbase, 2.31 m, but was 2.31 m"));
  }

  static Stream<Arguments> tyres() {
    String known = " must be a designation such as 175/70 R14 84T, 185R14C 102/100Q or 5.60-15";
    return Stream.of(
        bad(() -> Tyre.parse("five sixty"), "Tyre" + known + ", but was \"five sixty\""),
        bad(() -> Tyre.parse("175/70 R14 84"), "Tyre" + known + ", but was \"175/70 R14 84\""),
        bad(() -> Tyre.parse(""), "Tyre" + known + ", but was \"\""),
        bad(
            () -> Tyre.parse("175/70 R14 59T"),
            "LoadIndex.index must be from 60 to 130, but was 59"),
        bad(
            () -> Tyre.parse("175/70 R14 84X"),
            "SpeedSymbol must be one of B C D E F G J K L M N P Q R S T U H V W Y, but was \"X\""),
        bad(
            () -> Tyre.parse("185R14C 100/102Q"),
            "Tyre.twinLoadIndex must be ≤ 100, the single one, but was 102"),
        bad(() -> Tyre.parse("99/70 R14"), "Tyre" + known + ", but was \"99/70 R14\""),
        bad(() -> Tyre.parse("400/70 R14"), "Tyre.width [mm] must be from 100 to 365, but was 400"),
        bad(() -> Tyre.parse("175/10 R14"), "Tyre.aspect [%] must be from 25 to 100, but was 10"),
        bad(() -> Tyre.parse("5.60-30"), "Tyre.rim [in] must be from 8 to 26, but was 30"),
        bad(() -> Tyre.nominalRimDiameter(7), "Tyre.rimCode must be from 8 to 26, but was 7"),
        bad(
            () -> InflationLaw.of(kilograms(0), kilopascals(250)),
            "InflationLaw.maximumLoad must be > 0 kg, but was 0 kg"),
        bad(
            () -> InflationLaw.of(kilograms(500), kilopascals(0)),
            "InflationLaw.reference must be > 0 kPa, but was 0 kPa"),
        bad(
            () -> LoadIndex.lowestFor(kilograms(-1)),
            "LoadIndex.load must be ≥ 0 kg, but was -1 kg"));
  }

  static Stream<Arguments> effects() {
    return Stream.of(
        bad(
            () -> Stance.of(kilograms(1000), metres(2.3), PLACE),
            "Stance.centreOfGravity.aboveGround must be > 0 m, but was missing"),
        bad(
            () -> STANCE.axleForces(20, metresPerSecondSquared(0)),
            "Stance.grade must be from -1 to 1, but was 20.0"),
        bad(
            () -> STANCE.axleForces(Double.NaN, metresPerSecondSquared(0)),
            "Stance.grade must be from -1 to 1, but was NaN"),
        bad(
            () -> STANCE.tractionLimit(Axle.REAR, -0.1),
            "Stance.adhesion must be from 0 to 2, but was -0.1"),
        bad(
            () -> STANCE.withGravity(metresPerSecondSquared(0)),
            "Stance.gravity must be > 0 m/s², but was 0 m/s²"),
        bad(
            () -> BrakeBalance.of(STANCE, 30),
            "BrakeBalance.rearShare must be from 0 to 1, but was 30.0"),
        bad(
            () -> BALANCE.idealForce(Axle.FRONT, 3),
            "BrakeBalance.rate must be from 0 to 2, but was 3.0"),
        bad(
            () -> BALANCE.firstLock(0),
            "BrakeBalance.adhesion must be > 0 and finite, but was 0.0"),
        bad(
            () -> BrakeBalance.leastRate(0.1),
            "BrakeBalance.adhesion must be from 0.2 to 0.8, but was 0.1"),
        bad(() -> BALANCE.idealCurve(0, 1), "BrakeBalance.steps must be from 1 to 1000, but was 0"),
        bad(
            () -> ParkingBrake.on(Axle.REAR).withForce(newtons(0), Basis.MEASURED),
            "ParkingBrake.force must be > 0 N, but was 0 N"),
        bad(
            () -> ParkingBrake.on(Axle.REAR).check(STANCE, 20, 0.8),
            "ParkingBrake.grade must be from 0 to 1, but was 20.0"),
        bad(
            () -> StabilityFactor.of(STANCE, metres(0)),
            "StabilityFactor.track must be > 0 m, but was 0 m"),
        bad(
            () -> AxleSpring.of(Axle.REAR, newtonsPerMillimetre(0), millimetres(70)),
            "AxleSpring.wheelRate must be > 0 N/mm, but was 0 N/mm"),
        bad(
            () -> Descent.builder().mass(kilograms(1000)).speed(kilometresPerHour(40)).build(),
            "Descent is missing 2 of 4 required fields: drop, distance"),
        bad(
            () ->
                Descent.builder()
                    .mass(kilograms(1000))
                    .speed(kilometresPerHour(40))
                    .drop(metres(500))
                    .distance(metres(400))
                    .build(),
            "Descent.drop must be < distance, 400 m, but was 500 m"),
        bad(
            () -> new BrakeHeatSink(Axle.REAR, joulesPerKelvin(0), wattsPerKelvin(0)),
            "BrakeHeatSink.capacity must be > 0 J/K, but was 0 J/K"),
        bad(
            () ->
                Understeer.of(
                    STANCE,
                    CorneringStiffness.ofAxle(Axle.REAR, newtons(1), degrees(1)),
                    CorneringStiffness.ofAxle(Axle.FRONT, newtons(1), degrees(1))),
            "Understeer.front, rear must be of front and rear axle, but was rear, front"),
        bad(
            () ->
                AxleLimits.builder()
                    .grossMass(kilograms(1300))
                    .grossCombination(kilograms(1200))
                    .build(),
            "AxleLimits.grossCombination must be ≥ gross mass, 1300 kg, but was 1200 kg"),
        bad(
            () -> new AxleShareRule("kerb", Axle.FRONT, 0.6, 0.4),
            "AxleShareRule.least must be ≤ most, 0.4, but was 0.6"),
        bad(
            () -> new KerbMassRule(Double.NaN, 0.2),
            "KerbMassRule.largestRise must be ≥ 0 and finite, but was NaN"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource({"masses", "estimates", "lifts", "tyres", "effects"})
  void namesFieldBoundAndValue(String message, ThrowingCallable call) {
    assertThatExceptionOfType(InvalidInputException.class).isThrownBy(call).withMessage(message);
  }

  @Test
  void liftThatPutsTheCentreBelowGroundIsRejected() {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> lift().reading(kilograms(400)).rise(metres(0.6)).build())
        .withMessageStartingWith("AxleLift.reading must be such that")
        .withMessageContaining("400 kg");
  }

  @Test
  void speedBeyondTheCriticalOneHasNoYawGain() {
    Understeer oversteer =
        Understeer.of(
            STANCE,
            CorneringStiffness.ofAxle(Axle.FRONT, newtons(1500), degrees(1)),
            CorneringStiffness.ofAxle(Axle.REAR, newtons(900), degrees(1)));
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> oversteer.yawVelocityGain(kilometresPerHour(400)))
        .withMessageStartingWith("Understeer.speed must be < critical speed, ")
        .withMessageEndingWith("but was 400 km/h");
  }

  @Test
  void readingsMayDifferWithinTheirTolerance() {
    WeighedVehicle van =
        Vans.full().readingTolerance(kilograms(2)).frontAxle(kilograms(565)).build();
    assertThat(van.axles().front()).isEqualTo(kilograms(560));
  }
}
