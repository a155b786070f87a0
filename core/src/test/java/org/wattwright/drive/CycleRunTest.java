package org.wattwright.drive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kilometresPerHour;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.watts;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.wattwright.battery.Ageing;
import org.wattwright.battery.PackState;
import org.wattwright.check.Source;
import org.wattwright.profile.Profile;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.StateOfCharge;

/** Energy on a cycle: books that balance, edges, and what ends a range. */
class CycleRunTest {
  private static double j(EnergyBalance balance, EnergyPart part) {
    return Kind.ENERGY.siValueOf(balance.of(part));
  }

  private static double whPerKm(CycleResult result) {
    return Kind.ENERGY_PER_DISTANCE.siValueOf(result.consumption().orElseThrow()) / 3.6;
  }

  private static DriveCycle steady(double kmh, double durationS) {
    return DriveCycle.of(
        "steady",
        Source.AS_GIVEN,
        Profile.segments(Kind.SPEED).hold(kilometresPerHour(kmh), seconds(durationS)).build());
  }

  @ParameterizedTest
  @EnumSource
  void partsAddUpToTheBattery(StandardCycle standard) {
    EnergyBalance balance = CycleRun.of(InventedDrive.van()).once(standard.cycle()).balance();
    double batteryJ = Kind.ENERGY.siValueOf(balance.battery());
    assertThat(Kind.ENERGY.siValueOf(balance.sum())).isCloseTo(batteryJ, within(1e-9 * batteryJ));
  }

  @ParameterizedTest
  @EnumSource(names = {"ECE_15", "UDDS", "WLTC_CLASS_1"})
  void kineticEnergyOfARoundTripIsZero(StandardCycle standard) {
    CycleResult result = CycleRun.of(InventedDrive.van()).once(standard.cycle());
    assertThat(j(result.balance(), EnergyPart.KINETIC)).isCloseTo(0, within(1e-6));
    assertThat(result.following().isComplete()).isTrue();
    assertThat(Kind.LENGTH.siValueOf(result.distance()))
        .isCloseTo(standard.cycle().distanceM(), within(1e-6));
  }

  @Test
  void chargeTakenFromThePackIsTheIntegralOfTheCurrent() {
    CycleResult result = CycleRun.of(InventedDrive.van()).once(StandardCycle.UDDS.cycle());
    double chargeC = Kind.CHARGE.siValueOf(result.current().integral(Kind.CHARGE));
    double capacityC = Kind.CHARGE.siValueOf(InventedDrive.pack().capacity());
    assertThat(0.95 - result.endCharge().fraction()).isCloseTo(chargeC / capacityC, within(1e-12));
    assertThat(Kind.CURRENT.siValueOf(result.rmsCurrent()))
        .isGreaterThanOrEqualTo(Kind.CURRENT.siValueOf(result.current().rms()) - 1e-9);
  }

  /** P = (R·v/η_gear/η_motor + P_aux) at the terminals, worked out by hand. */
  @Test
  void steadySpeedOnTheLevelIsRoadLoadOverEfficiencies() {
    CycleResult result = CycleRun.of(InventedDrive.van()).once(steady(60, 100));
    double speedMs = 60 / 3.6;
    double forceN = 1180 * 9.80665 * 0.012 + 0.5 * 1.189 * 0.9 * speedMs * speedMs;
    double powerW = forceN * speedMs / 0.96 / 0.88 + 300;
    assertThat(whPerKm(result)).isCloseTo(powerW / speedMs / 3.6, within(1e-9));
    assertThat(result.worksheet().toText()).contains("e = E_T/s");
  }

  @Test
  void standingStillUsesOnlyTheAuxiliariesAndHasNoConsumption() {
    CycleResult result = CycleRun.of(InventedDrive.van()).once(steady(0, 3600));
    assertThat(result.consumption()).isEmpty();
    assertThat(Kind.ENERGY.siValueOf(result.balance().terminals()))
        .isCloseTo(300 * 3600, within(1e-6));
    assertThat(j(result.balance(), EnergyPart.MOTOR)).isZero();
  }

  @Test
  void standingStillEndsAtTheReserveOrAtTheBoundNeverNot() {
    ElectricVehicle idle = InventedDrive.builder().auxiliaries(watts(0)).build();
    RangeResult result = CycleRun.of(idle).range(steady(0, 1), percentCharge(10));
    assertThat(result.endedBy()).isEqualTo(RangeEnd.MOST_CYCLES);
    assertThat(Kind.LENGTH.siValueOf(result.distance())).isZero();
  }

  @Test
  void fullPackTakesNothingBackAndTheBrakesTakeIt() {
    ElectricVehicle full = InventedDrive.van().atCharge(StateOfCharge.FULL);
    ElectricVehicle none = full.toBuilder().regeneration(Regeneration.none()).build();
    ElectricVehicle cold =
        InventedDrive.builder().at(PackState.of(percentCharge(95), celsius(-5))).build();
    DriveCycle cycle = StandardCycle.ECE_15.cycle();
    assertThat(Kind.ENERGY.siValueOf(CycleRun.of(none).once(cycle).balance().returned())).isZero();
    EnergyBalance atCold = CycleRun.of(cold).once(cycle).balance();
    assertThat(Kind.ENERGY.siValueOf(atCold.returned())).isCloseTo(0, within(1e-3));
    assertThat(j(atCold, EnergyPart.BRAKES)).isGreaterThan(20_000);
    EnergyBalance warm = CycleRun.of(InventedDrive.van()).once(cycle).balance();
    assertThat(j(warm, EnergyPart.BRAKES)).isLessThan(j(atCold, EnergyPart.BRAKES) / 2);
  }

