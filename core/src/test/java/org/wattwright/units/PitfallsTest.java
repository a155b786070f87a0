package org.wattwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.fahrenheit;
import static org.wattwright.units.Measures.grams;
import static org.wattwright.units.Measures.joules;
import static org.wattwright.units.Measures.kelvins;
import static org.wattwright.units.Measures.kelvinsOfRise;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.kilometres;
import static org.wattwright.units.Measures.kilometresPerHour;
import static org.wattwright.units.Measures.millivolts;
import static org.wattwright.units.Measures.newtonMetres;
import static org.wattwright.units.Measures.volts;
import static org.wattwright.units.Measures.watts;
import static org.wattwright.units.Measures.wattsPerKelvin;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.Quantity.Scale;
import javax.measure.Unit;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.wattwright.testing.Locales;
import tech.units.indriya.format.SimpleUnitFormat;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** Each mistake that quantity libraries are known for, and that ours does not make it. */
class PitfallsTest {
  @Nested
  class DivisionByZero {
    @Test
    void ofTwoQuantitiesIsAnError() {
      assertThatExceptionOfType(ArithmeticException.class)
          .isThrownBy(() -> volts(1.5).divide(amperes(0.0)))
          .withMessage("division by zero: 1.5 V / 0");
    }

    @Test
    void byAForeignZeroIsAnError() {
      assertThatExceptionOfType(ArithmeticException.class)
          .isThrownBy(() -> volts(1.5).divide(Quantities.getQuantity(0.0, Units.AMPERE)));
    }

    @Test
    void byTheNumberZeroIsAnErrorInEveryNumberType() {
      for (Number zero : List.of(0, 0L, 0.0, -0.0, 0f, BigDecimal.ZERO)) {
        assertThatExceptionOfType(ArithmeticException.class)
            .isThrownBy(() -> volts(1.5).divide(zero));
      }
    }

    @Test
    void inverseOfZeroIsAnError() {
      assertThatExceptionOfType(ArithmeticException.class).isThrownBy(() -> amperes(0).inverse());
    }
  }

  @Nested
  class Temperatures {
    @Test
    void twoAbsoluteTemperaturesHaveNoSum() {
      assertThatExceptionOfType(ArithmeticException.class)
          .isThrownBy(() -> celsius(20).add(celsius(5)))
          .withMessage("two absolute temperatures have no sum: 20 °C + 5 °C");
    }

    @Test
    void differenceOfTwoAbsoluteTemperaturesIsInKelvin() {
      Quantity<Temperature> difference = celsius(25).subtract(celsius(20));
      assertThat(difference).isEqualTo(kelvinsOfRise(5)).hasToString("5 K");
      assertThat(difference.getScale()).isEqualTo(Scale.RELATIVE);
      assertThat(fahrenheit(68).subtract(fahrenheit(50))).isEqualTo(kelvinsOfRise(10));
    }

    @Test
    void differenceMayBeAddedAndTakenAway() {
      Quantity<Temperature> rise = celsius(25).subtract(celsius(20));
      assertThat(celsius(20).add(rise)).isEqualTo(celsius(25)).hasToString("25 °C");
      assertThat(celsius(20).subtract(rise)).isEqualTo(celsius(15)).hasToString("15 °C");
      assertThat(rise.add(celsius(20))).isEqualTo(celsius(25));
      assertThat(rise.add(rise)).isEqualTo(kelvinsOfRise(10));
      assertThat(rise.subtract(rise)).isEqualTo(kelvinsOfRise(0));
      assertThatExceptionOfType(ArithmeticException.class)
          .isThrownBy(() -> rise.subtract(celsius(20)))
          .withMessageContaining("a difference minus a temperature has no meaning");
    }

    @Test
    void foreignDifferenceIsADifference() {
      Quantity<Temperature> rise = Quantities.getQuantity(5, Units.CELSIUS, Scale.RELATIVE);
      assertThat(celsius(20).add(rise)).isEqualTo(celsius(25));
      assertThat(celsius(20).subtract(rise)).isEqualTo(celsius(15));
    }

