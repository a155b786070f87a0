package org.wattwright.units;

import javax.measure.Quantity;

/** Heat per kelvin of rise of a whole body, in J/K. */
public interface HeatCapacity extends Quantity<HeatCapacity> {}
