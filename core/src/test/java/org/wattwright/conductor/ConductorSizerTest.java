package org.wattwright.conductor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.gramsPerCubicCentimetre;
import static org.wattwright.units.Measures.joulesPerKilogramKelvin;
import static org.wattwright.units.Measures.kelvinsPerWatt;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.microohms;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.milliseconds;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.squareMillimetres;
import static org.wattwright.units.Measures.volts;
import static org.wattwright.units.Measures.wattsPerMetreKelvin;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Given;
import org.wattwright.check.Outcome;
import org.wattwright.profile.Profile;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

class ConductorSizerTest {
  /** Area, conductor and outer diameter, mm² and mm; an invented family of cables. */
  private static final double[][] FAMILY = {
    {10, 4.2, 6.8},
    {16, 5.3, 8.1},
    {25, 6.7, 10.2},
    {35, 7.9, 11.7},
    {50, 9.4, 13.9},
    {70, 11.2, 16}
  };

  private static final Installation SHOP = Installation.freeAir(celsius(40));

  static List<Cable> catalogue() {
    List<Cable> cables = new ArrayList<>();
    for (double[] row : FAMILY) {
      ConductorSize size = ConductorSize.metric(squareMillimetres(row[0]), StrandClass.FLEXIBLE);
      cables.add(
          Cable.of("T", size, InsulationMaterial.XLPE)
              .conductorDiameter(millimetres(row[1]))
              .outerDiameter(millimetres(row[2]))
              .temperatureLimit(celsius(125))
              .voltageRating(volts(1000))
              .minimumBendRadius(millimetres(4 * row[2]))
              .build());
    }
    return cables;
  }

  private static ConductorSizer sizer() {
    return ConductorSizer.over(catalogue()).installation(SHOP).continuousCurrent(amperes(150));
  }

  @Test
  void picksTheSmallestWhateverTheOrderOfTheCatalogue() {
    List<Cable> reversed = catalogue();
    Collections.reverse(reversed);
    SizingResult.Sized sized =
        ConductorSizer.over(reversed)
            .installation(SHOP)
            .continuousCurrent(amperes(150))
            .run()
            .orElseThrow();
    assertThat(sized.cable().size().name()).isEqualTo("25 mm²");
    assertThat(sized.governing()).isEqualTo(SizingCriterion.CONTINUOUS_TEMPERATURE);
    assertThat(sized.parallelRuns()).isEqualTo(1);
    assertThat(sized.isProvisional()).isFalse();
    assertThat(sized).hasToString("25 mm² T, governed by continuous temperature");
  }

  @Test
  void dropGovernsALongRun() {
    SizingResult.Sized sized =
        sizer().length(metres(8)).voltageDropAtMost(volts(1.5)).run().orElseThrow();
    assertThat(sized.governing()).isEqualTo(SizingCriterion.VOLTAGE_DROP);
    double dropV =
        Kind.VOLTAGE.siValueOf(check(sized, SizingCriterion.VOLTAGE_DROP).quantity(Kind.VOLTAGE));
    double hotK =
        Kind.TEMPERATURE.siValueOf(
            check(sized, SizingCriterion.CONTINUOUS_TEMPERATURE).quantity(Kind.TEMPERATURE));
    assertThat(dropV)
        .isCloseTo(
            Kind.VOLTAGE.siValueOf(
                ConductorRun.of(sized.cable(), metres(8))
                    .dropAt(amperes(150), org.wattwright.units.Measures.kelvins(hotK))),
            org.assertj.core.data.Percentage.withPercentage(1e-9));
  }

  private static org.wattwright.check.Figure check(
      SizingResult.Sized sized, SizingCriterion criterion) {
    return sized.checks().stream()
        .filter(c -> c.code().equals(criterion.code()))
        .findFirst()
        .flatMap(Check::actual)
        .orElseThrow();
  }

