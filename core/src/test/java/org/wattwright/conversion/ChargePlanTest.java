package org.wattwright.conversion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.hours;
import static org.wattwright.units.Measures.kilowatts;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.volts;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wattwright.battery.CellEstimates;
import org.wattwright.battery.Pack;
import org.wattwright.charging.ChargeEnd;
import org.wattwright.charging.Charger;
import org.wattwright.charging.ChargingPoint;
import org.wattwright.charging.DcStation;
import org.wattwright.charging.EfficiencyByLoad;
import org.wattwright.charging.Supply;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Checks;
import org.wattwright.check.Outcome;
import org.wattwright.check.Source;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.WorkshopUnits;
import org.wattwright.voltage.VoltageRange;
import org.wattwright.voltage.VoltageWindow;

class ChargePlanTest {
  private static final Source CUSTOMER = Source.requirement("customer: overnight");

  private static Charger charger(double highestV) {
    return Charger.of(
            "charger", VoltageWindow.operating(VoltageRange.between(volts(60), volts(highestV))))
        .maximumPower(kilowatts(3.3))
        .maximumCurrent(amperes(60))
        .maximumInputCurrent(amperes(32))
        .efficiency(EfficiencyByLoad.constant(0.9))
        .build();
  }

  private static ChargingPoint socket(double circuitA) {
    return ChargingPoint.of(Supply.singlePhase(volts(230), amperes(circuitA)));
  }

  private static ChargePlan.Builder plan(double highestV) {
    return ChargePlan.of(charger(highestV)).from(percentCharge(20)).temperature(celsius(15));
  }

  private static Conversion conversion(ChargePlan plan) {
    return InventedVan.conversion().charging(plan).build();
  }

  /**
   * 32 cells of 100 A·h, 3.08 V at 20 % and 3.32 V at 80 %, 1 mΩ each. 230 V · 10 A · 0.9 = 2.07 kW
   * at the pack. To be stored: 60 A·h · 32 · 3.2 V = 6.144 kW·h. At about 103 V that is 20.1 A,
   * which loses 20.1² A² · 32 mΩ = 12.9 W. Time: 6.144 kW·h / (2.07 − 0.0129) kW = 2.987 h; from
   * the mains 2.3 kW · 2.987 h = 6.87 kW·h.
   */
  @Test
  void timeAndEnergyByHand() {
    ChargePlan plan =
        plan(120).to(percentCharge(80)).supply("bakery", socket(10), hours(3), CUSTOMER).build();
    PlannedCharge charge = conversion(plan).charging().orElseThrow().charges().get(0);
    assertThat(WorkshopUnits.HOUR.valueOf(charge.result().time())).isCloseTo(2.987, within(0.003));
    assertThat(WorkshopUnits.KILOWATT_HOUR.valueOf(charge.result().wallEnergy().orElseThrow()))
        .isCloseTo(6.87, within(0.01));
    assertThat(WorkshopUnits.AMPERE.valueOf(charge.current().orElseThrow().current()))
        .isEqualTo(10);
    assertThat(only(charge.checks(), "charging.time").outcome()).isNotEqualTo(Outcome.FAIL);
  }

  @Test
  void everyCheckNamesItsSupplyAndStandsInTheReview() {
    ChargePlan plan =
        plan(120)
            .to(percentCharge(80))
            .supply("bakery", socket(10), hours(2.9), CUSTOMER)
            .supply("yard", socket(16))
            .station(
                DcStation.of(
                    "harbour",
                    VoltageRange.between(volts(50), volts(500)),
                    amperes(100),
                    kilowatts(20)))
            .build();
    Conversion van = conversion(plan);
    List<Check> checks = van.charging().orElseThrow().checks();
    assertThat(checks)
        .allMatch(
            check -> plan.labels().stream().anyMatch(label -> check.what().endsWith(", " + label)));
    assertThat(van.review()).containsAll(checks);
    assertThat(Checks.withCode(van.review(), "charging.plan")).isEmpty();
    assertThat(only(checks, "charging.time").outcome()).isEqualTo(Outcome.FAIL);
    assertThat(Checks.withCode(checks, "charging.station-end")).hasSize(1);
    assertThat(Checks.withCode(checks, "charging.completes"))
        .hasSize(3)
        .allMatch(check -> check.outcome() == Outcome.PASS);
  }

