package org.wattwright.installation;

import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.newtons;
import static org.wattwright.units.Measures.newtonsPerMetre;
import static org.wattwright.units.Measures.newtonsPerMillimetre;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.ReferenceRows;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;

class SpringReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("installation");

  private static final HeadlampAim.Pitch PITCH =
      new HeadlampAim.Pitch(millimetres(8), millimetres(22), millimetres(2300));

  static Stream<ReferenceRow> rows() {
    return ReferenceRows.read("/installation/springs.csv").stream();
  }

  private static WheelSpring spring(double newtonPerMillimetre) {
    return new WheelSpring(newtonsPerMillimetre(newtonPerMillimetre));
  }

  private static double limit(List<Check> checks, int index) {
    return -100 * checks.get(index).limit().map(Figure::number).orElseThrow();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rows")
  void agrees(ReferenceRow row) {
    HeadlampAim aim = new HeadlampAim(-0.012);
    switch (row.id()) {
      case "SPR-001" ->
          VALIDATION.computed(row, spring(20).sinksBy(newtons(60 * 9.81 / 2)), Kind.LENGTH);
      case "SPR-002" ->
          VALIDATION.computed(row, spring(22).sinksBy(newtons(-45 * 9.81 / 2)), Kind.LENGTH);
      case "SPR-003" ->
          VALIDATION.computed(
              row, WheelSpring.behind(newtonsPerMillimetre(60), 0.6).rate(), Kind.SPRING_RATE);
      case "SPR-004" -> VALIDATION.computed(row, spring(25).springRate(0.7), Kind.SPRING_RATE);
      case "SPR-005" ->
          VALIDATION.computed(row, spring(21.6).naturalFrequency(kilograms(300)), Kind.FREQUENCY);
      case "SPR-006" ->
          VALIDATION.computed(
              row,
              new WheelSpring(newtonsPerMetre(300 * 9.81 / 0.150)).naturalFrequency(kilograms(300)),
              Kind.FREQUENCY);
      case "SPR-007" ->
          VALIDATION.computed(
              row,
              spring(18).keepingFrequency(kilograms(260), kilograms(310)).rate(),
              Kind.SPRING_RATE);
      case "SPR-008" ->
          VALIDATION.computed(row, spring(18).naturalFrequency(kilograms(310)), Kind.FREQUENCY);
      case "SPR-009" ->
          VALIDATION.computed(
              row, spring(21.6).onTyre(newtonsPerMillimetre(180)).rate(), Kind.SPRING_RATE);
      case "SPR-010" -> VALIDATION.notCovered(row, "a range of taste: stated, not checked");
      case "SPR-011" -> VALIDATION.computed(row, PITCH.angle(), Kind.ANGLE);
      case "SPR-012" -> VALIDATION.computed(row, 100 * PITCH.change());
      case "SPR-013" ->
          VALIDATION.computed(row, HeadlampAim.cutOffShift(PITCH, metres(10)), Kind.LENGTH);
      case "SPR-014" -> VALIDATION.computed(row, 100 * aim.after(PITCH).inclination());
      case "SPR-015" -> VALIDATION.transcribed(row, limit(aim.initialChecks(), 1));
      case "SPR-016" -> VALIDATION.transcribed(row, limit(aim.initialChecks(), 0));
      case "SPR-017" -> VALIDATION.transcribed(row, limit(aim.loadChecks(), 1));
      case "SPR-018" -> VALIDATION.transcribed(row, limit(aim.loadChecks(), 0));
      default -> throw new AssertionError(row);
    }
  }
}
