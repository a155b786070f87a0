package org.wattwright.charging;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCapacitance;
import javax.measure.quantity.ElectricPotential;
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

/** Collects the data of a {@link DcDcConverter}. */
public final class DcDcConverterBuilder {
  private final DeviceBuilder input;
  private final double lowestBusV;
  private @Nullable Quantity<ElectricPotential> outputVoltage;
  private @Nullable Quantity<Power> maximumOutputPower;
  private @Nullable EfficiencyByLoad efficiency;
  private @Nullable DeratingByTemperature derating;

  DcDcConverterBuilder(String name, VoltageWindow window) {
    input = Device.of(name, DeviceRole.CONVERTER, window);
    lowestBusV = Kind.VOLTAGE.siValueOf(window.operating().lowest());
  }

  /**
   * Voltage it holds at the low-voltage battery; required.
   *
   * @param value &gt; 0 V
   * @return this builder
   * @throws InvalidInputException if not positive
   */
  public DcDcConverterBuilder outputVoltage(Quantity<ElectricPotential> value) {
    Require.quantity("DcDcConverter.outputVoltage", value, WorkshopUnits.VOLT).positive();
    outputVoltage = Measure.from(value, Kind.VOLTAGE);
    return this;
  }

  /**
   * Rated output power; required.
   *
   * @param value &gt; 0 kW
   * @return this builder
   * @throws InvalidInputException if not positive
   */
  public DcDcConverterBuilder maximumOutputPower(Quantity<Power> value) {
    Require.quantity("DcDcConverter.maximumOutputPower", value, WorkshopUnits.KILOWATT).positive();
    maximumOutputPower = Measure.from(value, Kind.POWER);
    return this;
  }

  /**
   * Efficiency over the load; required.
   *
   * @param value the table
   * @return this builder
   */
  public DcDcConverterBuilder efficiency(EfficiencyByLoad value) {
    efficiency = Objects.requireNonNull(value, "efficiency");
    return this;
  }

  /**
   * Share of the output power by temperature; not derated unless told.
   *
   * @param value the table
   * @return this builder
   */
  public DcDcConverterBuilder derating(DeratingByTemperature value) {
    derating = Objects.requireNonNull(value, "derating");
    return this;
  }

  /**
   * Capacitance between its traction-bus terminals.
   *
   * @param value ≥ 0 µF
   * @return this builder
   * @throws InvalidInputException if negative
   */
  public DcDcConverterBuilder capacitance(Quantity<ElectricCapacitance> value) {
    input.capacitance(value);
    return this;
  }

  /**
   * Mass.
   *
   * @param value &gt; 0 kg
   * @return this builder
   * @throws InvalidInputException if not positive
   */
  public DcDcConverterBuilder mass(Quantity<Mass> value) {
    input.mass(value);
    return this;
  }

  Quantity<ElectricPotential> voltage() {
    return MissingFields.present(outputVoltage);
  }

  Quantity<Power> outputPower() {
    return MissingFields.present(maximumOutputPower);
  }

  EfficiencyByLoad efficiencyTable() {
    return MissingFields.present(efficiency);
  }

  @Nullable DeratingByTemperature temperatureTable() {
    return derating;
  }

  /**
   * The converter. Its largest power and current on the traction bus follow: P/η, and that at the
   * lowest voltage it works at.
   *
   * @return an immutable converter
   * @throws InvalidInputException if output voltage, output power or efficiency is missing
   */
  public DcDcConverter build() {
    new MissingFields("DcDcConverter")
        .field("outputVoltage", outputVoltage)
        .field("maximumOutputPower", maximumOutputPower)
        .field("efficiency", efficiency)
        .rejectIfAny();
    double inputW = Kind.POWER.siValueOf(outputPower()) / efficiencyTable().at(1);
    input.maximumPower(Kind.POWER.ofSi(inputW));
    if (lowestBusV > 0) {
      input.maximumCurrent(Kind.CURRENT.ofSi(inputW / lowestBusV));
    }
    return new DcDcConverter(input.build(), this);
  }
}