    @Test
    void absoluteTemperatureTimesANumberIsAnError() {
      assertThatExceptionOfType(ArithmeticException.class)
          .isThrownBy(() -> celsius(20).multiply(2))
          .withMessage("an absolute temperature cannot be multiplied or divided: 20 °C");
      assertThatExceptionOfType(ArithmeticException.class).isThrownBy(() -> celsius(20).divide(2));
      assertThatExceptionOfType(ArithmeticException.class).isThrownBy(() -> celsius(20).negate());
      assertThatExceptionOfType(ArithmeticException.class).isThrownBy(() -> celsius(20).inverse());
      assertThat(kelvinsOfRise(20).multiply(2)).isEqualTo(kelvinsOfRise(40));
    }

    @Test
    void heatFlowTakesADifferenceAndNeverAnAbsoluteTemperature() {
      assertThat(wattsPerKelvin(2).multiply(kelvinsOfRise(30)).asType(Power.class))
          .isEqualTo(watts(60));
      assertThatExceptionOfType(ArithmeticException.class)
          .isThrownBy(() -> wattsPerKelvin(2).multiply(celsius(30)));
      assertThatExceptionOfType(ArithmeticException.class)
          .isThrownBy(() -> celsius(30).multiply(wattsPerKelvin(2)));
      assertThatExceptionOfType(ArithmeticException.class)
          .isThrownBy(() -> celsius(30).divide(watts(2)));
      assertThatExceptionOfType(ArithmeticException.class)
          .isThrownBy(() -> wattsPerKelvin(2).multiply(Quantities.getQuantity(30, Units.CELSIUS)));
      assertThat(
              wattsPerKelvin(2)
                  .multiply(Quantities.getQuantity(30, Units.CELSIUS, Scale.RELATIVE))
                  .asType(Power.class))
          .isEqualTo(watts(60));
    }

    @Test
    void differenceShownInDegreesKeepsItsSize() {
      Quantity<Temperature> rise = celsius(25).subtract(celsius(20));
      assertThat(rise.to(Units.CELSIUS).getValue()).isEqualTo(5.0);
      assertThat(rise.to(WorkshopUnits.FAHRENHEIT.toUnit()).getValue().doubleValue())
          .isCloseTo(9, org.assertj.core.data.Offset.offset(1e-12));
    }

    @Test
    void differenceIsNotTakenForATemperature() {
      Quantity<Temperature> rise = celsius(25).subtract(celsius(20));
      assertThatExceptionOfType(InvalidInputException.class)
          .isThrownBy(() -> Kind.TEMPERATURE.siValueOf(rise))
          .withMessage("temperature must be a temperature, but was the temperature difference 5 K");
      assertThat(kelvins(5).isEquivalentTo(rise)).isFalse();
      assertThat(kelvins(5)).isNotEqualTo(rise);
    }

    @Test
    @SuppressWarnings("unchecked")
    void temperatureIsNotTakenForADifference() {
      Quantity<TemperatureDifference> cast =
          (Quantity<TemperatureDifference>) (Quantity<?>) celsius(5);
      assertThatExceptionOfType(InvalidInputException.class)
          .isThrownBy(() -> Kind.TEMPERATURE_DIFFERENCE.siValueOf(cast));
      Quantity<TemperatureDifference> foreign =
          (Quantity<TemperatureDifference>) (Quantity<?>) Quantities.getQuantity(5, Units.CELSIUS);
      assertThatExceptionOfType(InvalidInputException.class)
          .isThrownBy(() -> Kind.TEMPERATURE_DIFFERENCE.siValueOf(foreign))
          .withMessageContaining("on an absolute scale");
    }

