package org.wattwright.examples.job;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCharge;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.wattwright.battery.Chemistry;
import org.wattwright.check.Basis;
import org.wattwright.units.SpecificHeatCapacity;

/**
 * A battery cell as the job states it.
 *
 * <p>Immutable and thread-safe.
 *
 * @param origin where it stands
 * @param name its name, unique in the job
 * @param chemistry which estimates apply
 * @param capacity present and rated capacity and what they rest on
 * @param voltages limits and open-circuit curve
 * @param resistances for seconds and for milliseconds
 * @param discharge currents and temperatures of discharge
 * @param charge currents and temperatures of charge
 * @param mass &gt; 0
 * @param specificHeat empty if not stated
 * @param basis what all data rest on that have no basis of their own
 * @param source where they come from
 */
public record CellInput(
    Origin origin,
    String name,
    Chemistry chemistry,
    Capacity capacity,
    Voltages voltages,
    Resistances resistances,
    Currents discharge,
    Currents charge,
    Quantity<Mass> mass,
    Optional<Quantity<SpecificHeatCapacity>> specificHeat,
    Basis basis,
    String source) {
  /**
   * How much charge the cell holds.
   *
   * @param present at its age, &gt; 0
   * @param rated when new; empty for a new cell
   * @param yearsInService 0 for a new cell
   * @param basis of the present capacity
   */
  public record Capacity(
      Quantity<ElectricCharge> present,
      Optional<Quantity<ElectricCharge>> rated,
      double yearsInService,
      Basis basis) {}

  /**
   * Voltages of the cell.
   *
   * @param minimum under load
   * @param maximum under charge, above the minimum
   * @param openCircuit at rest
   */
  public record Voltages(
      Quantity<ElectricPotential> minimum,
      Quantity<ElectricPotential> maximum,
      StateGrid<ElectricPotential> openCircuit) {}

  /**
   * Resistances of the cell; an empty one was not stated and must be estimated by name.
   *
   * @param discharge for seconds
   * @param charge for seconds; empty if as for discharge
   * @param ohmic for milliseconds
   * @param basis of the resistances
   */
  public record Resistances(
      Optional<StateGrid<ElectricResistance>> discharge,
      Optional<StateGrid<ElectricResistance>> charge,
      Optional<Quantity<ElectricResistance>> ohmic,
      Basis basis) {}

  /**
   * Currents one way, as magnitudes.
   *
   * @param continuous for any length of time
   * @param pulse for a limited time; empty if not stated
   * @param byTemperature largest current against temperature, rising in temperature; may be empty
   * @param coldest lowest temperature allowed
   * @param hottest highest temperature allowed
   */
  public record Currents(
      Quantity<ElectricCurrent> continuous,
      Optional<Pulse> pulse,
      List<Limit> byTemperature,
      Quantity<Temperature> coldest,
      Quantity<Temperature> hottest) {
    /**
     * Copies the list.
     *
     * @param continuous for any length of time
     * @param pulse for a limited time
     * @param byTemperature largest current against temperature
     * @param coldest lowest temperature allowed
     * @param hottest highest temperature allowed
     */
    public Currents {
      byTemperature = List.copyOf(byTemperature);
    }
  }

  /**
   * A current for a limited time.
   *
   * @param current at least the continuous one
   * @param duration &gt; 0
   */
  public record Pulse(Quantity<ElectricCurrent> current, Quantity<Time> duration) {}

  /**
   * Largest current at a temperature.
   *
   * @param temperature of the cell
   * @param current ≥ 0
   */
  public record Limit(Quantity<Temperature> temperature, Quantity<ElectricCurrent> current) {}
}
