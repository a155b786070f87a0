package org.wattwright.vehicle;

import static org.wattwright.units.Measures.kilograms;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.wattwright.check.Outcome;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.ReferenceRows;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;

/** Conventional masses and the rule of the plates. */
class MassReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("vehicle");

  private static final ReferenceRows ROWS = ReferenceRows.read("/vehicle/masses.csv");

  private static ReferenceRow row(String number) {
    return ROWS.row("MAS-" + number);
  }

  @Test
  void conventionalMasses() {
    VALIDATION.transcribed(row("001"), OccupantMass.SEATED_75_KG.body(), Kind.MASS);
    VALIDATION.transcribed(row("003"), OccupantMass.SEATED_75_KG.body(), Kind.MASS);
    VALIDATION.transcribed(row("010"), OccupantMass.WITH_LUGGAGE_68_7_KG.body(), Kind.MASS);
    VALIDATION.transcribed(row("011"), OccupantMass.WITH_LUGGAGE_68_7_KG.luggage(), Kind.MASS);
    VALIDATION.notCovered(row("013"), "a rule that is given as data");
  }

  @Test
  void sumOfPlates() {
    VALIDATION.computed(row("026"), verdict(row("026")));
    VALIDATION.computed(row("027"), verdict(row("027")));
  }

  private static String verdict(ReferenceRow row) {
    AxleLimits limits =
        AxleLimits.builder()
            .frontAxle(kilograms(number(row, "front limit")))
            .rearAxle(kilograms(number(row, "rear limit")))
            .grossMass(kilograms(number(row, "maximum laden mass")))
            .build();
    return limits.checkPlates().outcome() == Outcome.PASS ? "pass" : "fail";
  }

  /** These conditions read "front limit 620 kg". */
  private static double number(ReferenceRow row, String start) {
    String text =
        row.conditions().keySet().stream()
            .filter(k -> k.startsWith(start))
            .findFirst()
            .orElseThrow();
    return Double.parseDouble(text.substring(start.length()).replace("kg", "").strip());
  }
}
