package org.wattwright.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.battery.Fixtures.HALF;
import static org.wattwright.battery.Fixtures.flatCell;
import static org.wattwright.battery.Fixtures.flatModule;
import static org.wattwright.battery.PackTest.assertInvalid;
import static org.wattwright.units.Measures.ampereHours;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;

import org.junit.jupiter.api.Test;
import org.wattwright.check.Basis;
import org.wattwright.units.Kind;
import org.wattwright.units.Price;

class BatteryModuleTest {
  @Test
  void cellsAddUp() {
    BatteryModule module = flatModule();
    assertThat(module.capacity()).isEqualTo(ampereHours(210));
    assertThat(Kind.VOLTAGE.siValueOf(module.openCircuitVoltage(HALF)))
        .isCloseTo(19.8, within(1e-12));
    assertThat(Kind.RESISTANCE.siValueOf(module.resistance(HALF, Direction.CHARGE)))
        .isCloseTo(6 * 0.7e-3 / 2 + 0.2e-3, within(1e-15));
    assertThat(module.mass()).isEqualTo(kilograms(24.8));
    assertThat(module.volume()).isEmpty();
    assertThat(module.price()).isEmpty();
    assertThat(module.interconnectResistance()).isEqualTo(milliohms(0.2));
    assertThat(module.name()).isEqualTo("flat module");
    assertThat(module.basis(CellProperty.MASS)).isEqualTo(Basis.DATA_SHEET);
  }

  @Test
  void massIsThatOfTheCellsUnlessTold() {
    BatteryModule bare = BatteryModule.of(flatCell().build()).series(6).build();
    assertThat(Kind.MASS.siValueOf(bare.mass())).isCloseTo(6 * 1.98, within(1e-12));
    BatteryModule boxed =
        BatteryModule.of(flatCell().build()).series(6).overheadMass(kilograms(1)).build();
    assertThat(Kind.MASS.siValueOf(boxed.mass())).isCloseTo(6 * 1.98 + 1, within(1e-12));
    assertInvalid(
        () -> BatteryModule.of(flatCell().build()).series(6).mass(kilograms(11)).build(),
        "BatteryModule.mass must be ≥ the mass of its 6 cells, 11.88 kg, but was 11 kg");
  }

  @Test
  void rejectsWrongInput() {
    BatteryModule.Builder module = BatteryModule.of(flatCell().build());
    assertInvalid(() -> module.series(0), "BatteryModule.series must be from 1 to 1000, but was 0");
    assertInvalid(
        () -> module.parallel(-1), "BatteryModule.parallel must be from 1 to 1000, but was -1");
    assertInvalid(() -> module.name(""), "BatteryModule.name must be a text, but was \"\"");
    assertInvalid(
        () -> module.interconnectResistance(milliohms(-1)),
        "BatteryModule.interconnectResistance must be ≥ 0 mΩ, but was -1 mΩ");
    assertInvalid(
        () -> module.overheadMass(kilograms(-1)),
        "BatteryModule.overheadMass must be ≥ 0 kg, but was -1 kg");
    assertInvalid(
        () -> flatModule().withMeasuredCapacity(ampereHours(0), "test"),
        "BatteryModule.capacity must be > 0 A·h, but was 0 A·h");
  }

  @Test
  void measuredCapacityReplacesThePlate() {
    BatteryModule salvaged = flatModule().withMeasuredCapacity(ampereHours(168), "full cycle");
    assertThat(salvaged.capacity()).isEqualTo(ampereHours(168));
    assertThat(salvaged.basis(CellProperty.CAPACITY)).isEqualTo(Basis.MEASURED);
    assertThat(salvaged.cell().capacity()).isEqualTo(ampereHours(84));
  }

  private static WholeModuleBuilder whole() {
    return BatteryModule.whole("salvaged 24 V", Chemistry.NMC, 6)
        .measuredCapacity(ampereHours(60), "discharge at 20 A")
        .cellOpenCircuit(CellEstimates.openCircuit(Chemistry.NMC))
        .resistance(milliohms(6), Basis.MEASURED)
        .minimumVoltage(volts(15))
        .maximumVoltage(volts(25.2))
        .continuousDischargeCurrent(amperes(120))
        .pulseDischargeCurrent(amperes(240), seconds(10))
        .continuousChargeCurrent(amperes(60))
        .dischargeTemperatures(CellEstimates.temperatures(Chemistry.NMC, Direction.DISCHARGE))
        .chargeTemperatures(CellEstimates.temperatures(Chemistry.NMC, Direction.CHARGE))
        .mass(kilograms(12));
  }

