package org.wattwright.installation;

import static org.wattwright.installation.InterlockCase.when;
import static org.wattwright.units.Measures.kilometresPerHour;

import java.util.stream.Stream;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.ReferenceRows;
import org.wattwright.testing.Validation;

class InterlockReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("installation");

  static Stream<ReferenceRow> rows() {
    return ReferenceRows.read("/installation/interlocks.csv").stream();
  }

  private static String start(ReferenceRow row) {
    boolean in = row.has("plug") && row.given("plug").equals("in");
    boolean braked = row.given("brake").equals("on");
    boolean pressed = row.has("pedal") && row.givenNumber("pedal") > 0;
    return Interlocks.start()
        .reaction(start(in, braked, pressed).and(InterlockSignal.DRIVE, SignalState.NOT_READY))
        .name();
  }

  private static InterlockCase start(boolean in, boolean braked, boolean pressed) {
    return when(InterlockSignal.CHARGE_PLUG, in ? SignalState.IN : SignalState.OUT)
        .and(InterlockSignal.KEY, SignalState.ON)
        .and(InterlockSignal.PRECHARGE, SignalState.COMPLETE)
        .and(InterlockSignal.BRAKE, braked ? SignalState.PRESSED : SignalState.RELEASED)
        .and(InterlockSignal.START, SignalState.PRESSED)
        .and(InterlockSignal.ACCELERATOR, pressed ? SignalState.PRESSED : SignalState.RELEASED);
  }

  private static String reverseSelectedAt(double speedKmh) {
    SignalState speed =
        Interlocks.speedState(kilometresPerHour(speedKmh), Interlocks.USUAL_DIRECTION_SPEED);
    return Interlocks.direction()
        .reaction(
            when(InterlockSignal.SPEED, speed)
                .and(InterlockSignal.DIRECTION, SignalState.FORWARD)
                .and(InterlockSignal.SELECTOR, SignalState.REVERSE))
        .name();
  }

  private static String fault(double speedKmh, boolean crash, boolean loopOpen, boolean trip) {
    SignalState speed =
        Interlocks.speedState(kilometresPerHour(speedKmh), Interlocks.USUAL_DIRECTION_SPEED);
    return Interlocks.faults()
        .reaction(
            when(InterlockSignal.SPEED, speed)
                .and(InterlockSignal.CRASH, crash ? SignalState.ON : SignalState.OFF)
                .and(
                    InterlockSignal.INTERLOCK_LOOP,
                    loopOpen ? SignalState.OPEN : SignalState.CLOSED)
                .and(InterlockSignal.BATTERY_TRIP, trip ? SignalState.ON : SignalState.OFF))
        .name();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rows")
  void agrees(ReferenceRow row) {
    switch (row.id()) {
      case "INT-001", "INT-002", "INT-004", "INT-005", "INT-006" ->
          VALIDATION.notCovered(row, "a signal to the driver: seen on the vehicle");
      case "INT-003" -> {
        ForbiddenReaction plug = Interlocks.forbidden().get(0);
        boolean never = Interlocks.start().violations(plug).isEmpty();
        VALIDATION.computed(row, never ? "IMPOSSIBLE" : "POSSIBLE");
      }
      case "INT-007" -> VALIDATION.notCovered(row, "thermal propagation is tested, not worked out");
      case "INT-008", "INT-009" ->
          VALIDATION.notCovered(row, "open-type batteries that emit hydrogen are not treated");
      case "INT-010" -> VALIDATION.notCovered(row, "key and start are two signals of the table");
      case "INT-011" ->
          VALIDATION.computed(row, reverseSelectedAt(6).equals("REVERSE") ? "ALLOWED" : "BLOCKED");
      case "INT-012", "INT-013", "INT-014", "INT-015" -> VALIDATION.computed(row, start(row));
      case "INT-016" ->
          VALIDATION.computed(
              row,
              Interlocks.start()
                  .reaction(start(true, false, false).and(InterlockSignal.DRIVE, SignalState.READY))
                  .name());
      case "INT-017" -> VALIDATION.computed(row, reverseSelectedAt(20));
      case "INT-018" -> VALIDATION.computed(row, reverseSelectedAt(3));
      case "INT-019" -> VALIDATION.computed(row, fault(60, false, false, true));
      case "INT-020" -> VALIDATION.computed(row, fault(60, true, false, false));
      case "INT-021" -> VALIDATION.computed(row, fault(0, false, true, false));
      default -> throw new AssertionError(row);
    }
  }
}
