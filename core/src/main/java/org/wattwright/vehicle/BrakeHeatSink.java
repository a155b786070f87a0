package org.wattwright.vehicle;

import static org.wattwright.units.WorkshopUnits.JOULE_PER_KELVIN;
import static org.wattwright.units.WorkshopUnits.WATT_PER_KELVIN;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import org.wattwright.internal.Require;
import org.wattwright.units.HeatCapacity;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.ThermalConductance;

/**
 * Drums or discs of one axle as a body that stores heat and loses it to the passing air.
 *
 * <p>Without cooling the temperature found is an upper bound. Immutable and thread-safe.
 *
 * @param axle front or rear
 * @param capacity of both sides together, mass times specific heat (cast iron about 0.5 kJ/(kg·K)),
 *     &gt; 0 kJ/K
 * @param cooling to the air at the speed of the descent, both sides together, ≥ 0 W/K
 */
public record BrakeHeatSink(
    Axle axle, Quantity<HeatCapacity> capacity, Quantity<ThermalConductance> cooling)
    implements Serializable {
  /**
   * Checks the ranges.
   *
   * @param axle front or rear
   * @param capacity of both sides together, &gt; 0 kJ/K
   * @param cooling to the air, ≥ 0 W/K
   * @throws org.wattwright.units.InvalidInputException if an argument is outside its range
   */
  public BrakeHeatSink {
    Objects.requireNonNull(axle, "axle");
    Require.quantity("BrakeHeatSink.capacity", capacity, JOULE_PER_KELVIN).positive();
    Require.quantity("BrakeHeatSink.cooling", cooling, WATT_PER_KELVIN).nonNegative();
    capacity = Measure.from(capacity, Kind.HEAT_CAPACITY);
    cooling = Measure.from(cooling, Kind.THERMAL_CONDUCTANCE);
  }

  /**
   * A body that keeps all its heat.
   *
   * @param axle front or rear
   * @param capacity of both sides together, &gt; 0 kJ/K
   * @return a sink without cooling
   * @throws org.wattwright.units.InvalidInputException if the capacity is not positive
   */
  public static BrakeHeatSink uncooled(Axle axle, Quantity<HeatCapacity> capacity) {
    return new BrakeHeatSink(axle, capacity, WATT_PER_KELVIN.of(0));
  }

  BrakeHeatSink times(double factor) {
    return new BrakeHeatSink(
        axle,
        Kind.HEAT_CAPACITY.ofSi(capacityJPerK() * factor),
        Kind.THERMAL_CONDUCTANCE.ofSi(coolingWPerK() * factor));
  }

  double capacityJPerK() {
    return Kind.HEAT_CAPACITY.siValueOf(capacity);
  }

  double coolingWPerK() {
    return Kind.THERMAL_CONDUCTANCE.siValueOf(cooling);
  }
}
