package org.wattwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.stream.Stream;
import javax.measure.Quantity;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.Generator;
import org.wattwright.testing.Serialisation;

/** What holds for every number, unit and kind. */
class MeasurePropertyTest {
  private static final MathContext EXACT = new MathContext(60);

  static Stream<Generator> cases() {
    return Generator.cases(400);
  }

  @ParameterizedTest
  @MethodSource("cases")
  <Q extends Quantity<Q>> void textParsesBackToAnEqualMeasure(Generator random) {
    NamedUnit<Q> unit = unit(random);
    Measure<Q> measure = anyMeasure(random, unit);
    assertThat(measure.kind().parse(measure.toString())).isEqualTo(measure);
    assertThat(measure.kind().parse(measure.toString())).hasToString(measure.toString());
  }

  @ParameterizedTest
  @MethodSource("cases")
  <Q extends Quantity<Q>> void serialisationKeepsMeasureUnitAndText(Generator random) {
    NamedUnit<Q> unit = unit(random);
    Measure<Q> measure = anyMeasure(random, unit);
    Measure<Q> copy = Serialisation.copy(measure);
    assertThat(copy).isEqualTo(measure).hasToString(measure.toString());
    assertThat(copy.namedUnit()).isSameAs(measure.namedUnit());
  }

  @ParameterizedTest
  @MethodSource("cases")
  void typedNumberConvertsAsADecimal(Generator random) {
    NamedUnit<?> unit = unit(random);
    double value = random.typed(0, 9000, random.count(0, 5));
    BigDecimal exact = exactSi(unit, Decimal.decimal(value));
    boolean fits = exact.stripTrailingZeros().precision() <= 13;
    double ours = unit.toSi(value);
    double expected = exact.doubleValue();
    // With more digits: half an ulp of the number, up to one after scaling; half of the result; and
    // two where a short decimal happens to lie so near.
    assertThat(Math.abs(ours - expected)).isLessThanOrEqualTo(fits ? 0 : 3 * Math.ulp(expected));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void anyNumberConvertsWithinItsRounding(Generator random) {
    NamedUnit<?> unit = unit(random);
    double value = random.signed(1e-9, 1e9);
    double expected = exactSi(unit, new BigDecimal(value)).doubleValue();
    assertThat(Math.abs(unit.toSi(value) - expected)).isLessThanOrEqualTo(2 * Math.ulp(expected));
  }

  private static BigDecimal exactSi(NamedUnit<?> unit, BigDecimal value) {
    return value
        .add(Decimal.decimal(unit.zeroShift()))
        .multiply(new BigDecimal(unit.numerator()))
        .divide(new BigDecimal(unit.denominator()), EXACT);
  }

  @ParameterizedTest
  @MethodSource("cases")
  <Q extends Quantity<Q>> void thereAndBackMissesByAnUlpAtMost(Generator random) {
    NamedUnit<Q> from = unit(random);
    List<NamedUnit<Q>> units = from.kind().units();
    NamedUnit<Q> to = random.oneOf(units);
    double value = random.typed(-2000, 2000, 3);
    if (from.kind() == Kind.TEMPERATURE) {
      value = Math.abs(value);
    }
    Measure<Q> there = ((Measure<Q>) from.of(value)).in(to);
    double back = there.in(from).doubleValue();
    // Each of the four roundings (to SI and out of it, twice) is half an ulp of its size; a scale
    // with a zero point of its own has the size of that.
    double size = Math.abs(value) + Math.abs(from.zeroShift()) + Math.abs(to.zeroShift());
    assertThat(Math.abs(back - value)).isLessThanOrEqualTo(2 * Math.ulp(size));
  }

  @ParameterizedTest
  @MethodSource("cases")
  <Q extends Quantity<Q>> void typedNumbersSurviveAChangeOfPrefix(Generator random) {
    NamedUnit<Q> from = unit(random);
    List<NamedUnit<Q>> family =
        from.kind().units().stream().filter(u -> u.family().equals(from.family())).toList();
    if (from.family().isEmpty()) {
      return;
    }
    Quantity<Q> given = from.of(random.typed(0, 5000, 3));
    Quantity<Q> back = given.to(random.oneOf(family).toUnit()).to(from.toUnit());
    assertThat(back).isEqualTo(given).hasToString(given.toString());
  }

  @ParameterizedTest
  @MethodSource("cases")
  <Q extends Quantity<Q>> void orderIsTheOrderOfSiValues(Generator random) {
    NamedUnit<Q> unit = unit(random);
    Measure<Q> one = anyMeasure(random, unit);
    Measure<Q> other = anyMeasure(random, random.oneOf(unit.kind().units()));
    int order = Double.compare(one.siValue(), other.siValue());
    assertThat(Integer.signum(one.compareTo(other))).isEqualTo(order);
    assertThat(Integer.signum(other.compareTo(one))).isEqualTo(-order);
    assertThat(one.equals(other)).isEqualTo(order == 0);
    assertThat(unit.kind().compare(one, other)).isEqualTo(order);
    Measure<Q> same = unit.kind().siUnit().equals(unit) ? one : one.in(unit.kind().siUnit());
    assertThat(one.compareTo(same)).isZero();
    assertThat(one).isEqualTo(same).hasSameHashCodeAs(same);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void wrappedResultIsTheSiValue(Generator random) {
    Kind<?> kind = random.oneOf(Kind.values());
    double siValue = random.betweenDecades(1e-6, 1e6);
    Measure<?> wrapped = Measure.ofSi(siValue, kind);
    double size = siValue + Math.abs(kind.customaryUnit().zeroShift());
    assertThat(Math.abs(wrapped.siValue() - siValue)).isLessThanOrEqualTo(2 * Math.ulp(size));
  }

  @ParameterizedTest
  @MethodSource("cases")
  <Q extends Quantity<Q>> void additionUndoesSubtraction(Generator random) {
    NamedUnit<Q> unit = unit(random);
    if (unit.kind() == Kind.TEMPERATURE) {
      return;
    }
    Quantity<Q> one = unit.of(random.typed(-500, 500, 2));
    Quantity<Q> other = random.<NamedUnit<Q>>oneOf(unit.kind().units()).of(random.typed(0, 500, 2));
    Measure<Q> back = (Measure<Q>) one.add(other).subtract(other);
    double size = Math.abs(((Measure<Q>) one).siValue()) + Math.abs(((Measure<Q>) other).siValue());
    assertThat(back.siValue()).isEqualTo(((Measure<Q>) one).siValue(), within(1e-14 * size));
    assertThat(one.add(other)).isEqualTo(one.subtract(other.negate()));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void quotientUndoesProduct(Generator random) {
    Measure<?> one = nonTemperature(random);
    Measure<?> other = nonTemperature(random);
    Measure<?> back = (Measure<?>) one.multiply(other).divide(other);
    double allowed = 2 * Math.ulp(one.siValue());
    assertThat(Math.abs(back.siValue() - one.siValue())).isLessThanOrEqualTo(allowed);
    assertThat(back.kind().siUnit().toUnit().getDimension())
        .isEqualTo(one.kind().siUnit().toUnit().getDimension());
    Measure<?> twice = (Measure<?>) one.inverse().inverse();
    assertThat(Math.abs(twice.siValue() - one.siValue())).isLessThanOrEqualTo(allowed);
  }

  @ParameterizedTest
  @MethodSource("cases")
  <Q extends Quantity<Q>> void formatIsWithinHalfOfTheFourthDigit(Generator random) {
    NamedUnit<Q> unit = unit(random);
    Measure<Q> measure = (Measure<Q>) unit.of(random.betweenDecades(1e-4, 1e5));
    Measure<Q> read = (Measure<Q>) unit.kind().parse(Measures.format(measure, unit.kind()));
    double shown = read.doubleValue();
    double given = read.namedUnit().valueOf(measure);
    assertThat(shown).isEqualTo(given, within(Math.abs(given) * 0.50001e-3));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void stateOfChargePrintsAndParsesBack(Generator random) {
    StateOfCharge charge = StateOfCharge.of(random.between(0, 1));
    assertThat(StateOfCharge.parse(charge.toString())).isEqualTo(charge);
    double percent = random.typed(0, 100, random.count(0, 3));
    assertThat(StateOfCharge.ofPercent(percent).percent()).isEqualTo(percent);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void decimalsAreTheShortestThatReadBack(Generator random) {
    double value = random.anyFinite();
    String text = Decimal.shortest(value);
    assertThat(Double.parseDouble(text)).isEqualTo(value);
    int digits = new BigDecimal(text).stripTrailingZeros().precision();
    assertThat(digits).isLessThanOrEqualTo(17);
    if (digits > 15) {
      BigDecimal shorter = new BigDecimal(value).round(new MathContext(digits - 1));
      assertThat(shorter.doubleValue()).isNotEqualTo(value);
    }
  }

  private static Measure<?> nonTemperature(Generator random) {
    NamedUnit<?> unit = unit(random);
    return unit.kind() == Kind.TEMPERATURE
        ? (Measure<?>) Measures.volts(random.signed(1e-3, 1e3))
        : (Measure<?>) unit.of(random.signed(1e-3, 1e3));
  }

  @SuppressWarnings("unchecked")
  private static <Q extends Quantity<Q>> NamedUnit<Q> unit(Generator random) {
    return (NamedUnit<Q>) random.oneOf(WorkshopUnits.defined()).unit();
  }

  /** Also very large, very small and crooked numbers, as far as the unit lets them. */
  private static <Q extends Quantity<Q>> Measure<Q> anyMeasure(
      Generator random, NamedUnit<Q> unit) {
    double value = random.chance(0.5) ? random.anyFinite() : random.typed(-5000, 5000, 3);
    if (unit.kind() == Kind.TEMPERATURE) {
      value = Math.abs(value);
    }
    boolean tooLarge = Math.abs(value) > 1e290;
    return (Measure<Q>) unit.of(tooLarge ? value * 1e-20 : value);
  }
}
