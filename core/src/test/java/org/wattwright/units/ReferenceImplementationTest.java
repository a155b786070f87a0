package org.wattwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.kilometresPerHour;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.millivolts;
import static org.wattwright.units.Measures.volts;
import static org.wattwright.units.Measures.watts;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import java.util.stream.Stream;
import javax.measure.MetricPrefix;
import javax.measure.Quantity;
import javax.measure.Quantity.Scale;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import javax.measure.quantity.Area;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.Generator;
import org.wattwright.testing.Serialisation;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.ComparableQuantity;
import tech.units.indriya.function.LogConverter;
import tech.units.indriya.function.RationalNumber;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.TransformedUnit;
import tech.units.indriya.unit.Units;

/** Ours and the reference implementation's quantities work together, both ways. */
class ReferenceImplementationTest {
  private static final Unit<ElectricPotential> MILLIVOLT = MetricPrefix.MILLI(Units.VOLT);

  /** 660 ft of 0.3048 m. */
  private static final Unit<Length> FURLONG = Units.METRE.multiply(201168).divide(1000);

  private static final Unit<Temperature> RANKINE = Units.KELVIN.multiply(5).divide(9);

  static Stream<NamedUnit<?>> units() {
    return WorkshopUnits.defined().stream().map(WorkshopUnits.Named::unit);
  }

  @ParameterizedTest
  @MethodSource("units")
  <Q extends Quantity<Q>> void convertsEveryUnitAsTheReferenceDoes(NamedUnit<Q> unit) {
    UnitConverter toSi = unit.toUnit().getConverterTo(unit.kind().siUnit().toUnit());
    UnitConverter fromSi = unit.kind().siUnit().toUnit().getConverterTo(unit.toUnit());
    for (double value : List.of(0.0, 1.0, 3.7, 96.0, 1234.5, 4.2e6)) {
      double si = toSi.convert(value);
      double ours = unit.toSi(value);
      assertThat(ours).as("%s %s", value, unit).isEqualTo(si, within(1e-12 * Math.abs(si)));
      double back = fromSi.convert(ours);
      double size = Math.abs(back) + Math.abs(unit.zeroShift());
      assertThat(unit.fromSi(ours)).isEqualTo(back, within(1e-12 * size));
    }
  }

  @ParameterizedTest
  @MethodSource("units")
  <Q extends Quantity<Q>> void everyUnitComesBackFromTheReference(NamedUnit<Q> unit) {
    Quantity<Q> theirs = Quantities.getQuantity(3.7, unit.toUnit(), scaleOf(unit));
    Measure<Q> ours = Measure.from(theirs, unit.kind());
    assertThat(ours).isEqualTo(unit.of(3.7)).hasToString(unit.of(3.7).toString());
    assertThat(ours.namedUnit()).isSameAs(unit);
    assertThat(unit.valueOf(theirs)).isEqualTo(3.7);
  }

  @ParameterizedTest
  @MethodSource("units")
  <Q extends Quantity<Q>> void everyUnitShowsTheSameQuantity(NamedUnit<Q> unit) {
    Quantity<Q> si = unit.kind().siUnit().of(3.7e3);
    Quantity<Q> shown = si.to(unit.toUnit());
    assertThat(shown.getUnit()).isEqualTo(unit.toUnit());
    assertThat(unit.kind().siValueOf(shown)).isEqualTo(3.7e3, within(1e-12));
    assertThat(shown.isEquivalentTo(si) || Math.abs(unit.kind().siValueOf(shown) - 3.7e3) < 1e-12)
        .isTrue();
  }

  private static Scale scaleOf(NamedUnit<?> unit) {
    return unit.kind().equals(Kind.TEMPERATURE_DIFFERENCE) ? Scale.RELATIVE : Scale.ABSOLUTE;
  }

