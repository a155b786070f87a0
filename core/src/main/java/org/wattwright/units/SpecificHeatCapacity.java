package org.wattwright.units;

import javax.measure.Quantity;

/** Heat per mass and kelvin of rise, in J/(kg·K). */
public interface SpecificHeatCapacity extends Quantity<SpecificHeatCapacity> {}
