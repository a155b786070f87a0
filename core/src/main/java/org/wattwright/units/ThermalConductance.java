package org.wattwright.units;

import javax.measure.Quantity;

/** Heat flow per kelvin of difference, in W/K. */
public interface ThermalConductance extends Quantity<ThermalConductance> {}
