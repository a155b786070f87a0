package org.wattwright.drive;

import java.io.Serializable;
import java.util.Objects;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.vehicle.Axle;
import org.wattwright.vehicle.Stance;

/**
 * Which axle drives, and the grip of its tyres.
 *
 * <p>Immutable and thread-safe.
 *
 * @param stance the loaded vehicle
 * @param driven the driven axle
 * @param adhesion coefficient μ, 0 to 2
 */
public record Traction(Stance stance, Axle driven, double adhesion) implements Serializable {
  /** Share by which two weighings of one vehicle may differ; common practice. */
  private static final double SAME_MASS = 0.005;

  /**
   * Checks the range.
   *
   * @param stance the loaded vehicle
   * @param driven the driven axle
   * @param adhesion coefficient μ, 0 to 2
   * @throws InvalidInputException if the coefficient is outside its range
   */
  public Traction {
    Objects.requireNonNull(stance, "stance");
    Objects.requireNonNull(driven, "driven");
    Require.between("Traction.adhesion", adhesion, 0, 2);
  }

  /**
   * Which axle drives, and the grip of its tyres.
   *
   * @param stance the loaded vehicle
   * @param driven the driven axle
   * @param adhesion coefficient μ, 0 to 2; about 0.8 dry, 0.5 wet, 0.2 on snow (common practice)
   * @return the traction
   * @throws InvalidInputException if the coefficient is outside its range
   */
  public static Traction of(Stance stance, Axle driven, double adhesion) {
    return new Traction(stance, driven, adhesion);
  }

  /** Whether a stance is that of a vehicle of this mass, as far as scales tell. */
  static boolean isOfMass(Stance stance, double massKg) {
    double standingKg = Kind.MASS.siValueOf(stance.mass());
    return Math.abs(standingKg - massKg) <= SAME_MASS * massKg;
  }

  /** The same grip with another stance. */
  Traction standing(Stance other) {
    return new Traction(other, driven, adhesion);
  }

  /** Force for each kilogram at which the driven tyres slip, with the load shift of it. */
  double drivingMs2() {
    return Kind.ACCELERATION.siValueOf(stance.tractionLimit(driven, adhesion));
  }

  /** The same while only the driven axle brakes. */
  double brakingMs2(double gravity) {
    return stance.singleAxleBrakingLimit(driven, adhesion) * gravity;
  }

  /**
   * Axle and adhesion.
   *
   * @return for example {@code rear axle drives, adhesion 0.8}
   */
  @Override
  public String toString() {
    return driven + " axle drives, adhesion " + adhesion;
  }
}
