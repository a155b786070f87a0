package org.wattwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.wattwright.units.Measures.volts;

import javax.measure.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

class MeasureFormatTest {
  @ParameterizedTest
  @CsvSource({
    "voltage, 0 V, 0 V",
    "voltage, 3.6549 V, 3.655 V",
    "voltage, 0.0032 V, 3.2 mV",
    "voltage, -0.0032 V, -3.2 mV",
    "voltage, 403.2 V, 403.2 V",
    "voltage, 1500 V, 1.5 kV",
    "voltage, 999.94 mV, 999.9 mV",
    "voltage, 999.96 mV, 1 V",
    "voltage, 1000 mV, 1 V",
    "voltage, 1e-9 V, 0.001 µV",
    "voltage, 123456789 kV, 123456789 kV",
    "resistance, 0.0123 Ω, 12.3 mΩ",
    "resistance, 500000 Ω, 500 kΩ",
    "capacitance, 0.00068 F, 680 µF",
    "energy, 28000 W·h, 28 kW·h",
    "energy, 950 J, 950 J",
    "energy, 1500 J, 1.5 kJ",
    "charge, 0.5 A·h, 500 mA·h",
    "time, 0.25 s, 250 ms",
    "time, 90 min, 90 min",
    "length, 1250 mm, 1250 mm",
    "temperature, 25 °C, 25 °C",
    "temperature, 0.5 °C, 0.5 °C",
    "area, 35 mm², 35 mm²",
    "dimensionless, 0.12345, 0.1235",
    "dimensionless, 12.345 %, 12.35 %",
    "joule integral, 250000 A²·s, 250000 A²·s",
    "joule integral, 2500000 A²·s, 2500000 A²·s",
    "joule integral, 11580123.4 A²·s, 11580123 A²·s",
    "joule integral, 550000 A²·s, 550000 A²·s",
    "joule integral, 54.6875 A²·s, 54.69 A²·s",
    "joule integral, 2.5 kA²·s, 2.5 kA²·s",
  })
  void peopleGetFourDigitsAndAHandyPrefix(String kindName, String given, String text) {
    Kind<?> kind =
        Kind.values().stream().filter(k -> k.name().equals(kindName)).findFirst().orElseThrow();
    assertThat(format(kind, given)).isEqualTo(text);
  }

  private static <Q extends Quantity<Q>> String format(Kind<Q> kind, String given) {
    return Measures.format(kind.parse(given), kind);
  }

  @Test
  void foreignQuantityIsFormattedInOurUnits() {
    assertThat(Measures.format(Quantities.getQuantity(1, Units.VOLT.divide(400)), Kind.VOLTAGE))
        .isEqualTo("2.5 mV");
  }

  @Test
  void fixedDecimalsInAStatedUnit() {
    assertThat(Measures.format(volts(3.2), WorkshopUnits.MILLIVOLT, 0)).isEqualTo("3200 mV");
    assertThat(Measures.format(volts(3.2), WorkshopUnits.VOLT, 3)).isEqualTo("3.200 V");
    assertThat(Measures.format(volts(-0.0001), WorkshopUnits.VOLT, 2)).isEqualTo("0.00 V");
    assertThat(Measures.format(volts(0), WorkshopUnits.VOLT, 15)).isEqualTo("0.000000000000000 V");
    assertThat(Measures.format(Measures.number(0.5), WorkshopUnits.ONE, 2)).isEqualTo("0.50");
  }

  @ParameterizedTest
  @ValueSource(ints = {-1, 16})
  void decimalsOutsideTheirRangeAreRejected(int decimals) {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> Measures.format(volts(1), WorkshopUnits.VOLT, decimals))
        .withMessage("decimals must be from 0 to 15, but was " + decimals);
  }
}
