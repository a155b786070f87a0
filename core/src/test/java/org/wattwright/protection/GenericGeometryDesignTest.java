package org.wattwright.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.kilogramsPerMetre;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.squareMillimetres;
import static org.wattwright.units.Measures.volts;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Outcome;
import org.wattwright.conductor.Cable;
import org.wattwright.conductor.ConductorSize;
import org.wattwright.conductor.Installation;
import org.wattwright.conductor.InsulationMaterial;
import org.wattwright.conductor.StrandClass;

/** Cables without diameters: counted, or estimated if that is asked for. */
class GenericGeometryDesignTest {
  private static final Circuit TRACTION = CircuitParts.traction().build();

  private static Cable bare(double mm2) {
    return Cable.of(
            "B",
            ConductorSize.metric(squareMillimetres(mm2), StrandClass.FLEXIBLE),
            InsulationMaterial.XLPE)
        .temperatureLimit(celsius(125))
        .voltageRating(volts(1000))
        .massPerLength(kilogramsPerMetre(mm2 * 0.01))
        .build();
  }

  private static CircuitDesigner bareOnly() {
    return CircuitParts.designer(List.of(TRACTION))
        .cables(List.of(bare(25), bare(35), bare(50), bare(70)));
  }

  @Test
  void saysHowManyCablesWereNotLookedAtAndWhy() {
    CircuitDesign none = bareOnly().run();
    assertThat(none.passedOver())
        .containsExactly(
            new PassedOver(
                "traction",
                CircuitPart.Type.CABLE,
                4,
                4,
                List.of("Cable.conductorDiameter of B", "Cable.outerDiameter of B")));
    assertThat(none.whyNone())
        .startsWith("no parts for traction: conductor.continuous-temperature blocks")
        .endsWith(
            "; traction: 4 of 4 cables not looked at: Cable.conductorDiameter of B,"
                + " Cable.outerDiameter of B missing");
    assertThat(bareOnly().allowProvisional().run().passedOver()).hasSize(1);
  }

  @Test
  void saysSoToldWithAnAnswerToo() {
    List<Cable> mixed = new ArrayList<>(CircuitParts.cables());
    mixed.add(bare(35));
    CircuitDesign found = CircuitParts.designer(List.of(TRACTION)).cables(mixed).run();
    assertThat(found.circuits().get(0).cable().name()).isEqualTo("T");
    assertThat(found.passedOver()).singleElement().extracting(PassedOver::count).isEqualTo(1);
    assertThat(found.toString()).contains("1 of 11 cables not looked at");
    // One that fails anyway is not counted: it was looked at.
    mixed.set(10, bare(2.5));
    Circuit dropping = CircuitParts.traction().areaAtLeast(squareMillimetres(4)).build();
    CircuitDesign failing = CircuitParts.designer(List.of(dropping)).cables(mixed).run();
    assertThat(failing.passedOver()).isEmpty();
    assertThat(failing).hasToString("traction: 35 mm² T, F-125, K-250");
  }

  @Test
  void estimatesTheGeometryIfAskedAndMarksIt() {
    CircuitDesign design = bareOnly().withGenericGeometry().run();
    assertThat(design.whyNone()).isBlank();
    assertThat(design.passedOver()).isEmpty();
    DesignedCircuit traction = design.circuits().get(0);
    assertThat(traction.cable().geometryBasis()).isEqualTo(Basis.ESTIMATED);
    for (String code :
        List.of(
            "conductor.continuous-temperature", "fuse.let-through", "protection.current-cover")) {
      Check check =
          traction.checks().stream().filter(c -> c.code().equals(code)).findFirst().orElseThrow();
      if (!code.equals("fuse.let-through")) {
        assertThat(check.basis()).as(code).isEqualTo(Basis.ESTIMATED);
        assertThat(check.outcome()).as(code).isEqualTo(Outcome.CAUTION);
      }
    }
  }

  /** A known geometry is never put aside for an estimate, and lies inside its band. */
  @Test
  void leavesKnownDiametersAlone() {
    CircuitDesign known = CircuitParts.designer(List.of(TRACTION)).run();
    CircuitDesign asked = CircuitParts.designer(List.of(TRACTION)).withGenericGeometry().run();
    assertThat(asked).hasToString(known.toString());
    assertThat(asked.circuits().get(0).cable().geometryBasis()).isEqualTo(Basis.DATA_SHEET);
  }

  @Test
  void countsFusesAndContactorsWithoutData() {
    List<Contactor> contactors = new ArrayList<>(CircuitParts.contactors());
    contactors.add(Contactor.of("K-?", volts(450)).build());
    List<Fuse> fuses = new ArrayList<>(CircuitParts.fuses());
    fuses.add(Fuse.of("F-?", amperes(160)).build());
    // What is known of this one fails: it was looked at.
    fuses.add(Fuse.of("F-low", amperes(160)).directVoltage(volts(100)).build());
    CircuitDesigner designer =
        CircuitParts.designer(List.of(TRACTION)).contactors(contactors).fuses(fuses);
    List<PassedOver> passed = designer.run().passedOver();
    assertThat(passed)
        .extracting(PassedOver::type)
        .containsExactly(CircuitPart.Type.FUSE, CircuitPart.Type.CONTACTOR);
    assertThat(passed).allMatch(each -> each.count() == 1);
    assertThat(passed.get(0).missing()).contains("fuse.preArcingCurve", "fuse.directVoltage");
    assertThat(passed.get(0).of()).isEqualTo(12);
    assertThat(passed.get(1).missing()).contains("contactor.openingTime");
    // What is allowed to be provisional is looked at, but a fuse without a curve still cannot be.
    assertThat(designer.allowProvisional().run().passedOver())
        .singleElement()
        .extracting(PassedOver::type)
        .isEqualTo(CircuitPart.Type.FUSE);
  }

  @Test
  void countsParallelRunsOfACableOnce() {
    CircuitDesign design = bareOnly().parallelRunsUpTo(3).run();
    assertThat(design.passedOver().get(0).count()).isEqualTo(4);
    assertThat(design.passedOver().get(0).of()).isEqualTo(4);
  }

  @Test
  void takesTheThickestForTheTemperatureInStillAir() {
    Circuit small =
        Circuit.of("heater", CircuitRole.HEATER)
            .continuousCurrent(amperes(15))
            .length(metres(2))
            .installation(Installation.freeAir(celsius(60)))
            .build();
    CircuitDesign design =
        CircuitParts.designer(List.of(small))
            .cables(List.of(bare(4), bare(6)))
            .withGenericGeometry()
            .run();
    assertThat(design.circuits().get(0).isProvisional()).isFalse();
    assertThat(design.checks()).noneMatch(check -> check.outcome() == Outcome.FAIL);
  }
}
