package org.wattwright.units;

import javax.measure.Quantity;

/** Heat flow per length and kelvin, in W/(m·K). */
public interface ThermalConductivity extends Quantity<ThermalConductivity> {}