    @Test
    void toleranceIsNeverAnAbsoluteTemperature() {
      Measure<Temperature> warm = Measure.from(celsius(20), Kind.TEMPERATURE);
      assertThatExceptionOfType(InvalidInputException.class)
          .isThrownBy(() -> warm.isCloseTo(celsius(200), celsius(1)))
          .withMessageContaining("Measures.isClose");
    }
  }

  @Nested
  class DefaultLocale {
    @Test
    void neverChangesWhatIsReadOrPrinted() {
      for (Locale locale : Locales.ALL) {
        Locales.with(
            locale,
            () -> {
              assertThat(Kind.VOLTAGE.parse("3.5 V")).isEqualTo(volts(3.5));
              assertThat(Kind.VOLTAGE.parse("1234.567 V")).isEqualTo(volts(1234.567));
              assertThat(volts(1234.567)).hasToString("1234.567 V");
              assertThat(volts(-1.5e-9)).hasToString("-1.5E-9 V");
              assertThat(Measures.format(volts(12345.678), Kind.VOLTAGE)).isEqualTo("12.35 kV");
              assertThat(Measures.format(volts(3.5), WorkshopUnits.VOLT, 2)).isEqualTo("3.50 V");
              assertThat(StateOfCharge.of(0.125)).hasToString("12.5 %");
              assertThat(Price.of("1250.5", "EUR")).hasToString("1250.5 EUR");
            });
      }
    }

    @Test
    void commaIsRejectedRatherThanGuessed() {
      for (Locale locale : Locales.ALL) {
        Locales.with(
            locale,
            () ->
                assertThatExceptionOfType(InvalidInputException.class)
                    .isThrownBy(() -> Kind.VOLTAGE.parse("3,5 V"))
                    .withMessage(
                        "cannot read \"3,5 V\" as voltage: expected a decimal point, not a comma,"
                            + " at position 2"));
      }
    }

    @Test
    void messagesCountInAsciiDigits() {
      Locales.with(
          Locales.ALL.get(1),
          () -> {
            assertThatExceptionOfType(InvalidInputException.class)
                .isThrownBy(() -> Kind.VOLTAGE.parse("12 parsec"))
                .withMessageEndingWith("at position 4");
            assertThatExceptionOfType(InvalidInputException.class)
                .isThrownBy(() -> Measures.awg(77))
                .withMessageEndingWith("77");
          });
    }
  }

  @Nested
  class Equality {
    @Test
    void doesNotDependOnTheUnit() {
      assertThat(volts(3.7)).isEqualTo(millivolts(3700)).hasSameHashCodeAs(millivolts(3700));
      assertThat(volts(3.7).isEquivalentTo(millivolts(3700))).isTrue();
      assertThat(kilograms(12.5)).isEqualTo(grams(12500));
    }

    @Test
    void measuredEqualityTakesATolerance() {
      Measure<?> ignored = Measure.from(volts(1), Kind.VOLTAGE);
      assertThat(Measure.from(volts(0.1 + 0.2), Kind.VOLTAGE).isCloseTo(volts(0.3), volts(1e-12)))
          .isTrue();
      assertThat(Measure.from(volts(0.1), Kind.VOLTAGE).add(volts(0.2)))
          .isEqualTo(volts(0.1 + 0.2));
      assertThat(ignored).isEqualTo(volts(1));
    }

    @Test
    void prefixedForeignUnitIsTheSameUnit() {
      Quantity<Mass> prefixed =
          Quantities.getQuantity(12.5, javax.measure.MetricPrefix.KILO(Units.GRAM));
      assertThat(Measure.from(prefixed, Kind.MASS)).isEqualTo(kilograms(12.5));
    }

    @Test
    void torqueIsNotEnergy() {
      assertThat((Object) newtonMetres(5)).isNotEqualTo(joules(5));
    }
  }

