package org.wattwright.charging;

import static org.wattwright.units.WorkshopUnits.KILOWATT;
import static org.wattwright.units.WorkshopUnits.VOLT;
import static org.wattwright.units.WorkshopUnits.WATT;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCapacitance;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.Require;
import org.wattwright.units.EnergyPerDistance;
import org.wattwright.units.Kind;
import org.wattwright.units.WorkshopUnits;
import org.wattwright.voltage.Device;
import org.wattwright.voltage.DeviceRole;
import org.wattwright.voltage.VoltageWindow;

/**
 * A DC-DC converter that feeds the low-voltage system from the traction bus.
 *
 * <p>It is a {@link Device}: its window, and the largest power and current of the device, are those
 * of the traction-bus side. P_in = P_out/η; I_in = P_in/U.
 *
 * <pre>{@code
 * DcDcConverter converter = DcDcConverter.of("converter", window)
 *     .outputVoltage(volts(13.8)).maximumOutputPower(watts(900))
 *     .efficiency(EfficiencyByLoad.constant(0.91)).build();
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class DcDcConverter implements Device, Serializable {
  private static final long serialVersionUID = 1L;

  private final Device input;
  private final Quantity<ElectricPotential> outputVoltage;
  private final Quantity<Power> maximumOutputPower;
  private final EfficiencyByLoad efficiency;
  private final @Nullable DeratingByTemperature derating;

  DcDcConverter(Device input, DcDcConverterBuilder builder) {
    this.input = input;
    this.outputVoltage = builder.voltage();
    this.maximumOutputPower = builder.outputPower();
    this.efficiency = builder.efficiencyTable();
    this.derating = builder.temperatureTable();
  }

  /**
   * Starts a converter.
   *
   * @param name as reports print it
   * @param window voltages of the traction bus it stands and works at
   * @return a builder
   * @throws org.wattwright.units.InvalidInputException if the name is blank
   */
  public static DcDcConverterBuilder of(String name, VoltageWindow window) {
    return new DcDcConverterBuilder(name, window);
  }

  @Override
  public String name() {
    return input.name();
  }

  @Override
  public DeviceRole role() {
    return input.role();
  }

  @Override
  public VoltageWindow window() {
    return input.window();
  }

  @Override
  public Optional<Quantity<Power>> maximumPower() {
    return input.maximumPower();
  }

  @Override
  public Optional<Quantity<ElectricCurrent>> maximumCurrent() {
    return input.maximumCurrent();
  }

  @Override
  public Optional<Quantity<ElectricCapacitance>> capacitance() {
    return input.capacitance();
  }

  @Override
  public Optional<Quantity<Mass>> mass() {
    return input.mass();
  }

  /**
   * Voltage it holds at the low-voltage battery.
   *
   * @return &gt; 0 V
   */
  public Quantity<ElectricPotential> outputVoltage() {
    return outputVoltage;
  }

  /**
   * Rated output power.
   *
   * @return &gt; 0 kW
   */
  public Quantity<Power> maximumOutputPower() {
    return maximumOutputPower;
  }

  /**
   * Output current at the rated output power: I = P/U.
   *
   * @return in A
   */
  public Quantity<ElectricCurrent> maximumOutputCurrent() {
    return Kind.CURRENT.ofSi(outputW() / Kind.VOLTAGE.siValueOf(outputVoltage));
  }

  /**
   * Efficiency over the load.
   *
   * @return the table
   */
  public EfficiencyByLoad efficiency() {
    return efficiency;
  }

  /**
   * Share of the output power by temperature.
   *
   * @return empty if not known; then it is not derated
   */
  public Optional<DeratingByTemperature> derating() {
    return Optional.ofNullable(derating);
  }

  /**
   * Output power it gives at a temperature.
   *
   * @param temperature absolute, of air or coolant as its table counts it
   * @return in kW
   */
  public Quantity<Power> outputPowerAt(Quantity<Temperature> temperature) {
    double share = derating == null ? 1 : derating.at(temperature);
    return Kind.POWER.ofSi(outputW() * share);
  }

  /**
   * Power taken from the traction bus for an output power.
   *
   * @param output 0 W to the rated power
   * @return in kW
   * @throws org.wattwright.units.InvalidInputException if outside its range
   */
  public Quantity<Power> inputPower(Quantity<Power> output) {
    return Kind.POWER.ofSi(inputW(output));
  }

  /**
   * Current taken from the traction bus for an output power; highest at the lowest pack voltage.
   *
   * @param output 0 W to the rated power
   * @param busVoltage at its terminals, &gt; 0 V
   * @return in A
   * @throws org.wattwright.units.InvalidInputException if a value is outside its range
   */
  public Quantity<ElectricCurrent> inputCurrent(
      Quantity<Power> output, Quantity<ElectricPotential> busVoltage) {
    double busV = Require.quantity("DcDcConverter.busVoltage", busVoltage, VOLT).positive();
    return Kind.CURRENT.ofSi(inputW(output) / busV);
  }

  /**
   * Consumption that an output power adds at a speed: P_in/v.
   *
   * @param output 0 W to the rated power
   * @param speed &gt; 0 km/h
   * @return energy per distance at the traction bus
   * @throws org.wattwright.units.InvalidInputException if a value is outside its range
   */
  public Quantity<EnergyPerDistance> consumption(Quantity<Power> output, Quantity<Speed> speed) {
    double speedMPerS =
        Require.quantity("DcDcConverter.speed", speed, WorkshopUnits.KILOMETRE_PER_HOUR).positive();
    return Kind.ENERGY_PER_DISTANCE.ofSi(inputW(output) / speedMPerS);
  }

  private double inputW(Quantity<Power> output) {
    double ratedW = KILOWATT.valueOf(maximumOutputPower);
    double wantedW = Require.quantity("DcDcConverter.output", output, KILOWATT).between(0, ratedW);
    return wantedW / efficiency.at(wantedW / outputW());
  }

  private double outputW() {
    return Kind.POWER.siValueOf(maximumOutputPower);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof DcDcConverter that
        && input.equals(that.input)
        && outputVoltage.equals(that.outputVoltage)
        && maximumOutputPower.equals(that.maximumOutputPower)
        && efficiency.equals(that.efficiency)
        && Objects.equals(derating, that.derating);
  }

  @Override
  public int hashCode() {
    return Objects.hash(input, outputVoltage, maximumOutputPower, efficiency, derating);
  }

  /**
   * Name, output and window.
   *
   * @return for example {@code converter (900 W at 13.8 V, operating 60 V … 130 V)}
   */
  @Override
  public String toString() {
    return name()
        + " ("
        + org.wattwright.check.Figure.of(maximumOutputPower, WATT)
        + " at "
        + outputVoltage
        + ", "
        + window()
        + ")";
  }
}
