package org.wattwright.units;

import javax.measure.Quantity;

/** Temperature difference per heat flow, in K/W. */
public interface ThermalResistance extends Quantity<ThermalResistance> {}