  @Test
  void oursTakeTheirsInArithmetic() {
    Quantity<ElectricPotential> theirs = Quantities.getQuantity(500, MILLIVOLT);
    assertThat(volts(3).add(theirs)).isEqualTo(volts(3.5)).hasToString("3.5 V");
    assertThat(volts(3).subtract(theirs)).isEqualTo(volts(2.5));
    assertThat(volts(3).multiply(Quantities.getQuantity(2, Units.AMPERE)).asType(Power.class))
        .isEqualTo(watts(6));
    assertThat(
            volts(3)
                .divide(Quantities.getQuantity(1500, MetricPrefix.MILLI(Units.AMPERE)))
                .asType(javax.measure.quantity.ElectricResistance.class))
        .isEqualTo(Measures.ohms(2));
  }

  @Test
  void theirsTakeOursInArithmetic() {
    ComparableQuantity<ElectricPotential> theirs = Quantities.getQuantity(3, Units.VOLT);
    assertThat(theirs.add(millivolts(500)).getValue().doubleValue()).isEqualTo(3.5);
    assertThat(theirs.subtract(millivolts(500)).getValue().doubleValue()).isEqualTo(2.5);
    Quantity<Power> power = theirs.multiply(amperes(2)).asType(Power.class);
    assertThat(power.to(Units.WATT).getValue().doubleValue()).isEqualTo(6);
    assertThat(
            Quantities.getQuantity(20, Units.CELSIUS)
                .add(celsius(25).subtract(celsius(20)))
                .getValue()
                .doubleValue())
        .isEqualTo(25, within(1e-12));
  }

  @Test
  void comparesBothWays() {
    ComparableQuantity<ElectricPotential> theirs = Quantities.getQuantity(3.7, Units.VOLT);
    assertThat(theirs.isEquivalentTo(millivolts(3700))).isTrue();
    assertThat(theirs.isGreaterThan(millivolts(3699))).isTrue();
    assertThat(theirs.compareTo(millivolts(3701))).isNegative();
    assertThat(millivolts(3700).isEquivalentTo(theirs)).isTrue();
    assertThat(millivolts(3701).isEquivalentTo(theirs)).isFalse();
    assertThat(Kind.VOLTAGE.compare(millivolts(3701), theirs)).isPositive();
    assertThat(Kind.VOLTAGE.compare(theirs, millivolts(3701))).isNegative();
    assertThat(Kind.VOLTAGE.compare(theirs, millivolts(3700))).isZero();
  }

  @Test
  void equalOnlyToOurOwnClass() {
    Quantity<ElectricPotential> theirs = Quantities.getQuantity(3.7, Units.VOLT);
    assertThat(volts(3.7)).isNotEqualTo(theirs);
    assertThat(Measure.from(theirs, Kind.VOLTAGE)).isEqualTo(volts(3.7));
  }

  @Test
  void convertsWithTheirConverters() {
    UnitConverter converter = volts(3.7).getUnit().getConverterTo(MILLIVOLT);
    assertThat(converter.convert(volts(3.7).getValue()).doubleValue()).isEqualTo(3700);
    assertThat(volts(3.7).to(MILLIVOLT)).hasToString("3700 mV");
    assertThat(volts(3.7).to(MILLIVOLT).getUnit()).isEqualTo(MILLIVOLT);
    assertThat(celsius(25).to(Units.KELVIN)).hasToString("298.15 K");
    assertThat(kilometresPerHour(36).to(Units.METRE_PER_SECOND).getValue()).isEqualTo(10.0);
  }

  @Test
  void readsEveryNumberType() {
    for (Number number :
        List.of(
            (byte) 7, (short) 7, 7, 7L, 7f, 7.0, new BigDecimal("7.000"), BigInteger.valueOf(7))) {
      assertThat(Kind.VOLTAGE.siValueOf(Quantities.getQuantity(number, Units.VOLT)))
          .as("%s", number.getClass())
          .isEqualTo(7);
    }
    RationalNumber third = RationalNumber.of(1, 3);
    assertThat(Kind.VOLTAGE.siValueOf(Quantities.getQuantity(third, Units.VOLT)))
        .isEqualTo(1 / 3.0);
    BigDecimal long40 = new BigDecimal("3.700000000000000000000000000000000000001");
    assertThat(Kind.VOLTAGE.siValueOf(Quantities.getQuantity(long40, Units.VOLT))).isEqualTo(3.7);
  }

