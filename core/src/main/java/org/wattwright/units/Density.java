package org.wattwright.units;

import javax.measure.Quantity;

/** Mass per volume, in kg/m³. */
public interface Density extends Quantity<Density> {}
