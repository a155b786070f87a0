package org.wattwright.units;

import javax.measure.Quantity;

/** Resistance of a body to angular acceleration, in kg·m². */
public interface MomentOfInertia extends Quantity<MomentOfInertia> {}
