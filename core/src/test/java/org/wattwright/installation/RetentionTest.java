package org.wattwright.installation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.megapascals;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.newtonMetres;
import static org.wattwright.units.Measures.newtons;
import static org.wattwright.units.Measures.newtonsPerMillimetre;
import static org.wattwright.units.Measures.standardGravities;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Checks;
import org.wattwright.check.Given;
import org.wattwright.check.Outcome;
import org.wattwright.check.Source;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/** Checks of a retention, its governing fixing, service slip, and the mounts of a drive unit. */
class RetentionTest {
  private static final AccelerationRules RULES = AccelerationRules.published("ncop14");
  private static final Bolt M8 = Bolt.of("M8", PropertyClass.CLASS_8_8);

  private static Panel sheet(Basis basis) {
    Given<javax.measure.Quantity<javax.measure.quantity.Length>> thickness =
        basis == Basis.ESTIMATED
            ? Given.estimated(millimetres(1.5), Source.commonPractice("floor sheet"))
            : Given.measured(millimetres(1.5), "gauge");
    return Panel.of(
            thickness, Given.dataSheet(megapascals(270), "sheet"), millimetres(9), millimetres(24))
        .withEdgeDistance(millimetres(30));
  }

  private static RetentionBuilder box(double massKg, Panel panel) {
    List<Fixing> fixings = new ArrayList<>();
    for (double uMm : new double[] {30, 570}) {
      for (double vMm : new double[] {30, 370}) {
        fixings.add(Fixing.at(uMm + "/" + vMm, millimetres(uMm), millimetres(vMm), M8).in(panel));
      }
    }
    return Retention.of("box", Given.measured(kilograms(massKg), "scales"))
        .on(MountingFace.FLOOR, FixingGroup.of(Footprint.of(metres(0.6), metres(0.4)), fixings))
        .centre(metres(0.3), metres(0.2), metres(0.12))
        .under(RULES);
  }

  private static Check only(List<Check> checks, String code) {
    assertThat(Checks.withCode(checks, code)).hasSize(1);
    return Checks.withCode(checks, code).get(0);
  }

  @Test
  void whatItCarriesIsTheLimitOfItsChecks() {
    double carriedKg =
        Kind.MASS.siValueOf(box(20, sheet(Basis.MEASURED)).build().carriedMass().orElseThrow());
    List<Check> below = box(carriedKg * 0.9, sheet(Basis.MEASURED)).build().checks();
    List<Check> above = box(carriedKg * 1.01, sheet(Basis.MEASURED)).build().checks();
    assertThat(below).noneMatch(check -> check.outcome() == Outcome.FAIL);
    assertThat(above).anyMatch(check -> check.outcome() == Outcome.FAIL);
    FixingUse governing = box(carriedKg, sheet(Basis.MEASURED)).build().governing().orElseThrow();
    assertThat(governing.share()).isCloseTo(1, within(1e-12));
    assertThat(only(above, governing.mode().code()).outcome()).isEqualTo(Outcome.FAIL);
  }

  @Test
  void anEstimatedSheetIsAtMostACaution() {
    List<Check> checks = box(1, sheet(Basis.ESTIMATED)).build().checks();
    assertThat(only(checks, "installation.panel-bearing").outcome()).isEqualTo(Outcome.CAUTION);
  }

  @Test
  void anUnknownPanelIsNotChecked() {
    List<Fixing> bare =
        List.of(
            Fixing.at("a", metres(0), metres(0), M8),
            Fixing.at("b", metres(0.6), metres(0), M8),
            Fixing.at("c", metres(0.3), metres(0.4), M8));
    Retention retention =
        box(10, sheet(Basis.MEASURED))
            .on(MountingFace.FLOOR, FixingGroup.of(Footprint.of(metres(0.6), metres(0.4)), bare))
            .build();
    Check pullOut = only(retention.checks(), "installation.panel-pull-out");
    assertThat(pullOut.outcome()).isEqualTo(Outcome.NOT_CHECKED);
    assertThat(pullOut.missing()).containsExactly("a.panel", "b.panel", "c.panel");
    assertThat(only(retention.checks(), "installation.bolt-shear").outcome())
        .isEqualTo(Outcome.PASS);
    assertThat(retention.carriedMass()).isEmpty();
  }

