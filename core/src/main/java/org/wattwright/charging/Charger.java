package org.wattwright.charging;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCapacitance;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;
import org.wattwright.units.Kind;
import org.wattwright.voltage.Device;
import org.wattwright.voltage.DeviceRole;
import org.wattwright.voltage.VoltageWindow;

/**
 * An on-board charger: what it draws from the mains and what it gives to the pack.
 *
 * <p>It is a {@link Device}: its window, output power, output current, capacitance and mass are
 * those of the device, so that the same object serves voltage checks and charging.
 *
 * <pre>{@code
 * Charger charger = Charger.of("charger", window)
 *     .maximumInputCurrent(amperes(32)).maximumPower(kilowatts(6.6)).maximumCurrent(amperes(60))
 *     .efficiency(EfficiencyByLoad.from(0.1, 0.86).and(0.5, 0.94).and(1, 0.93))
 *     .build();
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class Charger implements Device, Serializable {
  private static final long serialVersionUID = 1L;

  private final Device output;
  private final Quantity<ElectricCurrent> maximumInputCurrent;
  private final @Nullable Quantity<Power> maximumInputPower;
  private final int phases;
  private final double powerFactor;
  private final EfficiencyByLoad efficiency;
  private final @Nullable DeratingByTemperature derating;

  Charger(Device output, ChargerBuilder builder) {
    this.output = output;
    this.maximumInputCurrent = builder.inputCurrent();
    this.maximumInputPower = builder.inputPower();
    this.phases = builder.phaseCount();
    this.powerFactor = builder.factor();
    this.efficiency = builder.efficiencyTable();
    this.derating = builder.temperatureTable();
  }

  /**
   * Starts a charger.
   *
   * @param name as reports print it
   * @param window output voltages
   * @return a builder
   * @throws org.wattwright.units.InvalidInputException if the name is blank
   */
  public static ChargerBuilder of(String name, VoltageWindow window) {
    return new ChargerBuilder(name, window);
  }

  @Override
  public String name() {
    return output.name();
  }

  @Override
  public DeviceRole role() {
    return output.role();
  }

  @Override
  public VoltageWindow window() {
    return output.window();
  }

  @Override
  public Optional<Quantity<Power>> maximumPower() {
    return output.maximumPower();
  }

  @Override
  public Optional<Quantity<ElectricCurrent>> maximumCurrent() {
    return output.maximumCurrent();
  }

  @Override
  public Optional<Quantity<ElectricCapacitance>> capacitance() {
    return output.capacitance();
  }

  @Override
  public Optional<Quantity<Mass>> mass() {
    return output.mass();
  }

  /**
   * Largest current drawn from each phase.
   *
   * @return &gt; 0 A
   */
  public Quantity<ElectricCurrent> maximumInputCurrent() {
    return maximumInputCurrent;
  }

  /**
   * Largest power drawn from the mains.
   *
   * @return empty if only current and output power limit it
   */
  public Optional<Quantity<Power>> maximumInputPower() {
    return Optional.ofNullable(maximumInputPower);
  }

  /**
   * Phases it can draw from.
   *
   * @return 1 or 3
   */
  public int phases() {
    return phases;
  }

  /**
   * Power factor: active over apparent power.
   *
   * @return &gt; 0 and ≤ 1
   */
  public double powerFactor() {
    return powerFactor;
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
   * Output power at an input power: P = η(P/P_rated)·P_in, at most the rated output power.
   *
   * @param input drawn from the mains, ≥ 0 W
   * @return in kW
   * @throws org.wattwright.units.InvalidInputException if negative
   */
  public Quantity<Power> outputAt(Quantity<Power> input) {
    double inputW =
        org.wattwright.internal.Require.quantity(
                "Charger.input", input, org.wattwright.units.WorkshopUnits.KILOWATT)
            .nonNegative();
    return Kind.POWER.ofSi(Math.min(ratedW(), outputW(inputW)));
  }

  double maximumInputA() {
    return Kind.CURRENT.siValueOf(maximumInputCurrent);
  }

  double ratedW() {
    return Kind.POWER.siValueOf(output.maximumPower().orElseThrow());
  }

  double maximumOutputA() {
    return output.maximumCurrent().map(Kind.CURRENT::siValueOf).orElse(Double.POSITIVE_INFINITY);
  }

  double deratingAt(Quantity<Temperature> temperature) {
    return derating == null ? 1 : derating.at(temperature);
  }

  /** Phases in use: a charger for three phases draws from one where there is only one. */
  int phasesOn(Supply supply) {
    return Math.min(phases, supply.phases());
  }

  double uncappedInputW(Supply supply, double currentA) {
    return phasesOn(supply) * supply.voltageV() * currentA * powerFactor;
  }

  double inputPowerW(Supply supply, double currentA) {
    double powerW = uncappedInputW(supply, currentA);
    return maximumInputPower == null
        ? powerW
        : Math.min(powerW, Kind.POWER.siValueOf(maximumInputPower));
  }

  /** Output by the efficiency alone, without regard to the rated power. */
  double outputW(double inputW) {
    return efficiency.outputShare(inputW / ratedW()) * ratedW();
  }

  double inputW(double outputW) {
    return outputW / efficiency.at(outputW / ratedW());
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Charger that
        && output.equals(that.output)
        && maximumInputCurrent.equals(that.maximumInputCurrent)
        && Objects.equals(maximumInputPower, that.maximumInputPower)
        && phases == that.phases
        && Double.compare(powerFactor, that.powerFactor) == 0
        && efficiency.equals(that.efficiency)
        && Objects.equals(derating, that.derating);
  }

  @Override
  public int hashCode() {
    return Objects.hash(
        output, maximumInputCurrent, maximumInputPower, phases, powerFactor, efficiency, derating);
  }

  /**
   * Name, output power, input current and window.
   *
   * @return for example {@code charger (6.6 kW, 32 A, operating 60 V … 118.8 V)}
   */
  @Override
  public String toString() {
    String poles = phases == 1 ? "" : phases + " × ";
    return name()
        + " ("
        + output.maximumPower().orElseThrow()
        + ", "
        + poles
        + maximumInputCurrent
        + ", "
        + window()
        + ")";
  }
}
