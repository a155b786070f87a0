package org.wattwright.voltage;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCapacitance;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;

/**
 * A device on the traction bus: one object that carries its window, capacitance, mass and ratings,
 * so that no area describes it twice.
 *
 * <p>Its window holds at its own terminals; what its cable loses is not counted in this package.
 * Implementations are immutable.
 */
public interface Device {
  /**
   * Starts a plain device.
   *
   * @param name as reports print it
   * @param role what it does
   * @param window its voltages
   * @return a builder
   * @throws org.wattwright.units.InvalidInputException if the name is blank
   */
  static DeviceBuilder of(String name, DeviceRole role, VoltageWindow window) {
    return new DeviceBuilder(name, role, window);
  }

  /**
   * Name as reports print it.
   *
   * @return the name
   */
  String name();

  /**
   * What the device does.
   *
   * @return the role
   */
  DeviceRole role();

  /**
   * The voltages it stands and works at.
   *
   * @return the window
   */
  VoltageWindow window();

  /**
   * Largest power at its traction-bus terminals, in the full-performance band.
   *
   * @return empty if not known
   */
  Optional<Quantity<Power>> maximumPower();

  /**
   * Largest current at its traction-bus terminals.
   *
   * @return empty if not known
   */
  Optional<Quantity<ElectricCurrent>> maximumCurrent();

  /**
   * Capacitance between its traction-bus terminals.
   *
   * @return empty if not known
   */
  Optional<Quantity<ElectricCapacitance>> capacitance();

  /**
   * Mass.
   *
   * @return empty if not known
   */
  Optional<Quantity<Mass>> mass();
}