  @Nested
  class NumberTypes {
    @Test
    void valueIsAlwaysADouble() {
      assertThat(volts(3).getValue()).isEqualTo(3.0);
      assertThat(volts(3).add(volts(4)).getValue()).isEqualTo(7.0);
      assertThat(volts(3).multiply(2).getValue()).isEqualTo(6.0);
      assertThat(volts(3).divide(new BigDecimal(2)).getValue()).isEqualTo(1.5);
      assertThat(volts(3).to(WorkshopUnits.MILLIVOLT.toUnit()).getValue()).isEqualTo(3000.0);
      assertThat(volts(3).multiply(amperes(2)).getValue()).isEqualTo(6.0);
      assertThat(volts(1.5).divide(amperes(3)).getValue()).isEqualTo(0.5);
    }

    @Test
    void manyRoundTripsNeitherDriftNorGrow() {
      Quantity<javax.measure.quantity.ElectricPotential> voltage = volts(3.7);
      for (int i = 0; i < 1000; i++) {
        voltage = voltage.to(WorkshopUnits.MILLIVOLT.toUnit()).to(Units.VOLT);
      }
      assertThat(voltage).isEqualTo(volts(3.7)).hasToString("3.7 V");
    }

    @Test
    void quotientOfSpeedsAndDistancesIsInCoherentUnits() {
      Quantity<Time> time = kilometres(10).divide(kilometresPerHour(10)).asType(Time.class);
      assertThat(time).isEqualTo(Measures.hours(1));
    }
  }

  @Nested
  class NotFinite {
    @Test
    void nameTheQuantity() {
      assertThatExceptionOfType(InvalidInputException.class)
          .isThrownBy(() -> volts(Double.NaN))
          .withMessage("voltage must be finite, but was NaN V");
      assertThatExceptionOfType(InvalidInputException.class)
          .isThrownBy(() -> amperes(Double.NEGATIVE_INFINITY))
          .withMessage("current must be finite, but was -Infinity A");
    }

    @Test
    void foreignOnesAreStoppedAtTheDoor() {
      Quantity<Speed> foreign = foreign(Double.NaN, Units.METRE_PER_SECOND);
      assertThatExceptionOfType(InvalidInputException.class)
          .isThrownBy(() -> Kind.SPEED.siValueOf(foreign))
          .withMessageContaining("speed must be finite");
    }

