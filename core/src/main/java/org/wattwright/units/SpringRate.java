package org.wattwright.units;

import javax.measure.Quantity;

/** Force per deflection; SI unit N/m, shown in N/mm. */
public interface SpringRate extends Quantity<SpringRate> {}
