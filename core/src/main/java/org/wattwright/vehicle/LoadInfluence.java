package org.wattwright.vehicle;

import java.io.Serializable;
import org.wattwright.units.InvalidInputException;

/**
 * What one kilogram at a place adds to each axle and each wheel: the loads of a vehicle are linear
 * in its masses.
 *
 * <p>Axles: 1 − d/L in front, d/L in the rear. Wheels, of an axle with share c and track T: c/2 ±
 * λ·y/T, where λ is the axle's share of the roll stiffness (sprung mass; its own share c for a mass
 * on an axle), left plus, right minus. All are pure numbers, kg per kg; those of two axles, and
 * those of four wheels, sum to 1. A search over many arrangements reads them once and adds
 * products.
 *
 * <p>Source: moments about the axles; for the four wheels, a rigid body that rolls on the springs
 * of two axles (W. F. Milliken and D. L. Milliken, Race Car Vehicle Dynamics, chapter on wheel
 * loads, from memory). Immutable and thread-safe.
 */
public final class LoadInfluence implements Serializable {
  private static final long serialVersionUID = 1L;

  private final double rear;

  /** Half the difference left − right per axle; NaN if not determined. */
  private final double frontLean;

  private final double rearLean;

  private LoadInfluence(double rear, double frontLean, double rearLean) {
    this.rear = rear;
    this.frontLean = frontLean;
    this.rearLean = rearLean;
  }

  static LoadInfluence of(WeighedVehicle vehicle, Position position, boolean unsprung) {
    return at(vehicle, position.behindM(), position.leftM(), unsprung);
  }

  /** At a place in m; sideways not a number if not known. */
  static LoadInfluence at(WeighedVehicle vehicle, double behindM, double leftM, boolean unsprung) {
    double rear = behindM / vehicle.wheelbaseM();
    double rollShare = unsprung ? 1 - rear : vehicle.rollSplit().frontShare();
    return new LoadInfluence(
        rear,
        lean(rollShare, leftM, vehicle.trackM(Axle.FRONT)),
        lean(1 - rollShare, leftM, vehicle.trackM(Axle.REAR)));
  }

  /** A mass on the centre line needs neither roll stiffness nor track. */
  private static double lean(double rollShare, double leftM, double trackM) {
    return leftM == 0 ? 0 : rollShare * leftM / trackM;
  }

  /**
   * Load of an axle per load added.
   *
   * @param axle front or rear
   * @return kg per kg; negative if the mass lightens the axle, above 1 if it overhangs it
   */
  public double on(Axle axle) {
    return axle == Axle.FRONT ? 1 - rear : rear;
  }

  /**
   * Whether the shares of the wheels are determined.
   *
   * @return false if sideways place, tracks or roll stiffness are not known
   */
  public boolean hasWheels() {
    return !Double.isNaN(frontLean + rearLean);
  }

  /**
   * Load of a wheel per load added.
   *
   * @param axle front or rear
   * @param side left or right
   * @return kg per kg
   * @throws InvalidInputException if it is not determined
   */
  public double on(Axle axle, Side side) {
    if (!hasWheels()) {
      throw InvalidInputException.of(
          "LoadInfluence",
          "determined for wheels (sideways place, tracks, roll stiffness known)",
          "not determined");
    }
    return wheel(axle, side);
  }

  double wheel(Axle axle, Side side) {
    return on(axle) / 2 + side.sign() * lean(axle);
  }

  double lean(Axle axle) {
    return axle == Axle.FRONT ? frontLean : rearLean;
  }

  /**
   * Both axles.
   *
   * @return for example {@code front 0.25, rear 0.75 kg per kg}
   */
  @Override
  public String toString() {
    return "front " + on(Axle.FRONT) + ", rear " + rear + " kg per kg";
  }
}
