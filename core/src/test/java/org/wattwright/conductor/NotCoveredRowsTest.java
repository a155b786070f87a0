package org.wattwright.conductor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.squareMillimetres;

import java.util.HashSet;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.ReferenceRows;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;

/** Writes down what the library does not answer, and how near it comes where it answers nearly. */
class NotCoveredRowsTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("conductor");

  @Test
  void everyReasonBelongsToARow() {
    Set<String> found = new HashSet<>();
    CoveredRows.FILES.stream()
        .flatMap(CoveredRows::all)
        .filter(row -> CoveredRows.reasons().containsKey(row.id()))
        .forEach(
            row -> {
              VALIDATION.notCovered(row, CoveredRows.reasons().get(row.id()));
              found.add(row.id());
            });
    assertThat(found).isEqualTo(CoveredRows.reasons().keySet());
  }

  static Stream<ReferenceRow> flatBars() {
    return CoveredRows.all("busbars")
        .filter(row -> row.quantity().startsWith("DC current of a flat bar"));
  }

  /** I = 7.73·A^0.5·p^0.39 of the Copper Development Association; 10 % as for tables of bars. */
  @ParameterizedTest
  @MethodSource("flatBars")
  void balanceOfABarAgreesWithTheRuleWithinTenPerCent(ReferenceRow row) {
    double[] sidesMm = BusbarReferenceTest.sides(row.given("bar"));
    Busbar bar =
        Busbar.of(ConductorMaterial.COPPER, millimetres(sidesMm[0]), millimetres(sidesMm[1]));
    double ampere =
        Kind.CURRENT.siValueOf(
            SteadyHeating.of(bar, Installation.freeAir(celsius(40))).ampacityAt(celsius(90)));
    assertThat(ampere / row.number()).isBetween(0.9, 1.1);
  }

  static Stream<ReferenceRow> blackCables() {
    return CoveredRows.all("heat-balance")
        .filter(row -> row.quantity().startsWith("heat loss per metre of a single black cable"));
  }

  /** IEC 60287-2-1, from memory; 10 % is what correlations of free convection differ by. */
  @ParameterizedTest
  @MethodSource("blackCables")
  void lossAgreesWithTheOtherFormulaWithinTenPerCent(ReferenceRow row) {
    double airK = 313.15;
    double lossWPerM =
        new CylinderLoss(SurfaceLoss.Surroundings.at(airK), 0.9, row.givenNumber("D") / 1000)
            .lossWPerM(airK + row.givenNumber("surface rise"));
    assertThat(lossWPerM / row.number()).isBetween(0.9, 1.0);
  }

  /** Printed 0.87 for the air and 0.70 for the bundle; here by way of 35 mm², 158 A. */
  @Test
  void deratedCurrentAgreesWithinTheRoundingOfItsFactors() {
    ReferenceRow row = ReferenceRows.read("/conductor/correction-factors.csv").row("F-056");
    ConductorSize size = ConductorSize.metric(squareMillimetres(35), StrandClass.STRANDED);
    Cable cable = Cable.of("row", size, InsulationMaterial.PVC).build();
    double factor = ampere(cable, Installation.freeAir(celsius(40)).bundled(3)) / 158;
    assertThat(row.givenNumber("table") * factor)
        .isBetween(row.number() * 0.865 / 0.87, row.number() * 0.875 / 0.87);
  }

  private static double ampere(Cable cable, Installation installation) {
    return AmpacityTable.VDE_FREE_AIR
        .ratingOf(cable, installation)
        .<Double>fold(rated -> rated.currentA(), not -> Double.NaN);
  }
}
