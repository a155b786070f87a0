package org.wattwright.vehicle;

import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.kilometresPerHour;
import static org.wattwright.units.Measures.metres;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.wattwright.check.Check;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.ReferenceRows;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;

/** Brake balance, single-axle braking and prescribed stops. */
class BrakingReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("vehicle");

  private static final ReferenceRows ROWS = ReferenceRows.read("/vehicle/braking.csv");

  /** Car C: rear static share 0.44, h/L = 0.24; any wheelbase does. */
  private static final BrakeBalance CAR_C =
      BrakeBalance.of(stance(2.5, 0.44 * 2.5, 0.24 * 2.5), 0.30);

  private static final Stance CAR_L230 = stance(2.30, 1.10, 0.55);

  private static ReferenceRow row(String number) {
    return ROWS.row("BRK-" + number);
  }

  private static Stance stance(double wheelbaseM, double behindM, double heightM) {
    return Stance.of(
        kilograms(1000),
        metres(wheelbaseM),
        Position.behindFrontAxle(metres(behindM)).aboveGround(metres(heightM)));
  }

  @Test
  void prescribedStops() {
    StoppingRule service = StoppingRule.R13H_SERVICE;
    StoppingRule secondary = StoppingRule.R13H_SECONDARY;
    VALIDATION.transcribed(row("001"), service.deceleration(), Kind.ACCELERATION);
    VALIDATION.transcribed(row("004"), secondary.deceleration(), Kind.ACCELERATION);
    VALIDATION.transcribed(row("006"), 100 * ParkingBrake.USUAL_GRADE);
    VALIDATION.computed(row("037"), service.brakingDistance(), Kind.LENGTH);
    for (String id : new String[] {"003", "010", "007", "008", "009", "011", "015", "018", "019"}) {
      VALIDATION.notCovered(row(id), "a national or older limit that is given as data");
    }
    for (String id : new String[] {"002", "005"}) {
      VALIDATION.notCovered(row(id), "distance with the build-up that the rule rounds");
    }
    VALIDATION.computed(row("038"), service.heat(kilograms(1080)), Kind.ENERGY);
  }

  @Test
  void meanFullyDevelopedDeceleration() {
    VALIDATION.computed(
        row("012"),
        StoppingRule.meanDeceleration(kilometresPerHour(100), metres(37)),
        Kind.ACCELERATION);
  }

  @Test
  void adhesionLine() {
    VALIDATION.transcribed(row("013"), BrakeBalance.leastRate(0.2));
    VALIDATION.transcribed(row("014"), BrakeBalance.leastRate(0.8));
    Check order = CAR_C.checkLockOrder();
    VALIDATION.transcribed(row("017"), order.limit().orElseThrow().number());
    VALIDATION.transcribed(row("016"), BrakeBalance.LOWEST_RATE);
  }

  @Test
  void idealShareWithRollingResistance() {
    BrakeBalance car = BrakeBalance.of(stance(2.87, 1.27, 0.508), 0.40);
    VALIDATION.computed(row("020"), 100 * car.idealShare(Axle.FRONT, 0.8 + 0.02));
    VALIDATION.computed(row("021"), car.firstLock(0.8).axle().toString());
  }

  @Test
  void idealForces() {
    VALIDATION.computed(row("022"), CAR_C.idealForce(Axle.FRONT, 0.3));
    VALIDATION.computed(row("023"), CAR_C.idealForce(Axle.REAR, 0.3));
    VALIDATION.computed(row("024"), CAR_C.idealForce(Axle.FRONT, 0.8));
    VALIDATION.computed(row("025"), CAR_C.idealForce(Axle.REAR, 0.8));
    VALIDATION.computed(row("026"), CAR_C.equalAdhesionRate());
  }

  @Test
  void adhesionUsed() {
    VALIDATION.computed(row("027"), CAR_C.adhesionUsed(Axle.FRONT, 0.5));
    VALIDATION.computed(row("028"), CAR_C.adhesionUsed(Axle.REAR, 0.5));
    VALIDATION.computed(row("029"), CAR_C.adhesionUsed(Axle.REAR, 0.7));
    BrakeBalance rearOnly = BrakeBalance.of(stance(2.5, 0.48 * 2.5, 0.24 * 2.5), 1);
    VALIDATION.computed(row("036"), rearOnly.adhesionUsed(Axle.REAR, 0.15));
  }

  @Test
  void firstLock() {
    FirstLock dry = CAR_C.firstLock(0.8);
    VALIDATION.computed(row("030"), dry.rate());
    VALIDATION.computed(row("031"), 100 * dry.efficiency());
    VALIDATION.computed(row("032"), CAR_C.firstLock(0.3).rate());
  }

  @Test
  void singleAxleBraking() {
    VALIDATION.computed(row("033"), CAR_L230.singleAxleBrakingLimit(Axle.REAR, 0.3));
    VALIDATION.computed(row("034"), CAR_L230.singleAxleBrakingLimit(Axle.FRONT, 0.3));
    VALIDATION.computed(row("035"), CAR_L230.singleAxleBrakingLimit(Axle.REAR, 0.8));
  }
}
