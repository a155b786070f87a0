package org.wattwright.vehicle;

import static org.wattwright.units.Measures.degrees;
import static org.wattwright.units.Measures.feet;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.kilometresPerHour;
import static org.wattwright.units.Measures.kilonewtons;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.metresPerSecondSquared;
import static org.wattwright.units.Measures.newtons;
import static org.wattwright.units.Measures.pounds;
import static org.wattwright.units.Measures.poundsForce;
import static org.wattwright.units.Measures.radians;
import static org.wattwright.units.Measures.standardGravities;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.ReferenceRows;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;

/** Understeer gradient and what follows from it. */
class UndersteerReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("vehicle");

  private static final ReferenceRows ROWS = ReferenceRows.read("/vehicle/handling.csv");

  private static ReferenceRow row(String number) {
    return ROWS.row("HND-" + number);
  }

  private static Stance stance(double massKg, double wheelbaseM, double behindM) {
    return Stance.of(
        kilograms(massKg),
        metres(wheelbaseM),
        Position.behindFrontAxle(metres(behindM)).aboveGround(metres(0.5)));
  }

  private static Understeer perDegree(double frontKg, double rearKg, double frontN, double rearN) {
    double massKg = frontKg + rearKg;
    return Understeer.of(
        stance(massKg, 2.30, 2.30 * rearKg / massKg),
        CorneringStiffness.ofAxle(Axle.FRONT, newtons(frontN), degrees(1)),
        CorneringStiffness.ofAxle(Axle.REAR, newtons(rearN), degrees(1)));
  }

  @Test
  void stiffnessPerTyre() {
    Understeer car =
        Understeer.of(
            stance(20105 / 9.81, 2.8, (1 - 0.535) * 2.8).withGravity(metresPerSecondSquared(9.81)),
            CorneringStiffness.ofTyre(Axle.FRONT, kilonewtons(38.92), radians(1)),
            CorneringStiffness.ofTyre(Axle.REAR, kilonewtons(38.25), radians(1)));
    VALIDATION.computed(row("001"), car.gradientPerG(), Kind.ANGLE);
    VALIDATION.computed(row("002"), car.behaviour().name().toLowerCase(Locale.ROOT));
    VALIDATION.computed(row("003"), car.characteristicSpeed().orElseThrow(), Kind.SPEED);
  }

  @Test
  void stiffnessPerTyreInPounds() {
    Position centre = Position.behindFrontAxle(feet(0.45 * 10.5)).aboveGround(metres(0.5));
    // A pound weighs a pound-force under standard gravity; the speed is worked out with 32.174
    // ft/s².
    Understeer car =
        Understeer.of(
            Stance.of(pounds(4520), feet(10.5), centre),
            CorneringStiffness.ofTyre(Axle.FRONT, poundsForce(8750), radians(1)),
            CorneringStiffness.ofTyre(Axle.REAR, poundsForce(8600), radians(1)));
    VALIDATION.computed(row("004"), car.gradientPerG(), Kind.ANGLE);
    double factor = Math.sqrt(32.174 * 0.3048 / 9.80665);
    double speed = Kind.SPEED.siValueOf(car.characteristicSpeed().orElseThrow()) * factor;
    VALIDATION.computed(row("005"), speed * 3.6);
  }

  @Test
  void stiffnessPerAxle() {
    Understeer car =
        Understeer.of(
            stance(1008, 2.2, 1.2),
            CorneringStiffness.ofAxle(Axle.FRONT, kilonewtons(117), radians(1)),
            CorneringStiffness.ofAxle(Axle.REAR, kilonewtons(145), radians(1)));
    VALIDATION.computed(row("006"), Kind.ANGLE.siValueOf(car.gradientPerG()) / 9.80665);
    VALIDATION.computed(row("007"), car.gradientPerG(), Kind.ANGLE);
    VALIDATION.computed(row("008"), car.characteristicSpeed().orElseThrow(), Kind.SPEED);
    double ayMs2 = 0.5 * 9.81;
    double radiusM = 100 / ayMs2;
    VALIDATION.computed(
        row("009"), car.steerAngle(metres(radiusM), metresPerSecondSquared(ayMs2)), Kind.ANGLE);
    VALIDATION.notCovered(row("010"), "kinematics of the test itself");
  }

  @Test
  void movedMassTurnsTheSign() {
    VALIDATION.computed(row("011"), perDegree(530, 470, 1200, 1200).gradientPerG(), Kind.ANGLE);
    Understeer moved = perDegree(450, 550, 1200, 1200);
    VALIDATION.computed(row("012"), moved.gradientPerG(), Kind.ANGLE);
    VALIDATION.computed(row("013"), moved.criticalSpeed().orElseThrow(), Kind.SPEED);
  }

  @Test
  void steeringFigures() {
    Understeer car = perDegree(530, 470, 1100, 1250);
    VALIDATION.computed(row("014"), car.ackermannAngle(metres(20)), Kind.ANGLE);
    VALIDATION.computed(row("016"), car.staticMargin());
    // K = 2° per g: a weight difference of 2° · C with equal stiffness.
    double halfKg = 2.0 / 2 * 1200 / 9.80665;
    Understeer two = perDegree(500 + halfKg, 500 - halfKg, 1200, 1200);
    VALIDATION.computed(
        row("015"), Kind.FREQUENCY.siValueOf(two.yawVelocityGain(kilometresPerHour(80))));
  }

  @Test
  void lateralGravityIsTheUnitOfTheGradient() {
    Understeer car = perDegree(530, 470, 1200, 1200);
    double steer = Kind.ANGLE.siValueOf(car.steerAngle(metres(1e9), standardGravities(1)));
    row("011").assertMatches(Math.toDegrees(steer));
  }
}
