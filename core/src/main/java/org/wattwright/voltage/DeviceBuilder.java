package org.wattwright.voltage;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCapacitance;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.WorkshopUnits;

/** Collects the data of a plain {@link Device}. */
public final class DeviceBuilder {
  private final String name;
  private final DeviceRole role;
  private final VoltageWindow window;
  private @Nullable Quantity<Power> maximumPower;
  private @Nullable Quantity<ElectricCurrent> maximumCurrent;
  private @Nullable Quantity<ElectricCapacitance> capacitance;
  private @Nullable Quantity<Mass> mass;

  DeviceBuilder(String name, DeviceRole role, VoltageWindow window) {
    this.name = Require.text("Device.name", name);
    this.role = Objects.requireNonNull(role, "role");
    this.window = Objects.requireNonNull(window, "window");
  }

  /**
   * Largest power at its traction-bus terminals, in the full-performance band.
   *
   * @param value &gt; 0 kW
   * @return this builder
   * @throws org.wattwright.units.InvalidInputException if not positive
   */
  public DeviceBuilder maximumPower(Quantity<Power> value) {
    Require.quantity("Device.maximumPower", value, WorkshopUnits.KILOWATT).positive();
    maximumPower = Measure.from(value, Kind.POWER);
    return this;
  }

  /**
   * Largest current at its traction-bus terminals.
   *
   * @param value &gt; 0 A
   * @return this builder
   * @throws org.wattwright.units.InvalidInputException if not positive
   */
  public DeviceBuilder maximumCurrent(Quantity<ElectricCurrent> value) {
    Require.quantity("Device.maximumCurrent", value, WorkshopUnits.AMPERE).positive();
    maximumCurrent = Measure.from(value, Kind.CURRENT);
    return this;
  }

  /**
   * Capacitance between its traction-bus terminals.
   *
   * @param value ≥ 0 µF
   * @return this builder
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public DeviceBuilder capacitance(Quantity<ElectricCapacitance> value) {
    Require.quantity("Device.capacitance", value, WorkshopUnits.MICROFARAD).nonNegative();
    capacitance = Measure.from(value, Kind.CAPACITANCE);
    return this;
  }

  /**
   * Mass.
   *
   * @param value &gt; 0 kg
   * @return this builder
   * @throws org.wattwright.units.InvalidInputException if not positive
   */
  public DeviceBuilder mass(Quantity<Mass> value) {
    Require.quantity("Device.mass", value, WorkshopUnits.KILOGRAM).positive();
    mass = Measure.from(value, Kind.MASS);
    return this;
  }

  /**
   * The device.
   *
   * @return an immutable device
   */
  public Device build() {
    return new PlainDevice(name, role, window, maximumPower, maximumCurrent, capacitance, mass);
  }

  /** A device without behaviour of its own. */
  private static final class PlainDevice implements Device, Serializable {
    private static final long serialVersionUID = 1L;

    private final String name;
    private final DeviceRole role;
    private final VoltageWindow window;
    private final @Nullable Quantity<Power> maximumPower;
    private final @Nullable Quantity<ElectricCurrent> maximumCurrent;
    private final @Nullable Quantity<ElectricCapacitance> capacitance;
    private final @Nullable Quantity<Mass> mass;

    PlainDevice(
        String name,
        DeviceRole role,
        VoltageWindow window,
        @Nullable Quantity<Power> maximumPower,
        @Nullable Quantity<ElectricCurrent> maximumCurrent,
        @Nullable Quantity<ElectricCapacitance> capacitance,
        @Nullable Quantity<Mass> mass) {
      this.name = name;
      this.role = role;
      this.window = window;
      this.maximumPower = maximumPower;
      this.maximumCurrent = maximumCurrent;
      this.capacitance = capacitance;
      this.mass = mass;
    }

    @Override
    public String name() {
      return name;
    }

    @Override
    public DeviceRole role() {
      return role;
    }

    @Override
    public VoltageWindow window() {
      return window;
    }

    @Override
    public Optional<Quantity<Power>> maximumPower() {
      return Optional.ofNullable(maximumPower);
    }

    @Override
    public Optional<Quantity<ElectricCurrent>> maximumCurrent() {
      return Optional.ofNullable(maximumCurrent);
    }

    @Override
    public Optional<Quantity<ElectricCapacitance>> capacitance() {
      return Optional.ofNullable(capacitance);
    }

    @Override
    public Optional<Quantity<Mass>> mass() {
      return Optional.ofNullable(mass);
    }

    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof PlainDevice that
          && name.equals(that.name)
          && role == that.role
          && window.equals(that.window)
          && Objects.equals(maximumPower, that.maximumPower)
          && Objects.equals(maximumCurrent, that.maximumCurrent)
          && Objects.equals(capacitance, that.capacitance)
          && Objects.equals(mass, that.mass);
    }

    @Override
    public int hashCode() {
      return Objects.hash(name, role, window, maximumPower, maximumCurrent, capacitance, mass);
    }

    @Override
    public String toString() {
      return name + " (" + role + ", " + window + ")";
    }
  }
}
