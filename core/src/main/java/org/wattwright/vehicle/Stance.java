package org.wattwright.vehicle;

import static org.wattwright.units.WorkshopUnits.DEGREE;
import static org.wattwright.units.WorkshopUnits.KILOGRAM;
import static org.wattwright.units.WorkshopUnits.METRE;
import static org.wattwright.units.WorkshopUnits.METRE_PER_SECOND_SQUARED;
import static org.wattwright.units.WorkshopUnits.NEWTON;

import java.io.Serializable;
import java.util.List;
import java.util.stream.DoubleStream;
import javax.measure.Quantity;
import javax.measure.quantity.Acceleration;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.Source;
import org.wattwright.check.StepBuilder;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

/**
 * A vehicle as a rigid body on two axles: what accelerating, braking and grades do to the loads.
 *
 * <p>a₁, a₂: centre of gravity to front and rear axle; L = a₁ + a₂; h: its height; θ: grade,
 * positive uphill; a: acceleration, positive forward. Suspension and tyre travel, air forces and
 * rolling resistance are left out. Source: R. N. Jazar, Vehicle Dynamics: Theory and Application
 * (Springer 2008), sections 2.1 to 2.6; T. D. Gillespie, Fundamentals of Vehicle Dynamics (SAE
 * 1992), chapter 1.
 *
 * <p>An estimated height has a band; {@link #extremes} gives the stances at its ends, and checks
 * take the worse. Immutable and thread-safe.
 */
