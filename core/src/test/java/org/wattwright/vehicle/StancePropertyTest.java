package org.wattwright.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.kilograms;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.metresPerSecondSquared;

import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Acceleration;
import javax.measure.quantity.Angle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.Generator;
import org.wattwright.units.Kind;

/** What holds for every rigid vehicle on two axles. */
class StancePropertyTest {
  private static final double G = 9.80665;

  /** A stance with its inputs. */
  private record Car(double kg, double wheelbaseM, double behindM, double heightM) {
    Stance stance() {
      return Stance.of(
          kilograms(kg),
          metres(wheelbaseM),
          Position.behindFrontAxle(metres(behindM)).aboveGround(metres(heightM)));
    }
  }

  static Stream<Generator> cases() {
    return Generator.cases(150);
  }

  private static Car car(Generator random) {
    double wheelbaseM = random.between(2.0, 3.2);
    return new Car(
        random.between(600, 2500),
        wheelbaseM,
        wheelbaseM * random.between(0.35, 0.65),
        random.between(0.4, 0.8));
  }

  private static double n(AxleForces forces, Axle axle) {
    return Kind.FORCE.siValueOf(forces.on(axle));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void forcesAndMomentsBalanceOnAGradeUnderAcceleration(Generator random) {
    Car car = car(random);
    double grade = random.between(-0.4, 0.4);
    double aMs2 = random.between(-5, 5);
    AxleForces forces = car.stance().axleForces(grade, metresPerSecondSquared(aMs2));
    double slope = Math.atan(grade);
    double square = car.kg() * G * Math.cos(slope);
    assertThat(n(forces, Axle.FRONT) + n(forces, Axle.REAR)).isCloseTo(square, within(1e-8));
    // About the centre of gravity: tractive force m·(a + g·sin θ) acts at the ground, h below.
    double tractive = car.kg() * (aMs2 + G * Math.sin(slope));
    double moment =
        n(forces, Axle.REAR) * (car.wheelbaseM() - car.behindM())
            - n(forces, Axle.FRONT) * car.behindM()
            - tractive * car.heightM();
    assertThat(moment).isCloseTo(0, within(1e-7));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void tractionLimitUsesTheGripOfTheDrivenAxle(Generator random) {
    Car car = car(random);
    double mu = random.between(0.1, 0.7);
    for (Axle axle : Axle.values()) {
      Quantity<Acceleration> limit = car.stance().tractionLimit(axle, mu);
      AxleForces forces = car.stance().axleForces(0, limit);
      double force = car.kg() * Kind.ACCELERATION.siValueOf(limit);
      assertThat(force / n(forces, axle)).isCloseTo(mu, within(1e-11));
      assertThat(car.stance().adhesionNeeded(axle, limit)).isCloseTo(mu, within(1e-11));
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void singleAxleBrakingUsesTheGripOfThatAxle(Generator random) {
    Car car = car(random);
    double mu = random.between(0.1, 0.7);
    for (Axle axle : Axle.values()) {
      double z = car.stance().singleAxleBrakingLimit(axle, mu);
      AxleForces forces = car.stance().axleForces(0, metresPerSecondSquared(-z * G));
      assertThat(car.kg() * z * G / n(forces, axle)).isCloseTo(mu, within(1e-11));
      assertThat(z).isLessThan(mu);
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void heldSlopeUsesTheGripOfTheBrakedAxle(Generator random) {
    Car car = car(random);
    double mu = random.between(0.1, 0.7);
    for (Axle axle : Axle.values()) {
      checkSlope(car, axle, mu, car.stance().uphillHoldingAngle(axle, mu), 1);
      checkSlope(car, axle, mu, car.stance().downhillHoldingAngle(axle, mu), -1);
    }
  }

  private static void checkSlope(Car car, Axle axle, double mu, Quantity<Angle> angle, int sign) {
    double slope = Kind.ANGLE.siValueOf(angle);
    AxleForces forces = car.stance().axleForces(sign * Math.tan(slope), metresPerSecondSquared(0));
    double held = car.kg() * G * Math.sin(slope);
    assertThat(held / n(forces, axle)).isCloseTo(mu, within(1e-11));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void idealForcesSumToTheRateAndUseGripAlike(Generator random) {
    Car car = car(random);
    BrakeBalance balance = BrakeBalance.of(car.stance(), random.between(0.1, 0.6));
    double z = random.between(0.05, 0.9);
    double front = balance.idealForce(Axle.FRONT, z);
    double rear = balance.idealForce(Axle.REAR, z);
    assertThat(front + rear).isCloseTo(z, within(1e-12));
    BrakeBalance ideal = BrakeBalance.of(car.stance(), Math.max(0, rear / z));
    if (rear > 0) {
      assertThat(ideal.adhesionUsed(Axle.FRONT, z)).isCloseTo(z, within(1e-12));
      assertThat(ideal.adhesionUsed(Axle.REAR, z)).isCloseTo(z, within(1e-12));
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void atFirstLockOneAxleUsesAllGripAndNoneUsesMore(Generator random) {
    Car car = car(random);
    BrakeBalance balance = BrakeBalance.of(car.stance(), random.between(0, 1));
    double mu = random.between(0.1, 1.0);
    FirstLock lock = balance.firstLock(mu);
    assertThat(balance.adhesionUsed(lock.axle(), lock.rate())).isCloseTo(mu, within(1e-11));
    assertThat(balance.adhesionUsed(lock.axle().other(), lock.rate()))
        .isLessThanOrEqualTo(mu * (1 + 1e-11));
    assertThat(lock.efficiency()).isBetween(0.0, 1 + 1e-12);
    boolean rearFirst = lock.rate() > balance.equalAdhesionRate();
    assertThat(lock.axle()).isEqualTo(rearFirst ? Axle.REAR : Axle.FRONT);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void axleLiftFindsTheHeightThatMadeItsReading(Generator random) {
    Car car = car(random);
    double rearKg = car.kg() * car.behindM() / car.wheelbaseM();
    WeighedVehicle level =
        WeighedVehicle.withWheelbase(metres(car.wheelbaseM()))
            .frontAxle(kilograms(car.kg() - rearKg))
            .rearAxle(kilograms(rearKg))
            .build();
    double frontM = random.between(0.25, 0.32);
    double rearM = random.between(0.25, 0.32);
    double theta = random.between(0.1, 0.35);
    Axle lifted = random.chance(0.5) ? Axle.REAR : Axle.FRONT;
    double sinkM = random.between(0, 0.01);
    boolean rear = lifted == Axle.REAR;
    double groundM = rear ? frontM : rearM;
    double liftedM = rear ? rearM : frontM;
    double toCentreM = rear ? car.behindM() : car.wheelbaseM() - car.behindM();
    // Turn hub of the lifted axle and centre of gravity about the hub that stays.
    double[] hub = turned(car.wheelbaseM(), liftedM - groundM, theta);
    double[] centre = turned(toCentreM, car.heightM() - groundM, theta);
    double groundKg = car.kg() * (1 - centre[0] / hub[0]);
    double riseM = hub[1] + (groundM - sinkM) - liftedM;
    AxleLift lift =
        AxleLift.of(level, lifted)
            .reading(kilograms(groundKg))
            .rise(metres(riseM))
            .frontLoadedRadius(metres(frontM))
            .rearLoadedRadius(metres(rearM))
            .groundRadiusRaised(metres(groundM - sinkM))
            .build();
    assertThat(Kind.ANGLE.siValueOf(lift.angle())).isCloseTo(theta, within(1e-12));
    assertThat(Kind.LENGTH.siValueOf(lift.height())).isCloseTo(car.heightM(), within(1e-10));
  }

  /** A point at a distance along and above, turned up by an angle. */
  private static double[] turned(double alongM, double aboveM, double angle) {
    return new double[] {
      alongM * Math.cos(angle) - aboveM * Math.sin(angle),
      alongM * Math.sin(angle) + aboveM * Math.cos(angle)
    };
  }
}