  @Test
  void everyCriterionCanGovern() {
    assertThat(governing(sizer().fault(FaultDuty.of(amperes(30_000), milliseconds(50)))))
        .isEqualTo(SizingCriterion.SHORT_CIRCUIT);
    assertThat(governing(sizer().terminalTemperatureAtMost(celsius(75))))
        .isEqualTo(SizingCriterion.TERMINAL_TEMPERATURE);
    assertThat(governing(sizer().areaAtLeast(squareMillimetres(50))))
        .isEqualTo(SizingCriterion.MECHANICAL_MINIMUM);
    assertThat(
            governing(
                sizer()
                    .profile(
                        Profile.segments(Kind.CURRENT)
                            .hold(amperes(450), seconds(120))
                            .hold(amperes(0), seconds(300))
                            .build())))
        .isEqualTo(SizingCriterion.PROFILE_PEAK_TEMPERATURE);
    assertThat(
            governing(
                sizer().ampacityBy((c, i) -> rated(c.size().area().equals(squareMillimetres(70))))))
        .isEqualTo(SizingCriterion.AMPACITY);
  }

  private static AmpacityMethod.Rating rated(boolean enough) {
    return new AmpacityMethod.Rated(
        amperes(enough ? 200 : 100),
        Basis.DATA_SHEET,
        org.wattwright.check.Source.dataSheet("invented table"));
  }

  private static SizingCriterion governing(ConductorSizer sizer) {
    return sizer.run().orElseThrow().governing();
  }

  @Test
  void parallelRunsServeWhereOneCableDoesNot() {
    ConductorSizer heavy = sizer().continuousCurrent(amperes(480));
    assertThat(heavy.run().isSized()).isFalse();
    SizingResult.Sized sized = heavy.parallelRunsUpTo(2).run().orElseThrow();
    assertThat(sized.parallelRuns()).isEqualTo(2);
    assertThat(sized.conductors().parallelRuns()).isEqualTo(2);
    assertThat(sized.worksheet().toText()).contains("worst loaded of the parallel runs");
    double sharedK =
        Kind.TEMPERATURE.siValueOf(
            check(sized, SizingCriterion.CONTINUOUS_TEMPERATURE).quantity(Kind.TEMPERATURE));
    assertThat(sharedK)
        .isCloseTo(
            SteadyHeating.of(sized.cable(), SHOP)
                .at(amperes(480 * 1.1 / 2))
                .orElseThrow()
                .conductorK(),
            org.assertj.core.data.Offset.offset(1e-9));
  }

  @Test
  void saysWhatBlocksAndWhatWouldDo() {
    SizingResult result = sizer().bendRadiusAvailable(millimetres(30)).run();
    SizingResult.NoSize none = (SizingResult.NoSize) result;
    assertThat(none.blocking()).isEqualTo(SizingCriterion.BEND_RADIUS);
    assertThat(none.ruledOut()).containsEntry(SizingCriterion.BEND_RADIUS, 5);
    assertThat(none.nearestMiss().orElseThrow().cable().size().name()).isEqualTo("25 mm²");
    assertThat(none.smallestRelaxation().orElseThrow().toString())
        .startsWith("FAIL conductor.bend-radius: 40.8 mm > 30 mm");
    assertThat(none.toString()).contains("bend radius blocks").contains("nearest 25 mm² T");
    assertThatIllegalStateException()
        .isThrownBy(result::orElseThrow)
        .withMessageContaining("blocks");
  }

  @Test
  void missingDataIsNotCheckedAndNeverPasses() {
    ConductorSize size = ConductorSize.metric(squareMillimetres(70), StrandClass.FLEXIBLE);
    Cable bare = Cable.of("bare", size, InsulationMaterial.XLPE).build();
    ConductorSizer sizer =
        ConductorSizer.over(List.of(bare))
            .installation(SHOP)
            .continuousCurrent(amperes(100))
            .bendRadiusAvailable(millimetres(100))
            .circuitVoltage(volts(400));
    assertThat(sizer.run().isSized()).isFalse();
    SizingResult.Sized provisional = sizer.allowProvisional().run().orElseThrow();
    assertThat(provisional.isProvisional()).isTrue();
    assertThat(provisional.checks()).allMatch(c -> c.outcome() == Outcome.NOT_CHECKED);
    assertThat(provisional.checks().stream().flatMap(c -> c.missing().stream()))
        .contains(
            "Cable.conductorDiameter of bare",
            "Cable.outerDiameter of bare",
            "Cable.minimumBendRadius of bare",
            "Cable.voltageRating of bare");
  }

