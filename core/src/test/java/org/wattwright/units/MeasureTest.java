package org.wattwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kelvinsOfRise;
import static org.wattwright.units.Measures.millivolts;
import static org.wattwright.units.Measures.newtonMetres;
import static org.wattwright.units.Measures.number;
import static org.wattwright.units.Measures.percent;
import static org.wattwright.units.Measures.volts;

import java.io.InvalidObjectException;
import java.io.NotSerializableException;
import java.util.List;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.Quantity.Scale;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Temperature;
import org.junit.jupiter.api.Test;
import org.wattwright.testing.Serialisation;

class MeasureTest {
  private static final double LARGEST = Double.MAX_VALUE;
  private static final double SMALLEST = Double.MIN_VALUE;

  @Test
  void keepsValueAndUnitAsGiven() {
    Measure<ElectricPotential> voltage = ours(millivolts(3700));
    assertThat(voltage.getValue()).isEqualTo(3700.0);
    assertThat(voltage.namedUnit()).isSameAs(WorkshopUnits.MILLIVOLT);
    assertThat(voltage.kind()).isSameAs(Kind.VOLTAGE);
    assertThat(voltage.getScale()).isEqualTo(Scale.ABSOLUTE);
    assertThat(voltage).hasToString("3700 mV");
  }

  @Test
  void takesTheSameObjectAtTheDoorIfItIsOurs() {
    Quantity<ElectricPotential> voltage = volts(3.7);
    assertThat(Measure.from(voltage, Kind.VOLTAGE)).isSameAs(voltage);
  }

  @Test
  void minusZeroIsZero() {
    assertThat(volts(-0.0)).isEqualTo(volts(0)).hasSameHashCodeAs(volts(0)).hasToString("0 V");
    assertThat(volts(-0.0).getValue()).isEqualTo(0.0);
    assertThat(volts(0).negate()).isEqualTo(volts(0)).hasToString("0 V");
    assertThat(ours(volts(-0.0)).compareTo(ours(volts(0)))).isZero();
    assertThat(millivolts(-1e-323).getValue()).isNotEqualTo(0.0);
  }

  @Test
  void edgesOfTheNumbersPrintAndParse() {
    for (double edge : new double[] {LARGEST, -LARGEST, SMALLEST, Double.MIN_NORMAL, 0.1, 1e15}) {
      assertThat(Kind.VOLTAGE.parse(volts(edge).toString())).isEqualTo(volts(edge));
    }
  }

  @Test
  void ordersBySiValue() {
    List<Measure<ElectricPotential>> sorted =
        Stream.of(volts(2), millivolts(1), volts(-5), millivolts(2500))
            .map(MeasureTest::ours)
            .sorted()
            .toList();
    assertThat(sorted)
        .extracting(Object::toString)
        .containsExactly("-5 V", "1 mV", "2 V", "2500 mV");
    assertThat(Kind.VOLTAGE.compare(volts(1), millivolts(999))).isPositive();
    assertThat(Kind.VOLTAGE.compare(volts(1), millivolts(1000))).isZero();
  }

  @Test
  void conversionPicksTheShortestNumberOfTheSameSize() {
    // 1.001 · 1000 is 1000.9999999999999 in doubles.
    assertThat(volts(1.001).to(WorkshopUnits.MILLIVOLT.toUnit())).hasToString("1001 mV");
    assertThat(ours(celsius(25)).in(WorkshopUnits.KELVIN)).hasToString("298.15 K");
    assertThat(ours(Measures.kelvins(293.25)).in(WorkshopUnits.CELSIUS)).hasToString("20.1 °C");
    assertThat(ours(Measures.kelvins(273.25)).in(WorkshopUnits.CELSIUS)).hasToString("0.1 °C");
    assertThat(ours(number(0.07)).in(WorkshopUnits.PERCENT)).hasToString("7 %");
    assertThat(Kind.CAPACITANCE.ofSi(0.00068)).hasToString("680 µF");
  }

  @Test
  void sameUnitIsNoConversion() {
    Measure<ElectricPotential> voltage = ours(volts(3.7));
    assertThat(voltage.in(WorkshopUnits.VOLT)).isSameAs(voltage);
  }

  @Test
  void resultsShowInTheCustomaryUnit() {
    assertThat(Kind.ENERGY.ofSi(3.6e6)).hasToString("1 kW·h");
    assertThat(Kind.TEMPERATURE.ofSi(298.15)).hasToString("25 °C");
    assertThat(Kind.ROTATIONAL_SPEED.ofSi(Math.PI / 30)).hasToString("1 1/min");
  }

