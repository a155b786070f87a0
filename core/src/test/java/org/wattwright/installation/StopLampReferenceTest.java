package org.wattwright.installation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.kilometresPerHour;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.metresPerSecondSquared;
import static org.wattwright.units.Measures.newtons;

import java.util.stream.Stream;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.ReferenceRows;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;

class StopLampReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("installation");

  static Stream<ReferenceRow> rows() {
    return ReferenceRows.read("/installation/stop-lamps.csv").stream();
  }

  private static String signal(double deceleration) {
    return StopLampRule.signalFor(metresPerSecondSquared(deceleration)).name();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rows")
  void agrees(ReferenceRow row) {
    ReleaseRegeneration van = new ReleaseRegeneration(kilograms(1250), 1.05, newtons(250));
    switch (row.id()) {
      case "STL-001" -> VALIDATION.computed(row, signal(0.35));
      case "STL-002" -> VALIDATION.computed(row, signal(1.0));
      case "STL-003" -> VALIDATION.computed(row, signal(1.4));
      case "STL-004", "STL-005", "STL-006", "STL-007", "STL-008", "STL-009" ->
          VALIDATION.computed(row, signal(row.givenNumber("deceleration")));
      case "STL-010" -> VALIDATION.transcribed(row, StopLampRule.offBelow(), Kind.ACCELERATION);
      case "STL-011" -> {
        assertThat(mayStart(6, 80)).isFalse();
        assertThat(mayStart(6.01, 80)).isTrue();
        VALIDATION.transcribed(row, 6);
      }
      case "STL-012" -> {
        assertThat(mayStart(8, 50)).isFalse();
        assertThat(mayStart(8, 50.1)).isTrue();
        VALIDATION.transcribed(row, 50);
      }
      case "STL-013" -> {
        assertThat(StopLampRule.mustEndEmergencySignal(metresPerSecondSquared(2.5))).isFalse();
        assertThat(StopLampRule.mustEndEmergencySignal(metresPerSecondSquared(2.49))).isTrue();
        VALIDATION.transcribed(row, 2.5);
      }
      case "STL-014" ->
          VALIDATION.computed(row, van.wheelForceFor(metresPerSecondSquared(1.3)), Kind.FORCE);
      case "STL-015" ->
          VALIDATION.computed(
              row,
              van.motorTorqueFor(
                  metresPerSecondSquared(1.3),
                  new ReleaseRegeneration.Gearing(metres(0.30), 9.0, 0.96)),
              Kind.TORQUE);
      case "STL-016" ->
          VALIDATION.computed(
              row,
              new ReleaseRegeneration(kilograms(1250), 1.05, newtons(200))
                  .deceleration(newtons(1000)),
              Kind.ACCELERATION);
      case "STL-017" -> VALIDATION.computed(row, signal(0.9142857));
      default -> throw new AssertionError(row);
    }
  }

  private static boolean mayStart(double deceleration, double speedKmh) {
    return StopLampRule.mayStartEmergencySignal(
        metresPerSecondSquared(deceleration), kilometresPerHour(speedKmh));
  }
}
