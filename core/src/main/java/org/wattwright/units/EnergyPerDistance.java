package org.wattwright.units;

import javax.measure.Quantity;

/** Consumption: energy per distance travelled; SI unit J/m, shown in W·h/km. */
public interface EnergyPerDistance extends Quantity<EnergyPerDistance> {}
