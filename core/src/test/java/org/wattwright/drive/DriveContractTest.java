package org.wattwright.drive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wattwright.units.Measures.feet;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.kilometres;
import static org.wattwright.units.Measures.kilometresPerHour;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.milesPerHour;
import static org.wattwright.units.Measures.newtonMetres;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.pounds;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.squareMetres;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.units.Kind;

/** Equality, serialisation and independence of units. */
class DriveContractTest {
  static Stream<Object> values() {
    ElectricVehicle van = InventedDrive.van();
    DriveCycle cycle = StandardCycle.ECE_15.cycle();
    Performance performance = Performance.of(van);
    PowerLimitStudy study = PowerLimitStudy.of(van, cycle, percentCharge(90), InventedDrive.load());
    return Stream.of(
        van,
        InventedDrive.motor(),
        InventedDrive.driveline(),
        InventedDrive.load(),
        Gear.of("2", 2, 0.97).withTorqueLimit(newtonMetres(100)),
        MotorLoss.constantEfficiency(0.9),
        RollingResistance.radialTyre(),
        Regeneration.ofShare(0.5),
        Traction.of(InventedDrive.stance(), org.wattwright.vehicle.Axle.REAR, 0.8),
        cycle,
        CycleRun.of(van).once(cycle),
        CycleRun.of(van).range(cycle, percentCharge(90)),
        performance.topSpeed(),
        performance.gradeAt(kilometresPerHour(10)),
        performance.forceAt(kilometresPerHour(10)),
        performance.time(kilometresPerHour(0), kilometresPerHour(50)),
        performance.time(kilometresPerHour(0), kilometresPerHour(300)),
        SteadyRange.of(van).at(kilometresPerHour(50), percentCharge(90)),
        Ability.startOn(0.1).with(InventedDrive.load()),
        study.smallestCurrent(List.of(Ability.hold(kilometresPerHour(50), 0))),
        study.byCurrent(List.of(org.wattwright.units.Measures.amperes(200))).get(0),
        RangeUncertainty.of(van, cycle, percentCharge(90)).spread(20, 1));
  }

  @ParameterizedTest
  @MethodSource("values")
  void survivesSerialisation(Object value) throws Exception {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(value);
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      Object copy = in.readObject();
      assertThat(copy).isEqualTo(value).hasSameHashCodeAs(value);
      assertThat(copy.toString()).isEqualTo(value.toString());
    }
  }

  @Test
  void vehicleReadBackGivesTheSameRange() throws Exception {
    ElectricVehicle van = InventedDrive.van();
    assertThat(van.toBuilder().build()).isEqualTo(van);
    DriveCycle cycle = StandardCycle.UDDS.cycle();
    assertThat(CycleRun.of(van.toBuilder().build()).once(cycle))
        .isEqualTo(CycleRun.of(van).once(cycle));
  }

  @Test
  void unitsDoNotMatter() {
    RoadLoad metric =
        RoadLoad.of(kilograms(1000 * 0.45359237), RollingResistance.of(0.012), squareMetres(0.9));
    RoadLoad imperial = RoadLoad.of(pounds(1000), RollingResistance.of(0.012), squareMetres(0.9));
    double metricN = Kind.FORCE.siValueOf(metric.at(kilometresPerHour(50 * 1.609344)));
    assertThat(Kind.FORCE.siValueOf(imperial.at(milesPerHour(50))))
        .isCloseTo(metricN, org.assertj.core.api.Assertions.within(1e-12 * metricN));
    assertThat(AirDensity.atAltitude(feet(1000))).isEqualTo(AirDensity.atAltitude(metres(304.8)));
    assertThat(AirDensity.atAltitude(kilometres(1))).isEqualTo(AirDensity.atAltitude(metres(1000)));
    assertThat(InventedDrive.load().withMass(kilograms(900))).isNotEqualTo(InventedDrive.load());
    assertThat(seconds(60)).isEqualTo(org.wattwright.units.Measures.minutes(1));
  }
}
