package org.wattwright.voltage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.milliwebers;
import static org.wattwright.units.Measures.revolutionsPerMinute;
import static org.wattwright.units.Measures.volts;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Outcome;
import org.wattwright.testing.ValueTypeContract;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

class BackEmfTest extends ValueTypeContract<BackEmf> {
  private static final BackEmf MOTOR = BackEmf.of(milliwebers(70), 4);

  @Override
  protected BackEmf sample() {
    return BackEmf.of(milliwebers(70), 4);
  }

  @Override
  protected List<BackEmf> different() {
    return List.of(BackEmf.of(milliwebers(71), 4), BackEmf.of(milliwebers(70), 5));
  }

  private static Device inverter(double absoluteMaximumV) {
    return Device.of(
            "inverter",
            DeviceRole.INVERTER,
            TestParts.window(200, 400).absoluteMaximum(volts(absoluteMaximumV)))
        .build();
  }

  @Test
  void measurementGivesBackWhatItMeasured() {
    BackEmf measured = BackEmf.fromMeasured(volts(12.5), revolutionsPerMinute(350), 4);
    assertThat(TestParts.voltsOf(measured.rmsAt(revolutionsPerMinute(350))))
        .isCloseTo(12.5, within(12.5e-12));
  }

  @Test
  void printsTheVoltageConstant() {
    assertThat(MOTOR).hasToString("70.00 mWb, 4 pole pairs: 50.79 V peak at 1000 1/min");
    assertThat(BackEmf.of(milliwebers(70), 1).toString()).contains("1 pole pair: ");
  }

  @Test
  void nothingAtStandstill() {
    assertThat(MOTOR.peakAt(revolutionsPerMinute(0))).isEqualTo(volts(0));
    assertThat(Kind.ROTATIONAL_SPEED.siValueOf(MOTOR.speedAt(volts(0)))).isZero();
  }

  @Test
  void failsAboveTheAbsoluteMaximumAndSaysAtWhichSpeed() {
    Check check = MOTOR.check(inverter(450), revolutionsPerMinute(9000));
    assertThat(check.outcome()).isEqualTo(Outcome.FAIL);
    assertThat(check.code()).isEqualTo("voltage.back-emf");
    assertThat(check.note()).contains("the limit is reached at 8861 1/min");
    assertThat(MOTOR.check(inverter(500), revolutionsPerMinute(9000)).outcome())
        .isEqualTo(Outcome.PASS);
  }

  @Test
  void anEstimatedFluxGivesAtMostACaution() {
    Check check = MOTOR.check(inverter(900), revolutionsPerMinute(9000), Basis.ESTIMATED);
    assertThat(check.outcome()).isEqualTo(Outcome.CAUTION);
    assertThat(check.basis()).isEqualTo(Basis.ESTIMATED);
  }

  @Test
  void notCheckedWithoutAnAbsoluteMaximum() {
    Device unknown = Device.of("inverter", DeviceRole.INVERTER, TestParts.window(200, 400)).build();
    Check check = MOTOR.check(unknown, revolutionsPerMinute(9000));
    assertThat(check.outcome()).isEqualTo(Outcome.NOT_CHECKED);
    assertThat(check.missing()).containsExactly("inverter.absoluteMaximum");
  }

  @Test
  void worksheetShowsFluxPolePairsAndSpeed() {
    String text = MOTOR.worksheet(revolutionsPerMinute(9000)).toText();
    assertThat(text)
        .contains("√3·ψ·p·ω")
        .contains("70 mWb")
        .contains("9000 1/min")
        .contains("457.1 V");
  }

  @Test
  void rejectsWhatIsNoMotor() {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> BackEmf.of(milliwebers(-1), 4))
        .withMessage("BackEmf.fluxLinkage must be > 0 mWb, but was -1 mWb");
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> BackEmf.of(milliwebers(1), 0))
        .withMessage("BackEmf.polePairs must be ≥ 1, but was 0");
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> MOTOR.peakAt(revolutionsPerMinute(-1)))
        .withMessage("speed must be ≥ 0 1/min, but was -1 1/min");
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> BackEmf.fromMeasured(volts(0), revolutionsPerMinute(100), 4));
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> BackEmf.fromMeasured(volts(1), revolutionsPerMinute(0), 4));
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> BackEmf.fromMeasured(volts(1), revolutionsPerMinute(100), 0))
        .withMessage("BackEmf.polePairs must be ≥ 1, but was 0");
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> MOTOR.speedAt(volts(-1)));
  }
}
