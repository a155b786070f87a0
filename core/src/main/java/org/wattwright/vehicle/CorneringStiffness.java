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
import org.wattwright.units.InvalidInputException;
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
  private final double mostOff;
  private final Basis basis;

  private CorneringStiffness(Axle axle, double axleNPerRad, double mostOff, Basis basis) {
    this.axle = axle;
    this.axleNPerRad = axleNPerRad;
    this.mostOff = mostOff;
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
    return new CorneringStiffness(axle, forceN / slipRad, 0, Basis.DATA_SHEET);
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
    return new CorneringStiffness(axle, 2 * one.axleNPerRad, 0, one.basis);
  }

  /**
   * The same with another basis.
   *
   * @param value what it rests on; data sheet unless told
   * @return a new stiffness
   */
  public CorneringStiffness withBasis(Basis value) {
    return new CorneringStiffness(
        axle, axleNPerRad, mostOff, Objects.requireNonNull(value, "basis"));
  }

  /**
   * The same as an estimate.
   *
   * @param share by which it may be off either way, 0.2 for ±20 %; 0 or more, below 1
   * @return a new stiffness, estimated
   * @throws org.wattwright.units.InvalidInputException if the share is outside its range
   */
  public CorneringStiffness estimatedWithin(double share) {
    double off = mostOff("CorneringStiffness.mostOff", share);
    return new CorneringStiffness(axle, axleNPerRad, off, Basis.ESTIMATED);
  }

  static double mostOff(String field, double share) {
    if (share >= 0 && share < 1) {
      return share;
    }
    throw InvalidInputException.of(field, "≥ 0 and < 1", Double.toString(share));
  }

  /** One end of an estimate: way −1 or +1. */
  CorneringStiffness end(int way) {
    return new CorneringStiffness(axle, axleNPerRad * (1 + way * mostOff), 0, basis);
  }

  boolean hasBand() {
    return mostOff > 0;
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
            && mostOff == that.mostOff
            && basis == that.basis);
  }

  @Override
  public int hashCode() {
    return Objects.hash(axle, axleNPerRad, mostOff, basis);
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
