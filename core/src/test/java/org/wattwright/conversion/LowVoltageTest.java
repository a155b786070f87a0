package org.wattwright.conversion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wattwright.units.Measures.ampereHours;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.days;
import static org.wattwright.units.Measures.milliamperes;
import static org.wattwright.units.Measures.minutes;
import static org.wattwright.units.Measures.volts;
import static org.wattwright.units.Measures.watts;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wattwright.charging.DcDcConverter;
import org.wattwright.charging.EfficiencyByLoad;
import org.wattwright.charging.LowVoltageBattery;
import org.wattwright.charging.LowVoltageBudget;
import org.wattwright.charging.LowVoltageLoad;
import org.wattwright.charging.LowVoltageSupply;
import org.wattwright.charging.LowVoltageTargets;
import org.wattwright.check.Check;
import org.wattwright.check.Checks;
import org.wattwright.check.Outcome;
import org.wattwright.voltage.VoltageRange;
import org.wattwright.voltage.VoltageWindow;

class LowVoltageTest {
  private static LowVoltage side(double converterW) {
    LowVoltageBudget budget =
        LowVoltageBudget.of(
            List.of(
                LowVoltageLoad.of("lamps", amperes(9)).essential(),
                LowVoltageLoad.of("wipers", amperes(4)).duty(0.5).peak(amperes(12)).essential(),
                LowVoltageLoad.keyOff("alarm", milliamperes(20))),
            LowVoltageBattery.of(ampereHours(44)).usable(0.5),
            volts(14));
    DcDcConverter converter =
        DcDcConverter.of(
                "converter", VoltageWindow.operating(VoltageRange.between(volts(60), volts(135))))
            .outputVoltage(volts(14))
            .maximumOutputPower(watts(converterW))
            .efficiency(EfficiencyByLoad.constant(0.9))
            .build();
    return new LowVoltage(
        budget,
        converter,
        celsius(40),
        new LowVoltageTargets(minutes(60), days(21), LowVoltageSupply.C));
  }

  /**
   * 9 A + 0.5 · 4 A = 11 A, at 14 V 154 W. 44 A·h · 0.5 = 22 A·h: 120 min at 11 A, 22 A·h / 20 mA =
   * 1100 h = 45.83 d parked.
   */
  @Test
  void sumsByHandStandInTheSection() {
    Conversion van = InventedVan.conversion().lowVoltage(side(300)).build();
    Section section = SheetSections.of(van).lowVoltage();
    List<List<String>> sums =
        section.blocks().stream()
            .filter(DataTable.class::isInstance)
            .map(block -> ((DataTable) block).rows())
            .toList()
            .get(1);
    assertThat(sums)
        .contains(
            List.of("on average on the road", "154 W"),
            List.of("essential loads, the converter stopped", "11 A"),
            List.of("the battery carries them for", "120 min"),
            List.of("with the key off", "20 mA"),
            List.of("parked until the usable charge is gone", "45.83 d"));
    assertThat(van.toSheet().sections().stream().map(Section::title)).contains("Low voltage");
  }

  @Test
  void checksStandInTheReview() {
    Conversion enough = InventedVan.conversion().lowVoltage(side(300)).build();
    assertThat(enough.review()).containsAll(side(300).checks());
    assertThat(Checks.withCode(enough.review(), "charging.low-voltage")).isEmpty();
    Conversion weak = InventedVan.conversion().lowVoltage(side(100)).build();
    assertThat(Checks.withCode(weak.review(), "charging.converter-power"))
        .singleElement()
        .satisfies(check -> assertThat(check.outcome()).isEqualTo(Outcome.FAIL));
    assertThat(weak.fingerprint()).isNotEqualTo(enough.fingerprint());
  }

  @Test
  void withoutItNothingIsClaimed() {
    Conversion van = InventedVan.conversion().build();
    Check check = Checks.withCode(van.review(), "charging.low-voltage").get(0);
    assertThat(check.outcome()).isEqualTo(Outcome.NOT_CHECKED);
    assertThat(check.missing()).containsExactly("Conversion.lowVoltage");
    assertThat(SheetSections.of(van).lowVoltage().blocks().get(0).toString())
        .contains("No loads were given");
  }
}