  @Test
  void provisionalRanksAfterEveryCompleteOne() {
    List<Cable> cables = new ArrayList<>(catalogue());
    ConductorSize size = ConductorSize.metric(squareMillimetres(10), StrandClass.FLEXIBLE);
    cables.add(Cable.of("bare", size, InsulationMaterial.XLPE).build());
    assertThat(
            ConductorSizer.over(cables)
                .installation(SHOP)
                .continuousCurrent(amperes(150))
                .allowProvisional()
                .run()
                .orElseThrow()
                .cable()
                .name())
        .isEqualTo("T");
  }

  @Test
  void estimatedGeometryIsAtMostACaution() {
    ConductorSize size = ConductorSize.metric(squareMillimetres(70), StrandClass.FLEXIBLE);
    Cable generic =
        Cable.of("generic", size, InsulationMaterial.XLPE).build().withGenericGeometry();
    SizingResult.Sized sized =
        ConductorSizer.over(List.of(generic))
            .installation(SHOP)
            .continuousCurrent(amperes(50))
            .run()
            .orElseThrow();
    assertThat(sized.checks().get(0).outcome()).isEqualTo(Outcome.CAUTION);
    assertThat(sized.checks().get(0).basis()).isEqualTo(Basis.ESTIMATED);
    assertThat(sized.checks().get(0).estimates())
        .containsExactly("dimensions of the cable, and how it is laid");
    assertThat(generic.geometries()).hasSize(2);
  }

  @Test
  void terminalCountsTheJointsOwnRiseAgainstItsOwnLimit() {
    Joint lug =
        Joint.of("lug", Given.measured(microohms(40), "micro-ohmmeter"))
            .withTemperatureLimit(celsius(105));
    SizingResult.Sized sized = sizer().joints(List.of(lug)).run().orElseThrow();
    double lugK =
        Kind.TEMPERATURE.siValueOf(
            check(sized, SizingCriterion.TERMINAL_TEMPERATURE).quantity(Kind.TEMPERATURE));
    double cableK =
        Kind.TEMPERATURE.siValueOf(
            check(sized, SizingCriterion.CONTINUOUS_TEMPERATURE).quantity(Kind.TEMPERATURE));
    assertThat(lugK).isBetween(cableK + 3, cableK + 30);
    Joint hot = lug.withThermalResistance(kelvinsPerWatt(70));
    SizingResult.Sized other = sizer().joints(List.of(hot)).run().orElseThrow();
    assertThat(
            Kind.TEMPERATURE.siValueOf(
                check(other, SizingCriterion.TERMINAL_TEMPERATURE).quantity(Kind.TEMPERATURE)))
        .isCloseTo(
            Math.max(
                313.15 + 150 * 150 * 40e-6 * 70,
                Kind.TEMPERATURE.siValueOf(
                    check(other, SizingCriterion.CONTINUOUS_TEMPERATURE)
                        .quantity(Kind.TEMPERATURE))),
            org.assertj.core.data.Offset.offset(1e-9));
  }

  @Test
  void theFinModelIsAtMostACaution() {
    Joint lug =
        Joint.of("lug", Given.measured(microohms(40), "micro-ohmmeter"))
            .withTemperatureLimit(celsius(105));
    Check byFin = terminal(sizer().joints(List.of(lug)));
    assertThat(byFin.basis()).isEqualTo(Basis.ESTIMATED);
    assertThat(byFin.estimates()).containsExactly("temperature rise of the lugs");
    assertThat(byFin.outcome()).isEqualTo(Outcome.CAUTION);
    Check byMaker = terminal(sizer().joints(List.of(lug.withThermalResistance(kelvinsPerWatt(7)))));
    assertThat(byMaker.basis()).isEqualTo(Basis.DATA_SHEET);
    assertThat(byMaker.outcome()).isEqualTo(Outcome.PASS);
    Check bare = terminal(sizer().terminalTemperatureAtMost(celsius(110)));
    assertThat(bare.basis()).isEqualTo(Basis.DATA_SHEET);
    assertThat(bare.outcome()).isEqualTo(Outcome.PASS);
  }

  private static Check terminal(ConductorSizer sizer) {
    return one(sizer.run().orElseThrow(), SizingCriterion.TERMINAL_TEMPERATURE);
  }

  private static Check one(SizingResult.Sized sized, SizingCriterion criterion) {
    return sized.checks().stream()
        .filter(c -> c.code().equals(criterion.code()))
        .findFirst()
        .orElseThrow();
  }

