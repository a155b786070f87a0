package org.wattwright.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.milliseconds;
import static org.wattwright.units.Measures.seconds;

import org.junit.jupiter.api.Test;
import org.wattwright.conductor.Installation;
import org.wattwright.units.InvalidInputException;

class CircuitTest {
  @Test
  void namesWhatItMisses() {
    Circuit bare = Circuit.of("heater", CircuitRole.HEATER).precharged().build();
    assertThat(bare.missing())
        .containsExactly(
            "Circuit.continuousCurrent or profile of heater",
            "Circuit.length of heater",
            "Circuit.installation of heater",
            "Circuit.loadCapacitance of heater");
    Circuit told =
        Circuit.of("heater", CircuitRole.HEATER)
            .continuousCurrent(amperes(20))
            .length(metres(2))
            .installation(Installation.freeAir(celsius(40)))
            .build();
    assertThat(told.missing()).isEmpty();
    assertThat(told).hasToString("heater: heater, 20 A, 2 m");
    assertThat(Circuit.of("pump", CircuitRole.AUXILIARY).length(metres(2)))
        .hasToString("pump: auxiliary, 2 m");
    assertThat(told.highestOperatingCurrent()).contains(amperes(20));
  }

  @Test
  void asksForAFuseWhereTheBatteryFeedsAFault() {
    assertThat(Circuit.of("a", CircuitRole.HEATER).build().isFused()).isTrue();
    assertThat(Circuit.of("a", CircuitRole.HEATER).withoutFuse().build().isFused()).isFalse();
    assertThat(Circuit.of("a", CircuitRole.MOTOR_PHASE).build().isFused()).isFalse();
    assertThat(Circuit.of("a", CircuitRole.DCDC_OUTPUT).fused().build().isFused()).isTrue();
  }

  @Test
  void rejectsAPeakBelowTheContinuousCurrent() {
    assertThatThrownBy(
            () ->
                Circuit.of("traction", CircuitRole.TRACTION_MAIN)
                    .continuousCurrent(amperes(140))
                    .highestOperatingCurrent(amperes(100))
                    .build())
        .isInstanceOf(InvalidInputException.class)
        .hasMessage(
            "Circuit.highestOperatingCurrent of traction must be ≥ 140 A of normal operation,"
                + " but was 100 A");
  }

  @Test
  void rejectsATripThatOpensInNormalOperation() {
    assertThatThrownBy(
            () ->
                Circuit.of("traction", CircuitRole.TRACTION_MAIN)
                    .continuousCurrent(amperes(140))
                    .trip(OvercurrentTrip.at(amperes(139), milliseconds(0), "inverter"))
                    .build())
        .isInstanceOf(InvalidInputException.class)
        .hasMessage("Circuit.trip of traction must be ≥ 140 A of normal operation, but was 139 A");
    assertThatThrownBy(() -> OvercurrentTrip.at(amperes(0), seconds(1), "inverter"))
        .hasMessage("OvercurrentTrip.current must be > 0 A, but was 0 A");
    assertThatThrownBy(() -> Circuit.of(" ", CircuitRole.HEATER))
        .hasMessageContaining("Circuit.name");
  }
}
