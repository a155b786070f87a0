package org.wattwright.conductor;

import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.millimetres;
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
import org.wattwright.testing.ReferenceRows;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;

/** Adiabatic heating, loop inductance, bend radii against IEC 60949, IEC 60364-5-54 and others. */
class ShortCircuitReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("conductor");

  static Stream<ReferenceRow> shortCircuits() {
    return ReferenceRows.read("/conductor/short-circuit.csv").stream();
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

  static Stream<ReferenceRow> melting() {
    return ReferenceRows.read("/conductor/fusing-current.csv").stream()
        .filter(row -> row.quantity().contains("IEC 60949 form"));
  }

  @ParameterizedTest
  @MethodSource("melting")
  void meltingCurrentAgrees(ReferenceRow row) {
    Quantity<Temperature> melting = ConductorMaterial.COPPER.meltingPoint();
    VALIDATION.computed(
        row,
        Kind.CURRENT.siValueOf(
            ShortCircuit.of(ConductorMaterial.COPPER)
                .current(area(row), seconds(row.givenNumber("t")), celsius(25), melting)));
  }

  static Stream<ReferenceRow> bends() {
    return ReferenceRows.read("/conductor/bend-radius.csv").stream()
        .filter(row -> row.source().startsWith("DIN VDE 0298-3"));
  }

  @ParameterizedTest
  @MethodSource("bends")
  void bendRadiiAgree(ReferenceRow row) {
    if (row.unit().equals("mm")) {
      BendUse use =
          row.given("use").equals("fixed") ? BendUse.FLEXIBLE_FIXED : BendUse.FLEXIBLE_MOVING;
      Quantity<javax.measure.quantity.Length> radius =
          use.minimumRadius(millimetres(row.givenNumber("D")));
      VALIDATION.computed(row, Kind.LENGTH.siValueOf(radius) * 1e3);
      return;
    }
    String text =
        row.conditions().keySet().iterator().next() + row.conditions().values().iterator().next();
    double[] diametersMm =
        text.contains("any")
            ? new double[] {5, 25, 40}
            : text.contains("above")
                ? new double[] {number(text) + 0.1, 60}
                : text.contains(" to ") && !text.contains("up to")
                    ? new double[] {
                      number(text) + 0.1,
                      Double.parseDouble(text.replaceAll(".* to ", "").replace(" mm", ""))
                    }
                    : new double[] {1, number(text)};
    for (double diameterMm : diametersMm) {
      VALIDATION.transcribed(row, bendUse(row).multipleFor(millimetres(diameterMm)));
    }
  }

  private static double number(String text) {
    java.util.regex.Matcher matcher = java.util.regex.Pattern.compile("\\d+").matcher(text);
    return matcher.find() ? Double.parseDouble(matcher.group()) : Double.NaN;
  }

  private static BendUse bendUse(ReferenceRow row) {
    String quantity = row.quantity();
    if (quantity.contains("flexible")) {
      return quantity.contains("free") ? BendUse.FLEXIBLE_MOVING : BendUse.FLEXIBLE_FIXED;
    }
    return quantity.contains("shaped")
        ? BendUse.INSTALLATION_SHAPED_ONCE
        : BendUse.INSTALLATION_LAID;
  }

  static Stream<ReferenceRow> inductances() {
    return ReferenceRows.read("/conductor/inductance.csv").stream()
        .filter(row -> row.quantity().startsWith("loop inductance"))
        .filter(row -> !row.id().equals("L-002"));
  }

  @ParameterizedTest
  @MethodSource("inductances")
  void loopInductanceAgrees(ReferenceRow row) {
    if (row.has("width")) {
      double perM =
          Kind.INDUCTANCE_PER_LENGTH.siValueOf(
              LoopInductance.ofFlatPair(
                  millimetres(row.givenNumber("width")),
                  millimetres(row.givenNumber("gap between centre planes"))));
      VALIDATION.computed(row, perM * 1e6);
      return;
    }
    String radius = row.has("a") ? "a" : "conductor radius a";
    String spacing = row.has("spacing") ? "spacing" : row.has("D") ? "D" : "axis spacing D";
    double perM =
        Kind.INDUCTANCE_PER_LENGTH.siValueOf(
            LoopInductance.ofRoundPair(
                millimetres(2 * row.givenNumber(radius)), millimetres(row.givenNumber(spacing))));
    double lengthM = row.has("one-way") ? row.givenNumber("one-way") : 1;
    VALIDATION.computed(row, perM * lengthM * 1e6);
  }

  @org.junit.jupiter.api.Test
  void twoWireLineOfTheTextbookAgrees() {
    ReferenceRow row = ReferenceRows.read("/conductor/inductance.csv").row("L-002");
    double diameterMm = 2 * Math.sqrt(row.givenNumber("area") * 100 / Math.PI);
    double perM =
        Kind.INDUCTANCE_PER_LENGTH.siValueOf(
            LoopInductance.ofRoundPair(
                millimetres(diameterMm), millimetres(row.givenNumber("spacing") * 1000)));
    VALIDATION.computed(row, perM * row.givenNumber("length") * 1e3);
  }
}