  @Test
  void regenerationNeverExceedsWhatThePackTakes() {
    ElectricVehicle cool =
        InventedDrive.builder().at(PackState.of(percentCharge(95), celsius(3))).build();
    CycleResult result = CycleRun.of(cool).once(StandardCycle.UDDS.cycle());
    double limitA = 3.0 / 15 * 157 * 3;
    assertThat(Kind.CURRENT.siValueOf(result.peakChargeCurrent()))
        .isLessThanOrEqualTo(limitA * (1 + 1e-6))
        .isGreaterThan(limitA * 0.5);
  }

  @Test
  void weakVehicleSaysWhereAndByHowMuchItFellBehind() {
    ElectricVehicle weak = InventedDrive.van().withPowerLimit(kilowatts(20));
    CycleResult result = CycleRun.of(weak).once(StandardCycle.NEDC.cycle());
    Following following = result.following();
    assertThat(following.isComplete()).isFalse();
    assertThat(following.heldBackBy()).contains(DriveLimit.POWER_LIMIT);
    assertThat(Kind.TIME.siValueOf(following.largestGapAt())).isBetween(1000.0, 1180.0);
    assertThat(Kind.SPEED.siValueOf(following.largestGap())).isGreaterThan(5 / 3.6);
    assertThat(following.shareBehind()).isBetween(0.01, 0.3);
    RangeResult range = CycleRun.of(weak).range(StandardCycle.NEDC.cycle(), percentCharge(10));
    assertThat(range.endedBy()).isEqualTo(RangeEnd.LEFT_BEHIND);
    assertThat(Kind.LENGTH.siValueOf(range.distance())).isLessThan(11_100);
    RangeResult on =
        CycleRun.of(weak).carryingOnBehind().range(StandardCycle.NEDC.cycle(), percentCharge(10));
    assertThat(on.endedBy()).isEqualTo(RangeEnd.RESERVE);
    assertThat(Kind.LENGTH.siValueOf(on.distance())).isGreaterThan(100_000);
  }

  @Test
  void rangeIsTheSumOfItsCycles() {
    ElectricVehicle van = InventedDrive.van();
    DriveCycle cycle = StandardCycle.ECE_15.cycle();
    RangeResult range = CycleRun.of(van).range(cycle, percentCharge(20));
    assertThat(range.endedBy()).isEqualTo(RangeEnd.RESERVE);
    assertThat(range.endCharge().fraction()).isCloseTo(0.2, within(1e-4));
    double distanceM = Kind.LENGTH.siValueOf(range.distance());
    assertThat(distanceM)
        .isBetween(
            range.fullCycles() * cycle.distanceM(), (range.fullCycles() + 1) * cycle.distanceM());
    assertThat(range.worksheet().step("s")).isPresent();
  }

  /** Common practice, a loose bound: a small classic goes about 100 miles on about 30 kW·h. */
  @Test
  void smallClassicGoesAboutAHundredMilesOnThirtyKilowattHours() {
    RangeResult range =
        CycleRun.of(InventedDrive.van().atCharge(StateOfCharge.FULL))
            .range(StandardCycle.NEDC.cycle(), StateOfCharge.EMPTY);
    double miles = Kind.LENGTH.siValueOf(range.distance()) / 1609.344;
    double kilowattHours = Kind.ENERGY.siValueOf(range.balance().terminals()) / 3.6e6;
    assertThat(miles / kilowattHours * 30).isBetween(75.0, 160.0);
  }

  @Test
  void agedAndColdPacksGoLessFar() {
    ElectricVehicle van = InventedDrive.van();
    DriveCycle cycle = StandardCycle.UDDS.cycle();
    double newM = rangeM(van, cycle);
    double agedM =
        rangeM(van.toBuilder().pack(van.pack().aged(Ageing.of(0.8, 1.5))).build(), cycle);
    double winterM =
        rangeM(
            van.toBuilder()
                .at(PackState.of(percentCharge(95), celsius(-10)))
                .heater(kilowatts(2))
                .build(),
            cycle);
    assertThat(agedM).isBetween(newM * 0.75, newM * 0.8);
    assertThat(winterM).isLessThan(newM * 0.75);
  }

  private static double rangeM(ElectricVehicle vehicle, DriveCycle cycle) {
    return Kind.LENGTH.siValueOf(CycleRun.of(vehicle).range(cycle, percentCharge(10)).distance());
  }

  @Test
  void rejectsAReserveThatIsNotBelowTheStart() {
    CycleRun run = CycleRun.of(InventedDrive.van());
    DriveCycle cycle = StandardCycle.ECE_15.cycle();
    assertThatThrownBy(() -> run.range(cycle, percentCharge(95)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("CycleRun.reserve must be < 95 %");
  }
}
