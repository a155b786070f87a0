package org.wattwright.units;

import javax.measure.Quantity;

/** Mass of a cable or bar per length; in kg/m. */
public interface MassPerLength extends Quantity<MassPerLength> {}
