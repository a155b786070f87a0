package org.wattwright.voltage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.battery.BatteryModule;
import org.wattwright.battery.Direction;
import org.wattwright.battery.Pack;
import org.wattwright.battery.PackState;
import org.wattwright.battery.ResistanceTable;
import org.wattwright.testing.Generator;
import org.wattwright.units.Kind;
import org.wattwright.units.StateOfCharge;

class UsableBandTest {
  private static final Pack PACK = Pack.of(TestParts.module(6), 5, 1);

  private static OperatingConditions.Builder at300A() {
    return TestParts.conditions()
        .stateOfCharge(percentCharge(0), percentCharge(100))
        .peakDischargeCurrent(amperes(300), seconds(10));
  }

  private static Optional<StateOfChargeBand> usable(
      Pack pack, OperatingConditions conditions, Device... devices) {
    return WindowReview.of(pack, List.of(devices), conditions).usableStateOfCharge();
  }

  @Test
  void wholeBandWhereNothingLimits() {
    assertThat(usable(PACK, at300A().build(), TestParts.inverter(60, 200)))
        .hasValue(new StateOfChargeBand(StateOfCharge.EMPTY, StateOfCharge.FULL));
  }

  @Test
  void lowerEndByTheSagOfTheColdPack() {
    // 30·(3.0 + 0.4·s − 0.3) V ≥ 84 V from s = 0.25 on.
    StateOfChargeBand band =
        usable(PACK, at300A().build(), TestParts.inverter(84, 200)).orElseThrow();
    assertThat(band.emptiest().fraction()).isCloseTo(0.25, within(2e-6));
    assertThat(band.fullest()).isEqualTo(StateOfCharge.FULL);
  }

  @Test
  void upperEndByRegeneration() {
    // 30·(3.0 + 0.4·s + 0.25) V ≤ 105 V up to s = 0.625.
    OperatingConditions conditions = at300A().regenerationCurrent(amperes(250)).build();
    StateOfChargeBand band = usable(PACK, conditions, TestParts.inverter(60, 105)).orElseThrow();
    assertThat(band.emptiest()).isEqualTo(StateOfCharge.EMPTY);
    assertThat(band.fullest().fraction()).isCloseTo(0.625, within(2e-6));
  }

  @Test
  void chargerLimitsBothEnds() {
    // At rest 30·(3.0 + 0.4·s) V: 93 V at 0.25, 99 V at 0.75.
    StateOfChargeBand band =
        usable(PACK, at300A().build(), TestParts.charger(93, 99)).orElseThrow();
    assertThat(band.emptiest().fraction()).isCloseTo(0.25, within(2e-6));
    assertThat(band.fullest().fraction()).isCloseTo(0.75, within(2e-6));
  }

  @Test
  void fullNeedsEveryCellAtItsMaximum() {
    // 102 V at rest when full, but 109.5 V at the end of the charge.
    StateOfChargeBand band =
        usable(PACK, at300A().build(), TestParts.charger(60, 105)).orElseThrow();
    assertThat(band.fullest()).isLessThan(StateOfCharge.FULL);
    assertThat(band.fullest().fraction()).isCloseTo(1, within(2e-6));
  }

  @Test
  void nothingUsable() {
    assertThat(usable(PACK, at300A().build(), TestParts.inverter(150, 200))).isEmpty();
    OperatingConditions tooMuch =
        TestParts.conditions().peakDischargeCurrent(amperes(500), seconds(10)).build();
    assertThat(usable(PACK, tooMuch, TestParts.inverter(60, 200))).isEmpty();
    // From 0.75 on by the sag, up to 0.25 by regeneration.
    OperatingConditions conditions = at300A().regenerationCurrent(amperes(250)).build();
    assertThat(usable(PACK, conditions, TestParts.inverter(90, 100.5))).isEmpty();
  }

  @Test
  void narrowBandInsideOneStepIsFound() {
    // Sag from 0.502 on, charger's end up to 0.508.
    Device inverter = TestParts.inverter(30 * (3.0 + 0.4 * 0.502 - 0.3), 200);
    Device charger = TestParts.charger(60, 30 * (3.0 + 0.4 * 0.508));
    StateOfChargeBand band = usable(PACK, at300A().build(), inverter, charger).orElseThrow();
    assertThat(band.emptiest().fraction()).isCloseTo(0.502, within(2e-6));
    assertThat(band.fullest().fraction()).isCloseTo(0.508, within(2e-6));
  }

