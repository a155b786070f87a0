package org.wattwright.drive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.kilometresPerHour;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.newtonMetres;
import static org.wattwright.units.Measures.revolutionsPerMinute;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wattwright.check.Check;
import org.wattwright.check.Outcome;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.vehicle.Axle;
import org.wattwright.vehicle.Position;
import org.wattwright.vehicle.Stance;

/** Grip on slopes and with other loads, where the motor could do more than the tyres. */
class GripOnSlopesTest {
  private static final Stance LADEN =
      Stance.of(
          kilograms(1580),
          metres(2.31),
          Position.behindFrontAxle(metres(1.4)).aboveGround(metres(0.6)));

  private static ElectricVehicle strong(double adhesion) {
    return InventedDrive.builder()
        .motor(
            MotorEnvelope.of("strong")
                .peak(newtonMetres(900), kilowatts(42))
                .maximumSpeed(revolutionsPerMinute(8000))
                .loss(MotorLoss.constantEfficiency(0.88))
                .build())
        .traction(Traction.of(InventedDrive.stance(), Axle.REAR, adhesion))
        .build();
  }

  /** tan α = μ·a₁/(L − μ·h) by moments about the front contact, less rolling resistance 0.012. */
  @ParameterizedTest
  @ValueSource(doubles = {0.2, 0.5, 0.8})
  void gripLimitsTheStartAsTheMomentsSay(double adhesion) {
    Performance performance = Performance.of(strong(adhesion));
    double byMoments = adhesion * 1.2 / (2.31 - adhesion * 0.55) - 0.012;
    LimitedGrade atRest = performance.gradeAt(kilometresPerHour(0));
    assertThat(atRest.grade()).isCloseTo(byMoments, within(1e-12));
    assertThat(atRest.limit()).isEqualTo(DriveLimit.ADHESION);
    double holding =
        Math.tan(
            Kind.ANGLE.siValueOf(InventedDrive.stance().uphillHoldingAngle(Axle.REAR, adhesion)));
    assertThat(atRest.grade() + 0.012).isCloseTo(holding, within(1e-12));
    assertThat(performance.startingGrade().grade()).isLessThanOrEqualTo(atRest.grade());
  }

  @Test
  void theWorkingOfAGradeAtTheGripEndsInTheGrade() {
    Performance performance = Performance.of(strong(0.5));
    String grade =
        org.wattwright.check.Figure.share(performance.gradeAt(kilometresPerHour(5)).grade())
            .toString();
    assertThat(performance.gradeWorksheet(kilometresPerHour(5)).toText())
        .contains("limited by the grip of the driven tyres")
        .contains(grade);
  }

  @Test
  void onASlopeThatGripAllowsTheVehicleGetsUpToSpeed() {
    Performance performance = Performance.of(strong(0.5));
    double grade = performance.gradeAt(kilometresPerHour(1)).grade();
    assertThat(Kind.SPEED.siValueOf(performance.topSpeedOn(grade * 0.999).speed()))
        .isGreaterThan(0.2);
    assertThat(Kind.SPEED.siValueOf(performance.topSpeedOn(grade * 1.02).speed())).isZero();
  }

  /** 1580·a_laden·r/2 with its own stance; all of the motor's torque if nothing is known. */
  @Test
  void aHeavierVehicleIsNotHeldByTheGripOfTheLighterOne() {
    ElectricVehicle van = strong(0.8);
    RoadLoad load = InventedDrive.load().withMass(kilograms(1580));
    double radius = 1.83 / (2 * Math.PI);
    double motorNm = 900 * 7.2 * 0.96 / 2;
    double slip = 9.80665 * 0.8 * 1.4 / (2.31 - 0.8 * 0.6) * 1580 * radius / 2;
    assertThat(shaftNm(van.withRoadLoad(load))).isCloseTo(motorNm, within(1e-9));
    assertThat(shaftNm(van.withLoad(load, LADEN))).isCloseTo(slip, within(1e-6 * slip));
    assertThat(shaftNm(van)).isLessThan(slip);
    assertThat(Performance.of(van.withRoadLoad(load)).checkHalfShaft().what())
        .contains("grip not known of a vehicle of this mass");
  }

  private static double shaftNm(ElectricVehicle vehicle) {
    Check check = Performance.of(vehicle).checkHalfShaft();
    assertThat(check.outcome()).isEqualTo(Outcome.NOT_CHECKED);
    return Kind.TORQUE.siValueOf(check.actual().orElseThrow().quantity(Kind.TORQUE));
  }

  @Test
  void massAndStanceBelongTogether() {
    ElectricVehicle van = strong(0.8);
    assertThatThrownBy(() -> van.withLoad(InventedDrive.load(), LADEN))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("1180 kg")
        .hasMessageContaining("1580 kg");
  }

  /**
   * By moments a start on μ·1.2/(2.31 − μ·0.55) − f as it is, on μ·1.4/(2.31 − μ·0.6) − f laden.
   */
  @Test
  void aLadenAbilityStandsOnTheLadenAxle() {
    ElectricVehicle van = strong(0.3);
    RoadLoad load = InventedDrive.load().withMass(kilograms(1580));
    ElectricVehicle laden = van.withLoad(load, LADEN);
    Ability between = Ability.startOn(0.17);
    assertThat(between.isMetBy(van)).isFalse();
    assertThat(between.with(load).isMetBy(van)).isFalse();
    assertThat(between.with(laden).isMetBy(van)).isTrue();
    assertThat(Ability.startOn(0.19).with(laden).isMetBy(van)).isFalse();
  }
}
