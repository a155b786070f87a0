package org.wattwright.voltage;

import static org.wattwright.units.Measures.milliseconds;
import static org.wattwright.units.Measures.revolutionsPerMinute;
import static org.wattwright.units.Measures.volts;
import static org.wattwright.units.Measures.webers;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.check.Outcome;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.ReferenceRows;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;

class BackEmfReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("voltage");

  private static final ReferenceRows ROWS = ReferenceRows.read("/voltage/back-emf.csv");

  static Stream<ReferenceRow> peaks() {
    return ROWS.quantity("peak line-to-line voltage");
  }

  static Stream<ReferenceRow> speeds() {
    return ROWS.quantity("speed at which the diodes start to charge the link");
  }

  private static BackEmf motor(ReferenceRow row) {
    return BackEmf.of(webers(row.givenNumber("psi")), (int) row.givenNumber("p"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("peaks")
  void peakVoltage(ReferenceRow row) {
    VALIDATION.computed(
        row, motor(row).peakAt(revolutionsPerMinute(row.givenNumber("n"))), Kind.VOLTAGE);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("speeds")
  void speedAtWhichTheDiodesFeedTheBus(ReferenceRow row) {
    double linkV =
        Double.parseDouble(
            row.conditions().keySet().stream()
                .filter(key -> key.startsWith("link "))
                .findFirst()
                .orElseThrow()
                .replace("link ", "")
                .replace(" V", ""));
    VALIDATION.computed(row, motor(row).speedAt(volts(linkV)), Kind.ROTATIONAL_SPEED);
  }

  @Test
  void effectiveVoltage() {
    ReferenceRow row = ROWS.row("EMF-004");
    VALIDATION.computed(
        row, motor(row).rmsAt(revolutionsPerMinute(row.givenNumber("n"))), Kind.VOLTAGE);
  }

  @Test
  void uncontrolledVoltageAboveTheRating() {
    ReferenceRow row = ROWS.row("EMF-008");
    Device inverter =
        Device.of(
                "inverter",
                DeviceRole.INVERTER,
                TestParts.window(200, 450).absoluteMaximum(volts(450)))
            .build();
    boolean above =
        motor(row).check(inverter, revolutionsPerMinute(row.givenNumber("n"))).outcome()
            == Outcome.FAIL;
    VALIDATION.computed(row, above ? "YES" : "NO");
  }

  @Test
  void voltageConstant() {
    ReferenceRow row = ROWS.row("EMF-009");
    VALIDATION.computed(row, TestParts.voltsOf(motor(row).peakAt(revolutionsPerMinute(1000))));
  }

  private static RegenerationCutOff cutOff(ReferenceRow row, double startV) {
    return new RegenerationCutOff(
        row.has("P") ? row.given("P", Kind.POWER) : org.wattwright.units.Measures.kilowatts(1),
        row.has("C")
            ? row.given("C", Kind.CAPACITANCE)
            : org.wattwright.units.Measures.microfarads(1),
        volts(startV));
  }

  @Test
  void timeToReachAVoltage() {
    ReferenceRow row = ROWS.row("EMF-011");
    VALIDATION.computed(row, cutOff(row, 380).timeUntil(volts(450)), Kind.TIME);
  }

  @Test
  void voltageAfterATime() {
    ReferenceRow row = ROWS.row("EMF-012");
    VALIDATION.computed(
        row,
        cutOff(row, row.givenNumber("U0")).voltageAfter(row.given("t", Kind.TIME)),
        Kind.VOLTAGE);
  }

  @Test
  void largestPowerStoppedInTime() {
    ReferenceRow row = ROWS.row("EMF-013");
    VALIDATION.computed(
        row, cutOff(row, 380).largestPower(volts(450), milliseconds(1)), Kind.POWER);
  }

  @Test
  void capacitanceNeeded() {
    ReferenceRow row = ROWS.row("EMF-014");
    VALIDATION.computed(
        row, cutOff(row, 380).capacitanceNeeded(volts(450), milliseconds(1)), Kind.CAPACITANCE);
  }

  @Test
  void whatTheLibraryDoesNotWorkOut() {
    VALIDATION.notCovered(ROWS.row("EMF-005"), "electrical frequency decides no voltage");
    VALIDATION.notCovered(
        ROWS.row("EMF-010"), "the voltage after a time is exact; its slope is not");
    VALIDATION.notCovered(ROWS.row("EMF-015"), "short-circuit current of the motor");
  }
}
