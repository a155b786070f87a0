package org.wattwright.drive;

import static org.wattwright.units.WorkshopUnits.KILOMETRE_PER_HOUR;
import static org.wattwright.units.WorkshopUnits.NEWTON;
import static org.wattwright.units.WorkshopUnits.NEWTON_METRE;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Speed;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Figure;
import org.wattwright.check.Given;
import org.wattwright.check.Party;
import org.wattwright.check.Source;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Torque;

/**
 * What a vehicle does with full pedal, in the state its pack is in: force at the wheels, top speed,
 * grades, times, and what that means for half-shafts and tyres.
 *
 * <p>Force is the least of motor torque at the voltage that the current leaves, gear torque,
 * inverter, pack and controller limits, and grip; of several gears the one with the most force
 * counts. State of charge and temperature stay as they are. Time t = ∫ m·dv/(F − R) without time
 * lost in gear changes. Source: M. Ehsani et al., Modern Electric, Hybrid Electric and Fuel Cell
 * Vehicles (CRC), chapter 2.
 *
 * <pre>{@code
 * Performance laden = Performance.of(van.withLoad(load.withMass(kilograms(1600)), ladenStance));
 * laden.gradeAt(kilometresPerHour(10));             // 24.2 %, limited by motor torque
 * laden.time(kilometresPerHour(0), kilometresPerHour(50)).time();
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class Performance {
  /** A start on a grade is asked for up to walking pace. */
  static final double WALKING_MS = 5 / 3.6;

  private static final double STEEPEST_ASKED = 1;

  private static final Source EHSANI =
      Source.literature(
          "M. Ehsani et al., Modern Electric, Hybrid Electric and Fuel Cell Vehicles",
          "chapter 2, CRC");

  private final ElectricVehicle vehicle;
  private final DriveModel model;
  private final double soc;

  private Performance(ElectricVehicle vehicle) {
    this.vehicle = vehicle;
    this.model = DriveModel.of(vehicle);
    this.soc = vehicle.state().stateOfCharge().fraction();
  }

  /**
   * Performance of a vehicle.
   *
   * @param vehicle with the state of its pack
   * @return what it does
   */
  public static Performance of(ElectricVehicle vehicle) {
    return new Performance(Objects.requireNonNull(vehicle, "vehicle"));
  }

  private FullPedal peak() {
    return new FullPedal(model, soc, FullPedal.BEST);
  }

  private FullPedal continuous() {
    return new FullPedal(DriveModel.continuous(vehicle), soc, FullPedal.BEST);
  }

  /**
   * Force at the road at a speed.
   *
   * @param speed ≥ 0
   * @return peak and continuous force, road load, gear, and what limits the peak
   * @throws InvalidInputException if the speed is negative
   */
  public WheelForcePoint forceAt(Quantity<Speed> speed) {
    double speedMs = speedMs(speed);
    FullPedal pedal = peak();
    return new WheelForcePoint(
        speed,
        Kind.FORCE.ofSi(pedal.forceN(speedMs)),
        Kind.FORCE.ofSi(continuous().forceN(speedMs)),
        vehicle.roadLoad().at(speed),
        vehicle.driveline().gears().get(pedal.gearAt(speedMs)).name(),
        pedal.limitAt(speedMs));
  }

  /**
   * Force against speed, at equal steps from rest to the highest motor speed.
   *
   * @param steps 1 to 1000
   * @return one point more than steps
   * @throws InvalidInputException if the number is outside its range
   */
  public List<WheelForcePoint> forceCurve(int steps) {
    Require.count("Performance.steps", steps, 1, 1000);
    List<WheelForcePoint> points = new ArrayList<>();
    for (int i = 0; i <= steps; i++) {
      points.add(forceAt(Kind.SPEED.ofSi(model.fastestMs() * i / steps)));
    }
    return List.copyOf(points);
  }

  /**
   * Highest speed held on the level with peak torque.
   *
   * @return speed, and whether motor speed, torque, pack or another limit ends it
   */
  public LimitedSpeed topSpeed() {
    return topSpeedOn(0);
  }

  /**
   * Highest speed held on a grade with peak torque.
   *
   * @param grade tangent of the slope, from −1 to 1
   * @return speed and what limits it; 0 if the vehicle does not climb it
   * @throws InvalidInputException if the grade is outside its range
   */
  public LimitedSpeed topSpeedOn(double grade) {
    return topSpeed(peak(), grade);
  }

  /**
   * Highest speed held on a grade for any length of time by the motor; what the pack gives for long
   * is not looked at.
   *
   * @param grade tangent of the slope, from −1 to 1
   * @return speed and what limits it
   * @throws InvalidInputException if the grade is outside its range, or if no continuous torque is
   *     known
   */
  public LimitedSpeed continuousSpeedOn(double grade) {
    if (!vehicle.motor().hasContinuous()) {
      throw InvalidInputException.of("MotorEnvelope.continuous", "given", "missing");
    }
    return topSpeed(continuous(), grade);
  }

  private static LimitedSpeed topSpeed(FullPedal pedal, double grade) {
    double topMs = pedal.topMs(slope(grade));
    return new LimitedSpeed(Kind.SPEED.ofSi(topMs), pedal.limitAt(topMs));
  }

  /**
   * Steepest grade held at a speed: sin α = (d − f·√(1 − d² + f²))/(1 + f²), d = (F − R_air)/(m·g).
   *
   * <p>At the grip of the driven tyres the force is m·a·cos α, with a the limit on the level, since
   * they carry cos α of the weight: then d = −R_air/(m·g), and f less a/g takes the place of f.
   *
   * @param speed ≥ 0
   * @return grade and what limits it; at most 100 %
   * @throws InvalidInputException if the speed is negative
   */
  public LimitedGrade gradeAt(Quantity<Speed> speed) {
    return gradeAt(peak(), speedMs(speed));
  }

  /**
   * Steepest grade on which the vehicle starts: the least over speeds up to 5 km/h.
   *
   * @return grade and what limits it; at most 100 %
   */
  public LimitedGrade startingGrade() {
    return startingGrade(peak());
  }

  private static LimitedGrade startingGrade(FullPedal pedal) {
    LimitedGrade atRest = gradeAt(pedal, 0);
    LimitedGrade walking = gradeAt(pedal, WALKING_MS);
    return atRest.grade() <= walking.grade() ? atRest : walking;
  }

  private static LimitedGrade gradeAt(FullPedal pedal, double speedMs) {
    double grade = Math.min(STEEPEST_ASKED, Math.tan(pedal.slopeAt(speedMs)));
    return new LimitedGrade(grade, pedal.slopeLimitAt(speedMs));
  }

  /**
   * Time from one speed to another on the level, in the gear with the most force at every moment.
   *
   * @param from ≥ 0
   * @param to above from
   * @return time and distance, or where the vehicle gets stuck
   * @throws InvalidInputException if the speeds are not in order
   */
  public TimeToSpeed time(Quantity<Speed> from, Quantity<Speed> to) {
    return time(peak(), from, to);
  }

  /**
   * Time from one speed to another on the level in one gear.
   *
   * @param gear one of the driveline
   * @param from ≥ 0
   * @param to above from
   * @return time and distance, or where the vehicle gets stuck
   * @throws InvalidInputException if the speeds are not in order or the gear is not one of the
   *     driveline
   */
  public TimeToSpeed timeIn(Gear gear, Quantity<Speed> from, Quantity<Speed> to) {
    int index = vehicle.driveline().gears().indexOf(gear);
    if (index < 0) {
      throw InvalidInputException.of(
          "Performance.gear", "one of " + vehicle.driveline().gears(), gear.toString());
    }
    return time(new FullPedal(model, soc, index), from, to);
  }

  private static TimeToSpeed time(FullPedal pedal, Quantity<Speed> from, Quantity<Speed> to) {
    double fromMs = speedMs(from);
    double toMs = speedMs(to);
    if (!(toMs > fromMs)) {
      throw InvalidInputException.of("Performance.to", "> " + from, to.toString());
    }
    return pedal.between(fromMs, toMs, 0);
  }

  private static double speedMs(Quantity<Speed> speed) {
    return Require.quantity("Performance.speed", speed, KILOMETRE_PER_HOUR).nonNegative();
  }

  private static double slope(double grade) {
    return Math.atan(Require.between("Performance.grade", grade, -1, 1));
  }

  /**
   * Every check: half-shafts, gear torques, grip.
   *
   * @return {@code drive.half-shaft}, {@code drive.gear.…} and {@code drive.traction}
   */
  public List<Check> checks() {
    List<Check> checks = new ArrayList<>();
    checks.add(checkHalfShaft());
    vehicle.driveline().gears().forEach(gear -> checks.add(checkGear(gear)));
    checks.add(checkTraction());
    return List.copyOf(checks);
  }

  /** Most torque that the motor puts into a gear if its limit did not hold it back, from rest. */
  private double motorNm() {
    return vehicle.motor().peakNm(0, Double.POSITIVE_INFINITY);
  }

  /**
   * Peak torque of one half-shaft in the shortest gear, or at tyre slip if that is less, against
   * what it stands. A safety check.
   *
   * @return {@code drive.half-shaft}; NOT_CHECKED if the limit is not known
   */
  public Check checkHalfShaft() {
    double actualNm = halfShaftNm();
    Figure actual = Figure.ofSi(actualNm, NEWTON_METRE);
    CheckBuilder check =
        Check.named("drive.half-shaft", "torque of one half-shaft, " + slipNote())
            .basis(vehicle.driveline().basis().and(vehicle.motor().basis()))
            .basis(vehicle.traction().map(t -> t.stance().basis()).orElse(Basis.MEASURED))
            .safety();
    return vehicle
        .driveline()
        .halfShaftLimit()
        .map(limit -> againstLimit(check, actual, limit))
        .orElseGet(
            () ->
                check
                    .source(Source.requirement("half-shafts hold"))
                    .answeredBy(Party.WORKSHOP)
                    .notChecked(actual, "Driveline.halfShaftLimit"));
  }

  private static Check againstLimit(
      CheckBuilder check, Figure actual, Given<Quantity<Torque>> limit) {
    return check
        .source(limit.source())
        .basis(limit.basis())
        .atMost(actual, Figure.of(limit.value(), NEWTON_METRE));
  }

  private String slipNote() {
    if (vehicle.traction().isEmpty()) {
      return "grip not known";
    }
    return standsWithThisMass(vehicle.traction().get())
        ? "at most at tyre slip"
        : "grip not known of a vehicle of this mass";
  }

  /** The grip of a lighter vehicle would hold the torque lower than it is. */
  private boolean standsWithThisMass(Traction grip) {
    return Traction.isOfMass(grip.stance(), model.load.massKg());
  }

  /** Torque is highest at rest in the shortest gear; grip may hold it lower. */
  private double halfShaftNm() {
    Gear shortest = vehicle.driveline().gears().get(0);
    double driveNm =
        Math.min(motorNm(), shortest.limitNm())
            * vehicle.driveline().overallRatio(shortest)
            * vehicle.driveline().overallEfficiency(shortest)
            / 2;
    double slipNm =
        vehicle.traction().stream()
            .filter(this::standsWithThisMass)
            .flatMap(grip -> grip.stance().extremes().stream().map(grip::standing))
            .mapToDouble(Traction::drivingMs2)
            .map(ms2 -> ms2 * model.load.massKg() * vehicle.driveline().radiusM() / 2)
            .max()
            .orElse(Double.POSITIVE_INFINITY);
    return Math.min(driveNm, slipNm);
  }

  private Check checkGear(Gear gear) {
    Figure actual = Figure.ofSi(motorNm(), NEWTON_METRE);
    CheckBuilder check =
        Check.named("drive.gear." + gear.name(), "peak motor torque into gear " + gear.name())
            .source(Source.dataSheet("gearbox"))
            .basis(vehicle.motor().basis())
            .note("the run limits it to what the gear stands; the controller must do so too")
            .safety();
    return gear.torqueLimit()
        .map(limit -> check.atMost(actual, Figure.of(limit, NEWTON_METRE)))
        .orElseGet(() -> check.notChecked(actual, "Gear.torqueLimit of gear " + gear.name()));
  }

  /**
   * Peak force at rest against the grip of the driven tyres; spinning wheels are a caution, not a
   * failure.
   *
   * @return {@code drive.traction}; NOT_CHECKED if the grip is not known
   */
  public Check checkTraction() {
    Gear shortest = vehicle.driveline().gears().get(0);
    double driveN =
        Math.min(motorNm(), shortest.limitNm()) * vehicle.driveline().newtonsPerNm(shortest);
    CheckBuilder check =
        Check.named("drive.traction", "peak force at rest within the grip of the driven tyres")
            .source(
                Source.literature(
                    "T. D. Gillespie, Fundamentals of Vehicle Dynamics", "chapter 2, SAE 1992"));
    if (vehicle.traction().isEmpty()) {
      return check.notChecked(Figure.ofSi(driveN, NEWTON), "ElectricVehicle.traction");
    }
    return check
        .basis(vehicle.traction().get().stance().basis())
        .note(
            Figure.ofSi(driveN, NEWTON)
                + " of the drive, "
                + Figure.ofSi(model.tractionN, NEWTON)
                + " of grip")
        .recommends(driveN <= model.tractionN);
  }

  /**
   * The working of the force balance at top speed.
   *
   * @return road load, force, speed
   */
  public Worksheet topSpeedWorksheet() {
    LimitedSpeed top = topSpeed();
    double topMs = Kind.SPEED.siValueOf(top.speed());
    Worksheet.Recording recording = Worksheet.record("Top speed");
    vehicle.roadLoad().worksheet(top.speed(), 0).steps().forEach(recording::add);
    recordForce(recording, topMs);
    recording
        .step("v_max", "top speed, limited by " + top.limit())
        .formula("highest v with F ≥ R")
        .with("F", peak().forceN(topMs), NEWTON)
        .with("R", Figure.of(vehicle.roadLoad().at(top.speed()), NEWTON))
        .basis(vehicle.basis())
        .source(EHSANI)
        .gives(topMs, KILOMETRE_PER_HOUR);
    return recording.toWorksheet();
  }

  /**
   * The working of the steepest grade at a speed.
   *
   * @param speed ≥ 0
   * @return force and grade
   * @throws InvalidInputException if the speed is negative
   */
  public Worksheet gradeWorksheet(Quantity<Speed> speed) {
    double speedMs = speedMs(speed);
    FullPedal pedal = peak();
    double weightN = model.load.gradeN(1);
    Worksheet.Recording recording = Worksheet.record("Steepest grade at " + speed);
    recordForce(recording, speedMs);
    double share = (pedal.forceN(speedMs) - model.load.dragN(speedMs)) / weightN;
    recording
        .step("d", "force left by the air over weight")
        .formula("(F − R_a)/(m·g)")
        .with("F", pedal.forceN(speedMs), NEWTON)
        .with("R_a", model.load.dragN(speedMs), NEWTON)
        .with("m·g", weightN, NEWTON)
        .basis(vehicle.basis())
        .gives(Figure.number(share));
    if (pedal.slopeLimitAt(speedMs) == DriveLimit.ADHESION) {
      return gripGrade(recording, speedMs);
    }
    recording
        .step("q", "steepest grade, limited by " + pedal.limitAt(speedMs))
        .formula("tan(asin((d − f·√(1 − d² + f²))/(1 + f²)))")
        .with("d", Figure.number(share))
        .with("f", Figure.number(model.load.rollingN(speedMs, 1) / weightN))
        .basis(vehicle.basis())
        .source(EHSANI)
        .gives(Figure.share(gradeAt(pedal, speedMs).grade()));
    return recording.toWorksheet();
  }

  private Worksheet gripGrade(Worksheet.Recording recording, double speedMs) {
    double weightN = model.load.gradeN(1);
    recording
        .step("q", "steepest grade, limited by the grip of the driven tyres")
        .formula("tan(asin((d − f·√(1 − d² + f²))/(1 + f²)))")
        .with("d", Figure.number(-model.load.dragN(speedMs) / weightN))
        .with("f", Figure.number((model.load.rollingN(speedMs, 1) - model.tractionN) / weightN))
        .basis(vehicle.basis())
        .source(EHSANI)
        .gives(Figure.share(gradeAt(peak(), speedMs).grade()));
    return recording.toWorksheet();
  }

  private void recordForce(Worksheet.Recording recording, double speedMs) {
    FullPedal pedal = peak();
    int index = pedal.gearAt(speedMs);
    Driveline driveline = vehicle.driveline();
    Gear gear = driveline.gears().get(index);
    double forceN = pedal.forceN(speedMs);
    recording
        .step("F", "force at the road in " + gear + ", limited by " + pedal.limitAt(speedMs))
        .formula("T·i·η/r")
        .with("T", forceN / driveline.newtonsPerNm(gear), NEWTON_METRE)
        .with("i", Figure.number(driveline.overallRatio(gear)))
        .with("η", Figure.number(driveline.overallEfficiency(gear)))
        .with("r", driveline.radiusM(), org.wattwright.units.WorkshopUnits.METRE)
        .basis(vehicle.basis())
        .source(EHSANI)
        .gives(forceN, NEWTON);
  }

  /**
   * The vehicle and the state of its pack.
   *
   * @return one line
   */
  @Override
  public String toString() {
    return "performance of " + vehicle;
  }
}