    @Test
    void overflowIsNamed() {
      assertThatExceptionOfType(InvalidInputException.class)
          .isThrownBy(() -> Measures.kilovolts(1e307))
          .withMessage("voltage must be finite in SI units, but was 1E307 kV");
      assertThatExceptionOfType(InvalidInputException.class)
          .isThrownBy(() -> volts(1e200).multiply(amperes(1e200)))
          .withMessageContaining("must be finite");
      assertThatExceptionOfType(InvalidInputException.class)
          .isThrownBy(() -> volts(1e308).add(volts(1e308)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void factorsAreNamed(double factor) {
      assertThatExceptionOfType(ArithmeticException.class)
          .isThrownBy(() -> volts(1).multiply(factor))
          .withMessageContaining("factor must be finite: 1 V");
      assertThatExceptionOfType(ArithmeticException.class)
          .isThrownBy(() -> volts(1).divide(factor));
    }
  }

  @Nested
  class Symbols {
    @ParameterizedTest
    @CsvSource({
      "105 Ah, charge, 378000",
      "28 kWh, energy, 100800000",
      "150 Nm, torque, 150",
      "3000 rpm, rotational speed, 314.1592653589793",
      "3000 1/min, rotational speed, 314.1592653589793",
      "1 hp, power, 745.6998715822702",
      "1 PS, power, 735.49875",
      "35 mm2, area, 3.5e-5",
      "35 mm², area, 3.5e-5",
      "12 mOhm, resistance, 0.012",
      "12 mΩ, resistance, 0.012",
      "680 uF, capacitance, 6.8e-4",
      "155 Wh/km, energy per distance, 558",
    })
    void ofTheTradeAreRead(String text, String kindName, double si) {
      Kind<?> kind =
          Kind.values().stream().filter(k -> k.name().equals(kindName)).findFirst().orElseThrow();
      assertThat(FactoryRow.siValue((Measure<?>) kind.parse(text))).isEqualTo(si);
    }

    @Test
    void horsepowerAndPferdestaerkeAreNamedApart() {
      assertThat(Measures.imperialHorsepower(100)).hasToString("100 hp");
      assertThat(Measures.metricHorsepower(100)).hasToString("100 PS");
      assertThat(Kind.POWER.parse("100 hp")).isNotEqualTo(Kind.POWER.parse("100 PS"));
      assertThat(Kind.POWER.compare(Kind.POWER.parse("100 hp"), Kind.POWER.parse("101 PS")))
          .isPositive();
    }

    @Test
    void ourUnitsLeaveTheTextsOfTheHostAlone() {
      WorkshopUnits.defined().forEach(named -> assertThat(named.unit().toUnit()).isNotNull());
      assertThat(SimpleUnitFormat.getInstance().format(Units.WATT.multiply(Units.HOUR)))
          .isEqualTo("W·h");
      assertThatExceptionOfType(javax.measure.format.MeasurementParseException.class)
          .isThrownBy(() -> SimpleUnitFormat.getInstance().parse("kWh"));
    }
  }

  @Nested
  class Typing {
    @Test
    void asTypeChecksTheDimension() {
      assertThat(volts(2).multiply(amperes(3)).asType(Power.class)).isEqualTo(watts(6));
      assertThatExceptionOfType(ClassCastException.class)
          .isThrownBy(() -> volts(2).multiply(amperes(3)).asType(Energy.class))
          .withMessageContaining("is no quantity of Energy");
      assertThatExceptionOfType(ClassCastException.class)
          .isThrownBy(() -> volts(2).asType(Mass.class));
    }

    @Test
    void asTypeTellsTorqueFromEnergyAndTurnsFromOscillations() {
      assertThat(newtonMetres(2).asType(Torque.class)).isEqualTo(newtonMetres(2));
      assertThatExceptionOfType(ClassCastException.class)
          .isThrownBy(() -> newtonMetres(2).asType(Energy.class));
      assertThatExceptionOfType(ClassCastException.class)
          .isThrownBy(() -> Measures.hertz(50).asType(RotationalSpeed.class));
      assertThat(newtonMetres(2).multiply(Measures.radians(3)).asType(Energy.class))
          .isEqualTo(joules(6));
    }

    @Test
    void asTypeNeverMakesAnAbsoluteTemperature() {
      Quantity<?> product = kelvinsOfRise(2).multiply(Measures.number(3));
      assertThat(product.asType(TemperatureDifference.class)).isEqualTo(kelvinsOfRise(6));
      assertThatExceptionOfType(ClassCastException.class)
          .isThrownBy(() -> product.asType(Temperature.class));
      assertThatExceptionOfType(ClassCastException.class)
          .isThrownBy(() -> kelvinsOfRise(2).asType(Temperature.class));
      assertThatExceptionOfType(ClassCastException.class)
          .isThrownBy(() -> kelvins(2).asType(TemperatureDifference.class));
    }

    @Test
    void productsOfOneDimensionAreComparable() {
      assertThat((Object) volts(2).multiply(amperes(3))).isEqualTo(volts(3).multiply(amperes(2)));
      assertThat(volts(2).multiply(amperes(3))).hasSameHashCodeAs(volts(3).multiply(amperes(2)));
      assertThat((Object) volts(2).multiply(amperes(3))).isNotEqualTo(watts(6));
    }

    @Test
    void wrongUnitIsNamed() {
      assertThatExceptionOfType(InvalidInputException.class)
          .isThrownBy(() -> Kind.LENGTH.parse("5 kg"))
          .withMessageEndingWith("at position 3 (kg is a unit of mass)");
    }
  }

  private static <Q extends Quantity<Q>> Quantity<Q> foreign(double value, Unit<Q> unit) {
    return new ForeignQuantity<>(value, unit, Scale.ABSOLUTE);
  }
}
