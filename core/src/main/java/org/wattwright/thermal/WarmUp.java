package org.wattwright.thermal;

import static org.wattwright.units.WorkshopUnits.KILOWATT_HOUR;
import static org.wattwright.units.WorkshopUnits.MINUTE;
import static org.wattwright.units.WorkshopUnits.SECOND;
import static org.wattwright.units.WorkshopUnits.WATT;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Power;
import javax.measure.quantity.Time;
import org.wattwright.check.Recorder;
import org.wattwright.check.Worksheet;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.Measures;

/**
 * Warm-up of a cabin: how long the heater runs at full power, and what holds the cabin after.
 *
 * <p>Immutable and thread-safe.
 *
 * @param time until the temperature is reached, ≥ 0 s
 * @param heater full power, ≥ 0 W
 * @param holding power that holds the temperature after, ≥ 0 W
 */
public record WarmUp(Quantity<Time> time, Quantity<Power> heater, Quantity<Power> holding)
    implements Serializable {

  /**
   * Checks the range.
   *
   * @param time ≥ 0 s
   * @param heater ≥ 0 W
   * @param holding ≥ 0 W
   * @throws org.wattwright.units.InvalidInputException if a value is negative
   */
  public WarmUp {
    Require.quantity("WarmUp.time", time, SECOND).nonNegative();
    Require.quantity("WarmUp.heater", heater, WATT).nonNegative();
    Require.quantity("WarmUp.holding", holding, WATT).nonNegative();
    time = Measure.from(time, Kind.TIME);
    heater = Measure.from(heater, Kind.POWER);
    holding = Measure.from(holding, Kind.POWER);
  }

  /**
   * A warm-up.
   *
   * @param time until the temperature is reached, ≥ 0 s
   * @param heater full power, ≥ 0 W
   * @param holding power that holds the temperature after, ≥ 0 W
   * @return the warm-up
   * @throws org.wattwright.units.InvalidInputException if a value is negative
   */
  public static WarmUp of(Quantity<Time> time, Quantity<Power> heater, Quantity<Power> holding) {
    return new WarmUp(time, heater, holding);
  }

  /**
   * Heat spent until the temperature is reached.
   *
   * @return the energy
   */
  public Quantity<Energy> energy() {
    return energyOver(time);
  }

  /**
   * Heat spent on a trip: full power until the temperature is reached, then what holds it.
   *
   * @param trip duration of the trip, ≥ 0 s
   * @return the energy
   * @throws org.wattwright.units.InvalidInputException if the duration is negative
   */
  public Quantity<Energy> energyOver(Quantity<Time> trip) {
    return Kind.ENERGY.ofSi(energyJ(trip, Recorder.OFF));
  }

  /**
   * The working of the heat spent on a trip.
   *
   * @param trip duration of the trip, ≥ 0 s
   * @return the steps as computed
   * @throws org.wattwright.units.InvalidInputException if the duration is negative
   */
  public Worksheet worksheet(Quantity<Time> trip) {
    Worksheet.Recording recording = Worksheet.record("Cabin heat over a trip of " + trip);
    energyJ(trip, recording);
    return recording.toWorksheet();
  }

  private double energyJ(Quantity<Time> trip, Recorder recorder) {
    double tripS = Require.quantity("WarmUp.trip", trip, SECOND).nonNegative();
    double fullS = Math.min(tripS, Kind.TIME.siValueOf(time));
    double heaterW = Kind.POWER.siValueOf(heater);
    double holdingW = Kind.POWER.siValueOf(holding);
    double energyJ = heaterW * fullS + holdingW * (tripS - fullS);
    if (recorder.isOn()) {
      recorder
          .step("E", "heat: full power, then holding")
          .formula("P·t_1 + P_h·(t − t_1)")
          .with("P", heaterW, WATT)
          .with("t_1", fullS, MINUTE)
          .with("P_h", holdingW, WATT)
          .with("t", tripS, MINUTE)
          .source(Cabin.BALANCE)
          .gives(energyJ, KILOWATT_HOUR);
    }
    return energyJ;
  }

  /**
   * Time, energy and what holds the temperature after.
   *
   * @return for example {@code 9.7 min at 5 kW (0.81 kW·h), then 2475 W}
   */
  @Override
  public String toString() {
    return Measures.format(time, MINUTE, 1)
        + " at "
        + heater
        + " ("
        + Measures.format(energy(), KILOWATT_HOUR, 2)
        + "), then "
        + Measures.format(holding, WATT, 0);
  }
}
