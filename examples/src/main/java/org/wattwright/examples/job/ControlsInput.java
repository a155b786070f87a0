package org.wattwright.examples.job;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Time;
import org.wattwright.check.Given;
import org.wattwright.installation.Ammeter;
import org.wattwright.installation.BleedBalancing;
import org.wattwright.installation.DialScale;
import org.wattwright.installation.MonitorUnitType;
import org.wattwright.installation.PedalGear;
import org.wattwright.installation.SenderMapping;
import org.wattwright.installation.SettingsLadderBuilder;
import org.wattwright.installation.Shunt;
import org.wattwright.installation.StopLampRule;
import org.wattwright.installation.ThrottleMap;
import org.wattwright.installation.ThrottleSignal;
import org.wattwright.installation.VacuumReserve;
import org.wattwright.installation.VacuumSystem;

/**
 * Brake vacuum, settings, pedal and gauges, as {@code controls.csv} states them.
 *
 * @param brakes vacuum, reserve and pedal
 * @param monitoring measuring units and balancing
 * @param ladder the settings, to be completed with the limits of the cell chosen
 * @param throttle pedal
 * @param gauges shunt, ammeter and dials
 * @param statements every line of the file, with its basis
 */
public record ControlsInput(
    Brakes brakes,
    Monitoring monitoring,
    Ladder ladder,
    Throttle throttle,
    Gauges gauges,
    List<Statement> statements) {
  /**
   * Copies the list.
   *
   * @param brakes vacuum, reserve and pedal
   * @param monitoring measuring units and balancing
   * @param ladder the settings
   * @param throttle pedal
   * @param gauges shunt, ammeter and dials
   * @param statements every line of the file
   */
  public ControlsInput {
    statements = List.copyOf(statements);
  }

  /**
   * Brake vacuum and what is left without it.
   *
   * @param vacuum at the highest road
   * @param reserve asked for
   * @param betweenStops usual time between two stops
   * @param pedal pedal and master cylinder
   * @param secondary line pressure that secondary braking needs
   * @param lamps where the drive lights and puts out the stop lamps
   */
  public record Brakes(
      VacuumSystem vacuum,
      VacuumReserve reserve,
      Quantity<Time> betweenStops,
      PedalGear pedal,
      Given<Quantity<Pressure>> secondary,
      StopLampRule.Switch lamps) {}

  /**
   * Measuring units and balancing.
   *
   * @param type of the units
   * @param everyTapFused whether every sense wire has a fuse at its cell
   * @param fuseInString whether a fuse sits in the middle of each string
   * @param bleed balancing
   * @param imbalance share of the charge between fullest and emptiest cell
   * @param within time allowed
   */
  public record Monitoring(
      MonitorUnitType type,
      boolean everyTapFused,
      boolean fuseInString,
      BleedBalancing bleed,
      double imbalance,
      Quantity<Time> within) {}

  /** A ladder of settings that lacks the number of cells and their limits. */
  @FunctionalInterface
  public interface Ladder {
    /**
     * Sets every step that the file states.
     *
     * @param builder begun with the cells in series
     * @return the same builder
     */
    SettingsLadderBuilder addTo(SettingsLadderBuilder builder);
  }

  /**
   * The pedal.
   *
   * @param signal two tracks
   * @param map to torque
   * @param tolerance of the travel as read, a share
   * @param release longest time until torque is gone
   */
  public record Throttle(
      ThrottleSignal signal, ThrottleMap map, double tolerance, Quantity<Time> release) {}

  /**
   * Shunt, ammeter and the old dials.
   *
   * @param continuous current of the drive
   * @param shunt in the negative pole of the pack
   * @param ammeter beside it
   * @param dial the fuel dial
   * @param charge marks of the fuel dial
   * @param motor marks of the temperature dial
   */
  public record Gauges(
      Quantity<ElectricCurrent> continuous,
      Shunt shunt,
      Ammeter ammeter,
      SenderMapping dial,
      DialScale.ChargeMarks charge,
      DialScale.TemperatureMarks motor) {}
}
