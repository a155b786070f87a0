package org.wattwright.installation;

import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.MILLIOHM;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import org.wattwright.internal.Require;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;

/**
 * A cell under its largest discharge current near empty: U = U₀ − I·R. Source: Ohm's law. A group
 * of parallel cells counts as one. Immutable and thread-safe.
 *
 * @param restVoltage at the lowest charge in use, &gt; 0 V
 * @param resistance of the cell, cold and aged, ≥ 0 mΩ
 * @param current of discharge, ≥ 0 A
 */
public record CellLoad(
    Quantity<ElectricPotential> restVoltage,
    Quantity<ElectricResistance> resistance,
    Quantity<ElectricCurrent> current)
    implements Serializable {
  /**
   * Checks the ranges.
   *
   * @param restVoltage &gt; 0 V
   * @param resistance ≥ 0 mΩ
   * @param current ≥ 0 A
   * @throws org.wattwright.units.InvalidInputException if a value is outside its range
   */
  public CellLoad {
    Require.quantity("CellLoad.restVoltage", restVoltage, VOLT).positive();
    Require.quantity("CellLoad.resistance", resistance, MILLIOHM).nonNegative();
    Require.quantity("CellLoad.current", current, AMPERE).nonNegative();
    restVoltage = Measure.from(restVoltage, Kind.VOLTAGE);
    resistance = Measure.from(resistance, Kind.RESISTANCE);
    current = Measure.from(current, Kind.CURRENT);
  }

  /**
   * Voltage at the terminals of the loaded cell.
   *
   * @return in V
   */
  public Quantity<ElectricPotential> terminalVoltage() {
    return VOLT.of(terminalV());
  }

  double terminalV() {
    return Kind.VOLTAGE.siValueOf(restVoltage)
        - Kind.CURRENT.siValueOf(current) * Kind.RESISTANCE.siValueOf(resistance);
  }
}
