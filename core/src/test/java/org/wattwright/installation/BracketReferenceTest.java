package org.wattwright.installation;

import static org.wattwright.units.Measures.gigapascals;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.newtonMetres;
import static org.wattwright.units.Measures.newtons;

import java.util.stream.Stream;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.ReferenceRows;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;

class BracketReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("installation");

  private static final BeamSection SQUARE = tube(40, 40, 3);
  private static final BeamSection UPRIGHT = tube(30, 50, 3);
  private static final BeamSection FLAT = tube(50, 30, 3);
  private static final BeamSection HEAVY = tube(60, 60, 4);

  /** Half of 180 kg under 10 g. */
  private static final double RAIL_N = 180 * 10 * 9.80665 / 2;

  static Stream<ReferenceRow> rows() {
    return ReferenceRows.read("/installation/brackets.csv").stream();
  }

  private static BeamSection tube(double width, double height, double wall) {
    return BeamSection.rectangularTube(millimetres(width), millimetres(height), millimetres(wall));
  }

  private static BracketBeam rail(BeamSection section) {
    return new BracketBeam(section, metres(0.9), BracketBeam.Loading.FREE_ENDS_EVEN);
  }

  private static BracketBeam beam(BracketBeam.Loading loading, double lengthM) {
    return new BracketBeam(SQUARE, metres(lengthM), loading);
  }

  private static void secondMoment(ReferenceRow row, BeamSection section) {
    VALIDATION.computed(row, section.secondMomentM4() * 1e12);
  }

  private static void modulus(ReferenceRow row, BeamSection section) {
    VALIDATION.computed(row, section.modulusM3() * 1e9);
  }

  private static void railStress(ReferenceRow row, BeamSection section) {
    VALIDATION.computed(row, rail(section).stress(newtons(RAIL_N)), Kind.PRESSURE);
  }

  private static void railVerdict(ReferenceRow row, BeamSection section) {
    VALIDATION.computed(
        row,
        rail(section)
            .check(newtons(RAIL_N), BracketBeam.Steel.S235.yieldStrength())
            .outcome()
            .name());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rows")
  void agrees(ReferenceRow row) {
    BracketBeam cantilever = beam(BracketBeam.Loading.CANTILEVER, 0.3);
    switch (row.id()) {
      case "SEC-001" -> secondMoment(row, SQUARE);
      case "SEC-002" -> modulus(row, SQUARE);
      case "SEC-003" -> secondMoment(row, UPRIGHT);
      case "SEC-004" -> modulus(row, UPRIGHT);
      case "SEC-005" -> secondMoment(row, FLAT);
      case "SEC-006" -> modulus(row, FLAT);
      case "SEC-007" -> secondMoment(row, HEAVY);
      case "SEC-008" -> modulus(row, HEAVY);
      case "SEC-009" -> VALIDATION.computed(row, SQUARE.area(), Kind.AREA);
      case "SEC-010" -> modulus(row, BeamSection.flatBar(millimetres(40), millimetres(8)));
      case "SEC-011" -> modulus(row, BeamSection.flatBar(millimetres(8), millimetres(40)));
      case "SEC-012" -> modulus(row, BeamSection.roundTube(millimetres(30), millimetres(2.6)));
      case "SEC-013" -> secondMoment(row, SQUARE.withHole(millimetres(11)));
      case "SEC-014" -> modulus(row, SQUARE.withHole(millimetres(11)));
      case "SEC-015" -> VALIDATION.computed(row, cantilever.moment(newtons(3000)), Kind.TORQUE);
      case "SEC-016" -> VALIDATION.computed(row, cantilever.stress(newtons(3000)), Kind.PRESSURE);
      case "SEC-017" ->
          VALIDATION.computed(
              row,
              1
                  / cantilever
                      .check(newtons(3000), BracketBeam.Steel.S235.yieldStrength())
                      .use()
                      .orElseThrow());
      case "SEC-018" ->
          VALIDATION.computed(
              row, cantilever.deflection(newtons(3000), gigapascals(210)), Kind.LENGTH);
      case "SEC-019" ->
          VALIDATION.computed(
              row,
              beam(BracketBeam.Loading.FREE_ENDS_MIDDLE, 0.7).moment(newtons(8000)),
              Kind.TORQUE);
      case "SEC-020" ->
          VALIDATION.computed(
              row,
              beam(BracketBeam.Loading.BUILT_IN_MIDDLE, 0.7).moment(newtons(8000)),
              Kind.TORQUE);
      case "SEC-021" -> VALIDATION.notCovered(row, "the load of a rail is an input of the beam");
      case "SEC-022" ->
          VALIDATION.computed(row, rail(UPRIGHT).moment(newtons(RAIL_N)), Kind.TORQUE);
      case "SEC-023" -> railStress(row, UPRIGHT);
      case "SEC-024" -> railVerdict(row, UPRIGHT);
      case "SEC-025" -> railStress(row, FLAT);
      case "SEC-026" -> railVerdict(row, FLAT);
      case "SEC-027" -> railStress(row, HEAVY);
      case "SEC-028" -> railVerdict(row, HEAVY);
      case "SEC-029" ->
          VALIDATION.computed(
              row, rail(HEAVY).deflection(newtons(RAIL_N), gigapascals(210)), Kind.LENGTH);
      case "SEC-030" ->
          VALIDATION.computed(
              row, SQUARE.stress(newtonMetres(500), newtons(20_000)), Kind.PRESSURE);
      case "SEC-031" ->
          VALIDATION.computed(row, SQUARE.torsionStress(newtonMetres(300)), Kind.PRESSURE);
      case "SEC-032" ->
          VALIDATION.transcribed(row, BracketBeam.Steel.S235.yieldStrength(), Kind.PRESSURE);
      case "SEC-033" ->
          VALIDATION.transcribed(row, BracketBeam.Steel.S355.yieldStrength(), Kind.PRESSURE);
      default -> throw new AssertionError(row);
    }
  }
}
