package org.wattwright.thermal;

import static org.wattwright.units.WorkshopUnits.JOULE_PER_KELVIN;
import static org.wattwright.units.WorkshopUnits.JOULE_PER_KILOGRAM_KELVIN;
import static org.wattwright.units.WorkshopUnits.KILOGRAM;
import static org.wattwright.units.WorkshopUnits.SECOND;
import static org.wattwright.units.WorkshopUnits.WATT_PER_KELVIN;

import java.io.Serializable;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.wattwright.check.Figure;
import org.wattwright.internal.Require;
import org.wattwright.units.HeatCapacity;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.SpecificHeatCapacity;
import org.wattwright.units.TemperatureDifference;
import org.wattwright.units.ThermalConductance;

/**
 * A body at one temperature that loses heat to its surroundings: a pack, a heater loop, a cabin.
 *
 * <p>C·dT/dt = P − G·(T − Ta), so T(t) = T∞ + (T₀ − T∞)·e^(−t·G/C) with T∞ = Ta + P/G. Source:
 * energy balance. Immutable and thread-safe.
 *
 * @param heatCapacity &gt; 0 J/K
 * @param conductance to the surroundings, ≥ 0 W/K; 0 for a body that loses nothing
 */
public record LumpedBody(
    Quantity<HeatCapacity> heatCapacity, Quantity<ThermalConductance> conductance)
    implements Serializable {

  /**
   * Checks the range.
   *
   * @param heatCapacity &gt; 0 J/K
   * @param conductance ≥ 0 W/K
   * @throws InvalidInputException if a value is outside its range
   */
  public LumpedBody {
    Require.quantity("LumpedBody.heatCapacity", heatCapacity, JOULE_PER_KELVIN).positive();
    Require.quantity("LumpedBody.conductance", conductance, WATT_PER_KELVIN).nonNegative();
    heatCapacity = Measure.from(heatCapacity, Kind.HEAT_CAPACITY);
    conductance = Measure.from(conductance, Kind.THERMAL_CONDUCTANCE);
  }

  /**
   * A body with its loss.
   *
   * @param heatCapacity &gt; 0 J/K
   * @param conductance to the surroundings, ≥ 0 W/K
   * @return the body
   * @throws InvalidInputException if a value is outside its range
   */
  public static LumpedBody of(
      Quantity<HeatCapacity> heatCapacity, Quantity<ThermalConductance> conductance) {
    return new LumpedBody(heatCapacity, conductance);
  }

  /**
   * A body of one material that loses nothing: m·c.
   *
   * @param mass &gt; 0 kg
   * @param specificHeat &gt; 0 J/(kg·K)
   * @return the body
   * @throws InvalidInputException if a value is not positive
   */
  public static LumpedBody lossless(
      Quantity<Mass> mass, Quantity<SpecificHeatCapacity> specificHeat) {
    return new LumpedBody(
        Kind.HEAT_CAPACITY.ofSi(heatCapacityJPerK(mass, specificHeat)),
        Kind.THERMAL_CONDUCTANCE.ofSi(0));
  }

  static double heatCapacityJPerK(
      Quantity<Mass> mass, Quantity<SpecificHeatCapacity> specificHeat) {
    return Require.quantity("LumpedBody.mass", mass, KILOGRAM).positive()
        * Require.quantity("LumpedBody.specificHeat", specificHeat, JOULE_PER_KILOGRAM_KELVIN)
            .positive();
  }

  /**
   * This body with more of another material: C + m·c.
   *
   * @param mass &gt; 0 kg
   * @param specificHeat &gt; 0 J/(kg·K)
   * @return both as one body
   * @throws InvalidInputException if a value is not positive
   */
  public LumpedBody and(Quantity<Mass> mass, Quantity<SpecificHeatCapacity> specificHeat) {
    double moreJPerK = heatCapacityJPerK(mass, specificHeat);
    return new LumpedBody(Kind.HEAT_CAPACITY.ofSi(capacityJPerK() + moreJPerK), conductance);
  }

  /**
   * Time in which 63 % of a change is made: C/G.
   *
   * @return in s; empty if the body loses nothing
   */
  public Optional<Quantity<Time>> timeConstant() {
    return conductanceWPerK() > 0
        ? Optional.of(Kind.TIME.ofSi(capacityJPerK() / conductanceWPerK()))
        : Optional.empty();
  }

  /**
   * How far a heat holds it above its surroundings for good: P/G.
   *
   * @param heat into the body; negative cools
   * @return the rise; empty if the body loses nothing
   */
  public Optional<Quantity<TemperatureDifference>> steadyRise(Quantity<Power> heat) {
    double heatW = Kind.POWER.siValueOf(heat);
    return conductanceWPerK() > 0
        ? Optional.of(Kind.TEMPERATURE_DIFFERENCE.ofSi(heatW / conductanceWPerK()))
        : Optional.empty();
  }

  /**
   * Heat that a change of temperature takes, without loss: C·ΔT.
   *
   * @param rise change of temperature; negative gives heat back
   * @return the heat
   */
  public Quantity<Energy> heatFor(Quantity<TemperatureDifference> rise) {
    return Kind.ENERGY.ofSi(capacityJPerK() * Kind.TEMPERATURE_DIFFERENCE.siValueOf(rise));
  }

  /**
   * Temperature after a time of constant heat.
   *
   * @param start its temperature at the start
   * @param surroundings temperature of the surroundings
   * @param heat into the body; negative cools
   * @param time ≥ 0 s
   * @return absolute
   * @throws InvalidInputException if the time is negative
   */
  public Quantity<Temperature> temperatureAfter(
      Quantity<Temperature> start,
      Quantity<Temperature> surroundings,
      Quantity<Power> heat,
      Quantity<Time> time) {
    double timeS = Require.quantity("LumpedBody.time", time, SECOND).nonNegative();
    double startK = Kind.TEMPERATURE.siValueOf(start);
    double rateKPerS = rateKPerS(startK, surroundings, heat);
    return Kind.TEMPERATURE.ofSi(Relaxation.afterK(startK, rateKPerS, decayPerS(), timeS));
  }

  /**
   * Time of constant heat until a temperature is reached: −C/G·ln((T∞ − T)/(T∞ − T₀)).
   *
   * @param target the temperature to reach, above or below the start
   * @param start its temperature at the start
   * @param surroundings temperature of the surroundings
   * @param heat into the body; negative cools
   * @return in s, 0 s if it starts there; empty if it is never reached
   */
  public Optional<Quantity<Time>> timeTo(
      Quantity<Temperature> target,
      Quantity<Temperature> start,
      Quantity<Temperature> surroundings,
      Quantity<Power> heat) {
    double startK = Kind.TEMPERATURE.siValueOf(start);
    double riseK = Kind.TEMPERATURE.siValueOf(target) - startK;
    double rateKPerS = rateKPerS(startK, surroundings, heat);
    double timeS = Relaxation.timeToS(riseK, rateKPerS, decayPerS());
    return timeS < Double.POSITIVE_INFINITY ? Optional.of(Kind.TIME.ofSi(timeS)) : Optional.empty();
  }

  private double rateKPerS(
      double startK, Quantity<Temperature> surroundings, Quantity<Power> heat) {
    double aboveK = startK - Kind.TEMPERATURE.siValueOf(surroundings);
    return (Kind.POWER.siValueOf(heat) - conductanceWPerK() * aboveK) / capacityJPerK();
  }

  private double decayPerS() {
    return conductanceWPerK() / capacityJPerK();
  }

  private double capacityJPerK() {
    return Kind.HEAT_CAPACITY.siValueOf(heatCapacity);
  }

  private double conductanceWPerK() {
    return Kind.THERMAL_CONDUCTANCE.siValueOf(conductance);
  }

  /**
   * Heat capacity and loss.
   *
   * @return for example {@code 429.6 kJ/K, losing 12 W/K}
   */
  @Override
  public String toString() {
    return Figure.of(heatCapacity, Kind.HEAT_CAPACITY)
        + ", losing "
        + Figure.of(conductance, WATT_PER_KELVIN);
  }
}
