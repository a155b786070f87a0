package org.wattwright.drive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.kilometresPerHour;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.squareMetres;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/** Bands and bad input; the figures stand against their tables in the reference test. */
class RoadLoadEstimatesTest {
  @ParameterizedTest
  @EnumSource
  void dragAreaGrowsWithTheFrontWithinItsBand(BodyShape shape) {
    var one = RoadLoadEstimates.dragArea(shape, squareMetres(1));
    var two = RoadLoadEstimates.dragArea(shape, squareMetres(2));
    double typicalM2 = Kind.AREA.siValueOf(one.typical());
    assertThat(Kind.AREA.siValueOf(two.typical()))
        .isCloseTo(2 * typicalM2, within(1e-12 * typicalM2));
    assertThat(typicalM2)
        .isBetween(Kind.AREA.siValueOf(one.low()), Kind.AREA.siValueOf(one.high()));
    assertThat(one.toString()).startsWith("drag area, " + shape).endsWith("estimated");
  }

  @ParameterizedTest
  @EnumSource
  void rollingResistanceLiesWithinItsBand(RoadSurface surface) {
    assertThat(RoadLoadEstimates.rollingResistance(surface).at(kilometresPerHour(50)))
        .isBetween(
            RoadLoadEstimates.lowRollingResistance(surface).at(kilometresPerHour(50)),
            RoadLoadEstimates.highRollingResistance(surface).at(kilometresPerHour(50)));
  }

  @ParameterizedTest
  @ValueSource(doubles = {799, 2001, -1})
  void massOutsideTheRuleIsRefused(double massKg) {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> RoadLoadEstimates.frontalArea(kilograms(massKg)))
        .withMessageContaining("RoadLoadEstimates.mass");
  }

  @Test
  void noLengthIsRefused() {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> RoadLoadEstimates.frontalArea(metres(1.25), metres(0)))
        .withMessageContaining("RoadLoadEstimates.height");
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> RoadLoadEstimates.dragArea(BodyShape.WEDGE, squareMetres(0)))
        .withMessageContaining("RoadLoadEstimates.frontalArea");
  }
}
