package org.wattwright.drive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.kilometresPerHour;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.megapascals;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.newtonMetres;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.revolutionsPerMinute;
import static org.wattwright.units.Measures.volts;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.battery.PackState;
import org.wattwright.check.Check;
import org.wattwright.check.Given;
import org.wattwright.check.Outcome;
import org.wattwright.testing.Generator;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.vehicle.Axle;
import org.wattwright.voltage.Device;
import org.wattwright.voltage.DeviceRole;
import org.wattwright.voltage.VoltageRange;
import org.wattwright.voltage.VoltageWindow;

/** Full pedal: limits by name, properties, checks, bad input. */
class PerformanceTest {
  static java.util.stream.Stream<Generator> cases() {
    return Generator.cases(25);
  }

  private static double n(WheelForcePoint point) {
    return Kind.FORCE.siValueOf(point.peak());
  }

  @Test
  void forceAtRestIsMotorTorqueThroughTheGears() {
    WheelForcePoint point = Performance.of(InventedDrive.van()).forceAt(kilometresPerHour(0));
    assertThat(n(point)).isCloseTo(140 * 7.2 * 0.96 * 2 * Math.PI / 1.83, within(1e-9));
    assertThat(point.limit()).isEqualTo(DriveLimit.MOTOR_TORQUE);
    assertThat(Kind.FORCE.siValueOf(point.continuous())).isCloseTo(n(point) / 2, within(1e-9));
  }

  @Test
  void namesTheLimit() {
    ElectricVehicle van = InventedDrive.van();
    assertThat(limit(van.withCurrentLimit(amperes(150)), 60)).isEqualTo(DriveLimit.CURRENT_LIMIT);
    assertThat(limit(van.withPowerLimit(kilowatts(15)), 60)).isEqualTo(DriveLimit.POWER_LIMIT);
    Traction ice = Traction.of(InventedDrive.stance(), Axle.REAR, 0.1);
    assertThat(limit(van.toBuilder().traction(ice).build(), 10)).isEqualTo(DriveLimit.ADHESION);
    PackState cold = PackState.of(percentCharge(10), celsius(-20));
    assertThat(limit(van.toBuilder().at(cold).build(), 60)).isEqualTo(DriveLimit.PACK);
    Driveline weak =
        Driveline.of(
            Given.measured(metres(1.83), "rolled"),
            Gear.of("2", 7.2, 0.96).withTorqueLimit(newtonMetres(90)));
    assertThat(limit(van.toBuilder().driveline(weak).build(), 10))
        .isEqualTo(DriveLimit.GEAR_TORQUE);
    Device inverter =
        Device.of(
                "inverter",
                DeviceRole.INVERTER,
                VoltageWindow.operating(VoltageRange.between(volts(70), volts(130))))
            .maximumCurrent(amperes(200))
            .build();
    MotorEnvelope motor = van.motor().toBuilder().inverter(inverter).build();
    assertThat(limit(van.toBuilder().motor(motor).build(), 60)).isEqualTo(DriveLimit.INVERTER);
  }

  private static DriveLimit limit(ElectricVehicle vehicle, double kmh) {
    return Performance.of(vehicle).forceAt(kilometresPerHour(kmh)).limit();
  }

  @Test
  void currentLimitIsMetExactly() {
    ElectricVehicle van = InventedDrive.van().withCurrentLimit(amperes(150));
    double forceN = n(Performance.of(van).forceAt(kilometresPerHour(60)));
    double terminalW = forceN * 60 / 3.6 / 0.96 / 0.88 + 300;
    PackTable pack = van.packTable();
    double expectedW = 150 * (pack.openCircuitV(0.95) - 150 * pack.ohm(0.95, true));
    assertThat(terminalW).isCloseTo(expectedW, within(1e-6 * expectedW));
  }

  @Test
  void topSpeedIsMotorSpeedOrForceBalance() {
    LimitedSpeed fast = Performance.of(InventedDrive.van()).topSpeed();
    assertThat(fast.limit()).isEqualTo(DriveLimit.MOTOR_SPEED);
    assertThat(Kind.SPEED.siValueOf(fast.speed()))
        .isCloseTo(8000 / 60.0 * 1.83 / 7.2, within(1e-9));
    Performance limited = Performance.of(InventedDrive.van().withPowerLimit(kilowatts(12)));
    LimitedSpeed slow = limited.topSpeed();
    WheelForcePoint there = limited.forceAt(slow.speed());
    assertThat(n(there)).isCloseTo(Kind.FORCE.siValueOf(there.roadLoad()), within(1e-3));
    assertThat(slow.limit()).isEqualTo(DriveLimit.POWER_LIMIT);
    assertThat(limited.topSpeedWorksheet().step("v_max")).isPresent();
  }

