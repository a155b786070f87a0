package org.wattwright.conductor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Percentage.withPercentage;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.fahrenheit;
import static org.wattwright.units.Measures.inches;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.milliseconds;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.squareMillimetres;

import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Temperature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.Validation;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/** Preece, Onderdonk, and the adiabatic formula up to the melting point. */
class FusingCurrentTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("conductor");

  private static final double CIRCULAR_MIL_MM2 = 5.067074790974977e-4;

  static Stream<ReferenceRow> rows() {
    return CoveredRows.of("fusing-current");
  }

  @ParameterizedTest
  @MethodSource("rows")
  void fusingCurrentAgrees(ReferenceRow row) {
    String quantity = row.quantity();
    ConductorMaterial metal = Conditions.metal(row);
    if (quantity.equals("Preece constant")) {
      VALIDATION.transcribed(row, ampere(FusingCurrent.preece(metal, inches(1))));
    } else if (quantity.startsWith("diameter")) {
      Quantity<ElectricCurrent> current = amperes(row.givenNumber("I"));
      double diameterM = Kind.LENGTH.siValueOf(FusingCurrent.preeceDiameter(metal, current));
      VALIDATION.computed(row, diameterM / 0.0254);
    } else if (quantity.contains("Preece")) {
      VALIDATION.computed(
          row, ampere(FusingCurrent.preece(metal, Conditions.gauge(row).solidDiameter())));
    } else if (quantity.contains("Onderdonk")) {
      VALIDATION.computed(row, onderdonkA(row));
    } else {
      VALIDATION.computed(row, adiabaticA(row));
    }
  }

  private static double onderdonkA(ReferenceRow row) {
    Quantity<Area> area =
        row.has("A")
            ? squareMillimetres(row.givenNumber("A") * CIRCULAR_MIL_MM2)
            : Conditions.gauge(row).area();
    double number = Double.parseDouble(row.quantity().replaceAll(".*Onderdonk ([0-9]+) .*", "$1"));
    return ampere(
        FusingCurrent.onderdonk(
            area,
            row.quantity().endsWith(" ms") ? milliseconds(number) : seconds(number),
            celsius(row.givenNumber("start"))));
  }

  private static double adiabaticA(ReferenceRow row) {
    Quantity<Temperature> melting = ConductorMaterial.COPPER.meltingPoint();
    return ampere(
        ShortCircuit.of(ConductorMaterial.COPPER)
            .current(
                squareMillimetres(row.givenNumber("S")),
                seconds(row.givenNumber("t")),
                celsius(25),
                melting));
  }

  private static double ampere(Quantity<ElectricCurrent> current) {
    return Kind.CURRENT.siValueOf(current);
  }

  @Test
  void preeceInvertsItself() {
    for (double diameterMm : new double[] {0.1, 1, 8, 100}) {
      Quantity<ElectricCurrent> current =
          FusingCurrent.preece(ConductorMaterial.ALUMINIUM, millimetres(diameterMm));
      assertThat(
              Kind.LENGTH.siValueOf(
                  FusingCurrent.preeceDiameter(ConductorMaterial.ALUMINIUM, current)))
          .isCloseTo(diameterMm / 1000, withPercentage(1e-10));
    }
  }

  @Test
  void onderdonkFallsWithTimeAndHeatAndGrowsWithArea() {
    double base = onderdonkA(10, 1, 25);
    assertThat(onderdonkA(20, 1, 25)).isCloseTo(2 * base, withPercentage(1e-10));
    assertThat(onderdonkA(10, 4, 25)).isCloseTo(base / 2, withPercentage(1e-10));
    assertThat(onderdonkA(10, 1, 90)).isLessThan(base);
    assertThat(
            ampere(
                FusingCurrent.onderdonk(squareMillimetres(10), milliseconds(1000), fahrenheit(77))))
        .isCloseTo(base, withPercentage(1e-10));
  }

  private static double onderdonkA(double areaMm2, double timeS, double initialC) {
    return ampere(
        FusingCurrent.onderdonk(squareMillimetres(areaMm2), seconds(timeS), celsius(initialC)));
  }

  /** The two adiabatic formulas stand 2 % apart, as the note of the reference rows says. */
  @Test
  void onderdonkAgreesWithTheAdiabaticFormula() {
    double adiabatic =
        ampere(
            ShortCircuit.of(ConductorMaterial.COPPER)
                .current(squareMillimetres(25), seconds(1), celsius(25), celsius(1083)));
    assertThat(onderdonkA(25, 1, 25)).isCloseTo(adiabatic, withPercentage(2));
  }

  @Test
  void refusesWhatTheRulesDoNotCover() {
    ConductorMaterial hardCopper = ConductorMaterial.copperOf(0.97);
    assertThatThrownBy(() -> FusingCurrent.preece(hardCopper, millimetres(1)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageStartingWith("FusingCurrent.material must be copper or aluminium, but was ");
    assertThatThrownBy(() -> FusingCurrent.preece(ConductorMaterial.COPPER, millimetres(0)))
        .hasMessage("FusingCurrent.diameter must be > 0 and ≤ 100 mm, but was 0 mm");
    assertThatThrownBy(() -> FusingCurrent.preeceDiameter(ConductorMaterial.COPPER, amperes(-1)))
        .hasMessage("FusingCurrent.current must be > 0 A, but was -1 A");
    assertThatThrownBy(() -> onderdonkA(10, 11, 25))
        .hasMessage("FusingCurrent.duration must be > 0 and ≤ 10 s, but was 11 s");
    assertThatThrownBy(() -> onderdonkA(10, 1, 1001))
        .hasMessage("FusingCurrent.initial must be from -100 to 1000 °C, but was 1001 °C");
    assertThatThrownBy(() -> onderdonkA(Double.NaN, 1, 25))
        .isInstanceOf(InvalidInputException.class);
  }
}
