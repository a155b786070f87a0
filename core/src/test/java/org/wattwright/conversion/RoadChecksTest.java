package org.wattwright.conversion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.degrees;
import static org.wattwright.units.Measures.joulesPerKelvin;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.kilometresPerHour;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.newtons;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Outcome;
import org.wattwright.units.InvalidInputException;
import org.wattwright.vehicle.Axle;
import org.wattwright.vehicle.BrakeHeat;
import org.wattwright.vehicle.BrakeHeatSink;
import org.wattwright.vehicle.CorneringStiffness;
import org.wattwright.vehicle.Descent;
import org.wattwright.vehicle.LoadCase;

/** Critical speed and a long descent in the review of a vehicle. */
class RoadChecksTest {
  private static final CorneringStiffness FRONT =
      CorneringStiffness.ofAxle(Axle.FRONT, newtons(900), degrees(1));
  private static final CorneringStiffness REAR =
      CorneringStiffness.ofAxle(Axle.REAR, newtons(1300), degrees(1));

  private static Check check(Chassis chassis, String code) {
    return VehicleReview.of(
            WeighedVan.ledger(WeighedVan.full()),
            List.of(LoadCase.KERB),
            WeighedVan.limits(),
            chassis)
        .checks()
        .stream()
        .filter(check -> check.code().equals(code))
        .findFirst()
        .orElseThrow();
  }

  private static Descent road() {
    return Descent.builder()
        .mass(kilograms(1))
        .drop(metres(100))
        .distance(metres(2000))
        .speed(kilometresPerHour(36))
        .regeneration(kilowatts(10))
        .build();
  }

  private static BrakeHeat heat(Axle axle) {
    return BrakeHeat.of(BrakeHeatSink.uncooled(axle, joulesPerKelvin(5000)), celsius(200));
  }

  @Test
  void whatIsNotGivenIsNotCheckedAndNamed() {
    assertThat(check(Chassis.unknown(), "handling.speed.critical").missing())
        .containsExactly("Chassis.handling");
    Check descent = check(Chassis.unknown(), "brake.descent.front");
    assertThat(descent.outcome()).isEqualTo(Outcome.NOT_CHECKED);
    assertThat(descent.missing())
        .containsExactly(
            "Chassis.descent", "Chassis.brakeHeat of the front axle", "Chassis.brakes");
  }

  /** 450·g/900 and 600·g/1300: understeer. */
  @Test
  void anUndersteeringVehicleHasNoCriticalSpeed() {
    Chassis chassis = WeighedVan.chassis().handling(FRONT, REAR, kilometresPerHour(100));
    assertThat(check(chassis, "handling.speed.critical").outcome()).isEqualTo(Outcome.PASS);
  }

  /** 450·g/1080 − 600·g/1040 = −1.572° per g: √(g·2 m/0.02743) = 26.74 m/s. */
  @Test
  void anEstimateIsTakenAtItsWorseEndAndIsAtMostACaution() {
    Chassis wide =
        WeighedVan.chassis()
            .handling(FRONT.estimatedWithin(0.2), REAR.estimatedWithin(0.2), kilometresPerHour(90));
    Check check = check(wide, "handling.speed.critical");
    assertThat(check.outcome()).isEqualTo(Outcome.CAUTION);
    assertThat(check.comparison()).isEqualTo("96.27 km/h ≥ 90 km/h");
    assertThat(check.basis()).isEqualTo(Basis.ESTIMATED);
    assertThat(check.note()).startsWith("low confidence: estimated");
    assertThat(check.estimates())
        .containsExactly(
            "cornering stiffness of the front axle", "cornering stiffness of the rear axle");
    Chassis fast =
        WeighedVan.chassis()
            .handling(
                FRONT.estimatedWithin(0.2), REAR.estimatedWithin(0.2), kilometresPerHour(100));
    assertThat(check(fast, "handling.speed.critical").outcome()).isEqualTo(Outcome.FAIL);
  }

  @Test
  void stiffnessOfTheWrongAxleIsRejected() {
    assertThatThrownBy(() -> Chassis.unknown().handling(REAR, FRONT, kilometresPerHour(90)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessage("Chassis.handling must be of front and rear axle, but was rear, front");
  }

  /** 1050 kg·g·100 m·0.7/5 kJ/K = 144.2 K above 20 °C; regeneration does not count. */
  @Test
  void theHeaviestVehicleGoesDownWithoutRegeneration() {
    Chassis chassis = WeighedVan.chassis().descent(road()).brakeHeat(heat(Axle.FRONT));
    Check front = check(chassis, "brake.descent.front");
    assertThat(front.comparison()).isEqualTo("164.2 °C ≤ 200 °C");
    assertThat(front.what()).contains("full or cold pack, kerb");
    assertThat(check(chassis, "brake.descent.rear").missing())
        .containsExactly("Chassis.brakeHeat of the rear axle");
  }

  /** 144.2 K/0.8 = 180.2 K above 20 °C. */
  @Test
  void anEstimatedHeatCapacityIsTakenAtItsLowerEnd() {
    Chassis chassis =
        WeighedVan.chassis().descent(road()).brakeHeat(heat(Axle.FRONT).estimatedWithin(0.2));
    Check front = check(chassis, "brake.descent.front");
    assertThat(front.comparison()).isEqualTo("200.2 °C > 200 °C");
    assertThat(front.estimates()).containsExactly("heat capacity and share of the front brakes");
    assertThat(front.outcome()).isEqualTo(Outcome.FAIL);
  }

  @Test
  void withoutMassesTheReviewSaysSo() {
    assertThat(InventedVan.conversion().build().review())
        .filteredOn(check -> check.code().equals("vehicle.masses"))
        .singleElement()
        .satisfies(
            check -> {
              assertThat(check.outcome()).isEqualTo(Outcome.NOT_CHECKED);
              assertThat(check.missing()).containsExactly("Conversion.masses");
            });
  }
}
