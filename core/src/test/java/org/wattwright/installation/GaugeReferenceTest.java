package org.wattwright.installation;

import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.hours;
import static org.wattwright.units.Measures.kelvinsOfRise;
import static org.wattwright.units.Measures.microvolts;
import static org.wattwright.units.Measures.millivolts;
import static org.wattwright.units.Measures.ohms;
import static org.wattwright.units.Measures.perKelvin;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.revolutionsPerMinute;
import static org.wattwright.units.Measures.volts;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.ReferenceRows;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;

class GaugeReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("installation");

  private static final Pattern PAIR = Pattern.compile("([\\d.]+) mV; ([\\d.]+) A");
  private static final Pattern SENDER = Pattern.compile("([\\d.]+) empty, ([\\d.]+) full");

  static Stream<ReferenceRow> shunts() {
    return ReferenceRows.read("/installation/shunt.csv").stream();
  }

  static Stream<ReferenceRow> gauges() {
    return ReferenceRows.read("/installation/gauges.csv").stream();
  }

  private static Shunt shunt(double amps, double millivolt) {
    return new Shunt(amperes(amps), millivolts(millivolt));
  }

  private static Shunt shunt(ReferenceRow row) {
    Matcher pair = PAIR.matcher(String.join("; ", row.conditions().keySet()));
    if (!pair.find()) {
      throw new AssertionError(row);
    }
    return shunt(Double.parseDouble(pair.group(2)), Double.parseDouble(pair.group(1)));
  }

  /** 0.1 mΩ. */
  private static final Shunt TENTH = shunt(500, 50);

  private static final Ammeter METER = Ammeter.bothWays(amperes(100), millivolts(75));

  @ParameterizedTest(name = "{0}")
  @MethodSource("shunts")
  void shuntAgrees(ReferenceRow row) {
    switch (row.id()) {
      case "SHN-001", "SHN-002", "SHN-006", "SHN-008", "SHN-010", "SHN-012", "SHN-014" ->
          VALIDATION.computed(row, shunt(row).resistance(), Kind.RESISTANCE);
      case "SHN-007", "SHN-009", "SHN-011", "SHN-013", "SHN-015" -> {
        Shunt shunt = shunt(row);
        VALIDATION.computed(row, shunt.heat(shunt.ratedCurrent()), Kind.POWER);
      }
      case "SHN-003", "SHN-004", "SHN-005" ->
          VALIDATION.notCovered(row, "drop, class and material are inputs of the shunt");
      case "SHN-016" -> VALIDATION.computed(row, shunt(row).heat(amperes(333.3333)), Kind.POWER);
      case "SHN-017" ->
          VALIDATION.computed(
              row, Math.abs(Shunt.USUAL_CONTINUOUS_SHARE * 3 - 2) < 1e-15 ? "2/3" : "");
      case "SHN-018" ->
          VALIDATION.computed(row, METER.trueCurrent(amperes(60), shunt(100, 50)), Kind.CURRENT);
      case "SHN-019" ->
          VALIDATION.computed(row, METER.shown(amperes(120), shunt(200, 50)), Kind.CURRENT);
      case "SHN-020" ->
          VALIDATION.computed(row, TENTH.resolution(millivolts(81.92), 16), Kind.CURRENT);
      case "SHN-021" -> VALIDATION.computed(row, TENTH.offsetError(microvolts(10)), Kind.CURRENT);
      case "SHN-022" -> {
        Quantity<ElectricCurrent> offset = TENTH.offsetError(microvolts(10));
        VALIDATION.computed(row, Shunt.drift(offset, hours(24)), Kind.CHARGE);
      }
      case "SHN-023" ->
          VALIDATION.computed(row, 100 * Shunt.gainError(perKelvin(20e-6), kelvinsOfRise(80)));
      case "SHN-024" -> VALIDATION.computed(row, 100 * shunt(100, 50).burdenError(ohms(10)));
      default -> throw new AssertionError(row);
    }
  }

  private static SenderMapping sender(ReferenceRow row) {
    Matcher pair = SENDER.matcher(String.join("; ", row.conditions().keySet()));
    if (!pair.find()) {
      throw new AssertionError(row);
    }
    return SenderMapping.linear(
        ohms(Double.parseDouble(pair.group(1))), ohms(Double.parseDouble(pair.group(2))));
  }

  private static final SenderMapping FALLING = SenderMapping.linear(ohms(240), ohms(33));

  @ParameterizedTest(name = "{0}")
  @MethodSource("gauges")
  void gaugeAgrees(ReferenceRow row) {
    DialScale.ChargeMarks marks = new DialScale.ChargeMarks(percentCharge(10), percentCharge(90));
    switch (row.id()) {
      case "GAU-001", "GAU-005", "GAU-009", "GAU-013" ->
          VALIDATION.notCovered(row, "a pair of the trade: measure the gauge at hand");
      case "GAU-017" -> VALIDATION.computed(row, DialScale.level(percentCharge(20), marks));
      case "GAU-018" -> VALIDATION.computed(row, DialScale.level(percentCharge(5), marks));
      case "GAU-019" ->
          VALIDATION.computed(
              row,
              SenderMapping.of(
                      List.of(
                          new SenderMapping.DialPoint(0, ohms(240)),
                          new SenderMapping.DialPoint(0.5, ohms(103)),
                          new SenderMapping.DialPoint(1, ohms(33))))
                  .resistanceFor(0.25),
              Kind.RESISTANCE);
      case "GAU-020" ->
          VALIDATION.computed(row, FALLING.heat(0.5, ohms(50), volts(12)), Kind.POWER);
      case "GAU-021" ->
          VALIDATION.computed(
              row,
              FALLING.dutyFor(
                  0.5,
                  ohms(50),
                  new SenderMapping.SwitchedSender(ohms(10), SenderMapping.Movement.MOVING_IRON)));
      case "GAU-022" ->
          VALIDATION.computed(
              row, DialScale.pulseRate(2, revolutionsPerMinute(3000)), Kind.FREQUENCY);
      default ->
          VALIDATION.computed(
              row, sender(row).resistanceFor(row.givenNumber("level")), Kind.RESISTANCE);
    }
  }
}
