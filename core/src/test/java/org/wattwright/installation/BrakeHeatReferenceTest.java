package org.wattwright.installation;

import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.joulesPerKelvin;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.kilogramsPerCubicMetre;
import static org.wattwright.units.Measures.kilometresPerHour;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.metresPerSecondSquared;
import static org.wattwright.units.Measures.newtons;
import static org.wattwright.units.Measures.squareMetres;
import static org.wattwright.units.Measures.watts;

import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.drive.RoadLoad;
import org.wattwright.drive.RollingResistance;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.ReferenceRows;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;
import org.wattwright.vehicle.Axle;
import org.wattwright.vehicle.BrakeHeatSink;
import org.wattwright.vehicle.Descent;

/** Heat of brakes, worked out by the vehicle package. */
class BrakeHeatReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("installation");

  /** The rows count with g = 9.81 m/s²: the mass is scaled so that the weight is theirs. */
  private static final double MASS_KG = 1450 * 9.81 / 9.80665;

  /** 0.012·m·g + ½·ρ·CdA·v². */
  private static final double ROAD_N = 0.012 * 1450 * 9.81 + 0.6 * 0.7 * 2500 / 9;

  static Stream<ReferenceRow> rows() {
    return ReferenceRows.read("/installation/brake-heat.csv").stream();
  }

  private static Descent descent(double resistanceN, double regenerationW) {
    return Descent.builder()
        .mass(kilograms(MASS_KG))
        .drop(metres(300))
        .distance(metres(5000))
        .speed(kilometresPerHour(60))
        .resistance(newtons(resistanceN))
        .regeneration(watts(regenerationW))
        .air(celsius(20))
        .build();
  }

  private static double heatJ(Descent descent) {
    return Kind.ENERGY.siValueOf(descent.heat());
  }

  private static double riseK(Descent descent, double capacity, double share) {
    BrakeHeatSink drums = BrakeHeatSink.uncooled(Axle.FRONT, joulesPerKelvin(capacity));
    return Kind.TEMPERATURE.siValueOf(descent.temperature(drums, share)) - 293.15;
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rows")
  void agrees(ReferenceRow row) {
    Descent full = descent(ROAD_N, 0);
    switch (row.id()) {
      case "BRH-001" -> VALIDATION.computed(row, descent(0, 0).heat(), Kind.ENERGY);
      case "BRH-002" -> VALIDATION.computed(row, roadLoad(), Kind.FORCE);
      case "BRH-003" -> VALIDATION.computed(row, full.heat(), Kind.ENERGY);
      case "BRH-004" -> VALIDATION.computed(row, full.duration(), Kind.TIME);
      case "BRH-005" ->
          VALIDATION.computed(row, heatJ(full) / Kind.TIME.siValueOf(full.duration()) / 1000);
      case "BRH-006" -> VALIDATION.computed(row, riseK(full, 4 * 5 * 460, 1));
      case "BRH-007" -> VALIDATION.computed(row, riseK(full, 2 * 6 * 460, 0.65));
      case "BRH-008" ->
          VALIDATION.notCovered(row, "energy taken back is found on a cycle, in package drive");
      case "BRH-009" -> {
        double takenW = 0.6 * heatJ(full) / 300;
        VALIDATION.computed(row, riseK(descent(ROAD_N, takenW), 4 * 5 * 460, 1));
      }
      case "BRH-010", "BRH-011" ->
          VALIDATION.notCovered(row, "one stop heats the brakes less than the descent does");
      case "BRH-012" -> VALIDATION.notCovered(row, "the heat capacity is an input");
      default -> throw new AssertionError(row);
    }
  }

  private static Quantity<Force> roadLoad() {
    return RoadLoad.of(kilograms(1450), RollingResistance.of(0.012), squareMetres(0.7))
        .withAirDensity(kilogramsPerCubicMetre(1.2))
        .withGravity(metresPerSecondSquared(9.81))
        .at(kilometresPerHour(60));
  }
}
