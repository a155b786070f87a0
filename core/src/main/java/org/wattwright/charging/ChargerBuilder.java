package org.wattwright.charging;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCapacitance;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import org.jspecify.annotations.Nullable;
import org.wattwright.internal.MissingFields;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.WorkshopUnits;
import org.wattwright.voltage.Device;
import org.wattwright.voltage.DeviceBuilder;
import org.wattwright.voltage.DeviceRole;
import org.wattwright.voltage.VoltageWindow;

/** Collects the data of a {@link Charger}; the output side is that of a {@link Device}. */
public final class ChargerBuilder {
  private static final int THREE = 3;

  private final DeviceBuilder output;
  private @Nullable Quantity<Power> maximumPower;
  private @Nullable Quantity<ElectricCurrent> maximumInputCurrent;
  private @Nullable Quantity<Power> maximumInputPower;
  private int phases = 1;
  private double powerFactor = 1;
  private @Nullable EfficiencyByLoad efficiency;
  private @Nullable DeratingByTemperature derating;

  ChargerBuilder(String name, VoltageWindow window) {
    output = Device.of(name, DeviceRole.CHARGER, window);
  }

  /**
   * Rated output power; required.
   *
   * @param value &gt; 0 kW
   * @return this builder
   * @throws InvalidInputException if not positive
   */
  public ChargerBuilder maximumPower(Quantity<Power> value) {
    output.maximumPower(value);
    maximumPower = Measure.from(value, Kind.POWER);
    return this;
  }

  /**
   * Largest output current; not limited unless told.
   *
   * @param value &gt; 0 A
   * @return this builder
   * @throws InvalidInputException if not positive
   */
  public ChargerBuilder maximumCurrent(Quantity<ElectricCurrent> value) {
    output.maximumCurrent(value);
    return this;
  }

  /**
   * Capacitance between its output terminals.
   *
   * @param value ≥ 0 µF
   * @return this builder
   * @throws InvalidInputException if negative
   */
  public ChargerBuilder capacitance(Quantity<ElectricCapacitance> value) {
    output.capacitance(value);
    return this;
  }

  /**
   * Mass.
   *
   * @param value &gt; 0 kg
   * @return this builder
   * @throws InvalidInputException if not positive
   */
  public ChargerBuilder mass(Quantity<Mass> value) {
    output.mass(value);
    return this;
  }

  /**
   * Largest current drawn from each phase; required.
   *
   * @param value &gt; 0 A
   * @return this builder
   * @throws InvalidInputException if not positive
   */
  public ChargerBuilder maximumInputCurrent(Quantity<ElectricCurrent> value) {
    Require.quantity("Charger.maximumInputCurrent", value, WorkshopUnits.AMPERE).positive();
    maximumInputCurrent = Measure.from(value, Kind.CURRENT);
    return this;
  }

  /**
   * Largest power drawn from the mains; not limited unless told.
   *
   * @param value &gt; 0 kW
   * @return this builder
   * @throws InvalidInputException if not positive
   */
  public ChargerBuilder maximumInputPower(Quantity<Power> value) {
    Require.quantity("Charger.maximumInputPower", value, WorkshopUnits.KILOWATT).positive();
    maximumInputPower = Measure.from(value, Kind.POWER);
    return this;
  }

  /**
   * Draws from three phases where the supply has them; from one unless told.
   *
   * @return this builder
   */
  public ChargerBuilder threePhase() {
    phases = THREE;
    return this;
  }

  /**
   * Power factor; 1 unless told.
   *
   * @param value &gt; 0 and ≤ 1
   * @return this builder
   * @throws InvalidInputException if outside its range
   */
  public ChargerBuilder powerFactor(double value) {
    if (!(value > 0 && value <= 1)) {
      throw InvalidInputException.of("Charger.powerFactor", "> 0 and ≤ 1", Double.toString(value));
    }
    powerFactor = value;
    return this;
  }

  /**
   * Efficiency over the load; required.
   *
   * @param value the table
   * @return this builder
   */
  public ChargerBuilder efficiency(EfficiencyByLoad value) {
    efficiency = Objects.requireNonNull(value, "efficiency");
    return this;
  }

  /**
   * Share of the output power by temperature; not derated unless told.
   *
   * @param value the table
   * @return this builder
   */
  public ChargerBuilder derating(DeratingByTemperature value) {
    derating = Objects.requireNonNull(value, "derating");
    return this;
  }

  Quantity<ElectricCurrent> inputCurrent() {
    return MissingFields.present(maximumInputCurrent);
  }

  @Nullable Quantity<Power> inputPower() {
    return maximumInputPower;
  }

  int phaseCount() {
    return phases;
  }

  double factor() {
    return powerFactor;
  }

  EfficiencyByLoad efficiencyTable() {
    return MissingFields.present(efficiency);
  }

  @Nullable DeratingByTemperature temperatureTable() {
    return derating;
  }

  /**
   * The charger.
   *
   * @return an immutable charger
   * @throws InvalidInputException if output power, input current or efficiency is missing
   */
  public Charger build() {
    new MissingFields("Charger")
        .field("maximumPower", maximumPower)
        .field("maximumInputCurrent", maximumInputCurrent)
        .field("efficiency", efficiency)
        .rejectIfAny();
    return new Charger(output.build(), this);
  }
}
