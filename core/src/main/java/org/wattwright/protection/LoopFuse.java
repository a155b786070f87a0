package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * What a fuse inside a series chain can clear. Immutable and thread-safe.
 *
 * @param name as the catalogue has it
 * @param voltage rated DC voltage, &gt; 0 V
 * @param breakingCapacity highest current that it clears, &gt; 0 A
 * @param minimumBreaking lowest current that it clears, &gt; 0 A, below the capacity
 */
public record LoopFuse(
    String name,
    Quantity<ElectricPotential> voltage,
    Quantity<ElectricCurrent> breakingCapacity,
    Quantity<ElectricCurrent> minimumBreaking)
    implements Serializable {
  /**
   * Checks the fields.
   *
   * @param name as the catalogue has it
   * @param voltage &gt; 0 V
   * @param breakingCapacity &gt; 0 A
   * @param minimumBreaking &gt; 0 A, below the capacity
   * @throws org.wattwright.units.InvalidInputException if a field is outside its range
   */
  public LoopFuse {
    name = Require.text("LoopFuse.name", name);
    Require.quantity("LoopFuse.voltage", voltage, VOLT).positive();
    double highestA =
        Require.quantity("LoopFuse.breakingCapacity", breakingCapacity, AMPERE).positive();
    Require.quantity("LoopFuse.minimumBreaking", minimumBreaking, AMPERE).positiveUpTo(highestA);
    voltage = Measure.from(voltage, Kind.VOLTAGE);
    breakingCapacity = Measure.from(breakingCapacity, Kind.CURRENT);
    minimumBreaking = Measure.from(minimumBreaking, Kind.CURRENT);
  }

  /** Whether it clears a current at a voltage. */
  boolean clears(double currentA, double voltageV) {
    return voltageV <= Kind.VOLTAGE.siValueOf(voltage)
        && currentA <= Kind.CURRENT.siValueOf(breakingCapacity)
        && currentA >= Kind.CURRENT.siValueOf(minimumBreaking);
  }
}