  /** The built-in insulations store heat by figures from memory. */
  @Test
  void aProfileIsAtMostACautionUnlessTheInsulationIsKnown() {
    InsulationMaterial known =
        InsulationMaterial.named("known")
            .thermalConductivity(wattsPerMetreKelvin(0.28))
            .density(gramsPerCubicCentimetre(1.1))
            .specificHeatCapacity(joulesPerKilogramKelvin(1800))
            .temperatureLimit(celsius(125))
            .shortCircuitLimit(celsius(250))
            .build(org.wattwright.check.Source.dataSheet("invented cable"));
    Cable cable =
        Cable.of("K", catalogue().get(3).size(), known)
            .conductorDiameter(millimetres(7.9))
            .outerDiameter(millimetres(11.7))
            .build();
    assertThat(profilePeak(cable).outcome()).isEqualTo(Outcome.PASS);
    assertThat(profilePeak(catalogue().get(3)).outcome()).isEqualTo(Outcome.CAUTION);
    assertThat(profilePeak(catalogue().get(3)).basis()).isEqualTo(Basis.ESTIMATED);
  }

  private static Check profilePeak(Cable cable) {
    return one(
        ConductorSizer.over(List.of(cable))
            .installation(SHOP)
            .profile(
                Profile.segments(Kind.CURRENT)
                    .hold(amperes(200), seconds(60))
                    .hold(amperes(50), seconds(60))
                    .build())
            .run()
            .orElseThrow(),
        SizingCriterion.PROFILE_PEAK_TEMPERATURE);
  }

  @Test
  void tableListsEveryCandidateWithItsMargins() {
    SizingTable table = sizer().length(metres(3)).voltageDropAtMost(volts(1)).run().table();
    assertThat(table.lines()).hasSize(6);
    assertThat(table.toText().lines().findFirst().orElseThrow())
        .startsWith("size")
        .contains("continuous temperature")
        .contains("voltage drop");
    assertThat(table.toText()).contains("10 mm² T").contains("FAIL").contains("PASS");
    assertThat(table.toMarkdown()).startsWith("| size ").contains("| continuous temperature |");
    assertThat(table).hasToString("6 sizes, 4 pass");
  }

  @Test
  void worksheetIsThatOfTheKernelThatChose() {
    SizingResult.Sized sized =
        sizer()
            .length(metres(3))
            .voltageDropAtMost(volts(1))
            .fault(FaultDuty.of(amperes(6000), milliseconds(20)))
            .run()
            .orElseThrow();
    String text = sized.worksheet().toText();
    assertThat(text).contains("θ_c = θ_s + q·T₁").contains("ΔU = I·R").contains("k²S²");
    assertThat(text).contains(check(sized, SizingCriterion.VOLTAGE_DROP).toString());
  }

  @Test
  void shortAndLongFaultsCarryARemark() {
    assertThat(remark(0.02)).contains("below 0.1 s");
    assertThat(remark(1)).isEmpty();
    assertThat(remark(6)).contains("on the safe side");
  }

  private static String remark(double durationS) {
    return sizer()
        .fault(FaultDuty.of(amperes(500), seconds(durationS)))
        .run()
        .orElseThrow()
        .checks()
        .stream()
        .filter(c -> c.code().equals(SizingCriterion.SHORT_CIRCUIT.code()))
        .findFirst()
        .orElseThrow()
        .note();
  }

  @Test
  void listsAllThatIsMissingAtOnce() {
    assertThatThrownBy(() -> ConductorSizer.over(catalogue()).voltageDropAtMost(volts(1)).run())
        .isInstanceOf(InvalidInputException.class)
        .hasMessage(
            "ConductorSizer is missing 3 of 3 required fields: installation, continuousCurrent or "
                + "profile, length");
    assertThatThrownBy(() -> ConductorSizer.over(List.of()))
        .hasMessage(
            "ConductorSizer.catalogue must be a list with at least one element, but was empty");
    assertThatThrownBy(() -> sizer().continuousCurrent(amperes(-1)))
        .hasMessage("ConductorSizer.continuousCurrent must be ≥ 0 A, but was -1 A");
    assertThatThrownBy(() -> sizer().length(metres(0)))
        .hasMessage("ConductorSizer.length must be > 0 m, but was 0 m");
  }
}
