package org.wattwright.voltage;

import static org.wattwright.units.WorkshopUnits.KILOWATT;
import static org.wattwright.units.WorkshopUnits.MICROFARAD;
import static org.wattwright.units.WorkshopUnits.MILLISECOND;
import static org.wattwright.units.WorkshopUnits.VOLT;

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
import org.wattwright.check.Party;
import org.wattwright.check.Recorder;
import org.wattwright.check.Source;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.Measures;

/**
 * Voltage rise of the bus when a contactor opens while the motor regenerates: the braking power
 * goes into the bus capacitance until the inverter stops.
 *
 * <p>U = √(U₀² + 2·P·t/C), the energy balance of the capacitance at constant power; what loads on
 * the bus take is left out, so the rise is the highest. Immutable and thread-safe.
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
   * @throws InvalidInputException if a value is outside its range
   */
  public RegenerationCutOff {
    Require.quantity("RegenerationCutOff.power", power, KILOWATT).nonNegative();
    Require.quantity("RegenerationCutOff.capacitance", capacitance, MICROFARAD).positive();
    Require.quantity("RegenerationCutOff.startVoltage", startVoltage, VOLT).nonNegative();
    power = Measure.from(power, Kind.POWER);
    capacitance = Measure.from(capacitance, Kind.CAPACITANCE);
    startVoltage = Measure.from(startVoltage, Kind.VOLTAGE);
  }

  /**
   * Bus voltage a while after the contactor opened.
   *
   * @param time ≥ 0 s
   * @return in V
   * @throws InvalidInputException if the time is negative
   */
  public Quantity<ElectricPotential> voltageAfter(Quantity<Time> time) {
    return Kind.VOLTAGE.ofSi(voltageV(time, Recorder.OFF));
  }

  /**
   * The working of the bus voltage a while after the contactor opened.
   *
   * @param time ≥ 0 s
   * @return the steps as computed
   * @throws InvalidInputException if the time is negative
   */
  public Worksheet worksheet(Quantity<Time> time) {
    Worksheet.Recording recording =
        Worksheet.record("Bus voltage " + time + " after a contactor opens under regeneration");
    voltageV(time, recording);
    return recording.toWorksheet();
  }

  private double voltageV(Quantity<Time> time, Recorder recorder) {
    double timeS = Require.quantity("time", time, MILLISECOND).nonNegative();
    double startV = Kind.VOLTAGE.siValueOf(startVoltage);
    double energyJ = Kind.POWER.siValueOf(power) * timeS;
    double voltageV = Math.sqrt(startV * startV + 2 * energyJ / capacitanceF());
    if (recorder.isOn()) {
      recorder
          .step("U", "bus voltage after the time")
          .formula("√(U_0² + 2·P·t/C)")
          .with("U_0", Figure.of(startVoltage, VOLT))
          .with("P", Figure.of(power, KILOWATT))
          .with("t", Figure.of(time, MILLISECOND))
          .with("C", Figure.of(capacitance, MICROFARAD))
          .gives(voltageV, VOLT);
    }
    return voltageV;
  }

  /**
   * Time until the bus reaches a voltage: t = C·(U² − U₀²)/(2·P).
   *
   * @param voltage at or above the start voltage
   * @return in s; very long at little power
   * @throws InvalidInputException if the voltage lies below the start voltage, or the power is 0
   */
  public Quantity<Time> timeUntil(Quantity<ElectricPotential> voltage) {
    double powerW = Require.quantity("RegenerationCutOff.power", power, KILOWATT).positive();
    return Kind.TIME.ofSi(capacitanceF() * roomV2(voltage) / (2 * powerW));
  }

  /**
   * Largest power that this capacitance takes up within a time without passing a voltage: P = C·(U²
   * − U₀²)/(2·t).
   *
   * @param voltage at or above the start voltage
   * @param time &gt; 0 s
   * @return in kW
   * @throws InvalidInputException if the voltage lies below the start voltage, or the time is not
   *     positive
   */
  public Quantity<Power> largestPower(Quantity<ElectricPotential> voltage, Quantity<Time> time) {
    double timeS = Require.quantity("time", time, MILLISECOND).positive();
    return Kind.POWER.ofSi(capacitanceF() * roomV2(voltage) / (2 * timeS));
  }

  /**
   * Capacitance that would take up this power for a time without passing a voltage: C = 2·P·t/(U² −
   * U₀²).
   *
   * @param voltage above the start voltage
   * @param time ≥ 0 s
   * @return in F
   * @throws InvalidInputException if the voltage is not above the start voltage, or the time is
   *     negative
   */
  public Quantity<ElectricCapacitance> capacitanceNeeded(
      Quantity<ElectricPotential> voltage, Quantity<Time> time) {
    double timeS = Require.quantity("time", time, MILLISECOND).nonNegative();
    double roomV2 = roomV2(voltage);
    if (!(roomV2 > 0)) {
      throw InvalidInputException.of(
          "voltage", "> startVoltage " + startVoltage, voltage.toString());
    }
    return Kind.CAPACITANCE.ofSi(2 * Kind.POWER.siValueOf(power) * timeS / roomV2);
  }

  /** U² − U₀². */
  private double roomV2(Quantity<ElectricPotential> voltage) {
    double startV = Kind.VOLTAGE.siValueOf(startVoltage);
    double endV = Kind.VOLTAGE.siValueOf(voltage);
    if (!(endV >= startV)) {
      throw InvalidInputException.of(
          "voltage", "≥ startVoltage " + startVoltage, voltage.toString());
    }
    return endV * endV - startV * startV;
  }

  private double capacitanceF() {
    return Kind.CAPACITANCE.siValueOf(capacitance);
  }

  /**
   * The bus voltage when the inverter has reacted, against the absolute maximum of a device, with
   * inputs from data sheets.
   *
   * @param device a device on the bus
   * @param reactionTime from the opening until regeneration stops, ≥ 0 s
   * @return the check; NOT_CHECKED if the absolute maximum is not known
   * @throws InvalidInputException if the time is negative
   */
  public Check check(Device device, Quantity<Time> reactionTime) {
    return check(device, reactionTime, Basis.DATA_SHEET);
  }

  /**
   * The bus voltage when the inverter has reacted, against the absolute maximum of a device.
   *
   * @param device a device on the bus
   * @param reactionTime from the opening until regeneration stops, ≥ 0 s
   * @param basis what capacitance and reaction time rest on; estimated gives at most a caution
   * @return the check; NOT_CHECKED if the absolute maximum is not known
   * @throws InvalidInputException if the time is negative
   */
  public Check check(Device device, Quantity<Time> reactionTime, Basis basis) {
    Figure reached = Figure.ofSi(voltageV(reactionTime, Recorder.OFF), VOLT);
    CheckBuilder check =
        Check.named(
                "voltage.regeneration-cut-off",
                "bus voltage after a contactor opens under regeneration against " + device.name())
            .source(Source.dataSheet(device.name()))
            .basis(basis.and(Basis.DATA_SHEET))
            .safety();
    return device
        .window()
        .absoluteMaximum()
        .map(
            limit ->
                check.note(remedy(limit, reactionTime)).atMost(reached, Figure.of(limit, VOLT)))
        .orElseGet(
            () ->
                check
                    .answeredBy(Party.PARTS_SUPPLIER)
                    .notChecked(reached, device.name() + ".absoluteMaximum"));
  }

  /** What would keep the limit. */
  private String remedy(Quantity<ElectricPotential> limit, Quantity<Time> reactionTime) {
    boolean hasRoom = Kind.VOLTAGE.compare(limit, startVoltage) > 0;
    if (!hasRoom || Kind.POWER.siValueOf(power) == 0) {
      return "reaction time " + reactionTime;
    }
    return "reaction time "
        + reactionTime
        + "; the limit is reached after "
        + Measures.format(timeUntil(limit), Kind.TIME)
        + ", or needs "
        + Measures.format(capacitanceNeeded(limit, reactionTime), MICROFARAD, 0);
  }

  /**
   * Power, capacitance and start voltage.
   *
   * @return for example {@code 20 kW into 500 µF from 380 V}
   */
  @Override
  public String toString() {
    return power + " into " + capacitance + " from " + startVoltage;
  }
}
