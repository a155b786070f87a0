package org.wattwright.units;

import javax.measure.Quantity;

/** Energy per volume; SI unit J/m³, shown in W·h/L. */
public interface EnergyDensity extends Quantity<EnergyDensity> {}