  @Test
  void readsUnitsThatItDoesNotName() {
    Measure<Length> read = Measure.from(Quantities.getQuantity(5, FURLONG), Kind.LENGTH);
    assertThat(read).isEqualTo(metres(1005.84)).hasToString("1005.84 m");
    assertThat(Kind.TEMPERATURE.siValueOf(Quantities.getQuantity(540, RANKINE)))
        .isEqualTo(300, within(1e-12));
    assertThat(WorkshopUnits.METRE.valueOf(Quantities.getQuantity(1, FURLONG))).isEqualTo(201.168);
    Unit<Mass> prefixed = MetricPrefix.KILO(Units.GRAM);
    assertThat(Measure.from(Quantities.getQuantity(2, prefixed), Kind.MASS))
        .isEqualTo(kilograms(2));
  }

  @Test
  void showsItselfInUnitsThatItDoesNotName() {
    Quantity<Length> shown = metres(1005.84).to(FURLONG);
    assertThat(shown.getValue().doubleValue()).isEqualTo(5);
    assertThat(shown.getUnit()).isEqualTo(FURLONG);
    assertThat(shown).isEqualTo(metres(1005.84)).hasToString("1005.84 m");
    assertThat(shown.to(Units.METRE)).hasToString("1005.84 m");
  }

  @Test
  void textOfAForeignUnitParsesBackToTheLastBit() {
    // Customary units that are multiples of the SI unit, fractions of it, and shifted against it.
    Generator random = Generator.ofSeed(385);
    Unit<Energy> erg = Units.JOULE.divide(10_000_000);
    Unit<Area> plot = Units.SQUARE_METRE.multiply(7);
    for (int i = 0; i < 500; i++) {
      assertTextParsesBack(Measures.joules(random.between(0, 1e7)).to(erg), Kind.ENERGY);
      assertTextParsesBack(Measures.squareMetres(random.between(0, 1)).to(plot), Kind.AREA);
      assertTextParsesBack(Measures.kelvins(random.between(0, 900)).to(RANKINE), Kind.TEMPERATURE);
    }
  }

  private static <Q extends Quantity<Q>> void assertTextParsesBack(
      Quantity<Q> shown, Kind<Q> kind) {
    assertThat(kind.parse(shown.toString())).isEqualTo(shown);
    assertThat(Serialisation.copy(shown)).isEqualTo(shown);
  }

  @Test
  void gaugePressureCountsFromTheAtmosphere() {
    Unit<Pressure> gauge = Units.PASCAL.shift(101325);
    assertThat(Kind.PRESSURE.siValueOf(Quantities.getQuantity(100000, gauge))).isEqualTo(201325);
    assertThat(
            Measures.cubicMetres(2)
                .multiply(Quantities.getQuantity(100000, gauge))
                .asType(Energy.class))
        .isEqualTo(Measures.joules(402650));
  }

  @Test
  void foreignScaleWithAZeroPointOfItsOwnIsRead() {
    Unit<Temperature> reaumur = Units.KELVIN.multiply(5).divide(4).shift(218.52);
    assertThat(Kind.TEMPERATURE.siValueOf(Quantities.getQuantity(80, reaumur)))
        .isEqualTo(373.15, within(1e-12));
  }

