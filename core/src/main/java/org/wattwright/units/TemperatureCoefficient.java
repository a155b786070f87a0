package org.wattwright.units;

import javax.measure.Quantity;

/** Relative change per kelvin, in 1/K. */
public interface TemperatureCoefficient extends Quantity<TemperatureCoefficient> {}
