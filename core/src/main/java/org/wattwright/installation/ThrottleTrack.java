package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.VOLT;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * One track of a throttle sensor: travel = (U − U_released)/(U_pressed − U_released), linear. The
 * voltage may rise or fall with travel. Immutable and thread-safe.
 *
 * @param released signal with the pedal or lever at rest, ≥ 0 V
 * @param pressed signal at full travel, ≥ 0 V, unlike the first
 */
public record ThrottleTrack(
    Quantity<ElectricPotential> released, Quantity<ElectricPotential> pressed)
    implements Serializable {
  /**
   * Checks the ranges.
   *
   * @param released ≥ 0 V
   * @param pressed ≥ 0 V, unlike the first
   * @throws InvalidInputException if a value is negative or both are alike
   */
  public ThrottleTrack {
    double fromV = Require.quantity("ThrottleTrack.released", released, VOLT).nonNegative();
    double toV = Require.quantity("ThrottleTrack.pressed", pressed, VOLT).nonNegative();
    if (fromV == toV) {
      throw InvalidInputException.of(
          "ThrottleTrack.pressed", "unlike " + released, pressed.toString());
    }
    released = Measure.from(released, Kind.VOLTAGE);
    pressed = Measure.from(pressed, Kind.VOLTAGE);
  }

  /**
   * Travel that a signal stands for.
   *
   * @param signal ≥ 0 V
   * @return 0 released, 1 pressed; beyond these outside the calibrated travel
   * @throws InvalidInputException if negative
   */
  public double travelAt(Quantity<ElectricPotential> signal) {
    double volts = Require.quantity("ThrottleTrack.signal", signal, VOLT).nonNegative();
    return (volts - releasedV()) / spanV();
  }

  /**
   * Change of the signal that stands for a share of the travel.
   *
   * @param share 0 to 1
   * @return in V, ≥ 0
   * @throws InvalidInputException if outside its range
   */
  public Quantity<ElectricPotential> signalOf(double share) {
    return VOLT.of(Require.fraction("ThrottleTrack.share", share) * Math.abs(spanV()));
  }

  double releasedV() {
    return Kind.VOLTAGE.siValueOf(released);
  }

  double spanV() {
    return Kind.VOLTAGE.siValueOf(pressed) - releasedV();
  }

  double lowestV() {
    return Math.min(releasedV(), releasedV() + spanV());
  }

  double highestV() {
    return Math.max(releasedV(), releasedV() + spanV());
  }

  /**
   * Both ends.
   *
   * @return for example {@code 0.8 V … 4 V}
   */
  @Override
  public String toString() {
    return released + " … " + pressed;
  }
}