public final class Stance implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final Source JAZAR =
      Source.literature(
          "R. N. Jazar, Vehicle Dynamics: Theory and Application", "section 2.6, Springer 2008");

  private final double massKg;
  private final double wheelbaseM;
  private final double behindM;
  private final WeighedVehicle.Height height;
  private final double gravity;

  private Stance(
      double massKg,
      double wheelbaseM,
      double behindM,
      WeighedVehicle.Height height,
      double gravity) {
    this.massKg = massKg;
    this.wheelbaseM = wheelbaseM;
    this.behindM = behindM;
    this.height = height;
    this.gravity = gravity;
  }

  static Stance of(LoadKernel.Sums sums, double wheelbaseM) {
    return new Stance(
        sums.totalKg(), wheelbaseM, sums.behindM(), sums.height(), Si.GRAVITY_M_PER_S2);
  }

  /**
   * A stance from its figures.
   *
   * @param mass of the vehicle with its load, &gt; 0 kg
   * @param wheelbase &gt; 0 m
   * @param centreOfGravity with its height above ground, &gt; 0 m
   * @return the stance, under standard gravity
   * @throws InvalidInputException if an argument is outside its range or the height is missing
   */
  public static Stance of(
      Quantity<Mass> mass, Quantity<Length> wheelbase, Position centreOfGravity) {
    double massKg = Require.quantity("Stance.mass", mass, KILOGRAM).positive();
    double wheelbaseM = Require.quantity("Stance.wheelbase", wheelbase, METRE).positive();
    double heightM = centreOfGravity.heightM();
    if (!(heightM > 0)) {
      throw InvalidInputException.of(
          "Stance.centreOfGravity.aboveGround",
          "> 0 m",
          centreOfGravity.aboveGround().map(Object::toString).orElse("missing"));
    }
    WeighedVehicle.Height height =
        new WeighedVehicle.Height(heightM, heightM, heightM, Basis.MEASURED);
    return new Stance(massKg, wheelbaseM, centreOfGravity.behindM(), height, Si.GRAVITY_M_PER_S2);
  }

  /**
   * The same under another gravity; standard gravity, 9.80665 m/s², unless told.
   *
   * @param acceleration of free fall, &gt; 0 m/s²
   * @return a new stance
   * @throws InvalidInputException if it is not positive
   */
  public Stance withGravity(Quantity<Acceleration> acceleration) {
    double g =
        Require.quantity("Stance.gravity", acceleration, METRE_PER_SECOND_SQUARED).positive();
    return new Stance(massKg, wheelbaseM, behindM, height, g);
  }

  /**
   * The stances between which the truth lies when the height has a band: an estimate, or an axle
   * lift with its tolerances.
   *
   * @return this one alone if the height has no band; else lowest and highest
   */
  public List<Stance> extremes() {
    return DoubleStream.of(height.lowM(), height.highM())
        .distinct()
        .mapToObj(this::withHeightM)
        .toList();
  }

  private Stance withHeightM(double heightM) {
    WeighedVehicle.Height fixed =
        new WeighedVehicle.Height(heightM, heightM, heightM, height.basis());
    return new Stance(massKg, wheelbaseM, behindM, fixed, gravity);
  }

  /**
   * What the stance rests on.
   *
   * @return weakest basis of its inputs
   */
  public Basis basis() {
    return height.basis();
  }

  /**
   * Mass of the vehicle with its load.
   *
   * @return in kg
   */
  public Quantity<Mass> mass() {
    return Si.mass(massKg);
  }

  /**
   * Height of the centre of gravity.
   *
   * @return in m; typical value of an estimate
   */
  public Quantity<Length> height() {
    return Si.length(heightM());
  }

  /**
   * Static share of an axle in the weight.
   *
   * @param axle front or rear
   * @return 0 to 1 while neither axle lifts
   */
  public double share(Axle axle) {
    return axle == Axle.REAR ? behindM / wheelbaseM : 1 - behindM / wheelbaseM;
  }

  /**
   * Forces on the axles at rest on the level.
   *
   * @return front m·g·a₂/L, rear m·g·a₁/L
   */
  public AxleForces axleForces() {
    return axleForces(0, METRE_PER_SECOND_SQUARED.of(0));
  }

  /**
   * Forces on the axles on a grade and under acceleration.
   *
   * <p>Front m·g·(a₂·cos θ − h·sin θ)/L − m·a·h/L; rear the rest of m·g·cos θ.
   *
   * @param grade tangent of the slope, 0.2 for 20 %, positive uphill; from −1 to 1
   * @param acceleration along the road, positive forward, negative when braking
   * @return square to the road; negative on an axle that would lift
   * @throws InvalidInputException if the grade is outside its range
   */
  public AxleForces axleForces(double grade, Quantity<Acceleration> acceleration) {
    return axleForces(grade, acceleration, Recorder.OFF);
  }

  /**
   * Forces on the axles on a grade and under acceleration, with the working.
   *
   * @param grade tangent of the slope, positive uphill; from −1 to 1
   * @param acceleration along the road, positive forward
   * @param recorder takes down the steps
   * @return as {@link #axleForces(double, Quantity)}
   */
  public AxleForces axleForces(
      double grade, Quantity<Acceleration> acceleration, Recorder recorder) {
    double slope = Math.atan(Require.between("Stance.grade", grade, -1, 1));
    double accelerationMs2 = Kind.ACCELERATION.siValueOf(acceleration);
    double weightN = massKg * gravity;
    double frontN =
        weightN
                * ((wheelbaseM - behindM) * Math.cos(slope) - heightM() * Math.sin(slope))
                / wheelbaseM
            - massKg * accelerationMs2 * heightM() / wheelbaseM;
    double rearN = weightN * Math.cos(slope) - frontN;
    if (recorder.isOn()) {
      forceStep(recorder, "W_f", "front axle force")
          .formula("m·g·(a_2·cos(θ) - h·sin(θ))/L - m·a·h/L")
          .with("a_2", wheelbaseM - behindM, METRE)
          .with("θ", Figure.of(Kind.ANGLE.ofSi(slope), Kind.ANGLE))
          .with("a", Figure.of(acceleration, METRE_PER_SECOND_SQUARED))
          .gives(frontN, NEWTON);
      step(recorder, "W_r", "rear axle force")
          .formula("m·g·cos(θ) - W_f")
          .with("m", massKg, KILOGRAM)
          .with("g", gravity, METRE_PER_SECOND_SQUARED)
          .with("θ", Figure.of(Kind.ANGLE.ofSi(slope), Kind.ANGLE))
          .with("W_f", frontN, NEWTON)
          .gives(rearN, NEWTON);
    }
    return new AxleForces(Kind.FORCE.ofSi(frontN), Kind.FORCE.ofSi(rearN));
  }

  StepBuilder step(Recorder recorder, String symbol, String meaning) {
    return recorder.step(symbol, meaning).basis(height.basis()).source(JAZAR);
  }

  private StepBuilder forceStep(Recorder recorder, String symbol, String meaning) {
    return step(recorder, symbol, meaning)
        .with("m", massKg, KILOGRAM)
        .with("g", gravity, METRE_PER_SECOND_SQUARED)
        .with("h", heightM(), METRE)
        .with("L", wheelbaseM, METRE);
  }

  /**
   * Load that braking moves from the rear axle to the front axle: m·a·h/L.
   *
   * @param deceleration ≥ 0 m/s²
   * @return in N
   * @throws InvalidInputException if the deceleration is negative
   */
  public Quantity<Force> loadTransfer(Quantity<Acceleration> deceleration) {
    return loadTransfer(deceleration, Recorder.OFF);
  }

  /**
   * The same with the working.
   *
   * @param deceleration ≥ 0 m/s²
   * @param recorder takes down the step
   * @return in N
   * @throws InvalidInputException if the deceleration is negative
   */
  public Quantity<Force> loadTransfer(Quantity<Acceleration> deceleration, Recorder recorder) {
    double brakingMs2 =
        Require.quantity("Stance.deceleration", deceleration, METRE_PER_SECOND_SQUARED)
            .nonNegative();
    double forceN = massKg * brakingMs2 * heightM() / wheelbaseM;
    if (recorder.isOn()) {
      step(recorder, "ΔW", "load moved from the rear to the front axle")
          .formula("m·a·h/L")
          .with("m", massKg, KILOGRAM)
          .with("a", brakingMs2, METRE_PER_SECOND_SQUARED)
          .with("h", heightM(), METRE)
          .with("L", wheelbaseM, METRE)
          .gives(forceN, NEWTON);
    }
    return Kind.FORCE.ofSi(forceN);
  }

  /**
   * Greatest acceleration that the tyres of one driven axle can give on the level.
   *
   * <p>Rear g·μ·a₁/(L − μ·h), front g·μ·a₂/(L + μ·h); at most the value at which the other axle
   * lifts. Drag and rolling resistance left out.
   *
   * @param driven front or rear
   * @param adhesion coefficient μ, 0 to 2
   * @return in m/s²
   * @throws InvalidInputException if the coefficient is outside its range
   */
  public Quantity<Acceleration> tractionLimit(Axle driven, double adhesion) {
    Grip grip = new Grip(this, driven, adhesion, Recorder.OFF);
    return Kind.ACCELERATION.ofSi(grip.accelerationMs2(grip.tractionRate()));
  }

  /**
   * Greatest acceleration with all wheels driven: g·μ.
   *
   * @param adhesion coefficient μ, 0 to 2
   * @return in m/s²
   * @throws InvalidInputException if the coefficient is outside its range
   */
  public Quantity<Acceleration> tractionLimitAllWheels(double adhesion) {
    return Kind.ACCELERATION.ofSi(gravity * adhesion("Stance.adhesion", adhesion));
  }

  /**
   * Adhesion that an acceleration by one driven axle needs.
   *
   * <p>Rear a·L/(g·a₁ + a·h), front a·L/(g·a₂ − a·h).
   *
   * @param driven front or rear
   * @param acceleration ≥ 0 m/s²
   * @return coefficient; infinite if the driven axle would lift
   * @throws InvalidInputException if the acceleration is negative
   */
  public double adhesionNeeded(Axle driven, Quantity<Acceleration> acceleration) {
    double aMs2 =
        Require.quantity("Stance.acceleration", acceleration, METRE_PER_SECOND_SQUARED)
            .nonNegative();
    double shiftMs2M = aMs2 * heightM();
    double loadMs2M = gravity * armM(driven) + (driven == Axle.REAR ? shiftMs2M : -shiftMs2M);
    return loadMs2M > 0 ? aMs2 * wheelbaseM / loadMs2M : Double.POSITIVE_INFINITY;
  }

  /**
   * Greatest braking rate (deceleration over g) that the tyres of one axle can give on the level,
   * as in regeneration on the driven axle alone.
   *
   * <p>Rear μ·a₁/(L + μ·h), front μ·a₂/(L − μ·h); at most the rate at which the other axle lifts.
   *
   * @param braked front or rear
   * @param adhesion coefficient μ, 0 to 2
   * @return deceleration over gravity
   * @throws InvalidInputException if the coefficient is outside its range
   */
  public double singleAxleBrakingLimit(Axle braked, double adhesion) {
    return singleAxleBrakingLimit(braked, adhesion, Recorder.OFF);
  }

  /**
   * The same with the working.
   *
   * @param braked front or rear
   * @param adhesion coefficient μ, 0 to 2
   * @param recorder takes down the steps
   * @return as {@link #singleAxleBrakingLimit(Axle, double)}
   */
  public double singleAxleBrakingLimit(Axle braked, double adhesion, Recorder recorder) {
    return new Grip(this, braked, adhesion, recorder).brakingRate();
  }

  /**
   * Steepest slope that the wheels of one braked axle hold by adhesion, nose uphill.
   *
   * <p>Rear atan(μ·a₁/(L − μ·h)), front atan(μ·a₂/(L + μ·h)). (Jazar's equation 2.68 prints L − μ·h
   * for the front; the moment balance and his 2.63 give L + μ·h.)
   *
   * @param braked front or rear
   * @param adhesion coefficient μ, 0 to 2
   * @return slope angle; at most the tilting angle
   * @throws InvalidInputException if the coefficient is outside its range
   */
  public Quantity<Angle> uphillHoldingAngle(Axle braked, double adhesion) {
    Grip grip = new Grip(this, braked, adhesion, Recorder.OFF);
    return Kind.ANGLE.ofSi(grip.uphillRad(grip.tractionRate()));
  }

  /**
   * Steepest slope that the wheels of one braked axle hold by adhesion, nose downhill.
   *
   * <p>Rear atan(μ·a₁/(L + μ·h)), front atan(μ·a₂/(L − μ·h)).
   *
   * @param braked front or rear
   * @param adhesion coefficient μ, 0 to 2
   * @return slope angle; at most the tilting angle
   * @throws InvalidInputException if the coefficient is outside its range
   */
  public Quantity<Angle> downhillHoldingAngle(Axle braked, double adhesion) {
    Grip grip = new Grip(this, braked, adhesion, Recorder.OFF);
    return Kind.ANGLE.ofSi(grip.downhillRad(grip.brakingRate()));
  }

  /**
   * Slope at which the vehicle tips over its rear axle: atan(a₂/h).
   *
   * @return slope angle
   */
  public Quantity<Angle> tiltingAngle() {
    return Kind.ANGLE.ofSi(Math.atan((wheelbaseM - behindM) / heightM()));
  }

  /**
   * The working of what the grip of one axle can do: traction limit, holding angles nose up and
   * nose down, braking limit, and the slope at which the vehicle tips over its rear axle.
   *
   * @param axle driven or braked, front or rear
   * @param adhesion coefficient μ, 0 to 2
   * @return the worksheet
   * @throws InvalidInputException if the coefficient is outside its range
   */
  public Worksheet gripWorksheet(Axle axle, double adhesion) {
    Worksheet.Recording recording =
        Worksheet.record("Grip of the " + axle + " axle, adhesion " + adhesion);
    Grip grip = new Grip(this, axle, adhesion, recording);
    double traction = grip.tractionRate();
    grip.accelerationMs2(traction);
    grip.uphillRad(traction);
    grip.downhillRad(grip.brakingRate());
    step(recording, "θ_tilt", "slope at which it tips over its rear axle")
        .formula("atan(a_2/h)")
        .with("a_2", armM(Axle.FRONT), METRE)
        .with("h", heightM(), METRE)
        .gives(Kind.ANGLE.siValueOf(tiltingAngle()), DEGREE);
    return recording.toWorksheet();
  }

  static double adhesion(String field, double value) {
    return Require.between(field, value, 0, 2);
  }

  /** Distance of the centre of gravity from the other axle: the lever that loads this one. */
  double armM(Axle axle) {
    return axle == Axle.REAR ? behindM : wheelbaseM - behindM;
  }

  double massKg() {
    return massKg;
  }

  double wheelbaseM() {
    return wheelbaseM;
  }

  double heightM() {
    return height.typicalM();
  }

  double gravity() {
    return gravity;
  }

  private List<Object> fields() {
    return List.of(massKg, wheelbaseM, behindM, height, gravity);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return this == other || (other instanceof Stance that && fields().equals(that.fields()));
  }

  @Override
  public int hashCode() {
    return fields().hashCode();
  }

  /**
   * Mass and centre of gravity.
   *
   * @return for example {@code 1178 kg, centre of gravity 1.248 m behind front axle, 0.5272 m up}
   */
  @Override
  public String toString() {
    return Figure.of(mass(), Kind.MASS)
        + ", centre of gravity "
        + Figure.of(Si.length(behindM), Kind.LENGTH)
        + " behind front axle, "
        + Figure.of(height(), Kind.LENGTH)
        + " up";
  }
}
