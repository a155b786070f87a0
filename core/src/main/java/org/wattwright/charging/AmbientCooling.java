package org.wattwright.charging;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.wattwright.internal.Require;
import org.wattwright.units.HeatCapacity;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.ThermalConductance;
import org.wattwright.units.WorkshopUnits;

/**
 * A pack as one lump that warms by its losses and gives heat to its surroundings.
 *
 * <p>C·dT/dt = heat − G·(T − T_a). One temperature for all cells. Source: heat balance, law of
 * physics. Immutable and thread-safe.
 *
 * @param heatCapacity of cells and what warms with them, &gt; 0 kJ/K
 * @param conductance to the surroundings, ≥ 0 W/K; 0 W/K is a pack that keeps its heat
 * @param ambient absolute temperature of the surroundings
 */
public record AmbientCooling(
    Quantity<HeatCapacity> heatCapacity,
    Quantity<ThermalConductance> conductance,
    Quantity<Temperature> ambient)
    implements Serializable {
  /**
   * Checks the ranges.
   *
   * @param heatCapacity &gt; 0 kJ/K
   * @param conductance ≥ 0 W/K
   * @param ambient absolute temperature of the surroundings
   * @throws org.wattwright.units.InvalidInputException if a value is outside its range
   */
  public AmbientCooling {
    Require.quantity(
            "AmbientCooling.heatCapacity", heatCapacity, WorkshopUnits.KILOJOULE_PER_KELVIN)
        .positive();
    Require.quantity("AmbientCooling.conductance", conductance, WorkshopUnits.WATT_PER_KELVIN)
        .nonNegative();
    heatCapacity = Measure.from(heatCapacity, Kind.HEAT_CAPACITY);
    conductance = Measure.from(conductance, Kind.THERMAL_CONDUCTANCE);
    ambient = Measure.from(Objects.requireNonNull(ambient, "ambient"), Kind.TEMPERATURE);
  }

  /**
   * A pack and its surroundings.
   *
   * @param heatCapacity of cells and what warms with them, &gt; 0 kJ/K
   * @param conductance to the surroundings, ≥ 0 W/K
   * @param ambient absolute temperature of the surroundings
   * @return the cooling
   * @throws org.wattwright.units.InvalidInputException if a value is outside its range
   */
  public static AmbientCooling of(
      Quantity<HeatCapacity> heatCapacity,
      Quantity<ThermalConductance> conductance,
      Quantity<Temperature> ambient) {
    return new AmbientCooling(heatCapacity, conductance, ambient);
  }

  /** dT/dt in K/s. */
  double warmingKPerS(double temperatureK, double heatW) {
    double lossW =
        Kind.THERMAL_CONDUCTANCE.siValueOf(conductance)
            * (temperatureK - Kind.TEMPERATURE.siValueOf(ambient));
    return (heatW - lossW) / Kind.HEAT_CAPACITY.siValueOf(heatCapacity);
  }

  /**
   * All three.
   *
   * @return for example {@code 180 kJ/K, 6 W/K to 10 °C}
   */
  @Override
  public String toString() {
    return heatCapacity + ", " + conductance + " to " + ambient;
  }
}