  @Test
  void relativeTemperatureIsNoAbsoluteOne() {
    Quantity<Temperature> rise = Quantities.getQuantity(5, Units.CELSIUS, Scale.RELATIVE);
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> Kind.TEMPERATURE.siValueOf(rise))
        .withMessageContaining("must be an absolute temperature")
        .withMessageContaining("on a relative scale");
  }

  @Test
  @SuppressWarnings("unchecked")
  void relativeDegreesAreReadAsADifference() {
    Quantity<TemperatureDifference> rise =
        (Quantity<TemperatureDifference>)
            (Quantity<?>) Quantities.getQuantity(5, Units.CELSIUS, Scale.RELATIVE);
    assertThat(Kind.TEMPERATURE_DIFFERENCE.siValueOf(rise)).isEqualTo(5);
    Quantity<TemperatureDifference> kelvins =
        (Quantity<TemperatureDifference>) (Quantity<?>) Quantities.getQuantity(5, Units.KELVIN);
    assertThat(Kind.TEMPERATURE_DIFFERENCE.siValueOf(kelvins)).isEqualTo(5);
  }

  @Test
  @SuppressWarnings("unchecked")
  void foreignTurnsAreNotTakenForRadians() {
    Unit<RotationalSpeed> perMinute =
        (Unit<RotationalSpeed>) (Unit<?>) AbstractUnit.ONE.divide(Units.MINUTE);
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> Kind.ROTATIONAL_SPEED.siValueOf(Quantities.getQuantity(3000, perMinute)))
        .withMessageContaining("must be in rad/s or in a unit made of it, but was 1/min");
    Unit<RotationalSpeed> degreesPerSecond =
        (Unit<RotationalSpeed>)
            (Unit<?>) Units.RADIAN.multiply(Math.PI).divide(180).divide(Units.SECOND);
    assertThat(Kind.ROTATIONAL_SPEED.siValueOf(Quantities.getQuantity(180, degreesPerSecond)))
        .isEqualTo(Math.PI, within(1e-12));
  }

  @Test
  @SuppressWarnings("unchecked")
  void foreignDifferenceInOtherKelvinsIsRead() {
    Unit<TemperatureDifference> millikelvin =
        (Unit<TemperatureDifference>) (Unit<?>) MetricPrefix.MILLI(Units.KELVIN);
    assertThat(Kind.TEMPERATURE_DIFFERENCE.siValueOf(Quantities.getQuantity(5, millikelvin)))
        .isEqualTo(0.005);
  }

  @Test
  void logarithmicUnitIsRejectedByName() {
    Unit<Power> decades = new TransformedUnit<>("dec", Units.WATT, new LogConverter(10));
    Quantity<Power> theirs = new ForeignQuantity<>(3, decades, Scale.ABSOLUTE);
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> Kind.POWER.siValueOf(theirs))
        .withMessageContaining("power must be in a linear unit, but was");
  }

  @Test
  @SuppressWarnings("unchecked")
  void quantityOfAnotherDimensionIsRejectedByName() {
    Quantity<ElectricPotential> mass =
        (Quantity<ElectricPotential>) (Quantity<?>) Quantities.getQuantity(3, Units.KILOGRAM);
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> Kind.VOLTAGE.siValueOf(mass))
        .withMessage("voltage must be in a unit convertible to V, but was kg");
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> volts(3).add(mass))
        .withMessageContaining("voltage");
  }

  @Test
  void nullIsRejectedByName() {
    assertThatNullPointerException()
        .isThrownBy(() -> Kind.VOLTAGE.siValueOf(null))
        .withMessage("voltage");
    assertThatNullPointerException().isThrownBy(() -> volts(1).add(null)).withMessage("voltage");
    assertThatNullPointerException()
        .isThrownBy(() -> volts(1).multiply((Quantity<?>) null))
        .withMessage("quantity");
    assertThatNullPointerException().isThrownBy(() -> volts(1).asType(null)).withMessage("type");
  }

  @Test
  void implementationThatOnlyCarriesIsEnough() {
    Quantity<ElectricPotential> theirs = new ForeignQuantity<>(3700, MILLIVOLT, Scale.ABSOLUTE);
    assertThat(WorkshopUnits.VOLT.valueOf(theirs)).isEqualTo(3.7);
    assertThat(volts(1).add(theirs)).isEqualTo(volts(4.7));
  }
}
