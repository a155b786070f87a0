package org.wattwright.voltage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.wattwright.units.Measures.ampereHours;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wattwright.battery.BatteryModule;
import org.wattwright.battery.CellEstimates;
import org.wattwright.battery.Chemistry;
import org.wattwright.battery.Pack;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Outcome;
import org.wattwright.check.Party;
import org.wattwright.units.InvalidInputException;

class WindowReviewTest {
  /** 30 cells: 109.5 V at the end of charge, 91.2 V empty. */
  private static final Pack PACK = Pack.of(TestParts.module(6), 5, 1);

  private static WindowReview review(OperatingConditions.Builder conditions, Device... devices) {
    return WindowReview.of(PACK, List.of(devices), conditions.build());
  }

  private static Check check(WindowReview review, String code) {
    return review.checks().stream()
        .filter(check -> check.code().equals(code))
        .findFirst()
        .orElseThrow();
  }

  private static Device inverter(double lowestV, double highestV) {
    return Device.of("inverter", DeviceRole.INVERTER, TestParts.window(lowestV, highestV)).build();
  }

  @Test
  void checksComeDeviceByDeviceThenThePack() {
    WindowReview review =
        review(TestParts.conditions(), TestParts.inverter(70, 120), TestParts.charger(60, 118.8));
    assertThat(review.checks())
        .extracting(Check::code)
        .containsExactly(
            "voltage.absolute-maximum",
            "voltage.operating-maximum",
            "voltage.operating-minimum",
            "voltage.full-performance",
            "voltage.absolute-maximum",
            "voltage.charger-reach",
            "voltage.charger-start",
            "battery.peak-load",
            "voltage.regeneration-at-full");
    assertThat(review.outcome()).isEqualTo(Outcome.PASS);
    assertThat(review.toString()).startsWith("PASS: 109.5 V charging");
    assertThat(review.pack()).isSameAs(PACK);
    assertThat(review.worksheet())
        .isEqualTo(VoltageEnvelope.worksheet(PACK, TestParts.conditions().build()));
  }

  @Test
  void upperEndFailsPassesAndCautionsWithinOnePerCent() {
    assertThat(outcome(inverter(70, 109.4), "voltage.operating-maximum")).isEqualTo(Outcome.FAIL);
    assertThat(outcome(inverter(70, 109.5), "voltage.operating-maximum"))
        .isEqualTo(Outcome.CAUTION);
    assertThat(outcome(inverter(70, 110.5), "voltage.operating-maximum"))
        .isEqualTo(Outcome.CAUTION);
    assertThat(outcome(inverter(70, 110.7), "voltage.operating-maximum")).isEqualTo(Outcome.PASS);
  }

  @Test
  void lowerEndIsThatUnderTheColdPeakLoad() {
    // 79.94 V under 30 kW.
    assertThat(outcome(inverter(80, 140), "voltage.operating-minimum")).isEqualTo(Outcome.FAIL);
    assertThat(outcome(inverter(79.9, 140), "voltage.operating-minimum"))
        .isEqualTo(Outcome.CAUTION);
    assertThat(outcome(inverter(79, 140), "voltage.operating-minimum")).isEqualTo(Outcome.PASS);
  }

  private static Outcome outcome(Device device, String code) {
    return check(review(TestParts.conditions(), device), code).outcome();
  }

  @Test
  void aChargerReachesTheEndAndStartsAtTheRestVoltage() {
    assertThat(outcome(TestParts.charger(60, 109.4), "voltage.charger-reach"))
        .isEqualTo(Outcome.FAIL);
    assertThat(outcome(TestParts.charger(60, 112), "voltage.charger-reach"))
        .isEqualTo(Outcome.PASS);
    // 91.2 V empty at rest; the load's 79.94 V is none of its business.
    assertThat(outcome(TestParts.charger(91.3, 112), "voltage.charger-start"))
        .isEqualTo(Outcome.FAIL);
    assertThat(outcome(TestParts.charger(90, 112), "voltage.charger-start"))
        .isEqualTo(Outcome.PASS);
  }

