package org.wattwright.conductor;

import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.ohmsPerKilometre;
import static org.wattwright.units.Measures.squareMillimetres;

import java.util.Map;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.check.Given;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;

/** Currents of published tables and their correction factors. */
class AmpacityReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("conductor");

  /** Conductor and outer diameter of typical PVC cables, as the rows of topic 5 state them. */
  private static final Map<Double, double[]> TYPICAL_MM =
      Map.of(
          4.0, new double[] {2.6, 4.8},
          16.0, new double[] {5.3, 8.1},
          35.0, new double[] {7.9, 11.7},
          50.0, new double[] {9.4, 13.9},
          70.0, new double[] {11.2, 16.0});

  static Stream<ReferenceRow> ratings() {
    return CoveredRows.of("rating-tables");
  }

  @ParameterizedTest
  @MethodSource("ratings")
  void ratingTablesAgree(ReferenceRow row) {
    String quantity = row.quantity();
    if (quantity.startsWith("power loss")) {
      double ohmPerM = row.givenNumber("R20") / 1000;
      ConductorSize size =
          ConductorSize.of(
              "row",
              ConductorMaterial.COPPER,
              squareMillimetres(row.givenNumber("S")),
              Given.dataSheet(ohmsPerKilometre(ohmPerM * 1000), "row"));
      double hotOhmPerM = Kind.RESISTANCE_PER_LENGTH.siValueOf(size.resistanceAt(celsius(70)));
      double currentA = row.givenNumber("I");
      VALIDATION.computed(row, currentA * currentA * hotOhmPerM);
      return;
    }
    double conductorC =
        row.has("conductor") ? row.givenNumber("conductor") : row.givenNumber("insulation");
    Quantity<ElectricCurrent> printed =
        table(quantity).printed(tableSize(row), celsius(conductorC)).orElseThrow();
    if (quantity.startsWith("continuous current, single core")
        && TYPICAL_MM.containsKey(row.givenNumber("S"))) {
      VALIDATION.computed(row, balanceAmpere(row));
    } else {
      VALIDATION.transcribed(row, Kind.CURRENT.siValueOf(printed));
    }
  }

  private static AmpacityTable table(String quantity) {
    return switch (quantity) {
      case "continuous current, single core in free air" -> AmpacityTable.VDE_FREE_AIR;
      case "continuous current, multi-core on a surface" -> AmpacityTable.VDE_MULTICORE_ON_SURFACE;
      case "continuous current, three single cores touching in free air (method F)" ->
          AmpacityTable.IEC_THREE_TOUCHING;
      case "allowable current, stranded copper, outside engine space" -> AmpacityTable.BOAT_CABLE;
      case "ampacity, up to three conductors in raceway or cable" -> AmpacityTable.NEC_RACEWAY;
      case "ampacity, single conductor in free air" -> AmpacityTable.NEC_FREE_AIR;
      default -> throw new IllegalArgumentException(quantity);
    };
  }

  private static ConductorSize tableSize(ReferenceRow row) {
    return row.has("S") ? Conditions.size(row) : renamed(row);
  }

  private static ConductorSize renamed(ReferenceRow row) {
    ConductorSize size = Conditions.gauge(row);
    return ConductorSize.of(size.name(), Conditions.metal(row), size.area(), size.resistance());
  }

  private static double balanceAmpere(ReferenceRow row) {
    double areaMm2 = row.givenNumber("S");
    double[] diametersMm = TYPICAL_MM.get(areaMm2);
    ConductorSize size = ConductorSize.metric(squareMillimetres(areaMm2), StrandClass.FLEXIBLE);
    Cable cable =
        Cable.of("typical", size, InsulationMaterial.PVC)
            .conductorDiameter(millimetres(diametersMm[0]))
            .outerDiameter(millimetres(diametersMm[1]))
            .build();
    return Kind.CURRENT.siValueOf(
        SteadyHeating.of(cable, Installation.freeAir(celsius(30))).ampacityAt(celsius(70)));
  }

  static Stream<ReferenceRow> factors() {
    return CoveredRows.of("correction-factors");
  }

  @ParameterizedTest
  @MethodSource("factors")
  void correctionFactorsAgree(ReferenceRow row) {
    String quantity = row.quantity();
    if (quantity.startsWith("ambient")) {
      VALIDATION.computed(
          row, ambient(row.givenNumber("conductor"), upper(row), row.givenNumber("reference")));
    } else if (quantity.startsWith("grouping")) {
      Arrangement arrangement =
          quantity.contains("bundled")
              ? Arrangement.BUNDLED
              : quantity.contains("touching")
                  ? Arrangement.TOUCHING_LAYER
                  : Arrangement.SPACED_LAYER;
      VALIDATION.transcribed(row, arrangement.currentFactor((int) row.givenNumber("circuits")));
    } else if (quantity.startsWith("adjustment")) {
      int conductors = (int) row.givenNumber("conductors");
      double relative =
          Arrangement.CONDUIT.currentFactor(conductors) / Arrangement.CONDUIT.currentFactor(3);
      VALIDATION.transcribed(row, relative * 100);
    } else if (row.has("I1")) {
      double reference = 30;
      double conductorC = row.givenNumber("conductor");
      VALIDATION.computed(
          row, row.givenNumber("I1") * ambient(conductorC, row.givenNumber("Ta2"), reference));
    } else {
      throw new IllegalArgumentException(row.toString());
    }
  }

  /** Range tables are worked out at the top of the range. */
  private static double upper(ReferenceRow row) {
    String air = row.given("air").replaceAll("^[0-9]+-", "");
    return Double.parseDouble(air.replaceAll("[^0-9.].*", ""));
  }

  private static double ambient(double conductorC, double airC, double referenceC) {
    return AmpacityTable.ambientFactor(celsius(conductorC), celsius(airC), celsius(referenceC));
  }
}
