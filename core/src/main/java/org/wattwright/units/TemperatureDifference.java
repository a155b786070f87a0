package org.wattwright.units;

import javax.measure.Quantity;

/** Difference between two temperatures, in K; never an absolute temperature. */
public interface TemperatureDifference extends Quantity<TemperatureDifference> {}
