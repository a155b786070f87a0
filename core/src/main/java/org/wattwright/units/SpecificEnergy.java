package org.wattwright.units;

import javax.measure.Quantity;

/** Energy per mass; SI unit J/kg, shown in W·h/kg. */
public interface SpecificEnergy extends Quantity<SpecificEnergy> {}
