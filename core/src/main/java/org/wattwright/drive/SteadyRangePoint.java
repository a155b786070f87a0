package org.wattwright.drive;

import static org.wattwright.units.WorkshopUnits.KILOMETRE;
import static org.wattwright.units.WorkshopUnits.WATT_HOUR_PER_KILOMETRE;

import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Power;
import javax.measure.quantity.Speed;
import org.wattwright.units.EnergyPerDistance;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.Measures;

/**
 * Range at one steady speed.
 *
 * @param speed held
 * @param power at the terminals of the pack
 * @param consumption at the terminals for each distance
 * @param range distance to the end
 * @param endedBy the reserve, or that the speed could no longer be held
 */
public record SteadyRangePoint(
    Quantity<Speed> speed,
    Quantity<Power> power,
    Quantity<EnergyPerDistance> consumption,
    Quantity<Length> range,
    RangeEnd endedBy)
    implements Serializable {
  /**
   * Takes any implementation of a quantity.
   *
   * @param speed held
   * @param power at the terminals of the pack
   * @param consumption at the terminals for each distance
   * @param range distance to the end
   * @param endedBy the reserve, or that the speed could no longer be held
   */
  public SteadyRangePoint {
    speed = Measure.from(speed, Kind.SPEED);
    power = Measure.from(power, Kind.POWER);
    consumption = Measure.from(consumption, Kind.ENERGY_PER_DISTANCE);
    range = Measure.from(range, Kind.LENGTH);
    Objects.requireNonNull(endedBy, "endedBy");
  }

  /**
   * Speed, range and consumption.
   *
   * @return for example {@code 80 km/h: 178.2 km at 134.9 W·h/km}
   */
  @Override
  public String toString() {
    return Measures.format(speed, Kind.SPEED)
        + ": "
        + Measures.format(range, KILOMETRE, 1)
        + " at "
        + Measures.format(consumption, WATT_HOUR_PER_KILOMETRE, 1)
        + (endedBy == RangeEnd.RESERVE ? "" : ", ended because " + endedBy);
  }
}
