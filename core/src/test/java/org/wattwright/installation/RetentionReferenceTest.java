package org.wattwright.installation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.milliseconds;
import static org.wattwright.units.WorkshopUnits.MILLISECOND;
import static org.wattwright.units.WorkshopUnits.STANDARD_GRAVITY;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Acceleration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wattwright.check.Check;
import org.wattwright.check.Checks;
import org.wattwright.check.Given;
import org.wattwright.check.Outcome;
import org.wattwright.check.Source;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.ReferenceRows;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;

/** Accelerations of rules, the shock corridor and inertia forces. */
class RetentionReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("installation");

  private static final ReferenceRows ROWS = ReferenceRows.read("/installation/retention.csv");
  private static final Source OWN = Source.requirement("test");

  private static ReferenceRow row(int number) {
    return ROWS.row(String.format(java.util.Locale.ROOT, "RET-%03d", number));
  }

  private static double g(Quantity<Acceleration> value) {
    return STANDARD_GRAVITY.valueOf(value);
  }

  @ParameterizedTest
  @CsvSource({
    "1, LONGITUDINAL_M1_N1", "4, TRANSVERSE_M1_N1", "7, LONGITUDINAL_M2_N2",
    "10, TRANSVERSE_M2_N2", "13, LONGITUDINAL_M3_N3", "16, TRANSVERSE_M3_N3"
  })
  void shockCorridor(int first, ShockCorridor corridor) {
    VALIDATION.transcribed(row(first), g(corridor.lower(milliseconds(55))));
    VALIDATION.transcribed(row(first + 1), g(corridor.upper(milliseconds(60))));
    VALIDATION.transcribed(row(first + 2), g(corridor.upper(milliseconds(0))));
  }

  @Test
  void cornersOfTheCorridor() {
    for (int i = 0; i < 8; i++) {
      VALIDATION.transcribed(
          row(19 + i), MILLISECOND.valueOf(ShockCorridor.timeOf("ABCDEFGH".charAt(i))));
    }
    ShockCorridor corridor = ShockCorridor.LONGITUDINAL_M1_N1;
    VALIDATION.computed(row(27), g(corridor.lower(milliseconds(35))));
    VALIDATION.computed(row(28), g(corridor.upper(milliseconds(100))));
    VALIDATION.computed(row(29), corridor.lowerSpeedChange(), Kind.SPEED);
    VALIDATION.computed(row(30), corridor.upperSpeedChange(), Kind.SPEED);
    assertThat(g(corridor.lower(milliseconds(19)))).isZero();
    assertThat(g(corridor.upper(milliseconds(121)))).isZero();
  }

  @Test
  void theShockTablesHaveNoVerticalAxis() {
    AccelerationRules rules = AccelerationRules.published("un-r100-m1-n1");
    boolean vertical =
        rules.acceleration(LoadDirection.UP).isPresent()
            || rules.acceleration(LoadDirection.DOWN).isPresent();
    VALIDATION.transcribed(row(1), g(rules.acceleration(LoadDirection.FORWARD).orElseThrow()));
    VALIDATION.computed(row(31), vertical ? "STATED" : "NONE");
    VALIDATION.notCovered(row(32), "what the test of the battery must show; an attested item");
  }

  @ParameterizedTest
  @CsvSource({
    "33, iso-12991-m1-n1, FORWARD",
    "34, iso-12991-m1-n1, LEFT",
    "35, iso-12991-m2-n2, FORWARD",
    "36, iso-12991-m2-n2, RIGHT",
    "37, iso-12991-m3-n3, FORWARD",
    "38, iso-12991-m3-n3, LEFT",
    "39, un-r110-m1-n1, FORWARD",
    "40, un-r110-m1-n1, LEFT",
    "41, ncop14, FORWARD",
    "42, ncop14, LEFT",
    "43, ncop14, REARWARD",
    "44, ncop14, UP",
    "45, un-r17-seats, REARWARD"
  })
  void publishedRules(int number, String code, LoadDirection direction) {
    AccelerationRules rules = AccelerationRules.published(code);
    VALIDATION.transcribed(row(number), g(rules.acceleration(direction).orElseThrow()));
  }

  @Test
  void aPublishedRuleSaysWhatWasAddedToIt() {
    AccelerationRules rules =
        AccelerationRules.published("un-r100-m1-n1").with(LoadDirection.UP, gravities(10));
    assertThat(rules.toString())
        .isEqualTo("UN R100 mechanical shock, lower line, up as chosen (M1, N1)");
    assertThat(rules.with(LoadDirection.UP, gravities(11)).name()).isEqualTo(rules.name());
    assertThat(AccelerationRules.of("own", OWN).with(LoadDirection.UP, gravities(10)).toString())
        .isEqualTo("own");
  }

  @Test
  void notOfARoadLaw() {
    VALIDATION.notCovered(row(46), "duration of a seat test; the load case is static");
    VALIDATION.notCovered(row(47), "competition rule; given as data where it applies");
    VALIDATION.notCovered(row(48), "competition rule; given as data where it applies");
    AccelerationRules racing =
        AccelerationRules.of("attachment", OWN).with(LoadDirection.FORWARD, gravities(40));
    VALIDATION.computed(row(49), perFixingN(60, racing));
  }

  private static Quantity<Acceleration> gravities(double value) {
    return STANDARD_GRAVITY.of(value);
  }

  private static double perFixingN(double massKg, AccelerationRules rules) {
    return Kind.FORCE.siValueOf(
        box(massKg, rules)
            .reactions(LoadDirection.FORWARD, false)
            .orElseThrow()
            .fixings()
            .get(0)
            .shear());
  }

  private static Retention box(double massKg, AccelerationRules rules) {
    Bolt bolt = Bolt.of("M8", PropertyClass.CLASS_8_8);
    Footprint base = Footprint.of(metres(0.4), metres(0.4));
    return Retention.of("box", Given.measured(kilograms(massKg), "scales"))
        .on(
            MountingFace.FLOOR,
            FixingGroup.of(
                base,
                List.of(
                    Fixing.at("a", millimetres(0), millimetres(0), bolt),
                    Fixing.at("b", millimetres(400), millimetres(0), bolt),
                    Fixing.at("c", millimetres(400), millimetres(400), bolt),
                    Fixing.at("d", millimetres(0), millimetres(400), bolt))))
        .centre(metres(0.2), metres(0.2), metres(0.1))
        .under(rules)
        .build();
  }

  @ParameterizedTest
  @CsvSource({
    "50, 180, 20",
    "51, 180, 15",
    "52, 180, 10",
    "53, 180, 8",
    "54, 25, 20",
    "55, 12, 15"
  })
  void inertiaForce(int number, double massKg, double accelerationG) {
    AccelerationRules rules =
        AccelerationRules.of("own", OWN).with(LoadDirection.FORWARD, gravities(accelerationG));
    VALIDATION.computed(row(number), 4 * perFixingN(massKg, rules));
  }

  @Test
  void gravityIsTheStandardOneUnlessAnotherIsGiven() {
    AccelerationRules rules =
        AccelerationRules.of("own", OWN)
            .with(
                LoadDirection.FORWARD,
                org.wattwright.units.Measures.metresPerSecondSquared(20 * 9.81));
    VALIDATION.computed(row(56), 4 * perFixingN(180, rules));
  }

  @Test
  void directionsAreSeparateLoadCases() {
    AccelerationRules one =
        AccelerationRules.of("one", OWN).with(LoadDirection.FORWARD, gravities(20));
    AccelerationRules two = one.withLateral(gravities(15));
    boolean added =
        box(180, two)
            .reactions(LoadDirection.FORWARD, false)
            .orElseThrow()
            .highestShear()
            .equals(
                box(180, one).reactions(LoadDirection.FORWARD, false).orElseThrow().highestShear());
    VALIDATION.computed(row(57), added ? "NO" : "YES");
  }

  @Test
  void withoutAChoiceNothingIsChecked() {
    Retention unasked =
        Retention.of("box", Given.measured(kilograms(10), "scales"))
            .on(MountingFace.FLOOR, box(10, AccelerationRules.published("ncop14")).group())
            .centre(metres(0.2), metres(0.2), metres(0.1))
            .build();
    assertThat(unasked.checks())
        .allSatisfy(check -> assertThat(check.outcome()).isEqualTo(Outcome.NOT_CHECKED));
    assertThat(Checks.withCode(unasked.checks(), "installation.acceleration-rules").get(0))
        .extracting(Check::missing)
        .isEqualTo(List.of("retention.accelerationRules"));
  }
}
