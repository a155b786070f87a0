package org.wattwright.voltage;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCapacitance;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Power;
import javax.measure.quantity.Time;
import org.wattwright.check.Basis;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.WorkshopUnits;

/**
 * Voltage rise of the bus when a contactor opens while the motor regenerates: the braking power
 * goes into the bus capacitance until the inverter stops.
 *
 * <p>U = √(U₀² + 2·P·t/C), the energy balance of the capacitance. Immutable and thread-safe.
 *
 * @param power regeneration power at the bus, ≥ 0
 * @param capacitance of everything left on the bus, &gt; 0
 * @param startVoltage bus voltage at the opening, ≥ 0
 */
public record RegenerationCutOff(
    Quantity<Power> power,
    Quantity<ElectricCapacitance> capacitance,
    Quantity<ElectricPotential> startVoltage)
    implements Serializable {
  /**
   * Checks the range.
   *
   * @param power regeneration power at the bus, ≥ 0
   * @param capacitance of everything left on the bus, &gt; 0
   * @param startVoltage bus voltage at the opening, ≥ 0
   * @throws org.wattwright.units.InvalidInputException if a value is outside its range
   */
  public RegenerationCutOff {
    Require.quantity("RegenerationCutOff.power", power, WorkshopUnits.KILOWATT).nonNegative();
    Require.quantity("RegenerationCutOff.capacitance", capacitance, WorkshopUnits.MICROFARAD)
        .positive();
    Require.quantity("RegenerationCutOff.startVoltage", startVoltage, WorkshopUnits.VOLT)
        .nonNegative();
    power = Measure.from(power, Kind.POWER);
    capacitance = Measure.from(capacitance, Kind.CAPACITANCE);
    startVoltage = Measure.from(startVoltage, Kind.VOLTAGE);
  }

  /**
   * Bus voltage a while after the contactor opened.
   *
   * @param time ≥ 0 s
   * @return in V
   * @throws org.wattwright.units.InvalidInputException if the time is negative
   */
  public Quantity<ElectricPotential> voltageAfter(Quantity<Time> time) {
    double timeS = Require.quantity("time", time, WorkshopUnits.MILLISECOND).nonNegative();
    double startV = Kind.VOLTAGE.siValueOf(startVoltage);
    double raisedV2 =
        2 * Kind.POWER.siValueOf(power) * timeS / Kind.CAPACITANCE.siValueOf(capacitance);
    return Kind.VOLTAGE.ofSi(Math.sqrt(startV * startV + raisedV2));
  }

  /**
   * Time until the bus reaches a voltage: t = C·(U² − U₀²)/(2·P).
   *
   * @param voltage at or above the start voltage
   * @return in s; very long at little power
   * @throws org.wattwright.units.InvalidInputException if the voltage lies below the start voltage,
   *     or the power is 0
   */
  public Quantity<Time> timeUntil(Quantity<ElectricPotential> voltage) {
    double startV = Kind.VOLTAGE.siValueOf(startVoltage);
    double endV = Kind.VOLTAGE.siValueOf(voltage);
    if (!(endV >= startV)) {
      throw org.wattwright.units.InvalidInputException.of(
          "voltage", "≥ startVoltage " + startVoltage, voltage.toString());
    }
    double powerW =
        Require.quantity("RegenerationCutOff.power", power, WorkshopUnits.KILOWATT).positive();
    double capacitanceF = Kind.CAPACITANCE.siValueOf(capacitance);
    return Kind.TIME.ofSi(capacitanceF * (endV * endV - startV * startV) / (2 * powerW));
  }

  /**
   * The bus voltage when the inverter has reacted, against the absolute maximum of a device.
   *
   * @param device a device on the bus
   * @param reactionTime from the opening until regeneration stops, ≥ 0 s
   * @return the check; NOT_CHECKED if the absolute maximum is not known
   * @throws org.wattwright.units.InvalidInputException if the time is negative
   */
  public Check check(Device device, Quantity<Time> reactionTime) {
    CheckBuilder check =
        Check.named(
                "voltage.regeneration-cut-off",
                "bus voltage after a contactor opens under regeneration against " + device.name())
            .source(Source.dataSheet(device.name()))
            .basis(Basis.DATA_SHEET)
            .safety();
    return device
        .window()
        .absoluteMaximum()
        .map(
            limit ->
                check.atMost(
                    Figure.of(voltageAfter(reactionTime), WorkshopUnits.VOLT),
                    Figure.of(limit, WorkshopUnits.VOLT)))
        .orElseGet(() -> check.notChecked(device.name() + ".absoluteMaximum"));
  }
}
