package org.wattwright.conversion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.kilometres;
import static org.wattwright.units.Measures.kilometresPerHour;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.newtonMetres;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.revolutionsPerMinute;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.squareMetres;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.wattwright.battery.Ageing;
import org.wattwright.battery.Pack;
import org.wattwright.battery.PackState;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Checks;
import org.wattwright.check.Given;
import org.wattwright.check.Outcome;
import org.wattwright.check.Source;
import org.wattwright.drive.CycleRun;
import org.wattwright.drive.DriveCycle;
import org.wattwright.drive.Driveline;
import org.wattwright.drive.ElectricVehicle;
import org.wattwright.drive.Gear;
import org.wattwright.drive.MotorEnvelope;
import org.wattwright.drive.MotorLoss;
import org.wattwright.drive.Performance;
import org.wattwright.drive.RoadLoad;
import org.wattwright.drive.RollingResistance;
import org.wattwright.drive.StandardCycle;
import org.wattwright.drive.Traction;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.vehicle.Axle;
import org.wattwright.vehicle.Position;
import org.wattwright.vehicle.Stance;

class MotionTest {
  private static final Source JOB = Source.requirement("job");
  private static final DriveCycle ECE = StandardCycle.ECE_15.cycle();
  private static final Pack PACK = InventedVan.pack(InventedVan.cell().build());

  private static ElectricVehicle vehicle(Pack pack, double massKg) {
    MotorEnvelope motor =
        MotorEnvelope.of("motor")
            .peak(newtonMetres(120), kilowatts(20))
            .maximumSpeed(revolutionsPerMinute(6000))
            .loss(MotorLoss.constantEfficiency(0.88))
            .build();
    Driveline driveline =
        Driveline.of(
                Given.measured(metres(1.8), "rolled out"),
                Gear.of("fixed", 8, 0.96).withTorqueLimit(newtonMetres(150)))
            .withHalfShaftLimit(Given.dataSheet(newtonMetres(600), "half-shaft"));
    RoadLoad load =
        RoadLoad.of(
            kilograms(massKg),
            RollingResistance.of(0.012, Basis.MEASURED, Source.measurement("towed")),
            squareMetres(0.9));
    Stance stance =
        Stance.of(
            kilograms(massKg),
            metres(2.3),
            Position.behindFrontAxle(metres(1.2)).aboveGround(metres(0.5)));
    return ElectricVehicle.of(motor, driveline, load, pack)
        .at(PackState.of(percentCharge(100), celsius(20)))
        .traction(Traction.of(stance, Axle.REAR, 0.8))
        .build();
  }

  private static Motion.Builder builder() {
    return Motion.of(vehicle(PACK, 1000))
        .laden(vehicle(PACK, 1300))
        .cycle(ECE)
        .reserve(percentCharge(10))
        .winter(celsius(-10), kilowatts(2));
  }

  private static Check check(Motion motion, String code) {
    return Checks.withCode(motion.checks(), code).get(0);
  }

  @Test
  void rangesAreThoseOfTheVehicleInEachState() {
    Motion motion = builder().aged(Given.measured(Ageing.of(0.9, 1.2), "capacity test")).build();
    for (RangeCase state : RangeCase.values()) {
      ElectricVehicle vehicle = motion.vehicleIn(state).orElseThrow();
      assertThat(motion.range(state, ECE))
          .contains(CycleRun.of(vehicle).range(ECE, percentCharge(10)));
    }
    assertThat(motion.vehicleIn(RangeCase.AGED).orElseThrow().pack())
        .isEqualTo(PACK.aged(Ageing.of(0.9, 1.2)));
    ElectricVehicle cold = motion.vehicleIn(RangeCase.WINTER).orElseThrow();
    assertThat(Kind.POWER.siValueOf(cold.steadyLoad())).isEqualTo(2000, within(1e-9));
    assertThat(cold.state()).isEqualTo(PackState.of(percentCharge(100), celsius(-10)));
    assertThat(motion.range(RangeCase.NEW, StandardCycle.UDDS.cycle())).isEmpty();
  }

