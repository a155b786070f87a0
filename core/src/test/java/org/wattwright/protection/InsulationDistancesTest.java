package org.wattwright.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.check.Outcome.FAIL;
import static org.wattwright.check.Outcome.NOT_CHECKED;
import static org.wattwright.check.Outcome.PASS;
import static org.wattwright.units.Measures.kilovolts;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.volts;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.wattwright.check.Check;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/** Creepage and clearance: between the rows, beyond them, and in the order that they must have. */
class InsulationDistancesTest {
  private static final InsulationDistances INSIDE = InsulationDistances.in(PollutionDegree.TWO);
  private static final InsulationDistances OUTSIDE = InsulationDistances.in(PollutionDegree.THREE);

  private static double mm(Optional<Quantity<Length>> length) {
    return Kind.LENGTH.siValueOf(length.orElseThrow()) * 1000;
  }

  @ParameterizedTest
  @EnumSource(MaterialGroup.class)
  void creepageGrowsWithVoltageAndDirt(MaterialGroup group) {
    double before = 0;
    for (double volt = 320; volt <= 630; volt += 10) {
      double inside = mm(INSIDE.on(group).creepage(volts(volt)));
      assertThat(inside).isGreaterThan(before);
      assertThat(mm(OUTSIDE.on(group).creepage(volts(volt)))).isGreaterThan(inside);
      before = inside;
    }
  }

  @ParameterizedTest
  @EnumSource(PollutionDegree.class)
  void betterMaterialNeedsLess(PollutionDegree degree) {
    for (double volt : new double[] {320, 400, 450, 630}) {
      double before = 0;
      for (MaterialGroup group : MaterialGroup.values()) {
        double mm = mm(InsulationDistances.in(degree).on(group).creepage(volts(volt)));
        assertThat(mm).isGreaterThanOrEqualTo(before);
        before = mm;
      }
    }
  }

  @Test
  void creepageIsLinearBetweenRowsAndFlatBelowTheFirst() {
    assertThat(mm(INSIDE.on(MaterialGroup.II).creepage(volts(450)))).isCloseTo(3.2, within(1e-12));
    assertThat(mm(INSIDE.on(MaterialGroup.I).creepage(volts(24)))).isCloseTo(1.25, within(1e-12));
  }

  @Test
  void beyondTheRowsThereIsNoAnswer() {
    assertThat(mm(INSIDE.creepage(volts(1000)))).isCloseTo(10, within(1e-12));
    assertThat(mm(OUTSIDE.on(MaterialGroup.IIIa).creepage(volts(1000))))
        .isCloseTo(16, within(1e-12));
    assertThat(INSIDE.reinforced().clearance(kilovolts(12))).isEmpty();
    assertThat(OUTSIDE.clearance(kilovolts(12))).isEmpty();
  }

  @Test
  void theWeakestMaterialIsOutOfPlaceInDirtAbove630Volts() {
    assertThat(OUTSIDE.creepage(volts(630))).isPresent();
    assertThat(OUTSIDE.creepage(volts(631))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"2.5, 1.5", "2.51, 3", "4, 3", "4.001, 5.5", "8, 14", "12, 14"})
  void clearanceTakesTheNextStepUpward(double kilovolt, double expectedMm) {
    assertThat(mm(INSIDE.clearance(kilovolts(kilovolt)))).isCloseTo(expectedMm, within(1e-12));
  }

  @Test
  void reinforcedInsulationNeedsMore() {
    assertThat(mm(INSIDE.reinforced().creepage(volts(400)))).isCloseTo(8, within(1e-12));
    assertThat(mm(INSIDE.reinforced().clearance(kilovolts(2.5)))).isCloseTo(3, within(1e-12));
    // settings given after it, or before, count all the same
    assertThat(
            INSIDE
                .reinforced()
                .on(MaterialGroup.I)
                .in(ElectricField.HOMOGENEOUS)
                .at(metres(3000))
                .clearance(kilovolts(2.5)))
        .isEqualTo(
            INSIDE
                .at(metres(3000))
                .in(ElectricField.HOMOGENEOUS)
                .on(MaterialGroup.I)
                .reinforced()
                .clearance(kilovolts(2.5)))
        .hasValueSatisfying(
            length ->
                assertThat(Kind.LENGTH.siValueOf(length)).isCloseTo(1.2e-3 * 1.14, within(1e-15)));
  }

