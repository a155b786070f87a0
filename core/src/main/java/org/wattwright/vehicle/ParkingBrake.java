package org.wattwright.vehicle;

import static org.wattwright.units.WorkshopUnits.KILOGRAM;
import static org.wattwright.units.WorkshopUnits.METRE_PER_SECOND_SQUARED;
import static org.wattwright.units.WorkshopUnits.NEWTON;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Force;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;

/**
 * A parking brake on one axle, and the grade it holds: by the grip of its tyres, nose up and nose
 * down, and by the force of the mechanism.
 *
 * <p>Needed along the road: m·g·sin θ. Grip: see {@link Stance#uphillHoldingAngle}. An electric
 * drive holds nothing once it is switched off. Immutable and thread-safe.
 */
public final class ParkingBrake implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Grade to be held by a laden passenger car: 20 %. UN R13-H, Annex 3, from memory. */
  public static final double USUAL_GRADE = 0.20;

  private static final Source R13H = Source.standard("UN R13-H", "Annex 3, from memory");

  private final Axle axle;
  private final @Nullable Quantity<Force> force;
  private final Basis basis;

  private ParkingBrake(Axle axle, @Nullable Quantity<Force> force, Basis basis) {
    this.axle = axle;
    this.force = force;
    this.basis = basis;
  }

  /**
   * A parking brake whose force is not known.
   *
   * @param axle the axle it acts on
   * @return the brake
   */
  public static ParkingBrake on(Axle axle) {
    return new ParkingBrake(Objects.requireNonNull(axle, "axle"), null, Basis.DATA_SHEET);
  }

  /**
   * The same with the force of its mechanism.
   *
   * @param atRoad of both wheels together, at the tyre contact, at the permitted hand force; &gt; 0
   *     N
   * @param rests what it rests on
   * @return a new brake
   * @throws org.wattwright.units.InvalidInputException if the force is not positive
   */
  public ParkingBrake withForce(Quantity<Force> atRoad, Basis rests) {
    Require.quantity("ParkingBrake.force", atRoad, NEWTON).positive();
    return new ParkingBrake(axle, atRoad, rests);
  }

  /**
   * The axle it acts on.
   *
   * @return front or rear
   */
  public Axle axle() {
    return axle;
  }

  /**
   * Force along the road that holds a vehicle on a grade: m·g·sin θ.
   *
   * @param stance the vehicle
   * @param grade tangent of the slope, 0 to 1
   * @return in N
   * @throws org.wattwright.units.InvalidInputException if the grade is outside its range
   */
  public static Quantity<Force> forceNeeded(Stance stance, double grade) {
    return forceNeeded(stance, grade, Recorder.OFF);
  }

  /**
   * The same with the working.
   *
   * @param stance the vehicle
   * @param grade tangent of the slope, 0 to 1
   * @param recorder takes down the step
   * @return in N
   * @throws org.wattwright.units.InvalidInputException if the grade is outside its range
   */
  public static Quantity<Force> forceNeeded(Stance stance, double grade, Recorder recorder) {
    double slope = Math.atan(Require.fraction("ParkingBrake.grade", grade));
    double forceN = stance.massKg() * stance.gravity() * Math.sin(slope);
    if (recorder.isOn()) {
      recorder
          .step("F", "force along the road that holds the vehicle")
          .formula("m·g·sin(θ)")
          .with("m", stance.massKg(), KILOGRAM)
          .with("g", stance.gravity(), METRE_PER_SECOND_SQUARED)
          .with("θ", Figure.of(Kind.ANGLE.ofSi(slope), Kind.ANGLE))
          .basis(stance.basis())
          .gives(forceN, NEWTON);
    }
    return Kind.FORCE.ofSi(forceN);
  }

  /**
   * Whether the brake holds a grade.
   *
   * <p>Codes {@code parking.uphill} and {@code parking.downhill} for the grip of the braked axle,
   * with the worse end of an estimated height, and {@code parking.force} for the mechanism,
   * NOT_CHECKED if its force is not known.
   *
   * @param stance the vehicle, laden
   * @param grade tangent of the slope, 0 to 1; usually {@link #USUAL_GRADE}
   * @param adhesion coefficient μ, 0 to 2
   * @return three checks
   * @throws org.wattwright.units.InvalidInputException if a number is outside its range
   */
  public List<Check> check(Stance stance, double grade, double adhesion) {
    Require.fraction("ParkingBrake.grade", grade);
    double up = Double.POSITIVE_INFINITY;
    double down = Double.POSITIVE_INFINITY;
    for (Stance end : stance.extremes()) {
      up = Math.min(up, tangent(end.uphillHoldingAngle(axle, adhesion)));
      down = Math.min(down, tangent(end.downhillHoldingAngle(axle, adhesion)));
    }
    String grip = "grade held by the grip of the " + axle + " axle, adhesion " + adhesion;
    return List.of(
        named("parking.uphill", grip + ", nose up", stance.basis())
            .atLeast(Figure.share(up), Figure.share(grade)),
        named("parking.downhill", grip + ", nose down", stance.basis())
            .atLeast(Figure.share(down), Figure.share(grade)),
        forceCheck(stance, grade));
  }

  private static double tangent(Quantity<Angle> angle) {
    return Math.tan(Kind.ANGLE.siValueOf(angle));
  }

  private Check forceCheck(Stance stance, double grade) {
    CheckBuilder check =
        named("parking.force", "force of the parking brake", basis.and(stance.basis()));
    if (force == null) {
      return check.notChecked("ParkingBrake.force");
    }
    return check.atLeast(Figure.of(force, NEWTON), Figure.of(forceNeeded(stance, grade), NEWTON));
  }

  private static CheckBuilder named(String code, String what, Basis basis) {
    return Check.named(code, what).source(R13H).basis(basis.and(Basis.DATA_SHEET)).safety();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return this == other
        || (other instanceof ParkingBrake that
            && axle == that.axle
            && Objects.equals(force, that.force)
            && basis == that.basis);
  }

  @Override
  public int hashCode() {
    return Objects.hash(axle, force, basis);
  }

  /**
   * Axle and force.
   *
   * @return for example {@code parking brake on the rear axle, 3200 N}
   */
  @Override
  public String toString() {
    return "parking brake on the " + axle + " axle" + (force == null ? "" : ", " + force);
  }
}
