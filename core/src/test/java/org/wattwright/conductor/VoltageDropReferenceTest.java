package org.wattwright.conductor;

import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.feet;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.ohmsPerKilometre;
import static org.wattwright.units.Measures.squareMillimetres;

import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Temperature;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.check.Given;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;

/** Voltage drop, loop resistance and loss of runs. */
class VoltageDropReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("conductor");

  static Stream<ReferenceRow> drops() {
    return CoveredRows.of("voltage-drop").filter(row -> row.id().compareTo("V-009") >= 0);
  }

  @ParameterizedTest
  @MethodSource("drops")
  void voltageDropsAgree(ReferenceRow row) {
    boolean tinned = row.quantity().contains("tinned");
    boolean stranded = row.has("class") && row.given("class").equals("2");
    if (row.quantity().startsWith("smallest size")) {
      VALIDATION.computed(row, smallestForDrop(row));
      return;
    }
    ConductorSize size =
        ConductorSize.metric(
            squareMillimetres(row.givenNumber("S")),
            stranded ? StrandClass.STRANDED : StrandClass.FLEXIBLE,
            tinned ? WireSurface.TINNED : WireSurface.PLAIN,
            ConductorMaterial.COPPER);
    Cable cable = Cable.of("row", size, InsulationMaterial.XLPE).build();
    Quantity<Temperature> hot = celsius(row.givenNumber("conductor"));
    if (tinned) {
      ConductorRun run =
          ConductorRun.of(cable, metres(row.givenNumber("length"))).withReturnLength(metres(0));
      VALIDATION.computed(
          row, Kind.VOLTAGE.siValueOf(run.dropAt(amperes(row.givenNumber("I")), hot)));
    } else if (stranded) {
      ConductorRun run = ConductorRun.of(cable, metres(1));
      VALIDATION.computed(row, Kind.VOLTAGE.siValueOf(run.dropAt(amperes(1), hot)) * 1000);
    } else {
      dcRun(row, cable, hot);
    }
  }

  private static void dcRun(ReferenceRow row, Cable cable, Quantity<Temperature> hot) {
    Joint contacts =
        Joint.of(
            "contacts",
            Given.dataSheet(milliohms(row.givenNumber("contacts") / 1000), "reference row"));
    ConductorRun run =
        ConductorRun.of(cable, metres(row.givenNumber("one-way")))
            .withJoints(java.util.List.of(contacts));
    Quantity<ElectricCurrent> current = amperes(row.givenNumber("I"));
    switch (row.unit()) {
      case "mohm" ->
          VALIDATION.computed(row, Kind.RESISTANCE.siValueOf(run.loopResistanceAt(hot)) * 1000);
      case "V" -> VALIDATION.computed(row, Kind.VOLTAGE.siValueOf(run.dropAt(current, hot)));
      default -> VALIDATION.computed(row, Kind.POWER.siValueOf(run.lossAt(current, hot)));
    }
  }

  private static double smallestForDrop(ReferenceRow row) {
    for (ConductorSize size :
        ConductorSize.metricSizes(
            StrandClass.FLEXIBLE, WireSurface.PLAIN, ConductorMaterial.COPPER)) {
      Cable cable = Cable.of("row", size, InsulationMaterial.XLPE).build();
      ConductorRun run = ConductorRun.of(cable, metres(row.givenNumber("one-way")));
      double dropV =
          Kind.VOLTAGE.siValueOf(
              run.dropAt(amperes(row.givenNumber("I")), celsius(row.givenNumber("conductor"))));
      if (dropV <= row.givenNumber("limit")) {
        return size.areaM2() * 1e6;
      }
    }
    return Double.NaN;
  }

  static Stream<ReferenceRow> examples() {
    return CoveredRows.of("voltage-drop").filter(row -> row.id().compareTo("V-009") < 0);
  }

  /** Worked examples of the FAA and of practice after the NEC. */
  @ParameterizedTest
  @MethodSource("examples")
  void workedExamplesAgree(ReferenceRow row) {
    switch (row.id()) {
      case "V-006" -> VALIDATION.computed(row, hotLengthFt(row));
      case "V-007" ->
          VALIDATION.computed(row, dropV(ohmPerFoot(row.givenNumber("K") / 6530), 200, 15));
      case "V-008" -> VALIDATION.computed(row, dropV(ConductorSize.awgStranded(10), 200, 10));
      default ->
          VALIDATION.computed(
              row,
              dropV(
                  ohmPerFoot(row.givenNumber("r")),
                  row.givenNumber("length"),
                  row.givenNumber("I")));
    }
  }

  /** The length that drops as much, hot, as another does at 20 °C. */
  private static double hotLengthFt(ReferenceRow row) {
    double lengthFt = row.givenNumber("L1");
    Cable cable = Cable.of("row", ConductorSize.awg(10), InsulationMaterial.PVC).build();
    ConductorRun run = ConductorRun.of(cable, feet(lengthFt));
    double coldV = Kind.VOLTAGE.siValueOf(run.dropAt(amperes(20), celsius(20)));
    double hotV = Kind.VOLTAGE.siValueOf(run.dropAt(amperes(20), celsius(row.givenNumber("T2"))));
    return lengthFt * coldV / hotV;
  }

  /** A size by its resistance at the temperature of the example; the area does not matter. */
  private static ConductorSize ohmPerFoot(double ohm) {
    return ConductorSize.of(
        "row",
        ConductorMaterial.COPPER,
        squareMillimetres(1),
        Given.dataSheet(ohmsPerKilometre(ohm / 0.3048 * 1000), "reference row"));
  }

  private static double dropV(ConductorSize size, double wholeRunFt, double currentA) {
    Cable cable = Cable.of("row", size, InsulationMaterial.PVC).build();
    ConductorRun run = ConductorRun.of(cable, feet(wholeRunFt)).withReturnLength(metres(0));
    return Kind.VOLTAGE.siValueOf(run.dropAt(amperes(currentA), celsius(20)));
  }
}
