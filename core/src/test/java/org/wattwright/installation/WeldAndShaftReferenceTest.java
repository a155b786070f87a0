package org.wattwright.installation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wattwright.units.Measures.degrees;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.megapascals;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.metresPerSecondSquared;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.newtonMetres;
import static org.wattwright.units.Measures.newtons;
import static org.wattwright.units.Measures.revolutionsPerMinute;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.Given;
import org.wattwright.check.Outcome;
import org.wattwright.drive.Driveline;
import org.wattwright.drive.HalfShaft;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.ReferenceRows;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;
import org.wattwright.vehicle.Axle;
import org.wattwright.vehicle.Position;
import org.wattwright.vehicle.Stance;

/** Fillet welds, shafts and their joints. */
class WeldAndShaftReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("installation");

  private static final ReferenceRows WELDS = ReferenceRows.read("/installation/welds.csv");
  private static final ReferenceRows SHAFTS = ReferenceRows.read("/installation/shafts.csv");

  private static ReferenceRow weld(int number) {
    return WELDS.row(String.format(Locale.ROOT, "WLD-%03d", number));
  }

  private static ReferenceRow shaft(int number) {
    return SHAFTS.row(String.format(Locale.ROOT, "SHF-%03d", number));
  }

  private static FilletWeld beads(double lengthMm, int count) {
    return new FilletWeld(millimetres(3), millimetres(lengthMm), count, megapascals(360), 0.8);
  }

  @Test
  void welds() {
    VALIDATION.computed(weld(1), FilletWeld.throatOf(millimetres(5)), Kind.LENGTH);
    VALIDATION.computed(weld(2), beads(60, 2).designStrength(), Kind.PRESSURE);
    VALIDATION.computed(weld(3), beads(60, 2).resistanceWithoutCraters(), Kind.FORCE);
    VALIDATION.computed(weld(4), beads(60, 2).resistance(), Kind.FORCE);
    VALIDATION.computed(
        weld(5), FilletWeld.forceOfMoment(newtonMetres(600), millimetres(80)), Kind.FORCE);
    VALIDATION.computed(weld(6), beads(50, 1).throatStress(newtons(7500)), Kind.PRESSURE);
  }

  @Test
  void weldCheck() {
    Check kept = beads(60, 2).check(Given.measured(newtons(60000), "calculated"));
    Check broken = beads(60, 2).check(Given.measured(newtons(67343), "calculated"));
    assertThat(kept.outcome()).isEqualTo(Outcome.PASS);
    assertThat(broken.outcome()).isEqualTo(Outcome.FAIL);
    assertThat(broken.code()).isEqualTo("installation.weld");
  }

  private static RoundShaft solid(double diameterMm, double lengthMm, double yieldMpa) {
    return RoundShaft.solid(
        millimetres(diameterMm),
        millimetres(lengthMm),
        Given.dataSheet(megapascals(yieldMpa), "steel"));
  }

  private static RoundShaft tube(double outerMm, double innerMm, double lengthMm) {
    return new RoundShaft(
        millimetres(outerMm),
        millimetres(innerMm),
        millimetres(lengthMm),
        Given.dataSheet(megapascals(350), "steel"));
  }

  @Test
  void torsion() {
    VALIDATION.computed(
        shaft(1), solid(25, 500, 900).torsionStress(newtonMetres(800)), Kind.PRESSURE);
    VALIDATION.computed(
        shaft(2), tube(70, 66, 1400).torsionStress(newtonMetres(1500)), Kind.PRESSURE);
    VALIDATION.computed(shaft(3), solid(25, 500, 900).yieldTorque(), Kind.TORQUE);
    VALIDATION.computed(shaft(4), solid(28, 500, 700).yieldTorque(), Kind.TORQUE);
    VALIDATION.computed(shaft(5), solid(22, 500, 500).yieldTorque(), Kind.TORQUE);
    VALIDATION.computed(shaft(6), solid(25, 500, 900).plasticTorque(), Kind.TORQUE);
    VALIDATION.computed(
        shaft(7),
        RoundShaft.smallestSolidDiameter(newtonMetres(1000), megapascals(300)),
        Kind.LENGTH);
    VALIDATION.computed(
        shaft(8),
        Math.toDegrees(Kind.ANGLE.siValueOf(solid(25, 500, 900).twist(newtonMetres(800)))));
  }

  @Test
  void torsionAgreesWithTheHalfShaftOfTheDrive() {
    assertThat(
            Kind.TORQUE.siValueOf(
                HalfShaft.yieldTorque(millimetres(25), megapascals(900 / Math.sqrt(3)))))
        .isCloseTo(
            Kind.TORQUE.siValueOf(solid(25, 500, 900).yieldTorque()),
            org.assertj.core.data.Offset.offset(1e-9));
  }

  private static double perMinute(RoundShaft shaft) {
    return Kind.ROTATIONAL_SPEED.siValueOf(shaft.criticalSpeed()) * 30 / Math.PI;
  }

  @Test
  void criticalSpeeds() {
    VALIDATION.computed(shaft(9), perMinute(tube(70, 66, 1400)));
    VALIDATION.computed(shaft(10), perMinute(tube(70, 66, 1000)));
    VALIDATION.computed(shaft(11), perMinute(tube(90, 86, 1400)));
    VALIDATION.computed(shaft(12), perMinute(solid(25, 700, 900)));
    VALIDATION.computed(shaft(13), perMinute(solid(25.4, 254, 900)) * 100);
    VALIDATION.notCovered(shaft(14), "rule of thumb, given to the check as its share");
    VALIDATION.computed(shaft(15), verdict(6500));
    VALIDATION.computed(shaft(16), verdict(4000));
  }

  private static String verdict(double perMinute) {
    return tube(70, 66, 1400)
        .checkSpeed(revolutionsPerMinute(perMinute), Basis.MEASURED, RoundShaft.USUAL_SPEED_SHARE)
        .outcome()
        .toString();
  }

  @Test
  void joints() {
    int[] angles = {3, 10, 15};
    for (int i = 0; i < angles.length; i++) {
      VALIDATION.computed(shaft(17 + 2 * i), UniversalJoint.highestSpeedRatio(degrees(angles[i])));
      VALIDATION.computed(shaft(18 + 2 * i), UniversalJoint.lowestSpeedRatio(degrees(angles[i])));
    }
    VALIDATION.computed(shaft(23), UniversalJoint.ripple(degrees(10)));
    VALIDATION.notCovered(shaft(24), "rule of thumb, the limit of a recommendation");
    VALIDATION.notCovered(shaft(25), "rule of thumb, the limit of a recommendation");
    assertThat(propshaft(3)).isEqualTo(Outcome.PASS);
    assertThat(propshaft(0.5)).isEqualTo(Outcome.PASS);
    assertThat(propshaft(3.01)).isEqualTo(Outcome.CAUTION);
    assertThat(propshaft(0.49)).isEqualTo(Outcome.CAUTION);
    assertThat(halfShaft(8)).isEqualTo(Outcome.PASS);
    assertThat(halfShaft(8.01)).isEqualTo(Outcome.CAUTION);
  }

  private static Outcome propshaft(double deg) {
    return UniversalJoint.checkPropshaft(Given.measured(degrees(deg), "gauge")).outcome();
  }

  private static Outcome halfShaft(double deg) {
    return UniversalJoint.checkHalfShaft(Given.measured(degrees(deg), "gauge")).outcome();
  }

  @Test
  void tyresAreTheFuse() {
    Stance stance =
        Stance.of(
                kilograms(1200),
                metres(2.4),
                Position.behindFrontAxle(metres(1.25)).aboveGround(metres(0.55)))
            .withGravity(metresPerSecondSquared(9.81));
    double slipNm =
        2 * Kind.TORQUE.siValueOf(HalfShaft.atTyreSlip(stance, Axle.REAR, 0.9, metres(0.3)));
    VALIDATION.computed(shaft(26), slipNm / 0.9 / 0.3);
    VALIDATION.computed(shaft(27), slipNm);
    Driveline driveline =
        Driveline.fixed(9, 0.96, Given.measured(metres(2 * Math.PI * 0.3), "tape"));
    var motor = driveline.wheelTorque(newtonMetres(200), driveline.gears().get(0));
    VALIDATION.computed(shaft(28), motor, Kind.TORQUE);
    VALIDATION.computed(
        shaft(29), RoundShaft.halfShaftTorque(newtonMetres(slipNm), motor), Kind.TORQUE);
    VALIDATION.computed(
        shaft(30),
        RoundShaft.halfShaftTorque(newtonMetres(slipNm), newtonMetres(3456)),
        Kind.TORQUE);
  }
}
