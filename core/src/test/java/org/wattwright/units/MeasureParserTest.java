package org.wattwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.wattwright.units.Measures.fahrenheitOfRise;
import static org.wattwright.units.Measures.kelvinsOfRise;
import static org.wattwright.units.Measures.squareMillimetres;
import static org.wattwright.units.Measures.volts;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MeasureParserTest {
  private static final char NO_BREAK_SPACE = '\u00A0';
  private static final char NARROW_NO_BREAK_SPACE = '\u202F';
  private static final char THIN_SPACE = '\u2009';

  @ParameterizedTest
  @CsvSource({
    "35 V, 35",
    "35V, 35",
    "+35 V, 35",
    "-35 V, -35",
    "−35 V, -35",
    "3.5 V, 3.5",
    ".5 V, 0.5",
    "5. V, 5",
    "1e5 V, 1e5",
    "1E5 V, 1e5",
    "1.5e-3 V, 0.0015",
    "1.5e−3 V, 0.0015",
    "1e+3 V, 1000",
    "007 V, 7",
    "0 V, 0",
    "0e5 V, 0",
    "-0 V, 0",
    "0.000 V, 0",
    "1E-300 V, 1e-300",
    "4.9E-324 V, 4.9e-324",
  })
  void readsNumbers(String text, double value) {
    assertThat(Kind.VOLTAGE.parse(text)).isEqualTo(volts(value));
  }

  @Test
  void everySpaceMaySurroundNumberAndUnit() {
    for (char space : new char[] {' ', '\t', NO_BREAK_SPACE, NARROW_NO_BREAK_SPACE, THIN_SPACE}) {
      assertThat(Kind.AREA.parse(space + "35" + space + "mm²" + space + space))
          .isEqualTo(squareMillimetres(35));
      assertThat(Kind.TORQUE.unit(space + "N" + space + "m")).isSameAs(WorkshopUnits.NEWTON_METRE);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "''            | a number with a decimal point and a unit | 1",
        "'   '         | a number with a decimal point and a unit | 4",
        "mm²           | a number with a decimal point and a unit | 1",
        "'  x'         | a number with a decimal point and a unit | 3",
        "- 5 mm²       | a number with a decimal point and a unit | 1",
        "--5 mm²       | a number with a decimal point and a unit | 1",
        ". mm²         | a number with a decimal point and a unit | 1",
        "'  . mm²'     | a number with a decimal point and a unit | 3",
        "e5 mm²        | a number with a decimal point and a unit | 1",
        "NaN mm²       | a number with a decimal point and a unit | 1",
        "Infinity mm²  | a number with a decimal point and a unit | 1",
        "٣٥ mm²        | a number with a decimal point and a unit | 1",
        "35,5 mm²      | a decimal point, not a comma,            | 3",
        "1,234.5 mm²   | a decimal point, not a comma,            | 2",
        "1e400 mm²     | a finite number                          | 1",
        "'  1e-400 m²' | a number that is not too small to hold   | 3",
      })
  void namesTextAndPositionOfABadNumber(String text, String expected, int position) {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> Kind.AREA.parse(text))
        .withMessage(
            "cannot read \"%s\" as area: expected %s at position %d", text, expected, position)
        .satisfies(e -> assertThat(e.field()).isEqualTo("area"))
        .satisfies(e -> assertThat(e.value()).isEqualTo(text))
        .satisfies(e -> assertThat(e.bound()).isEqualTo(expected));
  }

  @ParameterizedTest
  @CsvSource({
    "35, 3",
    "35 mm, 4",
    "35 mm² x, 4",
    "35 mm² 4, 4",
    "35 x mm², 4",
    "35  parsec, 5",
    "35 MM², 4",
    "35 m m², 4",
    "35 mm ², 4",
    "35 1, 4",
    "1 234 mm², 3",
    "1.2.3 mm², 4",
    "0x1F mm², 2",
    "5e mm², 2",
    "5f mm², 2",
    "5_000 mm², 2",
    "'5, 000 mm²', 2",
  })
  void namesPositionOfABadUnit(String text, int position) {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> Kind.AREA.parse(text))
        .withMessageContaining("cannot read \"" + text + "\" as area: expected ")
        .withMessageContaining(" at position " + position)
        .satisfies(e -> assertThat(e.getMessage()).matches(".*position " + position + "( \\(.*)?"));
  }

  @Test
  void listsTheUnitsAndSaysWhoseUnitItIs() {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> Kind.CONDUCTANCE.parse("5 V"))
        .withMessage(
            "cannot read \"5 V\" as conductance: expected a unit of conductance (S) at position 3"
                + " (V is a unit of voltage)");
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> Kind.CONDUCTANCE.parse("5"))
        .withMessageEndingWith("(S) at position 2");
  }

  @Test
  void unitAloneIsReadOrRejectedByName() {
    assertThat(Kind.CHARGE.unit("Ah")).isSameAs(WorkshopUnits.AMPERE_HOUR);
    assertThat(Kind.DIMENSIONLESS.unit("1")).isSameAs(WorkshopUnits.ONE);
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> Kind.CONDUCTANCE.unit("kg"))
        .withMessage(
            "unit of conductance must be a unit of conductance (S), but was \"kg\""
                + " (kg is a unit of mass)");
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> Kind.CONDUCTANCE.unit(""))
        .withMessageEndingWith("but was \"\"");
  }

  @Test
  void symbolsKeepTheirCase() {
    assertThat(Kind.RESISTANCE.parse("1 mΩ")).isNotEqualTo(Kind.RESISTANCE.parse("1 MΩ"));
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> Kind.ENERGY.parse("28 KWH"));
  }

  @Test
  void degreesOfADifferenceHaveNoZeroPoint() {
    assertThat(Kind.TEMPERATURE_DIFFERENCE.parse("9 degF"))
        .isEqualTo(fahrenheitOfRise(9))
        .isEqualTo(kelvinsOfRise(5));
    assertThat(Kind.TEMPERATURE_DIFFERENCE.parse("9 °C")).isEqualTo(kelvinsOfRise(9));
  }

  @ParameterizedTest
  @ValueSource(strings = {"25 °C", "25 degC", "25 deg C", "25 C", "25 ºC", "25 ˚C", "25℃"})
  void degreeSignsOfEveryKeyboardAreRead(String text) {
    assertThat(Kind.TEMPERATURE.parse(text)).isEqualTo(Measures.celsius(25));
  }

  @Test
  void noSpellingMeansTwoUnitsOfOneKind() {
    Map<String, NamedUnit<?>> seen = new HashMap<>();
    for (WorkshopUnits.Named named : WorkshopUnits.defined()) {
      for (String spelling : named.allSpellings()) {
        for (String variant : UnitSpelling.variants(spelling)) {
          NamedUnit<?> other = seen.put(named.unit().kind() + ":" + variant, named.unit());
          assertThat(other == null || other == named.unit()).as(variant).isTrue();
        }
      }
    }
  }

  @Test
  void nullIsRejectedByName() {
    assertThatNullPointerException().isThrownBy(() -> Kind.AREA.parse(null)).withMessage("text");
    assertThatNullPointerException().isThrownBy(() -> Kind.AREA.unit(null)).withMessage("spelling");
  }
}