  @Test
  void aDirectionTheRuleDoesNotStateIsNotChecked() {
    Check rule =
        only(
            box(10, sheet(Basis.MEASURED))
                .under(AccelerationRules.published("un-r100-m1-n1"))
                .build()
                .checks(),
            "installation.acceleration-rules");
    assertThat(rule.outcome()).isEqualTo(Outcome.NOT_CHECKED);
    assertThat(rule.missing()).containsExactly("accelerationRules.up", "accelerationRules.down");
  }

  @Test
  void aPatternThatTurnsFreelyFails() {
    List<Fixing> row =
        List.of(
            Fixing.at("a", metres(0.6), metres(0.1), M8).in(sheet(Basis.MEASURED)),
            Fixing.at("b", metres(0.6), metres(0.3), M8).in(sheet(Basis.MEASURED)));
    Retention retention =
        box(10, sheet(Basis.MEASURED))
            .on(MountingFace.FLOOR, FixingGroup.of(Footprint.of(metres(0.6), metres(0.4)), row))
            .build();
    assertThat(only(retention.checks(), "installation.held").outcome()).isEqualTo(Outcome.FAIL);
    assertThat(only(retention.checks(), "installation.bolt-shear").outcome())
        .isEqualTo(Outcome.NOT_CHECKED);
    assertThat(retention.carriedMass()).isEmpty();
  }

  /** Hung from a ceiling the same box pulls with its weight; on the floor it does not. */
  @Test
  void theFaceDecidesWhatPulls() {
    AccelerationRules down =
        AccelerationRules.of("down", Source.AS_GIVEN)
            .with(LoadDirection.DOWN, standardGravities(3));
    FixingGroup group = box(10, sheet(Basis.MEASURED)).build().group();
    RetentionBuilder on = box(10, sheet(Basis.MEASURED)).under(down);
    double floorN =
        Kind.FORCE.siValueOf(
            on.build().reactions(LoadDirection.DOWN, true).orElseThrow().highestTension());
    double ceilingN =
        Kind.FORCE.siValueOf(
            on.on(MountingFace.CEILING, group)
                .build()
                .reactions(LoadDirection.DOWN, true)
                .orElseThrow()
                .highestTension());
    assertThat(floorN).isZero();
    assertThat(ceilingN).isCloseTo(10 * 4 * 9.80665 / 4, within(1e-9));
  }

  @ParameterizedTest
  @EnumSource(MountingFace.class)
  void directionsOfEveryFaceAreRightHanded(MountingFace face) {
    double[] x = face.components(new double[] {1, 0, 0});
    double[] y = face.components(new double[] {0, 1, 0});
    double[] z = face.components(new double[] {0, 0, 1});
    double determinant =
        x[0] * (y[1] * z[2] - y[2] * z[1])
            - x[1] * (y[0] * z[2] - y[2] * z[0])
            + x[2] * (y[0] * z[1] - y[1] * z[0]);
    assertThat(determinant).isEqualTo(1);
  }

  @Test
  void awayFromTheFace() {
    assertThat(MountingFace.FLOOR.components(new double[] {0, 0, 1})[2]).isEqualTo(1);
    assertThat(MountingFace.CEILING.components(new double[] {0, 0, -1})[2]).isEqualTo(1);
    assertThat(MountingFace.WALL_AHEAD.components(new double[] {-1, 0, 0})[2]).isEqualTo(1);
    assertThat(MountingFace.WALL_BEHIND.components(new double[] {1, 0, 0})[2]).isEqualTo(1);
    assertThat(MountingFace.WALL_LEFT.components(new double[] {0, -1, 0})[2]).isEqualTo(1);
    assertThat(MountingFace.WALL_RIGHT.components(new double[] {0, 1, 0})[2]).isEqualTo(1);
  }