  @Test
  void missingAbsoluteMaximumIsNotChecked() {
    Check check =
        check(review(TestParts.conditions(), inverter(70, 140)), "voltage.absolute-maximum");
    assertThat(check.outcome()).isEqualTo(Outcome.NOT_CHECKED);
    assertThat(check.missing()).containsExactly("inverter.absoluteMaximum");
    assertThat(check.answeredBy()).isEqualTo(Party.PARTS_SUPPLIER);
    assertThat(check.actual().orElseThrow()).hasToString("109.5 V");
  }

  @Test
  void absoluteMaximumHoldsForAChargerUnderRegenerationToo() {
    Device charger =
        Device.of(
                "charger",
                DeviceRole.CHARGER,
                TestParts.window(60, 110).absoluteMaximum(volts(115)))
            .build();
    // 30 × (3.4 V + 0.5 V) = 117 V.
    WindowReview review = review(TestParts.conditions().regenerationCurrent(amperes(500)), charger);
    assertThat(check(review, "voltage.absolute-maximum").outcome()).isEqualTo(Outcome.FAIL);
    assertThat(check(review, "voltage.charger-reach").outcome()).isNotEqualTo(Outcome.FAIL);
  }

  @Test
  void notesSayWhenTheVoltageOccurs() {
    WindowReview regenerating =
        review(
            TestParts.conditions().regenerationCurrent(amperes(500)),
            TestParts.inverter(70, 130),
            TestParts.charger(60, 118.8));
    assertThat(check(regenerating, "voltage.operating-maximum").note())
        .isEqualTo("500 A regeneration at 100 % at 0 °C");
    assertThat(check(regenerating, "voltage.operating-minimum").note())
        .isEqualTo("375.3 A at 10 % and -10 °C");
    assertThat(check(regenerating, "voltage.charger-reach").note()).isEqualTo("charged to 100 %");
    assertThat(check(regenerating, "voltage.charger-start").note()).isEqualTo("10 % at -10 °C");
    assertThat(check(regenerating, "battery.peak-load").note())
        .isEqualTo("limited by cell current");
    WindowReview charging = review(TestParts.conditions(), TestParts.inverter(70, 130));
    assertThat(check(charging, "voltage.operating-maximum").note())
        .isEqualTo("at the end of charge");
  }

  @Test
  void fullPerformanceIsARecommendation() {
    Device outside =
        Device.of(
                "inverter",
                DeviceRole.INVERTER,
                TestParts.window(70, 130).fullPerformance(TestParts.range(100, 120)))
            .build();
    Check check = check(review(TestParts.conditions(), outside), "voltage.full-performance");
    assertThat(check.outcome()).isEqualTo(Outcome.CAUTION);
    assertThat(check.note()).isEqualTo("nominal 96.6 V, band 100 V … 120 V");
    assertThat(outcome(TestParts.inverter(70, 130), "voltage.full-performance"))
        .isEqualTo(Outcome.PASS);
  }

  @Test
  void unknownFullPerformanceOfAnInverterIsNeverAPass() {
    Check check =
        check(review(TestParts.conditions(), inverter(70, 130)), "voltage.full-performance");
    assertThat(check.outcome()).isEqualTo(Outcome.CAUTION);
    assertThat(check.note()).contains("band not known");
    Device heater = Device.of("heater", DeviceRole.HEATER, TestParts.window(70, 130)).build();
    assertThat(review(TestParts.conditions(), heater).checks())
        .extracting(Check::code)
        .doesNotContain("voltage.full-performance");
  }

  @Test
  void aChargerHasNoFullPerformanceCheck() {
    Device charger =
        Device.of(
                "charger",
                DeviceRole.CHARGER,
                TestParts.window(60, 118).fullPerformance(TestParts.range(110, 118)))
            .build();
    assertThat(review(TestParts.conditions(), charger).checks())
        .extracting(Check::code)
        .doesNotContain("voltage.full-performance");
  }

