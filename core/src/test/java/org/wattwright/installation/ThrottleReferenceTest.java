package org.wattwright.installation;

import static org.wattwright.units.Measures.milliseconds;
import static org.wattwright.units.Measures.volts;

import java.util.stream.Stream;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.ReferenceRows;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;

class ThrottleReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("installation");

  private static final ThrottleTrack FIRST = new ThrottleTrack(volts(0.80), volts(4.00));
  private static final ThrottleTrack SECOND = new ThrottleTrack(volts(0.40), volts(2.00));
  private static final ThrottleSignal SIGNAL = ThrottleSignal.of(FIRST, SECOND, volts(5));

  static Stream<ReferenceRow> rows() {
    return ReferenceRows.read("/installation/throttle.csv").stream();
  }

  private static ThrottleSignal.Reading reading(ReferenceRow row) {
    return SIGNAL.read(row.given("U1", Kind.VOLTAGE), row.given("U2", Kind.VOLTAGE));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rows")
  void agrees(ReferenceRow row) {
    switch (row.id()) {
      case "PED-001" -> VALIDATION.transcribed(row, 100 * SIGNAL.deviationLimit());
      case "PED-002" -> VALIDATION.transcribed(row, SIGNAL.timeLimit(), Kind.TIME);
      case "PED-003" -> VALIDATION.notCovered(row, "the signal has two tracks by its type");
      case "PED-004" -> VALIDATION.notCovered(row, "return springs are looked at, not worked out");
      case "PED-005" -> VALIDATION.notCovered(row, "the reaction is that torque is not allowed");
      case "PED-006" -> VALIDATION.notCovered(row, "checked as installation.throttle-tracks");
      case "PED-007" -> VALIDATION.transcribed(row, 100 * BrakeOverride.USUAL.cutsAbove());
      case "PED-008" -> VALIDATION.transcribed(row, 100 * BrakeOverride.USUAL.releasesBelow());
      case "PED-009" -> VALIDATION.notCovered(row, "the ratio follows from both calibrations");
      case "PED-010" -> {
        String band = inBand(0.2499, false) + inBand(0.25, true) + inBand(4.75, true);
        VALIDATION.computed(row, band.isEmpty() ? "5 % to 95 % of supply" : band);
      }
      case "PED-011", "PED-014", "PED-017", "PED-020" ->
          VALIDATION.computed(row, 100 * reading(row).first());
      case "PED-012", "PED-015", "PED-018", "PED-021" ->
          VALIDATION.computed(row, 100 * reading(row).second());
      case "PED-013", "PED-016", "PED-019", "PED-022" ->
          VALIDATION.computed(row, reading(row).isPlausible() ? "YES" : "NO");
      case "PED-023" ->
          VALIDATION.computed(row, SIGNAL.allowsTorque(0.125, milliseconds(80)) ? "YES" : "NO");
      case "PED-024" ->
          VALIDATION.computed(row, SIGNAL.allowsTorque(0.125, milliseconds(120)) ? "YES" : "NO");
      case "PED-025" -> VALIDATION.computed(row, SECOND.signalOf(0.10), Kind.VOLTAGE);
      default -> throw new AssertionError(row);
    }
  }

  private static String inBand(double signalV, boolean expected) {
    ThrottleTrack wide = new ThrottleTrack(volts(0), volts(5));
    boolean is =
        ThrottleSignal.of(wide, wide, volts(5)).read(volts(signalV), volts(signalV)).isWithinBand();
    return is == expected ? "" : signalV + " V ";
  }
}