  @Test
  void slipInService() {
    AccelerationRules service =
        AccelerationRules.of("road", Source.commonPractice("1 g braking"))
            .with(LoadDirection.FORWARD, standardGravities(1));
    TorqueCoefficient exact = new TorqueCoefficient(0.2, 0.2, 0.2, Source.AS_GIVEN);
    RetentionBuilder builder =
        box(100, sheet(Basis.MEASURED))
            .clamped(exact.preloadOf(M8.thread(), newtonMetres(8)), 0.15, service);
    Check slip = only(builder.build().checks(), "installation.slip");
    assertThat(Kind.FORCE.siValueOf(slip.actual().orElseThrow().quantity(Kind.FORCE)))
        .isCloseTo(980.665, within(1e-9));
    assertThat(Kind.FORCE.siValueOf(slip.limit().orElseThrow().quantity(Kind.FORCE)))
        .isCloseTo(4 * 0.15 * 5000, within(1e-9));
    assertThat(slip.outcome()).isEqualTo(Outcome.CAUTION);
    assertThat(only(builder.build().checks(), "installation.preload").outcome())
        .isEqualTo(Outcome.CAUTION);
    RetentionBuilder tooTight =
        box(100, sheet(Basis.MEASURED))
            .clamped(
                TorqueCoefficient.ZINC.preloadOf(M8.thread(), newtonMetres(33)), 0.15, service);
    assertThat(only(tooTight.build().checks(), "installation.preload").outcome())
        .isEqualTo(Outcome.FAIL);
    assertThat(only(box(1, sheet(Basis.MEASURED)).build().checks(), "installation.slip").outcome())
        .isEqualTo(Outcome.NOT_CHECKED);
  }

  @Test
  void interactionRulesDiffer() {
    double linearKg =
        Kind.MASS.siValueOf(box(10, heavyPlate()).build().carriedMass().orElseThrow());
    double ellipticKg =
        Kind.MASS.siValueOf(
            box(10, heavyPlate())
                .interaction(InteractionRule.ELLIPTIC)
                .build()
                .carriedMass()
                .orElseThrow());
    assertThat(ellipticKg).isGreaterThan(linearKg);
  }

  private static Panel heavyPlate() {
    return Panel.of(
        Given.measured(millimetres(20), "gauge"),
        Given.dataSheet(megapascals(360), "plate"),
        millimetres(9),
        millimetres(24));
  }

  @Test
  void worksheetEndsWithTheMassItCarries() {
    Retention retention = box(10, sheet(Basis.MEASURED)).build();
    assertThat(retention.worksheet().step("m_max")).isPresent();
    assertThat(retention.worksheet().step("share").orElseThrow().result().number())
        .isEqualTo(retention.governing().orElseThrow().share());
  }

  @Test
  void spreaderHelpsAsFarAsItDoesNotFold() {
    Panel bare = sheet(Basis.MEASURED);
    double last = Kind.FORCE.siValueOf(bare.pullOutResistance(M8));
    for (double thicknessMm : new double[] {1, 2, 3, 5, 8, 12}) {
      SpreaderPlate plate =
          new SpreaderPlate(millimetres(60), millimetres(thicknessMm), megapascals(235));
      double with = Kind.FORCE.siValueOf(bare.withSpreader(plate).pullOutResistance(M8));
      assertThat(with).isGreaterThanOrEqualTo(last);
      last = with;
    }
    assertThat(last).isCloseTo(0.6 * Math.PI * 60 * 1.5 * 270 / 1.25, within(1e-6));
    SpreaderPlate folds = new SpreaderPlate(millimetres(60), millimetres(8), megapascals(235));
    assertThat(Kind.FORCE.siValueOf(bare.withSpreader(folds).pullOutResistance(M8)))
        .isCloseTo(2 * Math.PI * 235 * 64 / 4 / (1 - 2 * 12.0 / (3 * 30)), within(1e-6));
    SpreaderPlate narrow = new SpreaderPlate(millimetres(20), millimetres(8), megapascals(235));
    assertThat(bare.withSpreader(narrow).pullOutResistance(M8))
        .isEqualTo(bare.pullOutResistance(M8));
  }