  @Test
  void peakLoadAboveWhatThePackCarriesFails() {
    WindowReview power =
        review(
            TestParts.conditions().peakDischargePower(kilowatts(40), seconds(10)),
            TestParts.inverter(60, 130));
    assertThat(check(power, "battery.peak-load").outcome()).isEqualTo(Outcome.FAIL);
    assertThat(check(power, "voltage.operating-minimum").note())
        .isEqualTo("400 A, the most the pack gives, at 10 % and -10 °C");
    WindowReview current =
        review(
            TestParts.conditions().peakDischargeCurrent(amperes(401), seconds(10)),
            TestParts.inverter(60, 130));
    assertThat(check(current, "battery.peak-load").outcome()).isEqualTo(Outcome.FAIL);
    WindowReview exact =
        review(
            TestParts.conditions().peakDischargeCurrent(amperes(400), seconds(10)),
            TestParts.inverter(60, 130));
    assertThat(check(exact, "battery.peak-load").outcome()).isEqualTo(Outcome.PASS);
  }

  @Test
  void tooColdToDischargeFails() {
    WindowReview review =
        review(TestParts.conditions().coldest(celsius(-25)), TestParts.inverter(60, 130));
    Check check = check(review, "battery.peak-load");
    assertThat(check.outcome()).isEqualTo(Outcome.FAIL);
    assertThat(check.note()).isEqualTo("limited by cell temperature");
  }

  @Test
  void regenerationAboveTheCellsMaximumIsACaution() {
    Device inverter = TestParts.inverter(60, 200);
    Check high =
        check(
            review(TestParts.conditions().regenerationCurrent(amperes(500)), inverter),
            "voltage.regeneration-at-full");
    assertThat(high.outcome()).isEqualTo(Outcome.CAUTION);
    assertThat(high.note())
        .isEqualTo(
            "117 V against 109.5 V with every cell at its maximum: limit regeneration when full");
    Check just =
        check(
            review(TestParts.conditions().regenerationCurrent(amperes(250)), inverter),
            "voltage.regeneration-at-full");
    assertThat(just.outcome()).isEqualTo(Outcome.PASS);
  }

  @Test
  void unstatedRegenerationIsNotChecked() {
    OperatingConditions.Builder silent =
        OperatingConditions.builder()
            .stateOfCharge(percentCharge(10), percentCharge(100))
            .coldest(celsius(-10))
            .peakDischargePower(kilowatts(30), seconds(10));
    WindowReview review = review(silent, TestParts.inverter(70, 120));
    Check check = check(review, "voltage.regeneration-at-full");
    assertThat(check.outcome()).isEqualTo(Outcome.NOT_CHECKED);
    assertThat(check.missing()).containsExactly("conditions.regenerationCurrent");
    assertThat(review.outcome()).isEqualTo(Outcome.NOT_CHECKED);
  }

  @Test
  void estimatedResistanceGivesAtMostACautionOnSafety() {
    BatteryModule estimated =
        TestParts.module(
            TestParts.cell()
                .resistance(CellEstimates.resistance(Chemistry.LFP, ampereHours(100)))
                .build(),
            30);
    WindowReview review =
        WindowReview.of(
            Pack.of(estimated, 1, 1),
            List.of(TestParts.inverter(60, 400)),
            TestParts.conditions().build());
    Check check = check(review, "voltage.absolute-maximum");
    assertThat(check.basis()).isEqualTo(Basis.ESTIMATED);
    assertThat(check.estimates()).containsExactly("resistance of plain module");
    assertThat(check.outcome()).isEqualTo(Outcome.CAUTION);
    assertThat(check(review, "voltage.operating-minimum").estimates())
        .containsExactly("resistance of plain module");
    assertThat(check(review, "battery.peak-load").estimates())
        .containsExactly("resistance of plain module");
    assertThat(check(review, "voltage.full-performance").basis()).isEqualTo(Basis.DATA_SHEET);
  }

  @Test
  void rejectsNoDevices() {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> WindowReview.of(PACK, List.of(), TestParts.conditions().build()))
        .withMessage("devices must be a list with at least one element, but was empty");
  }

  @Test
  void checksCannotBeChanged() {
    WindowReview review = review(TestParts.conditions(), TestParts.inverter(70, 120));
    assertThatExceptionOfType(UnsupportedOperationException.class)
        .isThrownBy(() -> review.checks().clear());
  }
}
