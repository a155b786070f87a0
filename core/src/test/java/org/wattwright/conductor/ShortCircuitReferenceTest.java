package org.wattwright.conductor;

import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.squareMillimetres;

import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Temperature;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;

/** Adiabatic heating against IEC 60949 and IEC 60364-5-54. */
class ShortCircuitReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("conductor");

  static Stream<ReferenceRow> shortCircuits() {
    return CoveredRows.of("short-circuit");
  }

  @ParameterizedTest
  @MethodSource("shortCircuits")
  void shortCircuitAgrees(ReferenceRow row) {
    ConductorMaterial metal = Conditions.metal(row);
    ShortCircuit fault = ShortCircuit.of(metal);
    switch (row.quantity()) {
      case "adiabatic constant K" ->
          VALIDATION.transcribed(row, metal.adiabatic().constantSi() / 1e6);
      case "volumetric heat capacity" ->
          VALIDATION.transcribed(row, metal.thermal().heatCapacityJPerM3K());
      case "k factor" -> VALIDATION.computed(row, kFactor(row, fault));
      case "1 s short-circuit rating", "short-circuit rating" ->
          VALIDATION.computed(row, rating(row, fault) / 1000);
      case "final conductor temperature, adiabatic" -> VALIDATION.computed(row, finalC(row, fault));
      case "minimum area, adiabatic" -> VALIDATION.computed(row, minimumMm2(row, fault));
      case "smallest standard area that passes" ->
          VALIDATION.computed(row, smallestMm2(row, fault));
      case "withstand joule integral k^2*S^2" -> VALIDATION.computed(row, withstand(row, fault));
      case "non-adiabatic factor epsilon" ->
          VALIDATION.computed(
              row,
              fault
                  .nonAdiabaticFactor(insulation(row), area(row), seconds(row.givenNumber("t")))
                  .orElseThrow());
      default -> {
        NonAdiabatic constants = NonAdiabatic.find(metal, insulation(row)).orElseThrow();
        boolean isX = row.quantity().endsWith("X");
        VALIDATION.transcribed(row, isX ? constants.x() : constants.y());
      }
    }
  }

  private static InsulationMaterial insulation(ReferenceRow row) {
    return row.given("insulation").startsWith("PVC")
        ? InsulationMaterial.PVC
        : InsulationMaterial.XLPE;
  }

  private static Quantity<Area> area(ReferenceRow row) {
    return squareMillimetres(row.givenNumber("S"));
  }

  private static Quantity<Temperature> initial(ReferenceRow row) {
    return celsius(row.has("theta_i") ? row.givenNumber("theta_i") : range(row)[0]);
  }

  private static Quantity<Temperature> end(ReferenceRow row) {
    return celsius(row.has("theta_f") ? row.givenNumber("theta_f") : range(row)[1]);
  }

  /** From a bare condition such as {@code 70 to 160 degC}. */
  private static double[] range(ReferenceRow row) {
    String text =
        row.conditions().keySet().stream()
            .filter(key -> key.contains(" to "))
            .findFirst()
            .orElseThrow();
    String[] ends = text.replace("degC", "").split(" to ");
    return new double[] {Double.parseDouble(ends[0].strip()), Double.parseDouble(ends[1].strip())};
  }

  private static double kFactor(ReferenceRow row, ShortCircuit fault) {
    return Math.sqrt(
        Kind.JOULE_INTEGRAL.siValueOf(
            fault.withstand(squareMillimetres(1), initial(row), end(row))));
  }

  private static double withstand(ReferenceRow row, ShortCircuit fault) {
    return Kind.JOULE_INTEGRAL.siValueOf(fault.withstand(area(row), initial(row), end(row)));
  }

  private static double rating(ReferenceRow row, ShortCircuit fault) {
    double timeS = row.has("t") ? row.givenNumber("t") : 1;
    return Kind.CURRENT.siValueOf(fault.current(area(row), seconds(timeS), initial(row), end(row)));
  }

  private static FaultDuty duty(ReferenceRow row) {
    return FaultDuty.of(amperes(row.givenNumber("I")), seconds(row.givenNumber("t")));
  }

  private static double finalC(ReferenceRow row, ShortCircuit fault) {
    return Kind.TEMPERATURE.siValueOf(
            fault.finalTemperature(area(row), duty(row), initial(row)).orElseThrow())
        - 273.15;
  }

  private static double minimumMm2(ReferenceRow row, ShortCircuit fault) {
    return Kind.AREA.siValueOf(fault.minimumArea(duty(row), initial(row), end(row))) * 1e6;
  }

  private static double smallestMm2(ReferenceRow row, ShortCircuit fault) {
    double minimumMm2 = minimumMm2(row, fault);
    return ConductorSize.metricSizes(StrandClass.STRANDED, WireSurface.PLAIN, Conditions.metal(row))
        .stream()
        .mapToDouble(size -> size.areaM2() * 1e6)
        .filter(areaMm2 -> areaMm2 >= minimumMm2)
        .findFirst()
        .orElseThrow();
  }
}
