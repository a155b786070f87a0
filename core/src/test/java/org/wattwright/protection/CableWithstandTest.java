package org.wattwright.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.squareMillimetres;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wattwright.conductor.Cable;
import org.wattwright.conductor.ConductorSize;
import org.wattwright.conductor.Installation;
import org.wattwright.conductor.InsulationMaterial;
import org.wattwright.conductor.SteadyHeating;
import org.wattwright.conductor.StrandClass;
import org.wattwright.conductor.TransientHeating;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

class CableWithstandTest {
  private static final Installation BAY = Installation.freeAir(celsius(45));

  private static Cable cable35() {
    return Cable.of(
            "C35",
            ConductorSize.metric(squareMillimetres(35), StrandClass.FLEXIBLE),
            InsulationMaterial.XLPE)
        .conductorDiameter(millimetres(7.9))
        .outerDiameter(millimetres(11.7))
        .build();
  }

  private static double timeS(CableWithstand withstand, double currentA) {
    return withstand.time(amperes(currentA)).map(Kind.TIME::siValueOf).orElse(Double.MAX_VALUE);
  }

  @Test
  void bearsTheAmpacityForEver() {
    CableWithstand withstand = CableWithstand.of(cable35(), BAY, celsius(65));
    double ampacityA = Kind.CURRENT.siValueOf(SteadyHeating.of(cable35(), BAY).ampacity());
    assertThat(Kind.CURRENT.siValueOf(withstand.ampacity())).isCloseTo(ampacityA, within(1e-9));
    assertThat(withstand.time(amperes(ampacityA * 0.999))).isEmpty();
    assertThat(withstand.time(amperes(ampacityA * 1.001))).isPresent();
  }

  /** IEC 60364-5-54, Table A.54.2: k = 143 for copper from 90 °C to 250 °C. */
  @Test
  void bearsAShortCircuitByTheAdiabaticFormula() {
    CableWithstand withstand = CableWithstand.of(cable35(), BAY, celsius(65));
    double currentA = 6000;
    double expectedS = Math.pow(143 * 35 / currentA, 2);
    // k is printed to three figures, so that t is known to twice half of the last digit.
    assertThat(timeS(withstand, currentA)).isCloseTo(expectedS, within(expectedS * 2 * 0.5 / 143));
  }

  @Test
  void bearsAnOverloadNoLongerThanItsHeatingAllowsButNearlySo() {
    Cable cable = cable35();
    CableWithstand withstand = CableWithstand.of(cable, BAY, celsius(65));
    TransientHeating heating = TransientHeating.of(cable, BAY);
    for (double factor : new double[] {1.01, 1.05, 1.2, 1.5, 2, 3}) {
      double currentA = withstand.ampacityA() * factor;
      double exactS =
          heating
              .timeToReach(amperes(currentA), celsius(65), cable.temperatureLimit())
              .map(Kind.TIME::siValueOf)
              .orElseThrow();
      assertThat(timeS(withstand, currentA)).isBetween(0.7 * exactS, exactS * (1 + 1e-9));
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3})
  void bearsLessTimeTheMoreCurrent(int runs) {
    CableWithstand withstand = CableWithstand.of(cable35(), runs, BAY, celsius(70));
    double beforeS = Double.MAX_VALUE;
    for (double currentA = 50; currentA < 20_000; currentA *= 1.01) {
      double nowS = timeS(withstand, currentA);
      assertThat(nowS).isLessThanOrEqualTo(beforeS * (1 + 1e-12));
      beforeS = nowS;
    }
  }

  @Test
  void takesAShortCircuitThroughOneOfParallelRuns() {
    CableWithstand one = CableWithstand.of(cable35(), 1, BAY, celsius(60));
    CableWithstand two = CableWithstand.of(cable35(), 2, BAY, celsius(60));
    assertThat(timeS(two, 5000)).isCloseTo(timeS(one, 5000), within(1e-9));
    // The worst loaded of two carries 0.55 of the current.
    assertThat(two.ampacityA()).isCloseTo(one.ampacityA() / 0.55, within(1e-9));
  }

  @Test
  void bearsLongerFromACoolerStart() {
    CableWithstand cool = CableWithstand.of(cable35(), BAY, celsius(50));
    CableWithstand warm = CableWithstand.of(cable35(), BAY, celsius(80));
    CableWithstand full = CableWithstand.of(cable35(), BAY, celsius(90));
    double currentA = cool.ampacityA() * 1.4;
    assertThat(timeS(cool, currentA)).isGreaterThan(timeS(warm, currentA));
    assertThat(timeS(full, currentA)).isCloseTo(5, within(1e-12));
  }

  @Test
  void rejectsAnOperatingTemperatureAboveTheLimit() {
    assertThatThrownBy(() -> CableWithstand.of(cable35(), BAY, celsius(91)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("CableWithstand.operating must be at most the cable's limit 90 °C");
    assertThatThrownBy(() -> CableWithstand.of(cable35(), 9, BAY, celsius(60)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("CableWithstand.runs");
  }
}
