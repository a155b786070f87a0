package org.wattwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.awg;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.consumption;
import static org.wattwright.units.Measures.difference;
import static org.wattwright.units.Measures.economy;
import static org.wattwright.units.Measures.fahrenheit;
import static org.wattwright.units.Measures.isClose;
import static org.wattwright.units.Measures.kelvins;
import static org.wattwright.units.Measures.kelvinsOfRise;
import static org.wattwright.units.Measures.milesPerKilowattHour;
import static org.wattwright.units.Measures.percentCharge;
import static org.wattwright.units.Measures.raised;
import static org.wattwright.units.Measures.volts;
import static org.wattwright.units.Measures.wattHoursPerKilometre;

import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class MeasuresTest {
  static Stream<FactoryRow> factories() {
    return FactoryRow.all();
  }

  @ParameterizedTest
  @MethodSource("factories")
  void factoryKeepsNumberUnitAndKind(FactoryRow row) {
    Measure<?> made = row.of(2.5);
    assertThat(made.getValue()).isEqualTo(2.5);
    assertThat(made.kind()).isSameAs(row.kind());
    assertThat(made).hasToString(("2.5 " + row.spellings().get(0)).strip());
  }

  @ParameterizedTest
  @MethodSource("factories")
  void oneOfTheUnitIsItsDefinitionInSi(FactoryRow row) {
    double expected = row.si().doubleValue();
    // π is not a decimal: its double and the product are each rounded once.
    double slack = row.si().precision() > 24 ? Math.ulp(expected) : 0;
    assertThat(FactoryRow.siValue(row.of(1))).isEqualTo(expected, within(slack));
    if (row.kind() != Kind.TEMPERATURE) {
      assertThat(FactoryRow.siValue(row.of(-1))).isEqualTo(-expected, within(slack));
    }
  }

  @ParameterizedTest
  @MethodSource("factories")
  void everySpellingParsesToTheSameUnit(FactoryRow row) {
    NamedUnit<?> unit = row.of(1).namedUnit();
    for (String spelling : row.spellings()) {
      assertThat(row.kind().unit(spelling)).as(spelling).isSameAs(unit);
      assertThat(row.kind().parse("2.5 " + spelling)).as(spelling).isEqualTo(row.of(2.5));
      if (!spelling.startsWith("1")) {
        assertThat(row.kind().parse("2.5" + spelling)).as(spelling).isEqualTo(row.of(2.5));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("factories")
  void factoryRejectsNaNAndInfinityByName(FactoryRow row) {
    for (double bad : new double[] {Double.NaN, 1 / 0.0, -1 / 0.0}) {
      assertThatExceptionOfType(InvalidInputException.class)
          .isThrownBy(() -> row.of(bad))
          .satisfies(e -> assertThat(e.field()).isEqualTo(row.kind().name()))
          .satisfies(e -> assertThat(e.bound()).isEqualTo("finite"))
          .satisfies(e -> assertThat(e.value()).startsWith(Double.toString(bad)));
    }
  }

  @Test
  void everyFactoryAndEveryUnitIsCheckedAgainstItsDefinition() {
    Set<String> factories =
        Arrays.stream(Measures.class.getDeclaredMethods())
            .filter(m -> Arrays.equals(m.getParameterTypes(), new Class<?>[] {double.class}))
            .filter(m -> m.getReturnType() == Quantity.class)
            .map(Method::getName)
            .collect(Collectors.toCollection(TreeSet::new));
    Set<String> checked = FactoryRow.all().map(FactoryRow::factory).collect(Collectors.toSet());
    factories.removeAll(checked);
    assertThat(factories)
        .as("factories without a line in units/factories.csv")
        .containsExactly("celsius", "fahrenheit");
    List<NamedUnit<?>> units =
        Stream.concat(
                FactoryRow.all().<NamedUnit<?>>map(row -> row.of(1).namedUnit()),
                Stream.of(WorkshopUnits.CELSIUS, WorkshopUnits.FAHRENHEIT))
            .toList();
    assertThat(units)
        .doesNotHaveDuplicates()
        .containsExactlyInAnyOrderElementsOf(
            WorkshopUnits.defined().stream().<NamedUnit<?>>map(WorkshopUnits.Named::unit).toList());
  }

  @Test
  void zeroPointsOfTheTemperatureScales() {
    // SI Brochure: T/K = t/°C + 273.15; NIST SP 811: T/K = (t/°F + 459.67)/1.8.
    assertThat(celsius(0)).isEqualTo(kelvins(273.15));
    assertThat(celsius(-273.15)).isEqualTo(kelvins(0));
    assertThat(fahrenheit(32)).isEqualTo(celsius(0));
    assertThat(fahrenheit(212)).isEqualTo(celsius(100));
    assertThat(fahrenheit(-459.67)).isEqualTo(kelvins(0));
    assertThat(fahrenheit(-40)).isEqualTo(celsius(-40));
  }

  @Test
  void belowAbsoluteZeroIsRejected() {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> celsius(-273.16))
        .withMessage("temperature must be ≥ absolute zero (0 K), but was -273.16 °C");
    assertThatExceptionOfType(InvalidInputException.class).isThrownBy(() -> fahrenheit(-459.68));
    assertThatExceptionOfType(InvalidInputException.class).isThrownBy(() -> kelvins(-1e-9));
    assertThat(kelvinsOfRise(-300)).hasToString("-300 K");
  }

  @Test
  void differenceOfTemperaturesIsInKelvin() {
    assertThat(difference(celsius(25), celsius(20))).isEqualTo(kelvinsOfRise(5));
    assertThat(difference(celsius(20), kelvins(298.15))).isEqualTo(kelvinsOfRise(-5));
  }

  @Test
  void raisedTemperatureIsAbsolute() {
    assertThat(raised(celsius(20), kelvinsOfRise(5))).isEqualTo(celsius(25)).hasToString("25 °C");
    assertThat(raised(celsius(20), kelvinsOfRise(-25))).isEqualTo(celsius(-5));
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> raised(kelvins(10), kelvinsOfRise(-11)));
  }

  @Test
  void closenessOfTemperaturesTakesADifference() {
    assertThat(isClose(celsius(20), celsius(21), kelvinsOfRise(1))).isTrue();
    assertThat(isClose(celsius(21), celsius(20), kelvinsOfRise(1))).isTrue();
    assertThat(isClose(celsius(20), celsius(21.001), kelvinsOfRise(1))).isFalse();
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> isClose(celsius(20), celsius(20), kelvinsOfRise(-1)))
        .withMessage("tolerance must be ≥ 0 K, but was -1 K");
  }

  @Test
  void economyIsTheReciprocalOfConsumption() {
    assertThat(economy(wattHoursPerKilometre(250)).toString()).isEqualTo("4 km/(kW·h)");
    assertThat(Measures.format(consumption(milesPerKilowattHour(4)), Kind.ENERGY_PER_DISTANCE))
        .isEqualTo("155.3 W·h/km");
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1})
  void economyOfNothingIsRejected(double value) {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> economy(wattHoursPerKilometre(value)))
        .withMessageStartingWith("consumption must be > 0 W·h/km, but was");
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> consumption(milesPerKilowattHour(value)))
        .withMessageStartingWith("economy must be > 0 km/(kW·h), but was");
  }

  @ParameterizedTest
  @ValueSource(ints = {-4, 41})
  void gaugesOutsideTheStandardAreRejected(int gauge) {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> awg(gauge))
        .withMessage("awg must be from -3 (4/0) to 40, but was " + gauge);
  }

  @Test
  void gaugeIsAnAreaInSquareMillimetres() {
    assertThat(awg(2).toString()).endsWith(" mm²");
    // AWG 36 is 0.005 in by definition (ASTM B258).
    assertThat(WorkshopUnits.SQUARE_MILLIMETRE.valueOf(awg(36)))
        .isEqualTo(Math.PI / 4 * 0.127 * 0.127, within(1e-17));
  }

  @Test
  void percentChargeIsAStateOfCharge() {
    assertThat(percentCharge(20)).isEqualTo(StateOfCharge.of(0.2));
  }

  @Test
  void parseAndFormatTakeTheKind() {
    assertThat(Measures.parse("3200 mV", Kind.VOLTAGE)).isEqualTo(volts(3.2));
    assertThat(Measures.format(volts(0.0032), Kind.VOLTAGE)).isEqualTo("3.2 mV");
    assertThat(Measures.format(volts(3.2), WorkshopUnits.MILLIVOLT, 1)).isEqualTo("3200.0 mV");
  }
}