  private static DriveUnitMounts mounts() {
    return new DriveUnitMounts(
        List.of(
            DriveUnitMount.at("front", metres(0.3), metres(0), newtonsPerMillimetre(400)),
            DriveUnitMount.at("rear", metres(-0.3), metres(0), newtonsPerMillimetre(400))
                .rated(Given.dataSheet(newtons(4000), "mount"))),
        Given.measured(kilograms(60), "scales"),
        metres(0),
        metres(0.1));
  }

  @Test
  void axleTorqueLiftsTheFrontOfTheDriveUnit() {
    List<MountReaction> ahead = mounts().reactions(newtonMetres(1800));
    double weightN = 60 * 9.80665;
    assertThat(Kind.FORCE.siValueOf(ahead.get(0).up()))
        .isCloseTo(1800 / 0.6 - weightN / 2, within(1e-9));
    assertThat(Kind.FORCE.siValueOf(ahead.get(1).up()))
        .isCloseTo(-1800 / 0.6 - weightN / 2, within(1e-9));
    List<MountReaction> back = mounts().reactions(newtonMetres(-1800));
    assertThat(Kind.FORCE.siValueOf(back.get(0).up()))
        .isCloseTo(Kind.FORCE.siValueOf(ahead.get(1).up()), within(1e-9));
  }

  @Test
  void mountsAreCheckedInBothDirections() {
    Given<javax.measure.Quantity<org.wattwright.units.Torque>> strong =
        Given.dataSheet(newtonMetres(2400), "motor");
    Given<javax.measure.Quantity<org.wattwright.units.Torque>> weak =
        Given.dataSheet(newtonMetres(600), "motor");
    List<Check> ahead = mounts().checks(strong, weak);
    assertThat(ahead.get(0).outcome()).isEqualTo(Outcome.NOT_CHECKED);
    assertThat(ahead.get(0).missing()).containsExactly("front.ratedForce");
    assertThat(ahead.get(1).outcome()).isEqualTo(Outcome.FAIL);
    assertThat(ahead.get(1).note()).isEqualTo("driving forward");
    assertThat(mounts().checks(weak, strong).get(1).outcome()).isEqualTo(Outcome.PASS);
    assertThat(mounts().checks(weak, strong).get(1).note()).isEqualTo("driving backward");
  }

  @Test
  void badInput() {
    assertThatThrownBy(() -> Retention.of("box", Given.measured(kilograms(0), "scales")))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("Retention.mass");
    assertThatThrownBy(() -> Retention.of("box", Given.measured(kilograms(1), "scales")).build())
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("centre");
    assertThatThrownBy(() -> MetricThread.parse("M7"))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("M7");
    assertThatThrownBy(() -> MetricThread.parse("8 mm")).isInstanceOf(InvalidInputException.class);
    assertThatThrownBy(() -> PropertyClass.parse("9.8")).isInstanceOf(InvalidInputException.class);
    assertThatThrownBy(() -> M8.withPartialFactor(Double.NaN))
        .isInstanceOf(InvalidInputException.class);
    assertThatThrownBy(() -> sheet(Basis.MEASURED).withEdgeDistance(millimetres(4.5)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("Panel.edgeDistance");
    assertThatThrownBy(
            () ->
                Fixing.at("a", metres(0), metres(0), Bolt.of("M10", PropertyClass.CLASS_8_8))
                    .in(sheet(Basis.MEASURED)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("Fixing a.panel.hole");
    assertThatThrownBy(() -> AccelerationRules.published("nowhere"))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("ncop14");
    assertThatThrownBy(() -> RULES.with(LoadDirection.UP, standardGravities(0)))
        .isInstanceOf(InvalidInputException.class);
  }
}
