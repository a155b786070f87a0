package org.wattwright.voltage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.microfarads;
import static org.wattwright.units.Measures.milliseconds;
import static org.wattwright.units.Measures.volts;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Outcome;
import org.wattwright.testing.Generator;
import org.wattwright.testing.ValueTypeContract;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

class RegenerationCutOffTest extends ValueTypeContract<RegenerationCutOff> {
  private static final RegenerationCutOff BUS =
      new RegenerationCutOff(kilowatts(20), microfarads(500), volts(380));
  private static final Device INVERTER =
      Device.of(
              "inverter",
              DeviceRole.INVERTER,
              TestParts.window(200, 420).absoluteMaximum(volts(450)))
          .build();

  @Override
  protected RegenerationCutOff sample() {
    return new RegenerationCutOff(kilowatts(20), microfarads(500), volts(380));
  }

  @Override
  protected List<RegenerationCutOff> different() {
    return List.of(
        new RegenerationCutOff(kilowatts(21), microfarads(500), volts(380)),
        new RegenerationCutOff(kilowatts(20), microfarads(501), volts(380)),
        new RegenerationCutOff(kilowatts(20), microfarads(500), volts(381)));
  }

  static Stream<Generator> cases() {
    return Generator.cases(100);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  void timePowerAndCapacitanceAgreeWithEachOther(Generator random) {
    double startV = random.between(50, 400);
    double endV = startV + random.between(1, 100);
    RegenerationCutOff bus =
        new RegenerationCutOff(
            kilowatts(random.betweenDecades(0.1, 100)),
            microfarads(random.betweenDecades(10, 5000)),
            volts(startV));
    var time = bus.timeUntil(volts(endV));
    assertThat(TestParts.voltsOf(bus.voltageAfter(time))).isCloseTo(endV, within(1e-12 * endV));
    double powerW = Kind.POWER.siValueOf(bus.power());
    assertThat(Kind.POWER.siValueOf(bus.largestPower(volts(endV), time)))
        .isCloseTo(powerW, within(1e-12 * powerW));
    double capacitanceF = Kind.CAPACITANCE.siValueOf(bus.capacitance());
    assertThat(Kind.CAPACITANCE.siValueOf(bus.capacitanceNeeded(volts(endV), time)))
        .isCloseTo(capacitanceF, within(1e-12 * capacitanceF));
  }

  @Test
  void printsItsInputs() {
    assertThat(BUS).hasToString("20 kW into 500 µF from 380 V");
  }

  @Test
  void voltageStaysWithoutPowerAndWithoutTime() {
    assertThat(BUS.voltageAfter(milliseconds(0))).isEqualTo(volts(380));
    RegenerationCutOff still = new RegenerationCutOff(kilowatts(0), microfarads(500), volts(380));
    assertThat(still.voltageAfter(milliseconds(100))).isEqualTo(volts(380));
  }

  @Test
  void checkSaysWhatWouldKeepTheLimit() {
    Check late = BUS.check(INVERTER, milliseconds(1));
    assertThat(late.outcome()).isEqualTo(Outcome.FAIL);
    assertThat(late.note())
        .isEqualTo("reaction time 1 ms; the limit is reached after 726.3 µs, or needs 688 µF");
    assertThat(BUS.check(INVERTER, milliseconds(0.2)).outcome()).isEqualTo(Outcome.PASS);
  }

  @Test
  void checkWithoutRoomOrPowerStillAnswers() {
    RegenerationCutOff high = new RegenerationCutOff(kilowatts(20), microfarads(500), volts(460));
    assertThat(high.check(INVERTER, milliseconds(1)).outcome()).isEqualTo(Outcome.FAIL);
    RegenerationCutOff still = new RegenerationCutOff(kilowatts(0), microfarads(500), volts(380));
    Check check = still.check(INVERTER, milliseconds(1));
    assertThat(check.outcome()).isEqualTo(Outcome.PASS);
    assertThat(check.note()).isEqualTo("reaction time 1 ms");
  }

  @Test
  void estimatesGiveAtMostACautionAndMissingLimitsNothing() {
    assertThat(BUS.check(INVERTER, milliseconds(0.2), Basis.ESTIMATED).outcome())
        .isEqualTo(Outcome.CAUTION);
    Device unknown = Device.of("heater", DeviceRole.HEATER, TestParts.window(200, 420)).build();
    Check check = BUS.check(unknown, milliseconds(1));
    assertThat(check.outcome()).isEqualTo(Outcome.NOT_CHECKED);
    assertThat(check.missing()).containsExactly("heater.absoluteMaximum");
  }

  @Test
  void worksheetShowsEveryInput() {
    assertThat(BUS.worksheet(milliseconds(0.5)).toText())
        .contains("√(U_0² + 2·P·t/C)")
        .contains("380 V")
        .contains("20 kW")
        .contains("0.5 ms")
        .contains("500 µF")
        .contains("429.4");
  }

  @Test
  void rejectsWhatIsNoBus() {
    rejected(
        () -> new RegenerationCutOff(kilowatts(-1), microfarads(500), volts(380)),
        "RegenerationCutOff.power must be ≥ 0 kW, but was -1 kW");
    rejected(
        () -> new RegenerationCutOff(kilowatts(1), microfarads(0), volts(380)),
        "RegenerationCutOff.capacitance must be > 0 µF, but was 0 µF");
    rejected(
        () -> new RegenerationCutOff(kilowatts(1), microfarads(1), volts(-1)),
        "RegenerationCutOff.startVoltage must be ≥ 0 V, but was -1 V");
    rejected(() -> BUS.voltageAfter(milliseconds(-1)), "time must be ≥ 0 ms, but was -1 ms");
    rejected(
        () -> BUS.timeUntil(volts(379)), "voltage must be ≥ startVoltage 380 V, but was 379 V");
    rejected(
        () -> BUS.capacitanceNeeded(volts(380), milliseconds(1)),
        "voltage must be > startVoltage 380 V, but was 380 V");
    rejected(
        () -> BUS.largestPower(volts(400), milliseconds(0)), "time must be > 0 ms, but was 0 ms");
    rejected(
        () ->
            new RegenerationCutOff(kilowatts(0), microfarads(500), volts(380))
                .timeUntil(volts(400)),
        "RegenerationCutOff.power must be > 0 kW, but was 0 kW");
  }

  private static void rejected(
      org.assertj.core.api.ThrowableAssert.ThrowingCallable call, String message) {
    assertThatExceptionOfType(InvalidInputException.class).isThrownBy(call).withMessage(message);
  }
}
