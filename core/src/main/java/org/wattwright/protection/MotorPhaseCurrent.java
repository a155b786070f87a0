package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.NEWTON_METRE;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Torque;

/**
 * Current in a phase of a three-phase motor, from its torque.
 *
 * <p>Below saturation the current follows the torque: I = I_r·T/T_r. Held at standstill on a slope
 * the field does not turn, and one phase may carry the crest of the current for as long as the hold
 * lasts: a direct current of √2·I, twice the heat. Common practice; above the rated point the
 * current is higher than this by saturation, so that a torque above it is refused. Immutable and
 * thread-safe.
 */
public final class MotorPhaseCurrent implements Serializable {
  private static final long serialVersionUID = 1L;

  private final double torqueNm;
  private final double currentA;

  private MotorPhaseCurrent(double torqueNm, double currentA) {
    this.torqueNm = torqueNm;
    this.currentA = currentA;
  }

  /**
   * From one point of the data sheet, such as the peak torque and its current.
   *
   * @param torque &gt; 0 N·m
   * @param current RMS current of a phase at this torque, &gt; 0 A
   * @return the relation up to this torque
   * @throws InvalidInputException if an argument is not positive
   */
  public static MotorPhaseCurrent ofPoint(
      Quantity<Torque> torque, Quantity<ElectricCurrent> current) {
    return new MotorPhaseCurrent(
        Require.quantity("MotorPhaseCurrent.torque", torque, NEWTON_METRE).positive(),
        Require.quantity("MotorPhaseCurrent.current", current, AMPERE).positive());
  }

  /**
   * Current while the motor turns.
   *
   * @param torque 0 N·m to that of the point
   * @return RMS, in A
   * @throws InvalidInputException if outside its range
   */
  public Quantity<ElectricCurrent> turning(Quantity<Torque> torque) {
    double share =
        Require.quantity("MotorPhaseCurrent.torque", torque, NEWTON_METRE).between(0, torqueNm)
            / torqueNm;
    return AMPERE.of(currentA * share);
  }

  /**
   * Direct current in the worst phase while the motor holds the vehicle at standstill.
   *
   * @param torque 0 N·m to that of the point
   * @return √2 times the RMS current, in A
   * @throws InvalidInputException if outside its range
   */
  public Quantity<ElectricCurrent> holding(Quantity<Torque> torque) {
    return AMPERE.of(Math.sqrt(2) * AMPERE.valueOf(turning(torque)));
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof MotorPhaseCurrent that
        && torqueNm == that.torqueNm
        && currentA == that.currentA;
  }

  @Override
  public int hashCode() {
    return Objects.hash(torqueNm, currentA);
  }

  /**
   * The point.
   *
   * @return for example {@code 250 A at 180 N·m}
   */
  @Override
  public String toString() {
    return AMPERE.of(currentA) + " at " + NEWTON_METRE.of(torqueNm);
  }
}
