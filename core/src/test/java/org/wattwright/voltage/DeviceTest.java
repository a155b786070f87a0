package org.wattwright.voltage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.microfarads;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wattwright.testing.ValueTypeContract;
import org.wattwright.units.InvalidInputException;

class DeviceTest extends ValueTypeContract<Device> {
  private static DeviceBuilder builder() {
    return Device.of("inverter", DeviceRole.INVERTER, TestParts.window(70, 126))
        .maximumPower(kilowatts(60))
        .maximumCurrent(amperes(600))
        .capacitance(microfarads(500))
        .mass(kilograms(9));
  }

  @Override
  protected Device sample() {
    return builder().build();
  }

  @Override
  protected List<Device> different() {
    return List.of(
        Device.of("heater", DeviceRole.INVERTER, TestParts.window(70, 126)).build(),
        Device.of("inverter", DeviceRole.HEATER, TestParts.window(70, 126)).build(),
        Device.of("inverter", DeviceRole.INVERTER, TestParts.window(70, 127)).build(),
        builder().maximumPower(kilowatts(61)).build(),
        builder().maximumCurrent(amperes(601)).build(),
        builder().capacitance(microfarads(501)).build(),
        builder().mass(kilograms(10)).build());
  }

  @Test
  void carriesWhatItWasGiven() {
    assertThat(sample().name()).isEqualTo("inverter");
    assertThat(sample().role()).isEqualTo(DeviceRole.INVERTER);
    assertThat(sample().maximumPower()).hasValue(kilowatts(60));
    assertThat(sample().maximumCurrent()).hasValue(amperes(600));
    assertThat(sample().capacitance()).hasValue(microfarads(500));
    assertThat(sample().mass()).hasValue(kilograms(9));
    assertThat(sample()).hasToString("inverter (inverter, operating 70 V … 126 V)");
  }

  @Test
  void whatIsNotGivenIsNotKnown() {
    Device plain = Device.of("pump", DeviceRole.OTHER, TestParts.window(70, 126)).build();
    assertThat(plain.maximumPower()).isEmpty();
    assertThat(plain.maximumCurrent()).isEmpty();
    assertThat(plain.capacitance()).isEmpty();
    assertThat(plain.mass()).isEmpty();
  }

  @Test
  void rolesReadAsWords() {
    assertThat(List.of(DeviceRole.values()))
        .extracting(DeviceRole::toString)
        .containsExactly("inverter", "charger", "DC-DC converter", "heater", "load");
  }

  @Test
  void rejectsBadFields() {
    rejected(
        () -> builder().maximumPower(kilowatts(0)),
        "Device.maximumPower must be > 0 kW, but was 0 kW");
    rejected(
        () -> builder().maximumCurrent(amperes(-1)),
        "Device.maximumCurrent must be > 0 A, but was -1 A");
    rejected(
        () -> builder().capacitance(microfarads(-1)),
        "Device.capacitance must be ≥ 0 µF, but was -1 µF");
    rejected(() -> builder().mass(kilograms(0)), "Device.mass must be > 0 kg, but was 0 kg");
    rejected(
        () -> Device.of(" ", DeviceRole.OTHER, TestParts.window(1, 2)),
        "Device.name must be a text, but was \" \"");
    assertThatNullPointerException()
        .isThrownBy(() -> Device.of("a", null, TestParts.window(1, 2)))
        .withMessage("role");
    assertThatNullPointerException()
        .isThrownBy(() -> Device.of("a", DeviceRole.OTHER, null))
        .withMessage("window");
  }

  private static void rejected(
      org.assertj.core.api.ThrowableAssert.ThrowingCallable call, String message) {
    assertThatExceptionOfType(InvalidInputException.class).isThrownBy(call).withMessage(message);
  }
}
