package org.wattwright.conductor;

import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.squareMillimetres;

import java.util.stream.Stream;
import javax.measure.Quantity;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;

/** Bend radii against DIN VDE 0298-3 and the NEC; loop inductance against handbooks. */
class LayingReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("conductor");

  static Stream<ReferenceRow> bends() {
    return CoveredRows.of("bend-radius");
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
    if (row.quantity().contains("above 1000 V")) {
      boolean shielded = row.has("shielded or lead covered");
      BendUse use = shielded ? BendUse.ABOVE_1000_V_SHIELDED : BendUse.ABOVE_1000_V_UNSHIELDED;
      VALIDATION.transcribed(row, use.multipleFor(millimetres(12)));
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
    if (quantity.contains("shaped")) {
      return BendUse.INSTALLATION_SHAPED_ONCE;
    }
    org.assertj.core.api.Assertions.assertThat(quantity).endsWith("laid");
    return BendUse.INSTALLATION_LAID;
  }

  static Stream<ReferenceRow> inductances() {
    return CoveredRows.of("inductance");
  }

  @ParameterizedTest
  @MethodSource("inductances")
  void loopInductanceAgrees(ReferenceRow row) {
    switch (row.id()) {
      case "L-001" -> VALIDATION.computed(row, geometricMeanRadius());
      case "L-002" -> VALIDATION.computed(row, twoWireLineMillihenry(row));
      case "L-009" -> VALIDATION.computed(row, totalResistanceMilliohm(row));
      default -> pair(row);
    }
  }

  /** Of the radius: what the formula of a pair, 1 m apart, takes for ln(D/r′). */
  private static double geometricMeanRadius() {
    double perM =
        Kind.INDUCTANCE_PER_LENGTH.siValueOf(LoopInductance.ofRoundPair(millimetres(2), metres(1)));
    return 1000 * Math.exp(-perM * Math.PI / (4e-7 * Math.PI));
  }

  private static double totalResistanceMilliohm(ReferenceRow row) {
    ConductorSize size = ConductorSize.metric(squareMillimetres(50), StrandClass.FLEXIBLE);
    Cable cable = Cable.of("row", size, InsulationMaterial.XLPE).build();
    double ohm =
        Kind.RESISTANCE.siValueOf(
            ConductorRun.of(cable, metres(row.givenNumber("one-way")))
                .loopResistanceAt(celsius(row.givenNumber("cable"))));
    return ohm * 1000 + row.givenNumber("source resistance");
  }

  private static void pair(ReferenceRow row) {
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

  private static double twoWireLineMillihenry(ReferenceRow row) {
    double diameterMm = 2 * Math.sqrt(row.givenNumber("area") * 100 / Math.PI);
    double perM =
        Kind.INDUCTANCE_PER_LENGTH.siValueOf(
            LoopInductance.ofRoundPair(
                millimetres(diameterMm), metres(row.givenNumber("spacing"))));
    return perM * row.givenNumber("length") * 1e3;
  }
}
