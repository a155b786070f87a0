package org.wattwright.examples.job;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCapacitance;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import org.wattwright.check.Basis;
import org.wattwright.voltage.DeviceRole;

/**
 * A device on the traction circuit as the job states it.
 *
 * <p>Immutable and thread-safe.
 *
 * @param origin where it stands
 * @param name its name, unique in the job
 * @param role what it does
 * @param window voltages that it stands and works at
 * @param power peak and continuous power
 * @param current largest current on the traction side
 * @param capacitance on the traction side; empty if not stated
 * @param backEmf highest voltage that a motor makes at overspeed; empty if not stated or no motor
 * @param efficiency 0 to 1; empty if not stated
 * @param mass &gt; 0
 * @param basis what the data rest on
 * @param source where they come from
 * @param inputCurrent largest current of a charger from the mains in each phase; empty if not
 *     stated or no charger
 */
public record DeviceInput(
    Origin origin,
    String name,
    DeviceRole role,
    Window window,
    Rating power,
    Optional<Quantity<ElectricCurrent>> current,
    Optional<Quantity<ElectricCapacitance>> capacitance,
    Optional<Quantity<ElectricPotential>> backEmf,
    Optional<Double> efficiency,
    Quantity<Mass> mass,
    Basis basis,
    String source,
    Optional<Quantity<ElectricCurrent>> inputCurrent) {
  /**
   * Voltages of a device.
   *
   * @param absoluteMaximum above which it is damaged, at least the operating maximum
   * @param operatingMinimum at which it starts to work
   * @param operatingMaximum at which it stops to work, above the minimum
   * @param fullMinimum at which full performance begins; empty if not stated
   * @param fullMaximum at which full performance ends; empty if not stated
   */
  public record Window(
      Quantity<ElectricPotential> absoluteMaximum,
      Quantity<ElectricPotential> operatingMinimum,
      Quantity<ElectricPotential> operatingMaximum,
      Optional<Quantity<ElectricPotential>> fullMinimum,
      Optional<Quantity<ElectricPotential>> fullMaximum) {}

  /**
   * Power of a device at its traction terminals, into it or, for a charger, out of it.
   *
   * @param peak for a short time; empty if as continuous
   * @param continuous for any length of time, &gt; 0
   */
  public record Rating(Optional<Quantity<Power>> peak, Quantity<Power> continuous) {}
}
