package org.wattwright.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.kilometresPerHour;
import static org.wattwright.units.WorkshopUnits.KILOMETRE;
import static org.wattwright.units.WorkshopUnits.KILOMETRE_PER_HOUR;
import static org.wattwright.units.WorkshopUnits.KILOWATT_HOUR;
import static org.wattwright.units.WorkshopUnits.NEWTON;
import static org.wattwright.units.WorkshopUnits.WATT_HOUR_PER_KILOMETRE;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wattwright.check.Check;
import org.wattwright.check.Checks;
import org.wattwright.check.Outcome;
import org.wattwright.conversion.Conversion;
import org.wattwright.conversion.Motion;
import org.wattwright.conversion.RangeCase;
import org.wattwright.drive.RangeResult;
import org.wattwright.drive.SteadyRange;
import org.wattwright.drive.SteadyRangePoint;
import org.wattwright.examples.job.JobFileException;
import org.wattwright.units.Kind;

/** The moving van of the demonstration, its figures worked out by hand. */
class DrivePartsTest {
  private static final Conversion VAN = JobConversion.of(DemonstrationFolder.PATH).orElseThrow();
  private static final Motion MOTION = VAN.motion().orElseThrow();

  @TempDir Path folder;

  /**
   * 5996/min / 60 / 8.05 × 1.79 m × 3.6 = 79.996 km/h; the motor still has force to spare there.
   */
  @Test
  void topSpeedIsThatOfTheMotor() {
    double topKmh = KILOMETRE_PER_HOUR.valueOf(MOTION.performance().topSpeed().speed());
    assertThat(topKmh).isEqualTo(5996.0 / 60 / 8.05 * 1.79 * 3.6, within(1e-6));
  }

  /** 150 N·m × 8.05 × 0.96 × 2π / 1.79 m = 4069 N, below 0.7 of the load on the driven axle. */
  @Test
  void forceAtRestIsThatOfThePeakTorque() {
    double forceN = NEWTON.valueOf(MOTION.performance().forceAt(kilometresPerHour(0)).peak());
    assertThat(forceN).isEqualTo(150 * 8.05 * 0.96 * 2 * Math.PI / 1.79, within(0.01));
    assertThat(forceN).isEqualTo(4069, within(0.5));
  }

  /**
   * At 50 km/h = 13.889 m/s with 1137.7 kg: rolling 1137.7 × 9.80665 × 0.013 = 145.0 N, air 0.5 ×
   * 1.189 × 1.25 × 13.889² = 143.4 N, together 288.4 N. At the pack 288.4/(0.96 × 0.87) + 250
   * W/13.889 m/s = 363.3 N = 100.9 W·h/km.
   */
  @Test
  void consumptionAtFiftyIsThatOfRoadLoadLossesAndAuxiliaries() {
    SteadyRangePoint point =
        SteadyRange.of(MOTION.vehicle()).at(kilometresPerHour(50), MOTION.reserve());
    assertThat(WATT_HOUR_PER_KILOMETRE.valueOf(point.consumption())).isEqualTo(100.9, within(0.05));
  }

  /** Common practice, a loose bound: a small classic goes about 100 miles on about 30 kWh. */
  @Test
  void rangeOnTheMainRoadIsThatOfSmallClassics() {
    SteadyRangePoint point =
        SteadyRange.of(MOTION.vehicle()).at(kilometresPerHour(70), MOTION.reserve());
    assertThat(KILOMETRE.valueOf(point.range())).isBetween(161 / 1.5, 161 * 1.5);
  }

  /** Each range times its consumption is 90 % of the energy of the pack, less what stays in it. */
  @Test
  void rangeTimesConsumptionIsTheEnergyUsed() {
    double packKwh =
        KILOWATT_HOUR.valueOf(VAN.pack().nominalEnergy(org.wattwright.units.Measures.celsius(25)));
    for (RangeCase state : RangeCase.values()) {
      RangeResult range = MOTION.range(state, MOTION.cycles().get(0)).orElseThrow();
      double usedKwh =
          KILOMETRE.valueOf(range.distance())
              * WATT_HOUR_PER_KILOMETRE.valueOf(range.consumption().orElseThrow())
              / 1000;
      double share = state == RangeCase.AGED ? 0.8 : 1;
      assertThat(usedKwh / packKwh).as(state.toString()).isBetween(0.87 * share, 0.93 * share);
    }
  }

  @Test
  void everyWishIsCheckedAndMet() {
    assertThat(MOTION.checks())
        .extracting(Check::code)
        .contains(
            "drive.hold",
            "drive.start",
            "drive.top-speed",
            "drive.time",
            "range.new",
            "range.laden",
            "range.aged",
            "range.winter",
            "drive.half-shaft",
            "drive.traction");
    assertThat(MOTION.checks())
        .extracting(Check::outcome)
        .doesNotContain(Outcome.FAIL, Outcome.NOT_CHECKED);
  }

  /** √3 × 4 × 6500/min × 2π/60 × 0.0207 Wb = 97.6 V, under the 135 V of the inverter. */
  @Test
  void backEmfAtOverspeedIsAmongTheChecks() {
    Check check = Checks.withCode(VAN.review(), "voltage.back-emf").get(0);
    assertThat(Kind.VOLTAGE.siValueOf(check.actual().orElseThrow().quantity(Kind.VOLTAGE)))
        .isEqualTo(97.62, within(0.01));
    assertThat(check.outcome()).isEqualTo(Outcome.PASS);
  }

  @Test
  void aDriveUnitThatIsNoDeviceIsNamed() throws IOException {
    DemonstrationFolder.copyTo(folder);
    Path path = folder.resolve("drive.csv");
    Files.writeString(
        path, Files.readString(path).replace("drive unit,rear drive unit", "drive unit,front"));
    assertThatThrownBy(() -> JobConversion.of(folder))
        .isInstanceOf(JobFileException.class)
        .hasMessageContaining("drive.csv line 3")
        .hasMessageContaining("no inverter of that name: front");
  }
}