  /** Air of −10 °C at 101.325 kPa: 101325/(287.05·263.15) = 1.3414 kg/m³. */
  @Test
  void winterAirIsDenser() {
    ElectricVehicle cold = builder().build().vehicleIn(RangeCase.WINTER).orElseThrow();
    RoadLoad summer = vehicle(PACK, 1000).roadLoad();
    double dragN = 0.5 * 101325 / (287.05 * 263.15) * 0.9 * 20 * 20;
    double rollN = 1000 * 9.80665 * 0.012;
    assertThat(Kind.FORCE.siValueOf(cold.roadLoad().at(kilometresPerHour(72))))
        .isEqualTo(dragN + rollN, within(1e-9 * (dragN + rollN)));
    assertThat(cold.roadLoad().mass()).isEqualTo(summer.mass());
  }

  @Test
  void lessRangeLadenAgedAndInWinter() {
    Motion motion = builder().build();
    Map<RangeCase, Double> km =
        List.of(RangeCase.values()).stream()
            .collect(
                Collectors.toMap(
                    s -> s,
                    s -> Kind.LENGTH.siValueOf(motion.range(s, ECE).orElseThrow().distance())));
    assertThat(km.get(RangeCase.NEW))
        .isGreaterThan(km.get(RangeCase.LADEN))
        .isGreaterThan(km.get(RangeCase.AGED))
        .isGreaterThan(km.get(RangeCase.WINTER));
  }

  @Test
  void whatIsAskedIsCheckedAgainstTheRightVehicle() {
    Motion motion =
        builder()
            .holds(kilometresPerHour(40), 0.05, JOB)
            .startsOn(0.15, JOB)
            .topSpeed(kilometresPerHour(200), JOB)
            .reaches(kilometresPerHour(50), seconds(60), JOB)
            .goes(RangeCase.NEW, kilometres(10), JOB)
            .goes(RangeCase.AGED, kilometres(10), JOB)
            .build();
    Performance asNew = Performance.of(vehicle(PACK, 1000));
    Performance laden = Performance.of(vehicle(PACK, 1300));
    assertThat(check(motion, "drive.hold").actual().orElseThrow().number())
        .isEqualTo(asNew.gradeAt(kilometresPerHour(40)).grade());
    Check start = check(motion, "drive.start");
    assertThat(start.actual().orElseThrow().number()).isEqualTo(laden.startingGrade().grade());
    assertThat(start.isSafety()).isTrue();
    assertThat(check(motion, "drive.top-speed").outcome()).isEqualTo(Outcome.FAIL);
    assertThat(check(motion, "drive.time").outcome()).isEqualTo(Outcome.PASS);
    assertThat(check(motion, "range.new").source()).isEqualTo(JOB);
    assertThat(check(motion, "range.aged").estimates()).isNotEmpty();
    assertThat(check(motion, "range.new").estimates()).isEmpty();
    assertThat(check(motion, "drive.follow").outcome()).isEqualTo(Outcome.PASS);
    assertThat(Checks.withCode(motion.checks(), "drive.half-shaft")).hasSize(2);
    assertThat(Checks.withCode(motion.checks(), "drive.traction")).hasSize(2);
  }

  @Test
  void aSpeedOutOfReachFails() {
    Motion motion = builder().reaches(kilometresPerHour(180), seconds(60), JOB).build();
    assertThat(check(motion, "drive.time").outcome()).isEqualTo(Outcome.FAIL);
    Optional<Boolean> possible = motion.smallestCurrent().map(s -> s.isPossible());
    assertThat(possible).contains(false);
  }

  @Test
  void whatIsNotKnownIsNotChecked() {
    Motion motion =
        Motion.of(vehicle(PACK, 1000))
            .cycle(ECE)
            .reserve(percentCharge(10))
            .startsOn(0.1, JOB)
            .goes(RangeCase.WINTER, kilometres(5), JOB)
            .build();
    assertThat(check(motion, "drive.start").missing()).containsExactly("Motion.laden");
    assertThat(check(motion, "range.winter").missing()).containsExactly("Motion.winter");
    assertThat(motion.smallestCurrent()).isEmpty();
    assertThat(motion.limitedDrives()).isEmpty();
    assertThat(motion)
        .hasToString(
            "range on ECE-15: new "
                + km(motion, RangeCase.NEW)
                + ", aged "
                + km(motion, RangeCase.AGED));
  }