  @Test
  void aWholeModuleIsDividedIntoItsCells() {
    BatteryModule module =
        whole()
            .ohmicResistance(milliohms(3.6), Basis.ESTIMATED)
            .dimensions(Dimensions.of(millimetres(300), millimetres(200), millimetres(100)))
            .price(Price.of("150", "EUR"))
            .build();
    assertThat(module.series()).isEqualTo(6);
    assertThat(module.parallel()).isEqualTo(1);
    assertThat(module.cell().minimumVoltage()).isEqualTo(volts(2.5));
    assertThat(Kind.VOLTAGE.siValueOf(module.cell().maximumVoltage()))
        .isCloseTo(4.2, within(1e-12));
    assertThat(Kind.RESISTANCE.siValueOf(module.resistance(HALF, Direction.DISCHARGE)))
        .isCloseTo(6e-3, within(1e-15));
    assertThat(module.mass()).isEqualTo(kilograms(12));
    assertThat(module.basis(CellProperty.CAPACITY)).isEqualTo(Basis.MEASURED);
    assertThat(module.basis(CellProperty.RESISTANCE)).isEqualTo(Basis.MEASURED);
    assertThat(module.basis(CellProperty.VOLTAGE)).isEqualTo(Basis.ESTIMATED);
    assertThat(module.basis(CellProperty.TEMPERATURE)).isEqualTo(Basis.ESTIMATED);
    BatteryModule told =
        whole()
            .dischargeTemperatures(TemperatureRange.between(celsius(-20), celsius(55)))
            .chargeTemperatures(TemperatureRange.between(celsius(5), celsius(45)))
            .build();
    assertThat(told.cell().temperatures(Direction.CHARGE).contains(celsius(4))).isFalse();
    assertThat(module.price()).contains(Price.of("150", "EUR"));
    assertThat(module.volume()).isPresent();
    Pack one = Pack.of(module, 1, 1);
    assertThat(
            Kind.RESISTANCE.siValueOf(one.atBandEnd(BandEnd.LOW).ohmicResistance().orElseThrow()))
        .as("an estimated ohmic resistance is bracketed")
        .isCloseTo(1.8e-3, within(1e-12));
    assertThat(Kind.RESISTANCE.siValueOf(one.ohmicResistance().orElseThrow()))
        .isCloseTo(3.6e-3, within(1e-12));
  }

  @Test
  void aWholeModuleListsWhatItLacks() {
    assertInvalid(
        () -> BatteryModule.whole("bare", Chemistry.NMC, 6).build(),
        "BatteryModule is missing 2 of 2 required fields: resistance, mass");
    assertInvalid(
        () -> whole().resistance(milliohms(0), Basis.MEASURED),
        "BatteryModule.resistance must be > 0 mΩ, but was 0 mΩ");
    assertInvalid(
        () -> whole().ohmicResistance(milliohms(0), Basis.MEASURED),
        "BatteryModule.ohmicResistance must be > 0 mΩ, but was 0 mΩ");
    assertInvalid(
        () -> whole().minimumVoltage(volts(0)),
        "BatteryModule.minimumVoltage must be > 0 V, but was 0 V");
    assertInvalid(
        () -> BatteryModule.whole("bare", Chemistry.NMC, 0),
        "BatteryModule.cellsInSeries must be from 1 to 1000, but was 0");
    assertThat(whole().capacity(ampereHours(50)).build().capacity()).isEqualTo(ampereHours(50));
  }

  @Test
  void stringsAddUpAndListTheirBays() {
    SeriesString string =
        SeriesString.of("A")
            .group("bonnet", flatModule(), 4)
            .link(milliohms(0.4))
            .group("rails", flatModule(), 6)
            .link(milliohms(0.1))
            .build();
    assertThat(string.moduleCount()).isEqualTo(10);
    assertThat(string.cellsInSeries()).isEqualTo(60);
    assertThat(Kind.RESISTANCE.siValueOf(string.linkResistance())).isCloseTo(0.5e-3, within(1e-15));
    assertThat(Kind.MASS.siValueOf(string.mass())).isCloseTo(248, within(1e-9));
    assertThat(string.basis(CellProperty.RESISTANCE)).isEqualTo(Basis.DATA_SHEET);
    assertThat(string.atBandEnd(BandEnd.LOW)).isEqualTo(string);
    assertInvalid(
        () -> SeriesString.of("A").build(),
        "SeriesString.groups must be at least one group, but was none");
    assertInvalid(
        () -> SeriesString.of("A").link(milliohms(-1)),
        "SeriesString.link must be ≥ 0 mΩ, but was -1 mΩ");
  }
}
