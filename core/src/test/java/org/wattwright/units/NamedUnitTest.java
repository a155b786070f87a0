package org.wattwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wattwright.units.Measures.millivolts;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.Serialisation;
import org.wattwright.testing.ValueTypeContract;

class NamedUnitTest extends ValueTypeContract<NamedUnit<?>> {
  static Stream<NamedUnit<?>> units() {
    return WorkshopUnits.defined().stream().map(WorkshopUnits.Named::unit);
  }

  @Override
  protected NamedUnit<?> sample() {
    return WorkshopUnits.MILLIVOLT;
  }

  @Override
  protected List<NamedUnit<?>> different() {
    return List.of(
        WorkshopUnits.VOLT,
        WorkshopUnits.KELVIN,
        WorkshopUnits.KELVIN_OF_DIFFERENCE,
        WorkshopUnits.CELSIUS);
  }

  @ParameterizedTest
  @MethodSource("units")
  void staysASingletonThroughSerialisation(NamedUnit<?> unit) {
    assertThat(Serialisation.copy(unit)).isSameAs(unit);
  }

  @Test
  void everyConstantIsDefinedOnce() {
    long constants =
        Arrays.stream(WorkshopUnits.class.getFields())
            .filter(field -> field.getType() == NamedUnit.class)
            .count();
    assertThat(WorkshopUnits.defined()).hasSize((int) constants);
  }

  @Test
  void readsItsOwnQuantitiesUntouched() {
    double awkward = 3700.0000000000005;
    assertThat(WorkshopUnits.MILLIVOLT.valueOf(millivolts(awkward))).isEqualTo(awkward);
    assertThat(WorkshopUnits.VOLT.valueOf(millivolts(3700))).isEqualTo(3.7);
  }

  @Test
  void typedNumbersConvertAsDecimals() {
    assertThat(WorkshopUnits.MEGAWATT.of(0.128072)).isEqualTo(WorkshopUnits.KILOWATT.of(128.072));
    assertThat(WorkshopUnits.MILE.toSi(0.3)).isEqualTo(482.8032);
    assertThat(WorkshopUnits.INCH.toSi(1.1)).isEqualTo(0.02794);
    assertThat(WorkshopUnits.NANOFARAD.toSi(4.7)).isEqualTo(4.7e-9);
    assertThat(WorkshopUnits.POUND_FORCE_FOOT.toSi(7)).isEqualTo(9.4907256383198028);
    assertThat(WorkshopUnits.CELSIUS.toSi(0.1)).isEqualTo(273.25);
    assertThat(WorkshopUnits.FAHRENHEIT.toSi(80)).isEqualTo(299.8166666666666667);
  }

  @Test
  void foreignUnitsEqualIfTheyConvertAlike() {
    var metre = WorkshopUnits.METRE.toUnit();
    NamedUnit<?> one = UnitBridge.namedUnit(metre.multiply(7), Kind.LENGTH);
    NamedUnit<?> same = UnitBridge.namedUnit(metre.multiply(7), Kind.LENGTH);
    NamedUnit<?> other = UnitBridge.namedUnit(metre.multiply(8), Kind.LENGTH);
    assertThat(one).isEqualTo(same).hasSameHashCodeAs(same).isNotEqualTo(other);
  }
}