  private static String km(Motion motion, RangeCase state) {
    return MotionRuns.distance(motion.range(state, ECE).orElseThrow());
  }

  @Test
  void theSmallestCurrentJustMeetsWhatIsAsked() {
    Motion motion =
        builder()
            .holds(kilometresPerHour(40), 0.02, JOB)
            .currentLimits(List.of(amperes(100), amperes(200)))
            .build();
    double leastA =
        Kind.CURRENT.siValueOf(motion.smallestCurrent().orElseThrow().limit().orElseThrow());
    ElectricVehicle van = motion.vehicle();
    double above =
        Performance.of(van.withCurrentLimit(amperes(leastA * 1.001)))
            .gradeAt(kilometresPerHour(40))
            .grade();
    double below =
        Performance.of(van.withCurrentLimit(amperes(leastA * 0.999)))
            .gradeAt(kilometresPerHour(40))
            .grade();
    assertThat(above).isGreaterThan(0.02);
    assertThat(below).isLessThan(0.02);
    assertThat(motion.limitedDrives()).hasSize(2);
  }

  @Test
  void theReviewHasItsChecksAndOneIfThereIsNone() {
    Motion motion = builder().build();
    Conversion with = InventedVan.conversion().motion(motion).build();
    assertThat(with.review()).containsAll(motion.checks());
    assertThat(Checks.withCode(with.review(), "drive.motion")).isEmpty();
    Check missing =
        Checks.withCode(InventedVan.conversion().build().review(), "drive.motion").get(0);
    assertThat(missing.outcome()).isEqualTo(Outcome.NOT_CHECKED);
    assertThat(missing.missing()).containsExactly("Conversion.motion");
    assertThat(with.fingerprint())
        .isNotEqualTo(InventedVan.conversion().build().fingerprint())
        .isNotEqualTo(
            InventedVan.conversion()
                .motion(builder().reserve(percentCharge(11)).build())
                .build()
                .fingerprint())
        .isEqualTo(InventedVan.conversion().motion(builder().build()).build().fingerprint());
  }

  @Test
  void theSheetHasThreeSections() {
    Motion motion =
        builder().startsOn(0.1, JOB).currentLimits(List.of(amperes(100), amperes(200))).build();
    Conversion with = InventedVan.conversion().motion(motion).build();
    assertThat(SheetSections.of(with).motion())
        .extracting(Section::title)
        .containsExactly("Performance", "Range", "Power limit");
    String sheet = MarkdownSheet.render(with.toSheet()).replaceAll(" +", " ");
    assertThat(sheet)
        .contains("| ECE-15 | winter | ", "| battery | ", "| start on 10 % with 1300 kg | ")
        .contains("| 100 A | ")
        .contains("Working of the range");
    assertThat(MarkdownSheet.render(InventedVan.conversion().build().toSheet()))
        .contains("nothing is said about performance and range");
  }

  @Test
  void rejectsWhatIsMissingOrOfAnotherPack() {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> Motion.of(vehicle(PACK, 1000)).build())
        .withMessage("Motion is missing 2 of 2 required fields: cycle, reserve");
    Pack other = Pack.of(InventedVan.module(InventedVan.cell().build()), 8, 2);
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> builder().laden(vehicle(other, 1300)).build())
        .withMessageContaining("Motion.laden.pack");
    Motion motion = Motion.of(vehicle(other, 1000)).cycle(ECE).reserve(percentCharge(10)).build();
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> InventedVan.conversion().motion(motion).build())
        .withMessageContaining("Conversion.motion");
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> builder().startsOn(Double.NaN, JOB));
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> builder().goes(RangeCase.NEW, kilometres(0), JOB));
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> builder().winter(celsius(0), kilowatts(-1)));
  }
}