  @Test
  void gradeUsesUpTheForce() {
    Performance performance = Performance.of(InventedDrive.van());
    LimitedGrade grade = performance.gradeAt(kilometresPerHour(30));
    double neededN =
        Kind.FORCE.siValueOf(InventedDrive.load().at(kilometresPerHour(30), grade.grade()));
    assertThat(n(performance.forceAt(kilometresPerHour(30)))).isCloseTo(neededN, within(1e-8));
    assertThat(performance.gradeWorksheet(kilometresPerHour(30)).step("q")).isPresent();
    LimitedSpeed onIt = performance.topSpeedOn(grade.grade() - 1e-9);
    assertThat(Kind.SPEED.siValueOf(onIt.speed())).isGreaterThanOrEqualTo(30 / 3.6 - 1e-3);
  }

  @Test
  void speedThatIsNotReachedSaysWhere() {
    TimeToSpeed time =
        Performance.of(InventedDrive.van().withPowerLimit(kilowatts(12)))
            .time(kilometresPerHour(0), kilometresPerHour(115));
    assertThat(time.isReached()).isFalse();
    assertThat(time.time()).isEmpty();
    assertThat(time.limit()).contains(DriveLimit.POWER_LIMIT);
    TimeToSpeed beyond =
        Performance.of(InventedDrive.van()).time(kilometresPerHour(0), kilometresPerHour(200));
    assertThat(beyond.limit()).contains(DriveLimit.MOTOR_SPEED);
  }