  @Test
  void altitudeCountsForAirAlone() {
    assertThat(INSIDE.at(metres(-500)).clearance(kilovolts(4)))
        .isEqualTo(INSIDE.at(metres(2000)).clearance(kilovolts(4)))
        .isEqualTo(INSIDE.clearance(kilovolts(4)));
    assertThat(mm(INSIDE.at(metres(2500)).clearance(kilovolts(4))))
        .isCloseTo(3 * 1.07, within(1e-12));
    assertThat(mm(INSIDE.at(metres(10_000)).clearance(kilovolts(4))))
        .isCloseTo(3 * 3.02, within(1e-12));
    assertThat(INSIDE.at(metres(5000)).creepage(volts(400))).isEqualTo(INSIDE.creepage(volts(400)));
  }

  @Test
  void anEvenFieldNeedsLess() {
    assertThat(mm(INSIDE.in(ElectricField.HOMOGENEOUS).clearance(kilovolts(6))))
        .isCloseTo(2, within(1e-12));
    assertThat(mm(INSIDE.clearance(kilovolts(6)))).isCloseTo(5.5, within(1e-12));
  }

  @Test
  void impulseOfTheMains() {
    assertThat(InsulationDistances.ratedImpulse(volts(230), OvervoltageCategory.II))
        .hasValue(kilovolts(2.5));
    assertThat(InsulationDistances.ratedImpulse(volts(301), OvervoltageCategory.II))
        .hasValue(kilovolts(4));
    assertThat(InsulationDistances.ratedImpulse(volts(1000), OvervoltageCategory.I)).isEmpty();
    assertThatThrownBy(() -> InsulationDistances.ratedImpulse(volts(1001), OvervoltageCategory.II))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("InsulationDistances.lineToNeutral");
  }

  @Test
  void checksCompareWithoutABand() {
    Check creepage = INSIDE.checkCreepage(millimetres(4), volts(400));
    assertThat(creepage.outcome()).isEqualTo(PASS);
    assertThat(creepage.code()).isEqualTo("insulation.creepage");
    assertThat(INSIDE.checkCreepage(millimetres(3.99), volts(400)).outcome()).isEqualTo(FAIL);
    assertThat(INSIDE.checkClearance(millimetres(3), kilovolts(4)).outcome()).isEqualTo(PASS);
    assertThat(INSIDE.checkClearance(millimetres(2.99), kilovolts(4)).outcome()).isEqualTo(FAIL);
    assertThatThrownBy(() -> INSIDE.checkClearance(millimetres(-1), kilovolts(4)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("InsulationDistances.actual");
  }

  @Test
  void withoutAnEntryNothingIsChecked() {
    Check creepage = OUTSIDE.checkCreepage(millimetres(40), volts(900));
    assertThat(creepage.outcome()).isEqualTo(NOT_CHECKED);
    assertThat(creepage.missing()).containsExactly("insulation.creepage table entry");
    Check clearance = OUTSIDE.checkClearance(millimetres(40), kilovolts(12));
    assertThat(clearance.outcome()).isEqualTo(NOT_CHECKED);
    assertThat(clearance.missing()).containsExactly("insulation.clearance table entry");
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, 1001})
  void workingVoltageHasARange(double bad) {
    assertThatThrownBy(() -> INSIDE.creepage(volts(bad)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("InsulationDistances.working");
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, 12.1})
  void impulseHasARange(double bad) {
    assertThatThrownBy(() -> INSIDE.clearance(kilovolts(bad)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("InsulationDistances.impulse");
  }

  @ParameterizedTest
  @ValueSource(doubles = {-501, 10_001})
  void altitudeHasARange(double bad) {
    assertThatThrownBy(() -> INSIDE.at(metres(bad)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("InsulationDistances.altitude");
  }

  @ParameterizedTest
  @CsvSource({"100, IIIb", "174, IIIb", "175, IIIa", "399, IIIa", "400, II", "600, I", "1000, I"})
  void groupsByTrackingIndex(int index, MaterialGroup expected) {
    assertThat(MaterialGroup.ofTrackingIndex(index)).isEqualTo(expected);
  }

  @ParameterizedTest
  @ValueSource(ints = {99, 1001})
  void trackingIndexHasARange(int bad) {
    assertThatThrownBy(() -> MaterialGroup.ofTrackingIndex(bad))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("MaterialGroup.trackingIndex");
  }

  @Test
  void sayThemselves() {
    assertThat(INSIDE)
        .hasToString("basic, pollution degree TWO, material group IIIb, INHOMOGENEOUS field, 0 m");
    assertThat(OUTSIDE.reinforced().at(metres(3000)).toString())
        .startsWith("reinforced, pollution degree THREE")
        .endsWith("3000 m");
  }
}
