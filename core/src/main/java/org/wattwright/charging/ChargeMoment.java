package org.wattwright.charging;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.wattwright.check.Figure;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.StateOfCharge;

/**
 * One moment of a charge; the moments of a charge are its curve.
 *
 * <p>Immutable and thread-safe.
 *
 * @param time since the start
 * @param stateOfCharge of the pack
 * @param temperature of the cells
 * @param current into the pack, ≥ 0 A
 * @param voltage at the pack's terminals
 * @param power into the pack, ≥ 0 kW
 * @param limit what limits the current
 */
public record ChargeMoment(
    Quantity<Time> time,
    StateOfCharge stateOfCharge,
    Quantity<Temperature> temperature,
    Quantity<ElectricCurrent> current,
    Quantity<ElectricPotential> voltage,
    Quantity<Power> power,
    ChargeLimit limit)
    implements Serializable {
  /**
   * Takes any quantity implementation.
   *
   * @param time since the start
   * @param stateOfCharge of the pack
   * @param temperature of the cells
   * @param current into the pack
   * @param voltage at the pack's terminals
   * @param power into the pack
   * @param limit what limits the current
   */
  public ChargeMoment {
    time = Measure.from(time, Kind.TIME);
    Objects.requireNonNull(stateOfCharge, "stateOfCharge");
    temperature = Measure.from(temperature, Kind.TEMPERATURE);
    current = Measure.from(current, Kind.CURRENT);
    voltage = Measure.from(voltage, Kind.VOLTAGE);
    power = Measure.from(power, Kind.POWER);
    Objects.requireNonNull(limit, "limit");
  }

  static ChargeMoment of(ChargeRun.State state) {
    ChargeKernel.Moment moment = state.moment();
    return new ChargeMoment(
        Kind.TIME.ofSi(state.timeS()),
        StateOfCharge.of(state.soc()),
        Kind.TEMPERATURE.ofSi(state.temperatureK()),
        Kind.CURRENT.ofSi(moment.currentA()),
        Kind.VOLTAGE.ofSi(moment.voltageV()),
        Kind.POWER.ofSi(moment.terminalW()),
        moment.limit());
  }

  /**
   * Time, state of charge, current, voltage and limit.
   *
   * @return for example {@code 3 h 20 min, 80 %: 18.2 A at 351 V, limited by supply circuit}
   */
  @Override
  public String toString() {
    return Clock.text(Kind.TIME.siValueOf(time))
        + ", "
        + Figure.of(stateOfCharge)
        + ": "
        + Figure.of(current, Kind.CURRENT)
        + " at "
        + Figure.of(voltage, Kind.VOLTAGE)
        + ", limited by "
        + limit;
  }
}