  @Test
  void severalGearsAreAtLeastAsQuickAsAnyOne() {
    Driveline box =
        Driveline.of(
                Given.measured(metres(1.83), "rolled"),
                Gear.of("2", 2.4, 0.97),
                Gear.of("3", 1.5, 0.97))
            .withFinalDrive(4.2, 0.97);
    ElectricVehicle van = InventedDrive.builder().driveline(box).build();
    Performance performance = Performance.of(van);
    double best = s(performance.time(kilometresPerHour(0), kilometresPerHour(60)));
    for (Gear gear : box.gears()) {
      assertThat(best)
          .isLessThanOrEqualTo(
              s(performance.timeIn(gear, kilometresPerHour(0), kilometresPerHour(60))));
    }
    assertThat(performance.forceAt(kilometresPerHour(5)).gear()).isEqualTo("2");
    assertThatThrownBy(
            () ->
                performance.timeIn(Gear.of("9", 1, 1), kilometresPerHour(0), kilometresPerHour(60)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("Performance.gear");
  }

  private static double s(TimeToSpeed time) {
    return Kind.TIME.siValueOf(time.time().orElseThrow());
  }

  /** More mass, drag or less current never helps. */
  @ParameterizedTest
  @MethodSource("cases")
  void isMonotone(Generator random) {
    double kg = random.between(800, 1600);
    double m2 = random.between(0.4, 1.2);
    double ampere = random.between(150, 500);
    RoadLoad load =
        RoadLoad.of(
            kilograms(kg),
            RollingResistance.of(0.012),
            org.wattwright.units.Measures.squareMetres(m2));
    ElectricVehicle base =
        InventedDrive.builder().roadLoad(load).currentLimit(amperes(ampere)).build();
    double time = fifty(base);
    double range = rangeM(base);
    ElectricVehicle heavier = base.withRoadLoad(load.withMass(kilograms(kg * 1.1)));
    ElectricVehicle blunter = base.withRoadLoad(load.scaled(1, 1.1));
    assertThat(fifty(heavier)).isGreaterThan(time);
    assertThat(fifty(blunter)).isGreaterThan(time);
    assertThat(fifty(base.withCurrentLimit(amperes(ampere * 0.8)))).isGreaterThanOrEqualTo(time);
    assertThat(rangeM(heavier)).isLessThan(range);
    assertThat(rangeM(blunter)).isLessThan(range);
  }

  private static double fifty(ElectricVehicle vehicle) {
    return s(Performance.of(vehicle).time(kilometresPerHour(0), kilometresPerHour(50)));
  }

  private static double rangeM(ElectricVehicle vehicle) {
    return Kind.LENGTH.siValueOf(
        CycleRun.of(vehicle)
            .carryingOnBehind()
            .range(StandardCycle.ECE_15.cycle(), percentCharge(80))
            .distance());
  }

  @Test
  void sagBelowTheRatedVoltageTakesPower() {
    MotorEnvelope rated = InventedDrive.motor().toBuilder().ratedVoltage(volts(105)).build();
    ElectricVehicle van = InventedDrive.van();
    double without = n(Performance.of(van).forceAt(kilometresPerHour(80)));
    double with =
        n(Performance.of(van.toBuilder().motor(rated).build()).forceAt(kilometresPerHour(80)));
    assertThat(with).isLessThan(without * 0.97);
  }

  @Test
  void halfShaftCheckTakesTheLesserOfMotorAndGrip() {
    Check unknown = Performance.of(InventedDrive.van()).checkHalfShaft();
    assertThat(unknown.outcome()).isEqualTo(Outcome.NOT_CHECKED);
    assertThat(unknown.missing()).containsExactly("Driveline.halfShaftLimit");
    double actualNm = 140 * 7.2 * 0.96 / 2;
    assertThat(half(1.001 * actualNm).outcome()).isEqualTo(Outcome.CAUTION);
    assertThat(half(1.5 * actualNm).outcome()).isEqualTo(Outcome.PASS);
    assertThat(half(0.999 * actualNm).outcome()).isEqualTo(Outcome.FAIL);
    Driveline estimated =
        InventedDrive.driveline()
            .withHalfShaftLimit(HalfShaft.fromOriginalEngine(newtonMetres(100), 3.6, 4.2));
    Check check =
        Performance.of(InventedDrive.builder().driveline(estimated).build()).checkHalfShaft();
    assertThat(check.outcome()).isEqualTo(Outcome.CAUTION);
    assertThat(check.limit().orElseThrow().quantity(Kind.TORQUE))
        .isEqualTo(newtonMetres(100 * 3.6 * 4.2 / 2 * 0.8));
    Traction ice = Traction.of(InventedDrive.stance(), Axle.REAR, 0.1);
    Performance slippery = Performance.of(InventedDrive.builder().traction(ice).build());
    double slipNm =
        Kind.TORQUE.siValueOf(
            HalfShaft.atTyreSlip(
                InventedDrive.stance(), Axle.REAR, 0.1, metres(1.83 / 2 / Math.PI)));
    assertThat(
            Kind.TORQUE.siValueOf(
                slippery.checkHalfShaft().actual().orElseThrow().quantity(Kind.TORQUE)))
        .isCloseTo(slipNm, within(1e-9));
    assertThat(slippery.checkTraction().outcome()).isEqualTo(Outcome.CAUTION);
    assertThat(slippery.checks()).hasSize(3);
  }

  private static Check half(double limitNm) {
    Driveline driveline =
        InventedDrive.driveline()
            .withHalfShaftLimit(Given.dataSheet(newtonMetres(limitNm), "half-shaft"));
    return Performance.of(InventedDrive.builder().driveline(driveline).build()).checkHalfShaft();
  }

  /** τ·π·d³/16 for 25 mm and 400 MPa: 1227.2 N·m. */
  @Test
  void yieldOfARoundShaft() {
    assertThat(Kind.TORQUE.siValueOf(HalfShaft.yieldTorque(millimetres(25), megapascals(400))))
        .isCloseTo(1227.184630308513, within(1e-9));
  }

  @Test
  void rejectsNonsense() {
    Performance performance = Performance.of(InventedDrive.van());
    assertThatThrownBy(() -> performance.forceAt(kilometresPerHour(-1)))
        .hasMessage("Performance.speed must be ≥ 0 km/h, but was -1 km/h");
    assertThatThrownBy(() -> performance.time(kilometresPerHour(50), kilometresPerHour(50)))
        .hasMessageContaining("Performance.to must be > 50 km/h");
    assertThatThrownBy(() -> performance.topSpeedOn(Double.NaN))
        .hasMessageContaining("Performance.grade");
    assertThatThrownBy(() -> MotorEnvelope.of("m").build())
        .hasMessage("MotorEnvelope is missing 3 of 3 required fields: peak, maximumSpeed, loss");
    assertThatThrownBy(() -> MotorLoss.constantEfficiency(0))
        .hasMessageContaining("MotorLoss.efficiency must be > 0 and ≤ 1");
    assertThatThrownBy(
            () ->
                Driveline.of(
                    Given.measured(metres(1.8), "x"), Gear.of("1", 2, 1), Gear.of("2", 3, 1)))
        .hasMessageContaining("Driveline.gears[1].ratio must be < 2.0");
    assertThatThrownBy(
            () ->
                MotorLoss.map(
                    List.of(revolutionsPerMinute(1000)),
                    List.of(newtonMetres(10)),
                    new double[][] {{1.2}}))
        .hasMessageContaining("MotorLoss.map");
  }

  @Test
  void mapOfConstantEfficiencyIsThatEfficiencyInsideTheMap() {
    MotorLoss map =
        MotorLoss.map(
            List.of(revolutionsPerMinute(500), revolutionsPerMinute(9000)),
            List.of(newtonMetres(1), newtonMetres(200)),
            new double[][] {{0.9, 0.9}, {0.9, 0.9}});
    assertThat(map.efficiencyAt(newtonMetres(80), revolutionsPerMinute(4000)))
        .isCloseTo(0.9, within(1e-12));
    assertThat(Kind.POWER.siValueOf(map.at(newtonMetres(0), revolutionsPerMinute(4000))))
        .isGreaterThan(0);
  }
}
