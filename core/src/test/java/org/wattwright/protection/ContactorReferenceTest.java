package org.wattwright.protection;

import static org.wattwright.units.Measures.ampereSquaredSeconds;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.milliseconds;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;

import java.util.stream.Stream;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.check.Check;
import org.wattwright.check.Outcome;
import org.wattwright.conductor.FaultDuty;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;

/** Contactors against IEC 60947-4-1 and coordination practice. */
class ContactorReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("protection");

  static Stream<ReferenceRow> contactors() {
    return TopicRows.of("CON");
  }

  @ParameterizedTest
  @MethodSource("contactors")
  void contactorAgrees(ReferenceRow row) {
    switch (row.id()) {
      case "CON-001", "CON-003", "CON-005" ->
          VALIDATION.transcribed(row, category(row).testCurrentFactor());
      case "CON-002", "CON-004", "CON-006" ->
          VALIDATION.transcribed(row, category(row).testTimeConstant(), Kind.TIME);
      case "CON-007" -> VALIDATION.transcribed(row, UtilisationCategory.DC_3.testVoltageFactor());
      case "CON-008", "CON-009" ->
          VALIDATION.notCovered(row, "operational performance is not part of any check here");
      case "CON-010" -> VALIDATION.computed(row, testCurrentA(row));
      case "CON-011" ->
          VALIDATION.computed(
              row,
              FaultDuty.of(amperes(2000), milliseconds(10)).jouleIntegral(),
              Kind.JOULE_INTEGRAL);
      case "CON-012" ->
          VALIDATION.computed(
              row,
              withstanding(row.givenNumber("I2t"))
                  .withstandCurrent(milliseconds(row.givenNumber("t")))
                  .orElseThrow(),
              Kind.CURRENT);
      case "CON-013" -> VALIDATION.computed(row, coordination().outcome().toString());
      case "CON-014" -> VALIDATION.computed(row, fuseClearsFirst());
      default -> throw new AssertionError(row + " is not covered");
    }
  }

  private static UtilisationCategory category(ReferenceRow row) {
    return Stream.of(UtilisationCategory.values())
        .filter(c -> row.has(c.toString()))
        .findFirst()
        .orElseThrow();
  }

  private static double testCurrentA(ReferenceRow row) {
    return Kind.CURRENT.siValueOf(
        BreakRating.ofCategory(category(row), amperes(row.givenNumber("Ie")), volts(400))
            .current());
  }

  private static Contactor withstanding(double a2s) {
    return Contactor.of("row", volts(450)).withstand(ampereSquaredSeconds(a2s)).build();
  }

  private static Check coordination() {
    return withstanding(40_000).checks().withstand(ampereSquaredSeconds(30_000));
  }

  private static String fuseClearsFirst() {
    Check check =
        Contactor.of("row", volts(400))
            .breaks(BreakRating.forward(amperes(1000), volts(400)))
            .build()
            .checks()
            .fuseFirst(
                BreakRating.forward(amperes(1531.9), volts(400)), seconds(0.03), seconds(0.10));
    return check.outcome() == Outcome.PASS ? "fuse clears first" : check.toString();
  }
}
