package org.wattwright.vehicle;

import static org.wattwright.units.WorkshopUnits.DEGREE;
import static org.wattwright.units.WorkshopUnits.NEWTON;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Force;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Basis;
import org.wattwright.check.Figure;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;

/**
 * Lateral force of the two tyres of an axle for a small slip angle.
 *
 * <p>Given as a force at a slip angle, so that per tyre or per axle, per degree or per radian
 * cannot be mixed up. Immutable and thread-safe.
 */
public final class CorneringStiffness implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Axle axle;
  private final double axleNPerRad;
  private final Basis basis;

  private CorneringStiffness(Axle axle, double axleNPerRad, Basis basis) {
    this.axle = axle;
    this.axleNPerRad = axleNPerRad;
    this.basis = basis;
  }

  /**
   * From the force of the whole axle.
   *
   * @param axle front or rear
   * @param force of both tyres, &gt; 0 N
   * @param slip slip angle at which it acts, &gt; 0°, small
   * @return the stiffness, from a data sheet
   * @throws org.wattwright.units.InvalidInputException if force or angle are not positive
   */
  public static CorneringStiffness ofAxle(Axle axle, Quantity<Force> force, Quantity<Angle> slip) {
    Objects.requireNonNull(axle, "axle");
    double forceN = Require.quantity("CorneringStiffness.force", force, NEWTON).positive();
    double slipRad = Require.quantity("CorneringStiffness.slip", slip, DEGREE).positive();
    return new CorneringStiffness(axle, forceN / slipRad, Basis.DATA_SHEET);
  }

  /**
   * From the force of one of two like tyres.
   *
   * @param axle front or rear
   * @param force of one tyre, &gt; 0 N
   * @param slip slip angle at which it acts, &gt; 0°, small
   * @return the stiffness of the axle, from a data sheet
   * @throws org.wattwright.units.InvalidInputException if force or angle are not positive
   */
  public static CorneringStiffness ofTyre(Axle axle, Quantity<Force> force, Quantity<Angle> slip) {
    CorneringStiffness one = ofAxle(axle, force, slip);
    return new CorneringStiffness(axle, 2 * one.axleNPerRad, one.basis);
  }

  /**
   * The same with another basis.
   *
   * @param value what it rests on; data sheet unless told
   * @return a new stiffness
   */
  public CorneringStiffness withBasis(Basis value) {
    return new CorneringStiffness(axle, axleNPerRad, Objects.requireNonNull(value, "basis"));
  }

  /**
   * The axle.
   *
   * @return front or rear
   */
  public Axle axle() {
    return axle;
  }

  /**
   * What it rests on.
   *
   * @return the basis
   */
  public Basis basis() {
    return basis;
  }

  /**
   * Lateral force of the axle at a small slip angle.
   *
   * @param slip slip angle
   * @return stiffness times angle, in N
   */
  public Quantity<Force> forceAt(Quantity<Angle> slip) {
    return Kind.FORCE.ofSi(axleNPerRad * Kind.ANGLE.siValueOf(slip));
  }

  double axleNPerRad() {
    return axleNPerRad;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return this == other
        || (other instanceof CorneringStiffness that
            && axle == that.axle
            && axleNPerRad == that.axleNPerRad
            && basis == that.basis);
  }

  @Override
  public int hashCode() {
    return Objects.hash(axle, axleNPerRad, basis);
  }

  /**
   * Force at one degree.
   *
   * @return for example {@code front axle 1.2 kN per degree}
   */
  @Override
  public String toString() {
    return axle + " axle " + Figure.of(forceAt(DEGREE.of(1)), Kind.FORCE) + " per degree";
  }
}