  @Test
  void plainNumberHasNoSymbol() {
    assertThat(number(5)).hasToString("5");
    assertThat(percent(5)).hasToString("5 %").isEqualTo(number(0.05));
    assertThat(Kind.DIMENSIONLESS.parse("5")).isEqualTo(number(5));
  }

  @Test
  void arithmeticKeepsTheUnitOfTheLeft() {
    assertThat(millivolts(200).add(volts(1))).hasToString("1200 mV").isEqualTo(volts(1.2));
    assertThat(millivolts(200).subtract(volts(1))).hasToString("-800 mV");
    assertThat(millivolts(200).multiply(3)).hasToString("600 mV");
    assertThat(millivolts(200).divide(4)).hasToString("50 mV");
    assertThat(millivolts(200).negate()).hasToString("-200 mV");
    assertThat(
            volts(4)
                .inverse()
                .multiply(volts(8))
                .asType(javax.measure.quantity.Dimensionless.class))
        .isEqualTo(number(2));
  }

  @Test
  void closenessIncludesItsEdge() {
    assertThat(ours(volts(3.5)).isCloseTo(volts(3.75), millivolts(250))).isTrue();
    assertThat(ours(volts(3.75)).isCloseTo(volts(3.5), millivolts(250))).isTrue();
    assertThat(ours(volts(3.5)).isCloseTo(volts(3.75), millivolts(249.9))).isFalse();
    assertThat(ours(volts(3.5)).isCloseTo(volts(3.5), volts(0))).isTrue();
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> ours(volts(1)).isCloseTo(volts(1), volts(-1)))
        .withMessage("tolerance must be ≥ 0, but was -1 V");
  }

  @Test
  void scaleTellsADifferenceFromATemperature() {
    assertThat(kelvinsOfRise(5).getScale()).isEqualTo(Scale.RELATIVE);
    assertThat(celsius(5).getScale()).isEqualTo(Scale.ABSOLUTE);
    assertThat((Object) Measures.kelvins(5)).isNotEqualTo(kelvinsOfRise(5));
  }

  @Test
  void productWithoutANameIsACarrierOnly() {
    Quantity<?> product = volts(2).multiply(amperes(3));
    assertThat(product).hasToString("6 V·A");
    assertThatThrownBy(() -> Serialisation.bytes(product))
        .isInstanceOf(NotSerializableException.class)
        .hasMessageContaining("asType");
    assertThatThrownBy(() -> Serialisation.bytes(((Measure<?>) product).kind()))
        .isInstanceOf(NotSerializableException.class);
    assertThatThrownBy(() -> Serialisation.bytes(((Measure<?>) product).namedUnit()))
        .isInstanceOf(NotSerializableException.class);
  }

  @Test
  @SuppressWarnings("unchecked")
  void productsOfOneDimensionAddUp() {
    Quantity<Temperature> one = (Quantity<Temperature>) volts(2).multiply(amperes(3));
    Quantity<Temperature> other = (Quantity<Temperature>) volts(4).multiply(amperes(1));
    assertThat(one.add(other)).hasToString("10 V·A");
    assertThat(one.isEquivalentTo(other)).isFalse();
  }

  @Test
  @SuppressWarnings("unchecked")
  void kindIsNamedWhenAnotherIsMeant() {
    Quantity<ElectricPotential> torque =
        (Quantity<ElectricPotential>) (Quantity<?>) newtonMetres(5);
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> WorkshopUnits.VOLT.valueOf(torque))
        .withMessage("voltage must be a voltage, but was the torque 5 N·m");
  }

  @Test
  void streamThatSkipsTheProxyIsRejected() throws ReflectiveOperationException {
    for (Object object : List.of(volts(1), WorkshopUnits.VOLT)) {
      var readObject =
          object.getClass().getDeclaredMethod("readObject", java.io.ObjectInputStream.class);
      readObject.setAccessible(true);
      assertThatThrownBy(() -> readObject.invoke(object, (Object) null))
          .hasCauseInstanceOf(InvalidObjectException.class);
    }
  }

  @Test
  void serialFormIsSmallAndKeepsTheUnit() throws java.io.IOException {
    assertThat(Serialisation.bytes(millivolts(3700))).hasSizeLessThan(400);
    Measure<ElectricPotential> copy = Serialisation.copy(ours(millivolts(3700)));
    assertThat(copy.namedUnit()).isSameAs(WorkshopUnits.MILLIVOLT);
    assertThat(copy.kind()).isSameAs(Kind.VOLTAGE);
  }

  private static <Q extends Quantity<Q>> Measure<Q> ours(Quantity<Q> quantity) {
    return (Measure<Q>) quantity;
  }
}