  /**
   * The charger ends at 107 V. There 5 A, the end current, leave a rest voltage of 107 V − 5 A · 32
   * mΩ = 106.84 V, or 3.3388 V a cell: 84.7 %.
   */
  @Test
  void endCurrentShortOfTheChargeAskedForFails() {
    ChargePlan plan =
        plan(107).to(percentCharge(95)).supply("yard", socket(16), hours(24), CUSTOMER).build();
    PlannedCharge charge = conversion(plan).charging().orElseThrow().charges().get(0);
    assertThat(charge.result().endedBy()).isEqualTo(ChargeEnd.END_CURRENT);
    assertThat(charge.result().end().percent()).isCloseTo(84.7, within(0.05));
    Check completes = only(charge.checks(), "charging.completes");
    assertThat(completes.outcome()).isEqualTo(Outcome.FAIL);
    assertThat(completes.note()).contains("84.69 %");
    assertThat(only(charge.checks(), "charging.time").outcome()).isEqualTo(Outcome.FAIL);
    ChargePlan full = plan(107).supply("yard", socket(16)).build();
    assertThat(
            only(conversion(full).charging().orElseThrow().checks(), "charging.completes")
                .outcome())
        .isEqualTo(Outcome.FAIL);
  }

  @Test
  void timeAndEndRestOnTheWeakestOfTheCells() {
    Pack pack =
        InventedVan.pack(
            InventedVan.cell()
                .resistance(CellEstimates.resistanceOverTemperature(milliohms(1)))
                .build());
    ChargePlan plan =
        plan(120).to(percentCharge(80)).supply("yard", socket(16), hours(9), CUSTOMER).build();
    List<Check> checks = ChargeReview.of(pack, plan).checks();
    assertThat(only(checks, "charging.time").basis()).isEqualTo(Basis.ESTIMATED);
    assertThat(only(checks, "charging.completes").basis()).isEqualTo(Basis.ESTIMATED);
  }

  @Test
  void withoutAPlanNothingIsClaimed() {
    Conversion van = InventedVan.conversion().build();
    Check check = only(van.review(), "charging.plan");
    assertThat(check.outcome()).isEqualTo(Outcome.NOT_CHECKED);
    assertThat(check.missing()).containsExactly("Conversion.charging");
    assertThat(SheetSections.of(van).charging().blocks().get(0).toString())
        .contains("No charge plan");
    assertThat(ExecutivePage.of(van).answers().get(ExecutiveLine.CHARGE_TIME))
        .startsWith("Not reckoned");
  }

  @Test
  void sheetShowsSuppliesPhasesAndWorking() {
    ChargePlan plan =
        plan(120)
            .to(percentCharge(80))
            .supply("bakery", socket(10), hours(8), CUSTOMER)
            .supply("yard", socket(16))
            .build();
    Conversion van = conversion(plan);
    Section section = SheetSections.of(van).charging();
    List<DataTable> tables =
        section.blocks().stream()
            .filter(DataTable.class::isInstance)
            .map(DataTable.class::cast)
            .toList();
    assertThat(tables.get(0).rows().get(0)).startsWith("bakery", "10 A").contains("80 %", "8 h");
    assertThat(tables.get(0).rows().get(1)).startsWith("yard", "16 A").contains("–");
    assertThat(tables.get(1).rows()).hasSizeGreaterThanOrEqualTo(2);
    assertThat(section.parts().get(0).blocks().stream().filter(Working.class::isInstance))
        .hasSize(4);
    assertThat(ExecutivePage.of(van).answers().get(ExecutiveLine.CHARGE_TIME))
        .startsWith("From bakery: 20 % … 80 % in 2 h 59 min");
    assertThat(van.toSheet().sections().stream().map(Section::title)).contains("Charging");
  }

  @Test
  void fingerprintFollowsThePlan() {
    Fingerprint ten = conversion(plan(120).supply("yard", socket(10)).build()).fingerprint();
    assertThat(conversion(plan(120).supply("yard", socket(10)).build()).fingerprint())
        .isEqualTo(ten);
    assertThat(conversion(plan(120).supply("yard", socket(13)).build()).fingerprint())
        .isNotEqualTo(ten);
    assertThat(InventedVan.conversion().build().fingerprint()).isNotEqualTo(ten);
  }

  @Test
  void badPlans() {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> ChargePlan.of(charger(120)).build())
        .withMessage("ChargePlan is missing 3 of 3 required fields: from, temperature, supply");
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> plan(120).supply("yard", socket(10)).supply("yard", socket(16)))
        .withMessageContaining("\"yard\"");
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> plan(120).supply("yard", socket(10), hours(0), CUSTOMER))
        .withMessageContaining("ChargePlan.allowed");
  }

  private static Check only(List<Check> checks, String code) {
    List<Check> found = Checks.withCode(checks, code);
    assertThat(found).as(code).hasSize(1);
    return found.get(0);
  }
}
