package org.wattwright.voltage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.seconds;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wattwright.testing.ValueTypeContract;
import org.wattwright.units.InvalidInputException;

class OperatingConditionsTest extends ValueTypeContract<OperatingConditions> {
  @Override
  protected OperatingConditions sample() {
    return TestParts.conditions().build();
  }

  @Override
  protected List<OperatingConditions> different() {
    return List.of(
        TestParts.conditions().stateOfCharge(percentCharge(11), percentCharge(100)).build(),
        TestParts.conditions().stateOfCharge(percentCharge(10), percentCharge(90)).build(),
        TestParts.conditions().coldest(celsius(-11)).build(),
        TestParts.conditions().usual(celsius(20)).build(),
        TestParts.conditions().peakDischargePower(kilowatts(31), seconds(10)).build(),
        TestParts.conditions().peakDischargePower(kilowatts(30), seconds(11)).build(),
        TestParts.conditions().peakDischargeCurrent(amperes(30), seconds(10)).build(),
        TestParts.conditions().regenerationCurrent(amperes(0)).build(),
        withoutRegeneration());
  }

  private static OperatingConditions withoutRegeneration() {
    return OperatingConditions.builder()
        .stateOfCharge(percentCharge(10), percentCharge(100))
        .coldest(celsius(-10))
        .peakDischargePower(kilowatts(30), seconds(10))
        .build();
  }

  @Test
  void printsInOneLine() {
    assertThat(sample())
        .hasToString("10 % … 100 %, down to -10 °C, peak 30 kW for 10 s, regeneration 50 A");
    assertThat(TestParts.conditions().peakDischargeCurrent(amperes(300), seconds(5)).build())
        .hasToString("10 % … 100 %, down to -10 °C, peak 300 A for 5 s, regeneration 50 A");
    assertThat(withoutRegeneration().toString()).endsWith("regeneration not stated");
  }

  @Test
  void lastOfPowerAndCurrentCounts() {
    OperatingConditions current =
        TestParts.conditions().peakDischargeCurrent(amperes(300), seconds(5)).build();
    assertThat(current.peakDischargeCurrent()).hasValue(amperes(300));
    assertThat(current.peakDischargePower()).isEmpty();
    assertThat(current.peakDuration()).isEqualTo(seconds(5));
    assertThat(sample().peakDischargePower()).hasValue(kilowatts(30));
    assertThat(sample().peakDischargeCurrent()).isEmpty();
  }

  @Test
  void tellsNoRegenerationFromNoneStated() {
    assertThat(withoutRegeneration().regenerationIsStated()).isFalse();
    assertThat(withoutRegeneration().regenerationCurrent()).isEqualTo(amperes(0));
    OperatingConditions none = TestParts.conditions().regenerationCurrent(amperes(0)).build();
    assertThat(none.regenerationIsStated()).isTrue();
  }

  @Test
  void usualTemperatureIs25DegreesUnlessTold() {
    assertThat(sample().usual()).isEqualTo(celsius(25));
    assertThat(TestParts.conditions().usual(celsius(15)).build().usual()).isEqualTo(celsius(15));
  }

  @Test
  void namesEverythingMissingAtOnce() {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> OperatingConditions.builder().build())
        .withMessageContaining("stateOfCharge")
        .withMessageContaining("coldest")
        .withMessageContaining("peakDischargePower or peakDischargeCurrent");
  }

  @Test
  void rejectsBadFields() {
    rejected(
        () -> TestParts.conditions().stateOfCharge(percentCharge(50), percentCharge(50)),
        "OperatingConditions.fullest must be > emptiest 50 %, but was 50 %");
    rejected(
        () -> TestParts.conditions().peakDischargePower(kilowatts(0), seconds(1)),
        "OperatingConditions.peakDischargePower must be > 0 kW, but was 0 kW");
    rejected(
        () -> TestParts.conditions().peakDischargeCurrent(amperes(-3), seconds(1)),
        "OperatingConditions.peakDischargeCurrent must be > 0 A, but was -3 A");
    rejected(
        () -> TestParts.conditions().peakDischargePower(kilowatts(1), seconds(0)),
        "OperatingConditions.peakDuration must be > 0 s, but was 0 s");
    rejected(
        () -> TestParts.conditions().regenerationCurrent(amperes(-1)),
        "OperatingConditions.regenerationCurrent must be ≥ 0 A, but was -1 A");
  }

  private static void rejected(
      org.assertj.core.api.ThrowableAssert.ThrowingCallable call, String message) {
    assertThatExceptionOfType(InvalidInputException.class).isThrownBy(call).withMessage(message);
  }
}