  @Test
  void widestOfSeveralBandsWhereResistanceBends() {
    // A hump of resistance at 40 %: works below and above it.
    BatteryModule humped =
        TestParts.module(
            TestParts.cell()
                .resistance(
                    ResistanceTable.at(celsius(25))
                        .row(percentCharge(0), milliohms(0.2))
                        .row(percentCharge(20), milliohms(0.2))
                        .row(percentCharge(40), milliohms(1.5))
                        .row(percentCharge(60), milliohms(0.2))
                        .row(percentCharge(100), milliohms(0.2))
                        .build())
                .build(),
            30);
    Pack pack = Pack.of(humped, 1, 1);
    Device inverter = TestParts.inverter(30 * 2.9, 200);
    StateOfChargeBand band = usable(pack, at300A().build(), inverter).orElseThrow();
    assertThat(band.fullest()).isEqualTo(StateOfCharge.FULL);
    assertThat(band.emptiest().fraction()).isBetween(0.4, 0.6);
  }

  static Stream<Generator> cases() {
    return Generator.cases(60);
  }

  /** Worked out from the pack itself, without the envelope. */
  private static boolean works(
      Pack pack, OperatingConditions conditions, List<Device> devices, double fraction) {
    StateOfCharge soc = StateOfCharge.of(fraction);
    PackState cold = PackState.of(soc, conditions.coldest());
    double charge0K = Math.max(273.15, Kind.TEMPERATURE.siValueOf(conditions.coldest()));
    PackState charging = PackState.of(soc, Kind.TEMPERATURE.ofSi(charge0K));
    double currentA = Kind.CURRENT.siValueOf(conditions.peakDischargeCurrent().orElseThrow());
    double mostA =
        Kind.CURRENT.siValueOf(
            pack.maximumDischargePower(cold, conditions.peakDuration()).current());
    double sagV = volts(pack, cold) - currentA * ohms(pack, cold, Direction.DISCHARGE);
    double riseV =
        volts(pack, charging)
            + Kind.CURRENT.siValueOf(conditions.regenerationCurrent())
                * ohms(pack, charging, Direction.CHARGE);
    double endV =
        fraction == 1
            ? TestParts.voltsOf(pack.maximumVoltage())
            : volts(pack, PackState.of(soc, conditions.usual()));
    if (currentA > mostA) {
      return false;
    }
    for (Device device : devices) {
      double lowestV = device.window().operating().lowestV();
      double highestV = device.window().operating().highestV();
      boolean fits =
          device.role() == DeviceRole.CHARGER
              ? volts(pack, cold) >= lowestV && endV <= highestV
              : sagV >= lowestV && Math.max(riseV, endV) <= highestV;
      if (!fits) {
        return false;
      }
    }
    return true;
  }

  private static double volts(Pack pack, PackState state) {
    return TestParts.voltsOf(pack.openCircuitVoltage(state));
  }

  private static double ohms(Pack pack, PackState state, Direction direction) {
    return Kind.RESISTANCE.siValueOf(pack.resistance(state, direction));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  void worksJustInsideAndNotJustOutside(Generator random) {
    Pack pack = Pack.of(TestParts.module(TestParts.randomCell(random), 30), 1, 1);
    OperatingConditions conditions =
        TestParts.conditions()
            .stateOfCharge(percentCharge(2), percentCharge(100))
            .coldest(celsius(random.typed(-15, 10, 0)))
            .peakDischargeCurrent(amperes(random.typed(20, 150, 0)), seconds(10))
            .regenerationCurrent(amperes(random.typed(0, 100, 0)))
            .build();
    List<Device> devices =
        List.of(
            TestParts.inverter(random.between(75, 95), random.between(100, 125)),
            TestParts.charger(random.between(60, 90), random.between(98, 125)));
    Optional<StateOfChargeBand> found =
        WindowReview.of(pack, devices, conditions).usableStateOfCharge();
    double step = 2e-6;
    if (found.isEmpty()) {
      for (double s = 0.02; s < 1; s += 0.0037) {
        assertThat(works(pack, conditions, devices, s)).as("at %s", s).isFalse();
      }
      return;
    }
    double from = found.get().emptiest().fraction();
    double to = found.get().fullest().fraction();
    for (int i = 0; i <= 50; i++) {
      double inside = Math.min(to, from + (to - from) * i / 50);
      assertThat(works(pack, conditions, devices, inside)).as("at %s", inside).isTrue();
    }
    if (from > 0.02) {
      assertThat(works(pack, conditions, devices, Math.max(0.02, from - step))).isFalse();
    }
    if (to < 1) {
      assertThat(works(pack, conditions, devices, Math.min(1, to + step))).isFalse();
    }
  }
}
