package org.wattwright.conversion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kiloamperes;
import static org.wattwright.units.Measures.megaohms;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.microhenries;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.milliseconds;
import static org.wattwright.units.Measures.nanofarads;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.squareMillimetres;
import static org.wattwright.units.Measures.volts;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Outcome;
import org.wattwright.check.Source;
import org.wattwright.check.Worksheet;
import org.wattwright.conductor.Cable;
import org.wattwright.conductor.ConductorSize;
import org.wattwright.conductor.Installation;
import org.wattwright.conductor.InsulationMaterial;
import org.wattwright.conductor.StrandClass;
import org.wattwright.protection.AmbientDerating;
import org.wattwright.protection.Circuit;
import org.wattwright.protection.CircuitDesign;
import org.wattwright.protection.CircuitDesigner;
import org.wattwright.protection.CircuitReview;
import org.wattwright.protection.CircuitRole;
import org.wattwright.protection.CircuitSupply;
import org.wattwright.protection.FaultCurrent;
import org.wattwright.protection.FaultRange;
import org.wattwright.protection.Fuse;
import org.wattwright.protection.IsolationLeaks;
import org.wattwright.protection.IsolationRule;
import org.wattwright.protection.TimeCurrentCurve;
import org.wattwright.units.Measures;

class CircuitsTest {
  private static final CircuitSupply BATTERY =
      CircuitSupply.of(
          "battery",
          volts(100),
          FaultRange.of(
              FaultCurrent.of(volts(100), milliohms(20), microhenries(4)),
              FaultCurrent.of(volts(60), milliohms(60), microhenries(4))));
  private static final Circuit HEATER =
      Circuit.of("heater", CircuitRole.HEATER)
          .continuousCurrent(amperes(20))
          .length(metres(2))
          .installation(Installation.freeAir(celsius(40)))
          .build();
  private static final Cable CABLE =
      Cable.of(
              "cable",
              ConductorSize.metric(squareMillimetres(16), StrandClass.FLEXIBLE),
              InsulationMaterial.XLPE)
          .conductorDiameter(millimetres(5.3))
          .outerDiameter(millimetres(7.9))
          .voltageRating(volts(600))
          .minimumBendRadius(millimetres(20))
          .massPerLength(Measures.kilogramsPerMetre(0.18))
          .build();

  private static Fuse fuse(double directV) {
    return Fuse.of("link 40", amperes(40))
        .directVoltage(volts(directV))
        .testTimeConstant(milliseconds(10))
        .breakingCapacity(kiloamperes(20))
        .fullRange()
        .ambientDerating(AmbientDerating.linear(Measures.percentPerKelvin(0.5), celsius(40)))
        .cyclicFactor(0.8)
        .preArcingCurve(
            TimeCurrentCurve.ofPoints()
                .point(amperes(64), seconds(3000))
                .point(amperes(120), seconds(2))
                .point(amperes(400), seconds(0.01))
                .build())
        .preArcingJouleIntegral(Measures.ampereSquaredSeconds(900))
        .totalJouleIntegral(Measures.ampereSquaredSeconds(3600), volts(250))
        .peakLetThrough(kiloamperes(4))
        .mass(Measures.grams(30))
        .build();
  }

  private static CircuitDesign design(double fuseV) {
    return CircuitDesigner.fedBy(BATTERY)
        .circuits(List.of(HEATER))
        .cables(List.of(CABLE))
        .fuses(List.of(fuse(fuseV)))
        .run();
  }

  private static Circuits circuits(double fuseV) {
    CircuitReview review = CircuitReview.of(List.of(HEATER));
    for (CircuitRole role : CircuitRole.values()) {
      review = review.without(role);
    }
    return Circuits.of(design(fuseV), review)
        .isolation(
            IsolationBudget.at(volts(100), IsolationRule.JOINED)
                .with("heater", IsolationLeaks.even(megaohms(1)), nanofarads(10), Basis.MEASURED));
  }

  @Test
  void theReviewOfTheConversionHoldsEveryCheckOfTheCircuits() {
    Circuits circuits =
        circuits(250).checks(List.of(Check.named("own", "own").source(Source.PHYSICS).holds(true)));
    Conversion van = InventedVan.conversion().circuits(circuits).build();
    assertThat(circuits.design().isComplete()).isTrue();
    assertThat(van.review()).containsAll(circuits.checks());
    assertThat(van.review())
        .extracting(Check::code)
        .contains("own", "isolation.resistance", "protection.current-cover");
    assertThat(van.circuits()).contains(circuits);
    assertThat(circuits).asString().startsWith("1 circuits: ");
  }

  @Test
  void theSheetHasARowForTheCircuitAndItsWorking() {
    CalculationSheet sheet = InventedVan.conversion().circuits(circuits(250)).build().toSheet();
    assertThat(sheet.sections())
        .extracting(Section::title)
        .containsSubsequence("Masses and axles", "Circuits", "Isolation and bonding", "Checks");
    String markdown = MarkdownSheet.render(sheet);
    assertThat(markdown.replaceAll(" +", " "))
        .contains("| heater | 20 A | 16 mm² | link 40 | – |")
        .contains("| all together, in parallel | 1 MΩ | 1 MΩ | 100 % | 10 nF | measured |")
        .contains("#### Circuit heater");
  }

  @Test
  void noPartsAreAFailureThatSaysWhy() {
    Circuits none = circuits(60);
    assertThat(none.checks())
        .filteredOn(check -> check.code().equals("protection.parts"))
        .singleElement()
        .satisfies(check -> assertThat(check.outcome()).isEqualTo(Outcome.FAIL))
        .satisfies(check -> assertThat(check.note()).contains("fuse.voltage"));
    Conversion van = InventedVan.conversion().circuits(none).build();
    assertThat(van.outcome()).isEqualTo(Outcome.FAIL);
    assertThat(MarkdownSheet.render(van.toSheet()))
        .contains("No parts of the catalogue serve every circuit");
  }

  @Test
  void isolationThatIsNotKnownIsNotChecked() {
    Circuits unknown = Circuits.of(design(250), CircuitReview.of(List.of(HEATER)));
    assertThat(unknown.checks())
        .filteredOn(check -> check.code().equals("isolation.resistance"))
        .singleElement()
        .satisfies(check -> assertThat(check.outcome()).isEqualTo(Outcome.NOT_CHECKED));
  }

  @Test
  void withoutCircuitsTheSheetSaysSo() {
    Conversion van = InventedVan.conversion().build();
    assertThat(van.circuits()).isEmpty();
    assertThat(MarkdownSheet.render(van.toSheet())).contains("No circuits were given");
  }

  @Test
  void theWorkingOfIsolationAndFurtherChecksStandsInTheAppendix() {
    Worksheet.Recording discharge = Worksheet.record("Discharge by hand");
    discharge.step("t", "time").gives(org.wattwright.check.Figure.count(3));
    Circuits circuits = circuits(250).worksheets(List.of(discharge.toWorksheet()));
    assertThat(circuits.furtherWorksheets()).containsExactly(discharge.toWorksheet());
    Section working =
        InventedVan.conversion().circuits(circuits).build().toSheet().appendices().get(0);
    assertThat(working.title()).isEqualTo("Working");
    Section isolation =
        working.parts().stream()
            .filter(part -> part.title().equals("Isolation and bonding"))
            .findFirst()
            .orElseThrow();
    assertThat(isolation.parts().get(0).blocks())
        .extracting(block -> ((Working) block).worksheet().title())
        .containsExactly("Isolation budget", "Discharge by hand");
  }
}
