package org.wattwright.units;

import javax.measure.Quantity;

/** Mass per time, in kg/s. */
public interface MassFlow extends Quantity<MassFlow> {}
